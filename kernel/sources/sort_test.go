package sources_test

import (
	"cmp"
	"fmt"
	"math"
	"math/bits"
	"math/rand/v2"
	"slices"
	"strconv"
	"testing"

	own "swanneck/kernel/sources/_src/slices"
)

type item struct{ key, at int }

func byKey(a, b item) int { return cmp.Compare(a.key, b.key) }

// shaped returns keys in one of the orders that sorting algorithms find hard or easy.
func shaped(r *rand.Rand, n int) []item {
	s := make([]item, n)
	shape, keys := r.IntN(6), 1+r.IntN(2*n+1)
	for i := range s {
		k := r.IntN(keys)
		switch shape {
		case 1:
			k = i
		case 2:
			k = -i
		case 3:
			k = i % keys
		case 4:
			k = min(i, n-i)
		case 5:
			k = i + r.IntN(3)
		}
		s[i] = item{k, i}
	}
	return s
}

func shuffledFloats(r *rand.Rand, n int) []float64 {
	s := make([]float64, r.IntN(n))
	for i := range s {
		if s[i] = float64(r.IntN(n)); r.IntN(10) == 0 {
			s[i] = math.NaN()
		}
	}
	return s
}

func (x in) sorting(n int) {
	onCopies(x.t1, "Sort", shuffledFloats(x.rand, n), func(s []float64) any { own.Sort(s); return s }, func(s []float64) any { slices.Sort(s); return s })
	items := shaped(x.rand, x.rand.IntN(n))
	var keys []int
	var names []string
	for _, v := range items {
		keys, names = append(keys, v.key), append(names, strconv.Itoa(v.key))
	}
	onCopies(x.t1, "Sort", keys, func(s []int) any { own.Sort(s); return s }, func(s []int) any { slices.Sort(s); return s })
	onCopies(x.t1, "Sort", names, func(s []string) any { own.Sort(s); return s }, func(s []string) any { slices.Sort(s); return s })
}

// keysOf shows the keys in order, and that no item was lost.
func keysOf(s []item) any {
	var keys []int
	for _, v := range s {
		keys = append(keys, v.key)
	}
	all := slices.Clone(s)
	slices.SortFunc(all, func(a, b item) int { return a.at - b.at })
	return []any{keys, all}
}

func (x in) sortingFunc(n int) {
	s := shaped(x.rand, x.rand.IntN(n))
	a, b := twin(s), twin(s)
	own.SortFunc(a, byKey)
	slices.SortFunc(b, byKey)
	compare(x.t1, fmt.Sprint("SortFunc ", s), func() any { return keysOf(a) }, func() any { return keysOf(b) })
}

func (x in) sortingStable(n int) {
	onCopies(x.t1, "SortStableFunc", shaped(x.rand, x.rand.IntN(n)), func(s []item) any { own.SortStableFunc(s, byKey); return s },
		func(s []item) any { slices.SortStableFunc(s, byKey); return s })
}

func (x in) sorted() {
	x.floats("Sorted", func(s []float64) any { return own.Sorted(plainZeros(s)) }, func(s []float64) any { return slices.Sorted(plainZeros(s)) })
}

// plainZeros gives the values without minus zero, for the order of the two zeros is anyone's.
func plainZeros(s []float64) func(func(float64) bool) {
	return func(yield func(float64) bool) {
		for _, v := range s {
			if !yield(v + 0) {
				return
			}
		}
	}
}

func (x in) sortedFunc() {
	s := shaped(x.rand, x.rand.IntN(40))
	compare(x.t1, fmt.Sprint("SortedFunc ", s), func() any { return keysOf(own.SortedFunc(slices.Values(s), byKey)) },
		func() any { return keysOf(slices.SortedFunc(slices.Values(s), byKey)) })
	x.both("SortedFunc", func(s []int) any { return own.SortedFunc(slices.Values(s), diff) }, func(s []int) any { return slices.SortedFunc(slices.Values(s), diff) })
}

func (x in) sortedStable() {
	s := shaped(x.rand, x.rand.IntN(40))
	onCopies(x.t1, "SortedStableFunc", s, func(s []item) any { return own.SortedStableFunc(slices.Values(s), byKey) },
		func(s []item) any { return slices.SortedStableFunc(slices.Values(s), byKey) })
}

// Merging sorted runs takes at most n comparisons a level; finding places by halving in runs of 16 fewer than 5 an element.
func TestSortCalls(t *testing.T) {
	r := rng()
	for range 60 {
		n := 1 + r.IntN(5000)
		s := shaped(r, n)
		calls := 0
		own.SortFunc(s, func(a, b item) int { calls++; return byKey(a, b) })
		if limit := n * (bits.Len(uint(n)) + 2); calls > limit {
			t.Errorf("sorting %d items took %d comparisons; n log n allows %d", n, calls, limit)
		}
	}
}

// A panic in the comparison, or an inconsistent one, loses no element.
func TestSortLosesNothing(t *testing.T) {
	r := rng()
	for range 300 {
		s := shaped(r, 1+r.IntN(200))
		want := fmt.Sprint(s)
		left := r.IntN(1200)
		stopped := outcome(func() any {
			own.SortStableFunc(s, func(a, b item) int {
				if left--; left < 0 {
					panic("enough")
				}
				return r.IntN(3) - 1
			})
			return nil
		})
		slices.SortFunc(s, func(a, b item) int { return a.at - b.at })
		if got := fmt.Sprint(s); got != want {
			t.Fatalf("after a comparison without order (%s) the items are %s; want those of %s", stopped, got, want)
		}
	}
}

func TestGrowTooLarge(t *testing.T) {
	for _, n := range []int{math.MaxInt, math.MaxInt - 1, math.MaxInt / 2} {
		for _, grow := range []func(){
			func() { _ = own.Grow([]int{1, 2}, n) }, func() { _ = slices.Grow([]int{1, 2}, n) },
		} {
			got := outcome(func() any { grow(); return nil })
			if !slices.Contains([]string{"panic runtime.errorString runtime error: growslice: len out of range",
				"panic runtime.errorString runtime error: makeslice: len out of range",
				"panic runtime.errorString runtime error: makeslice: cap out of range"}, got) {
				t.Errorf("Grow by %d: %s; want a run-time error", n, got)
			}
		}
	}
	if got := outcome(func() any { _ = own.Grow(make([]struct{}, 3), math.MaxInt); return nil }); got == "<nil>" {
		t.Error("Grow by the greatest int of 3 empty structs gave no panic: there is no such length")
	}
}
