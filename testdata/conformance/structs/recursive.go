// Go specification, "Type declarations": recursive types through pointers, slices, maps and functions.

package main

import "fmt"

type Node struct {
	val         int
	left, right *Node
}

func (n *Node) Insert(v int) *Node {
	if n == nil {
		return &Node{val: v}
	}
	if v < n.val {
		n.left = n.left.Insert(v)
	} else {
		n.right = n.right.Insert(v)
	}
	return n
}

func (n *Node) Walk(f func(int)) {
	if n != nil {
		n.left.Walk(f)
		f(n.val)
		n.right.Walk(f)
	}
}

func (n *Node) Depth() int {
	if n == nil {
		return 0
	}
	return 1 + max(n.left.Depth(), n.right.Depth())
}

type Dir map[string]Dir
type Tree []Tree
type State func(int) State

func (t Tree) Size() int {
	n := 1
	for _, c := range t {
		n += c.Size()
	}
	return n
}

func even(i int) State { fmt.Print("e", i, " "); return odd }
func odd(i int) State  { fmt.Print("o", i, " "); return even }

func main() {
	var root *Node
	for _, v := range []int{5, 2, 8, 1, 9, 3} {
		root = root.Insert(v)
	}
	root.Walk(func(v int) { fmt.Print(v, " ") })
	fmt.Println(root.Depth())
	d := Dir{"a": {"b": {}, "c": {"d": nil}}}
	fmt.Println(d, len(d["a"]["c"]))
	fmt.Println(Tree{{}, {{}, {}}}.Size(), Tree{{}, {{}}})
	s := State(even)
	for i := range 3 {
		s = s(i)
	}
	fmt.Println()
}
