package sheet

import (
	"regexp"

	"swanneck/mathlib/quantity"
)

// Stop is what a function of this package panics with: the one line that the cell prints.
type Stop struct {
	Msg string // begins with the function's name as a cell writes it, such as "Reduce: "
}

// Error returns the line.
func (s *Stop) Error() string { return s.Msg }

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (s *Stop) StopsCell() {}

// qualified matches the names, such as "mixing.Reduce: ", with which errors of mathlib begin.
var qualified = regexp.MustCompile(`^([a-z]+\.[A-Za-z0-9.]+: )+`)

// must returns v, or stops the cell under the name given.
func must[T any](name string, v T, err error) T {
	if err != nil {
		panic(&Stop{name + ": " + qualified.ReplaceAllString(err.Error(), "")})
	}
	return v
}

// converted returns f(x), where f panics with a *quantity.RangeError for a number that is not finite.
func converted(name string, f func(float64) float64, x float64) (y float64) {
	defer func() {
		switch r := recover().(type) {
		case nil:
		case *quantity.RangeError:
			must(name, 0, r)
		default:
			panic(r)
		}
	}()
	return f(x)
}
