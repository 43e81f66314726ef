// Go specification, "Conversions": to interface types, method sets and back by assertion.

package main

import "fmt"

type Volume float64

func (v Volume) String() string { return fmt.Sprintf("%.1f L", float64(v)) }

type Cask struct{ v Volume }

func (c *Cask) String() string { return "cask of " + c.v.String() }

func main() {
	var s fmt.Stringer = Volume(2)
	fmt.Println(s, s.(Volume) > 1)
	c := Cask{200}
	s = &c
	c.v = 150
	fmt.Println(s, s.(*Cask).v)
	a := any(s)
	_, isVol := a.(Volume)
	_, isStr := a.(fmt.Stringer)
	_, isErr := a.(error)
	fmt.Println(isVol, isStr, isErr)
	vs := []Volume{1, 2.25}
	as := make([]any, len(vs))
	for i, v := range vs {
		as[i] = v
	}
	fmt.Println(vs, as, c)
	fmt.Println((error)(nil) == nil, any((*Cask)(nil)) == nil)
}
