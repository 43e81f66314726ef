package plots

import (
	"fmt"
	"math"

	"gonum.org/v1/plot/vg"
)

// A triangle worked out: the corners, every line of text and every path at its place.
type triangleLayout struct {
	*layout
	left, right, top point
	samples          []triangleSample
}

// triangleSample is the piece of the legend that shows how a path is drawn.
type triangleSample struct {
	path int // -1 for a mark
	box  box
}

const (
	triangleStep = 0.2 // between grid lines, as a share
	sideGap      = 6.0 // between a side and its numbers
)

// at returns the place of a mixture.
func (l *triangleLayout) at(f fraction) point {
	return point{
		l.left.x*f.left + l.right.x*f.right + l.top.x*f.top,
		l.left.y*f.left + l.right.y*f.right + l.top.y*f.top,
	}
}

// layOut works the diagram out. Marks whose label finds no free place are named in the legend.
func (t *Triangle) layOut() *triangleLayout {
	inLegend := map[int]bool{}
	for {
		l, homeless := t.tryLayout(inLegend)
		if len(homeless) == 0 {
			return l
		}
		for _, i := range homeless {
			inLegend[i] = true
		}
	}
}

func (t *Triangle) tryLayout(marksInLegend map[int]bool) (*triangleLayout, []int) {
	l := &triangleLayout{layout: &layout{width: chartWidth}}
	y := margin
	lines := func(r role, text string, size float64, bold, soft, centred bool) {
		for _, line := range wrapText(text, size, bold, chartWidth-2*margin) {
			x := margin
			if centred {
				x = max(margin, (chartWidth-textWidth(line, size, bold))/2)
			}
			l.words = append(l.words, word{r, line, x, y + ascent*size, size, bold, soft})
			y += lineStep * size
		}
	}
	lines(roleTitle, t.title, titleSize, true, false, false)
	if len(l.words) > 0 {
		y += 5
	}
	y = t.addLegend(l, marksInLegend, y)
	if t.corners.Top != "" {
		y += 2
		lines(roleAxis, t.corners.Top, textSize, false, true, true)
	}
	y += 4

	// Numbers stand left of the left side, right of the right side and under the lower one.
	widest := textWidth("80", textSize, false)
	side := chartWidth - 2*(margin+widest+2*sideGap)
	const half = 0.8660254037844386 // √3/2
	l.top = point{chartWidth / 2, y}
	l.left = point{(chartWidth - side) / 2, y + side*half}
	l.right = point{(chartWidth + side) / 2, y + side*half}
	l.plot = box{l.left.x, y, l.right.x, l.left.y}
	t.sideNumbers(l)
	y = l.left.y + sideGap + lineStep*textSize + 4

	// The names of the two lower corners share a line if there is room.
	room := (chartWidth - 3*margin) / 2
	a, b := wrapText(t.corners.Left, textSize, false, room), wrapText(t.corners.Right, textSize, false, room)
	for i := range max(len(a), len(b)) {
		if i < len(a) {
			l.words = append(l.words, word{roleAxis, a[i], margin, y + ascent*textSize, textSize, false, true})
		}
		if i < len(b) {
			l.words = append(l.words, word{roleAxis, b[i], chartWidth - margin - textWidth(b[i], textSize, false), y + ascent*textSize, textSize, false, true})
		}
		y += lineStep * textSize
	}
	y += 5
	for _, n := range append([]string{t.reading()}, t.notes...) {
		lines(roleNote, n, noteSize, false, true, false)
	}
	l.height = math.Ceil(y + margin - 4)
	return l, t.placeMarks(l, marksInLegend)
}

// reading says how the numbers along the sides are read.
func (t *Triangle) reading() string {
	name := func(s, instead string) string {
		if s == "" {
			return instead
		}
		return s
	}
	return fmt.Sprintf("%s: along the foot %s, up the right side %s, down the left side %s", t.corners.Unit, name(t.corners.Right, "the right corner"), name(t.corners.Top, "the top"), name(t.corners.Left, "the left corner"))
}

// ticksOf returns the shares at which grid lines lie.
func ticksOf() []float64 {
	var out []float64
	for i := 1; float64(i)*triangleStep < 1-1e-9; i++ {
		out = append(out, float64(i)*triangleStep)
	}
	return out
}

func (t *Triangle) sideNumbers(l *triangleLayout) {
	for _, s := range ticksOf() {
		text := numberText(100*s, 0)
		w := textWidth(text, textSize, false)
		foot, right, left := l.at(fraction{1 - s, s, 0}), l.at(fraction{0, 1 - s, s}), l.at(fraction{s, 0, 1 - s})
		for _, at := range []point{
			{foot.x - w/2, foot.y + sideGap + ascent*textSize},
			{right.x + sideGap, right.y + 0.2*textSize},
			{left.x - sideGap - w, left.y + 0.2*textSize},
		} {
			l.words = append(l.words, word{role: roleTick, text: text, x: at.x, baseline: at.y, size: textSize, soft: true})
		}
	}
}

// addLegend names every path, and the marks that found no place, in rows from y downwards and returns where it ends.
func (t *Triangle) addLegend(l *triangleLayout, marks map[int]bool, y float64) float64 {
	step := lineStep * textSize
	x, rows := margin, 0
	add := func(path int, text string, sampleWidth float64) {
		if text == "" {
			return
		}
		lines := wrapText(text, textSize, false, chartWidth-2*margin-sampleWidth-sampleGap)
		width := 0.0
		for _, line := range lines {
			width = max(width, sampleWidth+sampleGap+textWidth(line, textSize, false))
		}
		if x > margin && (x+width > chartWidth-margin || len(lines) > 1) {
			x, y = margin, y+step
		}
		l.samples = append(l.samples, triangleSample{path, box{x, y, x + sampleWidth, y + textSize}})
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
	for i, p := range t.paths {
		width := 30.0
		if p.kind == pointPath {
			width = 12
		}
		add(i, p.label, width)
	}
	for i := range t.marks {
		if marks[i] {
			add(-1, t.markText(i), 12)
		}
	}
	if rows == 0 {
		return y
	}
	return y + step + 3
}

func (t *Triangle) markText(i int) string {
	m := t.marks[i]
	if m.label == "" {
		return t.mixture(m.at)
	}
	return m.label
}

// placeMarks writes the label of each mark beside it and returns the marks that found no place.
func (t *Triangle) placeMarks(l *triangleLayout, inLegend map[int]bool) []int {
	taken := newOccupancy(l.plot)
	taken.addLine([]point{l.left, l.right})
	taken.addLine([]point{l.right, l.top})
	taken.addLine([]point{l.top, l.left})
	for _, p := range t.paths {
		switch p.kind {
		case pointPath:
			for _, f := range p.at {
				q := l.at(f)
				taken.add(box{q.x, q.y, q.x, q.y}.grown(markerRadius + 1))
			}
		case tiePaths:
			for i := 0; i+1 < len(p.at); i += 2 {
				taken.addLine([]point{l.at(p.at[i]), l.at(p.at[i+1])})
			}
		default:
			taken.addLine(l.along(p.at))
		}
	}
	for _, m := range t.marks {
		q := l.at(m.at)
		taken.add(box{q.x, q.y, q.x, q.y}.grown(markRadius + 1))
	}
	for _, w := range l.words { // numbers of the sides reach into the box around the triangle
		if w.role == roleTick {
			taken.add(w.box().grown(2))
		}
	}
	var homeless []int
	for i, m := range t.marks {
		if !inLegend[i] && !l.beside(taken, t.markText(i), l.at(m.at), markRadius+6.5, roleSide) {
			homeless = append(homeless, i)
		}
	}
	return homeless
}

func (l *triangleLayout) along(at []fraction) []point {
	out := make([]point, len(at))
	for i, f := range at {
		out[i] = l.at(f)
	}
	return out
}

// SVG returns the diagram as one SVG element for a page, with its title and text alternative. The same diagram gives the same
// bytes. Panics with *Error if it is empty.
func (t *Triangle) SVG() string {
	t.mustHaveSeries("Triangle.SVG")
	l := t.layOut()
	canvas := newSVGCanvas(l.width, l.height)
	t.draw(l, canvas)
	return canvas.document(t.name(), t.AltText())
}

// PNG returns the diagram as a PNG picture; dpi is the resolution in dots per inch, from 30 to 600, rounded to a whole number.
// Panics with *Error if the diagram is empty or dpi is out of range.
func (t *Triangle) PNG(dpi float64) []byte {
	t.mustHaveSeries("Triangle.PNG")
	checkDPI("Triangle.PNG", dpi)
	l := t.layOut()
	return picture(l.width, l.height, dpi, func(c vg.Canvas) { t.draw(l, c) })
}

func (t *Triangle) draw(l *triangleLayout, canvas vg.Canvas) {
	p := pen{canvas, l.height}
	p.fill(paper, box{0, 0, l.width, l.height})
	for _, s := range t.paths {
		if s.kind == shadedPath {
			p.area(l.along(s.at))
		}
	}
	var grid vg.Path
	for _, s := range ticksOf() {
		for _, ends := range [][2]fraction{{{1 - s, s, 0}, {0, s, 1 - s}}, {{0, 1 - s, s}, {1 - s, 0, s}}, {{s, 0, 1 - s}, {s, 1 - s, 0}}} {
			a, b := l.at(ends[0]), l.at(ends[1])
			grid.Move(p.at(a.x, a.y))
			grid.Line(p.at(b.x, b.y))
		}
	}
	p.strokePath(gridInk, thin, nil, grid)
	p.stroke(axisInk, thin, nil, l.left, l.right, l.top, l.left)
	for i, s := range t.paths {
		t.drawPath(l, p, i, s)
	}
	for _, m := range t.marks {
		q := l.at(m.at)
		p.ring(q.x, q.y)
	}
	for _, s := range l.samples {
		t.drawSample(p, s)
	}
	for _, w := range l.words {
		p.SetColor(ink)
		if w.soft {
			p.SetColor(softInk)
		}
		p.FillString(faceOf(w.size, w.bold), p.at(w.x, w.baseline), w.text)
	}
}

// area shades the inside of a polygon.
func (p pen) area(corners []point) {
	var path vg.Path
	for i, q := range corners {
		if i == 0 {
			path.Move(p.at(q.x, q.y))
		} else {
			path.Line(p.at(q.x, q.y))
		}
	}
	path.Close()
	p.SetColor(bandShade)
	p.Fill(path)
	p.strokePath(bandEdge, thin, nil, path)
}

// The dash of a path that is only qualitative, in units of the drawing.
var qualitativeDash = []vg.Length{7, 5}

func (t *Triangle) drawPath(l *triangleLayout, p pen, i int, s trianglePath) {
	points := l.along(s.at)
	switch s.kind {
	case solidPath, dashedPath:
		if len(points) == 1 {
			var dot vg.Path
			circlePath(&dot, vg.Length(points[0].x), vg.Length(l.height-points[0].y), markerRadius)
			p.SetColor(colourOf(i))
			p.Fill(dot)
			return
		}
		var dash []vg.Length
		if s.kind == dashedPath {
			dash = qualitativeDash
		}
		p.stroke(colourOf(i), lineWidth, dash, thinOut(points)...)
	case tiePaths:
		var path vg.Path
		for k := 0; k+1 < len(points); k += 2 {
			path.Move(p.at(points[k].x, points[k].y))
			path.Line(p.at(points[k+1].x, points[k+1].y))
		}
		p.strokePath(colourOf(i), thin, nil, path)
	case pointPath:
		var dots vg.Path
		for _, q := range points {
			markerPath(&dots, s.order, vg.Length(q.x), vg.Length(l.height-q.y), markerRadius)
		}
		p.SetColor(colourOf(i))
		p.Fill(dots)
	}
}

func (t *Triangle) drawSample(p pen, s triangleSample) {
	mid, centre := (s.box.y0+s.box.y1)/2, (s.box.x0+s.box.x1)/2
	if s.path < 0 {
		p.ring(centre, mid)
		return
	}
	of := t.paths[s.path]
	from, to := point{s.box.x0, mid}, point{s.box.x1, mid}
	switch of.kind {
	case solidPath:
		p.stroke(colourOf(s.path), lineWidth, nil, from, to)
	case dashedPath:
		p.stroke(colourOf(s.path), lineWidth, qualitativeDash, from, to)
	case tiePaths:
		p.stroke(colourOf(s.path), thin, nil, from, to)
	case pointPath:
		var path vg.Path
		at := p.at(centre, mid)
		markerPath(&path, of.order, at.X, at.Y, markerRadius)
		p.SetColor(colourOf(s.path))
		p.Fill(path)
	case shadedPath:
		p.area([]point{{s.box.x0, s.box.y0}, {s.box.x1, s.box.y0}, {s.box.x1, s.box.y1}, {s.box.x0, s.box.y1}})
	}
}
