// Go specification, "For statements with range clause": deleting during iteration; sorted keys for output.

package main

import (
	"fmt"
	"sort"
)

func sortedKeys[V any](m map[string]V) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	return keys
}

func main() {
	stock := map[string]int{"gin": 4, "rye": 0, "kümmel": 9, "pastis": 0, "mead": 1}
	for k, v := range stock {
		if v == 0 {
			delete(stock, k)
		}
	}
	fmt.Println(stock)
	for _, k := range sortedKeys(stock) {
		stock[k] *= 2
		fmt.Print(k, ":", stock[k], " ")
	}
	fmt.Println()
	n := 0
	for k := range stock {
		for j := range stock {
			delete(stock, j)
		}
		_ = k
		n++
	}
	fmt.Println(n, len(stock))
	sum := 0
	for _, v := range map[int]int{1: 10, 2: 20, 3: 30} {
		sum += v
	}
	fmt.Println(sum)
}
