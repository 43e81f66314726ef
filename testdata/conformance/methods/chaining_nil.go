// Go specification, "Calls": method calls on nil pointers, on map elements' copies, and chains.

package main

import (
	"fmt"
	"strings"
)

type Node struct {
	name string
	kids []*Node
}

func (n *Node) Name() string {
	if n == nil {
		return "(none)"
	}
	return n.name
}

func (n *Node) Child(i int) *Node {
	if n == nil || i >= len(n.kids) {
		return nil
	}
	return n.kids[i]
}

func (n *Node) With(kids ...*Node) *Node { n.kids = append(n.kids, kids...); return n }

func (n *Node) Size() int {
	if n == nil {
		return 0
	}
	total := 1
	for _, k := range n.kids {
		total += k.Size()
	}
	return total
}

type Query struct{ parts []string }

func From(t string) Query { return Query{[]string{"from " + t}} }
func (q Query) Where(c string) Query {
	q.parts = append(q.parts[:len(q.parts):len(q.parts)], "where "+c)
	return q
}
func (q Query) String() string { return strings.Join(q.parts, " ") }

func main() {
	t := (&Node{name: "root"}).With(&Node{name: "a"}, (&Node{name: "b"}).With(&Node{name: "c"}))
	fmt.Println(t.Child(1).Child(0).Name(), t.Child(5).Child(3).Name(), t.Size())
	base := From("casks").Where("age > 3")
	q1, q2 := base.Where("peated"), base.Where("unpeated")
	fmt.Println(base)
	fmt.Println(q1)
	fmt.Println(q2)
	var zero *Node
	fmt.Println(zero.Size(), zero.Name())
}
