// Go specification, "Selectors": the shallowest field wins; equal depth must be qualified.

package main

import "fmt"

type A struct{ v, a int }
type B struct{ v, b int }
type C struct {
	A
	B
	c int
}
type D struct {
	C
	v string
}

func (A) Who() string { return "A" }
func (B) Who() string { return "B" }
func (C) Who() string { return "C" }
func (A) Only() int   { return 1 }

func main() {
	d := D{C{A{1, 2}, B{3, 4}, 5}, "six"}
	fmt.Println(d.v, d.A.v, d.B.v, d.a, d.b, d.c)
	fmt.Println(d.Who(), d.A.Who(), d.C.B.Who(), d.Only())
	d.a, d.B.v = 20, 30
	fmt.Printf("%v\n%+v\n", d, d)
	pd := &d
	pd.b *= 10
	c := pd.C
	c.b = 0
	fmt.Println(d.b, c.b, pd.C == c)
	f := D.Only
	g := (*D).Who
	fmt.Println(f(d), g(pd))
}
