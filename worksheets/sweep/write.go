package sweep

import (
	"errors"
	"fmt"
	"io/fs"
	"os"

	"swanneck/worksheets/wholefile"
)

// Written says what a table left in a folder.
type Written struct {
	Files          // Chart is empty if there is none
	Shows   string // what the chart shows, in a few words
	NoChart error  // why there is none, though one was asked for or could have been
}

// Write leaves the table in a folder, as a sweep that was not parted would have: CSV, Parquet and a chart, all or none.
func (t *Table) Write(folder string, c ChartChoice) (Written, error) {
	return t.write(Names(folder, t.Worksheet, Part{}), c)
}

func (t *Table) write(to Files, c ChartChoice) (Written, error) {
	w := Written{Files: to}
	text, err := t.CSV()
	if err != nil {
		return w, err
	}
	files := []wholefile.File{{Path: to.CSV, Data: text}}
	if to.Parquet != "" {
		data, err := t.Parquet()
		if err != nil {
			return w, err
		}
		files = append(files, wholefile.File{Path: to.Parquet, Data: data})
	}
	if to.Chart != "" {
		var svg []byte
		if svg, w.Shows, w.NoChart = t.Chart(c); w.NoChart == nil {
			files = append(files, wholefile.File{Path: to.Chart, Data: svg})
		} else {
			w.Chart = ""
		}
	}
	for _, f := range files { // the journal is this process's alone, and so are these
		if err := wholefile.Clear(f.Path); err != nil {
			return w, err
		}
	}
	if err := wholefile.WriteAll(files...); err != nil {
		return w, err
	}
	if w.NoChart != nil { // one of an earlier sweep would be taken for this one's
		if err := os.Remove(to.Chart); err != nil && !errors.Is(err, fs.ErrNotExist) {
			return w, fmt.Errorf("%s cannot be removed: %w", to.Chart, wholefile.Cause(err))
		}
	}
	return w, nil
}
