// Go specification, "Logical operators": the right operand is evaluated only when needed.

package main

import "fmt"

func t(s string) bool { fmt.Print("T", s, " "); return true }
func f(s string) bool { fmt.Print("F", s, " "); return false }

type Node struct {
	v    int
	next *Node
}

func find(n *Node, v int) bool { return n != nil && (n.v == v || find(n.next, v)) }

func main() {
	fmt.Println(t("1") && f("2") && t("3"))
	fmt.Println(t("1") || f("2"))
	fmt.Println(f("1") || f("2") || t("3"))
	fmt.Println(f("1") && t("2") || t("3") && !f("4"))
	fmt.Println(!(t("1") && t("2")) == (f("3") || f("4")))
	l := &Node{1, &Node{2, nil}}
	fmt.Println(find(l, 2), find(l, 3), find(nil, 1))
	xs := []int{3, 0, 6}
	for i, x := range xs {
		if x != 0 && 12/x > 2 {
			fmt.Print(i, " ")
		}
	}
	for i := 0; i < len(xs) && xs[i] >= 0; i++ {
		fmt.Print(xs[i], " ")
	}
	fmt.Println()
	switch {
	case f("a"), t("b"), t("c"):
		fmt.Println("b stops it")
	case t("d"):
	}
}
