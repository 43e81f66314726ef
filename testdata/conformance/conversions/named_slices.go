// Go specification, "Assignability": named and unnamed slice, map and function types.

package main

import (
	"fmt"
	"slices"
)

type Temps []float64
type Stock map[string]int
type Op func(int, int) int
type Celsius float64

func mean(xs []float64) float64 {
	var t float64
	for _, x := range xs {
		t += x
	}
	return t / float64(len(xs))
}

func (t Temps) Max() float64 { return slices.Max(t) }

func main() {
	var t Temps = []float64{18, 20.5, 19}
	var plain []float64 = t
	plain[0] = 30
	fmt.Println(mean(t), t.Max(), Temps(plain).Max())
	var st Stock = map[string]int{"gin": 4}
	m := map[string]int(st)
	m["gin"]++
	fmt.Println(st)
	var op Op = func(a, b int) int { return a*10 + b }
	g := (func(int, int) int)(op)
	fmt.Println(g(1, 2), op(3, 4))
	cs := []Celsius{20, 21}
	fmt.Println(float64(cs[0])+0.5, cs)
	fmt.Printf("%T %T %T %T\n", t, plain, st, op)
}
