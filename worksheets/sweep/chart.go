package sweep

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"swanneck/plots"
	"swanneck/worksheets/nearest"
)

// mostLines is how many lines a chart shows at most: more cannot be told apart.
const mostLines = 8

// ChartChoice says what a chart shows. Empty names stand for the result that takes the most different values, the first of
// equals, and for the first input that varies and has figures.
type ChartChoice struct{ Result, Against string }

// ErrNothingToDraw says that there is nothing that a chart could show, whatever was chosen.
var ErrNothingToDraw = errors.New("no chart")

// CheckAgainst says whether an input can stand along a chart of a plan: its name is empty, or it varies and has figures.
func (p *Plan) CheckAgainst(name string) error {
	_, err := along(p.Columns, name)
	if errors.Is(err, ErrNothingToDraw) && name == "" {
		return nil
	}
	return err
}

// along finds the input that stands along a chart: the one named, else the first that varies and has figures.
func along(columns []Column, name string) (int, error) {
	var can []string
	first := -1
	for i, c := range columns {
		if !c.Varied || !c.Figures {
			continue
		}
		if first < 0 {
			first = i
		}
		if plain(c.Name) == plain(name) {
			return i, nil
		}
		can = append(can, c.Name)
	}
	switch {
	case first < 0:
		return 0, fmt.Errorf("%w: no input with figures varies", ErrNothingToDraw)
	case name != "":
		return 0, fmt.Errorf("no input that varies and has figures is called %q; there are: %s", name, strings.Join(can, ", "))
	}
	return first, nil
}

// resultNamed finds a result by its name.
func (t *Table) resultNamed(name string) (ResultColumn, error) {
	if len(t.Results) == 0 {
		return ResultColumn{}, fmt.Errorf("%w: there is no result", ErrNothingToDraw)
	}
	if name == "" {
		return t.liveliest(), nil
	}
	var names []string
	for _, c := range t.Results {
		if plain(c.Name) == plain(name) {
			return c, nil
		}
		names = append(names, c.Name)
	}
	return ResultColumn{}, fmt.Errorf("no result is called %q; the nearest: %s", name, strings.Join(nearest.Names(name, names), ", "))
}

// liveliest returns the result that takes the most different values: one that hangs on all that varies.
func (t *Table) liveliest() ResultColumn {
	best, most := t.Results[0], 0
	for _, c := range t.Results {
		values := map[float64]bool{}
		for _, r := range t.Rows {
			if x, ok := r.result(c); ok {
				values[x] = true
			}
		}
		if len(values) > most {
			best, most = c, len(values)
		}
	}
	return best
}

// Chart draws a result against an input. Of a grid it shows a line for each value of the next input that varies, and says in a note at which values
// the further ones are held; of other plans it shows a point for each scenario. It returns the file's content, and what
// the chart shows in a few words.
func (t *Table) Chart(c ChartChoice) (svg []byte, shows string, err error) {
	defer func() {
		if r := recover(); r != nil {
			e, ok := r.(*plots.Error)
			if !ok {
				panic(r)
			}
			err = fmt.Errorf("%w: %w", ErrNothingToDraw, e)
		}
	}()
	y, err := t.resultNamed(c.Result)
	if err != nil {
		return nil, "", err
	}
	x, err := along(t.Columns, c.Against)
	if err != nil {
		return nil, "", err
	}
	cx := t.Columns[x]
	shows = y.Name + " against " + cx.Name
	chart := plots.New(shows, plots.Axis{Label: cx.Name, Unit: shown(cx.Unit)}, plots.Axis{Label: y.Name, Unit: shown(y.Unit)})
	d := &drawing{table: t, chart: chart, x: x, y: y}
	if t.Design == Grid {
		d.lines()
	} else {
		d.points("", t.Rows)
	}
	if d.drawn == 0 {
		return nil, "", fmt.Errorf("%w: no scenario shown in it has the result %q", ErrNothingToDraw, y.Name)
	}
	if d.missing > 0 {
		chart.Note(fmt.Sprintf("%d of %d scenarios shown here have no such result and are left out.", d.missing, d.missing+d.drawn))
	}
	return []byte(chart.SVG()), shows, nil
}

// shown is a unit as an axis has it.
func shown(unit string) string {
	if unit == "1" {
		return ""
	}
	return unit
}

// drawing is a chart in the making.
type drawing struct {
	table          *Table
	chart          *plots.Chart
	x              int
	y              ResultColumn
	drawn, missing int
}

// figures returns the points of some rows, and counts them.
func (d *drawing) figures(rows []Row) (xs, ys []float64) {
	for _, r := range rows {
		y, ok := r.result(d.y)
		if !ok {
			d.missing++
			continue
		}
		d.drawn++
		xs, ys = append(xs, r.Inputs[d.x].Figure), append(ys, y)
	}
	return xs, ys
}

func (d *drawing) points(label string, rows []Row) {
	if xs, ys := d.figures(rows); len(xs) > 0 {
		d.chart.Points(label, xs, ys)
	}
}

// lines draws a grid: along x, a line for each value of the next input that varies, the others held.
func (d *drawing) lines() {
	t := d.table
	rows := t.Rows
	next := -1
	for i, c := range t.Columns {
		switch {
		case !c.Varied || i == d.x:
		case next < 0:
			next = i
		default:
			held := t.distinct(i)
			at := held[(len(held)-1)/2]
			rows = slices.DeleteFunc(slices.Clone(rows), func(r Row) bool { return c.say(r.Inputs[i]) != at })
			d.chart.Note(fmt.Sprintf("%s is %s in all of this chart.", c.Name, at))
		}
	}
	if next < 0 {
		d.line("", rows)
		return
	}
	c := t.Columns[next]
	of := func(v string) []Row {
		return slices.DeleteFunc(slices.Clone(rows), func(r Row) bool { return c.say(r.Inputs[next]) != v })
	}
	values := t.distinct(next)
	with := slices.DeleteFunc(slices.Clone(values), func(v string) bool {
		return !slices.ContainsFunc(of(v), func(r Row) bool { _, ok := r.result(d.y); return ok })
	})
	chosen := spread(with, mostLines)
	lines := "Each line: one value of " + c.Name
	if len(chosen) < len(values) {
		lines += fmt.Sprintf("; %d of %d are shown", len(chosen), len(values))
	}
	d.chart.Note(lines + ".")
	for _, v := range chosen {
		d.line(v, of(v))
	}
}

func (d *drawing) line(label string, rows []Row) {
	rows = slices.Clone(rows)
	slices.SortStableFunc(rows, func(a, b Row) int {
		switch xa, xb := a.Inputs[d.x].Figure, b.Inputs[d.x].Figure; {
		case xa < xb:
			return -1
		case xa > xb:
			return 1
		}
		return 0
	})
	if xs, ys := d.figures(rows); len(xs) > 0 {
		d.chart.Line(label, xs, ys)
	}
}

// distinct lists the values of an input, as they are written, in the plan's order.
func (t *Table) distinct(column int) []string {
	var out []string
	seen := map[string]bool{}
	for _, r := range t.Rows {
		if s := t.Columns[column].say(r.Inputs[column]); !seen[s] {
			seen[s] = true
			out = append(out, s)
		}
	}
	return out
}

// spread chooses at most n of a list, the ends among them.
func spread(list []string, n int) []string {
	if len(list) <= n {
		return list
	}
	var out []string
	for i := range n {
		out = append(out, list[(i*(len(list)-1)+(n-1)/2)/(n-1)])
	}
	return out
}
