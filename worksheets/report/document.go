package report

import (
	"bytes"
	"errors"
	"fmt"
	"path/filepath"
	"strings"
	"time"

	"swanneck/worksheets/notebook"
)

// Document is what a report is made of.
type Document struct {
	Notebook   *notebook.Notebook // run, with its outputs
	Title      string             // empty: the first heading of the prose, else the file's name
	Date       time.Time          // of the run, shown in its own time zone; zero: no date is shown
	FileName   string             // of the worksheet; empty: none is shown
	Notice     string             // what stands above everything else: that the run stopped; empty: none is shown
	Results    []ResultRow        // shown first, in this order; empty: no such section
	Provenance []Row              // shown last, in this order; empty: no such section
}

// Row is a line of the provenance table.
type Row struct {
	Label, Value string
}

// ResultRow is a figure that the worksheet is for. Figure is text, already rounded as it should be read.
type ResultRow struct {
	Name, Figure, Unit, Note string
}

// HTML returns the report as one file. It fails only if there is no notebook, or one with a nil cell; what cannot be
// shown inside a cell is named in its place.
func HTML(doc Document) ([]byte, error) {
	if doc.Notebook == nil {
		return nil, errors.New("report.HTML: there is no notebook; want a worksheet that has been run")
	}
	for i, c := range doc.Notebook.Cells {
		if c == nil {
			return nil, fmt.Errorf("report.HTML: cell %d is nil; want a cell", i+1)
		}
	}
	b := newBody(doc.Notebook)
	title := b.takeTitle(doc.Title)
	if title == "" {
		title = strings.TrimSuffix(filepath.Base(doc.FileName), filepath.Ext(doc.FileName))
	}
	if title == "" || title == "." {
		title = "Worksheet"
	}
	for i := range doc.Notebook.Cells {
		b.cell(i)
	}
	var page bytes.Buffer
	writePage(&page, doc, title, b.html.String())
	return page.Bytes(), nil
}
