package plots

import "math"

// tracePaths turns the data into points of the drawing: lines cut at the edges of the plot, markers only inside it.
func (c *Chart) tracePaths(l *layout) {
	l.pieces = make([][][]point, len(c.series))
	l.markers = make([][]point, len(c.series))
	for i, s := range c.series {
		if s.line {
			l.pieces[i] = l.traceLine(s)
		} else {
			l.markers[i] = l.traceMarkers(s)
		}
	}
}

func (l *layout) inside(x, y float64) bool {
	return x >= l.xRange[0] && x <= l.xRange[1] && y >= l.yRange[0] && y <= l.yRange[1]
}

func (l *layout) traceLine(s series) [][]point {
	var pieces [][]point
	var piece []point
	finish := func() {
		if len(piece) > 0 {
			pieces = append(pieces, thinOut(piece))
		}
		piece = nil
	}
	if len(s.xs) == 1 && l.inside(s.xs[0], s.ys[0]) {
		return [][]point{{{l.px(s.xs[0]), l.py(s.ys[0])}}}
	}
	for i := 1; i < len(s.xs); i++ {
		t0, t1, ok := l.visiblePart(s.xs[i-1], s.ys[i-1], s.xs[i], s.ys[i])
		if !ok {
			finish()
			continue
		}
		from := l.between(s, i, t0)
		if t0 > 0 || len(piece) == 0 { // the line comes in from outside
			finish()
			piece = append(piece, from)
		}
		piece = append(piece, l.between(s, i, t1))
	}
	finish()
	return pieces
}

// between returns the point of the drawing at fraction t of the way from point i-1 to point i.
func (l *layout) between(s series, i int, t float64) point {
	x := s.xs[i-1]*(1-t) + s.xs[i]*t
	y := s.ys[i-1]*(1-t) + s.ys[i]*t
	// Rounding must not carry a point beyond the edge that it was cut at.
	x = max(l.xRange[0], min(l.xRange[1], x))
	y = max(l.yRange[0], min(l.yRange[1], y))
	return point{l.px(x), l.py(y)}
}

// visiblePart returns which part, from fraction t0 to t1, of a straight line lies inside the axes
// (Liang and Barsky, ACM Transactions on Graphics 3 (1984) 1–22; citation from memory).
func (l *layout) visiblePart(x0, y0, x1, y1 float64) (t0, t1 float64, ok bool) {
	t1 = 1
	cut := func(from, to, lo, hi float64) bool {
		if from == to {
			return from >= lo && from <= hi
		}
		a, b := (lo-from)/(to-from), (hi-from)/(to-from)
		if a > b {
			a, b = b, a
		}
		t0, t1 = max(t0, a), min(t1, b)
		return t0 <= t1
	}
	ok = cut(x0, x1, l.xRange[0], l.xRange[1]) && cut(y0, y1, l.yRange[0], l.yRange[1])
	return t0, t1, ok
}

// thinOut keeps of each run of points that share one column, one unit wide, the first, the lowest, the highest
// and the last: what is drawn looks the same, and a series of any length gives a small drawing.
func thinOut(piece []point) []point {
	if len(piece) < 200 {
		return piece
	}
	var out []point
	for i := 0; i < len(piece); {
		column := math.Floor(piece[i].x)
		low, high, last := i, i, i
		for last+1 < len(piece) && math.Floor(piece[last+1].x) == column {
			last++
			if piece[last].y < piece[low].y {
				low = last
			}
			if piece[last].y > piece[high].y {
				high = last
			}
		}
		kept := i
		out = append(out, piece[i])
		for _, k := range []int{min(low, high), max(low, high), last} {
			if k > kept {
				out = append(out, piece[k])
				kept = k
			}
		}
		i = last + 1
	}
	return out
}

// traceMarkers returns the markers inside the axes; of those that would cover each other to a unit, one.
func (l *layout) traceMarkers(s series) []point {
	var out []point
	seen := map[[2]int]bool{}
	for i := range s.xs {
		if !l.inside(s.xs[i], s.ys[i]) {
			continue
		}
		p := point{l.px(s.xs[i]), l.py(s.ys[i])}
		cell := [2]int{int(math.Round(p.x)), int(math.Round(p.y))}
		if len(s.xs) > 200 && seen[cell] {
			continue
		}
		seen[cell] = true
		out = append(out, p)
	}
	return out
}

// outside counts the points of a series beyond the axes.
func (l *layout) outside(s series) int {
	n := 0
	for i := range s.xs {
		if !l.inside(s.xs[i], s.ys[i]) {
			n++
		}
	}
	return n
}
