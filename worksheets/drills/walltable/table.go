package walltable

import (
	"fmt"
	"html"
	"math"
	"slices"
	"strconv"
	"strings"

	"swanneck/mathlib/quantity"
	"swanneck/worksheets/figure"
)

// Options say what a table shows. The zero value is the table as it is usually printed.
type Options struct {
	Down   []float64 // the rows, in the unit of the table's edge; nil: the usual ones
	Across []float64 // the columns, in the unit of the table's edge; nil: the usual ones

	// Reference is, for Strength, the temperature printed on the alcoholometer; for Water, the one of strengths and
	// volumes. 20 °C if unset. The other sorts have theirs and refuse another one.
	Reference quantity.Temperature
}

// Table is a table ready to be printed.
type Table struct {
	Sort         Sort
	Title        string
	Down, Across string     // what rows and columns are, with the unit
	Heads        []string   // of the columns
	Rows         []string   // heads of the rows
	Cells        [][]string // by row; "" where there is no figure, as for a strength that water cannot reach
	StrongColumn int        // the column at the reference temperature; -1 if there is none
	Notes        []string
}

// maxCells bounds a table: more cannot be read from a wall.
const maxCells = 20000

// New returns a table. It fails for a sort that there is not, for rows or columns that are not finite or too many, and for
// a row or a column that holds no figure. A single cell for which there is no answer stays empty.
func New(s Sort, o Options) (Table, error) {
	const fn = "New"
	d, err := find(fn, s)
	if err != nil {
		return Table{}, err
	}
	at := d.reference
	if o.Reference != (quantity.Temperature{}) {
		if !d.otherReference {
			return Table{}, fmt.Errorf("walltable.%s: the table %q is for %v; a reference of %v fits %q and %q only", fn, s, d.reference, o.Reference, Strength, Water)
		}
		at = o.Reference
		if err := quantity.CheckRange("walltable."+fn, "reference temperature", at.C(), 0, 40, "°C", "OIML R 22 (1975)"); err != nil {
			return Table{}, err
		}
	}
	down, across := d.down.usual, d.across.usual
	if o.Down != nil {
		down = o.Down
	}
	if o.Across != nil {
		across = o.Across
	}
	if err := checkEdges(s, d, down, across); err != nil {
		return Table{}, err
	}
	t := Table{Sort: s, Title: d.title, Down: d.down.text(), Across: d.across.text(), StrongColumn: -1, Notes: d.notes(reference(at))}
	if d.otherReference && at != d.reference {
		switch s {
		case Water:
			t.Title += ", all at " + reference(at)
		default:
			t.Title += ", alcoholometer marked at " + reference(at)
		}
	}
	strong := d.across.strong
	if s == Strength {
		strong = at.C()
	}
	for i, x := range across {
		t.Heads = append(t.Heads, number(x))
		if d.across.hasStrong && math.Abs(x-strong) < 1e-9 {
			t.StrongColumn = i
		}
	}
	why := make([]error, len(across)) // of the columns that have no figure so far
	filled := make([]bool, len(across))
	for _, y := range down {
		row, full := make([]string, len(across)), false
		for j, x := range across {
			f, err := d.figure(y, x, at)
			if err != nil {
				why[j] = err
				continue
			}
			row[j] = strconv.FormatFloat(Round(f, d.decimals), 'f', d.decimals, 64)
			filled[j], full = true, true
		}
		if !full {
			return Table{}, fmt.Errorf("walltable.%s: the row %s of the table %q has no figure: %w", fn, number(y), s, why[0])
		}
		t.Rows, t.Cells = append(t.Rows, number(y)), append(t.Cells, row)
	}
	for j, x := range across {
		if !filled[j] {
			return Table{}, fmt.Errorf("walltable.%s: the column %s of the table %q has no figure: %w", fn, number(x), s, why[j])
		}
	}
	return t, nil
}

func checkEdges(s Sort, d sort, down, across []float64) error {
	if len(down) == 0 || len(across) == 0 || len(down)*len(across) > maxCells {
		return fmt.Errorf("walltable.New: %d rows and %d columns; want at least one of each and at most %d cells", len(down), len(across), maxCells)
	}
	for what, xs := range map[string][]float64{"rows": down, "columns": across} {
		for _, x := range xs {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				return fmt.Errorf("walltable.New: one of the %s is %v; want finite numbers", what, x)
			}
		}
	}
	if d.tens && (slices.Min(across) < 0 || slices.Max(across) >= 10) {
		return fmt.Errorf("walltable.New: the columns of %q are the units of a strength; want them from 0 to less than 10 %% vol", s)
	}
	return nil
}

func (a axis) text() string {
	if strings.Contains(a.label, a.unit) {
		return a.label
	}
	return a.label + ", " + a.unit
}

// reference writes a reference temperature as it stands on instruments.
func reference(t quantity.Temperature) string {
	if f := t.F(); math.Abs(f-60) < 1e-9 {
		return "60 °F"
	}
	return number(Round(t.C(), 2)) + " °C"
}

func number(x float64) string { return strconv.FormatFloat(Round(x, 6), 'f', -1, 64) }

// Edges reads the rows or columns of a table: "30..80/5" for 30, 35 … 80, or single figures set apart by semicolons,
// "37,5; 40; 43". The figures are in the unit of the table's edge. At most 500 are read.
func Edges(text string) ([]float64, error) {
	const most = 500
	var out []float64
	for _, part := range strings.Split(text, ";") {
		low, rest, isRange := strings.Cut(part, "..")
		x, err := figure.Number(low)
		if err != nil {
			return nil, fmt.Errorf("walltable.Edges: %w; want figures as 30..80/5 or 37.5; 40; 43", err)
		}
		if !isRange {
			out = append(out, x)
			continue
		}
		high, by, hasStep := strings.Cut(rest, "/")
		end, err := figure.Number(high)
		step := 1.0
		if err == nil && hasStep {
			step, err = figure.Number(by)
		}
		if err != nil {
			return nil, fmt.Errorf("walltable.Edges: %w; want a range as 30..80/5", err)
		}
		if !(step > 0) || end < x {
			return nil, fmt.Errorf("walltable.Edges: %q runs backwards or without end; want the lower figure first and a step above 0", strings.TrimSpace(part))
		}
		if (end-x)/step > most {
			return nil, fmt.Errorf("walltable.Edges: %q has more than %d figures; want a larger step", strings.TrimSpace(part), most)
		}
		out = append(out, steps(x, end, step)...)
	}
	if len(out) > most {
		return nil, fmt.Errorf("walltable.Edges: %d figures; want at most %d", len(out), most)
	}
	return out, nil
}

// String returns the table as lines of text in columns.
func (t Table) String() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s\nrows: %s; columns: %s\n", t.Title, t.Down, t.Across)
	widths := make([]int, len(t.Heads)+1)
	line := func(head string, cells []string) {
		for i, c := range append([]string{head}, cells...) {
			widths[i] = max(widths[i], len([]rune(c)))
		}
	}
	line("", t.Heads)
	for i, r := range t.Rows {
		line(r, t.Cells[i])
	}
	write := func(head string, cells []string) {
		parts := make([]string, 0, len(cells)+1)
		for i, c := range append([]string{head}, cells...) {
			parts = append(parts, fmt.Sprintf("%*s", widths[i], c))
		}
		b.WriteString(strings.TrimRight(strings.Join(parts, "  "), " ") + "\n")
	}
	write("", t.Heads)
	for i, r := range t.Rows {
		write(r, t.Cells[i])
	}
	return strings.TrimRight(b.String(), "\n")
}

// HTML returns the table as HTML, without the notes.
func (t Table) HTML() string {
	var b strings.Builder
	fmt.Fprintf(&b, "<table>\n<caption>%s. Rows: %s. Columns: %s.</caption>\n<thead><tr><th></th>", html.EscapeString(t.Title), html.EscapeString(t.Down), html.EscapeString(t.Across))
	for _, h := range t.Heads {
		fmt.Fprintf(&b, "<th scope=\"col\" align=\"right\">%s</th>", html.EscapeString(h))
	}
	b.WriteString("</tr></thead>\n<tbody>\n")
	for i, r := range t.Rows {
		fmt.Fprintf(&b, "<tr><th scope=\"row\" align=\"right\">%s</th>", html.EscapeString(r))
		for j, c := range t.Cells[i] {
			c = html.EscapeString(c)
			if j == t.StrongColumn {
				c = "<strong>" + c + "</strong>"
			}
			fmt.Fprintf(&b, "<td align=\"right\">%s</td>", c)
		}
		b.WriteString("</tr>\n")
	}
	b.WriteString("</tbody>\n</table>")
	return b.String()
}
