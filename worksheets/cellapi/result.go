package cellapi

import (
	"fmt"
	"math"
	"strings"
	"unicode"

	"swanneck/kernel/display"
	"swanneck/worksheets/results"
)

// Stop is the mistake that ends a cell.
type Stop struct{ Msg string }

func (s *Stop) Error() string { return s.Msg }

// StopsCell marks the error as one line for the person, without a trace.
func (s *Stop) StopsCell() {}

// ResultOption says more about a result: PlusMinus, Within, Note.
type ResultOption struct {
	plusMinus, within float64
	note              string
}

// PlusMinus gives the uncertainty of a result, in its unit.
func PlusMinus(x float64) ResultOption { return ResultOption{plusMinus: x} }

// Within says how far the result of another run may differ before it counts as changed, in the result's unit.
func Within(x float64) ResultOption { return ResultOption{within: x} }

// Note adds a few words to a result.
func Note(words string) ResultOption { return ResultOption{note: words} }

// Result declares a result of the worksheet and shows it: a name, a figure (dimensionless here: in the given unit) and
// the unit as it is to be printed. A figure that is not finite, an empty name or unit stop the cell.
func Result(name string, figure float64, unit string, more ...ResultOption) {
	r := display.ResultData{Version: 1, Name: name, Value: figure, Unit: unit}
	for _, o := range more {
		if o.plusMinus != 0 {
			r.PlusMinus = o.plusMinus
		}
		if o.within != 0 {
			r.Within = o.within
		}
		if o.note != "" {
			r.Note = o.note
		}
	}
	switch {
	case strings.TrimSpace(name) == "":
		panic(&Stop{"Result: a result needs a name"})
	case strings.TrimSpace(unit) == "":
		panic(&Stop{fmt.Sprintf("Result: %q needs a unit; a bare number has the unit \"1\"", name)})
	case hasControl(name) || hasControl(unit) || hasControl(r.Note):
		panic(&Stop{fmt.Sprintf("Result: %q, %q, %q: a name, a unit and a note are plain text on one line", name, unit, r.Note)})
	case math.IsNaN(figure) || math.IsInf(figure, 0):
		panic(&Stop{fmt.Sprintf("Result: %q is %v %s; a result must be a finite number", name, figure, unit)})
	case r.PlusMinus < 0 || r.Within < 0 || math.IsNaN(r.PlusMinus+r.Within) || math.IsInf(r.PlusMinus+r.Within, 0):
		panic(&Stop{fmt.Sprintf("Result: %q has a ± of %v and a tolerance of %v %s; both must be finite and not below zero", name, r.PlusMinus, r.Within, unit)})
	}
	r.Figure = Figure(figure, r.PlusMinus, r.Within)
	display.Publish(results.Bundle(r))
}

func hasControl(s string) bool { return strings.ContainsFunc(s, unicode.IsControl) }

// Figure writes a number for people: to the second digit of its ± if there is one, else to the tolerance's first
// digit, else to four digits or so. The arguments are dimensionless here: in one unit.
func Figure(x, plusMinus, within float64) string { return results.Figure(x, plusMinus, within) }

// Show shows values at this point of the cell: a number, a table of rows, a chart. Several stand on one line, as text.
func Show(values ...any) {
	if len(values) == 1 {
		if err := display.Show(values[0]); err != nil {
			panic(&Stop{err.Error()})
		}
		return
	}
	texts := make([]string, len(values))
	for i, v := range values {
		texts[i] = display.Text(v)
	}
	display.Publish(display.Bundle{display.Plain: strings.Join(texts, " ")})
}
