// Go specification, "For statements with range clause": ranging over functions with zero, one and two values.

package main

import "fmt"

func thrice(yield func() bool) {
	for range 3 {
		if !yield() {
			fmt.Print("stop ")
			return
		}
	}
}

func countTo(n int) func(func(int) bool) {
	return func(yield func(int) bool) {
		for i := 1; i <= n; i++ {
			if !yield(i) {
				return
			}
		}
	}
}

func pairs(yield func(string, int) bool) {
	_ = yield("a", 1) && yield("b", 2) && yield("c", 3)
}

func main() {
	n := 0
	for range thrice {
		n++
	}
	fmt.Println(n)
	for range thrice {
		break
	}
	for i := range countTo(10) {
		if i%2 == 0 {
			continue
		}
		if i > 7 {
			break
		}
		fmt.Print(i, " ")
	}
	fmt.Println()
	for k, v := range pairs {
		fmt.Print(k, v, " ")
	}
	for k := range pairs {
		fmt.Print(k, " ")
	}
	for range pairs {
		n++
	}
	fmt.Println(n)
}
