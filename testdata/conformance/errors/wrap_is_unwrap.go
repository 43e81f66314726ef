// Go specification, "Errors": wrapping with %w, errors.Is and errors.Unwrap.

package main

import (
	"errors"
	"fmt"
)

var (
	ErrNotFound = errors.New("not found")
	ErrLocked   = errors.New("locked")
)

func open(name string) error {
	switch name {
	case "a":
		return nil
	case "b":
		return fmt.Errorf("open %q: %w", name, ErrLocked)
	case "c":
		return fmt.Errorf("open %q: %w and %w", name, ErrLocked, ErrNotFound)
	}
	return fmt.Errorf("open %q: %w", name, fmt.Errorf("stat: %w", ErrNotFound))
}

func main() {
	for _, n := range []string{"a", "b", "c", "d"} {
		err := open(n)
		fmt.Println(err, errors.Is(err, ErrLocked), errors.Is(err, ErrNotFound), errors.Unwrap(err))
	}
	e1, e2 := errors.New("same"), errors.New("same")
	fmt.Println(e1 == e2, errors.Is(e1, e2), e1.Error() == e2.Error(), errors.Is(nil, e1), errors.Is(nil, nil))
	flat := fmt.Errorf("flat: %v", ErrLocked)
	fmt.Println(errors.Is(flat, ErrLocked), errors.Unwrap(flat) == nil)
	depth := 0
	for err := open("z"); err != nil; err = errors.Unwrap(err) {
		depth++
	}
	fmt.Println(depth)
}
