package plots

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
)

// Axis names one axis of a chart.
type Axis struct {
	// Label is what is drawn along the axis, as "tank temperature".
	Label string
	// Unit is the unit of every number on this axis, as "°C"; empty for a bare number.
	Unit string
	// Min and Max are the ends of the axis (dimensionless: in the axis unit). Both zero means: from the data.
	// Data beyond the ends is cut off, and the text alternative says so.
	Min, Max float64
}

// Chart is one chart, made by New and filled by its methods. It is not safe for use by several goroutines at once.
type Chart struct {
	title  string
	x, y   Axis
	series []series
	marks  []mark
	bands  []band
	lines  []reference
	notes  []string
}

type series struct {
	label  string
	line   bool // drawn as a line; otherwise as markers
	order  int  // among its kind: chooses dash or marker
	xs, ys []float64
}

type mark struct {
	label string
	x, y  float64
}

type band struct {
	label  string
	x0, x1 float64
}

type reference struct {
	label  string
	across bool // a horizontal line at a y; otherwise a vertical one at an x
	at     float64
}

// New returns an empty chart. The axes' Min and Max may be left zero; if one is set, Min must lie below Max
// (*Error otherwise).
func New(title string, x, y Axis) *Chart {
	for _, axis := range []*Axis{&x, &y} {
		axis.Label, axis.Unit = oneLine(axis.Label), oneLine(axis.Unit)
		checkValue("New", axis.Label, "Min", -1, axis.Min)
		checkValue("New", axis.Label, "Max", -1, axis.Max)
		if (axis.Min != 0 || axis.Max != 0) && (axis.Min >= axis.Max || isFlat(axis.Min, axis.Max)) {
			panic(&Error{Func: "New", Series: axis.Label, Index: -1,
				Problem: strings.TrimRight(fmt.Sprintf("the axis runs from %v to %v %s", axis.Min, axis.Max, axis.Unit), " "),
				Want:    "Min must lie below Max, or leave both zero"})
		}
	}
	return &Chart{title: oneLine(title), x: x, y: y}
}

// Line adds a line through the points (xs[i], ys[i]) in the order given; xs and ys (dimensionless: in the axis
// units) have one length, at least 1, and are copied. The label stands at the end of the line where there is
// room, otherwise in a legend above the chart. Panics with *Error on a wrong length or a value that is not finite.
func (c *Chart) Line(label string, xs, ys []float64) { c.add("Chart.Line", label, true, xs, ys) }

// Points adds a marker at each (xs[i], ys[i]), named in a legend above the chart; xs and ys (dimensionless: in the
// axis units) have one length, at least 1, and are copied. Panics with *Error on a wrong length or a value that is
// not finite.
func (c *Chart) Points(label string, xs, ys []float64) { c.add("Chart.Points", label, false, xs, ys) }

func (c *Chart) add(call, label string, line bool, xs, ys []float64) {
	label = oneLine(label)
	checkSeries(call, label, xs, ys)
	order := 0
	for _, s := range c.series {
		if s.line == line {
			order++
		}
	}
	c.series = append(c.series, series{label, line, order, slices.Clone(xs), slices.Clone(ys)})
}

// Mark rings one point (x, y) (dimensionless: in the axis units) and writes its label and its y beside it.
// Panics with *Error if x or y is not finite.
func (c *Chart) Mark(label string, x, y float64) {
	label = oneLine(label)
	checkValue("Chart.Mark", label, "x", -1, x)
	checkValue("Chart.Mark", label, "y", -1, y)
	c.marks = append(c.marks, mark{label, x, y})
}

// Band shades the chart from x0 to x1 (dimensionless: in the unit of the horizontal axis), as for a cut.
// Panics with *Error unless x0 lies below x1 and both are finite.
func (c *Chart) Band(label string, x0, x1 float64) {
	label = oneLine(label)
	checkValue("Chart.Band", label, "x0", -1, x0)
	checkValue("Chart.Band", label, "x1", -1, x1)
	if x0 >= x1 {
		panic(&Error{Func: "Chart.Band", Series: label, Index: -1,
			Problem: strings.TrimRight(fmt.Sprintf("the band runs from %v to %v %s", x0, x1, c.x.Unit), " "),
			Want:    "x0 must lie below x1"})
	}
	c.bands = append(c.bands, band{label, x0, x1})
}

// HLine draws a reference line across the chart at y (dimensionless: in the unit of the vertical axis).
// Panics with *Error if y is not finite.
func (c *Chart) HLine(label string, y float64) {
	label = oneLine(label)
	checkValue("Chart.HLine", label, "y", -1, y)
	c.lines = append(c.lines, reference{label, true, y})
}

// VLine draws a reference line up the chart at x (dimensionless: in the unit of the horizontal axis).
// Panics with *Error if x is not finite.
func (c *Chart) VLine(label string, x float64) {
	label = oneLine(label)
	checkValue("Chart.VLine", label, "x", -1, x)
	c.lines = append(c.lines, reference{label, false, x})
}

// Note adds a small line of text under the chart, as for a source. Each call starts a new line.
func (c *Chart) Note(text string) {
	if text = oneLine(text); text != "" {
		c.notes = append(c.notes, text)
	}
}

func (c *Chart) mustHaveSeries(call string) {
	if len(c.series) == 0 {
		panic(&Error{Func: call, Series: c.title, Index: -1, Problem: "the chart has no series",
			Want: "add one with Line or Points first"})
	}
}

// oneLine returns s as one line of characters that XML can hold.
func oneLine(s string) string {
	s = strings.Map(func(r rune) rune {
		switch {
		case unicode.IsControl(r), r == '\u2028', r == '\u2029':
			return ' '
		case r == '\uFFFE', r == '\uFFFF':
			return unicode.ReplacementChar
		case unicode.Is(unicode.Cf, r):
			return -1 // invisible direction and joining marks
		}
		return r
	}, strings.ToValidUTF8(s, string(unicode.ReplacementChar)))
	return strings.TrimSpace(s)
}
