// Go specification, "Receive operator": walking two trees through channels to compare them.

package main

import "fmt"

type Tree struct {
	l, r *Tree
	v    int
}

func build(vs ...int) (t *Tree) {
	for _, v := range vs {
		p := &t
		for *p != nil {
			if v < (*p).v {
				p = &(*p).l
			} else {
				p = &(*p).r
			}
		}
		*p = &Tree{v: v}
	}
	return
}

func walk(t *Tree, ch chan<- int) {
	if t == nil {
		return
	}
	walk(t.l, ch)
	ch <- t.v
	walk(t.r, ch)
}

func start(t *Tree) <-chan int {
	ch := make(chan int)
	go func() {
		walk(t, ch)
		close(ch)
	}()
	return ch
}

func same(a, b *Tree) bool {
	ca, cb := start(a), start(b)
	equal := true
	for {
		x, okX := <-ca
		y, okY := <-cb
		if !okX && !okY {
			return equal
		}
		equal = equal && okX == okY && x == y
	}
}

func main() {
	fmt.Println(same(build(1, 3, 2), build(2, 1, 3)))
	fmt.Println(same(build(1, 2), build(1, 2, 3)))
	fmt.Println(same(build(5, 4), build(4, 6)), same(nil, build()))
}
