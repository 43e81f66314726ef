// Go specification, "Run-time panics": the texts of common run-time errors.

package main

import "fmt"

type Node struct{ next *Node }

func try(name string, f func()) {
	defer func() {
		r := recover()
		err, isErr := r.(error)
		fmt.Println(name, "->", r, isErr && err.Error() == fmt.Sprint(r))
	}()
	f()
}

func main() {
	s := []int{1, 2, 3}
	i, zero := 5, 0
	var m map[string]int
	var n *Node
	var fn func()
	try("index", func() { _ = s[i] })
	try("negative", func() { _ = s[zero-1] })
	try("slice", func() { _ = s[:i] })
	try("slice order", func() { _ = s[2:zero] })
	try("slice3", func() { _ = s[0:1:i] })
	try("string", func() { _ = "abc"[i] })
	try("substring", func() { _ = "abc"[i:] })
	try("array", func() { a := [2]int{}; a[i]++ })
	try("divide", func() { fmt.Println(1 / zero) })
	try("modulo", func() { fmt.Println(1 % zero) })
	try("nil map", func() { m["x"] = 1 })
	try("nil pointer", func() { n.next = nil })
	try("nil func", func() { fn() })
	try("make", func() { _ = make([]int, zero-1) })
	try("shift", func() { fmt.Println(1 << (zero - 1)) })
	try("none", func() {})
}
