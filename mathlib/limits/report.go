package limits

import (
	"fmt"
	"strings"
)

// Text gives the answer in words: one of the four, or that there is no limit for this scope.
func (l Line) Text() string {
	if l.NoLimit {
		return "no limit for this scope"
	}
	return l.Answer.String()
}

// String gives the line in one line, with its source.
func (l Line) String() string {
	s := l.What + ": " + l.Text()
	if l.Rule != "" && !l.NoLimit {
		s += "; allowed " + l.Rule
	}
	if l.Found != "" {
		s += "; " + l.Found
	}
	if l.Why != "" {
		s += "; " + l.Why
	}
	if l.Analysis != "" {
		s += "; " + l.Analysis
	}
	if l.Source.Text != "" {
		s += " [" + l.Source.String() + "; check the current text]"
	}
	return s
}

// Worst returns the answer that needs most care: over or under before cannot tell, and that before within. Lines without a limit do
// not count.
func (r Report) Worst() Answer {
	worst := Within
	for _, l := range r.Lines {
		switch {
		case l.NoLimit:
		case l.Answer == Over, l.Answer == Under:
			return l.Answer
		case l.Answer == CannotTell:
			worst = CannotTell
		}
	}
	return worst
}

// Needed returns the analyses that would settle what nobody can tell yet.
func (r Report) Needed() []string {
	var out []string
	seen := map[string]bool{}
	for _, l := range r.Lines {
		if l.Analysis != "" && !seen[l.Analysis] {
			seen[l.Analysis] = true
			out = append(out, l.Analysis)
		}
	}
	return out
}

// String gives the report in one line: how many lines have each answer.
func (r Report) String() string {
	count := map[string]int{}
	for _, l := range r.Lines {
		count[l.Text()]++
	}
	var parts []string
	for _, a := range []string{Over.String(), Under.String(), CannotTell.String(), Within.String(), "no limit for this scope"} {
		if count[a] > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", count[a], a))
		}
	}
	if len(parts) == 0 {
		parts = []string{"nothing to hold against a rule"}
	}
	return fmt.Sprintf("%s: %s; %s", r.Jurisdiction, strings.Join(parts, ", "), r.Note)
}

// Rows gives the report: a head, a row a rule, then the cautions and hazards, and what comes first.
func (r Report) Rows() [][]string {
	rows := [][]string{{"what", "answer", "allowed", "found", "because", "source (check the current text)"}}
	for _, l := range r.Lines {
		why := l.Why
		if l.Analysis != "" {
			if why != "" {
				why += "; "
			}
			why += l.Analysis
		}
		rows = append(rows, []string{l.What, l.Text(), l.Rule, l.Found, why, l.Source.String()})
	}
	for _, c := range r.Cautions {
		source := ""
		if c.Listed {
			source = c.Source.String()
		}
		rows = append(rows, []string{c.Plant, "caution", "", "", c.Text, source})
	}
	for _, h := range r.Hazards {
		rows = append(rows, []string{"work", "caution", "", "", h, ""})
	}
	return append(rows, []string{"note", "", "", "", r.Note, ""})
}

// Limit is one published limit.
type Limit struct {
	Jurisdiction string
	Substance    string
	Scope        string // what it is for, in words
	Key          string // the scope that a Case names; empty for every alcoholic drink
	Rule         string // such as "at most 35 mg/kg"
	Source       Source
}

// String gives the limit with its source in one line.
func (l Limit) String() string {
	return fmt.Sprintf("%s, %s, %s: %s [%s]", l.Jurisdiction, l.Substance, l.Scope, l.Rule, l.Source)
}

// Limits returns the published limits of a jurisdiction, in the order of the data file. Check the current text; the local
// authority decides.
func Limits(jurisdiction string) ([]Limit, error) {
	t := embedded()
	region, err := t.jurisdiction("limits.Limits", jurisdiction)
	if err != nil {
		return nil, err
	}
	var out []Limit
	for _, l := range t.limits {
		if l.region != region {
			continue
		}
		text := "no limit any more"
		switch {
		case l.kind == "below":
			text = fmt.Sprintf("less than %g %s", l.limit, l.unit)
		case l.kind == "max" && l.limit == 0:
			text = "none"
		case l.kind == "max":
			text = fmt.Sprintf("at most %g %s", l.limit, l.unit)
		}
		out = append(out, Limit{l.region, l.substance, l.scope, l.key, text, l.source})
	}
	return out, nil
}

// Scopes returns what a Case may name as a scope in a jurisdiction, sorted.
func Scopes(jurisdiction string) ([]string, error) {
	t := embedded()
	region, err := t.jurisdiction("limits.Scopes", jurisdiction)
	if err != nil {
		return nil, err
	}
	return t.scopes(region), nil
}

// Categories returns the categories of the European Union that are known here, in the order of the data file.
func Categories() []string {
	var out []string
	for _, c := range embedded().categories {
		out = append(out, c.name)
	}
	return out
}
