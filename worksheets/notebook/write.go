package notebook

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"
)

// Bytes returns the notebook as the reference writer would write it. Cells without a valid identifier of their own are
// written with one made by the rule of EnsureIDs; the notebook itself is not changed. It fails on text that is not UTF-8
// and on values that JSON cannot hold.
func (n *Notebook) Bytes() ([]byte, error) {
	top, err := n.tree()
	if err != nil {
		return nil, fmt.Errorf("notebook.Bytes: %w", err)
	}
	var w treeWriter
	if err := w.value(top, "\n"); err != nil {
		return nil, fmt.Errorf("notebook.Bytes: %w", err)
	}
	w.buf.WriteByte('\n')
	return w.buf.Bytes(), nil
}

func (n *Notebook) tree() (map[string]any, error) {
	cells := make([]any, len(n.Cells))
	if i := slices.Index(n.Cells, nil); i >= 0 {
		return nil, fmt.Errorf("%s is nil; want a cell", cellName(i))
	}
	ids := n.ids()
	for i, c := range n.Cells {
		m, err := c.tree(ids[i])
		if err != nil {
			return nil, fmt.Errorf("%s %w", cellName(i), err)
		}
		cells[i] = m
	}
	major, minor := n.Major, n.Minor
	if major == 0 {
		major, minor = Major, Minor
	}
	return with(n.Extra, map[string]any{
		"cells":          cells,
		"metadata":       without(n.Metadata, "orig_nbformat", "orig_nbformat_minor", "signature"),
		"nbformat":       major,
		"nbformat_minor": minor,
	}), nil
}

func (c *Cell) tree(id string) (map[string]any, error) {
	if c.Type == "" {
		return nil, fmt.Errorf("has no type; want code, markdown or raw")
	}
	m := map[string]any{
		"id":        id,
		"cell_type": c.Type,
		"metadata":  without(c.Metadata, "trusted"),
	}
	if !c.noSource || c.Source != "" {
		m["source"] = splitLines(c.Source)
	}
	if c.Attachments != nil {
		a := make(map[string]any, len(c.Attachments))
		for name, b := range c.Attachments {
			a[name] = splitBundle(b)
		}
		m["attachments"] = a
	}
	if c.Type == Code {
		m["execution_count"] = countValue(c.ExecutionCount)
		outputs := make([]any, len(c.Outputs))
		for i, o := range c.Outputs {
			om, err := o.tree()
			if err != nil {
				return nil, fmt.Errorf("output %d %w", i+1, err)
			}
			outputs[i] = om
		}
		m["outputs"] = outputs
	}
	return with(c.Extra, m), nil
}

func (o Output) tree() (map[string]any, error) {
	m := map[string]any{"output_type": o.Type}
	switch o.Type {
	case "":
		return nil, fmt.Errorf("has no type; want stream, display_data, execute_result or error")
	case Stream:
		m["name"] = o.Name
		m["text"] = splitLines(o.Text)
	case ExecuteResult, DisplayData:
		m["data"] = splitBundle(o.Data)
		m["metadata"] = without(o.Metadata)
		if o.Type == ExecuteResult {
			m["execution_count"] = countValue(o.ExecutionCount)
		}
	case Error:
		m["ename"] = o.Ename
		m["evalue"] = o.Evalue
		lines := make([]any, len(o.Traceback))
		for i, s := range o.Traceback {
			lines[i] = s
		}
		m["traceback"] = lines
	}
	return with(o.Extra, m), nil
}

func countValue(p *int) any {
	if p == nil {
		return nil
	}
	return *p
}

// with returns extra and known together; known wins.
func with(extra, known map[string]any) map[string]any {
	for k, v := range extra {
		if _, ok := known[k]; !ok {
			known[k] = v
		}
	}
	return known
}

// without returns a copy of m, never nil, without the keys.
func without(m map[string]any, keys ...string) map[string]any {
	c := make(map[string]any, len(m))
	maps.Copy(c, m)
	for _, k := range keys {
		delete(c, k)
	}
	return c
}

// treeWriter writes JSON as Python's json.dumps(indent=1, sort_keys=True, separators=(",", ": "), ensure_ascii=False).
type treeWriter struct {
	buf bytes.Buffer
}

// value writes v; nl is a newline with the indent of the line that v stands on.
func (w *treeWriter) value(v any, nl string) error {
	switch v := v.(type) {
	case nil:
		w.buf.WriteString("null")
	case bool:
		w.buf.WriteString(strconv.FormatBool(v))
	case int:
		w.buf.WriteString(strconv.Itoa(v))
	case json.Number:
		if !json.Valid([]byte(v)) || strings.IndexByte("-0123456789", v[0]) < 0 {
			return fmt.Errorf("cannot write %q as a number; want a JSON number", clip(string(v)))
		}
		w.buf.WriteString(string(v))
	case float64:
		s, err := floatText(v)
		if err != nil {
			return err
		}
		w.buf.WriteString(s)
	case string:
		return w.str(v)
	case []any:
		return w.list(v, nl)
	case map[string]any:
		return w.object(v, nl)
	default:
		plain, err := plainTree(v)
		if err != nil {
			return err
		}
		return w.value(plain, nl)
	}
	return nil
}

func (w *treeWriter) list(v []any, nl string) error {
	if len(v) == 0 {
		w.buf.WriteString("[]")
		return nil
	}
	inner := nl + " "
	for i, e := range v {
		w.buf.WriteString([]string{"[", ","}[min(i, 1)])
		w.buf.WriteString(inner)
		if err := w.value(e, inner); err != nil {
			return fmt.Errorf("%d: %w", i+1, err)
		}
	}
	w.buf.WriteString(nl)
	w.buf.WriteByte(']')
	return nil
}

func (w *treeWriter) object(v map[string]any, nl string) error {
	if len(v) == 0 {
		w.buf.WriteString("{}")
		return nil
	}
	inner := nl + " "
	for i, k := range slices.Sorted(maps.Keys(v)) {
		w.buf.WriteString([]string{"{", ","}[min(i, 1)])
		w.buf.WriteString(inner)
		if err := w.str(k); err != nil {
			return err
		}
		w.buf.WriteString(": ")
		if err := w.value(v[k], inner); err != nil {
			return fmt.Errorf("%s: %w", clip(k), err)
		}
	}
	w.buf.WriteString(nl)
	w.buf.WriteByte('}')
	return nil
}

// str writes a string, escaping only the quote, the backslash and the control characters below the space.
func (w *treeWriter) str(s string) error {
	if !utf8.ValidString(s) {
		return fmt.Errorf("cannot write %q: it is not UTF-8; want UTF-8 text", clip(s))
	}
	w.buf.WriteByte('"')
	start := 0
	for i := 0; i < len(s); i++ {
		c := s[i]
		if c >= ' ' && c != '"' && c != '\\' {
			continue
		}
		w.buf.WriteString(s[start:i])
		start = i + 1
		switch c {
		case '"', '\\':
			w.buf.WriteByte('\\')
			w.buf.WriteByte(c)
		case '\n':
			w.buf.WriteString(`\n`)
		case '\r':
			w.buf.WriteString(`\r`)
		case '\t':
			w.buf.WriteString(`\t`)
		case '\f':
			w.buf.WriteString(`\f`)
		case '\b':
			w.buf.WriteString(`\b`)
		default:
			fmt.Fprintf(&w.buf, `\u%04x`, c)
		}
	}
	w.buf.WriteString(s[start:])
	w.buf.WriteByte('"')
	return nil
}

// floatText writes a number of the caller's as Python would, so that a later save by the reference library changes nothing.
func floatText(x float64) (string, error) {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return "", fmt.Errorf("cannot write %v; want a finite number", x)
	}
	s := strconv.FormatFloat(x, 'e', -1, 64)
	exp, err := strconv.Atoi(s[strings.IndexByte(s, 'e')+1:])
	if err != nil {
		return "", err
	}
	if exp < -4 || exp >= 16 {
		return s, nil
	}
	s = strconv.FormatFloat(x, 'f', -1, 64)
	if !strings.Contains(s, ".") {
		s += ".0"
	}
	return s, nil
}

// plainTree turns a Go value into the kinds that value knows, by way of its JSON.
func plainTree(v any) (any, error) {
	var buf bytes.Buffer
	enc := json.NewEncoder(&buf)
	enc.SetEscapeHTML(false)
	if err := enc.Encode(v); err != nil {
		return nil, fmt.Errorf("cannot write a %T: %v; want a value that JSON can hold", v, err)
	}
	tree, err := parseTree(buf.Bytes())
	if err != nil {
		return nil, err
	}
	return pythonFloats(tree), nil
}

// pythonFloats rewrites the fractions that encoding/json wrote by the rule of floatText.
func pythonFloats(v any) any {
	switch v := v.(type) {
	case json.Number:
		if strings.ContainsAny(string(v), ".eE") {
			if x, err := v.Float64(); err == nil {
				return x
			}
		}
	case []any:
		for i := range v {
			v[i] = pythonFloats(v[i])
		}
	case map[string]any:
		for k := range v {
			v[k] = pythonFloats(v[k])
		}
	}
	return v
}
