package report

import (
	"regexp"
	"strings"
	"unicode/utf8"

	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"

	"swanneck/worksheets/notebook"
)

// safeTree passes HTML through the allow-list and gives it the report's shape. It returns nil if nothing that can be
// seen is left.
func safeTree(dirty string, attached map[string]notebook.Bundle) *html.Node {
	clean := allowedHTML().Sanitize(printable(dirty))
	body := &html.Node{Type: html.ElementNode, Data: "div", DataAtom: atom.Div}
	nodes, err := html.ParseFragment(strings.NewReader(clean), body)
	if err != nil {
		return nil
	}
	for _, n := range nodes {
		body.AppendChild(n)
	}
	reshape(body, attached)
	if strings.TrimSpace(words(body)) == "" && find(body, atom.Img) == nil {
		return nil
	}
	return body
}

// markup returns what a node holds as HTML.
func markup(n *html.Node) string {
	var b strings.Builder
	for c := n.FirstChild; c != nil; c = c.NextSibling {
		if err := html.Render(&b, c); err != nil {
			return "" // writing to memory does not fail, and the tree has no raw nodes
		}
	}
	return strings.TrimSpace(b.String()) + "\n"
}

// reshape changes the tree below n: headings one level down (the report's title is the first), tables in boxes that
// scroll, figures to the right, cautions marked, pictures from attachments, no link but to the web or to mail.
func reshape(n *html.Node, attached map[string]notebook.Bundle) {
	for c := n.FirstChild; c != nil; {
		next := c.NextSibling
		reshape(c, attached)
		switch c.DataAtom {
		case atom.H1, atom.H2, atom.H3, atom.H4, atom.H5:
			c.Data = "h" + string(c.Data[1]+1)
			c.DataAtom = atom.Lookup([]byte(c.Data))
		case atom.Table:
			alignFigures(c)
			wrap(c, "wide", "Table")
		case atom.Blockquote:
			if isCaution(c) {
				markCaution(c)
			}
		case atom.Img:
			embedPicture(c, attached)
		case atom.A:
			if !webLink.MatchString(attr(c, "href")) {
				c.Data, c.DataAtom, c.Attr = "span", atom.Span, nil
			}
		}
		c = next
	}
}

var webLink = regexp.MustCompile(`^(?i:https?://|mailto:)`)

// wrap puts n into a box that can be scrolled, by keyboard too.
func wrap(n *html.Node, class, label string) {
	box := &html.Node{Type: html.ElementNode, Data: "div", DataAtom: atom.Div, Attr: []html.Attribute{
		{Key: "class", Val: class}, {Key: "role", Val: "region"}, {Key: "aria-label", Val: label}, {Key: "tabindex", Val: "0"},
	}}
	n.Parent.InsertBefore(box, n)
	n.Parent.RemoveChild(n)
	box.AppendChild(n)
}

// figure matches a cell that holds a number: sign, digits grouped by spaces or commas, decimals, exponent, per cent,
// a tolerance or a range of such.
var figure = regexp.MustCompile(`^[-−+±<>≤≥≈~]?\s?\d[\d\s\x{a0}\x{2009}\x{202f},.]*(?:[eE][-+−]?\d+)?\s?%?(?:\s?(?:±|–|…)\s?\d[\d,.]*)?$`)

// longCell is the number of characters from which a cell holds a sentence, which needs room to be read.
const longCell = 24

// alignFigures marks the cells that hold numbers, and the head of a column that holds nothing else.
func alignFigures(table *html.Node) {
	numbers, others := map[int]int{}, map[int]int{}
	var heads []*html.Node
	var headColumn []int
	for _, row := range findAll(table, atom.Tr) {
		column := 0
		for c := row.FirstChild; c != nil; c = c.NextSibling {
			if c.DataAtom != atom.Td && c.DataAtom != atom.Th {
				continue
			}
			s := strings.TrimSpace(words(c))
			switch {
			case c.DataAtom == atom.Th && c.Parent.Parent.DataAtom == atom.Thead:
				heads, headColumn = append(heads, c), append(headColumn, column)
			case figure.MatchString(s):
				numbers[column]++
				setClass(c, "n")
			case s != "" && s != "–" && s != "-":
				others[column]++
			}
			if utf8.RuneCountInString(s) > longCell {
				setClass(c, "long")
			}
			column++
		}
	}
	for i, h := range heads {
		if numbers[headColumn[i]] > 0 && others[headColumn[i]] == 0 {
			setClass(h, "n")
		}
	}
}

// isCaution says whether a quotation starts with the bold word Caution.
func isCaution(quote *html.Node) bool {
	p := firstSolid(quote)
	if p == nil || p.DataAtom != atom.P {
		return false
	}
	b := firstSolid(p)
	if b == nil || b.DataAtom != atom.Strong && b.DataAtom != atom.B {
		return false
	}
	w := strings.FieldsFunc(words(b), func(r rune) bool { return strings.ContainsRune(" \n\t.:!,;–—", r) })
	return len(w) > 0 && strings.EqualFold(w[0], "caution")
}

// cautionSign is drawn, not lettered: a character may be missing from a phone's fonts or be swapped for a picture.
const cautionSign = `<svg class="sign" viewBox="0 0 24 24" aria-hidden="true"><path d="M12 3 22 21H2Z" fill="none" stroke="currentColor" stroke-width="2" stroke-linejoin="round"></path><path d="M12 9.5V15" stroke="currentColor" stroke-width="2.2" stroke-linecap="round"></path><circle cx="12" cy="18" r="1.3" fill="currentColor"></circle></svg>`

func markCaution(quote *html.Node) {
	quote.Data, quote.DataAtom = "div", atom.Div
	quote.Attr = []html.Attribute{{Key: "class", Val: "caution"}, {Key: "role", Val: "note"}}
	inner := &html.Node{Type: html.ElementNode, Data: "div", DataAtom: atom.Div}
	for c := quote.FirstChild; c != nil; c = quote.FirstChild {
		quote.RemoveChild(c)
		inner.AppendChild(c)
	}
	sign, err := html.ParseFragment(strings.NewReader(cautionSign), quote)
	if err == nil {
		for _, n := range sign {
			quote.AppendChild(n)
		}
	}
	quote.AppendChild(inner)
}

// embedPicture puts an attached picture into the file. A picture from elsewhere becomes its description.
func embedPicture(img *html.Node, attached map[string]notebook.Bundle) {
	src := attr(img, "src")
	if name, ok := strings.CutPrefix(src, "attachment:"); ok {
		src = attachedPicture(attached, name)
	}
	alt := attr(img, "alt")
	if !strings.HasPrefix(src, "data:image/") {
		if alt == "" {
			alt = "no description"
		}
		img.Type, img.Data, img.DataAtom, img.Attr = html.ElementNode, "span", atom.Span, nil
		setClass(img, "missing")
		img.AppendChild(&html.Node{Type: html.TextNode, Data: "[picture not in this file: " + alt + "]"})
		return
	}
	kept := []html.Attribute{{Key: "src", Val: src}, {Key: "alt", Val: alt}}
	for _, key := range []string{"width", "height"} {
		if v := attr(img, key); v != "" {
			kept = append(kept, html.Attribute{Key: key, Val: v})
		}
	}
	img.Attr = kept
}
