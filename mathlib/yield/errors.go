package yield

import (
	"errors"
	"fmt"
	"math"

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

func notBelow0(function, what string, x float64, unit string) error {
	return quantity.CheckRange(function, what, x, 0, math.Inf(1), unit, "")
}

func pct(function, what string, x float64) error {
	return quantity.CheckRange(function, what, x, 0, 100, "per cent", "")
}
