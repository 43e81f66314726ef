// Go specification, "Package initialization": variables are initialised in dependency order.

package main

import "fmt"

var (
	a = c + b
	b = f()
	c = g()
	d = 3
)

func f() int {
	fmt.Println("f: d is", d)
	d++
	return d
}

func g() int {
	fmt.Println("g: b is", b)
	return b * 10
}

var x, y = pair(z)
var z = "zed"
var _ = log("blank")
var table = map[string]func() int{"f": f, "g": g}

func pair(s string) (string, int) { fmt.Println("pair", s); return s + "!", len(s) }

func log(s string) int { fmt.Println("log", s); return 0 }

func main() {
	fmt.Println(a, b, c, d)
	fmt.Println(x, y, z, len(table))
}
