// Go specification, "Expression switches": lists, fallthrough, no tag, init and default anywhere.

package main

import "fmt"

func grade(p int) string {
	switch {
	case p >= 90:
		return "A"
	case p >= 80:
		return "B"
	default:
		return "F"
	}
}

func steps(n int) (out []string) {
	switch n {
	default:
		out = append(out, "default")
		fallthrough
	case 1:
		out = append(out, "one")
		fallthrough
	case 2, 3:
		out = append(out, "two-three")
	case 4:
		out = append(out, "four")
	}
	return
}

func f(s string) string { fmt.Print("[", s, "]"); return s }

func main() {
	fmt.Println(grade(95), grade(85), grade(10))
	for n := range 6 {
		fmt.Println(n, steps(n))
	}
	switch x := len("gin"); x * 2 {
	case 5, 6:
		fmt.Println("six", x)
	}
	switch f("b") {
	case f("a"), f("b"), f("c"):
		fmt.Println(" matched")
	case f("d"):
	}
	switch x := 5; {
	case x > 3:
		x := "shadow"
		fmt.Println(x)
	}
	switch {
	}
	switch f("alone"); {
	default:
		fmt.Println(" ok")
	}
}
