// Go specification, "Run-time panics": run-time errors are error values and can be wrapped and joined.

package main

import (
	"errors"
	"fmt"
	"strings"
)

func safely(f func() int) (n int, err error) {
	defer func() {
		switch r := recover().(type) {
		case nil:
		case error:
			err = fmt.Errorf("safely: %w", r)
		default:
			err = fmt.Errorf("safely: value %v", r)
		}
	}()
	return f(), nil
}

var errDry = errors.New("dry")

func main() {
	var m map[string][]int
	z := 0
	results := []func() int{
		func() int { return 10 / (z + 2) },
		func() int { return 10 / z },
		func() int { return m["a"][3] },
		func() int { panic(errDry) },
		func() int { panic("text") },
		func() int { var p *struct{ n int }; return p.n },
	}
	var all []error
	for _, f := range results {
		n, err := safely(f)
		fmt.Println(n, err, errors.Is(err, errDry), errors.Unwrap(err) != nil)
		all = append(all, err)
	}
	fmt.Println(strings.Count(errors.Join(all...).Error(), "\n"))
	func() {
		defer func() {
			err := recover().(error)
			fmt.Println(err)
		}()
		panic(fmt.Errorf("outer: %w", errDry))
	}()
}
