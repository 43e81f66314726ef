package limits

import (
	"errors"
	"strings"

	"swanneck/mathlib/alcoholometry"
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
	text := err.Error()
	if head, rest, ok := strings.Cut(text, ": "); ok && strings.Contains(head, ".") && !strings.Contains(head, " ") {
		text = rest
	}
	return errors.New(function + ": " + text)
}
