// Go specification, "Struct types": field order, multiple names, nested unnamed fields and method promotion.

package main

import "fmt"

type Unit struct {
	Symbol string `si:"yes"`
	_      struct{}
	Scale  float64 // dimensionless
}

type Reading struct {
	*Unit
	value float64
	meta  struct {
		by   string
		tags []string
	}
}

func (u *Unit) Format1(v float64) string { return fmt.Sprintf("%.3g %s", v*u.Scale, u.Symbol) }

func main() {
	u := &Unit{Symbol: "mL", Scale: 1000}
	r := Reading{Unit: u, value: 0.25}
	r.meta.by = "Ida"
	r.meta.tags = append(r.meta.tags, "wet", "warm")
	fmt.Println(r.Symbol, r.Scale, r.Format1(r.value))
	r.Scale = 10
	fmt.Println(u.Scale, r.meta)
	fmt.Printf("%v %+v\n", *u, *u)
	s := r
	s.Symbol = "dL"
	s.meta.tags[0] = "dry"
	s.meta.by = "Bo"
	fmt.Println(r.Symbol, r.meta, s.meta)
	defer func() { fmt.Println("nil embedded:", recover() != nil) }()
	fmt.Println(Reading{}.Symbol)
}
