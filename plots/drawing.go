package plots

import (
	"bytes"
	"fmt"
	"image/color"
	"image/png"
	"math"

	"golang.org/x/image/font/sfnt"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/vgimg"
)

// SVG returns the chart as one SVG element for a page: it scales to the width it is given, carries its title and
// text alternative, and holds its lettering as outlines. The same chart gives the same bytes.
// Panics with *Error if the chart has no series.
func (c *Chart) SVG() string {
	c.mustHaveSeries("Chart.SVG")
	l := c.layOut()
	canvas := newSVGCanvas(l.width, l.height)
	c.draw(l, canvas)
	return canvas.document(c.name(), c.describe(l))
}

// PNG returns the chart as a PNG picture; dpi is the resolution in dots per inch, from 30 to 600, rounded to a
// whole number. The drawing is 560/72 inch wide: 747 pixels at 96 dots per inch.
// Panics with *Error if the chart has no series or dpi is out of range.
func (c *Chart) PNG(dpi float64) []byte {
	c.mustHaveSeries("Chart.PNG")
	checkDPI("Chart.PNG", dpi)
	l := c.layOut()
	return picture(l.width, l.height, dpi, func(canvas vg.Canvas) { c.draw(l, canvas) })
}

// checkDPI panics with *Error for a resolution that no picture has.
func checkDPI(call string, dpi float64) {
	if !(dpi >= 30 && dpi <= 600) {
		panic(&Error{Func: call, Index: -1, Problem: fmt.Sprintf("the resolution is %v dots per inch", dpi),
			Want: "give one from 30 to 600"})
	}
}

// picture draws on a raster canvas and returns it as PNG.
func picture(width, height, dpi float64, draw func(vg.Canvas)) []byte {
	canvas := outlined{vgimg.NewWith(vgimg.UseWH(vg.Length(width), vg.Length(height)),
		vgimg.UseDPI(int(math.Round(dpi))), vgimg.UseBackgroundColor(paper))}
	draw(canvas)
	var out bytes.Buffer
	if err := png.Encode(&out, canvas.Image()); err != nil {
		panic("plots: a picture in memory cannot be written: " + err.Error())
	}
	return out.Bytes()
}

// outlined sets text as filled outlines, so that PNG and SVG have the same letters in the same places.
type outlined struct{ *vgimg.Canvas }

// FillString implements vg.Canvas.
func (c outlined) FillString(face font.Face, pt vg.Point, text string) {
	set, _ := setText(face.Face, text)
	unit := face.Font.Size / vg.Length(face.Face.UnitsPerEm())
	var path vg.Path
	for _, g := range set {
		at := func(p [2]int) vg.Point {
			x := float64(g.x) + float64(p[0])*g.scale
			y := float64(g.rise) - float64(p[1])*g.scale
			return vg.Point{X: pt.X + vg.Length(x)*unit, Y: pt.Y + vg.Length(y)*unit}
		}
		open := false
		for _, s := range g.segments {
			switch s.op {
			case sfnt.SegmentOpMoveTo:
				if open {
					path.Close()
				}
				open = true
				path.Move(at(s.points[0]))
			case sfnt.SegmentOpLineTo:
				path.Line(at(s.points[0]))
			case sfnt.SegmentOpQuadTo:
				path.QuadTo(at(s.points[0]), at(s.points[1]))
			case sfnt.SegmentOpCubeTo:
				path.CubeTo(at(s.points[0]), at(s.points[1]), at(s.points[2]))
			}
		}
		if open {
			path.Close()
		}
	}
	if len(path) > 0 {
		c.Fill(path)
	}
}

// pen draws with y downwards on a canvas whose y goes upwards.
type pen struct {
	vg.Canvas
	height float64
}

func (p pen) at(x, y float64) vg.Point { return vg.Point{X: vg.Length(x), Y: vg.Length(p.height - y)} }

func (p pen) stroke(colour color.Color, width vg.Length, dash []vg.Length, points ...point) {
	var path vg.Path
	for i, q := range points {
		if i == 0 {
			path.Move(p.at(q.x, q.y))
		} else {
			path.Line(p.at(q.x, q.y))
		}
	}
	p.strokePath(colour, width, dash, path)
}

func (p pen) strokePath(colour color.Color, width vg.Length, dash []vg.Length, path vg.Path) {
	p.SetColor(colour)
	p.SetLineWidth(width)
	p.SetLineDash(dash, 0)
	p.Stroke(path)
}

func (p pen) fill(colour color.Color, b box) {
	var path vg.Path
	path.Move(p.at(b.x0, b.y0))
	path.Line(p.at(b.x1, b.y0))
	path.Line(p.at(b.x1, b.y1))
	path.Line(p.at(b.x0, b.y1))
	path.Close()
	p.SetColor(colour)
	p.Fill(path)
}

func (c *Chart) draw(l *layout, canvas vg.Canvas) {
	p := pen{canvas, l.height}
	p.fill(paper, box{0, 0, l.width, l.height})
	for _, b := range c.bands {
		x0, x1 := max(b.x0, l.xRange[0]), min(b.x1, l.xRange[1])
		if x0 < x1 {
			p.fill(bandShade, box{l.px(x0), l.plot.y0, l.px(x1), l.plot.y1})
		}
	}
	c.drawGrid(l, p)
	for _, r := range c.lines {
		if from, to, ok := l.reference(r); ok {
			p.stroke(softInk, referenceWidth, nil, from, to)
		}
	}
	for i := range c.series {
		c.drawSeries(l, p, i)
	}
	for _, m := range c.marks {
		if l.inside(m.x, m.y) {
			p.ring(l.px(m.x), l.py(m.y))
		}
	}
	for _, d := range l.leaders {
		p.stroke(colourOf(d.series), thin, nil, d.from, d.to)
	}
	for _, s := range l.samples {
		c.drawSample(p, s)
	}
	for _, w := range l.words {
		p.SetColor(ink)
		if w.soft {
			p.SetColor(softInk)
		}
		p.FillString(faceOf(w.size, w.bold), p.at(w.x, w.baseline), w.text)
	}
}

func (c *Chart) drawGrid(l *layout, p pen) {
	var grid vg.Path
	for _, t := range l.x.ticks {
		grid.Move(p.at(l.px(t.at), l.plot.y0))
		grid.Line(p.at(l.px(t.at), l.plot.y1))
	}
	for _, t := range l.y.ticks {
		grid.Move(p.at(l.plot.x0, l.py(t.at)))
		grid.Line(p.at(l.plot.x1, l.py(t.at)))
	}
	p.strokePath(gridInk, thin, nil, grid)
	for _, b := range c.bands { // the edges of a band stay visible where it is narrow
		for _, x := range []float64{b.x0, b.x1} {
			if x >= l.xRange[0] && x <= l.xRange[1] {
				p.stroke(bandEdge, thin, nil, point{l.px(x), l.plot.y0}, point{l.px(x), l.plot.y1})
			}
		}
	}
	if l.yRange[0] < 0 && l.yRange[1] > 0 {
		p.stroke(axisInk, thin, nil, point{l.plot.x0, l.py(0)}, point{l.plot.x1, l.py(0)})
	}
	p.stroke(axisInk, thin, nil, point{l.plot.x0, l.plot.y1}, point{l.plot.x1, l.plot.y1})
}

func colourOf(series int) color.Color { return seriesColours[series%len(seriesColours)] }

func (c *Chart) drawSeries(l *layout, p pen, i int) {
	s := c.series[i]
	var path, dots vg.Path
	for _, piece := range l.pieces[i] {
		if len(piece) == 1 { // a line of one point
			circlePath(&dots, vg.Length(piece[0].x), vg.Length(l.height-piece[0].y), markerRadius)
			continue
		}
		for k, q := range piece {
			if k == 0 {
				path.Move(p.at(q.x, q.y))
			} else {
				path.Line(p.at(q.x, q.y))
			}
		}
	}
	for _, q := range l.markers[i] {
		markerPath(&dots, s.order, vg.Length(q.x), vg.Length(l.height-q.y), markerRadius)
	}
	if len(path) > 0 {
		p.strokePath(colourOf(i), lineWidth, dashOf(s.order), path)
	}
	if len(dots) > 0 {
		p.SetColor(colourOf(i))
		p.Fill(dots)
	}
}

// ring draws a mark.
func (p pen) ring(x, y float64) {
	at := p.at(x, y)
	var outer, inner vg.Path
	circlePath(&outer, at.X, at.Y, markRadius)
	circlePath(&inner, at.X, at.Y, 1.8)
	p.SetColor(paper)
	p.Fill(outer)
	p.strokePath(ink, 1.6, nil, outer)
	p.SetColor(ink)
	p.Fill(inner)
}

func (c *Chart) drawSample(p pen, s sample) {
	mid := (s.box.y0 + s.box.y1) / 2
	centre := (s.box.x0 + s.box.x1) / 2
	across := []point{{s.box.x0, mid}, {s.box.x1, mid}}
	switch s.item.kind {
	case itemSeries:
		of := c.series[s.item.index]
		if of.line {
			p.stroke(colourOf(s.item.index), lineWidth, dashOf(of.order), across...)
			return
		}
		var path vg.Path
		at := p.at(centre, mid)
		markerPath(&path, of.order, at.X, at.Y, markerRadius)
		p.SetColor(colourOf(s.item.index))
		p.Fill(path)
	case itemMark:
		p.ring(centre, mid)
	case itemReference:
		if c.lines[s.item.index].across {
			p.stroke(softInk, referenceWidth, nil, across...)
		} else {
			p.stroke(softInk, referenceWidth, nil, point{centre, s.box.y0}, point{centre, s.box.y1})
		}
	case itemBand:
		p.fill(bandShade, s.box)
		p.stroke(bandEdge, thin, nil, point{s.box.x0, s.box.y0}, point{s.box.x0, s.box.y1})
		p.stroke(bandEdge, thin, nil, point{s.box.x1, s.box.y0}, point{s.box.x1, s.box.y1})
	}
}
