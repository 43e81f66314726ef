package report

import (
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"regexp"
	"slices"
	"strings"
)

// safeChart is an SVG drawing of which only known shapes are left.
type safeChart struct {
	markup    string   // for a page: as wide as its place
	alone     string   // for a file of its own: with width and height
	label     string   // the drawing's own title and description, for those who cannot see it
	lettering []string // text elements that were left out
}

const (
	svgSpace   = "http://www.w3.org/2000/svg"
	xlinkSpace = "http://www.w3.org/1999/xlink"
	svgDepth   = 100 // deepest nesting
)

// svgElements are the elements that are kept. Of any other, all that it holds goes too.
var svgElements = set("svg", "g", "path", "use", "defs", "title", "desc", "rect", "circle", "ellipse", "line",
	"polyline", "polygon", "clipPath")

// svgAttributes are the attributes that are kept: shape, place and paint.
var svgAttributes = set("d", "x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "rx", "ry", "width", "height", "points",
	"viewBox", "preserveAspectRatio", "transform", "clipPathUnits", "pathLength",
	"color", "fill", "fill-opacity", "fill-rule", "stroke", "stroke-width", "stroke-opacity", "stroke-linecap",
	"stroke-linejoin", "stroke-miterlimit", "stroke-dasharray", "stroke-dashoffset", "opacity", "clip-path", "clip-rule",
	"display", "visibility", "vector-effect", "shape-rendering", "paint-order")

var (
	plainValue = regexp.MustCompile(`^[A-Za-z0-9#.,%()+\-\s]*$`)
	clipValue  = regexp.MustCompile(`^url\(\s*["']?#([A-Za-z0-9_.\-]+)["']?\s*\)$`)
	idValue    = regexp.MustCompile(`^[A-Za-z0-9_.\-]+$`)
	svgLength  = regexp.MustCompile(`^\s*([0-9]+(?:\.[0-9]+)?)(?:px|pt|mm|cm|in)?\s*$`)
)

func set(names ...string) map[string]bool {
	m := map[string]bool{}
	for _, n := range names {
		m[n] = true
	}
	return m
}

// svgNode is an element that is kept, or text.
type svgNode struct {
	name     string
	attrs    [][2]string
	id, ref  string // own identifier; that of the element a use draws
	text     string
	children []*svgNode
}

// safeSVG returns the drawing with known shapes and attributes only; prefix is put before each identifier, so that two
// drawings in a file do not get into each other's way.
func safeSVG(source, prefix string) (safeChart, error) {
	p := svgParser{dec: xml.NewDecoder(strings.NewReader(source)), prefix: prefix}
	root, err := p.document()
	if err != nil {
		return safeChart{}, err
	}
	fitViewBox(root)
	users := map[string]bool{}
	markUsers(root, users)
	var b strings.Builder
	writeSVG(&b, root, users, true)
	markup := b.String()
	b.Reset()
	setSize(root)
	writeSVG(&b, root, users, true)
	return safeChart{markup: markup, alone: b.String(), label: label(root, p.label), lettering: p.lettering}, nil
}

// label puts a drawing's title and description together; named is what its aria-label says, in case there is no title.
func label(root *svgNode, named string) string {
	var title, desc string
	for _, c := range root.children {
		words := strings.Join(strings.Fields(allText(c)), " ")
		switch {
		case c.name == "title" && title == "":
			title = words
		case c.name == "desc" && desc == "":
			desc = words
			if first, rest, ok := strings.Cut(strings.TrimSpace(allText(c)), "\n"); ok && strings.TrimSpace(first) == title {
				desc = strings.Join(strings.Fields(rest), " ") // a first line of its own
			}
		}
	}
	if title == "" {
		title = strings.Join(strings.Fields(named), " ")
	}
	switch {
	case strings.HasPrefix(desc, title):
		return desc
	case desc == "":
		return title
	}
	return strings.TrimRight(title, ".") + ". " + desc
}

type svgParser struct {
	dec       *xml.Decoder
	prefix    string
	label     string // aria-label of the whole
	lettering []string
}

func (p *svgParser) document() (*svgNode, error) {
	for {
		tok, err := p.dec.Token()
		if err != nil {
			return nil, fmt.Errorf("report: no SVG drawing: %w", err)
		}
		start, ok := tok.(xml.StartElement)
		if !ok {
			continue
		}
		if start.Name.Local != "svg" || !ownSpace(start.Name.Space) {
			return nil, fmt.Errorf("report: the drawing is a %q; want an svg", start.Name.Local)
		}
		for _, a := range start.Attr {
			if a.Name.Space == "" && a.Name.Local == "aria-label" {
				p.label = a.Value
			}
		}
		root, err := p.element(start, 0)
		if err != nil {
			return nil, err
		}
		for {
			if _, err := p.dec.Token(); errors.Is(err, io.EOF) {
				return root, nil
			} else if err != nil {
				return nil, err
			}
		}
	}
}

func ownSpace(space string) bool { return space == "" || space == svgSpace }

// element reads an element that is kept, up to its end.
func (p *svgParser) element(start xml.StartElement, depth int) (*svgNode, error) {
	if depth > svgDepth {
		return nil, fmt.Errorf("report: the drawing nests more than %d deep; want less", svgDepth)
	}
	n := &svgNode{name: start.Name.Local}
	p.attributes(n, start.Attr)
	wording := n.name == "title" || n.name == "desc" // hold text and nothing else
	for {
		tok, err := p.dec.Token()
		if err != nil {
			return nil, fmt.Errorf("report: the drawing breaks off: %w", err)
		}
		switch tok := tok.(type) {
		case xml.EndElement:
			return n, nil
		case xml.CharData:
			if wording {
				n.children = append(n.children, &svgNode{text: string(tok)})
			}
		case xml.StartElement:
			if svgElements[tok.Name.Local] && ownSpace(tok.Name.Space) && !wording {
				child, err := p.element(tok, depth+1)
				if err != nil {
					return nil, err
				}
				n.children = append(n.children, child)
				continue
			}
			if err := p.leaveOut(tok); err != nil {
				return nil, err
			}
		}
	}
}

// leaveOut skips an element and what it holds, but notes the words of a text element.
func (p *svgParser) leaveOut(start xml.StartElement) error {
	var words strings.Builder
	for depth := 1; depth > 0; {
		tok, err := p.dec.Token()
		if err != nil {
			return fmt.Errorf("report: the drawing breaks off: %w", err)
		}
		switch tok := tok.(type) {
		case xml.StartElement:
			depth++
		case xml.EndElement:
			depth--
		case xml.CharData:
			words.Write(tok)
		}
	}
	if s := strings.Join(strings.Fields(words.String()), " "); start.Name.Local == "text" && s != "" {
		p.lettering = append(p.lettering, s)
	}
	return nil
}

func (p *svgParser) attributes(n *svgNode, attrs []xml.Attr) {
	seen := map[string]bool{}
	add := func(key, value string) {
		value = strings.TrimSpace(value)
		if seen[key] || !svgAttributes[key] {
			return
		}
		if m := clipValue.FindStringSubmatch(value); m != nil && key == "clip-path" {
			value = "url(#" + p.prefix + m[1] + ")"
		} else if !plainValue.MatchString(value) || strings.Contains(strings.ToLower(value), "url") {
			return
		}
		seen[key] = true
		n.attrs = append(n.attrs, [2]string{key, value})
	}
	// A style attribute counts for more than a presentation attribute. As the policy forbids it, it becomes some.
	for _, a := range attrs {
		if a.Name.Space == "" && a.Name.Local == "style" {
			declarations := strings.Split(a.Value, ";")
			for i := len(declarations) - 1; i >= 0; i-- { // the last of two counts
				if key, value, ok := strings.Cut(declarations[i], ":"); ok && !geometry[strings.TrimSpace(key)] {
					add(strings.TrimSpace(key), value)
				}
			}
		}
	}
	for _, a := range attrs {
		key := a.Name.Local
		switch {
		case key == "href" && (a.Name.Space == "" || a.Name.Space == xlinkSpace || a.Name.Space == "xlink"):
			if id, ok := strings.CutPrefix(a.Value, "#"); ok && idValue.MatchString(id) && n.name == "use" {
				n.ref = p.prefix + id
			}
		case a.Name.Space != "":
		case key == "id":
			if idValue.MatchString(a.Value) {
				n.id = p.prefix + a.Value
			}
		default:
			add(key, a.Value)
		}
	}
}

// geometry are attributes that a style may not set here: as attributes they mean something else.
var geometry = set("d", "x", "y", "width", "height", "cx", "cy", "r", "rx", "ry", "transform", "points", "viewBox")

// fitViewBox lets the drawing shrink to a phone: a viewBox, made from the size if need be, and no fixed height.
func fitViewBox(root *svgNode) {
	at := func(key string) int {
		for i, a := range root.attrs {
			if a[0] == key {
				return i
			}
		}
		return -1
	}
	if w, h := at("width"), at("height"); at("viewBox") < 0 && w >= 0 && h >= 0 {
		ws, hs := svgLength.FindStringSubmatch(root.attrs[w][1]), svgLength.FindStringSubmatch(root.attrs[h][1])
		if ws != nil && hs != nil {
			root.attrs = append(root.attrs, [2]string{"viewBox", "0 0 " + ws[1] + " " + hs[1]})
		}
	}
	if h := at("height"); h >= 0 && at("viewBox") >= 0 {
		root.attrs = append(root.attrs[:h], root.attrs[h+1:]...)
	}
}

// setSize gives the drawing the size of its viewBox, for programs that show nothing of a drawing without one.
func setSize(root *svgNode) {
	for _, a := range root.attrs {
		if a[0] != "viewBox" {
			continue
		}
		box := strings.FieldsFunc(a[1], func(r rune) bool { return r == ' ' || r == ',' })
		if len(box) != 4 {
			return
		}
		root.attrs = slices.DeleteFunc(root.attrs, func(a [2]string) bool { return a[0] == "width" || a[0] == "height" })
		root.attrs = append(root.attrs, [2]string{"width", box[2]}, [2]string{"height", box[3]})
		return
	}
}

// markUsers finds the identifiers of elements that hold a use. To draw such an element by a use is refused: a few lines
// of nested uses can ask for millions of shapes.
func markUsers(n *svgNode, users map[string]bool) bool {
	holds := n.name == "use"
	for _, c := range n.children {
		if markUsers(c, users) {
			holds = true
		}
	}
	if holds && n.id != "" {
		users[n.id] = true
	}
	return holds
}

func writeSVG(b *strings.Builder, n *svgNode, users map[string]bool, root bool) {
	if n.name == "" {
		b.WriteString(text(n.text))
		return
	}
	if n.name == "use" && (n.ref == "" || users[n.ref]) {
		return
	}
	b.WriteString("<" + n.name)
	if root {
		b.WriteString(` xmlns="` + svgSpace + `"`)
	}
	if n.id != "" {
		b.WriteString(` id="` + text(n.id) + `"`)
	}
	if n.ref != "" {
		b.WriteString(` href="#` + text(n.ref) + `"`)
	}
	for _, a := range n.attrs {
		b.WriteString(" " + a[0] + `="` + text(a[1]) + `"`)
	}
	b.WriteString(">")
	for _, c := range n.children {
		writeSVG(b, c, users, false)
	}
	b.WriteString("</" + n.name + ">")
}

func allText(n *svgNode) string {
	s := n.text
	for _, c := range n.children {
		s += allText(c)
	}
	return s
}
