package sweep

import (
	"errors"
	"fmt"
	"strings"
	"testing"
)

// grid is a table of a grid of a, b and c with the results "sum" (a + 10 b + 100 c) and "even", which every other a lacks.
func grid(as, bs, cs int) *Table {
	t := &Table{Design: Grid, Counts: []int{as, bs, cs}, Columns: []Column{
		{Name: "a", Unit: "L", Figures: true, Varied: true}, {Name: "b", Unit: "%vol", Figures: true, Varied: true},
		{Name: "c", Unit: "1", Figures: true, Varied: cs > 1}, {Name: "d", Unit: "kg", Figures: true},
	}, Results: []ResultColumn{{"even", "1"}, {"sum", "kg"}}}
	for a := range as {
		for b := range bs {
			for c := range cs {
				r := Row{Scenario: len(t.Rows) + 1, Status: OK, Inputs: []Value{{Figure: float64(a)}, {Figure: float64(b)}, {Figure: float64(c)}, {Figure: 5}}}
				if a%2 == 0 {
					r.Results = append(r.Results, Figure{"even", "1", 1})
				}
				r.Results = append(r.Results, Figure{"sum", "kg", float64(a + 10*b + 100*c)})
				t.Rows = append(t.Rows, r)
			}
		}
	}
	return t
}

func TestChart(t *testing.T) {
	for _, c := range []struct {
		name   string
		table  *Table
		choice ChartChoice
		shows  string
		has    []string
		not    []string
	}{
		{"a line for each b, c held", grid(5, 3, 3), ChartChoice{}, "sum against a",
			[]string{"Line “0 %vol”: 5 points from 0 to 4 L; starts at 100 kg, ends at 104 kg", "Line “2 %vol”: 5 points from 0 to 4 L; starts at 120 kg", "Each line: one value of b.", "c is 1 in all of this chart."}, []string{"left out", "are shown"}},
		{"against b", grid(5, 3, 1), ChartChoice{Result: "Sum", Against: "B"}, "sum against b",
			[]string{"Line “4 L”: 3 points from 0 to 2 %vol; starts at 4 kg, ends at 24 kg"}, []string{"c is"}},
		{"more lines than can be told apart", grid(3, 20, 1), ChartChoice{}, "sum against a",
			[]string{"Line “0 %vol”", "Line “19 %vol”", "; 8 of 20 are shown."}, []string{"Line “1 %vol”"}},
		{"a result that some lack", grid(5, 1, 1), ChartChoice{Result: "even"}, "even against a",
			[]string{"3 points", "2 of 5 scenarios shown here have no such result and are left out."}, nil},
	} {
		svg, shows, err := c.table.Chart(c.choice)
		if err != nil || shows != c.shows {
			t.Errorf("%s: %q, %v", c.name, shows, err)
			continue
		}
		for _, h := range c.has {
			if !strings.Contains(string(svg), h) {
				t.Errorf("%s: %q is not in\n%s", c.name, h, description(string(svg)))
			}
		}
		for _, h := range c.not {
			if strings.Contains(string(svg), h) {
				t.Errorf("%s: %q is in\n%s", c.name, h, description(string(svg)))
			}
		}
	}
	drawn := grid(5, 3, 1)
	drawn.Design = Latin
	if svg, _, err := drawn.Chart(ChartChoice{}); err != nil || !strings.Contains(string(svg), "Points 1: 15 points from 0 to 4 L") {
		t.Errorf("%v\n%s", err, description(string(svg)))
	}
}

// description is the text alternative in an SVG.
func description(svg string) string {
	_, rest, _ := strings.Cut(svg, "<desc")
	text, _, _ := strings.Cut(rest, "</desc>")
	return text
}

func TestNoChart(t *testing.T) {
	failed := grid(3, 1, 1)
	for i := range failed.Rows {
		failed.Rows[i].Results, failed.Rows[i].Status = nil, "cell 1: no"
	}
	failed.Results = nil
	words := &Table{Design: Grid, Columns: []Column{{Name: "still", Varied: true}}, Results: []ResultColumn{{"a", "1"}}}
	huge := grid(2, 1, 1)
	huge.Rows[0].Results[1].Value = 1e305
	for name, table := range map[string]*Table{"all failed": failed, "words": words, "a figure that cannot be drawn": huge} {
		if svg, _, err := table.Chart(ChartChoice{}); !errors.Is(err, ErrNothingToDraw) || strings.Contains(fmt.Sprint(err), "\n") {
			t.Errorf("%s: %v, %.20q; want ErrNothingToDraw", name, err, svg)
		}
	}
	for c, says := range map[ChartChoice]string{
		{Result: "summ"}: `no result is called "summ"; the nearest: sum, even`,
		{Against: "d"}:   `no input that varies and has figures is called "d"; there are: a, b`,
	} {
		if _, _, err := grid(3, 2, 1).Chart(c); err == nil || errors.Is(err, ErrNothingToDraw) || !strings.Contains(err.Error(), says) {
			t.Errorf("%+v: %v; want %q", c, err, says)
		}
	}
}
