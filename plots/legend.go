package plots

import "strings"

const (
	sampleGap = 7.0
	legendGap = 20.0
)

// sampleWidth returns how wide the sample of an item is in the legend.
func (c *Chart) sampleWidth(it item) float64 {
	switch {
	case it.kind == itemMark, it.kind == itemSeries && !c.series[it.index].line, it.kind == itemReference && !c.lines[it.index].across:
		return 12
	}
	return 30
}

// addLegend sets the legend in rows from y downwards and returns where it ends.
func (c *Chart) addLegend(l *layout, inLegend map[item]bool, y float64) float64 {
	step := lineStep * textSize
	x, rows := margin, 0
	for _, it := range c.items() {
		text := c.nameOf(it)
		if !inLegend[it] || text == "" {
			continue
		}
		if !c.visible(l, it) {
			text += " (beyond the axes)"
		}
		sampleWidth := c.sampleWidth(it)
		lines := wrapText(text, textSize, false, chartWidth-2*margin-sampleWidth-sampleGap)
		width := 0.0
		for _, line := range lines {
			width = max(width, sampleWidth+sampleGap+textWidth(line, textSize, false))
		}
		if x > margin && (x+width > chartWidth-margin || len(lines) > 1) {
			x, y = margin, y+step
		}
		l.samples = append(l.samples, sample{it, box{x, y, x + sampleWidth, y + textSize}})
		for i, line := range lines {
			if i > 0 {
				y += step
			}
			l.words = append(l.words, word{role: roleLegend, text: line, x: x + sampleWidth + sampleGap, baseline: y + ascent*textSize, size: textSize})
		}
		rows++
		if x += width + legendGap; len(lines) > 1 {
			x = chartWidth
		}
	}
	if rows == 0 {
		return y
	}
	return y + step + 3
}

// items returns all that can stand in a legend, in its order.
func (c *Chart) items() []item {
	var all []item
	for i := range c.series {
		all = append(all, item{itemSeries, i})
	}
	for i := range c.marks {
		all = append(all, item{itemMark, i})
	}
	for i := range c.lines {
		all = append(all, item{itemReference, i})
	}
	for i := range c.bands {
		all = append(all, item{itemBand, i})
	}
	return all
}

// nameOf returns the text that stands for an item.
func (c *Chart) nameOf(it item) string {
	switch it.kind {
	case itemSeries:
		return c.series[it.index].label
	case itemMark:
		m := c.marks[it.index]
		value := numberText(m.y, c.resolution().y)
		if m.label == "" {
			return value
		}
		return strings.TrimSuffix(m.label, ":") + ": " + value
	case itemReference:
		return c.lines[it.index].label
	default:
		return c.bands[it.index].label
	}
}

// visible reports whether any of an item lies inside the axes.
func (c *Chart) visible(l *layout, it item) bool {
	switch it.kind {
	case itemSeries:
		s := c.series[it.index]
		visible := l.outside(s) < len(s.xs)
		for i := 1; s.line && !visible && i < len(s.xs); i++ {
			_, _, visible = l.visiblePart(s.xs[i-1], s.ys[i-1], s.xs[i], s.ys[i])
		}
		return visible
	case itemMark:
		return l.inside(c.marks[it.index].x, c.marks[it.index].y)
	case itemReference:
		_, _, ok := l.reference(c.lines[it.index])
		return ok
	default:
		return c.bands[it.index].x0 < l.xRange[1] && c.bands[it.index].x1 > l.xRange[0]
	}
}
