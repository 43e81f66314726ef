package report

import (
	"fmt"
	"html"
	"strings"

	nethtml "golang.org/x/net/html"
)

// piece is a part of the worksheet as the reader sees it, in each form of the report.
type piece interface {
	html(b *strings.Builder)
	markdown(m *paper)
}

// shownTree is prose, or HTML that a cell shows; it has passed the allow-list.
type shownTree struct {
	class string
	tree  *nethtml.Node
}

func (s shownTree) html(b *strings.Builder) {
	b.WriteString(`<div class="` + s.class + "\">\n" + markup(s.tree) + "</div>\n")
}

// codeText is the code of a cell.
type codeText struct {
	number           int // among the code cells, from 1
	language, source string
	lines            int
	open             bool // it says what went in
}

func (c codeText) html(b *strings.Builder) {
	size := "1 line"
	if c.lines > 1 {
		size = fmt.Sprintf("%d lines", c.lines)
	}
	open, name := "", "Code"
	if c.open {
		open, name = " open", "What went in" // what went in stands on paper too
	}
	fmt.Fprintf(b, "<details class=\"code\"%s><summary>%s <span class=\"hint\">%s</span></summary><pre tabindex=\"0\"><code>%s</code></pre></details>\n",
		open, name, size, colourCode(c.language, c.source))
}

// printedText is text as it stands.
type printedText struct {
	text  string
	aside bool // said beside the point: the error stream
}

func (p printedText) html(b *strings.Builder) {
	class := "out"
	if p.aside {
		class += " aside"
	}
	if !inColumns.MatchString(p.text) { // text in columns scrolls sideways; other text wraps
		class += " flow"
	}
	fmt.Fprintf(b, "<pre class=\"%s\" tabindex=\"0\">%s</pre>\n", class, html.EscapeString(p.text))
}

// stoppedStep is the mistake that stopped a cell. The message stays in sight; the way to it is folded.
type stoppedStep struct{ message, trace string }

func (s stoppedStep) html(b *strings.Builder) {
	fmt.Fprintf(b, "<div class=\"stopped\" role=\"note\"><p><strong>This step stopped.</strong> %s</p>", html.EscapeString(s.message))
	if s.trace != "" {
		fmt.Fprintf(b, "<details><summary>Where</summary><pre tabindex=\"0\">%s</pre></details>", html.EscapeString(s.trace))
	}
	b.WriteString("</div>\n")
}

// figures are results where their cell declared them.
type figures []ResultRow

func (f figures) html(b *strings.Builder) {
	b.WriteString("<div class=\"shown\">\n<table class=\"figures\">\n")
	for _, r := range f {
		b.WriteString(resultBody(r))
	}
	b.WriteString("</table>\n</div>\n")
}

// drawnChart is a drawing.
type drawnChart struct {
	safeChart
	label string // what it shows, for those who do not see it
}

func (c drawnChart) html(b *strings.Builder) {
	caption := ""
	if s := c.caption(); s != "" {
		caption = "<figcaption>" + text(s) + "</figcaption>"
	}
	fmt.Fprintf(b, "<figure role=\"img\" aria-label=\"%s\">%s%s</figure>\n", text(c.label), c.markup, caption)
}

func (c drawnChart) caption() string {
	if len(c.lettering) == 0 {
		return ""
	}
	return "Lettering of this chart, which the report leaves out of the drawing: " + strings.Join(c.lettering, "; ")
}

// shownPicture is a picture made of points.
type shownPicture struct {
	uri, label string
	widthPx    int64 // 0: its own
}

func (p shownPicture) html(b *strings.Builder) {
	width := ""
	if p.widthPx > 0 {
		width = fmt.Sprintf(" width=\"%d\"", p.widthPx)
	}
	fmt.Fprintf(b, "<figure><img src=\"%s\" alt=\"%s\"%s></figure>\n", p.uri, text(p.label), width)
}

// notShown names an output that the report has no form for: nothing vanishes without a word.
type notShown struct{ what string }

func (n notShown) words() string {
	return "[output of type " + n.what + ", which a report cannot show]"
}

func (n notShown) html(b *strings.Builder) {
	b.WriteString(`<p class="missing">` + text(n.words()) + "</p>\n")
}
