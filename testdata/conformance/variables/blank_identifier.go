// Go specification, "Blank identifier": discarding values in every position.

package main

import "fmt"

type T struct {
	_ int
	a int
	_ string
}

func (_ T) Name() string                  { return "T" }
func f(_ int, s string, _ ...bool) string { return s }
func g() (a, b, c int)                    { return 1, 2, 3 }

var _ = fmt.Sprint("evaluated")
var _ interface{ Name() string } = T{}

const _ = 5

func main() {
	_, b, _ := g()
	_ = b
	_, _, c := g()
	fmt.Println(b, c, f(0, "kept", true), T{a: 3}.Name())
	for range 2 {
		fmt.Print(".")
	}
	for _, v := range []int{4, 5} {
		fmt.Print(v)
	}
	for i, _ := range "ab" {
		fmt.Print(i)
	}
	fmt.Println()
	m := map[string]int{"k": 1}
	if _, ok := m["x"]; !ok {
		fmt.Println("absent")
	}
	_, _ = g, m
	var n any = 3
	_, isInt := n.(int)
	fmt.Println(isInt, T{a: 1} == T{a: 1})
	calls := 0
	_ = func() int { calls++; return calls }()
	fmt.Println(calls)
}
