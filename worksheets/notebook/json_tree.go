package notebook

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strings"
	"unicode/utf8"
)

// maxDepth is how deep the values of a file may be nested. The reference reader stops near 1000 too.
const maxDepth = 1000

// FormatError says why a file is not a notebook that can be read.
type FormatError struct {
	Func    string // Read or ReadFile
	File    string // empty if the bytes came from elsewhere
	Line    int    // counted from one; 0 if not known
	Byte    int    // offset, counted from zero; counts only with a Line
	Problem string // what is wrong; what would be right
}

func (e *FormatError) Error() string {
	where := ""
	if e.File != "" {
		where = e.File + " "
	}
	if e.Line > 0 {
		where += fmt.Sprintf("line %d (byte %d) ", e.Line, e.Byte)
	}
	return "notebook." + e.Func + ": " + where + e.Problem
}

func formatErrorf(format string, args ...any) *FormatError {
	return &FormatError{Func: "Read", Problem: fmt.Sprintf(format, args...)}
}

// at adds the place in the file.
func (e *FormatError) at(data []byte, offset int) *FormatError {
	offset = max(0, min(offset, len(data)))
	e.Byte = offset
	e.Line = 1 + bytes.Count(data[:offset], []byte("\n"))
	return e
}

// parseTree reads one JSON value, numbers as json.Number with their digits as they stand.
func parseTree(data []byte) (any, error) {
	if !utf8.Valid(data) {
		return nil, formatErrorf("is not UTF-8 text; want a notebook in JSON").at(data, invalidAt(data))
	}
	if len(bytes.TrimSpace(data)) == 0 {
		return nil, formatErrorf("holds nothing; want a notebook in JSON")
	}
	var whole json.RawMessage
	if err := json.Unmarshal(data, &whole); err != nil {
		return nil, syntaxError(data, err)
	}
	p := treeParser{data: data, dec: json.NewDecoder(bytes.NewReader(data))}
	p.dec.UseNumber()
	return p.value(0)
}

func syntaxError(data []byte, err error) *FormatError {
	var se *json.SyntaxError
	if errors.As(err, &se) {
		at := int(se.Offset)
		if strings.Contains(se.Error(), "unexpected end") {
			return formatErrorf("breaks off before the JSON is complete; want a whole notebook file").at(data, len(data))
		}
		return formatErrorf("is not JSON: %v; want a notebook", se).at(data, at-1)
	}
	return formatErrorf("is not JSON: %v; want a notebook", err)
}

func invalidAt(data []byte) int {
	for i := 0; i < len(data); {
		r, size := utf8.DecodeRune(data[i:])
		if r == utf8.RuneError && size == 1 {
			return i
		}
		i += size
	}
	return len(data)
}

type treeParser struct {
	data []byte
	dec  *json.Decoder
}

func (p *treeParser) token() (json.Token, error) {
	start := int(p.dec.InputOffset())
	tok, err := p.dec.Token()
	if err != nil {
		if errors.Is(err, io.EOF) {
			err = io.ErrUnexpectedEOF
		}
		return nil, formatErrorf("is not JSON: %v; want a notebook", err).at(p.data, start)
	}
	if _, ok := tok.(string); ok {
		end := int(p.dec.InputOffset())
		if at, esc := halfPair(p.data[start:end]); at >= 0 {
			return nil, formatErrorf("holds %s, half of a surrogate pair, which no UTF-8 file can hold; want whole characters", esc).
				at(p.data, start+at)
		}
	}
	return tok, nil
}

func (p *treeParser) value(depth int) (any, error) {
	tok, err := p.token()
	if err != nil {
		return nil, err
	}
	delim, ok := tok.(json.Delim)
	if !ok {
		return tok, nil
	}
	if depth == maxDepth {
		return nil, formatErrorf("nests values more than %d deep; want a notebook", maxDepth).at(p.data, int(p.dec.InputOffset()))
	}
	if delim == '[' {
		list := []any{}
		for p.dec.More() {
			v, err := p.value(depth + 1)
			if err != nil {
				return nil, err
			}
			list = append(list, v)
		}
		_, err := p.token()
		return list, err
	}
	m := map[string]any{}
	for p.dec.More() {
		key, err := p.token()
		if err != nil {
			return nil, err
		}
		name := key.(string)
		if _, dup := m[name]; dup {
			return nil, formatErrorf("has the key %q twice in one object; want each key once", clip(name)).
				at(p.data, int(p.dec.InputOffset()))
		}
		if m[name], err = p.value(depth + 1); err != nil {
			return nil, err
		}
	}
	_, err = p.token()
	return m, err
}

// halfPair looks for a \u escape that is half of a surrogate pair; Go's decoder would replace it without a word.
func halfPair(lit []byte) (int, string) {
	unit := func(i int) (rune, bool) {
		if i+6 > len(lit) || lit[i] != '\\' || lit[i+1] != 'u' {
			return 0, false
		}
		var r rune
		for _, c := range lit[i+2 : i+6] {
			d := strings.IndexByte("0123456789abcdef", c|0x20)
			if d < 0 {
				return 0, false
			}
			r = r<<4 | rune(d)
		}
		return r, true
	}
	for i := 0; i < len(lit); i++ {
		if lit[i] != '\\' {
			continue
		}
		r, ok := unit(i)
		switch {
		case !ok:
			i++
		case 0xd800 <= r && r < 0xdc00:
			if low, ok := unit(i + 6); !ok || low < 0xdc00 || low > 0xdfff {
				return i, string(lit[i : i+6])
			}
			i += 11
		case 0xdc00 <= r && r < 0xe000:
			return i, string(lit[i : i+6])
		default:
			i += 5
		}
	}
	return -1, ""
}

// clip shortens text for an error.
func clip(s string) string {
	if r := []rune(s); len(r) > 40 {
		return string(r[:40]) + "…"
	}
	return s
}
