// Go specification, "Implementing an interface": any type with the methods satisfies it.

package main

import (
	"fmt"
	"math"
	"sort"
)

type Shape interface {
	Area() float64
	Perimeter() float64
}

type Rect struct{ w, h float64 }
type Circle float64
type Poly []float64

func (r Rect) Area() float64        { return r.w * r.h }
func (r Rect) Perimeter() float64   { return 2 * (r.w + r.h) }
func (c Circle) Area() float64      { return math.Pi * float64(c) * float64(c) }
func (c Circle) Perimeter() float64 { return 2 * math.Pi * float64(c) }
func (p Poly) Area() float64        { return 0 }
func (p Poly) Perimeter() (t float64) {
	for _, s := range p {
		t += s
	}
	return
}

func total(shapes ...Shape) (a, p float64) {
	for _, s := range shapes {
		a += s.Area()
		p += s.Perimeter()
	}
	return
}

func main() {
	shapes := []Shape{Rect{2, 3}, Circle(1), Poly{1, 2, 3}, &Rect{1, 1}}
	for _, s := range shapes[:3] {
		fmt.Printf("%T %.3f %.3f %v\n", s, s.Area(), s.Perimeter(), s)
	}
	a, p := total(shapes...)
	fmt.Printf("%.4f %.4f\n", a, p)
	sort.Slice(shapes, func(i, j int) bool { return shapes[i].Area() < shapes[j].Area() })
	for _, s := range shapes {
		fmt.Printf("%T ", s)
	}
	fmt.Println()
}
