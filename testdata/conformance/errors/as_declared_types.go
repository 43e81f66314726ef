// Go specification, "Errors": errors.As and errors.AsType on declared error types, value and pointer.

package main

import (
	"errors"
	"fmt"
)

type RangeError struct {
	What   string
	V, Max int
}

type Code int
type Temporary interface{ Temporary() bool }

func (e *RangeError) Error() string { return fmt.Sprintf("%s %d above %d", e.What, e.V, e.Max) }
func (c Code) Error() string        { return fmt.Sprintf("code %d", int(c)) }
func (c Code) Temporary() bool      { return c >= 500 }

func check(n int) error {
	switch {
	case n > 600:
		return fmt.Errorf("check: %w", Code(n))
	case n > 100:
		return fmt.Errorf("check: %w", &RangeError{"litres", n, 100})
	}
	return nil
}

func main() {
	for _, n := range []int{5, 150, 700} {
		err := check(n)
		var re *RangeError
		var c Code
		var tmp Temporary
		if errors.As(err, &re) {
			fmt.Println("range", re.What, re.V-re.Max, re)
		}
		if errors.As(err, &c) {
			fmt.Println("code", int(c), c)
		}
		if errors.As(err, &tmp) {
			fmt.Println("temporary", tmp.Temporary())
		}
		fmt.Println(err, re == nil, c)
	}
	if c, ok := errors.AsType[Code](check(601)); ok {
		fmt.Println("AsType", c+1)
	}
	_, ok := errors.AsType[*RangeError](check(601))
	fmt.Println(ok, errors.Is(check(601), Code(601)))
}
