// Go specification, "Qualified identifiers" (package slices): Values, All, Backward, Chunk, Collect, Sorted.

package main

import (
	"cmp"
	"fmt"
	"slices"
)

type Tier string

func main() {
	xs := []Tier{"gold", "silver", "bronze", "tin", "lead"}
	for i, v := range slices.All(xs) {
		fmt.Print(i, v, " ")
	}
	for i, v := range slices.Backward(xs) {
		if i < 3 {
			break
		}
		fmt.Print(i, v, " ")
	}
	fmt.Println()
	for c := range slices.Chunk(xs, 2) {
		fmt.Print(c, len(c), cap(c), " ")
	}
	fmt.Println()
	longest := slices.SortedFunc(slices.Values(xs), func(a, b Tier) int { return len(b) - len(a) })
	fmt.Println(longest[0], slices.Sorted(slices.Values(xs)))
	evens := func(yield func(int) bool) {
		for i := 0; i < 10 && yield(i); i += 2 {
		}
	}
	got := slices.AppendSeq([]int{-1}, evens)
	fmt.Println(got, slices.Collect(evens))
	stable := slices.SortedStableFunc(slices.Values(xs), func(a, b Tier) int { return cmp.Compare(len(a), len(b)) })
	fmt.Println(stable)
	defer func() { fmt.Println(recover()) }()
	for range slices.Chunk(xs, 0) {
	}
}
