// Go specification, "Alias declarations": generic aliases and aliases of instantiated types.

package main

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
)

type Set[K comparable] = map[K]struct{}
type Vec[T any] = []T
type Result[T any] struct {
	val T
	err error
}
type IntResult = Result[int]
type Handler[T any] = func(T) Result[T]
type Named = struct {
	Name string
}

func Keys[K cmp.Ordered](s Set[K]) Vec[K] {
	return slices.Sorted(maps.Keys(s))
}

func Then[T any](r Result[T], hs ...Handler[T]) Result[T] {
	for _, h := range hs {
		if r.err != nil {
			return r
		}
		r = h(r.val)
	}
	return r
}

func main() {
	s := Set[string]{"b": {}, "a": {}}
	s["c"] = struct{}{}
	fmt.Println(Keys(s), len(s))
	var plain map[string]struct{} = s
	fmt.Printf("%T %T %T\n", plain, Vec[int]{}, IntResult{})
	half := func(n int) IntResult {
		if n%2 != 0 {
			return IntResult{n, fmt.Errorf("%d is odd", n)}
		}
		return Result[int]{val: n / 2}
	}
	r := Then(IntResult{val: 12}, half, half, half, half)
	fmt.Println(r.val, r.err)
	fmt.Println(Then(Result[int]{8, nil}, half, half))
	var v any = Named{"x"}
	_, ok := v.(struct{ Name string })
	fmt.Println(ok, v)
}
