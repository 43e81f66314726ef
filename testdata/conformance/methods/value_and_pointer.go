// Go specification, "Method declarations": value receivers copy, pointer receivers share.

package main

import (
	"fmt"
	"math"
)

type Vec struct{ x, y float64 }

func (v Vec) Add(w Vec) Vec         { v.x += w.x; v.y += w.y; return v }
func (v *Vec) Scale(k float64) *Vec { v.x *= k; v.y *= k; return v }
func (v Vec) Len() float64          { return math.Hypot(v.x, v.y) }
func (v Vec) String() string        { return fmt.Sprintf("<%g %g>", v.x, v.y) }

type Path []Vec

func (p Path) Length() (total float64) {
	for i := 1; i < len(p); i++ {
		total += Vec{p[i].x - p[i-1].x, p[i].y - p[i-1].y}.Len()
	}
	return
}

func (p *Path) Extend(v ...Vec) { *p = append(*p, v...) }
func (p Path) Shift(d Vec) {
	for i := range p {
		p[i] = p[i].Add(d)
	}
}

func main() {
	v := Vec{3, 4}
	w := v.Add(Vec{1, 1})
	v.Scale(2).Scale(0.5).Scale(10)
	fmt.Println(v, w, w.Len() > v.Len(), Vec{3, 4}.Len())
	var p Path
	p.Extend(Vec{}, Vec{3, 4}, Vec{3, 10})
	fmt.Println(p, p.Length())
	p.Shift(Vec{1, 1})
	fmt.Println(p, p.Length())
	pv := &p[1]
	pv.Scale(0)
	fmt.Println(p)
}
