package plots

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

var someLabels = []string{"", "43 % vol", "the slow run", "µ", "a label long enough to want two lines of a legend, or even three where it is narrow",
	"limit (500 mg/L)", "Übertrag ± 0.2", "H₂O → 10⁻⁶ m³", "tails", "i", "averyveryveryveryveryverylongwordwithoutaspaceinitatallthatgoesonandonandon"}

// randomChart draws a chart of any sort: spans from tiny to huge, up to eight series, marks, bands, lines, notes.
func randomChart(t *rapid.T) *Chart {
	label := rapid.SampledFrom(someLabels)
	axis := func(name string) (Axis, *rapid.Generator[float64]) {
		size := math.Pow(10, float64(rapid.IntRange(-12, 14).Draw(t, name+"Size")))
		base := rapid.SampledFrom([]float64{0, 0, 0, 1, -3, 1e4, -1e7}).Draw(t, name+"Base") * size
		a := Axis{Label: label.Draw(t, name+"Label"), Unit: rapid.SampledFrom([]string{"", "°C", "% vol", "g/hL of pure alcohol"}).Draw(t, name+"Unit")}
		if rapid.IntRange(0, 3).Draw(t, name+"Fixed") == 0 {
			a.Min = base - size*rapid.Float64Range(0.01, 1).Draw(t, name+"Min")
			a.Max = base + size*rapid.Float64Range(0.01, 1).Draw(t, name+"Max")
		}
		return a, rapid.Map(rapid.Float64Range(-1, 1), func(v float64) float64 { return base + v*size })
	}
	x, xs := axis("x")
	y, ys := axis("y")
	c := New(label.Draw(t, "title"), x, y)
	for range rapid.IntRange(1, 8).Draw(t, "series") {
		n := rapid.IntRange(1, 30).Draw(t, "points")
		px := rapid.SliceOfN(xs, n, n).Draw(t, "xs")
		py := rapid.SliceOfN(ys, n, n).Draw(t, "ys")
		if rapid.Bool().Draw(t, "ordered") { // a smooth line from one end to the other
			lo, hi := px[0], px[n-1]
			for k := range px {
				px[k] = lo + (hi-lo)*float64(k)/float64(max(n-1, 1))
				py[k] = py[0] + (py[n-1]-py[0])*float64(k)/float64(max(n-1, 1))
			}
		}
		name := label.Draw(t, "label")
		if rapid.IntRange(0, 2).Draw(t, "kind") == 0 {
			c.Points(name, px, py)
		} else {
			c.Line(name, px, py)
		}
	}
	for range rapid.IntRange(0, 3).Draw(t, "marks") {
		c.Mark(label.Draw(t, "mark"), xs.Draw(t, "mx"), ys.Draw(t, "my"))
	}
	for range rapid.IntRange(0, 2).Draw(t, "bands") {
		a, b := xs.Draw(t, "x0"), xs.Draw(t, "x1")
		if a != b {
			c.Band(label.Draw(t, "band"), min(a, b), max(a, b))
		}
	}
	for range rapid.IntRange(0, 2).Draw(t, "lines") {
		c.HLine(label.Draw(t, "hline"), ys.Draw(t, "h"))
		c.VLine(label.Draw(t, "vline"), xs.Draw(t, "v"))
	}
	for range rapid.IntRange(0, 2).Draw(t, "notes") {
		c.Note(label.Draw(t, "note"))
	}
	return c
}

// crosses reports whether the straight line from a to b meets the box, by cutting it at the four sides.
func crosses(a, b point, r box) bool {
	t0, t1 := 0.0, 1.0
	for _, side := range [][3]float64{{a.x, b.x - a.x, r.x0}, {-a.x, a.x - b.x, -r.x1}, {a.y, b.y - a.y, r.y0}, {-a.y, a.y - b.y, -r.y1}} {
		from, step, least := side[0], side[1], side[2] // from + t·step ≥ least
		switch {
		case step == 0:
			if from < least {
				return false
			}
		case step > 0:
			t0 = max(t0, (least-from)/step)
		default:
			t1 = min(t1, (least-from)/step)
		}
	}
	return t0 <= t1
}

func TestNoLabelOverlapsAnythingOrLeavesTheFrame(t *testing.T) {
	beside, atEnd, legends := 0, 0, 0
	rapid.Check(t, func(t *rapid.T) {
		c := randomChart(t)
		l := nothingOverlaps(t, c)
		for _, w := range l.words {
			switch w.role {
			case roleSide:
				beside++
			case roleEnd:
				atEnd++
			case roleLegend:
				legends++
			}
		}
		everythingIsNamed(t, c, l)
		ticksAreSound(t, l)
	})
	if beside == 0 || atEnd == 0 || legends == 0 {
		t.Fatalf("the charts tried had %d labels beside, %d at ends, %d in legends; want some of each", beside, atEnd, legends)
	}
}

// nothingOverlaps lays the chart out and checks the box of every line of text against the frame, the other texts and
// all that is drawn.
func nothingOverlaps(t *rapid.T, c *Chart) *layout {
	l := c.layOut()
	frame := box{0, 0, l.width, l.height}
	for i, w := range l.words {
		b := w.box()
		if !b.within(frame) {
			t.Fatalf("%q lies at %v, outside the frame %v", w.text, b, frame)
		}
		for _, o := range l.words[:i] {
			if b.overlaps(o.box()) {
				t.Fatalf("%q at %v overlaps %q at %v", w.text, b, o.text, o.box())
			}
		}
		for _, s := range l.samples {
			if b.overlaps(s.box) {
				t.Fatalf("%q at %v overlaps the legend's sample at %v", w.text, b, s.box)
			}
		}
		if w.role != roleSide && w.role != roleTick && b.overlaps(l.plot) && !(w.role == roleEnd && b.x0 < l.plot.x1) {
			t.Fatalf("%q (role %d) at %v lies in the plot %v", w.text, w.role, b, l.plot)
		}
		if w.role != roleSide && w.role != roleEnd {
			continue
		}
		for k := range c.series {
			for _, piece := range l.pieces[k] {
				for j := 1; j < len(piece); j++ {
					if crosses(piece[j-1], piece[j], b) {
						t.Fatalf("the line %q crosses %q at %v", c.series[k].label, w.text, b)
					}
				}
			}
			for _, p := range l.markers[k] {
				if b.overlaps(box{p.x, p.y, p.x, p.y}.grown(markerRadius)) {
					t.Fatalf("a point of %q covers %q", c.series[k].label, w.text)
				}
			}
		}
		for _, r := range c.lines {
			if from, to, ok := l.reference(r); ok && crosses(from, to, b) {
				t.Fatalf("the reference line %q crosses %q", r.label, w.text)
			}
		}
		for _, m := range c.marks {
			if p := (point{l.px(m.x), l.py(m.y)}); l.inside(m.x, m.y) && b.overlaps(box{p.x, p.y, p.x, p.y}.grown(markRadius)) {
				t.Fatalf("the mark %q covers %q", m.label, w.text)
			}
		}
	}
	return l
}

// Lines that run together at the right are where labels crowd.
func TestFansOfLinesKeepTheirLabelsApart(t *testing.T) {
	moved, legends := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		c := New("fan", Axis{Label: "x"}, Axis{Label: "y"})
		crowded := rapid.Bool().Draw(t, "crowded") // ends half a line of text apart: labels must move, and can
		for i := range rapid.IntRange(1, 9).Draw(t, "lines") {
			end := 0.3 + 0.05*float64(i)
			if !crowded {
				end = rapid.Float64Range(0, 1).Draw(t, "end")
			}
			c.Line(fmt.Sprintf("line %d", i), []float64{0, 1}, []float64{float64(i) / 8, end})
		}
		l := nothingOverlaps(t, c)
		everythingIsNamed(t, c, l)
		atEnd := 0
		for _, w := range l.words {
			if w.role == roleEnd {
				atEnd++
			}
		}
		switch {
		case atEnd == 0:
			legends++
		case atEnd != len(c.series):
			t.Fatalf("%d labels at the end of %d lines; want all or none", atEnd, len(c.series))
		case len(l.leaders) > 0:
			moved++
		}
	})
	if moved == 0 || legends == 0 {
		t.Fatalf("%d charts with moved labels and %d with legends; want some of each", moved, legends)
	}
}

func TestLinesThatEndTogetherGoToTheLegend(t *testing.T) {
	for _, apart := range []float64{0, 0.001, 1} {
		c := New("", Axis{}, Axis{Max: 2})
		c.Line("first", []float64{0, 1}, []float64{0, 1})
		c.Line("second", []float64{0, 1}, []float64{2, 1 - apart})
		want := roleLegend
		if apart == 1 {
			want = roleEnd
		}
		found := 0
		for _, w := range c.layOut().words {
			if w.text == "first" || w.text == "second" {
				found++
				if w.role != want {
					t.Errorf("ends %v apart: %q has role %d; want %d", apart, w.text, w.role, want)
				}
			}
		}
		if found != 2 {
			t.Errorf("ends %v apart: %d labels; want 2", apart, found)
		}
	}
}

// everythingIsNamed checks that no label was lost on the way.
func everythingIsNamed(t *rapid.T, c *Chart, l *layout) {
	var all strings.Builder
	for _, w := range l.words {
		all.WriteString(strings.ReplaceAll(w.text, " ", ""))
	}
	for _, it := range c.items() {
		if name := strings.ReplaceAll(c.nameOf(it), " ", ""); !strings.Contains(all.String(), name) {
			t.Fatalf("%q of %v is nowhere in the chart", c.nameOf(it), it)
		}
	}
	for _, text := range append([]string{c.title, l.x.labelWith(c.x), l.y.labelWith(c.y)}, c.notes...) {
		if !strings.Contains(all.String(), strings.ReplaceAll(text, " ", "")) {
			t.Fatalf("%q is nowhere in the chart", text)
		}
	}
}

// ticksAreSound checks that an axis has ticks enough, inside it, evenly spaced, with labels that all differ.
func ticksAreSound(t *rapid.T, l *layout) {
	for name, axis := range map[string]struct {
		s scaleMarks
		r [2]float64
	}{"horizontal": {l.x, l.xRange}, "vertical": {l.y, l.yRange}} {
		if len(axis.s.ticks) < 2 {
			t.Fatalf("%s axis %v has %d ticks", name, axis.r, len(axis.s.ticks))
		}
		seen := map[string]bool{}
		for i, k := range axis.s.ticks {
			slack := 1e-6 * (axis.r[1] - axis.r[0])
			if k.at < axis.r[0]-slack || k.at > axis.r[1]+slack {
				t.Fatalf("%s axis %v has a tick at %v", name, axis.r, k.at)
			}
			if i > 0 && math.Abs(k.at-axis.s.ticks[i-1].at-axis.s.step) > 1e-3*axis.s.step {
				t.Fatalf("%s axis %v: ticks %v and %v are not a step of %v apart", name, axis.r, axis.s.ticks[i-1].at, k.at, axis.s.step)
			}
			if seen[k.label] {
				t.Fatalf("%s axis %v has the label %q twice", name, axis.r, k.label)
			}
			seen[k.label] = true
		}
	}
}

func TestSameInputSameBytes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := randomChart(t)
		before := fmt.Sprintf("%#v", *c)
		first, text := c.SVG(), c.AltText()
		if second := c.SVG(); second != first {
			t.Fatal("two calls of SVG gave different bytes")
		}
		if c.String() != text {
			t.Fatal("String and AltText differ")
		}
		if fmt.Sprintf("%#v", *c) != before {
			t.Fatal("drawing changed the chart")
		}
		checkSVG(t, first)
	})
}
