package plots

import (
	"bytes"
	"crypto/sha256"
	"encoding/base32"
	"fmt"
	"image"
	"image/color"
	"math"
	"strconv"
	"strings"

	"golang.org/x/image/font/sfnt"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"
)

const fullTurn = 2 * math.Pi

// svgCanvas is a vg.Canvas that writes SVG of a small kind: rect, path, g, and use for the letters, which are
// outlines shared in defs. It writes no text elements, no styles and no references but its own.
// Coordinates are written in tenths of a unit.
type svgCanvas struct {
	width, height float64
	body          bytes.Buffer
	stack         []svgState
	used          map[*glyph]int // in order of first use
	defs          bytes.Buffer
	grouped       string // attributes of the open group
}

type svgState struct {
	a, b, c, d, e, f float64 // x' = a·x + c·y + e, y' = b·x + d·y + f
	colour           color.Color
	lineWidth        vg.Length
	dash             []vg.Length
	dashOffset       vg.Length
}

// outlineEm is how many units of an outline as written make the size of the text: fine enough for a chart across
// a large page (a 512th of 16 units is 0.03), and short to write.
const outlineEm = 512.0

// idMark stands for the chart's own prefix of ids until the content, and so its hash, is known.
// It cannot occur in the content: XML has no such character.
const idMark = "\x01"

var _ vg.Canvas = (*svgCanvas)(nil)

func newSVGCanvas(width, height float64) *svgCanvas {
	c := &svgCanvas{width: width, height: height, used: map[*glyph]int{}}
	c.stack = []svgState{{a: 1, d: 1}}
	vg.Initialize(c)
	return c
}

func (c *svgCanvas) top() *svgState { return &c.stack[len(c.stack)-1] }

// SetLineWidth implements vg.Canvas.
func (c *svgCanvas) SetLineWidth(w vg.Length) { c.top().lineWidth = w }

// SetLineDash implements vg.Canvas.
func (c *svgCanvas) SetLineDash(pattern []vg.Length, offset vg.Length) {
	c.top().dash, c.top().dashOffset = append([]vg.Length(nil), pattern...), offset
}

// SetColor implements vg.Canvas.
func (c *svgCanvas) SetColor(colour color.Color) {
	if colour == nil {
		colour = color.Black
	}
	c.top().colour = colour
}

// Rotate implements vg.Canvas.
func (c *svgCanvas) Rotate(rad float64) {
	sin, cos := math.Sincos(rad)
	c.multiply(cos, sin, -sin, cos, 0, 0)
}

// Translate implements vg.Canvas.
func (c *svgCanvas) Translate(pt vg.Point) { c.multiply(1, 0, 0, 1, float64(pt.X), float64(pt.Y)) }

// Scale implements vg.Canvas.
func (c *svgCanvas) Scale(x, y float64) { c.multiply(x, 0, 0, y, 0, 0) }

func (c *svgCanvas) multiply(a, b, cc, d, e, f float64) {
	t := c.top()
	t.a, t.b, t.c, t.d, t.e, t.f = t.a*a+t.c*b, t.b*a+t.d*b, t.a*cc+t.c*d, t.b*cc+t.d*d, t.a*e+t.c*f+t.e, t.b*e+t.d*f+t.f
}

// Push implements vg.Canvas.
func (c *svgCanvas) Push() { c.stack = append(c.stack, *c.top()) }

// Pop implements vg.Canvas.
func (c *svgCanvas) Pop() { c.stack = c.stack[:len(c.stack)-1] }

// place returns a point in tenths of a unit, y downwards from the top.
func (c *svgCanvas) place(p vg.Point) [2]int {
	t, x, y := c.top(), float64(p.X), float64(p.Y)
	return [2]int{tenths(t.a*x + t.c*y + t.e), tenths(c.height - (t.b*x + t.d*y + t.f))}
}

func tenths(v float64) int { return int(math.Round(v * 10)) }

func (c *svgCanvas) scale() float64 {
	t := c.top()
	return math.Sqrt(math.Abs(t.a*t.d - t.b*t.c))
}

// Stroke implements vg.Canvas.
func (c *svgCanvas) Stroke(path vg.Path) {
	t := c.top()
	if t.lineWidth <= 0 {
		return
	}
	attrs := fmt.Sprintf(`fill="none" stroke="%s" stroke-width="%s"`, hexColour(t.colour), short(float64(t.lineWidth)*c.scale()))
	if o := opacity(t.colour); o != "" {
		attrs += ` stroke-opacity="` + o + `"`
	}
	c.group(attrs)
	c.body.WriteString("<path")
	if len(t.dash) > 0 {
		c.body.WriteString(` stroke-dasharray="`)
		for i, d := range t.dash {
			if i > 0 {
				c.body.WriteByte(' ')
			}
			c.body.WriteString(short(float64(d) * c.scale()))
		}
		c.body.WriteByte('"')
		if t.dashOffset != 0 {
			c.body.WriteString(` stroke-dashoffset="` + short(float64(t.dashOffset)*c.scale()) + `"`)
		}
	}
	c.body.WriteString(` d="` + c.pathData(path) + "\"/>\n")
}

// Fill implements vg.Canvas.
func (c *svgCanvas) Fill(path vg.Path) {
	c.fillGroup()
	c.body.WriteString(`<path d="` + c.pathData(path) + "\"/>\n")
}

func (c *svgCanvas) fillGroup() {
	attrs := `fill="` + hexColour(c.top().colour) + `"`
	if o := opacity(c.top().colour); o != "" {
		attrs += ` fill-opacity="` + o + `"`
	}
	c.group(attrs)
}

// group opens a group with these attributes unless it is open already.
func (c *svgCanvas) group(attrs string) {
	if c.grouped == attrs {
		return
	}
	c.endGroup()
	c.body.WriteString("<g " + attrs + ">\n")
	c.grouped = attrs
}

func (c *svgCanvas) endGroup() {
	if c.grouped != "" {
		c.body.WriteString("</g>\n")
		c.grouped = ""
	}
}

func (c *svgCanvas) pathData(path vg.Path) string {
	w := pathWriter{}
	for _, comp := range path {
		switch comp.Type {
		case vg.MoveComp:
			w.move(c.place(comp.Pos))
		case vg.LineComp:
			w.line(c.place(comp.Pos))
		case vg.CurveComp:
			points := make([][2]int, 0, 3)
			for _, p := range comp.Control {
				points = append(points, c.place(p))
			}
			w.curve(append(points, c.place(comp.Pos)))
		case vg.ArcComp:
			c.arc(&w, comp)
		case vg.CloseComp:
			w.close()
		}
	}
	return string(w.out)
}

// arc writes an arc in pieces of at most a third of a turn. Transforms of a chart keep circles round.
func (c *svgCanvas) arc(w *pathWriter, arc vg.PathComp) {
	at := func(angle float64) [2]int {
		sin, cos := math.Sincos(angle)
		return c.place(vg.Point{X: arc.Pos.X + arc.Radius*vg.Length(cos), Y: arc.Pos.Y + arc.Radius*vg.Length(sin)})
	}
	turn := math.Max(-fullTurn, math.Min(fullTurn, arc.Angle))
	pieces := max(1, int(math.Ceil(math.Abs(turn)/(fullTurn/3)-1e-9)))
	t := c.top()
	// The canvas has y upwards and SVG has it downwards; a mirroring transform turns the sense once more.
	sweep := turn < 0 != (t.a*t.d-t.b*t.c < 0)
	if start := at(arc.Start); w.empty() {
		w.move(start)
	} else {
		w.line(start)
	}
	for i := 1; i <= pieces; i++ {
		w.arc(tenths(float64(arc.Radius)*c.scale()), sweep, at(arc.Start+turn*float64(i)/float64(pieces)))
	}
}

// FillString implements vg.Canvas: it sets the text as outlines of the face's glyphs.
func (c *svgCanvas) FillString(face font.Face, pt vg.Point, text string) {
	size := float64(face.Font.Size)
	set, _ := setText(face.Face, text)
	if size == 0 || len(set) == 0 {
		return
	}
	c.fillGroup()
	t, at := c.top(), c.place(pt)
	if t.b == 0 && t.c == 0 && t.a == 1 && t.d == 1 {
		fmt.Fprintf(&c.body, `<g transform="translate(%s %s)scale(%s)">`, tenthsText(at[0]), tenthsText(at[1]), short5(size/outlineEm))
	} else {
		fmt.Fprintf(&c.body, `<g transform="matrix(%s %s %s %s %s %s)">`, short5(t.a*size/outlineEm), short5(-t.b*size/outlineEm),
			short5(-t.c*size/outlineEm), short5(t.d*size/outlineEm), tenthsText(at[0]), tenthsText(at[1]))
	}
	em := float64(face.Face.UnitsPerEm())
	coarse := func(n int) int { return int(math.Round(float64(n) * outlineEm / em)) }
	for _, g := range set {
		if len(g.segments) == 0 {
			continue
		}
		c.body.WriteString(`<use href="#` + idMark + c.define(g.glyph, coarse) + `"`)
		switch {
		case g.scale != 1:
			fmt.Fprintf(&c.body, ` transform="translate(%d %d)scale(%s)"`, coarse(g.x), -coarse(g.rise), short(g.scale))
		case coarse(g.x) != 0:
			c.body.WriteString(` x="` + strconv.Itoa(coarse(g.x)) + `"`)
		}
		c.body.WriteString("/>")
	}
	c.body.WriteString("</g>\n")
}

// define puts the outline of a glyph into defs once and returns the end of its id.
func (c *svgCanvas) define(g *glyph, coarse func(int) int) string {
	n, ok := c.used[g]
	if !ok {
		n = len(c.used)
		c.used[g] = n
		w := pathWriter{whole: true}
		for _, s := range g.segments {
			for i, p := range s.points { // s is a copy
				s.points[i] = [2]int{coarse(p[0]), coarse(p[1])}
			}
			switch s.op {
			case sfnt.SegmentOpMoveTo:
				w.close()
				w.move(s.points[0])
			case sfnt.SegmentOpLineTo:
				w.line(s.points[0])
			case sfnt.SegmentOpQuadTo:
				w.curve(s.points[:2])
			case sfnt.SegmentOpCubeTo:
				w.curve(s.points[:3])
			}
		}
		w.close()
		c.defs.WriteString(`<path id="` + idMark + strconv.FormatInt(int64(n), 36) + `" d="` + string(w.out) + "\"/>\n")
	}
	return strconv.FormatInt(int64(n), 36)
}

// DrawImage implements vg.Canvas. A chart draws no raster images; it panics.
func (c *svgCanvas) DrawImage(vg.Rectangle, image.Image) {
	panic("plots: a chart holds no raster image")
}

// document returns the whole SVG, with title and description for those who do not see it. Ids begin with a hash
// of the content, so that charts on one page do not take each other's letters.
func (c *svgCanvas) document(title, description string) string {
	c.endGroup()
	var b strings.Builder
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %s %s" width="%s" role="img" aria-label="%s" aria-describedby="%s_alt">`+"\n",
		short(c.width), short(c.height), short(c.width), escapeXML(title), idMark)
	fmt.Fprintf(&b, "<title>%s</title>\n<desc id=\"%s_alt\">%s</desc>\n", escapeXML(title), idMark, escapeXML(description))
	b.WriteString("<defs>\n" + c.defs.String() + "</defs>\n")
	b.WriteString(`<g stroke-linejoin="round">` + "\n" + c.body.String() + "</g>\n</svg>\n")
	content := b.String()
	sum := sha256.Sum256([]byte(content))
	prefix := base32.HexEncoding.EncodeToString(sum[:5])
	return strings.ReplaceAll(content, idMark, "c"+strings.ToLower(prefix)+"-")
}

var xmlEscapes = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&quot;", "'", "&#39;")

func escapeXML(s string) string { return xmlEscapes.Replace(s) }

func hexColour(colour color.Color) string {
	n := color.NRGBAModel.Convert(colour).(color.NRGBA)
	return fmt.Sprintf("#%02x%02x%02x", n.R, n.G, n.B)
}

// opacity returns the opacity of a colour, empty if it is opaque.
func opacity(colour color.Color) string {
	if _, _, _, a := colour.RGBA(); a != math.MaxUint16 {
		return short(float64(a) / math.MaxUint16)
	}
	return ""
}

func short(v float64) string  { return trimZeros(strconv.FormatFloat(v, 'f', 2, 64)) }
func short5(v float64) string { return trimZeros(strconv.FormatFloat(v, 'f', 6, 64)) }
