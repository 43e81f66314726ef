// Go specification, "Struct types": a singly linked list reversed and merged.

package main

import "fmt"

type Link struct {
	v    int
	next *Link
}

func list(vs ...int) (head *Link) {
	for i := len(vs) - 1; i >= 0; i-- {
		head = &Link{vs[i], head}
	}
	return
}

func (l *Link) String() string {
	if l == nil {
		return "."
	}
	return fmt.Sprint(l.v, "→", l.next)
}

func reverse(l *Link) (r *Link) {
	for l != nil {
		l.next, r, l = r, l, l.next
	}
	return
}

func merge(a, b *Link) *Link {
	var dummy Link
	tail := &dummy
	for a != nil && b != nil {
		if a.v <= b.v {
			tail.next, a = a, a.next
		} else {
			tail.next, b = b, b.next
		}
		tail = tail.next
	}
	if a == nil {
		a = b
	}
	tail.next = a
	return dummy.next
}

func main() {
	l := list(1, 4, 6)
	fmt.Println(l, list())
	r := reverse(l)
	fmt.Println(r, l)
	m := merge(reverse(r), list(2, 3, 7, 8))
	fmt.Println(m)
	n := 0
	for p := m; p != nil; p = p.next {
		n += p.v
	}
	fmt.Println(n)
}
