// Go specification, "Address operators": pointers to pointers unlink list nodes without special cases.

package main

import "fmt"

type node struct {
	v    int
	next *node
}

func remove(head **node, bad func(int) bool) (n int) {
	for pp := head; *pp != nil; {
		if bad((*pp).v) {
			*pp = (*pp).next
			n++
		} else {
			pp = &(*pp).next
		}
	}
	return
}

func insertSorted(head **node, v int) {
	pp := head
	for *pp != nil && (*pp).v < v {
		pp = &(*pp).next
	}
	*pp = &node{v, *pp}
}

func (n *node) slice() (out []int) {
	for ; n != nil; n = n.next {
		out = append(out, n.v)
	}
	return
}

func main() {
	var head *node
	for _, v := range []int{5, 1, 4, 1, 9, 2, 6} {
		insertSorted(&head, v)
	}
	fmt.Println(head.slice())
	fmt.Println(remove(&head, func(v int) bool { return v%2 == 1 }))
	fmt.Println(head.slice())
	fmt.Println(remove(&head, func(int) bool { return true }))
	fmt.Println(head == nil, head.slice() == nil)
}
