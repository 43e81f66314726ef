// Go specification, "Qualified identifiers" (package sort): Ints, Strings, Slice, SliceStable and Search.

package main

import (
	"fmt"
	"math"
	"sort"
)

type lot struct {
	name string
	age  int
}

func main() {
	xs := []int{5, 2, 9, -1, 2}
	sort.Ints(xs)
	ss := []string{"oak", "ash", "Elm"}
	sort.Strings(ss)
	fs := []float64{2.5, math.Inf(-1), 0}
	sort.Float64s(fs)
	fmt.Println(xs, ss, fs, sort.IntsAreSorted(xs))
	lots := []lot{{"c", 3}, {"a", 12}, {"b", 3}, {"d", 1}}
	sort.SliceStable(lots, func(i, j int) bool { return lots[i].age < lots[j].age })
	fmt.Println(lots)
	sort.Slice(lots, func(i, j int) bool { return lots[i].name > lots[j].name })
	fmt.Println(lots, sort.SliceIsSorted(lots, func(i, j int) bool { return lots[i].name > lots[j].name }))
	fmt.Println(sort.SearchInts(xs, 5), sort.SearchInts(xs, 3), sort.SearchInts(xs, 100), sort.SearchStrings(ss, "ash"))
	i, found := sort.Find(len(xs), func(i int) int { return 9 - xs[i] })
	fmt.Println(i, found)
	root := sort.Search(1000, func(n int) bool { return n*n >= 500 })
	fmt.Println(root)
	sort.Sort(sort.Reverse(sort.IntSlice(xs)))
	sort.Sort(sort.Reverse(sort.StringSlice(ss)))
	fmt.Println(xs, ss, sort.IntSlice(xs).Len())
}
