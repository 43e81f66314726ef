// Go specification, "For statements with range clause": method values as iterators, with assignment forms.

package main

import "fmt"

type Stack[T any] struct{ items []T }

func (s *Stack[T]) Push(v ...T) { s.items = append(s.items, v...) }

func (s *Stack[T]) Backward(yield func(int, T) bool) {
	for i := len(s.items) - 1; i >= 0; i-- {
		if !yield(i, s.items[i]) {
			return
		}
	}
}

type Grid [2][3]int

func (g *Grid) Cells(yield func([2]int, *int) bool) {
	for y := range g {
		for x := range g[y] {
			if !yield([2]int{x, y}, &g[y][x]) {
				return
			}
		}
	}
}

func main() {
	var s Stack[string]
	s.Push("a", "b", "c")
	for i, v := range s.Backward {
		fmt.Print(i, v, " ")
	}
	var last string
	for _, last = range s.Backward {
	}
	fmt.Println(last)
	var g Grid
	for at, cell := range g.Cells {
		*cell = at[0] + 10*at[1]
	}
	fmt.Println(g)
	var fs []func() [2]int
	for at := range g.Cells {
		fs = append(fs, func() [2]int { at[0]++; return at })
	}
	fmt.Println(fs[0](), fs[0](), fs[5]())
}
