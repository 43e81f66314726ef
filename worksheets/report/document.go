package report

import (
	"bytes"
	"fmt"
	"path/filepath"
	"strings"
	"time"

	"swanneck/worksheets/notebook"
)

// Document is what a report is made of.
type Document struct {
	Notebook      *notebook.Notebook // run, with its outputs
	Title         string             // empty: the first heading of the prose, else the file's name
	Date          time.Time          // of the run, shown in its own time zone; zero: no date is shown
	FileName      string             // of the worksheet; empty: none is shown
	Notice        string             // what stands above everything else: that the run stopped; empty: none is shown
	Results       []ResultRow        // shown first, in this order; empty: no such section
	Inputs        []InputRow         // shown after the results, in this order; empty: no such section
	InputsKeptOut bool               // the report is for people who shall not see the inputs: see keepout.go
	Provenance    []Row              // shown last, in this order; empty: no such section
	CheckCode     string             // ends the provenance; empty: none is shown
	Together      bool               // on paper no piece of prose goes over a page's end, as long as a page holds it
}

// Row is a line of the provenance table.
type Row struct {
	Label, Value string
}

// ResultRow is a figure that the worksheet is for. Figure is text, already rounded as it should be read.
type ResultRow struct {
	Name, Figure, Unit, Note string
}

// InputRow is something that was put in: its value as a person writes it, of a table the name of its file.
type InputRow struct {
	Name, Value, Help string
	Changed           bool // another value than the one that stands in the worksheet
}

// HTML returns the report as one file. It fails only if there is no notebook, or one with a nil cell; what cannot be
// shown inside a cell is named in its place.
func HTML(doc Document) ([]byte, error) {
	if err := doc.check("report.HTML"); err != nil {
		return nil, err
	}
	title, pieces := doc.parts()
	var worksheet strings.Builder
	for _, p := range pieces {
		p.html(&worksheet)
	}
	var page bytes.Buffer
	writePage(&page, doc.toShow(), title, worksheet.String())
	return page.Bytes(), nil
}

func (doc Document) check(who string) error {
	if doc.Notebook == nil {
		return fmt.Errorf("%s: there is no notebook; want a worksheet that has been run", who)
	}
	for i, c := range doc.Notebook.Cells {
		if c == nil {
			return fmt.Errorf("%s: cell %d is nil; want a cell", who, i+1)
		}
	}
	return nil
}

// parts returns the title and what the cells show.
func (doc Document) parts() (title string, pieces []piece) {
	b := newBody(doc)
	title = b.takeTitle(doc.Title)
	if title == "" {
		title = strings.TrimSuffix(filepath.Base(doc.FileName), filepath.Ext(doc.FileName))
	}
	if title == "" || title == "." {
		title = "Worksheet"
	}
	for i := range doc.Notebook.Cells {
		b.cell(i)
	}
	return title, b.pieces
}
