// Go specification, "Interface types": a nil pointer inside an interface is not a nil interface.

package main

import "fmt"

type DryError struct{ tank int }

func (e *DryError) Error() string {
	if e == nil {
		return "nil DryError"
	}
	return fmt.Sprintf("tank %d is dry", e.tank)
}

func bad(fail bool) error {
	var e *DryError
	if fail {
		e = &DryError{4}
	}
	return e
}

func good(fail bool) error {
	if fail {
		return &DryError{4}
	}
	return nil
}

func main() {
	fmt.Println(bad(true) == nil, bad(false) == nil, good(false) == nil)
	fmt.Println(bad(true), bad(false), good(true))
	err := bad(false)
	e, ok := err.(*DryError)
	fmt.Println(e == nil, ok)
	fmt.Printf("%T %T\n", err, good(false))
	var any1 any = err
	var any2 any
	fmt.Println(any1 == nil, any2 == nil, any1 == any((*DryError)(nil)))
}
