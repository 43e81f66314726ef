// Go specification, "Defer statements": a table of risky calls, each isolated by a deferred recover.

package main

import "fmt"

type result struct {
	name string
	val  int
	err  error
}

type cases []struct {
	name string
	f    func(xs []int) int
}

func run(cs cases, xs []int) (out []result) {
	for _, c := range cs {
		r := result{name: c.name}
		func() {
			defer func() {
				if p := recover(); p != nil {
					r.err = fmt.Errorf("%v", p)
				}
				out = append(out, r)
			}()
			r.val = c.f(xs)
		}()
	}
	return
}

func main() {
	cs := cases{
		{"first", func(xs []int) int { return xs[0] }},
		{"fourth", func(xs []int) int { return xs[3] }},
		{"mean", func(xs []int) (m int) {
			defer func() { m /= len(xs) }()
			for _, x := range xs {
				m += x
			}
			return
		}},
		{"half", func(xs []int) int { return xs[len(xs)/2:][0] }},
	}
	for _, xs := range [][]int{{4, 8, 6}, nil} {
		for _, r := range run(cs, xs) {
			fmt.Println(r.name, r.val, r.err)
		}
	}
}
