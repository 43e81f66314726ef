// Go specification, "Iota": implicit repetition of an expression list, and iota within one line.

package main

import "fmt"

const (
	red, green = iota, iota + 10
	blue, grey
	cyan, teal
)

const (
	first = iota + iota
	second
	third = len("abc") * iota
	fourth
	named string = "x"
	sixth
	seventh = iota
)

const (
	A = 'a' + iota
	B
	C
	D = 1.5 * iota
	E
)

func main() {
	fmt.Println(red, green, blue, grey, cyan, teal)
	fmt.Println(first, second, third, fourth, named, sixth, seventh)
	fmt.Println(A, B, C, D, E, string(rune(C)))
	fmt.Printf("%T %T %T\n", A, D, sixth)
	const (
		local = iota
		other
	)
	fmt.Println(local, other)
}
