// Go specification, "Function declarations": backtracking: eight queens and a small sum puzzle.

package main

import "fmt"

type board struct {
	n                  int
	cols, diag1, diag2 []bool
	place              []int
	found              [][]int
}

func newBoard(n int) *board {
	return &board{n: n, cols: make([]bool, n), diag1: make([]bool, 2*n), diag2: make([]bool, 2*n)}
}

func (b *board) solve(row int) {
	if row == b.n {
		b.found = append(b.found, append([]int(nil), b.place...))
		return
	}
	for c := range b.n {
		d1, d2 := row+c, row-c+b.n
		if b.cols[c] || b.diag1[d1] || b.diag2[d2] {
			continue
		}
		b.cols[c], b.diag1[d1], b.diag2[d2] = true, true, true
		b.place = append(b.place, c)
		b.solve(row + 1)
		b.place = b.place[:row]
		b.cols[c], b.diag1[d1], b.diag2[d2] = false, false, false
	}
}

func sums(target int, coins []int) (ways int) {
	if target == 0 {
		return 1
	}
	if target < 0 || len(coins) == 0 {
		return 0
	}
	return sums(target-coins[0], coins) + sums(target, coins[1:])
}

func main() {
	for _, n := range []int{1, 3, 4, 6, 8} {
		b := newBoard(n)
		b.solve(0)
		fmt.Print(n, ":", len(b.found), " ")
		if n == 6 {
			fmt.Print(b.found[0], " ")
		}
	}
	fmt.Println()
	fmt.Println(sums(100, []int{50, 20, 10, 5}), sums(3, []int{2}))
}
