// Go specification, "Qualified identifiers" (package sort): ranking sales with ties and medals.

package main

import (
	"fmt"
	"sort"
)

type sale struct {
	who    string
	litres float64
	region string
}

type by func(a, b sale) bool

func (f by) Sort(ss []sale) { sort.Stable(&sorter{ss, f}) }

type sorter struct {
	ss []sale
	f  by
}

func (s *sorter) Len() int           { return len(s.ss) }
func (s *sorter) Less(i, j int) bool { return s.f(s.ss[i], s.ss[j]) }
func (s *sorter) Swap(i, j int)      { s.ss[i], s.ss[j] = s.ss[j], s.ss[i] }

func main() {
	ss := []sale{{"Ida", 40, "north"}, {"Ben", 55.5, "south"}, {"Cleo", 40, "south"}, {"Dan", 12, "north"}}
	by(func(a, b sale) bool { return a.litres > b.litres }).Sort(ss)
	rank := 0
	for i, s := range ss {
		if i == 0 || s.litres != ss[i-1].litres {
			rank = i + 1
		}
		fmt.Printf("%d. %-5s %6.1f\n", rank, s.who, s.litres)
	}
	totals := map[string]float64{}
	for _, s := range ss {
		totals[s.region] += s.litres
	}
	regions := make([]string, 0, len(totals))
	for r := range totals {
		regions = append(regions, r)
	}
	sort.Slice(regions, func(i, j int) bool { return totals[regions[i]] > totals[regions[j]] })
	for _, r := range regions {
		fmt.Println(r, totals[r])
	}
	by(func(a, b sale) bool { return a.who < b.who }).Sort(ss)
	fmt.Println(ss)
}
