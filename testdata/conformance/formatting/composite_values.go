// Go specification, "Package fmt in ordinary use": %v, %+v, %#v and %T of composite values.

package main

import "fmt"

type Inner struct {
	N int
	s string
}

type Outer struct {
	Inner
	P    *Inner
	M    map[string]int
	L    []Inner
	I    any
	E    error
	F    func()
	A    [2]bool
	Anon struct{ X, Y int }
}

func main() {
	o := Outer{Inner: Inner{1, "a"}, M: map[string]int{"z": 1, "a": 2}, L: []Inner{{2, "b"}}, I: 3.5}
	fmt.Printf("%v\n%+v\n", o, o)
	fmt.Printf("%#v\n", o)
	fmt.Printf("%v %+v %#v\n", &Inner{5, "p"}, &Inner{5, "p"}, &Inner{5, "p"})
	fmt.Printf("%v %#v %v %#v\n", []any{1, "a", nil}, []any{1, "a", nil, 2.0, 'x'}, map[int]bool{2: true, 1: false}, map[Inner]int{{1, "k"}: 2})
	fmt.Printf("%v %+v %#v\n", [][]int{{1}, nil, {}}, []*int{nil}, [][]int{{1}, nil})
	fmt.Printf("%T %T %T %T %T\n", o, &o, o.L, o.M, o.Anon)
	fmt.Printf("%T %T %T %T\n", o.I, o.E, o.F, []any{1})
	var np *Inner
	var ni any
	fmt.Printf("%v %+v %#v %v %#v\n", np, np, np, ni, ni)
	fmt.Printf("%#v %#v %#v %#v\n", struct{ A any }{1}, [2]string{"x"}, int8(3), uint(7))
	fmt.Printf("%v %v\n", &[]int{1}, &map[string]int{"a": 1})
}
