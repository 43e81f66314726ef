// Go specification, "String types": placing words in a grid and finding them in eight directions.

package main

import (
	"fmt"
	"strings"
)

type grid [][]rune

func parse(s string) (g grid) {
	for _, l := range strings.Fields(s) {
		g = append(g, []rune(l))
	}
	return
}

func (g grid) at(r, c int) (rune, bool) {
	if r < 0 || r >= len(g) || c < 0 || c >= len(g[r]) {
		return 0, false
	}
	return g[r][c], true
}

func (g grid) find(word string) (r, c int, dir string) {
	dirs := []struct {
		name   string
		dr, dc int
	}{{"E", 0, 1}, {"S", 1, 0}, {"SE", 1, 1}, {"W", 0, -1}, {"N", -1, 0}, {"NE", -1, 1}, {"NW", -1, -1}, {"SW", 1, -1}}
	for r := range g {
		for c := range g[r] {
		next:
			for _, d := range dirs {
				for i, want := range []rune(word) {
					if got, ok := g.at(r+i*d.dr, c+i*d.dc); !ok || got != want {
						continue next
					}
				}
				return r, c, d.name
			}
		}
	}
	return -1, -1, ""
}

func main() {
	g := parse("ginxr oakum nyrem slowé")
	for _, w := range []string{"gin", "oak", "rum", "elm", "é", "mur", "kry", "gax"} {
		fmt.Print(w, " ")
		fmt.Println(g.find(w))
	}
}
