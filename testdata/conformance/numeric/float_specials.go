// Go specification, "Floating-point operators": infinities, NaN, signed zero and precision.

package main

import (
	"fmt"
	"math"
)

func main() {
	zero := 0.0
	inf := 1 / zero
	nan := zero / zero
	fmt.Println(inf, -inf, nan, inf-inf, inf*zero)
	fmt.Println(nan == nan, nan != nan, nan < 1, nan > 1, inf == inf, math.IsNaN(nan))
	neg := -zero
	fmt.Println(neg == zero, math.Signbit(neg), 1/math.Copysign(0, -1))
	fmt.Println(0.1+0.2, 0.1+0.2 == 0.3, float32(0.1)+float32(0.2))
	a := []float64{1e16, 1, -1e16}
	fmt.Println(a[0]+a[1]+a[2], a[0]+a[2]+a[1])
	x := float32(16777216)
	fmt.Println(x+1 == x, float64(x)+1)
	top, least := math.MaxFloat64, math.SmallestNonzeroFloat64
	fmt.Println(top*2, least/2, math.MaxFloat32)
	sum := 0.0
	for range 10 {
		sum += 0.1
	}
	fmt.Println(sum, sum == 1, math.Abs(sum-1) < 1e-9)
	m := map[float64]string{0: "zero"}
	fmt.Println(m[neg], len(m), min(nan, 1), max(2, inf))
	i := 1
	fmt.Println(float64(i)/3, i/3, 7/2*2.0, 7/2.0*2)
}
