package plots

import (
	"fmt"
	"math"
)

// Error is the value a method of this package panics with when a call cannot be drawn honestly: lengths
// that differ, a value that is not a finite number, an empty series, a chart without a series.
type Error struct {
	// Func is the call that failed, as "Chart.Line".
	Func string
	// Series is the label of the series, mark, band or line concerned; empty if none is.
	Series string
	// Index is the place in the series, counted from 0; -1 if no single place is wrong.
	Index int
	// Problem says what is wrong, with the value.
	Problem string
	// Want says what would be right.
	Want string
}

// Error returns one line: the call, what is wrong, what would be right.
func (e *Error) Error() string {
	where := ""
	if e.Series != "" {
		where = fmt.Sprintf("%q: ", e.Series)
	}
	return "plots." + e.Func + ": " + where + e.Problem + "; " + e.Want
}

// StopsCell marks the error as one that stops a notebook cell with its one line and no stack.
func (e *Error) StopsCell() {}

// largest is the largest size of a value that is drawn (dimensionless: in the axis unit), so that the
// difference of two values is still a number.
const largest = 1e300

func checkValue(call, label, name string, index int, value float64) {
	if math.IsNaN(value) || math.IsInf(value, 0) || math.Abs(value) > largest {
		panic(&Error{Func: call, Series: label, Index: index, Problem: fmt.Sprintf("%s is %v", name, value),
			Want: "give a finite number of at most 1e300 in size, or leave the point out"})
	}
}

func checkSeries(call, label string, xs, ys []float64) {
	if len(xs) != len(ys) {
		panic(&Error{Func: call, Series: label, Index: -1,
			Problem: fmt.Sprintf("%d x values and %d y values", len(xs), len(ys)), Want: "give one y for each x"})
	}
	if len(xs) == 0 {
		panic(&Error{Func: call, Series: label, Index: -1, Problem: "the series is empty", Want: "give at least one point"})
	}
	for i := range xs {
		checkValue(call, label, fmt.Sprintf("xs[%d]", i), i, xs[i])
		checkValue(call, label, fmt.Sprintf("ys[%d]", i), i, ys[i])
	}
}
