// Go specification, "Iota": successive integers, skipping and repeating expressions.

package main

import "fmt"

const (
	c0 = iota
	c1
	c2
	_
	c4
)

const (
	a = 1 << iota
	b = 1 << iota
	c = 3
	d = 1 << iota
)

const (
	u         = iota * 42
	v float64 = iota * 42
	w         = iota * 42
)

const x = iota
const y = iota

const (
	bit0, mask0 = 1 << iota, 1<<iota - 1
	bit1, mask1
	_, _
	bit3, mask3
)

func main() {
	fmt.Println(c0, c1, c2, c4)
	fmt.Println(a, b, c, d)
	fmt.Println(u, v, w, x, y)
	fmt.Println(bit0, mask0, bit1, mask1, bit3, mask3)
	fmt.Printf("%T %T %T\n", u, v, w)
}
