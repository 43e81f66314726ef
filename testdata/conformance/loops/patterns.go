// Go specification, "For statements": nested loops drawing triangles and a multiplication table.

package main

import (
	"fmt"
	"strings"
)

func diamond(n int) {
	for i := -n; i <= n; i++ {
		w := n - i
		if i < 0 {
			w = n + i
		}
		fmt.Printf("%s%s\n", strings.Repeat(" ", n-w), strings.Repeat("*", 2*w+1))
	}
}

func main() {
	diamond(2)
	for i := 1; i <= 5; i++ {
		for j := 1; j <= i; j++ {
			fmt.Printf("%4d", i*j)
		}
		fmt.Println()
	}
	spiral := [4][4]int{}
	dx, dy, x, y := 1, 0, 0, 0
	for n := 1; n <= 16; n++ {
		spiral[y][x] = n
		nx, ny := x+dx, y+dy
		if nx < 0 || nx > 3 || ny < 0 || ny > 3 || spiral[ny][nx] != 0 {
			dx, dy = -dy, dx
		}
		x, y = x+dx, y+dy
	}
	for _, row := range spiral {
		fmt.Println(row)
	}
}
