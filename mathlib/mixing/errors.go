package mixing

import (
	"errors"
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// StrengthError says that adding water cannot bring one strength to another.
type StrengthError struct {
	Func     string // the function, such as "mixing.Reduce"
	From, To alcoholometry.Strength
}

// Error gives the function and both strengths in one line.
func (e *StrengthError) Error() string {
	from, to := e.From.String(), e.To.String()
	if from == to {
		from, to = fmt.Sprintf("%.9g %% vol", e.From.ABV()), fmt.Sprintf("%.9g %% vol", e.To.ABV())
	}
	if e.To.ABW() < e.From.ABW() {
		return fmt.Sprintf("%s: cannot bring %s down to %s with any amount of water; give a strength above 0", e.Func, from, to)
	}
	return fmt.Sprintf("%s: cannot raise %s to %s by adding water", e.Func, from, to)
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *StrengthError) StopsCell() {}

// checkStrengths returns an error unless water can bring from to to.
func checkStrengths(function string, from, to alcoholometry.Strength) error {
	if err := alcoholometry.CheckSet(function, "the strength to reach", to); err != nil {
		return err
	}
	if differ(from, to) && (to.ABW() > from.ABW() || to.ABW() == 0) {
		return &StrengthError{function, from, to}
	}
	return nil
}

// checkSpirit returns an error unless the spirit has a strength, a volume above 0 and a temperature in range.
func checkSpirit(function, what string, s alcoholometry.Spirit) error {
	if err := alcoholometry.CheckSet(function, "the strength of "+what, s.Strength); err != nil {
		return err
	}
	if err := alcoholometry.CheckSpirit(function, s); err != nil {
		return err
	}
	if s.VolumeL == 0 {
		return fmt.Errorf("%s: the volume of %s is 0 L; give one above 0 L", function, what)
	}
	return nil
}

// as returns err under the name of the function the caller called.
func as(function string, err error) error {
	var r *quantity.RangeError
	if errors.As(err, &r) {
		c := *r
		c.Func = function
		return &c
	}
	var u *alcoholometry.UnsetError
	if errors.As(err, &u) {
		c := *u
		c.Func = function
		return &c
	}
	return fmt.Errorf("%s: %w", function, err)
}
