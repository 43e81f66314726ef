// Go specification, "Errors": retrying, sentinel comparison, and errors as values in maps and slices.

package main

import (
	"errors"
	"fmt"
)

type flaky struct {
	fails int
	calls int
}

var errBusy = errors.New("busy")

type fatal struct{ error }

func (f *flaky) Do() (string, error) {
	f.calls++
	switch {
	case f.calls == 4:
		return "", fatal{errors.New("broken for good")}
	case f.calls <= f.fails:
		return "", fmt.Errorf("try %d: %w", f.calls, errBusy)
	}
	return "done", nil
}

func retry(n int, f func() (string, error)) (s string, err error) {
	for range n {
		s, err = f()
		if err == nil {
			return
		}
		if f, ok := err.(fatal); ok {
			return "", fmt.Errorf("giving up: %w", f.error)
		}
	}
	return "", fmt.Errorf("after %d tries: %w", n, err)
}

func main() {
	for _, f := range []*flaky{{}, {fails: 2}, {fails: 9}} {
		s, err := retry(5, f.Do)
		fmt.Printf("%q %v %d\n", s, err, f.calls)
	}
	s, err := retry(2, (&flaky{fails: 3}).Do)
	fmt.Println(s == "", err, errors.Is(err, errBusy))
	seen := map[error]int{errBusy: 1}
	seen[errors.Unwrap(errors.Unwrap(err))]++
	seen[nil]++
	fmt.Println(seen[errBusy], len(seen), []error{errBusy, nil, fatal{errBusy}})
}
