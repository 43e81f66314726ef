// Go specification, "Package fmt in ordinary use": float and complex verbs.

package main

import (
	"fmt"
	"math"
)

func main() {
	f := 1234.5678
	fmt.Printf("%f|%.2f|%9.1f|%-9.1f|%09.1f|%+.1f|% .1f\n", f, f, f, f, f, f, f)
	fmt.Printf("%e %.2E %g %G %.3g %v\n", f, f, f, 1e-10, f, f)
	fmt.Printf("%v %v %v %v %v\n", 1e20, 1e21, 1e-4, 1e-5, float32(0.1))
	fmt.Printf("%6.2f|%-8.3f|%8.3e|\n", math.Pi, math.Pi, math.Pi)
	fmt.Printf("%v %f %5.1f %+v %05.0f\n", math.Inf(1), math.Inf(-1), math.NaN(), math.Inf(1), math.Inf(1))
	fmt.Printf("%x %b\n", 1.5, 1.0)
	fmt.Printf("%v %.1f %g\n", 1+2i, 3-4.25i, complex(0.5, -1e7))
	fmt.Println(1.0, 2.50, 1e6, 1e-7, 100000000.0, 123456789.0, float32(1)/3, 1.0/3)
	fmt.Printf("%.0f %.0f %.0f %.0f\n", 0.5, 1.5, 2.5, -0.4)
	fmt.Printf("%.1f %.2f %.3g %.10g\n", 0.25, 1.005, 0.00012345, 0.1)
	fmt.Printf("%v %.2f\n", []float64{1, 2.5}, []float64{1, 2.555})
	fmt.Printf("%*.*f|%-*.*f|\n", 8, 2, f, 10, 1, f)
	fmt.Printf("%#g %#.3g %#v %T\n", 1.0, 2.0, 3.0, float32(1))
}
