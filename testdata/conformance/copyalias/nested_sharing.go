// Go specification, "Assignment statements": which parts of a value are shared after assignment.

package main

import "fmt"

type Inner struct{ vals []int }
type Outer struct {
	arr   [2]Inner
	m     map[string]*Inner
	one   Inner
	ptr   *Inner
	iface any
}

func main() {
	a := Outer{arr: [2]Inner{{[]int{1}}, {[]int{2}}}, m: map[string]*Inner{"k": {[]int{3}}}, one: Inner{[]int{4}}, ptr: &Inner{[]int{5}}}
	a.iface = a.arr
	b := a
	b.arr[0].vals[0] = 10
	b.arr[1] = Inner{[]int{20}}
	b.m["k"].vals[0] = 30
	b.m["new"] = nil
	b.one.vals = append(b.one.vals, 40)
	b.ptr.vals = append(b.ptr.vals, 50)
	fmt.Println(a.arr, b.arr)
	fmt.Println(len(a.m), *a.m["k"], a.one, b.one, *a.ptr)
	fmt.Println(a.iface, a.iface.([2]Inner)[1])
	s := []Outer{a, b}
	for _, o := range s {
		o.one.vals[0] = -1
		o.one = Inner{}
	}
	fmt.Println(s[0].one, s[1].one, a.one)
	x := [][]int{{1, 2}, {3}}
	y := append([][]int(nil), x...)
	y[0][0] = 100
	y[1] = []int{7}
	fmt.Println(x, y)
	arr := [3]int{1, 2, 3}
	var boxed any = arr
	arr[0] = 9
	fmt.Println(boxed, arr, boxed == any(arr))
}
