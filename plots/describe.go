package plots

import (
	"fmt"
	"strings"
)

// String returns the text alternative of the chart: what it shows, in words and numbers. See AltText.
func (c *Chart) String() string { return c.AltText() }

// AltText returns what the chart shows for those who do not see it, a line for each thing: the title, the axes
// with their units and ends, for each series the number of points, start, end, lowest and highest, then marks,
// bands, reference lines and notes. Numbers are written to about a thousandth of their axis.
func (c *Chart) AltText() string {
	if len(c.series) == 0 {
		return c.name() + "\nA chart without a series."
	}
	l := &layout{}
	c.setRanges(l)
	return c.describe(l)
}

// name returns the title or, without one, what is drawn against what.
func (c *Chart) name() string {
	switch {
	case c.title != "":
		return c.title
	case c.x.Label != "" && c.y.Label != "":
		return c.y.Label + " against " + c.x.Label
	}
	return "Chart"
}

func withUnit(number, unit string) string {
	if unit == "" {
		return number
	}
	return number + " " + unit
}

func (c *Chart) describe(l *layout) string {
	res := c.resolution()
	x := func(v float64) string { return withUnit(numberText(v, res.x), c.x.Unit) }
	y := func(v float64) string { return withUnit(numberText(v, res.y), c.y.Unit) }
	var b strings.Builder
	line := func(format string, args ...any) { fmt.Fprintf(&b, "\n"+format, args...) }
	b.WriteString(c.name())
	line("Horizontal axis%s: %s to %s.", named(c.x.Label), numberText(l.xRange[0], res.x), x(l.xRange[1]))
	line("Vertical axis%s: %s to %s.", named(c.y.Label), numberText(l.yRange[0], res.y), y(l.yRange[1]))
	for i, s := range c.series {
		kind := "Points"
		if s.line {
			kind = "Line"
		}
		label := named(s.label)
		if s.label == "" {
			label = fmt.Sprintf(" %d", i+1)
		}
		low, high := 0, 0
		for k := range s.ys {
			if s.ys[k] < s.ys[low] {
				low = k
			}
			if s.ys[k] > s.ys[high] {
				high = k
			}
		}
		last := len(s.xs) - 1
		if last == 0 {
			line("%s%s: one point, %s at %s.", kind, label, y(s.ys[0]), x(s.xs[0]))
		} else {
			x0, x1 := s.xs[0], s.xs[0]
			for _, v := range s.xs {
				x0, x1 = min(x0, v), max(x1, v)
			}
			line("%s%s: %d points from %s to %s; starts at %s, ends at %s; lowest %s at %s, highest %s at %s.",
				kind, label, len(s.xs), numberText(x0, res.x), x(x1), y(s.ys[0]), y(s.ys[last]),
				y(s.ys[low]), x(s.xs[low]), y(s.ys[high]), x(s.xs[high]))
		}
		if n := l.outside(s); n > 0 {
			b.WriteString(fmt.Sprintf(" Beyond the axes: %d of its points.", n))
		}
	}
	for _, m := range c.marks {
		line("Mark%s: %s at %s%s.", named(m.label), y(m.y), x(m.x), beyond(l.inside(m.x, m.y)))
	}
	for _, r := range c.bands {
		line("Band%s: from %s to %s%s.", named(r.label), numberText(r.x0, res.x), x(r.x1), beyond(r.x0 < l.xRange[1] && r.x1 > l.xRange[0]))
	}
	for _, r := range c.lines {
		_, _, inside := l.reference(r)
		if r.across {
			line("Line across%s: at %s%s.", named(r.label), y(r.at), beyond(inside))
		} else {
			line("Line up%s: at %s%s.", named(r.label), x(r.at), beyond(inside))
		}
	}
	for _, n := range c.notes {
		line("Note: %s", n)
	}
	return b.String()
}

func named(label string) string {
	if label == "" {
		return ""
	}
	return " “" + label + "”"
}

func beyond(inside bool) string {
	if inside {
		return ""
	}
	return ", beyond the axes"
}
