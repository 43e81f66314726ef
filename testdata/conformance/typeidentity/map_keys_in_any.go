// Go specification, "Type identity": equal values of different types are different keys.

package main

import "fmt"

type A int
type B int
type S string
type P struct{ x, y int }
type Q struct{ x, y int }

func main() {
	m := map[any]string{}
	m[A(1)] = "A1"
	m[B(1)] = "B1"
	m[1] = "int"
	m[int64(1)] = "int64"
	m[S("k")] = "S"
	m["k"] = "string"
	m[P{1, 2}] = "P"
	m[Q{1, 2}] = "Q"
	m[[2]A{1, 2}] = "arr A"
	m[[2]B{1, 2}] = "arr B"
	m[struct{ x, y int }{1, 2}] = "anon"
	fmt.Println(len(m), m[A(1)], m[B(1)], m[1], m[int64(1)], m[S("k")], m["k"])
	fmt.Println(m[P{1, 2}], m[Q{1, 2}], m[[2]A{1, 2}], m[[2]B{1, 2}], m[struct{ x, y int }{1, 2}])
	var x, y any = P{1, 2}, Q{1, 2}
	fmt.Println(x == y, x == any(P(Q{1, 2})), any(A(1)) == any(1), any(S("k")) == any("k"))
	typed := map[A]P{3: {1, 2}, 1: {}}
	typed[A(2)] = P(Q{5, 6})
	fmt.Println(typed, typed[3] == P{1, 2})
	seen := map[P]int{}
	for _, q := range []Q{{1, 1}, {2, 2}, {1, 1}} {
		seen[P(q)]++
	}
	fmt.Println(seen)
}
