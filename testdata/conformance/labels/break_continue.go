// Go specification, "Labeled statements": break and continue to an outer loop, switch and select.

package main

import "fmt"

func search(grid [][]int, want int) (r, c int) {
	r, c = -1, -1
rows:
	for i, row := range grid {
		for j, v := range row {
			switch {
			case v < 0:
				continue rows
			case v == want:
				r, c = i, j
				break rows
			}
		}
	}
	return
}

func main() {
	g := [][]int{{1, 2, -1, 9}, {3, 9, 4}, {9}}
	fmt.Println(search(g, 9))
	fmt.Println(search(g, 100))
	n := 0
outer:
	for i := 2; i < 50; i++ {
		for j := 2; j*j <= i; j++ {
			if i%j == 0 {
				continue outer
			}
		}
		n++
		if n > 8 {
			break outer
		}
		fmt.Print(i, " ")
	}
	fmt.Println(n)
loop:
	for i := 0; ; i++ {
		switch i {
		case 1:
			continue loop
		case 4:
			break loop
		case 2:
			break
		default:
			fmt.Print("d", i, " ")
		}
		fmt.Print("e", i, " ")
	}
	fmt.Println()
}
