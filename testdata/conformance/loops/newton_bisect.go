// Go specification, "For statements": numeric iteration until a tolerance is met.

package main

import (
	"fmt"
	"math"
)

func newton(f, df func(float64) float64, x, eps float64) (float64, int) {
	n := 0
	for math.Abs(f(x)) > eps {
		x -= f(x) / df(x)
		n++
	}
	return x, n
}

func bisect(f func(float64) float64, lo, hi float64) float64 {
	for i := 0; i < 60 && hi-lo > 1e-12; i++ {
		mid := (lo + hi) / 2
		if (f(lo) < 0) == (f(mid) < 0) {
			lo = mid
		} else {
			hi = mid
		}
	}
	return (lo + hi) / 2
}

func main() {
	sq := func(x float64) float64 { return x*x - 2 }
	r, n := newton(sq, func(x float64) float64 { return 2 * x }, 1, 1e-10)
	fmt.Printf("%.8f %d\n", r, n)
	fmt.Printf("%.8f\n", bisect(sq, 0, 2))
	fmt.Printf("%.6f\n", bisect(func(x float64) float64 { return math.Cos(x) - x }, 1, 0))
	sum, term := 0.0, 1.0
	k := 1
	for ; term > 1e-9; k++ {
		sum += term
		term /= float64(k)
	}
	fmt.Printf("%.7f %d\n", sum, k)
	simpson := 0.0
	const steps = 10
	for i := range steps + 1 {
		w := 2.0 + 2*float64(i%2)
		if i == 0 || i == steps {
			w = 1
		}
		x := float64(i) / steps
		simpson += w * x * x * x
	}
	fmt.Printf("%.6f\n", simpson/3/steps)
}
