// Go specification, "Qualified identifiers" (package container/list): a least-recently-used cache.

package main

import (
	"container/list"
	"fmt"
)

type entry struct {
	key string
	val int
}

type LRU struct {
	cap   int
	order *list.List
	items map[string]*list.Element
}

func New(n int) *LRU { return &LRU{n, list.New(), map[string]*list.Element{}} }

func (c *LRU) Put(k string, v int) {
	if e, ok := c.items[k]; ok {
		e.Value.(*entry).val = v
		c.order.MoveToFront(e)
		return
	}
	c.items[k] = c.order.PushFront(&entry{k, v})
	if c.order.Len() > c.cap {
		last := c.order.Back()
		delete(c.items, c.order.Remove(last).(*entry).key)
	}
}

func (c *LRU) Get(k string) (int, bool) {
	e, ok := c.items[k]
	if !ok {
		return 0, false
	}
	c.order.MoveToFront(e)
	return e.Value.(*entry).val, true
}

func (c *LRU) Keys() (out []string) {
	for e := c.order.Front(); e != nil; e = e.Next() {
		out = append(out, e.Value.(*entry).key)
	}
	return
}

func main() {
	c := New(2)
	c.Put("a", 1)
	c.Put("b", 2)
	fmt.Println(c.Get("a"))
	c.Put("c", 3)
	fmt.Println(c.Get("b"))
	c.Put("a", 10)
	fmt.Println(c.Keys(), len(c.items))
	fmt.Println(c.Get("a"))
}
