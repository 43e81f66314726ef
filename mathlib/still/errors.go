package still

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
	Func    string // the function, such as "still.Distil"
	Problem string // what is wrong, with the value and its unit; what would be right
}

// Error gives the function and the problem in one line.
func (e *InputError) Error() string { return e.Func + ": " + e.Problem }

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *InputError) StopsCell() {}

func inputf(function, format string, args ...any) error {
	return &InputError{function, fmt.Sprintf(format, args...)}
}

// TooStrongError says that a charge is as strong as the azeotrope or stronger, so that the weaker part would come over
// first.
type TooStrongError struct {
	Func      string // the function
	Charge    alcoholometry.Strength
	Azeotrope alcoholometry.Strength
	P         quantity.Pressure
}

// Error gives both strengths in one line.
func (e *TooStrongError) Error() string {
	return fmt.Sprintf("%s: the charge of %v is no weaker than the azeotrope, %v under %v; distilling does not make it stronger: charge something weaker", e.Func, e.Charge, e.Azeotrope, e.P)
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *TooStrongError) StopsCell() {}

// NeverError says that a run does not come to a place asked for.
type NeverError struct {
	Func string // the function
	What string // the place
	Why  string // what there is instead

	Already bool // the run is beyond the place where the search for it begins
}

// Error gives the place and what there is instead in one line.
func (e *NeverError) Error() string {
	return fmt.Sprintf("%s: the run never comes to %s: %s", e.Func, e.What, e.Why)
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *NeverError) StopsCell() {}

// NotCarriedError says that a run or cut knows nothing of a compound.
type NotCarriedError struct {
	Func    string // the function
	Name    string // the name asked for
	Carried []string
}

// Error gives the name and the compounds carried in one line.
func (e *NotCarriedError) Error() string {
	if len(e.Carried) == 0 {
		return fmt.Sprintf("%s: %q was not carried along; no congener was: name it among the Congeners of the batch", e.Func, e.Name)
	}
	return fmt.Sprintf("%s: %q was not carried along; these were: %s", e.Func, e.Name, strings.Join(e.Carried, ", "))
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *NotCarriedError) StopsCell() {}

// as returns err under the name of the function the caller called.
func as(function string, err error) error {
	var (
		r *quantity.RangeError
		u *alcoholometry.UnsetError
		k *compound.UnknownError
		i *InputError
		n *NeverError
		c *NotCarriedError
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
	case errors.As(err, &n):
		e := *n
		e.Func = function
		return &e
	case errors.As(err, &c):
		e := *c
		e.Func = function
		return &e
	}
	return fmt.Errorf("%s: %w", function, err)
}
