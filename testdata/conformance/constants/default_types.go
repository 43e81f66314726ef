// Go specification, "Constants": the default type of an untyped constant.

package main

import "fmt"

const (
	b = true
	r = 'r'
	i = 42
	f = 4.2
	c = 4i
	s = "gin"
)

func show(vs ...any) {
	for _, v := range vs {
		fmt.Printf("%T=%v ", v, v)
	}
	fmt.Println()
}

func main() {
	show(b, r, i, f, c, s)
	show(r+i, i+f, f+c, r+f, r+c)
	show(i<<3, 1.0<<3, r<<1)
	show(i == 42, 'a' < 'b', s+"!" > s)
	show(real(c), imag(c), len(s))
	x := 'x' - 'a'
	y := 2 * 3.0
	show(x, y)
}
