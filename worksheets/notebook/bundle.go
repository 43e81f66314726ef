package notebook

import (
	"strings"
	"unicode/utf8"
)

// Bundle is one thing in several forms: MIME type to content. Text and pictures are strings (pictures in base64 but for
// SVG), JSON types hold any JSON value.
type Bundle map[string]any

// Text returns the content of a MIME type if it is there and is a string.
func (b Bundle) Text(mime string) (string, bool) {
	s, ok := b[mime].(string)
	return s, ok
}

// jsonType says whether the content of a MIME type is a JSON value rather than text.
func jsonType(mime string) bool {
	return mime == "application/json" || strings.HasPrefix(mime, "application/") && strings.HasSuffix(mime, "+json")
}

// splitType says whether the content of a MIME type is written as a list of lines.
func splitType(mime string) bool {
	return strings.HasPrefix(mime, "text/") || mime == "application/javascript" || mime == "image/svg+xml"
}

// joinLines returns the text of a JSON string or list of strings.
func joinLines(v any) (string, bool) {
	switch v := v.(type) {
	case string:
		return v, true
	case []any:
		var b strings.Builder
		for _, line := range v {
			s, ok := line.(string)
			if !ok {
				return "", false
			}
			b.WriteString(s)
		}
		return b.String(), true
	}
	return "", false
}

// joinBundle joins the lines of every content that is text and leaves the rest as it is.
func joinBundle(m map[string]any) Bundle {
	b := make(Bundle, len(m))
	for mime, v := range m {
		if !jsonType(mime) {
			if s, ok := joinLines(v); ok {
				v = s
			}
		}
		b[mime] = v
	}
	return b
}

// splitBundle is the other way round, for writing.
func splitBundle(b Bundle) map[string]any {
	m := make(map[string]any, len(b))
	for mime, v := range b {
		if s, ok := v.(string); ok && splitType(mime) {
			v = splitLines(s)
		}
		m[mime] = v
	}
	return m
}

// splitLines cuts text after each line end. The reference writer counts more than the newline as a line end: it uses
// Python's str.splitlines (Python library reference, str.splitlines, table of line boundaries), and so do we.
func splitLines(s string) []any {
	lines := []any{}
	start := 0
	for i := 0; i < len(s); {
		r, size := utf8.DecodeRuneInString(s[i:])
		i += size
		switch r {
		case '\r':
			if i < len(s) && s[i] == '\n' {
				i++
			}
		case '\n', '\v', '\f', 0x1c, 0x1d, 0x1e, 0x85, 0x2028, 0x2029:
		default:
			continue
		}
		lines = append(lines, s[start:i])
		start = i
	}
	if start < len(s) {
		lines = append(lines, s[start:])
	}
	return lines
}
