// Go specification, "Qualified identifiers" (package math): rounding, powers, logs, trigonometry.

package main

import (
	"fmt"
	"math"
)

func main() {
	fmt.Println(math.Sqrt(2), math.Cbrt(27), math.Pow(2, 10), math.Hypot(3, 4), math.Abs(-2.5))
	fmt.Printf("%.6f %.6f %.6f %.6f\n", math.Exp(1), math.Log(10), math.Log2(8), math.Log10(1000))
	fmt.Printf("%.6f %.6f %.6f %.6f\n", math.Sin(math.Pi/6), math.Cos(math.Pi/3), math.Tan(math.Pi/4), math.Atan2(1, -1))
	fmt.Println(math.Floor(-2.5), math.Ceil(-2.5), math.Trunc(-2.5), math.Round(-2.5), math.RoundToEven(2.5))
	fmt.Println(math.Mod(7.5, 2), math.Mod(-7.5, 2), math.Remainder(7.5, 2), math.Max(3, math.NaN()), math.Min(-0.0, 0))
	fmt.Println(math.Sqrt(-1), math.Log(0), math.Log(-1), math.Pow(0, -1), math.Inf(1)-math.Inf(1))
	i, f := math.Modf(3.75)
	m, e := math.Frexp(40)
	fmt.Println(i, f, m, e, math.Ldexp(0.5, 4))
	fmt.Println(math.Float64bits(1), math.Float32bits(0.5), math.Float64frombits(0x4045000000000000), math.Nextafter(1, 2) > 1)
	fmt.Println(math.MaxUint8, math.MinInt16, math.MaxInt64, uint64(math.MaxUint64), math.MaxFloat32)
	fmt.Printf("%.10f %.10f %.4f\n", math.Pi, math.E, math.Phi)
	fmt.Printf("%.5f %.5f %.5f\n", math.Gamma(5), math.Erf(0.5), math.Sinh(1))
	fmt.Println(math.Signbit(-1), math.Copysign(3, -1), math.IsInf(math.Inf(-1), -1), math.Dim(4, 9), math.Expm1(0))
}
