package botanical

import (
	"errors"
	"fmt"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

// InputError says that what was asked for cannot be reckoned as it stands.
type InputError struct {
	Func    string // the function, such as "botanical.NewCharge"
	Problem string // what is wrong, with the value and its unit; what would be right
}

// Error gives the function and the problem in one line.
func (e *InputError) Error() string { return e.Func + ": " + e.Problem }

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *InputError) StopsCell() {}

func inputf(function, format string, args ...any) error {
	return &InputError{function, fmt.Sprintf(format, args...)}
}

// UnknownPlantError says that no plant of a name is in the lists of this package.
type UnknownPlantError struct {
	Func    string   // the function, such as "botanical.Find"
	Name    string   // the name asked for
	Nearest []string // the names that look most like it
}

// Error gives the name, those that look most like it, and what to do with a plant that is not listed, in one line.
func (e *UnknownPlantError) Error() string {
	return fmt.Sprintf("%s: no plant %q is known; the nearest names are %s; for a plant that is not listed set Unlisted and give its Oil and Markers", e.Func, e.Name, strings.Join(e.Nearest, ", "))
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *UnknownPlantError) StopsCell() {}

// as returns err under the name of the function the caller called.
func as(function string, err error) error {
	var (
		r *quantity.RangeError
		u *alcoholometry.UnsetError
		k *compound.UnknownError
		i *InputError
		p *UnknownPlantError
	)
	switch {
	case err == nil:
		return nil
	case errors.As(err, &r):
		e := *r
		e.Func = function
		return &e
	case errors.As(err, &u):
		e := *u
		e.Func = function
		return &e
	case errors.As(err, &k):
		e := *k
		e.Func = function
		return &e
	case errors.As(err, &i):
		e := *i
		e.Func = function
		return &e
	case errors.As(err, &p):
		e := *p
		e.Func = function
		return &e
	}
	return fmt.Errorf("%s: %w", function, err)
}
