// Go specification, "Min and max": constants, mixed operands, strings and NaN.

package main

import (
	"fmt"
	"math"
	"time"
)

type Litre float64

func main() {
	a, b := 3, 7
	fmt.Println(min(a, b), max(a, b), min(a, b, -1), max(a), min(a, 2.0))
	const lo, hi = min(1, 2.5), max(1, 2.5, 'a')
	fmt.Println(lo, hi)
	fmt.Printf("%T %T %T %T\n", lo, hi, min(1, 2.0), max('a', 1))
	fmt.Println(min("b", "a", "c"), max("", "x"), min("é", "z"))
	var l Litre = 0.7
	fmt.Println(max(l, 0.5), min(l, 1))
	fmt.Printf("%T\n", max(l, 2))
	nan := math.NaN()
	fmt.Println(min(1, nan), max(nan, 1), min(nan, math.Inf(-1)), max(2, math.Inf(1)))
	negZero := math.Copysign(0, -1)
	fmt.Println(1/min(0, negZero), 1/max(negZero, 0))
	xs := []float64{2.5, -1, 9}
	m := xs[0]
	for _, x := range xs[1:] {
		m = max(m, x)
	}
	fmt.Println(m, min(uint8(200), 100), max(time.Second, 900*time.Millisecond))
	var arr [max(2, 3)]int
	fmt.Println(len(arr))
}
