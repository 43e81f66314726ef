// Go specification, "Defer statements": an enter and leave trace with indentation.

package main

import "fmt"

var depth int

func trace(name string) string {
	fmt.Printf("%*s> %s\n", depth*2, "", name)
	depth++
	return name
}

func un(name string) {
	depth--
	fmt.Printf("%*s< %s\n", depth*2, "", name)
}

func fact(n int) int {
	defer un(trace(fmt.Sprintf("fact(%d)", n)))
	if n <= 1 {
		return 1
	}
	return n * fact(n-1)
}

func a() {
	defer un(trace("a"))
	b()
	fmt.Printf("%*sin a\n", depth*2, "")
}

func b() {
	defer un(trace("b"))
}

func main() {
	a()
	fmt.Println(fact(3))
	fmt.Println(depth)
}
