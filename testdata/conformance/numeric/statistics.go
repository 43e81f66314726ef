// Go specification, "Floating-point operators": mean, variance, median and a histogram.

package main

import (
	"fmt"
	"math"
	"slices"
	"sort"
	"strings"
)

type Sample []float64

func (s Sample) Mean() (m float64) {
	for i, x := range s {
		m += (x - m) / float64(i+1)
	}
	return
}

func (s Sample) StdDev() float64 {
	m, ss := s.Mean(), 0.0
	for _, x := range s {
		ss += (x - m) * (x - m)
	}
	return math.Sqrt(ss / float64(len(s)-1))
}

func (s Sample) Median() float64 {
	t := append(Sample(nil), s...)
	sort.Float64s(t)
	if n := len(t); n%2 == 1 {
		return t[n/2]
	} else {
		return (t[n/2-1] + t[n/2]) / 2
	}
}

func (s Sample) Histogram(bins int) []int {
	lo, hi := slices.Min(s), slices.Max(s)
	h := make([]int, bins)
	for _, x := range s {
		i := int((x - lo) / (hi - lo) * float64(bins))
		h[min(i, bins-1)]++
	}
	return h
}

func main() {
	s := Sample{43.1, 42.8, 43.4, 44.0, 42.5, 43.2, 43.1, 45.2}
	fmt.Printf("%.4f %.4f %.2f\n", s.Mean(), s.StdDev(), s.Median())
	for i, n := range s.Histogram(4) {
		fmt.Println(i, strings.Repeat("#", n))
	}
	fmt.Println(s[:3].Median(), s)
}
