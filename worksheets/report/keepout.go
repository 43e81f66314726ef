package report

import (
	"fmt"
	"go/scanner"
	"go/token"
	"maps"
	"strconv"
	"strings"

	"swanneck/worksheets/notebook"
)

// A report with its inputs kept out shows the title, the date, the notice, declared results, charts and prose, cautions
// among it. It shows no inputs, no code (it holds figures), nothing that cells print and none of their other outputs:
// all of these may say what went in. Prose and charts of a cell marked as private are left out as well.
//
// The name and the note of a result are shown if they stand in the code as they are. One that a cell puts together
// ("at 22 °C") may say what went in, and is left out. Charts are as they were drawn, lettering included.

// private says whether a cell is marked, in its own metadata, as one for its makers only.
func private(c *notebook.Cell) bool {
	yes, _ := c.Own()["private"].(bool)
	return yes
}

func (b *body) keptOut(c *notebook.Cell) bool { return b.doc.InputsKeptOut && private(c) }

// toShow returns the document without what is to be kept out.
func (doc Document) toShow() Document {
	if !doc.InputsKeptOut {
		return doc
	}
	written := literals(doc.Notebook)
	for _, in := range doc.Inputs { // a text that was put in may stand in the code as well
		maps.DeleteFunc(written, func(s string, _ bool) bool { return strings.EqualFold(s, in.Value) })
	}
	results := make([]ResultRow, len(doc.Results))
	for i, r := range doc.Results {
		if !written[r.Name] {
			r.Name = fmt.Sprintf("Result %d", i+1)
		}
		if !written[r.Note] {
			r.Note = ""
		}
		results[i] = r
	}
	doc.Results, doc.Inputs = results, nil
	return doc
}

// literals returns the texts that stand written out in the code.
func literals(n *notebook.Notebook) map[string]bool {
	found := map[string]bool{}
	for _, c := range n.Cells {
		if c.Type != notebook.Code {
			continue
		}
		source := []byte(c.Source)
		set := token.NewFileSet()
		var s scanner.Scanner
		s.Init(set.AddFile("", set.Base(), len(source)), source, func(token.Position, string) {}, 0)
		for _, tok, lit := s.Scan(); tok != token.EOF; _, tok, lit = s.Scan() {
			if text, err := strconv.Unquote(lit); tok == token.STRING && err == nil {
				found[text] = true
			}
		}
	}
	return found
}

// resultsAndCharts takes in what may be shown of a code cell.
func (b *body) resultsAndCharts(c *notebook.Cell) {
	for _, o := range c.Outputs {
		if o.Type != notebook.DisplayData && o.Type != notebook.ExecuteResult || b.result(o) || private(c) {
			continue
		}
		b.picture(o, "")
	}
}

const keptOutWords = "What went in is kept out of this report by its maker. With it are left out the code, what the cells printed, and words about results that were put together from figures."
