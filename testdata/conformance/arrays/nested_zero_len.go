// Go specification, "Length and capacity": array lengths are constants; nested arrays and zero sizes.

package main

import (
	"fmt"
	"strings"
)

type Grid [3][4]rune

func (g *Grid) Fill(r rune) {
	for y := range g {
		for x := range g[y] {
			g[y][x] = r
		}
	}
}

func (g Grid) String() string {
	var sb strings.Builder
	for _, row := range g {
		sb.WriteString(string(row[:]))
		sb.WriteByte('/')
	}
	return sb.String()
}

func main() {
	var g Grid
	const cells = len(g) * len(g[0])
	var flat [cells]int
	g.Fill('.')
	h := g
	g[1][2] = '#'
	fmt.Println(g, h, len(flat), g == h)
	var e [0]int
	var p *[5]string
	fmt.Println(len(e), e, len(p), e == [0]int{})
	for i := range p {
		fmt.Print(i)
	}
	fmt.Println()
	fmt.Printf("%T %T %T\n", g, e, p)
}
