// Go specification, "Function declarations": dynamic programming tables and shortest routes.

package main

import (
	"fmt"
	"math"
)

type item struct {
	name          string
	litres, worth int
}

func knapsack(items []item, room int) (best int, chosen []string) {
	table := make([][]int, len(items)+1)
	for i := range table {
		table[i] = make([]int, room+1)
	}
	for i, it := range items {
		for w := range room + 1 {
			table[i+1][w] = table[i][w]
			if it.litres <= w {
				table[i+1][w] = max(table[i][w], table[i][w-it.litres]+it.worth)
			}
		}
	}
	w := room
	for i := len(items); i > 0; i-- {
		if table[i][w] != table[i-1][w] {
			chosen = append(chosen, items[i-1].name)
			w -= items[i-1].litres
		}
	}
	return table[len(items)][room], chosen
}

const inf = math.MaxInt / 2

func floyd(d [][]int) {
	for k := range d {
		for i := range d {
			for j := range d {
				d[i][j] = min(d[i][j], d[i][k]+d[k][j])
			}
		}
	}
}

func main() {
	fmt.Println(knapsack([]item{{"port", 3, 40}, {"rum", 4, 50}, {"ale", 5, 10}, {"gin", 2, 35}}, 7))
	d := [][]int{{0, 3, inf, 7}, {8, 0, 2, inf}, {5, inf, 0, 1}, {2, inf, inf, 0}}
	floyd(d)
	for _, row := range d {
		fmt.Println(row)
	}
}
