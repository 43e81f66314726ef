// Go specification, "The zero value": every kind of variable starts at its zero value.

package main

import "fmt"

type Pt struct {
	X, Y int
	tag  string
	sub  struct{ on bool }
}

var (
	i  int
	f  float64
	c  complex128
	b  bool
	s  string
	p  *Pt
	sl []int
	m  map[string]int
	fn func()
	ch chan int
	e  error
	a  any
	ar [3]bool
	st Pt
	r  rune
)

func results() (n int, t string, err error, ps []Pt) { return }

func main() {
	fmt.Println(i, f, c, b, s == "", p == nil, sl == nil, m == nil, fn == nil, ch == nil, e == nil, a == nil, ar, st, r)
	fmt.Printf("%v %+v %#v\n", st, st, ar)
	fmt.Println(results())
	type T struct {
		i    int
		f    float64
		next *T
	}
	t1, t2 := new(T), T{}
	var t3 T
	fmt.Println(*t1 == t2, t2 == t3, t3)
	var local [2][2]Pt
	fmt.Println(local, local[1][1] == Pt{})
	for range 2 {
		var n int
		n++
		fmt.Print(n, " ")
	}
	fmt.Println()
}
