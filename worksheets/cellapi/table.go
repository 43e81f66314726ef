package cellapi

import (
	"fmt"
	"html"
	"path/filepath"
	"strings"

	"swanneck/kernel/display"
	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
	"swanneck/worksheets/figure"
)

// Grid is a table of text: headings and rows. Table reads one.
type Grid struct {
	from string // in messages
	t    *figure.Table
}

// Table reads a table from the worksheet's folder: a CSV file (.csv, .tsv, .txt) with fields set apart by semicolons,
// tabs or commas and a first line of headings, such as "volume (L); strength (%vol)". It is all that a cell can read of
// the machine; what is outside the folder, hidden, or no such file stops the cell.
func Table(file string) Grid {
	b, err := display.Read(file)
	if err != nil {
		panic(&Stop{"Table: " + err.Error()})
	}
	return readGrid("Table", filepath.Base(file), string(b))
}

func readGrid(function, from, text string) Grid {
	t, err := figure.ReadTable(text)
	if err != nil {
		panic(&Stop{fmt.Sprintf("%s: %s: %s", function, from, err)})
	}
	return Grid{from, t}
}

// Len returns the number of rows, the headings not counted.
func (g Grid) Len() int {
	if g.t == nil {
		return 0
	}
	return len(g.t.Rows)
}

// Headings returns the headings without their units.
func (g Grid) Headings() []string {
	if g.t == nil {
		return nil
	}
	out := make([]string, len(g.t.Headings))
	for i, h := range g.t.Headings {
		out[i], _ = figure.Heading(h)
	}
	return out
}

// Column returns a column as text. heading is given without its unit.
func (g Grid) Column(heading string) []string {
	at, _ := g.find("Column", heading)
	out := make([]string, g.Len())
	for i, r := range g.t.Rows {
		out[i] = r[at]
	}
	return out
}

// Numbers returns a column of figures in the unit wanted (dimensionless here: in that unit). The unit that a figure has
// stands behind it or in the heading, as "volume (gal)"; a figure with neither, an empty field and a unit that does not
// fit stop the cell with their line. A column of bare numbers has the unit "1".
func (g Grid) Numbers(heading, unit string) []float64 {
	at, of := g.find("Numbers", heading)
	out := make([]float64, g.Len())
	for i, r := range g.t.Rows {
		x, given, err := split(r[at], of)
		if err == nil && given == "" && unit != "1" {
			err = fmt.Errorf("%q has no unit; write it into the heading, as \"%s (%s)\"", r[at], heading, unit)
		}
		if err == nil && given != "" {
			x, err = figure.Convert(x, given, unit)
		}
		g.check("Numbers", heading, i, err)
		out[i] = x
	}
	return out
}

// Strengths returns a column of strengths: with the unit behind each or in the heading, as "strength (%vol)".
func (g Grid) Strengths(heading string) []alcoholometry.Strength {
	at, of := g.find("Strengths", heading)
	out := make([]alcoholometry.Strength, g.Len())
	for i, r := range g.t.Rows {
		x, given, err := split(r[at], of)
		if err == nil {
			out[i], err = figure.StrengthIn(x, given)
		}
		g.check("Strengths", heading, i, err)
	}
	return out
}

// Temperatures returns a column of temperatures: with the unit behind each or in the heading, as "tank (°C)".
func (g Grid) Temperatures(heading string) []quantity.Temperature {
	at, of := g.find("Temperatures", heading)
	out := make([]quantity.Temperature, g.Len())
	for i, r := range g.t.Rows {
		x, given, err := split(r[at], of)
		if err == nil {
			out[i], err = figure.TemperatureIn(x, given)
		}
		g.check("Temperatures", heading, i, err)
	}
	return out
}

// split parts a field from its unit; the heading's unit is for fields without one.
func split(field, headingUnit string) (x float64, unit string, err error) {
	if field == "" {
		return 0, "", fmt.Errorf("the field is empty")
	}
	x, unit, err = figure.Split(field)
	if unit == "" {
		unit = headingUnit
	}
	return x, unit, err
}

func (g Grid) find(method, heading string) (at int, unit string) {
	if g.t == nil {
		panic(&Stop{method + ": this table was not made by Table or InputTable"})
	}
	for i, h := range g.t.Headings {
		if name, unit := figure.Heading(h); name == heading || h == heading {
			return i, unit
		}
	}
	panic(&Stop{fmt.Sprintf("%s: %s has no column %q; there is %s", method, g.from, heading, strings.Join(g.Headings(), ", "))})
}

func (g Grid) check(method, heading string, row int, err error) {
	if err != nil {
		panic(&Stop{fmt.Sprintf("%s: %s, line %d, column %q: %s", method, g.from, g.t.Line[row], heading, err)})
	}
}

// String returns the table as lines of text.
func (g Grid) String() string {
	if g.t == nil {
		return "no table"
	}
	lines := []string{strings.Join(g.t.Headings, "; ")}
	for _, r := range g.t.Rows {
		lines = append(lines, strings.Join(r, "; "))
	}
	return strings.Join(lines, "\n")
}

// HTML returns the table as HTML.
func (g Grid) HTML() string {
	if g.t == nil {
		return "<p>no table</p>"
	}
	var b strings.Builder
	row := func(tag string, fields []string) {
		b.WriteString("<tr>")
		for _, f := range fields {
			fmt.Fprintf(&b, "<%s>%s</%s>", tag, html.EscapeString(f), tag)
		}
		b.WriteString("</tr>\n")
	}
	b.WriteString("<table>\n")
	row("th", g.t.Headings)
	for _, r := range g.t.Rows {
		row("td", r)
	}
	b.WriteString("</table>")
	return b.String()
}
