package engine

import (
	"fmt"
	"regexp"
	"strings"
	"unicode"
)

// Kind says why a cell did not succeed.
type Kind string

const (
	Refused Kind = "refused"     // not Go, or not allowed: nothing was run
	Stopped Kind = "stopped"     // a mistake stopped it: a panic, or a function of the library that said no
	Time    Kind = "time limit"  // it ran longer than allowed
	Memory  Kind = "memory"      // it needed more memory than allowed
	Crashed Kind = "crashed"     // its worker process died
	Halted  Kind = "interrupted" // the person stopped it
)

// Failure is what is to be said of a cell that did not succeed.
type Failure struct {
	Kind  Kind    `json:"kind"`
	Items []Place `json:"items"`           // at least one
	Trace string  `json:"trace,omitempty"` // what a dying worker wrote
	Cell  string  `json:"cell,omitempty"`  // the cell whose goroutine did it, if that is known
	Note  string  `json:"note,omitempty"`  // what was done about it

	outside bool // the worker was killed, and nothing says that a cell is to blame
}

// Place is a message about a place of the cell; line and column count from 1 and are 0 where there is none.
type Place struct {
	Line int    `json:"line"`
	Col  int    `json:"col"`
	Msg  string `json:"msg"`
}

func (p Place) String() string {
	if p.Line == 0 {
		return p.Msg
	}
	return fmt.Sprintf("%d:%d: %s", p.Line, p.Col, p.Msg)
}

// Lines returns the failure as lines for a person, without the trace.
func (f *Failure) Lines() []string {
	var out []string
	for _, p := range f.Items {
		out = append(out, p.String())
	}
	if f.Note != "" {
		out = append(out, f.Note)
	}
	return out
}

func (f *Failure) Error() string { return strings.Join(f.Lines(), "\n") }

func fail(kind Kind, line, col int, format string, args ...any) *Failure {
	return &Failure{Kind: kind, Items: []Place{{line, col, oneLine(fmt.Sprintf(format, args...))}}}
}

// packagePrefix is the package in front of the name of a function that says no: cells know the function by its name.
var packagePrefix = regexp.MustCompile(`^[a-z]+\.([A-Z][\w.]*: )`)

// oneLine makes a message one line that can do nothing to a terminal.
func oneLine(s string) string {
	s = packagePrefix.ReplaceAllString(strings.TrimSpace(s), "$1")
	s = strings.NewReplacer("\r\n", "; ", "\n", "; ", "\t", " ").Replace(s)
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) {
			return '\uFFFD'
		}
		return r
	}, s)
}
