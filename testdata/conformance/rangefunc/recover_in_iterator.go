// Go specification, "For statements with range clause": a panic in the loop body passes through the iterator.

package main

import "fmt"

func guarded(yield func(int) bool) {
	defer func() { fmt.Print("cleanup ") }()
	for i := range 5 {
		if !yield(i) {
			return
		}
	}
}

func div(n int) (res []int, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("stopped: %v", r)
		}
	}()
	for i := range guarded {
		res = append(res, 12/(n-i))
	}
	return
}

func careless(yield func(int) bool) {
	yield(1)
	yield(2)
}

func main() {
	fmt.Println(div(2))
	fmt.Println(div(9))
	func() {
		defer func() { fmt.Println("panic:", recover()) }()
		for v := range careless {
			fmt.Print(v, " ")
			break
		}
	}()
}
