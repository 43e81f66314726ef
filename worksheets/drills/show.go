package drills

import (
	"fmt"
	"html"
	"regexp"
	"slices"
	"strings"

	"swanneck/worksheets/drills/walltable"
)

var (
	percentVolume = regexp.MustCompile(`(\d) % (vol|mass)`)
	beforeUnit    = regexp.MustCompile(`([\d%]) (%|°[CF]|L|kg|mL|gal|proof|US|vol|mass)`)
)

// firm keeps figures and their units on one line, in what is set as HTML or Markdown.
func firm(s string) string {
	s = percentVolume.ReplaceAllString(s, "$1\u00a0%\u00a0$2")
	return beforeUnit.ReplaceAllString(s, "$1\u00a0$2")
}

// String gives the problem as text: the situation, the question and the unit of the answer, without the answer.
func (p Problem) String() string {
	return fmt.Sprintf("%s (%s, seed %d)\n%s\n%s\nAnswer in %s.", p.heading(), p.Kind, p.Seed, p.Text, p.Question, p.unitWords())
}

// HTML gives the problem as HTML, without the answer.
func (p Problem) HTML() string {
	return firm(fmt.Sprintf("<h3>%s</h3>\n<p>%s</p>\n<p><strong>%s</strong> Answer in %s. <small>(%s, seed %d)</small></p>",
		html.EscapeString(p.heading()), html.EscapeString(p.Text), html.EscapeString(p.Question), html.EscapeString(p.unitWords()), html.EscapeString(string(p.Kind)), p.Seed))
}

// named names a mistake and says, the first time, what is wrong with it.
func (p Problem) named(i int) string {
	m := p.Mistakes[i]
	if i > 0 && p.Mistakes[i-1].Name == m.Name {
		return m.Name + " (another way to it)"
	}
	return m.Name + ". " + m.How
}

// heading is the title, with the number that the problem has in a set.
func (p Problem) heading() string {
	if p.Number == 0 {
		return p.Title
	}
	return fmt.Sprintf("%d. %s", p.Number, p.Title)
}

func (p Problem) unitWords() string {
	switch p.Unit {
	case "bottles":
		return "full bottles"
	case "proof":
		return "degrees of proof"
	}
	return p.Unit
}

// Right is the answer as it is written in a key: with its tolerance and unit.
func (p Problem) Right() string {
	if p.Tolerance == 0 {
		return p.Figure(p.Answer)
	}
	return fmt.Sprintf("%.*f ± %s %s", p.Decimals, p.Answer, figures(p.Tolerance), p.Unit)
}

// Tables lists the tables that the worked solution looks into.
func (p Problem) Tables() []walltable.Sort {
	var out []walltable.Sort
	for _, s := range p.Steps {
		for _, f := range s.Finds {
			if !slices.Contains(out, f.Table) {
				out = append(out, f.Table)
			}
		}
	}
	return out
}

// Solution gives the worked solution as text: the steps, the answer, and what the usual mistakes give.
func (p Problem) Solution() string {
	var b strings.Builder
	for i, s := range p.Steps {
		fmt.Fprintf(&b, "%d. %s\n", i+1, s)
	}
	fmt.Fprintf(&b, "Answer: %s\n%s\n", p.Right(), p.Why)
	for i, m := range p.Mistakes {
		fmt.Fprintf(&b, "%s: %s\n", p.Figure(m.Figure), p.named(i))
	}
	return strings.TrimRight(b.String(), "\n")
}

// SolutionHTML gives the worked solution as HTML.
func (p Problem) SolutionHTML() string {
	var b strings.Builder
	b.WriteString("<ol>\n")
	for _, s := range p.Steps {
		fmt.Fprintf(&b, "<li>%s</li>\n", html.EscapeString(s.String()))
	}
	fmt.Fprintf(&b, "</ol>\n<p><strong>Answer: %s</strong></p>\n<p>%s</p>\n", html.EscapeString(p.Right()), html.EscapeString(p.Why))
	fmt.Fprintf(&b, "<table>\n<caption>What the usual mistakes give, in %s</caption>\n<tbody>\n", html.EscapeString(p.Unit))
	for i, m := range p.Mistakes {
		fmt.Fprintf(&b, "<tr><td align=\"right\">%.*f</td><td>%s</td></tr>\n", p.Decimals, m.Figure, html.EscapeString(p.named(i)))
	}
	b.WriteString("</tbody>\n</table>")
	return firm(b.String())
}
