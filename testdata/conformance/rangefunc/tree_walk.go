// Go specification, "For statements with range clause": in-order traversal of a tree as an iterator method.

package main

import (
	"cmp"
	"fmt"
	"iter"
	"slices"
	"strings"
)

type Tree[T cmp.Ordered] struct {
	left, right *Tree[T]
	val         T
}

func (t *Tree[T]) Insert(v T) *Tree[T] {
	if t == nil {
		return &Tree[T]{val: v}
	}
	switch c := cmp.Compare(v, t.val); {
	case c < 0:
		t.left = t.left.Insert(v)
	case c > 0:
		t.right = t.right.Insert(v)
	}
	return t
}

func (t *Tree[T]) All() iter.Seq[T] {
	return func(yield func(T) bool) { t.push(yield) }
}

func (t *Tree[T]) push(yield func(T) bool) bool {
	return t == nil || t.left.push(yield) && yield(t.val) && t.right.push(yield)
}

func main() {
	var t *Tree[string]
	for _, w := range strings.Fields("mash wash low feints hearts heads mash") {
		t = t.Insert(w)
	}
	for w := range t.All() {
		if w > "m" {
			break
		}
		fmt.Print(w, " ")
	}
	fmt.Println()
	fmt.Println(slices.Collect(t.All()))
	var n *Tree[int]
	for i := range 7 {
		n = n.Insert(i * 5 % 7)
	}
	sum := 0
	for v := range n.All() {
		sum = sum*10 + v
	}
	fmt.Println(sum)
}
