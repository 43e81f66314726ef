package report

import (
	"fmt"
	"net/url"
	"regexp"
	"strconv"
	"strings"

	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"
)

// blocksIn rewrites what a node holds, which has passed the allow-list, as blocks of CommonMark.
func (m *paper) blocksIn(n *html.Node) []string {
	var out []string
	add := func(s string) {
		if s != "" {
			out = append(out, s)
		}
	}
	var run []*html.Node // text and the like between blocks
	flush := func() {
		add(atLineStart(m.line(run, true)))
		run = nil
	}
	bullet, stop := 0, 0 // lists that follow each other need other marks, or they are one
	for c := n.FirstChild; c != nil; c = c.NextSibling {
		if c.DataAtom == atom.Svg {
			continue // the sign of a caution
		}
		if !isBlock(c) {
			run = append(run, c)
			continue
		}
		flush()
		switch c.DataAtom {
		case atom.Ul:
			add(m.list(c, []string{"-", "*"}[bullet%2]))
			bullet++
		case atom.Ol:
			add(m.list(c, []string{".", ")"}[stop%2]))
			stop++
		case atom.H1, atom.H2, atom.H3, atom.H4, atom.H5, atom.H6:
			if words := m.line(children(c), false); words != "" {
				add(strings.Repeat("#", int(c.Data[1]-'0')) + " " + words)
			}
		case atom.Blockquote:
			add(quoted(strings.Join(m.blocksIn(c), "\n\n")))
		case atom.Div:
			inside := m.blocksIn(c)
			if attr(c, "class") == "caution" {
				inside = []string{quoted(strings.Join(inside, "\n\n"))}
			}
			out = append(out, inside...)
		case atom.Pre:
			add(fenced(words(c), ""))
		case atom.Hr:
			add("---")
		case atom.Table:
			out = append(out, m.table(c)...)
		case atom.P, atom.Dt:
			add(atLineStart(m.line(children(c), true)))
		default:
			out = append(out, m.blocksIn(c)...)
		}
	}
	flush()
	return out
}

func children(n *html.Node) []*html.Node {
	var out []*html.Node
	for c := n.FirstChild; c != nil; c = c.NextSibling {
		out = append(out, c)
	}
	return out
}

var blockElements = set("p", "h1", "h2", "h3", "h4", "h5", "h6", "hr", "div", "pre", "blockquote", "ul", "ol", "li", "dl", "dt", "dd",
	"figure", "figcaption", "table", "caption", "thead", "tbody", "tfoot", "tr", "th", "td")

func isBlock(n *html.Node) bool {
	return n.Type == html.ElementNode && blockElements[n.Data]
}

// list rewrites a list; mark is a bullet, or what stands behind a number.
func (m *paper) list(n *html.Node, mark string) string {
	number, err := strconv.Atoi(attr(n, "start"))
	if err != nil {
		number = 1
	}
	var items []string
	gap := "\n"
	for _, c := range children(n) {
		if c.DataAtom != atom.Li {
			continue
		}
		blocks := m.blocksIn(c)
		if len(blocks) > 1 {
			gap = "\n\n"
		}
		first := mark + " "
		if n.DataAtom == atom.Ol {
			first = fmt.Sprintf("%d%s ", number, mark)
			number++
		}
		rest := strings.Repeat(" ", len(first))
		lines := strings.Split(strings.Join(blocks, "\n\n"), "\n")
		for i, l := range lines {
			switch {
			case i == 0:
				lines[i] = first + l
			case l != "":
				lines[i] = rest + l
			}
		}
		items = append(items, strings.TrimRight(strings.Join(lines, "\n"), " "))
	}
	return strings.Join(items, gap)
}

func quoted(s string) string {
	if s == "" {
		return ""
	}
	lines := strings.Split(s, "\n")
	for i, l := range lines {
		lines[i] = strings.TrimRight("> "+l, " ")
	}
	return strings.Join(lines, "\n")
}

// table rewrites a table, with its caption before it. A cell that spans others stands in the first of them.
func (m *paper) table(n *html.Node) []string {
	var out []string
	if c := find(n, atom.Caption); c != nil {
		out = append(out, m.blocksIn(c)...)
	}
	var t pipeTable
	var figures, others = map[int]int{}, map[int]int{}
	taken := map[int]int{} // columns that a cell further up reaches down into, and how many rows more
	width := 0
	for i, row := range findAll(n, atom.Tr) {
		var cells []string
		heads := true
		skip := func() {
			for taken[len(cells)] > 0 {
				taken[len(cells)]--
				cells = append(cells, "")
			}
		}
		for _, c := range children(row) {
			if c.DataAtom != atom.Td && c.DataAtom != atom.Th {
				continue
			}
			skip()
			heads = heads && c.DataAtom == atom.Th
			switch {
			case c.DataAtom == atom.Td && strings.Contains(" "+attr(c, "class")+" ", " n "):
				figures[len(cells)]++
			case c.DataAtom == atom.Td && strings.TrimSpace(words(c)) != "":
				others[len(cells)]++
			}
			down, _ := strconv.Atoi(attr(c, "rowspan"))
			across, _ := strconv.Atoi(attr(c, "colspan"))
			taken[len(cells)] = max(0, down-1)
			cells = append(cells, m.line(children(c), false))
			for range across - 1 {
				taken[len(cells)] = max(0, down-1)
				cells = append(cells, "")
			}
		}
		skip()
		width = max(width, len(cells))
		if i == 0 && heads {
			t.head = cells
		} else {
			t.rows = append(t.rows, cells)
		}
	}
	if width == 0 {
		return out
	}
	for len(t.head) < width {
		t.head = append(t.head, "")
	}
	t.right = map[int]bool{}
	for k := range width {
		t.right[k] = figures[k] > 0 && others[k] == 0
	}
	return append(out, t.String())
}

// line rewrites text and what may stand in a line; breaks says whether it may have line breaks. If Markdown reads the
// result otherwise than it is meant (emphasis that ends inside a word), it is the bare words.
func (m *paper) line(nodes []*html.Node, breaks bool) string {
	var l lineText
	l.m = m
	for _, n := range nodes {
		l.add(n)
	}
	l.flush()
	var lines []string
	for _, s := range strings.Split(l.marked.String(), lineBreak) {
		if s = strings.TrimSpace(s); s != "" {
			lines = append(lines, s)
		}
	}
	between := " "
	if breaks {
		between = "\\\n"
	}
	marked := strings.Join(lines, between)
	if readsAs(atLineStart(marked)) == squeezed(l.plain.String()) {
		return marked
	}
	return strings.TrimSpace(escaped(l.plain.String()) + " " + strings.Join(l.pictures, " "))
}

// lineBreak stands for a line break until the lines are put together; no text holds it.
const lineBreak = "\x00"

type lineText struct {
	m             *paper
	text          strings.Builder // not yet in marked: what makes an address may come in pieces
	marked, plain strings.Builder
	pictures      []string
}

func (l *lineText) words(s string) {
	l.text.WriteString(s)
	l.plain.WriteString(s)
}

func (l *lineText) mark(s string) {
	l.flush()
	l.put(s)
}

func (l *lineText) flush() {
	l.put(escaped(l.text.String()))
	l.text.Reset()
}

func (l *lineText) put(s string) {
	if strings.HasSuffix(l.marked.String(), " ") {
		s = strings.TrimLeft(s, " ")
	}
	l.marked.WriteString(s)
}

func (l *lineText) addAll(n *html.Node) {
	for _, c := range children(n) {
		l.add(c)
	}
}

// between writes what n holds between two marks. Space goes outside them.
func (l *lineText) between(n *html.Node, before, after string) {
	var inner lineText
	inner.m = l.m
	inner.addAll(n)
	inner.flush()
	s := inner.marked.String()
	if bare := strings.TrimSpace(s); bare != "" {
		at := strings.Index(s, bare)
		s = s[:at] + before + bare + after + s[at+len(bare):]
	}
	l.mark(s)
	l.plain.WriteString(inner.plain.String())
	l.pictures = append(l.pictures, inner.pictures...)
}

func (l *lineText) add(n *html.Node) {
	if n.Type == html.TextNode {
		l.words(n.Data)
		return
	}
	switch n.DataAtom {
	case atom.Svg:
	case atom.Br:
		l.plain.WriteString(" ")
		l.mark(lineBreak)
	case atom.Strong, atom.B:
		l.between(n, "**", "**")
	case atom.Em, atom.I, atom.Var, atom.Cite:
		l.between(n, "*", "*")
	case atom.Del, atom.S:
		l.between(n, "~~", "~~")
	case atom.Code, atom.Kbd, atom.Samp:
		l.code(words(n))
	case atom.Sup, atom.Sub:
		l.words(map[atom.Atom]string{atom.Sup: "^", atom.Sub: "_"}[n.DataAtom])
		l.addAll(n)
	case atom.Q:
		l.words("“")
		l.addAll(n)
		l.words("”")
	case atom.A:
		l.between(n, "[", "]("+target(attr(n, "href"))+")")
	case atom.Img:
		s := l.m.dataPicture(attr(n, "alt"), attr(n, "src"))
		l.pictures = append(l.pictures, s)
		l.mark(s)
	default:
		if isBlock(n) {
			l.words(" ")
			defer l.words(" ")
		}
		l.addAll(n)
	}
}

// code writes a span of code; within a table a bar or a backslash would be read twice.
func (l *lineText) code(s string) {
	s = squeezed(printable(s))
	if s == "" || strings.ContainsAny(s, "|\\") {
		l.words(s)
		return
	}
	fence := "`"
	for _, run := range backticks.FindAllString(s, -1) {
		if len(run) >= len(fence) {
			fence = run + "`"
		}
	}
	pad := ""
	if s[0] == '`' || s[len(s)-1] == '`' {
		pad = " "
	}
	l.mark(fence + pad + s + pad + fence)
	l.plain.WriteString(s)
}

// target writes where a link leads; the allow-list has seen it.
func target(href string) string {
	u, err := url.Parse(strings.TrimSpace(href))
	if err != nil {
		return "<>"
	}
	return "<" + unsafeInTarget.ReplaceAllStringFunc(u.String(), func(s string) string {
		var b strings.Builder
		for _, c := range []byte(s) {
			fmt.Fprintf(&b, "%%%02X", c)
		}
		return b.String()
	}) + ">"
}

var unsafeInTarget = regexp.MustCompile(`[<>\\\s|` + "`" + `\x00-\x1f]`)
