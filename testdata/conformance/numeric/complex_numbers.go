// Go specification, "Complex types": arithmetic, comparison and roots of a polynomial.

package main

import (
	"fmt"
	"math"
	"math/cmplx"
)

func poly(x complex128) complex128 { return x*x*x - 3*x*x + 3*x - 5 }

func roots() []complex128 {
	r := []complex128{1, 0.4 + 0.9i, complex(-0.65, 0.72)}
	for range 60 {
		for i := range r {
			d := complex(1, 0)
			for j := range r {
				if j != i {
					d *= r[i] - r[j]
				}
			}
			r[i] -= poly(r[i]) / d
		}
	}
	return r
}

func main() {
	a, b := 3+4i, complex(1, -2)
	fmt.Println(a+b, a-b, a*b, a/b, -a)
	fmt.Println(a == 3+4i, a != b, real(a*b), imag(a))
	fmt.Println(cmplx.Abs(a), cmplx.Conj(a), cmplx.Sqrt(-1))
	for _, r := range roots() {
		fmt.Printf("%.4f %.4f %t\n", real(r), math.Abs(imag(r)), cmplx.Abs(poly(r)) < 1e-9)
	}
	var c64 complex64 = 1i
	c64 *= c64
	fmt.Printf("%v %T %.2f\n", c64, c64, a/3)
	e := cmplx.Exp(1i * math.Pi)
	fmt.Printf("%.3f %.3f\n", real(e), math.Abs(imag(e)))
	m := map[complex128]int{1i: 1}
	fmt.Println(m[0+1i], []complex64{1, 2i})
}
