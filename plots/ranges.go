package plots

import "math"

// setRanges sets the ends of both axes.
func (c *Chart) setRanges(l *layout) {
	x0, x1 := math.Inf(1), math.Inf(-1)
	y0, y1 := x0, x1
	onlyPoints := true
	takeX := func(v float64) { x0, x1 = min(x0, v), max(x1, v) }
	takeY := func(v float64) { y0, y1 = min(y0, v), max(y1, v) }
	for _, s := range c.series {
		onlyPoints = onlyPoints && !s.line
		for i := range s.xs {
			takeX(s.xs[i])
			takeY(s.ys[i])
		}
	}
	for _, m := range c.marks {
		takeX(m.x)
		takeY(m.y)
	}
	for _, b := range c.bands {
		takeX(b.x0)
		takeX(b.x1)
	}
	for _, r := range c.lines {
		if r.across {
			takeY(r.at)
		} else {
			takeX(r.at)
		}
	}
	x0, x1 = widen(x0, x1)
	y0, y1 = widen(y0, y1)
	if onlyPoints {
		x0, x1 = roundOut(x0, x1, 7)
	}
	y0, y1 = roundOut(y0, y1, 6)
	l.xRange, l.yRange = [2]float64{x0, x1}, [2]float64{y0, y1}
	if c.x.Min != 0 || c.x.Max != 0 {
		l.xRange = [2]float64{c.x.Min, c.x.Max}
	}
	if c.y.Min != 0 || c.y.Max != 0 {
		l.yRange = [2]float64{c.y.Min, c.y.Max}
	}
}

type resolution struct{ x, y int }

// resolution returns the powers of ten that numbers in words are written to: a thousandth of each axis.
func (c *Chart) resolution() resolution {
	l := &layout{}
	c.setRanges(l)
	size := func(r [2]float64) int { return int(math.Floor(math.Log10(r[1]-r[0]))) - 2 }
	return resolution{size(l.xRange), size(l.yRange)}
}
