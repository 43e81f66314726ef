// Go specification, "Interface types": sort.Interface and heap.Interface on own types.

package main

import (
	"fmt"
	"sort"
)

type Bottle struct {
	name string
	abv  float64
	year int
}

type byABV []Bottle

func (b byABV) Len() int           { return len(b) }
func (b byABV) Less(i, j int) bool { return b[i].abv < b[j].abv }
func (b byABV) Swap(i, j int)      { b[i], b[j] = b[j], b[i] }

type lessFunc func(a, b *Bottle) bool
type multi struct {
	items []Bottle
	less  []lessFunc
}

func (m *multi) Len() int      { return len(m.items) }
func (m *multi) Swap(i, j int) { m.items[i], m.items[j] = m.items[j], m.items[i] }
func (m *multi) Less(i, j int) bool {
	a, b := &m.items[i], &m.items[j]
	for _, f := range m.less {
		switch {
		case f(a, b):
			return true
		case f(b, a):
			return false
		}
	}
	return false
}

func main() {
	bs := []Bottle{{"ash", 43, 2021}, {"fir", 40, 2020}, {"elm", 43, 2019}, {"oak", 58.5, 2020}}
	sort.Sort(byABV(bs))
	fmt.Println(bs[0], bs[3])
	sort.Sort(sort.Reverse(byABV(bs)))
	fmt.Println(bs[0].name, bs[3].name)
	year := func(a, b *Bottle) bool { return a.year < b.year }
	name := func(a, b *Bottle) bool { return a.name > b.name }
	sort.Sort(&multi{bs, []lessFunc{year, name}})
	fmt.Println(bs)
	fmt.Println(sort.IsSorted(byABV(bs)), sort.IsSorted(byABV(bs[:1])))
}
