// Go specification, "For statements with for clause": each iteration has its own copy of the loop variable.

package main

import "fmt"

func main() {
	var fs []func() int
	for i := 0; i < 4; i++ {
		fs = append(fs, func() int { i += 10; return i })
	}
	for _, f := range fs {
		fmt.Print(f(), " ", f(), " ")
	}
	fmt.Println()
	var ps []*int
	for i, v := range []int{5, 6, 7} {
		if i != 1 {
			ps = append(ps, &v)
		}
	}
	fmt.Println(*ps[0], *ps[1])
	var hs []func()
	for i := 0; i < 6; i++ {
		hs = append(hs, func() { fmt.Print(i, " ") })
		i++
	}
	for _, h := range hs {
		h()
	}
	fmt.Println()
}
