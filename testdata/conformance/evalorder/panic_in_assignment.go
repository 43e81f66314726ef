// Go specification, "Assignment statements": what has happened when an assignment panics.

package main

import "fmt"

func f(log *[]string, s string, n int) int { *log = append(*log, s); return n }

func try(g func()) {
	defer func() { fmt.Println("  ", recover()) }()
	g()
}

func main() {
	var log []string
	s := []int{1, 2}
	var m map[string]int
	try(func() { s[f(&log, "index", 5)] = f(&log, "value", 1) })
	fmt.Println(log, s)
	log = nil
	try(func() { m[fmt.Sprint(f(&log, "key", 1))] = f(&log, "val", 2) })
	fmt.Println(log)
	log = nil
	z := 0
	try(func() { s[0] = f(&log, "div", 4) / z })
	fmt.Println(log, s)
	log = nil
	x := 1
	var p *int
	try(func() { x, *p = 2, f(&log, "rhs", 3) })
	fmt.Println(log, x)
	log = nil
	try(func() {
		defer f(&log, "deferred", f(&log, "now", 0))
		_ = s[f(&log, "before", 9)]
	})
	fmt.Println(log)
}
