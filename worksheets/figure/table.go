package figure

import (
	"encoding/csv"
	"fmt"
	"strings"
	"unicode/utf8"
)

// Table is what a CSV file holds: headings, and rows of as many fields. Line gives the line of each row in the text.
type Table struct {
	Headings []string
	Rows     [][]string
	Line     []int
}

// ReadTable reads CSV: fields set apart by semicolons, tabs or commas (the first of these that stands in the first line),
// quotation marks where needed, a first line of headings, empty lines and lines that begin with # left out. A row with
// more or fewer fields than there are headings is refused, and so is text that is not UTF-8.
func ReadTable(text string) (*Table, error) {
	text = strings.TrimPrefix(text, "\ufeff")
	if !utf8.ValidString(text) {
		return nil, fmt.Errorf("the text is not UTF-8; save the table as \"CSV UTF-8\"")
	}
	r := csv.NewReader(strings.NewReader(text))
	r.Comma = separator(text)
	r.Comment = '#'
	r.FieldsPerRecord = -1
	r.TrimLeadingSpace = r.Comma != '\t'
	t := &Table{}
	for {
		fields, err := r.Read()
		if fields == nil && err != nil {
			if err.Error() == "EOF" {
				break
			}
			return nil, fmt.Errorf("not a table: %w", err)
		}
		line, _ := r.FieldPos(0)
		for i := range fields {
			fields[i] = strings.TrimSpace(fields[i])
		}
		if strings.Join(fields, "") == "" {
			continue
		}
		if t.Headings == nil {
			if err := headings(fields); err != nil {
				return nil, err
			}
			t.Headings = fields
			continue
		}
		if len(fields) != len(t.Headings) {
			return nil, fmt.Errorf("line %d has %d fields and the headings %d", line, len(fields), len(t.Headings))
		}
		t.Rows, t.Line = append(t.Rows, fields), append(t.Line, line)
	}
	if t.Headings == nil {
		return nil, fmt.Errorf("nothing is in the table; its first line gives the headings")
	}
	return t, nil
}

func headings(fields []string) error {
	seen := map[string]bool{}
	for i, h := range fields {
		if h == "" {
			return fmt.Errorf("heading %d is empty", i+1)
		}
		name, _ := Heading(h)
		if seen[name] {
			return fmt.Errorf("the heading %q stands twice", name)
		}
		seen[name] = true
	}
	return nil
}

// separator finds what stands between the fields: of the first line that is not a comment.
func separator(text string) rune {
	for line := range strings.Lines(text) {
		if t := strings.TrimSpace(line); t == "" || t[0] == '#' {
			continue
		}
		for _, r := range ";\t" {
			if strings.ContainsRune(line, r) {
				return r
			}
		}
		break
	}
	return ','
}

// Heading parts a heading from its unit: "volume (L)" and "volume [L]" are "volume" and "L".
func Heading(h string) (name, unit string) {
	for _, pair := range []string{"()", "[]"} {
		if i := strings.LastIndexByte(h, pair[0]); i > 0 && h[len(h)-1] == pair[1] {
			// "fl oz (US)" in parentheses of its own: "volume (fl oz (US))"
			if j := strings.IndexByte(h, pair[0]); j > 0 && strings.HasSuffix(h, "))") {
				i = j
			}
			return strings.TrimSpace(h[:i]), strings.TrimSpace(h[i+1 : len(h)-1])
		}
	}
	return h, ""
}
