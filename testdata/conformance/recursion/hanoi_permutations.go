// Go specification, "Function declarations": towers of Hanoi, permutations and subsets.

package main

import (
	"fmt"
	"strings"
)

type move struct{ from, to byte }

func hanoi(n int, a, b, c byte) []move {
	if n == 0 {
		return nil
	}
	return append(append(hanoi(n-1, a, c, b), move{a, c}), hanoi(n-1, b, a, c)...)
}

func permute(xs []string, visit func([]string)) {
	var rec func(int)
	rec = func(k int) {
		if k == len(xs) {
			visit(xs)
			return
		}
		for i := k; i < len(xs); i++ {
			xs[k], xs[i] = xs[i], xs[k]
			rec(k + 1)
			xs[k], xs[i] = xs[i], xs[k]
		}
	}
	rec(0)
}

func subsets[T any](xs []T) [][]T {
	if len(xs) == 0 {
		return [][]T{nil}
	}
	rest := subsets(xs[1:])
	out := rest
	for _, s := range rest {
		out = append(out, append([]T{xs[0]}, s...))
	}
	return out
}

func main() {
	ms := hanoi(4, 'A', 'B', 'C')
	fmt.Print(len(ms), " ")
	for _, m := range ms[:5] {
		fmt.Printf("%c%c ", m.from, m.to)
	}
	fmt.Println()
	permute([]string{"x", "y", "z"}, func(p []string) { fmt.Print(strings.Join(p, ""), " ") })
	fmt.Println()
	fmt.Println(subsets([]int{1, 2, 3}), len(subsets([]rune("abcde"))))
}
