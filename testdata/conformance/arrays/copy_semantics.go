// Go specification, "Array types": assignment, passing and ranging copy the whole array.

package main

import "fmt"

func zero(a [3]int) [3]int {
	for i := range a {
		a[i] = 0
	}
	return a
}

func zeroIn(a *[3]int) {
	for i := range a {
		a[i] = 0
	}
}

func main() {
	a := [3]int{1, 2, 3}
	b := a
	b[0] = 100
	fmt.Println(a, b, zero(a), a)
	for i, v := range a {
		a[2] = 50
		fmt.Print(i, "=", v, " ")
	}
	fmt.Println(a)
	p := &a
	for i, v := range p {
		p[2] = 70
		fmt.Print(i, "=", v, " ")
	}
	fmt.Println()
	zeroIn(&b)
	fmt.Println(b, a == [3]int{50, 0, 0}, len(p), cap(p), p[1:])
}
