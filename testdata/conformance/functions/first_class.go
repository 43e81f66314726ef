// Go specification, "Function types": functions in maps, slices, structs and as results.

package main

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"
)

type op struct {
	sym  string
	prec int
	do   func(a, b float64) float64
}

var table = map[string]op{
	"+": {"+", 1, func(a, b float64) float64 { return a + b }},
	"*": {"*", 2, func(a, b float64) float64 { return a * b }},
	"^": {"^", 3, math.Pow},
}

func compose[A, B, C any](f func(A) B, g func(B) C) func(A) C {
	return func(a A) C { return g(f(a)) }
}

func times(n int, f func(int) int) func(int) int {
	if n == 0 {
		return func(x int) int { return x }
	}
	return compose(f, times(n-1, f))
}

func main() {
	for _, k := range slices.Sorted(maps.Keys(table)) {
		o := table[k]
		fmt.Print(o.sym, o.prec, "=", o.do(2, 5), " ")
	}
	fmt.Println()
	fmt.Println(times(5, func(x int) int { return 2 * x })(3))
	length := compose(strings.TrimSpace, func(s string) int { return len(s) })
	fmt.Println(length("  gin "), compose(strconv.Itoa, strings.ToUpper)(255))
	steps := []struct {
		name string
		f    func([]int) []int
	}{
		{"double", func(xs []int) (out []int) {
			for _, x := range xs {
				out = append(out, 2*x)
			}
			return
		}},
		{"tail", func(xs []int) []int { return xs[1:] }},
	}
	xs := []int{1, 2, 3}
	for _, s := range steps {
		xs = s.f(xs)
		fmt.Println(s.name, xs)
	}
}
