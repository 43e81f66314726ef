// Go specification, "Package fmt in ordinary use": numbers in several bases and a bar chart.

package main

import (
	"fmt"
	"strings"
)

type Bar struct {
	label string
	value float64
}

func chart(bars []Bar, width int) (lines []string) {
	longest, peak := 0, 0.0
	for _, b := range bars {
		longest = max(longest, len([]rune(b.label)))
		peak = max(peak, b.value)
	}
	for _, b := range bars {
		n := int(b.value/peak*float64(width) + 0.5)
		lines = append(lines, fmt.Sprintf("%-*s |%-*s| %6.2f", longest, b.label, width, strings.Repeat("█", n), b.value))
	}
	return
}

func main() {
	fmt.Printf("%4s %9s %4s %4s %3s\n", "dec", "bin", "oct", "hex", "chr")
	for n := 64; n < 70; n++ {
		fmt.Printf("%4d %9b %4o %4x %3c\n", n, n, n, n, n)
	}
	for _, l := range chart([]Bar{{"heads", 4.5}, {"hearts", 31.25}, {"tails", 12}, {"é", 0.1}}, 20) {
		fmt.Println(l)
	}
	fmt.Printf("%v %v\n", Bar{"x", 1}, []Bar{{"y", 2.5}})
	fmt.Printf("|%7.2f|%-7.2f|%07.2f|%+.1e|%6.1f%%|\n", 3.14159, 3.14159, 3.14159, 31415.9, 99.5)
}
