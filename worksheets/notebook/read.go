package notebook

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"strconv"
)

// Read reads a notebook of format 4.0 or later. Errors are one line, of type *FormatError.
func Read(data []byte) (*Notebook, error) {
	if len(data) > MaxBytes {
		return nil, formatErrorf("is larger than %d MiB; want a smaller notebook, its outputs cleared", MaxBytes>>20)
	}
	tree, err := parseTree(bytes.TrimPrefix(data, []byte("\xef\xbb\xbf")))
	if err != nil {
		return nil, err
	}
	top, ok := tree.(map[string]any)
	if !ok {
		return nil, formatErrorf("is JSON but no notebook: it is %s; want an object with nbformat and cells", kind(tree))
	}
	n := &Notebook{}
	if err := n.readVersion(top); err != nil {
		return nil, err
	}
	f := fields{where: "", m: top}
	n.Metadata = f.object("metadata")
	cells := f.list("cells")
	if f.err != nil {
		return nil, f.err
	}
	for i, v := range cells {
		m, ok := v.(map[string]any)
		if !ok {
			return nil, formatErrorf("%s is %s; want an object", cellName(i), kind(v))
		}
		c, err := readCell(cellName(i), m)
		if err != nil {
			return nil, err
		}
		n.Cells = append(n.Cells, c)
	}
	// What the reference reader drops as transient.
	for _, key := range []string{"orig_nbformat", "orig_nbformat_minor", "signature"} {
		delete(n.Metadata, key)
	}
	n.Extra = f.rest()
	n.EnsureIDs()
	return n, nil
}

func (n *Notebook) readVersion(top map[string]any) error {
	version := func(key string) (int, bool) {
		num, _ := top[key].(json.Number)
		v, err := strconv.Atoi(num.String())
		return v, err == nil && v >= 0
	}
	if _, ok := top["nbformat"]; !ok {
		return formatErrorf("is JSON but no notebook: it has no nbformat; want nbformat %d", Major)
	}
	major, ok := version("nbformat")
	if !ok {
		return formatErrorf("has %s as nbformat; want the number %d", show(top["nbformat"]), Major)
	}
	if major != Major {
		return formatErrorf("is of notebook format %d; want format %d (save it anew with a current notebook program)", major, Major)
	}
	minor, ok := version("nbformat_minor")
	if !ok {
		return formatErrorf("has %s as nbformat_minor; want a number from 0", show(top["nbformat_minor"]))
	}
	delete(top, "nbformat")
	delete(top, "nbformat_minor")
	n.Major, n.Minor = major, max(minor, Minor)
	return nil
}

func readCell(where string, m map[string]any) (*Cell, error) {
	f := fields{where: where, m: m}
	c := &Cell{Type: f.str("cell_type")}
	if c.Type == "" && f.err == nil {
		return nil, formatErrorf("%s has no cell_type; want code, markdown or raw", where)
	}
	if id, ok := m["id"].(string); ok {
		c.ID = id
		delete(m, "id")
	} else if v, ok := m["id"]; ok {
		return nil, formatErrorf("%s has %s as id; want a string", where, kind(v))
	}
	c.Metadata = f.object("metadata")
	delete(c.Metadata, "trusted")
	known := c.Type == Code || c.Type == Markdown || c.Type == Raw
	if _, ok := m["source"]; !ok && !known {
		c.noSource = true
	} else {
		c.Source = f.text("source")
	}
	if v, ok := m["attachments"].(map[string]any); ok {
		c.Attachments = make(map[string]Bundle, len(v))
		for name, b := range v {
			bm, ok := b.(map[string]any)
			if !ok {
				return nil, formatErrorf("%s has %s as attachment %q; want an object", where, kind(b), clip(name))
			}
			c.Attachments[name] = joinBundle(bm)
		}
		delete(m, "attachments")
	}
	if c.Type == Code {
		c.ExecutionCount = f.count("execution_count")
		for i, v := range f.list("outputs") {
			om, ok := v.(map[string]any)
			at := fmt.Sprintf("%s, output %d", where, i+1)
			if !ok {
				return nil, formatErrorf("%s is %s; want an object", at, kind(v))
			}
			o, err := readOutput(at, om)
			if err != nil {
				return nil, err
			}
			c.Outputs = append(c.Outputs, o)
		}
	}
	c.Extra = f.rest()
	if f.err != nil {
		return nil, f.err
	}
	return c, nil
}

func readOutput(where string, m map[string]any) (Output, error) {
	f := fields{where: where, m: m}
	o := Output{Type: f.str("output_type")}
	switch o.Type {
	case "":
		if f.err == nil {
			return o, formatErrorf("%s has no output_type; want stream, display_data, execute_result or error", where)
		}
	case Stream:
		o.Name = f.str("name")
		o.Text = f.text("text")
	case ExecuteResult, DisplayData:
		o.Data = joinBundle(f.object("data"))
		o.Metadata = f.object("metadata")
		if o.Type == ExecuteResult {
			o.ExecutionCount = f.count("execution_count")
		}
	case Error:
		o.Ename = f.str("ename")
		o.Evalue = f.str("evalue")
		for _, v := range f.list("traceback") {
			s, ok := v.(string)
			if !ok {
				return o, formatErrorf("%s has %s in its traceback; want strings", where, kind(v))
			}
			o.Traceback = append(o.Traceback, s)
		}
	}
	o.Extra = f.rest()
	if f.err != nil {
		return o, f.err
	}
	return o, nil
}

// fields takes known fields out of an object; the first field of the wrong kind is the error.
type fields struct {
	where string
	m     map[string]any
	err   error
}

func (f *fields) wrong(key string, v any, want string) {
	if f.err == nil {
		where := f.where
		if where != "" {
			where += " "
		}
		f.err = formatErrorf("%shas %s as %s; want %s", where, kind(v), key, want)
	}
}

func (f *fields) take(key string) (any, bool) {
	v, ok := f.m[key]
	delete(f.m, key)
	return v, ok
}

func (f *fields) str(key string) string {
	v, ok := f.take(key)
	s, isStr := v.(string)
	if ok && !isStr {
		f.wrong(key, v, "a string")
	}
	return s
}

func (f *fields) text(key string) string {
	v, ok := f.take(key)
	s, isText := joinLines(v)
	if ok && !isText {
		f.wrong(key, v, "a string or a list of strings")
	}
	return s
}

func (f *fields) object(key string) map[string]any {
	v, ok := f.take(key)
	m, isMap := v.(map[string]any)
	if ok && !isMap {
		f.wrong(key, v, "an object")
	}
	if m == nil {
		m = map[string]any{}
	}
	return m
}

func (f *fields) list(key string) []any {
	v, ok := f.take(key)
	l, isList := v.([]any)
	if ok && !isList {
		f.wrong(key, v, "a list")
	}
	return l
}

func (f *fields) count(key string) *int {
	v, ok := f.take(key)
	if !ok || v == nil {
		return nil
	}
	num, _ := v.(json.Number)
	i, err := strconv.Atoi(num.String())
	if err != nil {
		f.wrong(key, v, "a whole number or null")
		return nil
	}
	return &i
}

func (f *fields) rest() map[string]any {
	if len(f.m) == 0 {
		return nil
	}
	return maps.Clone(f.m)
}

// kind names the kind of a JSON value in an error.
func kind(v any) string {
	switch v := v.(type) {
	case nil:
		return "null"
	case bool:
		return "true or false"
	case json.Number:
		return "the number " + clip(v.String())
	case string:
		return "a string"
	case []any:
		return "a list"
	case map[string]any:
		return "an object"
	}
	return fmt.Sprintf("a Go %T", v)
}

// show is kind with the text of a string.
func show(v any) string {
	if s, ok := v.(string); ok {
		return strconv.Quote(clip(s))
	}
	return kind(v)
}
