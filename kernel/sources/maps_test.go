package sources_test

import (
	"fmt"
	"maps"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	own "swanneck/kernel/sources/_src/maps"
)

type stock map[float64]int

// randomMap returns a map, sometimes nil, with NaN among its keys. fmt prints maps sorted.
func randomMap(r *rand.Rand) stock {
	if r.IntN(8) == 0 {
		return nil
	}
	m := stock{}
	for range r.IntN(7) {
		k := float64(r.IntN(5))
		if r.IntN(8) == 0 {
			k = math.NaN()
		}
		m[k] = r.IntN(3)
	}
	return m
}

// copied copies entry by entry, as no function under test does it.
func copied(m stock) stock {
	if m == nil {
		return nil
	}
	c := stock{}
	for k, v := range m {
		c[k] = v
	}
	return c
}

// listed shows a map with its entries sorted as text: maps with several NaN keys have no order.
func listed[M ~map[float64]int](m M) string {
	var out []string
	for k, v := range m {
		out = append(out, fmt.Sprint(k, " ", v))
	}
	slices.Sort(out)
	return fmt.Sprintf("%T nil %v %q", m, m == nil, out)
}

func sortedText[V any](seq func(func(V) bool)) []string {
	var out []string
	for v := range seq {
		out = append(out, fmt.Sprint(v))
	}
	slices.Sort(out)
	return out
}

func sortedText2[K, V any](seq func(func(K, V) bool)) []string {
	var out []string
	for k, v := range seq {
		out = append(out, fmt.Sprint(k, " ", v))
	}
	slices.Sort(out)
	return out
}

type mapsCase struct {
	m, n stock
	r    *rand.Rand
	t    *testing.T
}

// same compares what two calls return and leave of m.
func (c mapsCase) same(name string, ours, real func(m stock) any) {
	c.t.Helper()
	with := func(f func(stock) any) func() any {
		m := copied(c.m)
		return func() any { return []any{outcome(func() any { return f(m) }), listed(m)} }
	}
	compare(c.t, fmt.Sprint(name, " of ", listed(c.m), " and ", listed(c.n)), with(ours), with(real))
}

var mapsCases = map[string]func(mapsCase){
	"All": func(c mapsCase) {
		c.same("All", func(m stock) any { return sortedText2(own.All(m)) }, func(m stock) any { return sortedText2(maps.All(m)) })
	},
	"Clone": func(c mapsCase) {
		c.same("Clone", func(m stock) any { k := own.Clone(m); s := listed(k); clear(k); return s },
			func(m stock) any { k := maps.Clone(m); s := listed(k); clear(k); return s })
	},
	"Collect": func(c mapsCase) {
		c.same("Collect", func(m stock) any { return listed(own.Collect(maps.All(m))) }, func(m stock) any { return listed(maps.Collect(maps.All(m))) })
	},
	"Copy": func(c mapsCase) {
		c.same("Copy", func(m stock) any { own.Copy(m, c.n); return nil }, func(m stock) any { maps.Copy(m, c.n); return nil })
	},
	"DeleteFunc": func(c mapsCase) {
		low := func(k float64, v int) bool { return !(k > 2) || v == 0 }
		c.same("DeleteFunc", func(m stock) any { own.DeleteFunc(m, low); return nil }, func(m stock) any { maps.DeleteFunc(m, low); return nil })
	},
	"Equal": func(c mapsCase) {
		for _, n := range []stock{c.n, copied(c.m)} {
			c.same("Equal", func(m stock) any { return own.Equal(m, n) }, func(m stock) any { return maps.Equal(m, n) })
		}
	},
	"EqualFunc": func(c mapsCase) {
		for _, n := range []stock{c.n, copied(c.m)} {
			c.same("EqualFunc", func(m stock) any { return own.EqualFunc(m, n, near) }, func(m stock) any { return maps.EqualFunc(m, n, near) })
		}
	},
	"Insert": func(c mapsCase) {
		c.same("Insert", func(m stock) any { own.Insert(m, maps.All(c.n)); return nil }, func(m stock) any { maps.Insert(m, maps.All(c.n)); return nil })
	},
	"Keys": func(c mapsCase) {
		c.same("Keys", func(m stock) any { return sortedText(own.Keys(m)) }, func(m stock) any { return sortedText(maps.Keys(m)) })
	},
	"Values": func(c mapsCase) {
		c.same("Values", func(m stock) any { return sortedText(own.Values(m)) }, func(m stock) any { return sortedText(maps.Values(m)) })
	},
}

func TestMaps(t *testing.T) {
	allTested(t, "maps", mapsCases)
	for name, f := range mapsCases {
		t.Run(name, func(t *testing.T) {
			r := rng()
			for range rounds {
				f(mapsCase{randomMap(r), randomMap(r), r, t})
			}
		})
	}
}

// An iterator stops when it is told to.
func TestMapIteratorsStop(t *testing.T) {
	m := stock{1: 1, 2: 2, 3: 3}
	n := 0
	for range own.All(m) {
		n++
		break
	}
	for range own.Keys(m) {
		n++
		break
	}
	for range own.Values(m) {
		n++
		break
	}
	if n != 3 {
		t.Errorf("three loops that break at once ran %d times", n)
	}
}
