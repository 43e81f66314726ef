// Go specification, "Function declarations": quicksort in place and merge sort by value.

package main

import (
	"fmt"
	"math/rand"
	"sort"
)

func quick(xs []int) {
	if len(xs) < 2 {
		return
	}
	p, i := xs[len(xs)/2], 0
	j := len(xs) - 1
	for i <= j {
		for xs[i] < p {
			i++
		}
		for xs[j] > p {
			j--
		}
		if i <= j {
			xs[i], xs[j] = xs[j], xs[i]
			i++
			j--
		}
	}
	quick(xs[:j+1])
	quick(xs[i:])
}

func mergeSort[T any](xs []T, less func(a, b T) bool) []T {
	if len(xs) <= 1 {
		return xs
	}
	mid := len(xs) / 2
	l, r := mergeSort(xs[:mid], less), mergeSort(xs[mid:], less)
	out := make([]T, 0, len(xs))
	for len(l) > 0 && len(r) > 0 {
		if less(r[0], l[0]) {
			out, r = append(out, r[0]), r[1:]
		} else {
			out, l = append(out, l[0]), l[1:]
		}
	}
	return append(append(out, l...), r...)
}

func main() {
	xs := []int{9, 3, 7, 3, -2, 8, 0, 11, 5}
	ys := append([]int(nil), xs...)
	quick(ys)
	fmt.Println(ys, xs)
	words := []string{"pear", "fig", "quince", "plum", "sloe", "apple"}
	fmt.Println(mergeSort(words, func(a, b string) bool { return len(a) < len(b) }))
	fmt.Println(mergeSort(xs, func(a, b int) bool { return a > b }))
	rng := rand.New(rand.NewSource(7))
	zs := rng.Perm(200)
	quick(zs)
	fmt.Println(sort.IntsAreSorted(zs), zs[:3])
}
