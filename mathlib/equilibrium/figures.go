package equilibrium

import (
	"errors"
	"fmt"
	"strconv"

	"swanneck/mathlib/compound"
)

// threeDigits prints x, dimensionless here, to three significant digits.
func threeDigits(x float64) string {
	s := strconv.FormatFloat(x, 'g', 3, 64)
	if x >= 1e-4 && x < 1e6 {
		y, _ := strconv.ParseFloat(s, 64)
		return strconv.FormatFloat(y, 'f', -1, 64)
	}
	return s
}

// named returns err under the name of the function the caller called.
func named(function string, err error) error {
	var u *compound.UnknownError
	if errors.As(err, &u) {
		e := *u
		e.Func = function
		return &e
	}
	return fmt.Errorf("%s: %w", function, err)
}

// NoTraceError says that ethanol or water was named as a trace in ethanol and water.
type NoTraceError struct {
	Func string // the function
	Name string
}

// Error gives the compound in one line.
func (e *NoTraceError) Error() string {
	return fmt.Sprintf("%s: %s is no trace; name a compound other than ethanol and water", e.Func, e.Name)
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *NoTraceError) StopsCell() {}
