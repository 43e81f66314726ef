// Go specification, "For statements with range clause": array, slice, string, map, channel and assignment forms.

package main

import "fmt"

func main() {
	var i int
	var s struct{ k, v int }
	a := []int{10, 20, 30}
	for i = range a {
	}
	fmt.Println(i)
	for s.k, s.v = range a {
	}
	fmt.Println(s)
	keys := map[int]string{}
	for i, keys[i] = range []string{"x", "y"} {
	}
	fmt.Println(i, keys)
	for range a {
		i++
	}
	fmt.Println(i)
	ch := make(chan int, 3)
	ch <- 7
	ch <- 8
	close(ch)
	for v := range ch {
		fmt.Print(v, " ")
	}
	for i, r := range "aé水" {
		fmt.Print(i, string(r), " ")
	}
	fmt.Println()
	var key string
	var val any
	for key, val = range map[string]int{"mon": 0} {
	}
	fmt.Println(key, val)
	for range "ab" {
		fmt.Print(".")
	}
	fmt.Println()
}
