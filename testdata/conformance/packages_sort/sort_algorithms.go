// Go specification, "Qualified identifiers" (package sort): own sorts checked against the library.

package main

import (
	"fmt"
	"slices"
	"sort"
)

func bubble(xs []int) (swaps int) {
	for n := len(xs); n > 1; n-- {
		done := true
		for i := 1; i < n; i++ {
			if xs[i-1] > xs[i] {
				xs[i-1], xs[i] = xs[i], xs[i-1]
				swaps++
				done = false
			}
		}
		if done {
			break
		}
	}
	return
}

func insertion(xs []int) {
	for i := 1; i < len(xs); i++ {
		x, j := xs[i], i
		for ; j > 0 && xs[j-1] > x; j-- {
			xs[j] = xs[j-1]
		}
		xs[j] = x
	}
}

func counting(xs []int) []int {
	var counts [100]int
	for _, x := range xs {
		counts[x]++
	}
	out := xs[:0]
	for v, n := range counts {
		for range n {
			out = append(out, v)
		}
	}
	return out
}

func main() {
	seed := 11
	data := make([]int, 20)
	for i := range data {
		seed = (seed*37 + 17) % 101
		data[i] = seed % 100
	}
	want := append([]int(nil), data...)
	sort.Ints(want)
	a, b := append([]int(nil), data...), append([]int(nil), data...)
	fmt.Println(bubble(a))
	insertion(b)
	c := counting(append([]int(nil), data...))
	fmt.Println(want)
	fmt.Println(slices.Equal(a, want), slices.Equal(b, want), slices.Equal(c, want), sort.IntsAreSorted(data))
}
