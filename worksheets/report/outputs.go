package report

import (
	"encoding/json"
	"fmt"
	"html"
	"maps"
	"regexp"
	"slices"
	"strings"

	"swanneck/worksheets/notebook"
)

// outputs writes the outputs of a cell. Neighbouring pieces of one stream are one text.
func (b *body) outputs(outputs []notebook.Output) {
	for i := 0; i < len(outputs); i++ {
		o := outputs[i]
		switch o.Type {
		case notebook.Stream:
			for i+1 < len(outputs) && outputs[i+1].Type == notebook.Stream && outputs[i+1].Name == o.Name {
				i++
				o.Text += outputs[i].Text
			}
			b.stream(o)
		case notebook.Error:
			b.stopped(o)
		case notebook.DisplayData, notebook.ExecuteResult:
			b.display(o)
		default:
			b.cannotShow(o.Type)
		}
	}
}

// inColumns matches text that is set in columns or drawn with characters.
var inColumns = regexp.MustCompile(`\S(?:\t|  )[^\n]*\S|[|+─-╿]`)

func (b *body) stream(o notebook.Output) {
	class := "out"
	if o.Name == "stderr" {
		class = "out aside"
	}
	b.plain(class, o.Text)
}

// plain writes text as it stands. Text in columns scrolls sideways; other text wraps.
func (b *body) plain(class, s string) {
	s = strings.Trim(terminalText(s), "\n")
	if !inColumns.MatchString(s) {
		class += " flow"
	}
	if strings.TrimSpace(s) != "" {
		fmt.Fprintf(&b.html, "<pre class=\"%s\" tabindex=\"0\">%s</pre>\n", class, html.EscapeString(s))
	}
}

// stopped writes the mistake that stopped a cell. The message stays in sight; the way to it is folded.
func (b *body) stopped(o notebook.Output) {
	message := strings.TrimSpace(terminalText(o.Evalue))
	if message == "" {
		message = strings.TrimSpace(terminalText(o.Ename))
	}
	fmt.Fprintf(&b.html, "<div class=\"stopped\" role=\"note\"><p><strong>This step stopped.</strong> %s</p>", html.EscapeString(message))
	trace := strings.TrimSpace(terminalText(strings.Join(o.Traceback, "\n")))
	if trace != "" && trace != message && trace != o.Ename+": "+message {
		fmt.Fprintf(&b.html, "<details><summary>Where</summary><pre tabindex=\"0\">%s</pre></details>", html.EscapeString(trace))
	}
	b.html.WriteString("</div>\n")
}

// display writes the richest form of a bundle that can be shown: HTML, SVG, a picture, Markdown, text.
func (b *body) display(o notebook.Output) {
	if s, ok := o.Data.Text("text/html"); ok {
		if s = safeHTML(s, nil); s != "" {
			b.html.WriteString("<div class=\"shown\">\n" + s + "</div>\n")
			return
		}
	}
	mime, uri := pictureURI(o.Data)
	if s, ok := o.Data.Text("image/svg+xml"); ok {
		chart, err := safeSVG(s, fmt.Sprintf("c%d-", b.charts+1))
		// The allow-list has no lettering: where a picture shows the same with its letters, that is better.
		if err == nil && (len(chart.lettering) == 0 || uri == "") {
			b.charts++
			b.chart(chart, o)
			return
		}
	}
	if uri != "" {
		fmt.Fprintf(&b.html, "<figure><img src=\"%s\" alt=\"%s\"%s></figure>\n", uri, text(description(o, "Picture")), pictureWidth(o, mime))
		return
	}
	if s, ok := o.Data.Text("text/markdown"); ok {
		if s = safeHTML(parseProse(s).html(), nil); s != "" {
			b.html.WriteString("<div class=\"shown\">\n" + s + "</div>\n")
			return
		}
	}
	if s, ok := o.Data.Text("text/plain"); ok {
		b.plain("out", s)
		return
	}
	b.cannotShow(strings.Join(slices.Sorted(maps.Keys(o.Data)), ", "))
}

func (b *body) chart(c safeChart, o notebook.Output) {
	label := c.label
	if label == "" {
		label = description(o, fmt.Sprintf("Chart %d", b.charts))
	}
	caption := ""
	if len(c.lettering) > 0 {
		caption = "<figcaption>Lettering of this chart, which the report leaves out of the drawing: " +
			text(strings.Join(c.lettering, "; ")) + "</figcaption>"
	}
	fmt.Fprintf(&b.html, "<figure role=\"img\" aria-label=\"%s\">%s%s</figure>\n", text(label), c.markup, caption)
}

// cannotShow names an output that the report has no form for: nothing vanishes without a word.
func (b *body) cannotShow(what string) {
	if what != "" {
		fmt.Fprintf(&b.html, "<p class=\"missing\">[output of type %s, which a report cannot show]</p>\n", text(what))
	}
}

// description is the first line of the text beside a picture, if that is a sentence rather than a dump.
func description(o notebook.Output, otherwise string) string {
	s, _ := o.Data.Text("text/plain")
	s = strings.TrimSpace(terminalText(s))
	if s == "" || strings.Contains(s, "\n") || len(s) > 300 || strings.HasPrefix(s, "<") {
		return otherwise
	}
	return s
}

// pictureWidth is the width in CSS pixels that the output's metadata asks for, as an attribute.
func pictureWidth(o notebook.Output, mime string) string {
	m, _ := o.Metadata[mime].(map[string]any)
	num, _ := m["width"].(json.Number)
	if w, err := num.Int64(); err == nil && w >= 1 && w <= 4000 {
		return fmt.Sprintf(" width=\"%d\"", w)
	}
	return ""
}
