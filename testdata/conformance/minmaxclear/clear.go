// Go specification, "Clear": clearing maps and slices, including NaN keys and generic code.

package main

import (
	"fmt"
	"math"
)

type Shelf map[string]int
type Row []float64

func wipe[T ~[]E, E any](t T) T {
	clear(t)
	return t
}

func reset[K comparable, V any, M ~map[K]V](m M) int {
	n := len(m)
	clear(m)
	return n - len(m)
}

func main() {
	s := []int{1, 2, 3, 4}
	clear(s[1:3])
	fmt.Println(s, len(s))
	m := Shelf{"a": 1, "b": 2}
	alias := m
	clear(m)
	fmt.Println(len(alias), m, m == nil)
	nan := map[float64]bool{math.NaN(): true, 1: true}
	delete(nan, math.NaN())
	fmt.Print(len(nan), " ")
	clear(nan)
	fmt.Println(len(nan))
	r := Row{1, 2}
	fmt.Println(wipe(r), r, wipe([]string{"x", "y"}), reset(Shelf{"q": 1}))
	var ns []int
	var nm map[int]int
	clear(ns)
	clear(nm)
	fmt.Println(ns == nil, nm == nil)
	ptrs := []*int{new(int), nil}
	clear(ptrs)
	fmt.Println(ptrs)
}
