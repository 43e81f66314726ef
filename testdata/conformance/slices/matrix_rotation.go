// Go specification, "Slice types": rotating, flipping and convolving slices of slices.

package main

import (
	"fmt"
	"slices"
)

type Image [][]int

func (m Image) Rotate() Image {
	out := make(Image, len(m[0]))
	for c := range out {
		out[c] = make([]int, len(m))
		for r := range m {
			out[c][len(m)-1-r] = m[r][c]
		}
	}
	return out
}

func (m Image) FlipH() Image {
	out := make(Image, 0, len(m))
	for _, row := range m {
		r := slices.Clone(row)
		slices.Reverse(r)
		out = append(out, r)
	}
	return out
}

func (m Image) Blur() Image {
	out := make(Image, len(m))
	for r := range m {
		for c := range m[r] {
			sum, n := 0, 0
			for rr := max(0, r-1); rr <= min(len(m)-1, r+1); rr++ {
				for _, v := range m[rr][max(0, c-1):min(len(m[r]), c+2)] {
					sum += v
					n++
				}
			}
			out[r] = append(out[r], sum/n)
		}
	}
	return out
}

func main() {
	m := Image{{1, 2, 3}, {4, 5, 60}}
	fmt.Println(m.Rotate(), m.FlipH())
	fmt.Println(m.Rotate().Rotate().Rotate().Rotate(), m.Blur())
	n := m.FlipH()
	n[0][0] = -1
	fmt.Println(m[0], n[0])
	share := append(Image(nil), m...)
	share[1][1] = 0
	fmt.Println(m)
}
