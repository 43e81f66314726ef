// Go specification, "Type parameter declarations": zero values, comparisons and local types inside generic functions.

package main

import "fmt"

type Reading struct {
	v  float64
	ok bool
}

func Default[T comparable](v, d T) T {
	var zero T
	if v == zero {
		return d
	}
	return v
}

func Count[T comparable](xs []T) (best T, n int) {
	type tally struct {
		v T
		n int
	}
	var ts []tally
next:
	for _, x := range xs {
		for i := range ts {
			if ts[i].v == x {
				ts[i].n++
				continue next
			}
		}
		ts = append(ts, tally{x, 1})
	}
	for _, t := range ts {
		if t.n > n {
			best, n = t.v, t.n
		}
	}
	return
}

func IsNil[T any](p *T) bool { return p == nil }

func main() {
	fmt.Println(Default(0, 7), Default("", "none"), Default("x", "none"), Default(Reading{}, Reading{1, true}), Default[error](nil, fmt.Errorf("e")))
	fmt.Println(Count([]string{"a", "b", "a"}))
	fmt.Println(Count([]Reading{{1, true}, {2, false}, {2, false}}))
	fmt.Println(Count([]any{1, "1", 1.0, 1}))
	fmt.Println(Count([]int(nil)))
	var p *Reading
	fmt.Println(IsNil(p), IsNil(&Reading{}))
}
