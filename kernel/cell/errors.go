package cell

import (
	"fmt"
	"go/token"
	"sort"
	"strings"
)

// Error is one reason why a cell is refused.
type Error struct {
	Line, Col int // in the cell, from 1; the column counts bytes, as Go's tools do
	Msg       string
	Hint      string // what would be right, or empty
}

func (e *Error) Error() string {
	s := fmt.Sprintf("%d:%d: %s", e.Line, e.Col, e.Msg)
	if e.Hint != "" {
		s += " (" + e.Hint + ")"
	}
	return s
}

// ErrorList is all that is wrong with a cell, in the order of its text.
type ErrorList []*Error

func (l ErrorList) Error() string {
	lines := make([]string, len(l))
	for i, e := range l {
		lines[i] = e.Error()
	}
	return strings.Join(lines, "\n")
}

// tidy sorts the list, drops repetitions and keeps the first ten.
func (l ErrorList) tidy() ErrorList {
	sort.SliceStable(l, func(i, j int) bool {
		if l[i].Line != l[j].Line {
			return l[i].Line < l[j].Line
		}
		return l[i].Col < l[j].Col
	})
	var out ErrorList
	for _, e := range l {
		if n := len(out); n > 0 && out[n-1].Line == e.Line && (out[n-1].Msg == e.Msg || out[n-1].Col == e.Col) {
			continue
		}
		out = append(out, e)
	}
	const most = 10
	if len(out) > most {
		last := out[most]
		out = append(out[:most:most], &Error{Line: last.Line, Col: last.Col, Msg: "too many errors"})
	}
	return out
}

func errorAt(p token.Position, format string, args ...any) *Error {
	return &Error{Line: p.Line, Col: p.Column, Msg: fmt.Sprintf(format, args...)}
}
