// Go specification, "Function literals": closures share the variables they capture.

package main

import "fmt"

func counter(start, step int) (next func() int, reset func()) {
	n := start
	next = func() int {
		defer func() { n += step }()
		return n
	}
	reset = func() { n = start }
	return
}

type Gen func() int

func (g Gen) Take(n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = g()
	}
	return out
}

func fib() Gen {
	a, b := 0, 1
	return func() int {
		a, b = b, a+b
		return b - a
	}
}

func main() {
	next, reset := counter(5, 3)
	other, _ := counter(0, 1)
	fmt.Println(next(), next(), other(), next(), other())
	reset()
	fmt.Println(next(), other())
	f := fib()
	fmt.Println(f.Take(10), f(), fib().Take(3))
	x := 1
	func() { x++; x := 50; x++; _ = x }()
	fmt.Println(x)
}
