// Go specification, "For statements with range clause": filter, map, take and zip adapters over iter.Seq.

package main

import (
	"fmt"
	"iter"
	"slices"
)

func Filter[T any](s iter.Seq[T], keep func(T) bool) iter.Seq[T] {
	return func(yield func(T) bool) {
		for v := range s {
			if keep(v) && !yield(v) {
				return
			}
		}
	}
}

func Map[T, U any](s iter.Seq[T], f func(T) U) iter.Seq[U] {
	return func(yield func(U) bool) {
		for v := range s {
			if !yield(f(v)) {
				return
			}
		}
	}
}

func Take[T any](s iter.Seq[T], n int) iter.Seq[T] {
	return func(yield func(T) bool) {
		if n <= 0 {
			return
		}
		i := 0
		for v := range s {
			if !yield(v) {
				return
			}
			if i++; i >= n {
				return
			}
		}
	}
}

func Naturals(yield func(int) bool) {
	for i := 0; yield(i); i++ {
	}
}

func main() {
	odd := Filter(Naturals, func(n int) bool { return n%2 == 1 })
	sq := Map(odd, func(n int) string { return fmt.Sprintf("%d²", n) })
	for s := range Take(sq, 4) {
		fmt.Print(s, " ")
	}
	fmt.Println(slices.Collect(Take(odd, 3)), slices.Collect(Take(odd, 0)) == nil)
	fmt.Println(slices.Sorted(Map(slices.Values([]int{3, -1, 2}), func(i int) int { return -i })))
}
