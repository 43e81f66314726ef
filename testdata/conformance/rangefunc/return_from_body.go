// Go specification, "For statements with range clause": return, nested loops and labels inside a function range.

package main

import (
	"fmt"
	"iter"
)

func upto(n int) iter.Seq[int] {
	return func(yield func(int) bool) {
		defer fmt.Print("[done ", n, "]")
		for i := range n {
			if !yield(i) {
				return
			}
		}
	}
}

func find(want int) (a, b int, ok bool) {
	for a := range upto(5) {
		for b := range upto(5) {
			if a*b == want {
				return a, b, true
			}
		}
	}
	return -1, -1, false
}

func main() {
	a, b, ok := find(6)
	fmt.Println(a, b, ok)
	_, _, ok = find(11)
	fmt.Println(ok)
	sum := 0
outer:
	for i := range upto(4) {
		for j := range upto(4) {
			if j > i {
				continue outer
			}
			if i == 3 {
				break outer
			}
			sum += 10*i + j
		}
	}
	fmt.Println(sum)
}
