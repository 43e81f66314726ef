// Go specification, "For statements with range clause": integer ranges building a frequency table.

package main

import "fmt"

type Die int

func sums(d1, d2 Die) map[int]int {
	m := map[int]int{}
	for a := range d1 {
		for b := range d2 {
			m[int(a+b)+2]++
		}
	}
	return m
}

func main() {
	m := sums(4, 6)
	fmt.Println(m)
	for s := range 11 {
		if n, ok := m[s]; ok {
			fmt.Printf("%2d %s\n", s, "######"[:n])
		}
	}
	total := 0
	for i := range 10 {
		if i%2 == 0 {
			continue
		}
		total += i
	}
	fmt.Println(total)
	var seed uint32 = 7
	counts := [6]int{}
	for range 600 {
		seed = seed*1664525 + 1013904223
		counts[seed>>16%6]++
	}
	fmt.Println(counts)
}
