// Go specification, "Type parameter declarations": a generic linked list with an iterator.

package main

import (
	"fmt"
	"iter"
)

type List[T any] struct {
	head, tail *node[T]
	n          int
}

type node[T any] struct {
	val  T
	next *node[T]
}

func (l *List[T]) Add(vs ...T) *List[T] {
	for _, v := range vs {
		n := &node[T]{val: v}
		if l.tail == nil {
			l.head = n
		} else {
			l.tail.next = n
		}
		l.tail = n
		l.n++
	}
	return l
}

func (l *List[T]) All() iter.Seq2[int, T] {
	return func(yield func(int, T) bool) {
		i := 0
		for n := l.head; n != nil; n = n.next {
			if !yield(i, n.val) {
				return
			}
			i++
		}
	}
}

func main() {
	l := new(List[string]).Add("a", "b").Add("c")
	for i, v := range l.All() {
		fmt.Print(i, v, " ")
	}
	fmt.Println(l.n)
	var sum int
	for _, v := range new(List[int]).Add(4, 5, 6).All() {
		sum += v
	}
	fmt.Println(sum)
	fmt.Printf("%T\n", l)
}
