// Go specification, "Map types": lookup, comma ok, insertion, deletion, length.

package main

import "fmt"

func main() {
	m := map[string]int{"juniper": 20, "orris": 2}
	m["coriander"] = 10
	v, ok := m["cassia"]
	fmt.Println(v, ok, len(m), m)
	if v, ok := m["orris"]; ok {
		fmt.Println("orris", v)
	}
	m["orris"] += 3
	m["lemon"]++
	delete(m, "juniper")
	delete(m, "absent")
	_, ok = m["juniper"]
	fmt.Println(m, ok)
	var n map[string]int
	fmt.Println(n == nil, n["x"], len(n), n)
	delete(n, "x")
	for range n {
		fmt.Println("never")
	}
	e := make(map[string]int, 100)
	fmt.Println(e == nil, len(e))
	alias := m
	alias["peel"] = 1
	fmt.Println(len(m), m["peel"])
}
