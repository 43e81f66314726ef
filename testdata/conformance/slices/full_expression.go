// Go specification, "Full slice expressions": capacity limits and results of each bound.

package main

import "fmt"

func describe(name string, s []int) {
	fmt.Printf("%s len=%d cap=%d %v\n", name, len(s), cap(s), s)
}

func main() {
	a := [8]int{0, 1, 2, 3, 4, 5, 6, 7}
	s := a[2:5]
	describe("a[2:5]", s)
	describe("a[2:5:5]", a[2:5:5])
	describe("a[:0:3]", a[:0:3])
	describe("s[1:6]", s[1:6])
	describe("s[3:]", s[3:])
	describe("s[:cap]", s[:cap(s)])
	t := a[2:4:4]
	t = append(t, 100)
	t[0] = -2
	describe("t", t)
	fmt.Println(a)
	u := a[2:4:5]
	u = append(u, 200)
	describe("u", u)
	fmt.Println(a)
	p := &a
	describe("p[6:]", p[6:])
	describe("nil", []int(nil)[:0:0])
}
