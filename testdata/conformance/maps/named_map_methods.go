// Go specification, "Map types": methods on named maps, nested updates and functions as values.

package main

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
)

type Matrix map[[2]int]float64

func (m Matrix) Add(n Matrix) Matrix {
	out := Matrix{}
	for _, x := range []Matrix{m, n} {
		for k, v := range x {
			if out[k] += v; out[k] == 0 {
				delete(out, k)
			}
		}
	}
	return out
}

func (m Matrix) Mul(n Matrix) Matrix {
	out := make(Matrix)
	for a, v := range m {
		for b, w := range n {
			if a[1] == b[0] {
				out[[2]int{a[0], b[1]}] += v * w
			}
		}
	}
	return out
}

type Handlers map[string]func(...string) string

func (h Handlers) Run(cmd string) string {
	f := strings.Fields(cmd)
	if fn, ok := h[f[0]]; ok {
		return fn(f[1:]...)
	}
	return "unknown " + f[0]
}

func main() {
	a := Matrix{{0, 0}: 1, {0, 1}: 2}
	b := Matrix{{1, 0}: 3, {0, 0}: -1}
	fmt.Println(a.Add(b), a.Mul(b), len(Matrix{}.Add(nil)))
	h := Handlers{"join": func(s ...string) string { return strings.Join(s, "+") }}
	h["len"] = func(s ...string) string { return strconv.Itoa(len(s)) }
	h["help"] = func(...string) string { return fmt.Sprint(slices.Sorted(maps.Keys(h))) }
	for _, c := range []string{"join a b c", "len", "help me", "quit"} {
		fmt.Println(h.Run(c))
	}
}
