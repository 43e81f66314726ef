package report

import (
	"fmt"
	"strings"

	"github.com/yuin/goldmark/ast"

	"swanneck/worksheets/notebook"
)

// body gathers the HTML of the cells.
type body struct {
	nb     *notebook.Notebook
	prose  map[int]*prose // by cell, of the Markdown cells
	html   strings.Builder
	charts int // shown so far: each has its own identifiers
}

func newBody(nb *notebook.Notebook) *body {
	b := &body{nb: nb, prose: map[int]*prose{}}
	for i, c := range nb.Cells {
		if c.Type == notebook.Markdown {
			b.prose[i] = parseProse(c.Source)
		}
	}
	return b
}

// takeTitle returns the title, or if it is empty the first heading of the prose. A heading that says the same as the
// title is taken out of the prose.
func (b *body) takeTitle(title string) string {
	for i := range b.nb.Cells {
		p := b.prose[i]
		if p == nil {
			continue
		}
		h := p.firstHeading()
		if h == nil {
			continue
		}
		words := p.words(h)
		if title == "" {
			title = words
		}
		if strings.EqualFold(strings.Join(strings.Fields(title), " "), words) {
			p.root.RemoveChild(p.root, ast.Node(h))
		}
		break
	}
	return title
}

// cell writes a cell. Raw cells are meant for other converters and are left out.
func (b *body) cell(i int) {
	c := b.nb.Cells[i]
	switch c.Type {
	case notebook.Markdown:
		if s := safeHTML(b.prose[i].html(), c.Attachments); s != "" {
			b.html.WriteString("<div class=\"prose\">\n" + s + "</div>\n")
		}
	case notebook.Code:
		b.source(c)
		b.outputs(c.Outputs)
	}
}

// RoleInputs is the value of "role", in a cell's own metadata, of a cell that holds what the person puts in. Its code is
// shown open, and printed.
const RoleInputs = "inputs"

func (b *body) source(c *notebook.Cell) {
	source := strings.TrimSpace(c.Source)
	if source == "" {
		return
	}
	lines := strings.Count(source, "\n") + 1
	size := "1 line"
	if lines > 1 {
		size = fmt.Sprintf("%d lines", lines)
	}
	open, name := "", "Code"
	if role, _ := c.Own()["role"].(string); role == RoleInputs {
		open, name = " open", "What went in" // what went in stands on paper too
	}
	fmt.Fprintf(&b.html, "<details class=\"code\"%s><summary>%s <span class=\"hint\">%s</span></summary><pre tabindex=\"0\"><code>%s</code></pre></details>\n",
		open, name, size, colourCode(b.nb.Language(), c.Source))
}
