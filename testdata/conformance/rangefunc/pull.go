// Go specification, "For statements with range clause": iter.Pull turns a push iterator into next and stop.

package main

import (
	"fmt"
	"iter"
	"slices"
	"strings"
)

func words(s string) iter.Seq2[int, string] {
	return func(yield func(int, string) bool) {
		defer fmt.Print("[end] ")
		for i, w := range strings.Fields(s) {
			if !yield(i, w) {
				return
			}
		}
	}
}

func mergeSorted(a, b iter.Seq[int]) []int {
	nextA, stopA := iter.Pull(a)
	defer stopA()
	nextB, stopB := iter.Pull(b)
	defer stopB()
	var out []int
	x, okX := nextA()
	y, okY := nextB()
	for okX || okY {
		if okX && (!okY || x <= y) {
			out = append(out, x)
			x, okX = nextA()
		} else {
			out = append(out, y)
			y, okY = nextB()
		}
	}
	return out
}

func main() {
	fmt.Println(mergeSorted(slices.Values([]int{1, 4, 9}), slices.Values([]int{2, 3, 10, 11})))
	next, stop := iter.Pull2(words("the low wines"))
	i, w, ok := next()
	fmt.Println(i, w, ok)
	i, w, ok = next()
	fmt.Println(i, w, ok)
	stop()
	i, w, ok = next()
	fmt.Printf("%d %q %t\n", i, w, ok)
	stop()
}
