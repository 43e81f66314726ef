// Go specification, "Address operators": addresses of variables, fields, elements and literals.

package main

import "fmt"

type pt struct{ x, y int }

func swap(a, b *int)     { *a, *b = *b, *a }
func fresh(n int) *int   { return &n }
func set(pp **pt, p *pt) { *pp = p }

func main() {
	a, b := 1, 2
	swap(&a, &b)
	fmt.Println(a, b)
	p, q := fresh(5), fresh(5)
	fmt.Println(*p == *q, p == q, p != nil)
	s := []pt{{1, 2}, {3, 4}}
	e := &s[1]
	f := &s[0].y
	e.x, *f = 30, 20
	fmt.Println(s)
	s = append(s, pt{})
	e.x = 99
	fmt.Println(s, *e)
	lit := &pt{y: 7}
	ref := lit
	set(&ref, &pt{8, 8})
	fmt.Println(*lit, *ref, (*ref).x, ref.x)
	arr := [3]int{1, 2, 3}
	ap := &arr
	ap[1] *= 10
	for i := range ap {
		ap[i]++
	}
	fmt.Println(arr, len(ap), *&a, &*p == p)
	var np *pt
	fmt.Println(np == nil, fmt.Sprintf("%T %v", np, np))
	chain := &p
	**chain = 77
	fmt.Println(*p, *q)
	type node struct{ next *node }
	n := &node{}
	n.next = n
	fmt.Println(n.next.next.next == n)
}
