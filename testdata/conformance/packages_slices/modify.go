// Go specification, "Qualified identifiers" (package slices): inserting, deleting, replacing, compacting.

package main

import (
	"fmt"
	"slices"
	"strings"
)

func main() {
	s := []string{"a", "b", "c", "d"}
	s = slices.Insert(s, 1, "x", "y")
	fmt.Println(s)
	s = slices.Delete(s, 0, 2)
	fmt.Println(s, len(s))
	s = slices.Replace(s, 1, 3, "Q")
	fmt.Println(s)
	s = slices.DeleteFunc(s, func(v string) bool { return v == "Q" })
	fmt.Println(s)
	xs := slices.Compact([]int{1, 1, 2, 2, 2, 1, 3})
	fmt.Println(xs)
	fmt.Println(slices.CompactFunc([]string{"a", "A", "b", "B", "a"}, strings.EqualFold))
	c := slices.Clone(xs)
	slices.Reverse(c)
	fmt.Println(c, xs, slices.Repeat([]int{1, 2}, 2), slices.Concat(xs[:1], c[:2], nil))
	g := slices.Grow(c[:0], 100)
	fmt.Println(len(g), cap(g) >= 100, cap(slices.Clip(c[:2])))
	var ns []int
	fmt.Println(slices.Clone(ns) == nil, slices.Insert(ns, 0, 7))
	old := []int{1, 2, 3, 4}
	_ = slices.Delete(old, 1, 3)
	fmt.Println(old)
	defer func() { fmt.Println(recover()) }()
	_ = slices.Insert([]int{1}, 5, 2)
}
