// Go specification, "Struct types": assignment copies; pointers share; slices inside stay shared.

package main

import "fmt"

type Cask struct {
	id     string
	litres int
	fills  [3]int
	notes  []string
}

func top(c Cask) Cask { c.litres += 10; c.fills[0] = 1; c.notes[0] = "topped"; return c }

func topPtr(c *Cask) { c.litres += 10; c.fills[0] = 2 }

func main() {
	a := Cask{id: "A", litres: 190, notes: []string{"new"}}
	b := a
	b.id = "B"
	b.fills[2] = 9
	fmt.Println(a, b)
	c := top(a)
	fmt.Println(a, c)
	topPtr(&a)
	p, q := &a, &a
	p.litres++
	fmt.Println(q.litres, p == q, *p, b.notes)
	r := *p
	r.id = "R"
	fmt.Println(p.id, r.id)
	pp := &p
	(*pp).id = "PP"
	*pp = &b
	fmt.Println(a.id, p.id)
}
