// Go specification, "For statements with for clause": the closure made before the increment keeps its own variable.

package main

import "fmt"

func main() {
	var prints []func()
	for i := 0; i < 5; i++ {
		prints = append(prints, func() { fmt.Print(i, ",") })
		i++
	}
	for _, p := range prints {
		p()
	}
	fmt.Println()
	var incr func()
	for i := 0; i < 3; i++ {
		if incr == nil {
			incr = func() { i++ }
		}
		incr()
		fmt.Print(i, ";")
	}
	fmt.Println()
	var get []func() int
	for i, j := 0, 10; i < j; i, j = i+1, j-3 {
		get = append(get, func() int { return i*100 + j })
	}
	for _, g := range get {
		fmt.Print(g(), " ")
	}
	fmt.Println()
}
