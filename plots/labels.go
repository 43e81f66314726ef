package plots

import (
	"math"
	"sort"
)

const (
	endGap   = 7.0
	endShift = 11.0 // more gap where a leader leads to a label that had to move
	boxRise  = ascent * textSize
	boxDrop  = descent * textSize
	rowStep  = (ascent+descent)*textSize + 1
	mostMove = 1.6 * rowStep // how far a label may move from the end of its line
)

// endsRight reports whether the line's last point is at, or beyond, the right edge.
func endsRight(l *layout, s series) bool {
	if len(s.xs) < 2 {
		return false
	}
	last := s.xs[len(s.xs)-1]
	return last >= l.xRange[1]-1e-9*(l.xRange[1]-l.xRange[0])
}

// endLabels returns how much room right of the plot the labels of lines ending there need; 0 if there are none.
func (c *Chart) endLabels(l *layout, inLegend map[item]bool) float64 {
	width := 0.0
	for i, s := range c.series {
		if s.line && s.label != "" && !inLegend[item{itemSeries, i}] && endsRight(l, s) {
			width = max(width, textWidth(s.label, textSize, false))
		}
	}
	if width == 0 || width > widestEndLabel {
		return 0
	}
	return width + endGap + endShift
}

// placeLabels gives each label outside the legend a free place and returns the items that got none.
// If one line finds no place for its label, all lines are named in the legend, so that the reader looks in one place.
func (c *Chart) placeLabels(l *layout, inLegend map[item]bool, roomAtEnd bool) []item {
	taken := newOccupancy(l.plot)
	c.occupy(l, taken)
	var homeless []item
	for i := range c.marks {
		it := item{itemMark, i}
		if inLegend[it] {
			continue
		}
		m := c.marks[i]
		if !l.inside(m.x, m.y) || !l.beside(taken, c.nameOf(it), point{l.px(m.x), l.py(m.y)}, markRadius+6.5, roleSide) {
			homeless = append(homeless, it)
		}
	}
	if !c.placeEnds(l, taken, inLegend, roomAtEnd) {
		for i, s := range c.series {
			if s.line {
				homeless = append(homeless, item{itemSeries, i})
			}
		}
		return homeless
	}
	for i, r := range c.lines {
		it := item{itemReference, i}
		if !inLegend[it] && r.label != "" && !l.alongReference(taken, r) {
			homeless = append(homeless, it)
		}
	}
	for i, b := range c.bands {
		it := item{itemBand, i}
		if !inLegend[it] && b.label != "" && !l.inBand(taken, b) {
			homeless = append(homeless, it)
		}
	}
	return homeless
}

func (c *Chart) occupy(l *layout, taken *occupancy) {
	for i := range c.series {
		for _, piece := range l.pieces[i] {
			taken.addLine(piece)
		}
		for _, p := range l.markers[i] {
			taken.add(box{p.x, p.y, p.x, p.y}.grown(markerRadius + 1))
		}
	}
	for _, m := range c.marks {
		if l.inside(m.x, m.y) {
			p := point{l.px(m.x), l.py(m.y)}
			taken.add(box{p.x, p.y, p.x, p.y}.grown(markRadius + 1))
		}
	}
	for _, r := range c.lines {
		if from, to, ok := l.reference(r); ok {
			taken.addLine([]point{from, to})
		}
	}
}

// reference returns the ends of a reference line in the drawing.
func (l *layout) reference(r reference) (from, to point, ok bool) {
	if r.across {
		y := l.py(r.at)
		return point{l.plot.x0, y}, point{l.plot.x1, y}, r.at >= l.yRange[0] && r.at <= l.yRange[1]
	}
	x := l.px(r.at)
	return point{x, l.plot.y0}, point{x, l.plot.y1}, r.at >= l.xRange[0] && r.at <= l.xRange[1]
}

// put sets text with its left end at x if the place is free.
func (l *layout) put(taken *occupancy, r role, text string, x, baseline float64) bool {
	w := word{role: r, text: text, x: x, baseline: baseline, size: textSize}
	b := w.box()
	if !b.within(l.plot.grown(-1)) || !taken.free(b.grown(2)) {
		return false
	}
	taken.add(b.grown(2))
	l.words = append(l.words, w)
	return true
}

// beside sets text close to a point: right of it, above, below, then left.
func (l *layout) beside(taken *occupancy, text string, p point, gap float64, r role) bool {
	w := textWidth(text, textSize, false)
	right, left, centred := p.x+gap, p.x-gap-w, p.x-w/2
	middle, above, below := p.y+0.36*textSize, p.y-gap-boxDrop, p.y+gap+boxRise
	for _, at := range []point{
		{right, middle}, {right, middle - 9}, {right, middle + 9}, {right - 4, above}, {right - 4, below},
		{centred, above}, {centred, below}, {left + 4, above}, {left + 4, below}, {left, middle}, {left, middle - 9}, {left, middle + 9},
		{centred, above - 8}, {centred, below + 8}, {right, above - 8}, {right, below + 8}, {left, above - 8}, {left, below + 8},
	} {
		if l.put(taken, r, text, at.x, at.y) {
			return true
		}
	}
	return false
}

// placeEnds names each line at its end; false if one cannot be named there without doubt.
func (c *Chart) placeEnds(l *layout, taken *occupancy, inLegend map[item]bool, roomAtEnd bool) bool {
	type end struct {
		series int
		y      float64 // of the line's end
		row    float64 // where the label's middle goes
	}
	var ends []end
	for i, s := range c.series {
		if !s.line || s.label == "" || inLegend[item{itemSeries, i}] {
			continue
		}
		pieces := l.pieces[i]
		if len(pieces) == 0 {
			return false
		}
		last := pieces[len(pieces)-1]
		p := last[len(last)-1]
		if endsRight(l, s) && p.x > l.plot.x1-0.5 {
			if !roomAtEnd {
				return false
			}
			ends = append(ends, end{i, p.y, p.y})
			continue
		}
		if !l.beside(taken, s.label, p, endGap, roleEnd) {
			return false
		}
	}
	sort.SliceStable(ends, func(i, j int) bool { return ends[i].y < ends[j].y })
	rows := make([]float64, len(ends))
	for i := range ends {
		if i > 0 && ends[i].y-ends[i-1].y < 3 {
			return false // two lines end together: nobody could tell which label is whose
		}
		rows[i] = ends[i].y
	}
	spread(rows, rowStep, l.plot.y0-2, l.plot.y1+1)
	for i := range ends {
		ends[i].row = rows[i]
		if math.Abs(rows[i]-ends[i].y) > mostMove {
			return false
		}
	}
	moved := false
	for _, e := range ends {
		moved = moved || math.Abs(e.row-e.y) > 3
	}
	for _, e := range ends {
		x := l.plot.x1 + endGap
		if moved {
			x += endShift
			l.leaders = append(l.leaders, leader{e.series, point{l.plot.x1 + 2, e.y}, point{x - 3, e.row}})
		}
		l.words = append(l.words, word{role: roleEnd, text: c.series[e.series].label, x: x, baseline: e.row + 0.29*textSize, size: textSize})
	}
	return true
}

// spread moves sorted rows apart to at least step between neighbours, as little as possible in the sum of squares,
// and inside lo to hi if they all fit there.
func spread(rows []float64, step, lo, hi float64) {
	type block struct {
		sum   float64 // of wanted place less offset in the block
		n     int
		start float64
	}
	var blocks []block
	place := func(b block) float64 {
		return max(lo, min(hi-step*float64(b.n-1), b.sum/float64(b.n)))
	}
	for _, y := range rows {
		b := block{sum: y, n: 1}
		b.start = place(b)
		for len(blocks) > 0 {
			last := blocks[len(blocks)-1]
			if last.start+step*float64(last.n) <= b.start {
				break
			}
			b = block{sum: last.sum + b.sum - step*float64(last.n*b.n), n: last.n + b.n}
			b.start = place(b)
			blocks = blocks[:len(blocks)-1]
		}
		blocks = append(blocks, b)
	}
	i := 0
	for _, b := range blocks {
		for k := range b.n {
			rows[i] = b.start + step*float64(k)
			i++
		}
	}
}

// alongReference names a reference line close to it, from its far end inwards.
func (l *layout) alongReference(taken *occupancy, r reference) bool {
	from, to, ok := l.reference(r)
	if !ok {
		return false
	}
	w := textWidth(r.label, textSize, false)
	const gap = 5
	if r.across {
		for _, baseline := range []float64{from.y - gap - boxDrop, from.y + gap + boxRise} {
			for x := to.x - 4 - w; x >= from.x+4; x -= 14 {
				if l.put(taken, roleSide, r.label, x, baseline) {
					return true
				}
			}
		}
		return false
	}
	for _, x := range []float64{from.x + gap, from.x - gap - w} {
		for baseline := from.y + 3 + boxRise; baseline <= to.y-3-boxDrop; baseline += 9 {
			if l.put(taken, roleSide, r.label, x, baseline) {
				return true
			}
		}
	}
	return false
}

// inBand names a band inside it or, if it is too narrow, close beside it.
func (l *layout) inBand(taken *occupancy, b band) bool {
	x0, x1 := l.px(max(b.x0, l.xRange[0])), l.px(min(b.x1, l.xRange[1]))
	if x1 <= x0 {
		return false
	}
	w := textWidth(b.label, textSize, false)
	places := []float64{x1 + 4, x0 - 4 - w}
	if w+6 <= x1-x0 {
		places = []float64{(x0 + x1 - w) / 2, x0 + 3, x1 - 3 - w}
	}
	for _, x := range places {
		for baseline := l.plot.y0 + 3 + boxRise; baseline <= l.plot.y1-3-boxDrop; baseline += 9 {
			if l.put(taken, roleSide, b.label, x, baseline) {
				return true
			}
		}
	}
	return false
}
