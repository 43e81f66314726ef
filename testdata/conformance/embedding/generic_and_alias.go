// Go specification, "Struct types": embedding generic types, aliases and pointers to them.

package main

import (
	"fmt"
	"sync"
)

type Log struct{ lines []string }

func (l *Log) Add(format string, args ...any) {
	l.lines = append(l.lines, fmt.Sprintf(format, args...))
}

type Journal = Log

type Store[K comparable, V any] struct {
	m map[K]V
}

func (s *Store[K, V]) Put(k K, v V) {
	if s.m == nil {
		s.m = make(map[K]V)
	}
	s.m[k] = v
}

func (s *Store[K, V]) Len() int { return len(s.m) }

type Cellar struct {
	*Journal
	Store[string, int]
	sync.Mutex
}

func (c *Cellar) Lay(name string, n int) {
	c.Lock()
	defer c.Unlock()
	c.Put(name, n)
	c.Add("%s x%d", name, n)
}

type Wrapped[T any] struct {
	Store[int, T]
	last T
}

func main() {
	c := Cellar{Journal: &Journal{}}
	c.Lay("perry", 6)
	c.Lay("cider", 12)
	fmt.Println(c.Len(), c.lines, c.m, c.Journal == (*Log)(c.Journal))
	var w Wrapped[[]string]
	w.Put(1, []string{"a"})
	w.last = w.m[1]
	fmt.Println(w.Len(), w.last, w.Store.m)
}
