// Go specification, "Integer operators": truncated division, remainders and shifts of negative numbers.

package main

import (
	"fmt"
	"math"
)

func floorDiv(a, b int) int {
	q := a / b
	if a%b != 0 && (a < 0) != (b < 0) {
		q--
	}
	return q
}

func mod(a, b int) int { return (a%b + b) % b }

func main() {
	for _, p := range [][2]int{{5, 3}, {-5, 3}, {5, -3}, {-5, -3}, {-6, 3}, {0, 7}} {
		x, y := p[0], p[1]
		fmt.Println(x, y, x/y, x%y, floorDiv(x, y), x == (x/y)*y+x%y)
	}
	fmt.Println(mod(-1, 12), mod(13, 12), -1%12)
	fmt.Println(-7>>1, -7/2, 7>>1, -1>>10, int8(-128)>>7)
	m := math.MinInt64
	fmt.Println(m/-1 == m, m%-1)
	var s uint = 65
	fmt.Println(1<<s == 0, -1>>s, uint8(0x81)>>1, int8(-127)>>1)
	fmt.Println(6&3, 6|3, 6^3, 6&^3, ^6, -^6)
}
