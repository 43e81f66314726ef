// Go specification, "For statements with range clause": integer ranges with per-iteration variables.

package main

import "fmt"

func main() {
	var fs []func() (int, int)
	for i := range 3 {
		for j := range i + 1 {
			fs = append(fs, func() (int, int) { j += 100; return i, j })
		}
	}
	for _, f := range fs {
		a, b := f()
		fmt.Print(a, ",", b, " ")
	}
	fmt.Println()
	ptrs := make([]*int, 3)
	for i := range ptrs {
		ptrs[i] = &i
	}
	*ptrs[1] += 50
	fmt.Println(*ptrs[0], *ptrs[1], *ptrs[2])
	i := 77
	for i := range 2 {
		_ = i
	}
	fmt.Println(i)
	for i = range 5 {
		if i == 3 {
			break
		}
	}
	fmt.Println(i)
	for r := range 'c' - 'a' + 1 {
		fmt.Print(string('a'+r), " ")
	}
	fmt.Println()
}
