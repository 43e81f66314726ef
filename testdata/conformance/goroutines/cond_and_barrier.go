// Go specification, "Go statements": a bounded queue with a condition variable.

package main

import (
	"fmt"
	"sync"
)

type Queue struct {
	mu    sync.Mutex
	cond  *sync.Cond
	items []int
	limit int
}

func NewQueue(limit int) *Queue {
	q := &Queue{limit: limit}
	q.cond = sync.NewCond(&q.mu)
	return q
}

func (q *Queue) Put(v int) {
	q.mu.Lock()
	defer q.mu.Unlock()
	for len(q.items) == q.limit {
		q.cond.Wait()
	}
	q.items = append(q.items, v)
	q.cond.Broadcast()
}

func (q *Queue) Take() (v int) {
	q.mu.Lock()
	defer q.mu.Unlock()
	for len(q.items) == 0 {
		q.cond.Wait()
	}
	v, q.items = q.items[0], q.items[1:]
	q.cond.Broadcast()
	return
}

func main() {
	q := NewQueue(2)
	go func() {
		for i := range 6 {
			q.Put(i * 3)
		}
	}()
	for range 6 {
		fmt.Print(q.Take(), " ")
	}
	fmt.Println(len(q.items))
}
