// Go specification, "Declarations and scope": shadowing in blocks, if, for, switch and functions.

package main

import "fmt"

var x = "package"

func param(x string) string {
	{
		x := x + "-inner"
		_ = x
	}
	return x
}

func main() {
	fmt.Println(x)
	x := x + "+main"
	fmt.Println(x)
	if x := 1; x > 0 {
		x := x * 10
		fmt.Println(x)
		x++
	} else {
		fmt.Println("else", x)
	}
	for x := range 2 {
		x := x + 100
		fmt.Print(x, " ")
	}
	fmt.Println(x)
	switch x := len(x); {
	case x > 5:
		x := true
		fmt.Println(x)
	}
	func() {
		x = "changed"
		x := 3.5
		_ = x
	}()
	fmt.Println(x, param("p"))
	{
		type x struct{ n int }
		fmt.Printf("%T\n", x{1})
	}
	var y = 1
	{
		y, z := y+1, y+2
		fmt.Println(y, z)
	}
	fmt.Println(y)
}
