// Go specification, "Struct types": embedding an interface and overriding one method.

package main

import (
	"fmt"
	"sort"
)

type Gauge interface {
	Read() float64
	Unit() string
}

type thermo struct{ c float64 }

func (t thermo) Read() float64 { return t.c }
func (t thermo) Unit() string  { return "°C" }

type fahrenheit struct{ Gauge }

func (f fahrenheit) Read() float64 { return f.Gauge.Read()*9/5 + 32 }
func (f fahrenheit) Unit() string  { return "°F" }

type calibrated struct {
	Gauge
	offset float64
}

func (c calibrated) Read() float64 { return c.Gauge.Read() + c.offset }

func show(g Gauge) { fmt.Printf("%.2f %s %T\n", g.Read(), g.Unit(), g) }

type reverse struct{ sort.Interface }

func (r reverse) Less(i, j int) bool { return r.Interface.Less(j, i) }

func main() {
	t := thermo{20}
	show(t)
	show(fahrenheit{t})
	show(calibrated{t, 0.5})
	show(fahrenheit{calibrated{t, 1}})
	xs := []int{3, 1, 2}
	sort.Sort(reverse{sort.IntSlice(xs)})
	fmt.Println(xs)
	defer func() { fmt.Println("nil interface:", recover() != nil) }()
	show(calibrated{})
}
