// Go specification, "Complex types": a small Mandelbrot set in letters.

package main

import (
	"fmt"
	"strings"
)

const (
	width, height = 44, 15
	limit         = 30
)

func escape(c complex128) int {
	z := 0i
	for n := range limit {
		if real(z)*real(z)+imag(z)*imag(z) > 4 {
			return n
		}
		z = z*z + c
	}
	return limit
}

func main() {
	for y := range height {
		var line [width]byte
		for x := range width {
			re := float64(x)/width*3 - 2.25
			im := (float64(y)+0.5)/height*2.5 - 1.25
			switch n := escape(complex(re, im)); {
			case n == limit:
				line[x] = '#'
			case n > 8:
				line[x] = '+'
			case n > 3:
				line[x] = '.'
			default:
				line[x] = ' '
			}
		}
		fmt.Println(strings.TrimRight(string(line[:]), " "))
	}
}
