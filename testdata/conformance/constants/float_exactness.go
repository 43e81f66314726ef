// Go specification, "Constant expressions": constant arithmetic is exact where variable arithmetic rounds.

package main

import (
	"fmt"
	"math"
)

const sum = 0.1 + 0.2
const third = 1.0 / 3

func main() {
	a, b := 0.1, 0.2
	fmt.Println(sum, sum == 0.3, a+b, a+b == 0.3)
	fmt.Println(third*3 == 1, third+third+third == 1)
	x := 1e16
	fmt.Println(x+1-x, 1e16+1-1e16)
	const tenth = 0.1
	fmt.Println(tenth*3 == 0.3, a*3 == 0.3)
	var f32 float32 = tenth
	fmt.Println(f32, float64(f32) == tenth, float64(f32))
	const big = 1e300 * 1e300 / 1e300
	fmt.Println(big, math.Pi*1e6-3141592)
	fmt.Printf("%.30f\n", math.Pi)
}
