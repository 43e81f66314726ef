// Go specification, "Assignment statements": operands on the left are evaluated first, then assigned in order.

package main

import "fmt"

type node struct {
	v    int
	next *node
}

func main() {
	a, b := 1, 2
	a, b = b, a
	fmt.Println(a, b)
	x := []int{1, 2, 3}
	i := 0
	i, x[i] = 1, 2
	fmt.Println(i, x)
	i = 0
	x[i], i = 2, 1
	fmt.Println(i, x)
	x[0], x[0] = 1, 2
	fmt.Println(x)
	x[1], x[2] = x[2], x[1]
	fmt.Println(x)
	p := &node{v: 1, next: &node{v: 2}}
	p.v, p.next, p = 10, &node{v: 3}, p.next
	fmt.Println(p.v, p.next == nil)
	i = 2
	x = []int{3, 5, 7}
	for i, x[i] = range x {
		break
	}
	fmt.Println(i, x)
	fib := [2]int{0, 1}
	for range 10 {
		fib[0], fib[1] = fib[1], fib[0]+fib[1]
	}
	fmt.Println(fib)
	m := map[string]int{}
	k := "a"
	m[k], k = 1, "b"
	fmt.Println(m, k)
	y := 5
	y += y * 2
	y <<= 1
	y &^= 4
	y %= 7
	fmt.Println(y)
}
