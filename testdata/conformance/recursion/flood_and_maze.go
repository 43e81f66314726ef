// Go specification, "Function declarations": flood fill and a shortest path in a maze.

package main

import (
	"fmt"
	"strings"
)

var maze = []string{
	"#########",
	"#S..#...#",
	"#.#.#.#.#",
	"#.#...#.#",
	"#.#####.#",
	"#......E#",
	"#########",
}

type pos struct{ r, c int }

var dirs = [...]pos{{0, 1}, {1, 0}, {0, -1}, {-1, 0}}

func fill(grid [][]byte, p pos) int {
	if grid[p.r][p.c] == '#' || grid[p.r][p.c] == '*' {
		return 0
	}
	grid[p.r][p.c] = '*'
	n := 1
	for _, d := range dirs {
		n += fill(grid, pos{p.r + d.r, p.c + d.c})
	}
	return n
}

func shortest(from, to pos) int {
	dist := map[pos]int{from: 0}
	for queue := []pos{from}; len(queue) > 0; queue = queue[1:] {
		p := queue[0]
		if p == to {
			return dist[p]
		}
		for _, d := range dirs {
			q := pos{p.r + d.r, p.c + d.c}
			if _, seen := dist[q]; !seen && maze[q.r][q.c] != '#' {
				dist[q] = dist[p] + 1
				queue = append(queue, q)
			}
		}
	}
	return -1
}

func main() {
	var grid [][]byte
	at := map[byte]pos{}
	for r, row := range maze {
		grid = append(grid, []byte(row))
		for _, b := range []byte("SE") {
			if c := strings.IndexByte(row, b); c >= 0 {
				at[b] = pos{r, c}
			}
		}
	}
	fmt.Println(at)
	fmt.Println(shortest(at['S'], at['E']), shortest(at['E'], at['E']))
	fmt.Println(fill(grid, at['S']))
	fmt.Println(string(grid[1]), string(grid[5]))
}
