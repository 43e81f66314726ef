// Go specification, "Type parameter declarations": a generic binary tree as an ordered map.

package main

import (
	"cmp"
	"fmt"
	"strings"
)

type Tree[K cmp.Ordered, V any] struct {
	l, r *Tree[K, V]
	k    K
	v    V
}

func (t *Tree[K, V]) Put(k K, v V) *Tree[K, V] {
	switch {
	case t == nil:
		return &Tree[K, V]{k: k, v: v}
	case k < t.k:
		t.l = t.l.Put(k, v)
	case k > t.k:
		t.r = t.r.Put(k, v)
	default:
		t.v = v
	}
	return t
}

func (t *Tree[K, V]) Walk(f func(K, V)) {
	if t != nil {
		t.l.Walk(f)
		f(t.k, t.v)
		t.r.Walk(f)
	}
}

func main() {
	var t *Tree[string, int]
	for i, k := range strings.Fields("rye oat rye malt corn") {
		t = t.Put(k, i)
	}
	t.Walk(func(k string, v int) { fmt.Print(k, "=", v, " ") })
	fmt.Printf("%T\n", t)
}
