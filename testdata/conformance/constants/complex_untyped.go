// Go specification, "Constant expressions": complex constants collapse to other kinds when exact.

package main

import (
	"fmt"
	"time"
)

const (
	i2   = 1i * 1i
	sq   = (3 + 4i) * (3 - 4i)
	half = (1 + 1i) / 2
)

func main() {
	var n int = i2
	var f float64 = sq
	var r rune = 65 + 0i
	var u uint8 = sq * 10
	fmt.Println(n, f, r, u, string(r))
	fmt.Println(half, real(half), imag(half))
	fmt.Printf("%T %T %T\n", i2, half, real(half))
	var c64 complex64 = half
	fmt.Printf("%v %T %T\n", c64*c64, c64, real(c64))
	const quarter = 0.25
	var d time.Duration = quarter * 4 * 1e9
	fmt.Println(d)
}
