package plots

import (
	"fmt"
	"image/color"
	"math"
	"regexp"
	"strconv"
	"strings"

	"gonum.org/v1/plot/vg"
)

// Swatches is a row of colours with words to each, as of a liquid over time. The words keep it of use in grey print. It is
// made by NewSwatches, and not safe for use by several goroutines at once.
type Swatches struct {
	title    string
	swatches []swatch
	notes    []string
}

type swatch struct {
	label, hex, note string
	colour           color.NRGBA
}

// NewSwatches returns an empty row of colours.
func NewSwatches(title string) *Swatches { return &Swatches{title: oneLine(title)} }

var hexForm = regexp.MustCompile(`^#[0-9a-fA-F]{6}$`)

// Add adds a colour, such as "#dfe8c4", with a label and a note, which may be empty. Panics with *Error for anything that is not
// a colour of six hexadecimal digits.
func (s *Swatches) Add(label, hex, note string) {
	label = oneLine(label)
	if !hexForm.MatchString(hex) {
		panic(&Error{Func: "Swatches.Add", Series: label, Index: -1, Problem: fmt.Sprintf("the colour is %q", hex), Want: "give six hexadecimal digits, such as #dfe8c4"})
	}
	n, err := strconv.ParseUint(hex[1:], 16, 32)
	if err != nil {
		panic("plots: six hexadecimal digits are no number: " + err.Error())
	}
	s.swatches = append(s.swatches, swatch{label, strings.ToLower(hex), oneLine(note), color.NRGBA{uint8(n >> 16), uint8(n >> 8), uint8(n), 0xff}})
}

// AddAll adds a colour for each label, with the note of the same place; notes may be nil. Panics with *Error if the lengths differ
// or there is none.
func (s *Swatches) AddAll(labels, hexes, notes []string) {
	if len(labels) != len(hexes) || notes != nil && len(notes) != len(labels) {
		panic(&Error{Func: "Swatches.AddAll", Series: s.title, Index: -1, Problem: fmt.Sprintf("%d labels, %d colours and %d notes", len(labels), len(hexes), len(notes)), Want: "give a colour and a note for each label"})
	}
	if len(labels) == 0 {
		panic(&Error{Func: "Swatches.AddAll", Series: s.title, Index: -1, Problem: "the series is empty", Want: "give at least one colour"})
	}
	for i := range labels {
		note := ""
		if notes != nil {
			note = notes[i]
		}
		s.Add(labels[i], hexes[i], note)
	}
}

// Note adds a small line of text under the colours, as for the path or a source. Each call starts a new line.
func (s *Swatches) Note(text string) {
	if text = oneLine(text); text != "" {
		s.notes = append(s.notes, text)
	}
}

func (s *Swatches) name() string {
	if s.title != "" {
		return s.title
	}
	return "Colours"
}

// String returns the text alternative of the colours. See AltText.
func (s *Swatches) String() string { return s.AltText() }

// AltText returns the colours in words for those who do not see them, a line for each.
func (s *Swatches) AltText() string {
	var b strings.Builder
	b.WriteString(s.name())
	for i, w := range s.swatches {
		label := w.label
		if label == "" {
			label = fmt.Sprintf("colour %d", i+1)
		}
		fmt.Fprintf(&b, "\n%s: %s", label, w.hex)
		if w.note != "" {
			b.WriteString(", " + w.note)
		}
	}
	for _, n := range s.notes {
		b.WriteString("\nNote: " + n)
	}
	return b.String()
}

// A row of colours worked out.
type swatchLayout struct {
	*layout
	boxes []box
}

const (
	mostSwatches = 5 // side by side
	swatchHigh   = 64.0
	swatchGap    = 10.0
)

func (s *Swatches) layOut() *swatchLayout {
	l := &swatchLayout{layout: &layout{width: chartWidth}}
	y := margin
	text := func(r role, text string, x, width, size float64, bold, soft bool) {
		for _, line := range wrapText(text, size, bold, width) {
			l.words = append(l.words, word{r, line, x, y + ascent*size, size, bold, soft})
			y += lineStep * size
		}
	}
	text(roleTitle, s.title, margin, chartWidth-2*margin, titleSize, true, false)
	if len(l.words) > 0 {
		y += 5
	}
	columns := min(len(s.swatches), mostSwatches)
	if n := len(s.swatches); n > mostSwatches { // rows of about one length
		rows := (n + mostSwatches - 1) / mostSwatches
		columns = (n + rows - 1) / rows
	}
	width := (chartWidth - 2*margin - swatchGap*float64(max(columns, 3)-1)) / float64(max(columns, 3))
	for from := 0; from < len(s.swatches); from += columns {
		rowTop, lowest := y, y
		for i := from; i < min(from+columns, len(s.swatches)); i++ {
			x := margin + float64(i-from)*(width+swatchGap)
			w := s.swatches[i]
			l.boxes = append(l.boxes, box{x, rowTop, x + width, rowTop + swatchHigh})
			y = rowTop + swatchHigh + 4
			text(roleLegend, w.label, x, width, textSize, false, false)
			text(roleNote, w.note, x, width, noteSize, false, true)
			text(roleNote, w.hex, x, width, noteSize, false, true)
			lowest = max(lowest, y)
		}
		y = lowest + 10
	}
	for _, n := range s.notes {
		text(roleNote, n, margin, chartWidth-2*margin, noteSize, false, true)
	}
	l.height = math.Ceil(y + margin - 6)
	return l
}

func (s *Swatches) mustHaveSome(call string) {
	if len(s.swatches) == 0 {
		panic(&Error{Func: call, Series: s.title, Index: -1, Problem: "there are no colours", Want: "add one with Add first"})
	}
}

// SVG returns the colours as one SVG element for a page, with title and text alternative. The same colours give the same bytes.
// Panics with *Error if there are none.
func (s *Swatches) SVG() string {
	s.mustHaveSome("Swatches.SVG")
	l := s.layOut()
	canvas := newSVGCanvas(l.width, l.height)
	s.draw(l, canvas)
	return canvas.document(s.name(), s.AltText())
}

// PNG returns the colours as a PNG picture; dpi is the resolution in dots per inch, from 30 to 600, rounded to a whole number.
// Panics with *Error if there are none or dpi is out of range.
func (s *Swatches) PNG(dpi float64) []byte {
	s.mustHaveSome("Swatches.PNG")
	checkDPI("Swatches.PNG", dpi)
	l := s.layOut()
	return picture(l.width, l.height, dpi, func(c vg.Canvas) { s.draw(l, c) })
}

func (s *Swatches) draw(l *swatchLayout, canvas vg.Canvas) {
	p := pen{canvas, l.height}
	p.fill(paper, box{0, 0, l.width, l.height})
	for i, b := range l.boxes {
		p.fill(s.swatches[i].colour, b)
		p.stroke(axisInk, thin, nil, point{b.x0, b.y0}, point{b.x1, b.y0}, point{b.x1, b.y1}, point{b.x0, b.y1}, point{b.x0, b.y0})
	}
	for _, w := range l.words {
		p.SetColor(ink)
		if w.soft {
			p.SetColor(softInk)
		}
		p.FillString(faceOf(w.size, w.bold), p.at(w.x, w.baseline), w.text)
	}
}
