package report

import (
	"strings"

	"github.com/yuin/goldmark/ast"

	"swanneck/worksheets/notebook"
)

// body gathers what the cells show.
type body struct {
	doc     Document
	nb      *notebook.Notebook
	prose   map[int]*prose // by cell, of the Markdown cells
	results map[string]ResultRow
	pieces  []piece
	charts  int // shown so far: each has its own identifiers
	code    int // code cells so far
}

func newBody(doc Document) *body {
	b := &body{doc: doc, nb: doc.Notebook, prose: map[int]*prose{}, results: map[string]ResultRow{}}
	for i, c := range b.nb.Cells {
		if c.Type == notebook.Markdown && !b.keptOut(c) {
			b.prose[i] = parseProse(c.Source)
		}
	}
	shown := doc.toShow().Results
	for i, r := range doc.Results {
		b.results[r.Name] = shown[i]
	}
	return b
}

// add appends a piece. Results that follow each other become one table.
func (b *body) add(p piece) {
	if n := len(b.pieces); n > 0 {
		last, ok := b.pieces[n-1].(figures)
		more, ok2 := p.(figures)
		if ok && ok2 {
			b.pieces[n-1] = append(last, more...)
			return
		}
	}
	b.pieces = append(b.pieces, p)
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

// cell takes in a cell. Raw cells are meant for other converters and are left out.
func (b *body) cell(i int) {
	c := b.nb.Cells[i]
	switch c.Type {
	case notebook.Markdown:
		if p := b.prose[i]; p != nil {
			if tree := safeTree(p.html(), c.Attachments); tree != nil {
				b.add(shownTree{"prose", tree})
			}
		}
	case notebook.Code:
		b.code++
		if b.doc.InputsKeptOut {
			b.resultsAndCharts(c)
			return
		}
		b.source(c)
		b.outputs(c.Outputs)
	}
}

// RoleInputs is the value of "role", in a cell's own metadata, of a cell that holds what the person puts in. In a
// worksheet that declares no inputs its code is shown open, and printed: it is the one place that says what went in.
const RoleInputs = "inputs"

func (b *body) source(c *notebook.Cell) {
	source := strings.TrimSpace(c.Source)
	if source == "" {
		return
	}
	role, _ := c.Own()["role"].(string)
	b.add(codeText{
		number: b.code, language: b.nb.Language(), source: c.Source, lines: strings.Count(source, "\n") + 1,
		open: role == RoleInputs && len(b.doc.Inputs) == 0,
	})
}
