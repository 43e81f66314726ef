package report

import (
	"bytes"
	"strings"
	"sync"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	gmtext "github.com/yuin/goldmark/text"
	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"
)

// markdown renders prose: CommonMark with tables, strike-through and bare links. HTML inside it is left out.
var markdown = sync.OnceValue(func() goldmark.Markdown {
	return goldmark.New(goldmark.WithExtensions(
		extension.NewTable(extension.WithTableCellAlignMethod(extension.TableCellAlignAttribute)),
		extension.Strikethrough,
		extension.Linkify,
	))
})

// prose is a piece of Markdown, parsed.
type prose struct {
	source []byte
	root   ast.Node
}

func parseProse(s string) *prose {
	source := []byte(printable(s))
	return &prose{source, markdown().Parser().Parse(gmtext.NewReader(source))}
}

func (p *prose) html() string {
	var buf bytes.Buffer
	if err := markdown().Renderer().Render(&buf, p.source, p.root); err != nil {
		// Writing to a buffer does not fail; should the library refuse, the reader still gets the words.
		return "<pre>" + text(string(p.source)) + "</pre>"
	}
	return buf.String()
}

// firstHeading returns the first heading outside quotations and lists, or nil.
func (p *prose) firstHeading() ast.Node {
	for n := p.root.FirstChild(); n != nil; n = n.NextSibling() {
		if n.Kind() == ast.KindHeading {
			return n
		}
	}
	return nil
}

// words returns the text of a node without its markup.
func (p *prose) words(n ast.Node) string {
	var buf bytes.Buffer
	if err := markdown().Renderer().Render(&buf, p.source, n); err != nil {
		return "" // writing to a buffer does not fail
	}
	return wordsOf(buf.String())
}

// wordsOf returns the text of HTML, its spaces squeezed.
func wordsOf(markup string) string {
	root, err := html.ParseFragment(strings.NewReader(markup), &html.Node{Type: html.ElementNode, Data: "div", DataAtom: atom.Div})
	if err != nil {
		return ""
	}
	var b strings.Builder
	for _, n := range root {
		b.WriteString(words(n))
	}
	return squeezed(b.String())
}
