package sources_test

import (
	"fmt"
	"go/types"
	"math/rand/v2"
	"testing"
)

// The tests of behaviour run our function and the standard library's on equal inputs and compare all that can be seen:
// results, panics, calls of the functions passed in, and the whole memory behind the slices.
// Source: the standard library of the Go that runs the test.

// rounds is how many random inputs each function gets.
const rounds = 400

func rng() *rand.Rand { return rand.New(rand.NewPCG(1, 2)) }

// outcome describes what a call did: result or panic. %#v tells nil from empty.
func outcome(call func() any) (s string) {
	defer func() {
		if r := recover(); r != nil {
			s = fmt.Sprintf("panic %T %v", r, r)
		}
	}()
	return fmt.Sprintf("%#v", call())
}

// compare reports a difference between our outcome and the real one.
func compare(t *testing.T, call string, ours, real func() any) {
	t.Helper()
	if got, want := outcome(ours), outcome(real); got != want {
		t.Errorf("%s = %s; the standard library gives %s", call, got, want)
	}
}

// onCopies is compare for functions that change a slice: each gets a copy, and the memory is compared too.
func onCopies[E any](t *testing.T, call string, s []E, ours, real func([]E) any) {
	t.Helper()
	a, b := twin(s), twin(s)
	with := func(f func([]E) any, s []E) func() any {
		return func() any {
			r := outcome(func() any { return f(s) })
			return []any{r, s[:cap(s)]}
		}
	}
	compare(t, fmt.Sprintf("%s of %#v in %#v", call, s, s[:cap(s)]), with(ours, a), with(real, b))
}

// twin copies a slice with all its memory.
func twin[E any](s []E) []E {
	if s == nil {
		return nil
	}
	c := make([]E, cap(s))
	copy(c, s[:cap(s)])
	return c[:len(s)]
}

// randomSlice returns a slice, sometimes nil, of values made by one, with values behind its end too.
func randomSlice[E any](r *rand.Rand, maxLen int, one func() E) []E {
	if r.IntN(10) == 0 {
		return nil
	}
	n := r.IntN(maxLen + 1)
	s := make([]E, n+r.IntN(8))
	for i := range s {
		s[i] = one()
	}
	return s[:n]
}

// allTested reports exported functions of a package that have no case.
func allTested[C any](t *testing.T, path string, cases map[string]C) {
	t.Helper()
	p, err := chain{}.Import(path)
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	for _, name := range p.Scope().Names() {
		o := p.Scope().Lookup(name)
		if _, isFunc := o.(*types.Func); !isFunc || !o.Exported() {
			continue
		}
		n++
		if _, ok := cases[name]; !ok {
			t.Errorf("%s.%s has no test", path, name)
		}
	}
	if n == 0 || n != len(cases) {
		t.Errorf("%s has %d functions and %d tests", path, n, len(cases))
	}
}
