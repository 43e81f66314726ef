// Go specification, "Type inference": type arguments inferred from arguments, partially given, and from function values.

package main

import (
	"fmt"
	"strconv"
	"strings"
)

func Map[T, U any](xs []T, f func(T) U) []U {
	out := make([]U, 0, len(xs))
	for _, x := range xs {
		out = append(out, f(x))
	}
	return out
}

func Reduce[T, A any](xs []T, init A, f func(A, T) A) A {
	for _, x := range xs {
		init = f(init, x)
	}
	return init
}

func Zero[T any]() (z T)                       { return }
func Ptr[T any](v T) *T                        { return &v }
func Conv[To, From ~int | ~float64](f From) To { return To(f) }

type Celsius float64

func main() {
	xs := []int{1, 2, 3}
	fmt.Println(Map(xs, strconv.Itoa), Map(xs, func(i int) float64 { return float64(i) / 2 }))
	fmt.Println(Reduce(xs, "", func(s string, i int) string { return s + fmt.Sprint(i) }))
	fmt.Printf("%v %q %v %v\n", Zero[int](), Zero[string](), Zero[*int]() == nil, Zero[[2]bool]())
	fmt.Println(*Ptr(5), *Ptr("s"), Conv[int](2.9), Conv[Celsius](7), Conv[Celsius, int](3))
	f := Map[int, string]
	fmt.Println(f(xs, func(i int) string { return strings.Repeat("x", i) }))
	var g func([]string, func(string) int) []int = Map
	fmt.Println(g([]string{"aa", ""}, func(s string) int { return len(s) }))
	fmt.Printf("%T %T\n", f, Conv[float64, int])
}
