package sweep

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"slices"
	"strings"
)

// Table is a sweep that is done.
type Table struct {
	Worksheet string
	Design    Design
	Counts    []int // of a grid: how many values each input that varies has
	Columns   []Column
	Results   []ResultColumn
	Rows      []Row // by scenario
}

// ResultColumn is a declared result. A scenario may lack it: worksheets declare results under conditions.
type ResultColumn struct{ Name, Unit string }

func newTable(h head, rows map[int]Row) *Table {
	t := &Table{Worksheet: h.Worksheet, Design: h.Design, Counts: h.Counts, Columns: h.Columns}
	for _, r := range rows {
		t.Rows = append(t.Rows, r)
	}
	slices.SortFunc(t.Rows, func(a, b Row) int { return a.Scenario - b.Scenario })
	for _, r := range t.Rows {
		t.Results = merge(t.Results, r.Results)
	}
	return t
}

// merge adds the results that are not among the columns yet, each behind the one that stands before it in its scenario.
func merge(columns []ResultColumn, row []Figure) []ResultColumn {
	at := 0
	for _, f := range row {
		c := ResultColumn{f.Name, f.Unit}
		if i := slices.Index(columns, c); i >= 0 {
			at = i + 1
			continue
		}
		columns = slices.Insert(columns, at, c)
		at++
	}
	return columns
}

// Failed returns the rows without results.
func (t *Table) Failed() []Row {
	var out []Row
	for _, r := range t.Rows {
		if r.Status != OK {
			out = append(out, r)
		}
	}
	return out
}

// result returns a row's figure of a column (dimensionless here: in the column's unit), if it has one.
func (r Row) result(c ResultColumn) (x float64, ok bool) {
	for _, f := range r.Results {
		if f.Name == c.Name && f.Unit == c.Unit {
			return f.Value, true
		}
	}
	return 0, false
}

// First and last heading of a table.
const (
	scenarioHeading = "scenario"
	statusHeading   = "status"
)

// Headings returns the headings of the columns: the number of the scenario, inputs, results, the status. Each name stands
// there once, also without its unit, so that the table can be read as one of ours.
func (t *Table) Headings() []string {
	taken := map[string]bool{scenarioHeading: true, statusHeading: true}
	out := []string{scenarioHeading}
	add := func(name, unit, other string) {
		for taken[plain(name)] {
			name = other + " " + name
		}
		taken[plain(name)] = true
		if unit != "" && unit != "1" {
			name += " (" + unit + ")"
		}
		out = append(out, name)
	}
	for _, c := range t.Columns {
		add(c.Name, c.Unit, "input")
	}
	for _, r := range t.Results {
		add(r.Name, r.Unit, "result")
	}
	return append(out, statusHeading)
}

// CSV returns the table: commas between fields, points before decimals, CRLF behind lines (RFC 4180), one line of headings.
// A result that a scenario does not have is an empty field. A word that a spreadsheet would take for a formula has an
// apostrophe in front.
func (t *Table) CSV() ([]byte, error) {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.UseCRLF = true
	line := t.Headings()
	for i := range line {
		line[i] = cellText(line[i])
	}
	if err := w.Write(line); err != nil {
		return nil, fmt.Errorf("sweep.CSV: %w", err)
	}
	for _, r := range t.Rows {
		line := []string{fmt.Sprint(r.Scenario)}
		for i, v := range r.Inputs {
			if t.Columns[i].Figures {
				line = append(line, number(v.Figure))
			} else {
				line = append(line, cellText(v.Word))
			}
		}
		for _, c := range t.Results {
			field := ""
			if x, ok := r.result(c); ok {
				field = number(x)
			}
			line = append(line, field)
		}
		if err := w.Write(append(line, cellText(r.Status))); err != nil {
			return nil, fmt.Errorf("sweep.CSV: %w", err)
		}
	}
	w.Flush()
	return b.Bytes(), w.Error()
}

func cellText(s string) string {
	if s != "" && strings.ContainsRune("=+-@", rune(s[0])) {
		return "'" + s
	}
	return s
}
