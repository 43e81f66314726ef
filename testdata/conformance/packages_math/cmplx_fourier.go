// Go specification, "Qualified identifiers" (package math/cmplx): a discrete Fourier transform.

package main

import (
	"fmt"
	"math"
	"math/cmplx"
)

func dft(xs []complex128, sign float64) []complex128 {
	n := len(xs)
	out := make([]complex128, n)
	for k := range out {
		for j, x := range xs {
			out[k] += x * cmplx.Exp(complex(0, sign*2*math.Pi*float64(k*j)/float64(n)))
		}
	}
	return out
}

func fft(xs []complex128) []complex128 {
	n := len(xs)
	if n == 1 {
		return []complex128{xs[0]}
	}
	even, odd := make([]complex128, n/2), make([]complex128, n/2)
	for i := range n / 2 {
		even[i], odd[i] = xs[2*i], xs[2*i+1]
	}
	e, o := fft(even), fft(odd)
	out := make([]complex128, n)
	for k := range n / 2 {
		t := cmplx.Rect(1, -2*math.Pi*float64(k)/float64(n)) * o[k]
		out[k], out[k+n/2] = e[k]+t, e[k]-t
	}
	return out
}

func main() {
	xs := make([]complex128, 8)
	for i := range xs {
		xs[i] = complex(float64(i%4), 0)
	}
	a, b := dft(xs, -1), fft(xs)
	for k := range a {
		fmt.Printf("%d %.3f %t\n", k, cmplx.Abs(a[k]), cmplx.Abs(a[k]-b[k]) < 1e-9)
	}
	back := dft(a, 1)
	ok := true
	for i := range back {
		ok = ok && cmplx.Abs(back[i]/8-xs[i]) < 1e-9
	}
	fmt.Println(ok, cmplx.IsInf(cmplx.Inf()), cmplx.Phase(-1) == math.Pi)
	r, theta := cmplx.Polar(3 + 4i)
	fmt.Printf("%.2f %.4f\n", r, theta)
}
