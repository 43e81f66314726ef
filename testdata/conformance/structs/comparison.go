// Go specification, "Comparison operators": struct equality, nested, with interfaces and blanks.

package main

import (
	"fmt"
	"math"
)

type Key struct {
	name string
	pos  [2]int
	v    any
}

type Padded struct {
	a int
	_ int
	b string
}

func main() {
	k1 := Key{"a", [2]int{1, 2}, 3}
	k2 := Key{"a", [2]int{1, 2}, 3}
	k3 := Key{"a", [2]int{1, 2}, int8(3)}
	fmt.Println(k1 == k2, k1 == k3, k1 != k3)
	m := map[Key]string{k1: "one", k3: "three"}
	fmt.Println(m[k2], m[k3], len(m))
	fmt.Println(Padded{a: 1, b: "x"} == Padded{a: 1, b: "x"})
	p, q := &k1, &k2
	fmt.Println(p == q, *p == *q)
	nan := math.NaN()
	f := struct{ v float64 }{nan}
	g := f
	fmt.Println(f == g)
	defer func() { fmt.Println("recovered:", recover()) }()
	k1.v = []int{1}
	k2.v = []int{1}
	fmt.Println(k1 == k2)
}
