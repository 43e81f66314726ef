// Go specification, "Map types": memoised counting of paths in a graph held as a map of slices.

package main

import (
	"fmt"
	"sort"
)

type Graph map[string][]string

func (g Graph) paths(from, to string, memo map[string]int) int {
	if from == to {
		return 1
	}
	if n, ok := memo[from]; ok {
		return n
	}
	n := 0
	for _, next := range g[from] {
		n += g.paths(next, to, memo)
	}
	memo[from] = n
	return n
}

func (g Graph) order() (out []string) {
	seen := map[string]bool{}
	var visit func(string)
	visit = func(n string) {
		if seen[n] {
			return
		}
		seen[n] = true
		for _, m := range g[n] {
			visit(m)
		}
		out = append([]string{n}, out...)
	}
	names := []string{}
	for n := range g {
		names = append(names, n)
	}
	sort.Strings(names)
	for _, n := range names {
		visit(n)
	}
	return
}

func main() {
	g := Graph{"mash": {"wash", "feed"}, "wash": {"low", "feed"}, "low": {"spirit", "feed"}, "spirit": {"cask"}, "feed": {"cask"}}
	memo := map[string]int{}
	fmt.Println(g.paths("mash", "cask", memo))
	fmt.Println(memo)
	fmt.Println(g.order())
}
