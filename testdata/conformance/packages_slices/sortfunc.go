// Go specification, "Qualified identifiers" (package slices, cmp): SortFunc, stable sorts, cmp.Or and chains of keys.

package main

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"
)

type bottle struct {
	name string
	abv  float64
	year int
}

type byYear []bottle

func (b byYear) names() (out []string) {
	for _, x := range b {
		out = append(out, x.name)
	}
	return
}

func main() {
	bs := []bottle{{"fir", 43, 2021}, {"ash", 43, 2019}, {"oak", 58.5, 2021}, {"elm", 40, 2019}}
	slices.SortFunc(bs, func(a, b bottle) int {
		return cmp.Or(cmp.Compare(b.year, a.year), strings.Compare(a.name, b.name))
	})
	fmt.Println(byYear(bs).names())
	slices.SortStableFunc(bs, func(a, b bottle) int { return -cmp.Compare(a.abv, b.abv) })
	fmt.Println(byYear(bs).names(), slices.IsSortedFunc(bs, func(a, b bottle) int { return cmp.Compare(b.abv, a.abv) }))
	words := []string{"b", "aa", "c", "aaa"}
	slices.SortFunc(words, func(a, b string) int { return cmp.Compare(len(a), len(b))*10 + cmp.Compare(a, b) })
	fmt.Println(words)
	slices.Sort(words)
	fmt.Println(words)
	fmt.Println(cmp.Compare(1, 2), cmp.Compare(math.NaN(), 1), cmp.Less("a", "b"), cmp.Or("", "x", "y"), cmp.Or(0, 0) == 0)
	fs := []float64{2, math.NaN(), -1}
	slices.Sort(fs)
	fmt.Println(fs)
	t := byYear(bs)
	slices.Reverse(t)
	fmt.Printf("%T %v\n", slices.Clone(t), t[0])
}
