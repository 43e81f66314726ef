// Go specification, "Constant declarations": constants in blocks, shadowing and grouping.

package main

import "fmt"

const scale = 10

func scaled(n int) int {
	const scale = 3
	return n * scale
}

func main() {
	fmt.Println(scale, scaled(5))
	{
		const scale = scale * 100
		fmt.Println(scale)
	}
	const a, b, c = 1, "two", 3.5
	const (
		x, y         = 7, 8
		z    float32 = x + y
	)
	fmt.Println(a, b, c, x, y, z)
	for i := range 3 {
		const step = scale / 2
		fmt.Print(i*step, " ")
	}
	fmt.Println()
	const true = false
	fmt.Println(true, !true)
}
