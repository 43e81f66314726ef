// Go specification, "Defer statements": deferred functions may change named results.

package main

import (
	"errors"
	"fmt"
)

func six() (r int) {
	defer func() { r *= 7 }()
	return 6
}

func unnamed() int {
	r := 6
	defer func() { r *= 7 }()
	return r
}

func wrap(fail bool) (n int, err error) {
	defer func() {
		if err != nil {
			n, err = -1, fmt.Errorf("wrap: %w", err)
		}
	}()
	if fail {
		return 5, errors.New("leak")
	}
	n = 8
	return
}

func twice() (s string) {
	defer func() { s += "c" }()
	defer func() { s += "b" }()
	s = "zzz"
	return "a"
}

func swap(a, b int) (x, y int) {
	defer func() { x, y = y, x }()
	return a, b
}

func main() {
	fmt.Println(six(), unnamed(), twice())
	fmt.Println(wrap(true))
	fmt.Println(wrap(false))
	fmt.Println(swap(1, 2))
}
