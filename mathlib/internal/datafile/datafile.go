// Package datafile reads the data files that are built into mathlib: comma-separated rows under a head of lines that
// begin with "#" and say what the numbers are, their unit, source and tolerance. Each row has a status word and a source
// of its own, and a row without a source is refused.
package datafile

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math"
	"strconv"
	"strings"
)

// Row is a row of a data file. Its methods remember the first thing that is wrong with it; Err returns that.
type Row struct {
	file   string
	line   int
	fields map[string]string
	err    *error
}

// Read returns the rows of a data file.
func Read(fsys fs.FS, name string) ([]Row, error) {
	text, err := fs.ReadFile(fsys, name)
	if err != nil {
		return nil, err
	}
	if !strings.HasPrefix(string(text), "#") {
		return nil, fmt.Errorf("%s: there is no head that says what the numbers are", name)
	}
	c := csv.NewReader(strings.NewReader(string(text)))
	c.Comment = '#'
	head, err := c.Read()
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	var out []Row
	for {
		fields, err := c.Read()
		if errors.Is(err, io.EOF) {
			if len(out) == 0 {
				return nil, fmt.Errorf("%s: there are no rows", name)
			}
			return out, nil
		}
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		line, _ := c.FieldPos(0)
		m := map[string]string{}
		for j, h := range head {
			m[h] = fields[j]
		}
		out = append(out, Row{name, line, m, new(error)})
	}
}

// Err returns the first thing that is wrong with the row, with file and line.
func (r Row) Err() error { return *r.err }

// Fail says that something is wrong with the row.
func (r Row) Fail(format string, args ...any) {
	if *r.err == nil {
		*r.err = fmt.Errorf("%s, line %d: %s", r.file, r.line, fmt.Sprintf(format, args...))
	}
}

// Text returns a field.
func (r Row) Text(name string) string {
	s, ok := r.fields[name]
	if !ok {
		r.Fail("there is no column %q", name)
	}
	return s
}

// Number returns a field that is a finite number, in the unit that the file's head names.
func (r Row) Number(name string) float64 {
	x, err := strconv.ParseFloat(r.Text(name), 64)
	if err != nil || math.IsNaN(x) || math.IsInf(x, 0) {
		r.Fail("%s is %q; it must be a number", name, r.Text(name))
	}
	return x
}

// Optional returns a field that is a number, in the unit that the file's head names, and 0 for an empty field.
func (r Row) Optional(name string) float64 {
	if r.Text(name) == "" {
		return 0
	}
	return r.Number(name)
}

// Whole returns a field that is a whole number.
func (r Row) Whole(name string) int {
	n, err := strconv.Atoi(r.Text(name))
	if err != nil {
		r.Fail("%s is %q; it must be a whole number", name, r.Text(name))
	}
	return n
}

// Source returns the status word, the source and the note (which may have no column) of the row: no number without a
// source.
func (r Row) Source() (status, source, note string) {
	source = strings.TrimSpace(r.Text("source"))
	if source == "" {
		r.Fail("%s has no source; a number without a source is not taken", r.fields["name"])
	}
	if strings.TrimSpace(r.Text("status")) == "" {
		r.Fail("%s has no status word", r.fields["name"])
	}
	return r.Text("status"), source, r.fields["note"]
}
