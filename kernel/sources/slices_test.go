package sources_test

import (
	"fmt"
	"iter"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	own "swanneck/kernel/sources/_src/slices"
)

type ints []int

type in struct {
	s, t  []int
	f     []float64
	i, j  int
	v, n  int
	rand  *rand.Rand
	t1    *testing.T
	limit int // how many values a consumer takes
}

func (x in) both(name string, ours, real func(s []int) any) {
	x.t1.Helper()
	onCopies(x.t1, fmt.Sprintf("%s(i %d, j %d, v %d, n %d, t %v)", name, x.i, x.j, x.v, x.n, x.t), x.s, ours, real)
}

func (x in) floats(name string, ours, real func(s []float64) any) {
	x.t1.Helper()
	onCopies(x.t1, fmt.Sprintf("%s(i %d)", name, x.i), x.f, ours, real)
}

// logged keeps the calls of a function of two values beside a result.
func logged[R any](f func(a, b int) R) (func(a, b int) R, *[]string) {
	var log []string
	return func(a, b int) R {
		log = append(log, fmt.Sprint(a, " ", b))
		return f(a, b)
	}, &log
}

func diff(a, b int) int      { return a - b }
func near(a, b int) bool     { return a-b < 2 && b-a < 2 } // not transitive
func sameTens(a, b int) bool { return a/2 == b/2 }

// taken drains a sequence, up to a number of values, and says what came.
func taken[E any](seq iter.Seq[E], limit int) []string {
	var out []string
	for v := range seq {
		out = append(out, fmt.Sprintf("%#v", v))
		if len(out) > limit {
			break
		}
	}
	return out
}

func taken2[E any](seq iter.Seq2[int, E], limit int) []string {
	var out []string
	for i, v := range seq {
		out = append(out, fmt.Sprintf("%d %#v", i, v))
		if len(out) > limit {
			break
		}
	}
	return out
}

// slicesCases holds a comparison for each function.
var slicesCases = map[string]func(in){
	"All": func(x in) {
		x.both("All", func(s []int) any { return taken2(own.All(s), x.limit) }, func(s []int) any { return taken2(slices.All(s), x.limit) })
	},
	"AppendSeq": func(x in) {
		x.both("AppendSeq", func(s []int) any { return own.AppendSeq(s, slices.Values(x.t)) },
			func(s []int) any { return slices.AppendSeq(s, slices.Values(x.t)) })
	},
	"Backward": func(x in) {
		x.both("Backward", func(s []int) any { return taken2(own.Backward(s), x.limit) }, func(s []int) any { return taken2(slices.Backward(s), x.limit) })
	},
	"BinarySearch": func(x in) {
		slices.Sort(x.f)
		for _, v := range append(x.f, math.NaN(), 2, 2.5, -1, 99) {
			x.floats(fmt.Sprint("BinarySearch ", v), func(s []float64) any { i, ok := own.BinarySearch(s, v); return fmt.Sprint(i, ok) },
				func(s []float64) any { i, ok := slices.BinarySearch(s, v); return fmt.Sprint(i, ok) })
		}
	},
	"BinarySearchFunc": func(x in) {
		slices.Sort(x.s)
		f := func(a int, b string) int { return a - len(b) }
		target := "xxxxxxxx"[:x.v]
		x.both("BinarySearchFunc", func(s []int) any { i, ok := own.BinarySearchFunc(s, target, f); return fmt.Sprint(i, ok) },
			func(s []int) any { i, ok := slices.BinarySearchFunc(s, target, f); return fmt.Sprint(i, ok) })
	},
	"Chunk": func(x in) {
		pieces := func(seq iter.Seq[ints]) []string {
			var out []string
			for p := range seq {
				out = append(out, fmt.Sprint(p, len(p), cap(p)))
				if len(out) > x.limit {
					break
				}
			}
			return out
		}
		x.both("Chunk", func(s []int) any { return pieces(own.Chunk(ints(s), x.n)) }, func(s []int) any { return pieces(slices.Chunk(ints(s), x.n)) })
		x.both("Chunk not drained", func(s []int) any { _ = own.Chunk(s, x.n); return nil }, func(s []int) any { _ = slices.Chunk(s, x.n); return nil })
	},
	"Clip": func(x in) {
		x.both("Clip", func(s []int) any { r := own.Clip(ints(s)); return []any{r, cap(r)} },
			func(s []int) any { r := slices.Clip(ints(s)); return []any{r, cap(r)} })
	},
	"Clone": func(x in) {
		x.both("Clone", func(s []int) any { return changed(own.Clone(ints(s))) }, func(s []int) any { return changed(slices.Clone(ints(s))) })
	},
	"Collect": func(x in) {
		x.both("Collect", func(s []int) any { return own.Collect(slices.Values(s)) }, func(s []int) any { return slices.Collect(slices.Values(s)) })
	},
	"Compact": func(x in) {
		x.both("Compact", func(s []int) any { r := own.Compact(ints(s)); return []any{r, cap(r)} },
			func(s []int) any { r := slices.Compact(ints(s)); return []any{r, cap(r)} })
		x.floats("Compact", func(s []float64) any { return own.Compact(s) }, func(s []float64) any { return slices.Compact(s) })
	},
	"CompactFunc": func(x in) {
		for _, eq := range []func(a, b int) bool{near, sameTens} {
			x.both("CompactFunc", func(s []int) any { f, log := logged(eq); return []any{own.CompactFunc(ints(s), f), *log} },
				func(s []int) any { f, log := logged(eq); return []any{slices.CompactFunc(ints(s), f), *log} })
		}
	},
	"Compare": func(x in) {
		x.both("Compare", func(s []int) any { return own.Compare(s, x.t) }, func(s []int) any { return slices.Compare(s, x.t) })
		for _, g := range [][]float64{x.f, x.f[:len(x.f)/2], {math.NaN()}, {0, 1}, nil} {
			x.floats("Compare", func(s []float64) any { return own.Compare(s, g) }, func(s []float64) any { return slices.Compare(s, g) })
			x.floats("Compare", func(s []float64) any { return own.Compare(g, s) }, func(s []float64) any { return slices.Compare(g, s) })
		}
	},
	"CompareFunc": func(x in) {
		x.both("CompareFunc", func(s []int) any { f, log := logged(diff); return []any{own.CompareFunc(s, x.t, f), *log} },
			func(s []int) any { f, log := logged(diff); return []any{slices.CompareFunc(s, x.t, f), *log} })
	},
	"Concat": func(x in) {
		x.both("Concat", func(s []int) any { return changed(own.Concat(s, x.t, s)) }, func(s []int) any { return changed(slices.Concat(s, x.t, s)) })
		x.both("Concat", func(s []int) any { return own.Concat([]int{}, s) }, func(s []int) any { return slices.Concat([]int{}, s) })
		x.both("Concat", func(s []int) any { return own.Concat[ints]() }, func(s []int) any { return slices.Concat[ints]() })
		endless := make([]struct{}, math.MaxInt)
		x.both("Concat", func(s []int) any { return own.Concat(endless, endless) }, func(s []int) any { return slices.Concat(endless, endless) })
	},
	"Contains": func(x in) {
		x.both("Contains", func(s []int) any { return own.Contains(s, x.v) }, func(s []int) any { return slices.Contains(s, x.v) })
		x.floats("Contains", func(s []float64) any { return own.Contains(s, math.NaN()) }, func(s []float64) any { return slices.Contains(s, math.NaN()) })
	},
	"ContainsFunc": func(x in) {
		is := func(a int) bool { return near(a, x.v) }
		x.both("ContainsFunc", func(s []int) any { return own.ContainsFunc(s, is) }, func(s []int) any { return slices.ContainsFunc(s, is) })
	},
	"Delete": func(x in) {
		x.both("Delete", func(s []int) any { r := own.Delete(ints(s), x.i, x.j); return []any{r, cap(r)} },
			func(s []int) any { r := slices.Delete(ints(s), x.i, x.j); return []any{r, cap(r)} })
	},
	"DeleteFunc": func(x in) {
		is := func(a int) bool { return near(a, x.v) }
		x.both("DeleteFunc", func(s []int) any { r := own.DeleteFunc(ints(s), is); return []any{r, cap(r)} },
			func(s []int) any { r := slices.DeleteFunc(ints(s), is); return []any{r, cap(r)} })
	},
	"Equal": func(x in) {
		for _, o := range [][]int{x.t, x.s, slices.Clone(x.s), {}, nil} {
			x.both("Equal", func(s []int) any { return own.Equal(s, o) }, func(s []int) any { return slices.Equal(s, o) })
		}
		x.floats("Equal", func(s []float64) any { return own.Equal(s, s) }, func(s []float64) any { return slices.Equal(s, s) })
	},
	"EqualFunc": func(x in) {
		for _, o := range [][]int{x.t, x.s, slices.Clone(x.s), {}, nil} {
			x.both("EqualFunc", func(s []int) any { f, log := logged(near); return []any{own.EqualFunc(s, o, f), *log} },
				func(s []int) any { f, log := logged(near); return []any{slices.EqualFunc(s, o, f), *log} })
		}
	},
	"Grow": func(x in) {
		x.both("Grow", func(s []int) any { return grown(s, own.Grow(ints(s), x.n), x.n) },
			func(s []int) any { return grown(s, slices.Grow(ints(s), x.n), x.n) })
	},
	"Index": func(x in) {
		x.both("Index", func(s []int) any { return own.Index(s, x.v) }, func(s []int) any { return slices.Index(s, x.v) })
		x.floats("Index", func(s []float64) any { return own.Index(s, math.NaN()) }, func(s []float64) any { return slices.Index(s, math.NaN()) })
	},
	"IndexFunc": func(x in) {
		is := func(a int) bool { return near(a, x.v) }
		x.both("IndexFunc", func(s []int) any { return own.IndexFunc(s, is) }, func(s []int) any { return slices.IndexFunc(s, is) })
	},
	"Insert": func(x in) {
		x.both("Insert", func(s []int) any { r := own.Insert(ints(s), x.i, x.t...); return r[:cap(r)] }, func(s []int) any { r := slices.Insert(ints(s), x.i, x.t...); return r[:cap(r)] })
		a, b := x.part()
		x.both(fmt.Sprint("Insert its own part ", a, b), func(s []int) any { return own.Insert(s, x.i, s[a:b]...) },
			func(s []int) any { return slices.Insert(s, x.i, s[a:b]...) })
	},
	"IsSorted": func(x in) {
		x.floats("IsSorted", func(s []float64) any { return own.IsSorted(s) }, func(s []float64) any { return slices.IsSorted(s) })
		slices.Sort(x.f)
		x.floats("IsSorted", func(s []float64) any { return own.IsSorted(s) }, func(s []float64) any { return slices.IsSorted(s) })
	},
	"IsSortedFunc": func(x in) {
		check := func() {
			x.both("IsSortedFunc", func(s []int) any { return own.IsSortedFunc(s, diff) }, func(s []int) any { return slices.IsSortedFunc(s, diff) })
		}
		check()
		slices.Sort(x.s)
		check()
	},
	"Max": func(x in) {
		x.both("Max", func(s []int) any { return own.Max(s) }, func(s []int) any { return slices.Max(s) })
		x.floats("Max", func(s []float64) any { return own.Max(s) }, func(s []float64) any { return slices.Max(s) })
	},
	"MaxFunc": func(x in) {
		rough := func(a, b int) int { return a/4 - b/4 }
		x.both("MaxFunc", func(s []int) any { f, log := logged(rough); return []any{own.MaxFunc(s, f), *log} },
			func(s []int) any { f, log := logged(rough); return []any{slices.MaxFunc(s, f), *log} })
	},
	"Min": func(x in) {
		x.both("Min", func(s []int) any { return own.Min(s) }, func(s []int) any { return slices.Min(s) })
		x.floats("Min", func(s []float64) any { return own.Min(s) }, func(s []float64) any { return slices.Min(s) })
	},
	"MinFunc": func(x in) {
		rough := func(a, b int) int { return a/4 - b/4 }
		x.both("MinFunc", func(s []int) any { f, log := logged(rough); return []any{own.MinFunc(s, f), *log} },
			func(s []int) any { f, log := logged(rough); return []any{slices.MinFunc(s, f), *log} })
	},
	"Repeat": func(x in) {
		for _, n := range []int{x.n, math.MaxInt, math.MaxInt / 4} {
			x.both(fmt.Sprint("Repeat ", n), func(s []int) any { r := own.Repeat(ints(s), n); return []any{changed(r), cap(r)} },
				func(s []int) any { r := slices.Repeat(ints(s), n); return []any{changed(r), cap(r)} })
		}
	},
	"Replace": func(x in) {
		x.both("Replace", func(s []int) any { r := own.Replace(ints(s), x.i, x.j, x.t...); return r[:cap(r)] }, func(s []int) any { r := slices.Replace(ints(s), x.i, x.j, x.t...); return r[:cap(r)] })
		a, b := x.part()
		x.both(fmt.Sprint("Replace by its own part ", a, b), func(s []int) any { return own.Replace(s, x.i, x.j, s[a:b]...) },
			func(s []int) any { return slices.Replace(s, x.i, x.j, s[a:b]...) })
	},
	"Reverse": func(x in) {
		x.both("Reverse", func(s []int) any { own.Reverse(s); return s }, func(s []int) any { slices.Reverse(s); return s })
	},
	"Sort":             func(x in) { x.sorting(300) },
	"SortFunc":         func(x in) { x.sortingFunc(300) },
	"SortStableFunc":   func(x in) { x.sortingStable(300) },
	"Sorted":           func(x in) { x.sorted() },
	"SortedFunc":       func(x in) { x.sortedFunc() },
	"SortedStableFunc": func(x in) { x.sortedStable() },
	"Values": func(x in) {
		x.both("Values", func(s []int) any { return taken(own.Values(s), x.limit) }, func(s []int) any { return taken(slices.Values(s), x.limit) })
	},
}

// part returns the bounds of a part of s, which may lie behind its end.
func (x in) part() (a, b int) {
	a = x.rand.IntN(cap(x.s) + 1)
	return a, a + x.rand.IntN(cap(x.s)-a+1)
}

// changed writes into a result that must be a copy: the memory compared afterwards must not show it.
func changed(s ints) ints {
	c := twin(s)
	for i := range s {
		s[i] = -77
	}
	return c
}

// grown says whether there is room for n more, and shows all the memory.
func grown(from []int, s ints, n int) any {
	return []any{s, cap(s) >= len(from)+n, s[:cap(s)]}
}

func TestSlices(t *testing.T) {
	allTested(t, "slices", slicesCases)
	specials := []float64{math.NaN(), math.Inf(1), math.Inf(-1), math.Copysign(0, -1), 0, 1, 2, 2, 3}
	for name, f := range slicesCases {
		t.Run(name, func(t *testing.T) {
			r := rng()
			for range rounds {
				one := func() int { return 1 + r.IntN(8) }
				float := func() float64 { return specials[r.IntN(len(specials))] }
				if r.IntN(3) == 0 {
					float = func() float64 { return float64(r.IntN(5)) }
				}
				x := in{s: randomSlice(r, 12, one), t: randomSlice(r, 6, one), f: randomSlice(r, 8, float),
					v: r.IntN(8), n: r.IntN(9) - 1, limit: r.IntN(14), rand: r, t1: t}
				x.i = r.IntN(len(x.s) + 1)
				x.j = x.i + r.IntN(len(x.s)-x.i+1)
				if r.IntN(6) == 0 { // most often out of range
					x.i, x.j = r.IntN(cap(x.s)+4)-1, r.IntN(cap(x.s)+4)-1
				}
				f(x)
				if t.Failed() {
					return
				}
			}
		})
	}
}
