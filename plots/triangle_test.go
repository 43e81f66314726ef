package plots

import (
	"bytes"
	"fmt"
	"image/png"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func sampleTriangle() *Triangle {
	t := NewTriangle("Where the oil parts", Corners{Left: "water", Right: "ethanol", Top: "oil", Unit: "% mass"})
	t.Region("two liquids", []float64{1, 0.4, 0, 0}, []float64{0, 0.58, 0.2, 0}, []float64{0, 0.02, 0.8, 1})
	t.Line("watery side", []float64{1, 0.66, 0.4}, []float64{0, 0.33, 0.58}, []float64{0, 0.01, 0.02})
	t.Dashed("other side, qualitative", []float64{0.016, 0.05, 0.06}, []float64{0, 0.28, 0.42}, []float64{0.984, 0.67, 0.52})
	t.Ties("tie-lines", []float64{0.016, 1, 0.05, 0.4}, []float64{0, 0, 0.28, 0.58}, []float64{0.984, 0, 0.67, 0.02})
	t.Points("measured", []float64{0.4}, []float64{0.58}, []float64{0.02})
	t.Mark("bottle", 0.6, 0.395, 0.005)
	t.Note("source: invented")
	return t
}

func TestTriangleInWords(t *testing.T) {
	want := `Where the oil parts
Triangular diagram: water lower left, ethanol lower right, oil at the top, in % mass.
Area “two liquids”: 4 mixtures from 100, 0, 0 to 0, 0, 100; most oil in 0, 0, 100.
Line “watery side”: 3 mixtures from 100, 0, 0 to 40, 58, 2; most oil in 40, 58, 2.
Dashed line “other side, qualitative”: 3 mixtures from 1.6, 0, 98.4 to 6, 42, 52; most oil in 1.6, 0, 98.4.
Tie-lines “tie-lines”: 2, from 1.6, 0, 98.4 to 100, 0, 0 the first, from 5, 28, 67 to 40, 58, 2 the last.
Points “measured”: one mixture, 40, 58, 2.
Mark “bottle”: 60, 39.5, 0.5.
Note: source: invented`
	if got := sampleTriangle().AltText(); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
	svg := sampleTriangle().SVG()
	checkSVG(t, svg)
	if !strings.Contains(svg, `aria-label="Where the oil parts"`) || !strings.Contains(svg, "Mark “bottle”") {
		t.Error("the SVG lacks title or text")
	}
	if len(svg) > 40_000 {
		t.Errorf("SVG has %d bytes; want at most 40000", len(svg))
	}
}

// Corners, sides and the middle lie where geometry says; water added moves a mixture straight to its corner.
func TestTriangleGeometry(t *testing.T) {
	l := sampleTriangle().layOut()
	side := l.right.x - l.left.x
	for _, d := range []float64{math.Hypot(l.top.x-l.left.x, l.top.y-l.left.y), math.Hypot(l.top.x-l.right.x, l.top.y-l.right.y)} {
		if math.Abs(d-side) > 1e-9 {
			t.Errorf("a side is %g long; the foot %g", d, side)
		}
	}
	if m := l.at(fraction{1.0 / 3, 1.0 / 3, 1.0 / 3}); math.Abs(m.x-l.top.x) > 1e-9 || math.Abs(l.left.y-m.y-side*math.Sqrt(3)/6) > 1e-9 {
		t.Errorf("equal shares lie at %v", m)
	}
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(0, 1).Draw(t, "a")
		b := rapid.Float64Range(0, 1).Draw(t, "b") * (1 - a)
		f := fraction{a, b, 1 - a - b}
		p := l.at(f)
		// The distance from a side over the height is the share of the opposite corner.
		height := side * math.Sqrt(3) / 2
		if math.Abs((l.left.y-p.y)/height-f.top) > 1e-9 {
			t.Fatalf("%v lies at %v: %g of the height", f, p, (l.left.y-p.y)/height)
		}
		k := rapid.Float64Range(0, 1).Draw(t, "water")
		w := l.at(fraction{k + (1-k)*f.left, (1 - k) * f.right, (1 - k) * f.top})
		if cross := (w.x-l.left.x)*(p.y-l.left.y) - (w.y-l.left.y)*(p.x-l.left.x); math.Abs(cross) > 1e-6 {
			t.Fatalf("water takes %v off its line to the corner by %g", f, cross)
		}
	})
}

func randomTriangle(t *rapid.T) *Triangle {
	label := rapid.SampledFrom(someLabels)
	c := NewTriangle(label.Draw(t, "title"), Corners{label.Draw(t, "left"), label.Draw(t, "right"), label.Draw(t, "top"), rapid.SampledFrom([]string{"", "% mass", "% vol"}).Draw(t, "unit")})
	mixture := func() (a, b, c float64) {
		a = rapid.Float64Range(0, 1).Draw(t, "a")
		b = rapid.Float64Range(0, 1).Draw(t, "b") * (1 - a)
		return a, b, 1 - a - b
	}
	for range rapid.IntRange(0, 7).Draw(t, "series") {
		n := 2 * rapid.IntRange(2, 8).Draw(t, "half")
		var l, r, u []float64
		for range n {
			x, y, z := mixture()
			l, r, u = append(l, x), append(r, y), append(u, z)
		}
		add := []func(string, []float64, []float64, []float64){c.Line, c.Dashed, c.Points, c.Ties, c.Region}
		rapid.SampledFrom(add).Draw(t, "kind")(label.Draw(t, "label"), l, r, u)
	}
	for range rapid.IntRange(1, 4).Draw(t, "marks") {
		x, y, z := mixture()
		c.Mark(label.Draw(t, "mark"), x, y, z)
	}
	for range rapid.IntRange(0, 2).Draw(t, "notes") {
		c.Note(label.Draw(t, "note"))
	}
	return c
}

func TestNoWordOfATriangleOverlapsAnything(t *testing.T) {
	beside, legends := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		c := randomTriangle(t)
		l := c.layOut()
		frame := box{0, 0, l.width, l.height}
		var all strings.Builder
		for i, w := range l.words {
			b := w.box()
			all.WriteString(strings.ReplaceAll(w.text, " ", ""))
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
			switch w.role {
			case roleLegend:
				legends++
			case roleSide:
				beside++
				for _, p := range c.paths {
					at := l.along(p.at)
					for k := 1; k < len(at) && p.kind != pointPath; k++ {
						if (p.kind != tiePaths || k%2 == 1) && crosses(at[k-1], at[k], b) {
							t.Fatalf("%q of kind %d crosses %q", p.label, p.kind, w.text)
						}
					}
				}
				for _, m := range c.marks {
					if q := l.at(m.at); b.overlaps(box{q.x, q.y, q.x, q.y}.grown(markRadius)) {
						t.Fatalf("the mark %q covers %q", m.label, w.text)
					}
				}
			}
		}
		for i := range c.marks {
			if text := strings.ReplaceAll(c.markText(i), " ", ""); !strings.Contains(all.String(), text) {
				t.Fatalf("the mark %q is nowhere", text)
			}
		}
		for _, text := range append([]string{c.title, c.corners.Left, c.corners.Right, c.corners.Top, c.reading()}, c.notes...) {
			if !strings.Contains(all.String(), strings.ReplaceAll(text, " ", "")) && !scattered(l, text) {
				t.Fatalf("%q is nowhere in the diagram", text)
			}
		}
	})
	if beside == 0 || legends == 0 {
		t.Fatalf("%d labels beside marks, %d in legends; want some of each", beside, legends)
	}
}

// scattered reports whether the lines of a text stand in the diagram, though another text comes between them.
func scattered(l *triangleLayout, text string) bool {
	rest := strings.ReplaceAll(text, " ", "")
	for _, w := range l.words {
		rest = strings.TrimPrefix(rest, strings.ReplaceAll(w.text, " ", ""))
	}
	return rest == ""
}

func TestTriangleSameInputSameBytes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := randomTriangle(t)
		before := fmt.Sprintf("%#v", *c)
		first := c.SVG()
		if c.SVG() != first || c.String() != c.AltText() || fmt.Sprintf("%#v", *c) != before {
			t.Fatal("drawing twice differs, or changed the diagram")
		}
		checkSVG(t, first)
	})
}

func TestTrianglePNG(t *testing.T) {
	c := NewTriangle("", Corners{})
	c.Line("", []float64{0.5, 0}, []float64{0, 0.5}, []float64{0.5, 0.5})
	picture, err := png.Decode(bytes.NewReader(c.PNG(96)))
	if err != nil {
		t.Fatal(err)
	}
	l := c.layOut()
	q := l.at(fraction{0.25, 0.25, 0.5})
	if r, _, b, _ := picture.At(int(q.x*96/72), int(q.y*96/72)).RGBA(); b < r+0x2000 {
		t.Errorf("the middle of the line is not blue: red %x, blue %x", r, b)
	}
	if !bytes.Equal(c.PNG(96), c.PNG(96)) {
		t.Error("two calls of PNG gave different bytes")
	}
}

func TestTriangleMistakes(t *testing.T) {
	nan := math.NaN()
	c := func() *Triangle { return NewTriangle("title", Corners{}) }
	one := []float64{1}
	for _, k := range []struct {
		call  func()
		index int
		want  string
	}{
		{func() { c().Line("a", one, []float64{0}, nil) }, -1, `plots.Triangle.Line: "a": 1, 1 and 0 shares; give three shares for each mixture`},
		{func() { c().Line("a", nil, nil, nil) }, -1, `plots.Triangle.Line: "a": the series is empty; give at least one mixture`},
		{func() { c().Points("a", []float64{1, 0.5}, []float64{0, 0.4}, []float64{0, 0}) }, 1, `plots.Triangle.Points: "a": the shares are 0.5, 0.4 and 0; give three of 0 or more that add up to 1`},
		{func() { c().Dashed("a", one, []float64{nan}, []float64{0}) }, 0, `plots.Triangle.Dashed: "a": the shares are 1, NaN and 0; give three of 0 or more that add up to 1`},
		{func() { c().Mark("m", 1.2, -0.2, 0) }, -1, `plots.Triangle.Mark: "m": the shares are 1.2, -0.2 and 0; give three of 0 or more that add up to 1`},
		{func() { c().Ties("t", one, []float64{0}, []float64{0}) }, -1, `plots.Triangle.Ties: "t": 1 mixtures; give two for each tie-line`},
		{func() { c().Region("r", one, []float64{0}, []float64{0}) }, -1, `plots.Triangle.Region: "r": 1 mixtures; give at least three corners of the area`},
		{func() { c().SVG() }, -1, `plots.Triangle.SVG: "title": the diagram is empty; add something with Line, Dashed, Points, Ties, Region or Mark first`},
		{func() { c().PNG(96) }, -1, `plots.Triangle.PNG: "title": the diagram is empty; add something with Line, Dashed, Points, Ties, Region or Mark first`},
		{func() { sampleTriangle().PNG(5) }, -1, `plots.Triangle.PNG: the resolution is 5 dots per inch; give one from 30 to 600`},
	} {
		got := caught(k.call)
		if got == nil || got.Error() != k.want || got.Index != k.index {
			t.Errorf("got  %v\nwant %s (index %d)", got, k.want, k.index)
		}
	}
	// Shares as printed, a thousandth off, are brought to 1.
	x := c()
	x.Line("a", []float64{0.268}, []float64{0.669}, []float64{0.064})
	if f := x.paths[0].at[0]; math.Abs(f.left+f.right+f.top-1) > 1e-15 {
		t.Errorf("%v", f)
	}
	if !strings.Contains(x.AltText(), "title\n") || !strings.Contains(NewTriangle("", Corners{Left: "a", Top: "b"}).name(), "a, b") || NewTriangle("", Corners{}).name() != "Triangle" {
		t.Error("names without a title")
	}
}
