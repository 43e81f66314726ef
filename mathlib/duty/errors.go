package duty

import (
	"errors"
	"fmt"
	"math"
	"strconv"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

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

// notBelow0 returns an error unless x, in the unit named, is a finite number of 0 or more.
func notBelow0(function, what string, x float64, unit string) error {
	return quantity.CheckRange(function, what, x, 0, math.Inf(1), unit, "")
}

// above0 returns an error unless x, in the unit named, is a finite number above 0.
func above0(function, what string, x float64, unit string) error {
	if err := notBelow0(function, what, x, unit); err != nil {
		return err
	}
	if x == 0 {
		return fmt.Errorf("%s: %s is 0 %s; give one above 0", function, what, unit)
	}
	return nil
}

// plain prints a number with the digits it has.
func plain(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
