// Go specification, "Type inference": untyped constants, named slices, channels, functions and nested types.

package main

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
)

type IDs []int
type Table[K comparable] map[K]IDs

func First[S ~[]E, E any](s S) (e E, rest S) { return s[0], s[1:] }
func Keys[M ~map[K]V, K cmp.Ordered, V any](m M) []K {
	return slices.Sorted(maps.Keys(m))
}
func Both[T any](a, b T) []T             { return []T{a, b} }
func Apply[A, B any](a A, f func(A) B) B { return f(a) }
func Chain[A, B, C any](f func(A) B, g func(B) C) func(A) C {
	return func(a A) C { return g(f(a)) }
}
func Send[T any](c chan<- T, v T) { c <- v }
func Inner[T any](m map[string][]T) (n int) {
	for _, s := range m {
		n += len(s)
	}
	return
}

func main() {
	e, rest := First(IDs{4, 5, 6})
	fmt.Printf("%v %v %T\n", e, rest, rest)
	fmt.Println(Keys(Table[string]{"b": nil, "a": {1}}))
	fmt.Printf("%T %T %T\n", Both(1, 2.5), Both('a', 1), Both[any](1, "x"))
	fmt.Println(Apply(3, strconv.Itoa)+"!", Apply("abc", func(s string) int { return len(s) }), Apply([]int{1}, func(s []int) []int { return append(s, 2) }))
	fmt.Println(Chain(strings.ToUpper, func(s string) []string { return strings.Split(s, "") })("gin"))
	c := make(chan float64, 2)
	Send(c, 1)
	Send(c, 2.5)
	fmt.Println(<-c+<-c, Inner(map[string][]error{"x": {nil, nil}}))
	var conv func(int) string = func(i int) string { return fmt.Sprint(i) }
	fmt.Println(slices.Collect(func(yield func(string) bool) { yield(Apply(9, conv)) }))
}
