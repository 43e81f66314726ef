// Go specification, "Qualified identifiers" (package container/list): inserting, moving and walking.

package main

import (
	"container/list"
	"fmt"
	"strings"
)

func show(l *list.List) string {
	var parts []string
	for e := l.Front(); e != nil; e = e.Next() {
		parts = append(parts, fmt.Sprint(e.Value))
	}
	return strings.Join(parts, " ")
}

func main() {
	l := list.New()
	e4 := l.PushBack(4)
	e1 := l.PushFront(1)
	l.InsertBefore(3, e4)
	l.InsertAfter("two", e1)
	fmt.Println(show(l), l.Len())
	l.MoveToBack(e1)
	l.MoveBefore(e4, l.Front())
	fmt.Println(show(l), l.Front().Value == 4, e1.Next() == nil, l.Front().Prev() == nil)
	fmt.Println(l.Remove(e4), show(l))
	other := list.New()
	other.PushBack([]int{9})
	l.PushBackList(other)
	fmt.Println(show(l))
	var next *list.Element
	for e := l.Front(); e != nil; e = next {
		next = e.Next()
		if _, ok := e.Value.(int); ok {
			l.Remove(e)
		}
	}
	fmt.Println(show(l), l.Len())
	var zero list.List
	zero.PushBack("lazy")
	fmt.Println(show(&zero), zero.Init().Len())
}
