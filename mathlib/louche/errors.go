package louche

import (
	"errors"
	"fmt"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

// as returns err under the name of the function the caller called; nil stays nil.
func as(function string, err error) error {
	if err == nil {
		return nil
	}
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
	var n *compound.UnknownError
	if errors.As(err, &n) {
		c := *n
		c.Func = function
		return &c
	}
	if _, rest, ok := strings.Cut(err.Error(), ": "); ok && strings.HasPrefix(err.Error(), "louche.") {
		return errors.New(function + ": " + rest)
	}
	return fmt.Errorf("%s: %w", function, err)
}
