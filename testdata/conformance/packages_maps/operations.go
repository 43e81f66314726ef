// Go specification, "Qualified identifiers" (package maps): Keys, Values, Clone, Copy, Equal, DeleteFunc, Collect.

package main

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
)

type Stock map[string]int

func main() {
	m := Stock{"gin": 4, "rum": 0, "ale": 9}
	c := maps.Clone(m)
	c["gin"]++
	fmt.Println(m, c, maps.Equal(m, c))
	fmt.Printf("%T\n", c)
	fmt.Println(slices.Sorted(maps.Keys(m)), slices.Sorted(maps.Values(m)))
	maps.DeleteFunc(c, func(k string, v int) bool { return v == 0 || k == "ale" })
	fmt.Println(c)
	maps.Copy(c, map[string]int{"gin": 1, "port": 2})
	fmt.Println(c, len(c))
	inv := maps.Collect(func(yield func(int, string) bool) {
		for k, v := range m {
			if !yield(v, k) {
				return
			}
		}
	})
	fmt.Println(inv)
	maps.Insert(c, maps.All(map[string]int{"z": 26}))
	fmt.Println(c, maps.EqualFunc(m, map[string]string{"gin": "4", "rum": "0", "ale": "9"}, func(n int, s string) bool { return fmt.Sprint(n) == s }))
	total := 0
	for v := range maps.Values(m) {
		total += v
	}
	fmt.Println(total, maps.Clone(Stock(nil)) == nil)
	byLen := slices.SortedFunc(maps.Keys(c), func(a, b string) int { return cmp.Or(cmp.Compare(len(a), len(b)), cmp.Compare(a, b)) })
	fmt.Println(byLen)
}
