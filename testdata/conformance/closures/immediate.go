// Go specification, "Function literals": immediately called literals, arguments and results.

package main

import (
	"fmt"
	"math"
)

var total = func(xs ...int) (t int) {
	for _, x := range xs {
		t += x
	}
	return
}(1, 2, 3)

func apply(n int, f func(int) int) int { return f(n) }

func main() {
	fmt.Println(total)
	a, b := func() (int, string) { return 1, "one" }()
	fmt.Println(a, b)
	fmt.Println(apply(5, func(n int) int { return n * n }), apply(3, func(_ int) int { return 0 }))
	compose := func(fs ...func(float64) float64) func(float64) float64 {
		return func(x float64) float64 {
			for _, f := range fs {
				x = f(x)
			}
			return x
		}
	}
	f := compose(math.Sqrt, func(x float64) float64 { return x + 1 }, math.Floor)
	fmt.Println(f(10), f(16), compose()(2.5))
	curry := func(a int) func(int) func(int) int {
		return func(b int) func(int) int { return func(c int) int { return a*b + c } }
	}
	fmt.Println(curry(2)(3)(4))
	ops := map[string]func(int, int) int{"+": func(a, b int) int { return a + b }, "-": func(a, b int) int { return a - b }}
	fmt.Println(ops["+"](4, 5), ops["-"](4, 5), ops["*"] == nil)
}
