package sweep

import (
	"fmt"
	"strings"

	"swanneck/worksheets/entry"
	"swanneck/worksheets/figure"
	"swanneck/worksheets/inputs"
)

// NewList takes a scenario from each row of a table, given as CSV. Its headings are names of inputs; a unit stands behind
// the name, as "pot strength (%vol)", or in the field. name is that of the file, for messages; tables that a field names
// are read from folder. The rest is as for NewGrid.
func NewList(set *inputs.Set, name, text, folder string, most int) (*Plan, error) {
	t, err := figure.ReadTable(text)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	if len(t.Rows) == 0 {
		return nil, fmt.Errorf("%s: no scenario stands below the headings", name)
	}
	if err := few(float64(len(t.Rows)), most); err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	given := set.Values()
	asked := make([]entry.Input, len(t.Headings))
	units := make([]string, len(t.Headings))
	p := &Plan{Design: List, Scenarios: make([][]Value, len(t.Rows))}
	seen := map[string]bool{}
	for i, h := range t.Headings {
		in, unit, err := headed(set, h)
		_, both := given[in.Name]
		switch {
		case err != nil:
		case seen[in.Name]:
			err = fmt.Errorf("%q stands above two columns", in.Name)
		case both:
			err = fmt.Errorf("%q is a column, and given one value too", in.Name)
		case unit != "" && !column(in, true).Figures:
			err = fmt.Errorf("%q has the unit %s; it is a %s, and has none", in.Name, unit, in.Kind)
		}
		if err != nil {
			return nil, fmt.Errorf("%s: heading %d: %w", name, i+1, err)
		}
		seen[in.Name] = true
		asked[i], units[i] = in, unit
		p.Columns = append(p.Columns, column(in, true))
	}
	for k, row := range t.Rows {
		for i, field := range row {
			v, err := read(asked[i], withUnit(field, units[i]), folder)
			if err != nil {
				return nil, fmt.Errorf("%s, line %d: %w", name, t.Line[k], err)
			}
			p.Scenarios[k] = append(p.Scenarios[k], v)
		}
	}
	for i := range p.Columns { // of a column that says the same in every row, nothing varies
		p.Columns[i].Varied = false
		for _, s := range p.Scenarios[1:] {
			if p.Columns[i].say(s[i]) != p.Columns[i].say(p.Scenarios[0][i]) {
				p.Columns[i].Varied = true
			}
		}
	}
	return p, p.fix(set)
}

// headed finds the input of a heading. A name may itself end in parentheses.
func headed(set *inputs.Set, heading string) (in entry.Input, unit string, err error) {
	if in, err := set.Named(heading); err == nil {
		return in, "", nil
	}
	name, unit := figure.Heading(heading)
	in, err = set.Named(name)
	return in, unit, err
}

// withUnit adds the heading's unit to a figure that has none of its own.
func withUnit(field, unit string) string {
	if unit == "" || unit == "1" {
		return field
	}
	if _, own, err := figure.Split(field); err == nil && own == "" {
		return strings.TrimSpace(field) + " " + unit
	}
	return field
}
