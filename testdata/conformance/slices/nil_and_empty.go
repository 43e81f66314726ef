// Go specification, "Slice types": nil and empty slices behave alike save for comparison and JSON.

package main

import (
	"encoding/json"
	"fmt"
	"slices"
)

func main() {
	var n []int
	e := []int{}
	m := make([]int, 0, 4)
	fmt.Println(n == nil, e == nil, m == nil, len(n), cap(n), cap(m))
	fmt.Println(n, e, m)
	fmt.Printf("%#v %#v %T\n", n, e, n)
	for range n {
		fmt.Println("never")
	}
	n = append(n, e...)
	fmt.Println(n == nil)
	n = append(n, 1)
	fmt.Println(n, append([]byte(nil), "hi"...))
	var grid [][]string
	grid = append(grid, nil, []string{"x"}, []string{})
	fmt.Printf("%v %q %d\n", grid, grid, len(grid))
	fmt.Println(copy(m, n), slices.Equal(n[:0], nil), n[:0] == nil)
	js, err := json.Marshal(map[string][]int{"nil": nil, "empty": {}})
	fmt.Println(string(js), err)
}
