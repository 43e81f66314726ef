// Go specification, "Qualified identifiers" (package slices): searching and comparing.

package main

import (
	"cmp"
	"fmt"
	"slices"
)

type P struct {
	n string
	v int
}

func main() {
	xs := []int{3, 1, 4, 1, 5}
	fmt.Println(slices.Contains(xs, 4), slices.Index(xs, 1), slices.Index(xs, 9), slices.IndexFunc(xs, func(x int) bool { return x > 3 }))
	fmt.Println(slices.Max(xs), slices.Min(xs), slices.Equal(xs, []int{3}), slices.Compare(xs, []int{3, 2}))
	sorted := slices.Sorted(slices.Values(xs))
	i, ok := slices.BinarySearch(sorted, 4)
	j, ok2 := slices.BinarySearch(sorted, 2)
	fmt.Println(sorted, i, ok, j, ok2, slices.IsSorted(xs))
	ps := []P{{"a", 3}, {"b", 1}, {"c", 3}}
	fmt.Println(slices.Index(ps, P{"b", 1}), slices.ContainsFunc(ps, func(p P) bool { return p.v > 5 }))
	byV := func(a, b P) int { return cmp.Compare(a.v, b.v) }
	fmt.Println(slices.MaxFunc(ps, byV), slices.MinFunc(ps, byV))
	k, found := slices.BinarySearchFunc([]P{{"a", 1}, {"b", 5}}, 5, func(p P, t int) int { return p.v - t })
	fmt.Println(k, found)
	fmt.Println(slices.EqualFunc(xs, ps[:0], func(int, P) bool { return true }), slices.Compare([]string{"a"}, []string{"a", "b"}))
	defer func() { fmt.Println(recover()) }()
	fmt.Println(slices.Max([]int{}))
}
