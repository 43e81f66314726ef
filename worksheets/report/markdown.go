package report

import (
	"bytes"
	"strings"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	gmtext "github.com/yuin/goldmark/text"
)

// markdown renders prose: CommonMark with tables, strike-through and bare links. HTML inside it is left out.
var markdown = goldmark.New(goldmark.WithExtensions(
	extension.NewTable(extension.WithTableCellAlignMethod(extension.TableCellAlignAttribute)),
	extension.Strikethrough,
	extension.Linkify,
))

// prose is a piece of Markdown, parsed.
type prose struct {
	source []byte
	root   ast.Node
}

func parseProse(s string) *prose {
	source := []byte(printable(s))
	return &prose{source, markdown.Parser().Parse(gmtext.NewReader(source))}
}

func (p *prose) html() string {
	var buf bytes.Buffer
	if err := markdown.Renderer().Render(&buf, p.source, p.root); err != nil {
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
	var b strings.Builder
	_ = ast.Walk(n, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch n := n.(type) {
		case *ast.Text:
			b.Write(n.Value(p.source))
			if n.SoftLineBreak() || n.HardLineBreak() {
				b.WriteByte(' ')
			}
		case *ast.String:
			b.Write(n.Value)
		case *ast.AutoLink:
			b.Write(n.Label(p.source))
		}
		return ast.WalkContinue, nil
	})
	return strings.Join(strings.Fields(b.String()), " ")
}
