package plots

import (
	"strings"
	"sync"

	"codeberg.org/go-fonts/liberation/liberationsansbold"
	"codeberg.org/go-fonts/liberation/liberationsansregular"
	xfont "golang.org/x/image/font"
	"golang.org/x/image/font/opentype"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"
)

// The embedded font is parsed when the first chart is drawn, not when the package is imported.
var (
	regularFont = sync.OnceValue(func() *opentype.Font { return mustParse(liberationsansregular.TTF) })
	boldFont    = sync.OnceValue(func() *opentype.Font { return mustParse(liberationsansbold.TTF) })
)

func mustParse(ttf []byte) *opentype.Font {
	f, err := opentype.Parse(ttf)
	if err != nil {
		panic("plots: the embedded font cannot be read: " + err.Error())
	}
	return f
}

func faceOf(size float64, bold bool) font.Face {
	face := font.Face{Font: font.Font{Typeface: "Liberation", Variant: "Sans", Size: vg.Length(size)}}
	if bold {
		face.Font.Weight, face.Face = xfont.WeightBold, boldFont()
	} else {
		face.Face = regularFont()
	}
	return face
}

// glyph is one character of a font; lengths in font units, y downwards.
type glyph struct {
	index    sfnt.GlyphIndex
	advance  int
	segments []segment
}

type segment struct {
	op     sfnt.SegmentOp
	points [3][2]int
}

// setGlyph is a glyph at its place in a line of text: x from the start and rise above the baseline in font
// units, drawn at scale of the text's size.
type setGlyph struct {
	*glyph
	x, rise int
	scale   float64 // dimensionless
}

// outlines keeps the glyphs read so far. Reading a glyph gives the same glyph every time, so the order of
// calls changes nothing.
var outlines = struct {
	sync.Mutex
	buffer sfnt.Buffer
	glyphs map[glyphKey]*glyph
	kerns  map[kernKey]int
}{glyphs: map[glyphKey]*glyph{}, kerns: map[kernKey]int{}}

type glyphKey struct {
	font *opentype.Font
	char rune
}

type kernKey struct {
	font *opentype.Font
	a, b sfnt.GlyphIndex
}

// Superscripts and subscripts are set from the plain digits: the font has only some of them, of uneven width.
const (
	superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺"
	subscripts   = "₀₁₂₃₄₅₆₇₈₉₋₊"
	plainDigits  = "0123456789−+"
	smallScale   = 0.62
)

func smallForm(r rune) (plain rune, rise float64, ok bool) {
	if r < 0x80 {
		return r, 0, false
	}
	for _, set := range []struct {
		chars string
		rise  float64
	}{{superscripts, 0.33}, {subscripts, -0.14}} {
		if i := strings.IndexRune(set.chars, r); i >= 0 {
			n := len([]rune(set.chars[:i]))
			return []rune(plainDigits)[n], set.rise, true
		}
	}
	return r, 0, false
}

// setText returns the glyphs of text and their whole width in font units, with kerning.
func setText(f *opentype.Font, text string) ([]setGlyph, int) {
	outlines.Lock()
	defer outlines.Unlock()
	em := int(f.UnitsPerEm())
	set := make([]setGlyph, 0, len(text))
	x := 0
	var before *glyph
	for _, r := range text {
		plain, rise, small := smallForm(r)
		g := readGlyph(f, plain)
		if small {
			set = append(set, setGlyph{g, x, int(rise * float64(em)), smallScale})
			x += int(float64(g.advance) * smallScale)
			before = nil
			continue
		}
		if before != nil {
			x += kern(f, before.index, g.index)
		}
		set = append(set, setGlyph{g, x, 0, 1})
		x += g.advance
		before = g
	}
	return set, x
}

func readGlyph(f *opentype.Font, r rune) *glyph {
	key := glyphKey{f, r}
	if g, ok := outlines.glyphs[key]; ok {
		return g
	}
	b, ppem := &outlines.buffer, fixed.Int26_6(f.UnitsPerEm())
	index, err := f.GlyphIndex(b, r)
	if err != nil {
		panic("plots: the embedded font cannot be read: " + err.Error())
	}
	g := &glyph{index: index}
	if advance, err := f.GlyphAdvance(b, index, ppem, xfont.HintingNone); err == nil {
		g.advance = int(advance)
	}
	if loaded, err := f.LoadGlyph(b, index, ppem, nil); err == nil {
		for _, s := range loaded {
			out := segment{op: s.Op}
			for i, p := range s.Args {
				out.points[i] = [2]int{int(p.X), int(p.Y)}
			}
			g.segments = append(g.segments, out)
		}
	}
	outlines.glyphs[key] = g
	return g
}

func kern(f *opentype.Font, a, b sfnt.GlyphIndex) int {
	key := kernKey{f, a, b}
	if k, ok := outlines.kerns[key]; ok {
		return k
	}
	k, err := f.Kern(&outlines.buffer, a, b, fixed.Int26_6(f.UnitsPerEm()), xfont.HintingNone)
	if err != nil {
		k = 0 // the font has no pair
	}
	outlines.kerns[key] = int(k)
	return int(k)
}

// textWidth returns the width of text in units of the drawing.
func textWidth(text string, size float64, bold bool) float64 {
	face := faceOf(size, bold)
	_, width := setText(face.Face, text)
	return float64(width) * size / float64(face.Face.UnitsPerEm())
}

// wrapText breaks text at its spaces into lines no wider than width; a word wider than that is broken inside.
func wrapText(text string, size float64, bold bool, width float64) []string {
	fits := func(s string) bool { return textWidth(s, size, bold) <= width }
	var lines []string
	line := ""
	for word := range strings.SplitSeq(text, " ") { // not at thin or non-breaking spaces
		if word == "" {
			continue
		}
		joined := word
		if line != "" {
			joined = line + " " + word
		}
		if fits(joined) {
			line = joined
			continue
		}
		if line != "" {
			lines = append(lines, line)
			line = ""
		}
		for !fits(word) {
			n := len([]rune(word)) - 1
			for n > 1 && !fits(string([]rune(word)[:n])) {
				n--
			}
			if n < 1 {
				break
			}
			lines = append(lines, string([]rune(word)[:n]))
			word = string([]rune(word)[n:])
		}
		line = word
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}
