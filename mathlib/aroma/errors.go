package aroma

import (
	"errors"
	"fmt"
	"slices"
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
	if head, rest, ok := strings.Cut(err.Error(), ": "); ok && strings.Contains(head, ".") && !strings.Contains(head, " ") {
		return errors.New(function + ": " + rest)
	}
	return fmt.Errorf("%s: %w", function, err)
}

// find returns the name under which an amount of the drink is kept, or an error with the nearest names.
func find(function, name string, known []string) (string, error) {
	n := nameOf(name)
	if slices.Contains(known, n) {
		return n, nil
	}
	return "", fmt.Errorf("%s: the drink has no %s; it has %s", function, n, strings.Join(known, ", "))
}
