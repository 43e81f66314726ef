package plots

import (
	"math"
)

// A layout is a chart worked out: every line of text, every path, at its place. Lengths are in units of the
// drawing, y downwards from the top. The drawing is 560 units wide, so that on a telephone 360 pixels wide the
// 16-unit text is still 10 pixels high.
const (
	chartWidth  = 560.0
	chartHeight = 350.0 // grows with long titles and legends
	leastPlot   = 200.0 // height of the plot itself
	margin      = 12.0

	titleSize = 19.0
	textSize  = 16.0
	noteSize  = 14.0
	lineStep  = 1.2 // from baseline to baseline, in text sizes
	ascent    = 0.8 // room above and below the baseline, in text sizes
	descent   = 0.22

	tickGap        = 10.0 // so that the numbers of the two axes clear each other in the corner
	widestEndLabel = 0.36 * chartWidth
)

type box struct{ x0, y0, x1, y1 float64 }

func (b box) overlaps(o box) bool { return b.x0 < o.x1 && o.x0 < b.x1 && b.y0 < o.y1 && o.y0 < b.y1 }

func (b box) grown(d float64) box { return box{b.x0 - d, b.y0 - d, b.x1 + d, b.y1 + d} }

func (b box) within(o box) bool { return b.x0 >= o.x0 && b.y0 >= o.y0 && b.x1 <= o.x1 && b.y1 <= o.y1 }

type point struct{ x, y float64 }

// role says what a line of text is.
type role int

const (
	roleTitle role = iota
	roleAxis
	roleTick
	roleNote
	roleLegend
	roleEnd  // the label at the end of a line
	roleSide // the label of a mark, a reference line or a band
)

type word struct {
	role     role
	text     string
	x        float64 // left
	baseline float64
	size     float64
	bold     bool
	soft     bool
}

func (w word) box() box {
	return box{w.x, w.baseline - ascent*w.size, w.x + textWidth(w.text, w.size, w.bold), w.baseline + descent*w.size}
}

// item is what a label can belong to: a series, mark, reference line or band, by kind and index.
type item struct {
	kind  itemKind
	index int
}

type itemKind int

const (
	itemSeries itemKind = iota
	itemMark
	itemReference
	itemBand
)

// sample is the piece of a legend that shows how an item is drawn, in a box left of its text.
type sample struct {
	item item
	box  box
}

type leader struct {
	series   int
	from, to point
}

type layout struct {
	width, height float64
	plot          box
	x, y          scaleMarks
	xRange        [2]float64
	yRange        [2]float64
	pieces        [][][]point // of each line series, cut at the edges of the plot
	markers       [][]point   // of each series of points, inside the plot
	words         []word
	samples       []sample
	leaders       []leader
}

func (l *layout) px(v float64) float64 {
	return l.plot.x0 + (v-l.xRange[0])/(l.xRange[1]-l.xRange[0])*(l.plot.x1-l.plot.x0)
}

func (l *layout) py(v float64) float64 {
	return l.plot.y1 - (v-l.yRange[0])/(l.yRange[1]-l.yRange[0])*(l.plot.y1-l.plot.y0)
}

// layOut works the chart out. Labels that find no free place go into the legend, which takes height from the
// plot, so it begins anew with the longer legend until every label has a place.
func (c *Chart) layOut() *layout {
	inLegend := map[item]bool{}
	for i, s := range c.series {
		if !s.line {
			inLegend[item{itemSeries, i}] = true
		}
	}
	for {
		l, homeless := c.tryLayout(inLegend)
		if len(homeless) == 0 {
			return l
		}
		for _, it := range homeless {
			inLegend[it] = true
		}
	}
}

// tryLayout lays the chart out with the given items in the legend and returns the items that found no place.
func (c *Chart) tryLayout(inLegend map[item]bool) (*layout, []item) {
	l := &layout{width: chartWidth}
	c.setRanges(l)
	y := margin
	addLines := func(r role, text string, size float64, bold, soft bool) {
		for _, line := range wrapText(text, size, bold, chartWidth-2*margin) {
			l.words = append(l.words, word{r, line, margin, y + ascent*size, size, bold, soft})
			y += lineStep * size
		}
	}
	addLines(roleTitle, c.title, titleSize, true, false)
	if len(l.words) > 0 {
		y += 5
	}
	y = c.addLegend(l, inLegend, y)

	// The numbers of the vertical axis do not depend on the height of the plot to come: at least leastPlot.
	l.y = marksBetween(l.yRange[0], l.yRange[1], 6)
	if text := l.y.labelWith(c.y); text != "" {
		y += 2
		addLines(roleAxis, text, textSize, false, true)
		y += 4
	}
	plotTop := y + ascent*textSize/2

	left := margin
	for _, t := range l.y.ticks {
		left = max(left, margin+textWidth(t.label, textSize, false)+7)
	}
	l.plot = box{x0: left, y0: plotTop, x1: chartWidth - margin}
	endLabels := c.endLabels(l, inLegend)
	l.plot.x1 = min(l.plot.x1, chartWidth-margin-endLabels)
	c.setXTicks(l)

	below := tickGap + lineStep*textSize + margin - 4
	xLabel := wrapText(l.x.labelWith(c.x), textSize, false, chartWidth-2*margin)
	below += float64(len(xLabel)) * lineStep * textSize
	var notes []string
	for _, n := range c.notes {
		notes = append(notes, wrapText(n, noteSize, false, chartWidth-2*margin)...)
	}
	if len(notes) > 0 {
		below += 5 + float64(len(notes))*lineStep*noteSize
	}
	l.height = math.Ceil(max(chartHeight, plotTop+leastPlot+below))
	l.plot.y1 = l.height - below

	for _, t := range l.y.ticks {
		w := textWidth(t.label, textSize, false)
		l.words = append(l.words, word{role: roleTick, text: t.label, x: l.plot.x0 - 7 - w, baseline: l.py(t.at) + 0.36*textSize, size: textSize, soft: true})
	}
	y = l.plot.y1 + tickGap
	for _, t := range l.x.ticks {
		w := textWidth(t.label, textSize, false)
		l.words = append(l.words, word{role: roleTick, text: t.label, x: l.px(t.at) - w/2, baseline: y + ascent*textSize, size: textSize, soft: true})
	}
	y += lineStep * textSize
	for _, line := range xLabel {
		w := textWidth(line, textSize, false)
		x := max(margin, min(chartWidth-margin-w, (l.plot.x0+l.plot.x1-w)/2))
		l.words = append(l.words, word{role: roleAxis, text: line, x: x, baseline: y + ascent*textSize, size: textSize, soft: true})
		y += lineStep * textSize
	}
	y += 5
	for _, line := range notes {
		l.words = append(l.words, word{role: roleNote, text: line, x: margin, baseline: y + ascent*noteSize, size: noteSize, soft: true})
		y += lineStep * noteSize
	}
	c.tracePaths(l)
	return l, c.placeLabels(l, inLegend, endLabels > 0)
}

// setXTicks takes as many ticks as have room side by side, and makes room for the first and the last label.
func (c *Chart) setXTicks(l *layout) {
	left, right := l.plot.x0, l.plot.x1
	for parts := 9; ; parts-- {
		l.x = marksBetween(l.xRange[0], l.xRange[1], parts)
		l.plot.x0, l.plot.x1 = left, right
		for range 4 { // moving one end of the plot moves the label at the other a little
			l.roomForOuterTicks()
		}
		fits, end := true, margin/2-12
		for _, t := range l.x.ticks {
			half := textWidth(t.label, textSize, false) / 2
			at := l.px(t.at)
			fits = fits && at-half >= end+12-1e-6 && at+half <= chartWidth-margin/2+1e-6
			end = at + half
		}
		if fits {
			return
		}
		if parts == 1 {
			// Not even two numbers fit: keep the first alone, or none.
			for len(l.x.ticks) > 0 {
				l.x.ticks = l.x.ticks[:len(l.x.ticks)-1]
				if n := len(l.x.ticks); n == 1 {
					half := textWidth(l.x.ticks[0].label, textSize, false) / 2
					if at := l.px(l.x.ticks[0].at); at-half >= margin/2 && at+half <= chartWidth-margin/2 {
						return
					}
				}
			}
			return
		}
	}
}

// roomForOuterTicks draws the ends of the plot in until the first and the last label lie in the frame.
func (l *layout) roomForOuterTicks() {
	n := len(l.x.ticks)
	if n == 0 {
		return
	}
	part := func(t tick) float64 { return (t.at - l.xRange[0]) / (l.xRange[1] - l.xRange[0]) }
	first, last := l.x.ticks[0], l.x.ticks[n-1]
	if f, half := part(first), textWidth(first.label, textSize, false)/2; f < 0.5 {
		l.plot.x0 = max(l.plot.x0, (margin/2+half-f*l.plot.x1)/(1-f))
	}
	if f, half := part(last), textWidth(last.label, textSize, false)/2; f > 0.5 {
		l.plot.x1 = min(l.plot.x1, l.plot.x0+(chartWidth-margin/2-half-l.plot.x0)/f)
	}
}
