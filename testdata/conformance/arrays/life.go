// Go specification, "Array types": a small torus of cells, stepped by value.

package main

import "fmt"

const size = 6

type World [size][size]bool

func (w World) neighbours(y, x int) (n int) {
	for dy := -1; dy <= 1; dy++ {
		for dx := -1; dx <= 1; dx++ {
			if (dy != 0 || dx != 0) && w[(y+dy+size)%size][(x+dx+size)%size] {
				n++
			}
		}
	}
	return n
}

func (w World) Step() World {
	var next World
	for y := range w {
		for x := range w[y] {
			n := w.neighbours(y, x)
			next[y][x] = n == 3 || n == 2 && w[y][x]
		}
	}
	return next
}

func (w World) String() string {
	b := make([]byte, 0, size*(size+1))
	for _, row := range w {
		for _, c := range row {
			if c {
				b = append(b, '#')
			} else {
				b = append(b, '.')
			}
		}
		b = append(b, '\n')
	}
	return string(b)
}

func main() {
	var w World
	for _, p := range [][2]int{{0, 1}, {1, 2}, {2, 0}, {2, 1}, {2, 2}} {
		w[p[0]][p[1]] = true
	}
	start := w
	for gen := range 3 {
		fmt.Printf("gen %d\n%v", gen, w)
		w = w.Step()
	}
	for range 24 - 3 {
		w = w.Step()
	}
	fmt.Println(w == start)
}
