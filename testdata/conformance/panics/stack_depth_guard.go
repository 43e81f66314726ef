// Go specification, "Run-time panics": a depth guard turns endless recursion into an error.

package main

import (
	"errors"
	"fmt"
)

type limitError struct{ depth int }

func (e limitError) Error() string { return fmt.Sprintf("deeper than %d", e.depth) }

type walker struct{ depth, limit, visits int }

func (w *walker) enter() func() {
	w.depth++
	w.visits++
	if w.depth > w.limit {
		panic(limitError{w.limit})
	}
	return func() { w.depth-- }
}

type graph map[string][]string

func (g graph) walk(w *walker, n string) {
	defer w.enter()()
	for _, m := range g[n] {
		g.walk(w, m)
	}
}

func (g graph) check(start string, limit int) (visits int, err error) {
	w := &walker{limit: limit}
	defer func() {
		visits = w.visits
		switch r := recover().(type) {
		case nil:
		case limitError:
			err = fmt.Errorf("from %s: %w", start, r)
		default:
			panic(r)
		}
	}()
	g.walk(w, start)
	return
}

func main() {
	g := graph{"a": {"b", "c"}, "b": {"c"}, "c": nil, "x": {"y"}, "y": {"x"}}
	for _, s := range []string{"a", "x", "none"} {
		n, err := g.check(s, 20)
		var le limitError
		tooDeep := errors.As(err, &le)
		fmt.Println(s, n, err, tooDeep, le.depth)
	}
}
