package plots

import (
	"bytes"
	"fmt"
	"image/png"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func sampleSwatches() *Swatches {
	s := NewSwatches("The green as it keeps")
	s.AddAll([]string{"day 0", "day 30"}, []string{"#dfe8c4", "#E8dfa0"}, []string{"", "differs by 3.1"})
	s.Note("through 7 cm")
	return s
}

func TestSwatchesInWords(t *testing.T) {
	want := "The green as it keeps\nday 0: #dfe8c4\nday 30: #e8dfa0, differs by 3.1\nNote: through 7 cm"
	if got := sampleSwatches().AltText(); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
	svg := sampleSwatches().SVG()
	checkSVG(t, svg)
	for _, want := range []string{`fill="#dfe8c4"`, `fill="#e8dfa0"`, `aria-label="The green as it keeps"`} {
		if !strings.Contains(svg, want) {
			t.Errorf("SVG lacks %s", want)
		}
	}
	unnamed := NewSwatches("")
	unnamed.Add("", "#000000", "")
	if got := unnamed.AltText(); got != "Colours\ncolour 1: #000000" {
		t.Errorf("got %q", got)
	}
}

func randomSwatches(t *rapid.T) *Swatches {
	label := rapid.SampledFrom(someLabels)
	s := NewSwatches(label.Draw(t, "title"))
	for range rapid.IntRange(1, 13).Draw(t, "colours") {
		s.Add(label.Draw(t, "label"), fmt.Sprintf("#%06x", rapid.IntRange(0, 0xffffff).Draw(t, "colour")), label.Draw(t, "note"))
	}
	for range rapid.IntRange(0, 2).Draw(t, "notes") {
		s.Note(label.Draw(t, "foot"))
	}
	return s
}

func TestNoWordOfSwatchesOverlapsAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := randomSwatches(t)
		l := s.layOut()
		frame := box{0, 0, l.width, l.height}
		if len(l.boxes) != len(s.swatches) {
			t.Fatalf("%d boxes for %d colours", len(l.boxes), len(s.swatches))
		}
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
			for _, c := range l.boxes {
				if b.overlaps(c) {
					t.Fatalf("%q at %v lies on the colour at %v", w.text, b, c)
				}
			}
		}
		for i, c := range l.boxes {
			if !c.within(frame) {
				t.Fatalf("colour %d lies at %v, outside the frame %v", i, c, frame)
			}
			for _, o := range l.boxes[:i] {
				if c.overlaps(o) {
					t.Fatalf("colours at %v and %v overlap", c, o)
				}
			}
		}
		// Every colour has its own words, so that grey print keeps sense.
		for _, w := range s.swatches {
			if !strings.Contains(all.String(), w.hex) || !strings.Contains(all.String(), strings.ReplaceAll(w.label, " ", "")) {
				t.Fatalf("%v is nowhere in words", w)
			}
		}
		svg := s.SVG()
		if svg != s.SVG() || s.String() != s.AltText() {
			t.Fatal("drawing twice differs")
		}
		checkSVG(t, svg)
	})
}

func TestSwatchesPNG(t *testing.T) {
	s := sampleSwatches()
	picture, err := png.Decode(bytes.NewReader(s.PNG(72)))
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range [][3]uint32{{0xdf, 0xe8, 0xc4}, {0xe8, 0xdf, 0xa0}} {
		b := s.layOut().boxes[i]
		r, g, bl, _ := picture.At(int((b.x0+b.x1)/2), int((b.y0+b.y1)/2)).RGBA()
		if got := [3]uint32{r >> 8, g >> 8, bl >> 8}; got != want {
			t.Errorf("colour %d is drawn as %x; want %x", i, got, want)
		}
	}
}

func TestSwatchesMistakes(t *testing.T) {
	s := func() *Swatches { return NewSwatches("title") }
	for _, k := range []struct {
		call func()
		want string
	}{
		{func() { s().Add("a", "green", "") }, `plots.Swatches.Add: "a": the colour is "green"; give six hexadecimal digits, such as #dfe8c4`},
		{func() { s().Add("a", "#12345", "") }, `plots.Swatches.Add: "a": the colour is "#12345"; give six hexadecimal digits, such as #dfe8c4`},
		{func() { s().AddAll([]string{"a"}, nil, nil) }, `plots.Swatches.AddAll: "title": 1 labels, 0 colours and 0 notes; give a colour and a note for each label`},
		{func() { s().AddAll(nil, nil, nil) }, `plots.Swatches.AddAll: "title": the series is empty; give at least one colour`},
		{func() { s().SVG() }, `plots.Swatches.SVG: "title": there are no colours; add one with Add first`},
		{func() { s().PNG(96) }, `plots.Swatches.PNG: "title": there are no colours; add one with Add first`},
		{func() { sampleSwatches().PNG(1e4) }, `plots.Swatches.PNG: the resolution is 10000 dots per inch; give one from 30 to 600`},
	} {
		if got := caught(k.call); got == nil || got.Error() != k.want {
			t.Errorf("got  %v\nwant %s", got, k.want)
		}
	}
}
