// Go specification, "Qualified identifiers" (packages maps, slices): grouping, inverting and merging counts.

package main

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"time"
)

type Visit struct {
	guest string
	day   time.Weekday
	spend int
}

func group[K comparable, V any](vs []V, key func(V) K) map[K][]V {
	m := map[K][]V{}
	for _, v := range vs {
		m[key(v)] = append(m[key(v)], v)
	}
	return m
}

func keys[M ~map[K]V, K cmp.Ordered, V any](m M) []K { return slices.Sorted(maps.Keys(m)) }

func main() {
	vs := []Visit{{"Ida", time.Friday, 12}, {"Ben", time.Monday, 30}, {"Ida", time.Monday, 8}, {"Cy", time.Friday, 5}}
	byDay := group(vs, func(v Visit) time.Weekday { return v.day })
	for _, d := range keys(byDay) {
		sum := 0
		for _, v := range byDay[d] {
			sum += v.spend
		}
		fmt.Println(d, len(byDay[d]), sum, byDay[d])
	}
	byGuest := group(vs, func(v Visit) string { return v.guest })
	fmt.Println(keys(byGuest))
	best := slices.MaxFunc(keys(byGuest), func(a, b string) int { return cmp.Compare(len(byGuest[a]), len(byGuest[b])) })
	fmt.Println(best, byGuest[best])
}
