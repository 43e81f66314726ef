// Go specification, "Go statements": shared state behind mutexes, once and atomics.

package main

import (
	"fmt"
	"sync"
	"sync/atomic"
)

type Ledger struct {
	mu  sync.RWMutex
	bal map[string]int
}

func (l *Ledger) Add(k string, n int) {
	l.mu.Lock()
	defer l.mu.Unlock()
	l.bal[k] += n
}

func (l *Ledger) Get(k string) int {
	l.mu.RLock()
	defer l.mu.RUnlock()
	return l.bal[k]
}

func main() {
	l := &Ledger{bal: map[string]int{}}
	var wg sync.WaitGroup
	var once sync.Once
	var hits atomic.Int64
	opened := 0
	for w := range 4 {
		wg.Add(1)
		go func() {
			defer wg.Done()
			once.Do(func() { opened++ })
			for i := range 50 {
				l.Add([]string{"in", "out"}[i%2], w+1)
				hits.Add(1)
			}
		}()
	}
	wg.Wait()
	fmt.Println(l.Get("in"), l.Get("out"), l.Get("none"), opened, hits.Load())
	once.Do(func() { fmt.Println("never") })
	v := sync.OnceValue(func() int { opened += 10; return opened })
	fmt.Println(v(), v())
	fmt.Println(opened)
}
