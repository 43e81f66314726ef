// Go specification, "Go statements": a cache that computes each value once, under contention.

package main

import (
	"fmt"
	"strings"
	"sync"
)

type cell struct {
	once sync.Once
	val  string
}

type cache struct {
	mu    sync.Mutex
	cells map[int]*cell
	calls map[int]int
}

func (c *cache) get(n int) string {
	c.mu.Lock()
	e := c.cells[n]
	if e == nil {
		e = new(cell)
		c.cells[n] = e
	}
	c.mu.Unlock()
	e.once.Do(func() {
		c.mu.Lock()
		c.calls[n]++
		c.mu.Unlock()
		e.val = strings.Repeat("*", n)
	})
	return e.val
}

func main() {
	c := &cache{cells: map[int]*cell{}, calls: map[int]int{}}
	var wg sync.WaitGroup
	got := make([]string, 12)
	for i := range got {
		wg.Go(func() { got[i] = c.get(i%4 + 1) })
	}
	wg.Wait()
	fmt.Println(got)
	fmt.Println(c.calls)
	var m sync.Map
	for i := range 5 {
		m.Store(i, i*i)
	}
	v, ok := m.Load(3)
	_, loaded := m.LoadOrStore(9, 81)
	sum := 0
	m.Range(func(k, v any) bool {
		sum += v.(int)
		return true
	})
	fmt.Println(v, ok, loaded, sum)
}
