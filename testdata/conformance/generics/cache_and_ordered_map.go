// Go specification, "Instantiations": a bounded cache and an insertion-ordered map.

package main

import (
	"fmt"
	"iter"
	"slices"
	"strings"
)

type OrderedMap[K comparable, V any] struct {
	keys []K
	vals map[K]V
}

func (m *OrderedMap[K, V]) Set(k K, v V) {
	if m.vals == nil {
		m.vals = make(map[K]V)
	}
	if _, ok := m.vals[k]; !ok {
		m.keys = append(m.keys, k)
	}
	m.vals[k] = v
}

func (m *OrderedMap[K, V]) Delete(k K) {
	delete(m.vals, k)
	m.keys = slices.DeleteFunc(m.keys, func(x K) bool { return x == k })
}

func (m *OrderedMap[K, V]) All() iter.Seq2[K, V] {
	return func(yield func(K, V) bool) {
		for _, k := range m.keys {
			if !yield(k, m.vals[k]) {
				return
			}
		}
	}
}

type Cache[K comparable, V any] struct {
	OrderedMap[K, V]
	cap     int
	onEvict func(K, V)
}

func (c *Cache[K, V]) Put(k K, v V) {
	if len(c.keys) == c.cap {
		old := c.keys[0]
		if c.onEvict != nil {
			c.onEvict(old, c.vals[old])
		}
		c.Delete(old)
	}
	c.Set(k, v)
}

func main() {
	var m OrderedMap[string, int]
	for i, k := range []string{"z", "a", "m", "a"} {
		m.Set(k, i)
	}
	m.Delete("z")
	for k, v := range m.All() {
		fmt.Print(k, v, " ")
	}
	fmt.Println(len(m.keys))
	c := Cache[int, []string]{cap: 2, onEvict: func(k int, v []string) { fmt.Println("evict", k, v) }}
	for i := range 4 {
		c.Put(i, []string{strings.Repeat("*", i)})
	}
	fmt.Println(c.keys, c.vals)
}
