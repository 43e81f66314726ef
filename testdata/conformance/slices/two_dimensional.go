// Go specification, "Making slices": slices of slices sharing one backing array.

package main

import "fmt"

func grid(rows, cols int) [][]int {
	back := make([]int, rows*cols)
	g := make([][]int, rows)
	for i := range g {
		g[i], back = back[:cols:cols], back[cols:]
	}
	return g
}

func transpose(g [][]int) [][]int {
	t := grid(len(g[0]), len(g))
	for i, row := range g {
		for j, v := range row {
			t[j][i] = v
		}
	}
	return t
}

func main() {
	g := grid(2, 3)
	for i := range g {
		for j := range g[i] {
			g[i][j] = 10*i + j
		}
	}
	fmt.Println(g, transpose(g))
	alias := g[0]
	alias[1] = -1
	g[1] = alias
	g[1][2] = 99
	fmt.Println(g, len(g[1]), cap(g[1]))
	var tri [][]int
	for n := range 6 {
		row := make([]int, n+1)
		row[0], row[n] = 1, 1
		for k := 1; k < n; k++ {
			row[k] = tri[n-1][k-1] + tri[n-1][k]
		}
		tri = append(tri, row)
	}
	for _, r := range tri {
		fmt.Printf("%*s%v\n", 2*(6-len(r)), "", r)
	}
}
