package plots

import (
	"bytes"
	"encoding/xml"
	"errors"
	"image/png"
	"io"
	"math"
	"regexp"
	"strings"
	"testing"

	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/vgimg"
)

type failer interface {
	Helper()
	Fatalf(format string, args ...any)
}

// allowed are the elements, with their attributes, that a chart may hold: drawing only.
var allowed = map[string]string{
	"svg": "xmlns viewBox width role aria-label aria-describedby", "title": "", "desc": "id", "defs": "",
	"g":    "fill fill-opacity stroke stroke-width stroke-opacity stroke-linejoin transform",
	"path": "id d stroke-dasharray stroke-dashoffset", "use": "href x transform",
}

// checkSVG checks the form of a chart as SVG: well-formed, only drawing elements, every reference to an own id,
// every id once, no font named.
func checkSVG(t failer, svg string) {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(svg))
	ids, hrefs := map[string]int{}, map[string]bool{}
	depth, elements := 0, 0
	var text strings.Builder
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.Fatalf("not well-formed: %v", err)
		}
		switch e := token.(type) {
		case xml.StartElement:
			attrs, ok := allowed[e.Name.Local]
			if !ok {
				t.Fatalf("element <%s> is not allowed", e.Name.Local)
			}
			values := map[string]string{}
			for _, a := range e.Attr {
				if !strings.Contains(" "+attrs+" ", " "+a.Name.Local+" ") {
					t.Fatalf("<%s> has the attribute %s", e.Name.Local, a.Name.Local)
				}
				values[a.Name.Local] = a.Value
			}
			if depth == 0 && (e.Name.Local != "svg" || values["role"] != "img" || values["aria-label"] == "" || values["width"] == "" || values["viewBox"] == "") {
				t.Fatalf("root <%s> has %v", e.Name.Local, values)
			}
			if d, isPath := values["d"]; isPath && !pathForm.MatchString(d) {
				t.Fatalf("path data %q", d)
			}
			if id := values["id"]; id != "" {
				ids[id]++
			}
			for _, ref := range []string{strings.TrimPrefix(values["href"], "#"), values["aria-describedby"]} {
				if ref != "" {
					hrefs[ref] = true
				}
			}
			if strings.Contains(values["href"], ":") {
				t.Fatalf("reference to %q", values["href"])
			}
			depth++
			elements++
		case xml.EndElement:
			depth--
		case xml.CharData:
			text.Write(e)
		}
	}
	if elements < 5 || len(ids) == 0 || depth != 0 {
		t.Fatalf("%d elements, %d ids, depth %d at the end", elements, len(ids), depth)
	}
	for id, n := range ids {
		if n > 1 {
			t.Fatalf("id %q stands %d times", id, n)
		}
	}
	for ref := range hrefs {
		if ids[ref] == 0 {
			t.Fatalf("no id %q", ref)
		}
	}
	for _, word := range []string{"font", "style", "script", "NaN", "Inf", "\x01"} {
		if strings.Contains(strings.ReplaceAll(svg, text.String(), ""), word) && !strings.Contains(text.String(), word) {
			t.Fatalf("the SVG holds %q", word)
		}
	}
}

var pathForm = regexp.MustCompile(`^M[-0-9. mlhvqcaz]*$`)

func sampleChart() *Chart {
	c := New("What the alcoholometer shows as the tank cools", Axis{Label: "tank temperature", Unit: "°C"}, Axis{Label: "reading", Unit: "% vol"})
	var xs, ys []float64
	for t := 5.0; t <= 30; t++ {
		xs, ys = append(xs, t), append(ys, 43+0.39*(t-20))
	}
	c.Line("43 % vol", xs, ys)
	c.Points("measured", []float64{8, 15, 22}, []float64{38.4, 41, 43.7})
	c.Mark("tomorrow", 12, 39.88)
	c.Band("cut", 17, 19)
	c.HLine("label strength", 43)
	c.Note("source: a made-up straight line")
	return c
}

func TestStructureOfSVG(t *testing.T) {
	c := sampleChart()
	svg := c.SVG()
	checkSVG(t, svg)
	for _, want := range []string{
		`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 560 `, `role="img" aria-label="What the alcoholometer shows as the tank cools"`,
		"<title>What the alcoholometer shows as the tank cools</title>", "Mark “tomorrow”: 39.88 % vol at 12 °C.", `stroke="#3752b0"`,
	} {
		if !strings.Contains(svg, want) {
			t.Errorf("SVG lacks %s", want)
		}
	}
	if len(svg) > 40_000 {
		t.Errorf("SVG has %d bytes; want at most 40000", len(svg))
	}
}

func TestMarkupInWordsIsEscaped(t *testing.T) {
	c := New(`<script>alert("1")</script> & 'more'`+"\x00\x01\n\xff", Axis{Label: "<b>"}, Axis{Unit: "&"})
	c.Line("</svg>", []float64{1, 2}, []float64{1, 2})
	c.Note("<!-- ]]> \u202e")
	checkSVG(t, c.SVG())
	if !strings.Contains(c.SVG(), `aria-label="&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;more&#39;`) {
		t.Error("the title is not escaped:", c.SVG()[:300])
	}
}

func TestChartsOnOnePageDoNotShareIDs(t *testing.T) {
	idOf := regexp.MustCompile(`id="([^"]+)"`)
	ids := map[string]string{}
	for _, title := range []string{"one", "two", "three", "one "} {
		c := New(title, Axis{}, Axis{})
		c.Line("x", []float64{1, 2}, []float64{1, float64(len(title))})
		svg := c.SVG()
		for _, m := range idOf.FindAllStringSubmatch(svg, -1) {
			if other, ok := ids[m[1]]; ok && other != svg {
				t.Fatalf("two charts have the id %q", m[1])
			}
			ids[m[1]] = svg
		}
	}
	if len(ids) < 10 {
		t.Fatalf("only %d ids found", len(ids))
	}
}

func TestLongSeriesGiveSmallDrawings(t *testing.T) {
	const n = 100_000
	xs, ys := make([]float64, n), make([]float64, n)
	seed := uint64(1)
	for i := range xs {
		seed = seed*6364136223846793005 + 1442695040888963407
		xs[i], ys[i] = float64(i), float64(seed>>40)
	}
	c := New("noise", Axis{}, Axis{})
	c.Line("noise", xs, ys)
	svg := c.SVG()
	if len(svg) > 40_000 {
		t.Errorf("%d points give %d bytes; want at most 40000", n, len(svg))
	}
	l := c.layOut()
	low, high := math.Inf(1), math.Inf(-1)
	for _, p := range l.pieces[0][0] {
		low, high = min(low, p.y), max(high, p.y)
	}
	wantLow, wantHigh := math.Inf(1), math.Inf(-1)
	for _, y := range ys {
		wantLow, wantHigh = min(wantLow, l.py(y)), max(wantHigh, l.py(y))
	}
	if low != wantLow || high != wantHigh {
		t.Errorf("thinned line reaches from %v to %v; the data from %v to %v", low, high, wantLow, wantHigh)
	}
}

func TestPNG(t *testing.T) {
	c := sampleChart()
	l := c.layOut()
	for _, dpi := range []float64{30, 96, 150.4} {
		picture, err := png.Decode(bytes.NewReader(c.PNG(dpi)))
		if err != nil {
			t.Fatal(err)
		}
		want := int(l.width/72*math.Round(dpi) + 0.5)
		if got := picture.Bounds().Dx(); got != want {
			t.Errorf("PNG(%v) is %d pixels wide; want %d", dpi, got, want)
		}
		if r, g, b, a := picture.At(0, 0).RGBA(); r != 0xffff || g != 0xffff || b != 0xffff || a != 0xffff {
			t.Errorf("PNG(%v) has the corner colour %x %x %x %x; want white", dpi, r, g, b, a)
		}
		// The middle of the line is drawn in its own colour.
		x, y := l.px(26)*math.Round(dpi)/72, l.py(43+0.39*6)*math.Round(dpi)/72
		r, _, b, _ := picture.At(int(x), int(y)).RGBA()
		if b < r+0x2000 {
			t.Errorf("PNG(%v) at %v, %v is not blue: red %x, blue %x", dpi, x, y, r, b)
		}
	}
	if !bytes.Equal(c.PNG(96), c.PNG(96)) {
		t.Error("two calls of PNG gave different bytes")
	}
}

// The two canvases must put letters and paths in the same places: the letters' outlines come from one font, so the
// width they take is the font's own. gonum.org/v1/plot's own measure is the outside check.
func TestTextWidthAgreesWithTheFontLibrary(t *testing.T) {
	for _, text := range []string{"reading (% vol)", "AVATAR To. W,", "tank temperature – ° ± µ →", ""} {
		for _, bold := range []bool{false, true} {
			face := faceOf(16, bold)
			if got, want := textWidth(text, 16, bold), float64(face.Width(text)); math.Abs(got-want) > 1e-9 {
				t.Errorf("textWidth(%q, 16, %v) = %v; the font library gives %v", text, bold, got, want)
			}
		}
	}
}

// An L has ink along its foot and none at the right of its head; a raised digit has none on the line.
func TestLettersStandUprightInPNG(t *testing.T) {
	canvas := outlined{vgimg.NewWith(vgimg.UseWH(100, 100), vgimg.UseDPI(72))}
	canvas.SetColor(ink)
	canvas.FillString(faceOf(80, false), vg.Point{X: 10, Y: 20}, "L⁰")
	dark := func(x, y int) bool {
		r, _, _, _ := canvas.Image().At(x, y).RGBA()
		return r < 0x8000
	}
	foot, head, low, high := false, false, false, false
	for x := 30; x < 50; x++ { // beside the stem of the L, whose width is 0.556 of 80
		foot = foot || dark(x, 77)
		head = head || dark(x, 30)
	}
	for x := 56; x < 82; x++ {
		low = low || dark(x, 78)
		high = high || dark(x, 40)
	}
	if !foot || head {
		t.Errorf("the L has ink at its foot: %v, right of its head: %v; want true, false", foot, head)
	}
	if low || !high {
		t.Errorf("the raised 0 has ink on the line: %v, above: %v; want false, true", low, high)
	}
}

func TestCanvasTransforms(t *testing.T) {
	// A square drawn after moving, turning and doubling lands where plane geometry says.
	c := newSVGCanvas(100, 100)
	c.Push()
	c.Translate(vg.Point{X: 50, Y: 50})
	c.Rotate(math.Pi / 2)
	c.Scale(2, 2)
	var path vg.Path
	path.Move(vg.Point{X: 0, Y: 0})
	path.Line(vg.Point{X: 10, Y: 0})
	path.Line(vg.Point{X: 10, Y: 5})
	path.Close()
	c.Fill(path)
	c.Pop()
	if got, want := c.body.String(), `d="M50 50v-20h-10z"`; !strings.Contains(got, want) {
		t.Errorf("turned triangle is %s; want %s", got, want)
	}
	var _ vg.Canvas = outlined{vgimg.New(10, 10)}
}

func TestArcsGoTheRightWayRound(t *testing.T) {
	c := newSVGCanvas(100, 100)
	var path vg.Path
	path.Move(vg.Point{X: 60, Y: 50})
	path.Arc(vg.Point{X: 50, Y: 50}, 10, 0, math.Pi/2) // from the right to the top
	c.SetLineDash([]vg.Length{3, 1.5}, 2)
	c.Stroke(path)
	// In SVG, y points down, so going anticlockwise from the right to the top has sweep 0 (SVG 1.1, 8.3.8).
	if got, want := c.body.String(), `d="M60 50a10 10 0 0 0-10-10"`; !strings.Contains(got, want) {
		t.Errorf("arc is %s; want %s", got, want)
	}
	if got, want := c.body.String(), `stroke-dasharray="3 1.5" stroke-dashoffset="2"`; !strings.Contains(got, want) {
		t.Errorf("dash is %s; want %s", got, want)
	}
}
