// Go specification, "Program initialization": init functions run after variables, in order.

package main

import (
	"fmt"
	"strings"
)

var log []string
var first = note("var first")

func note(s string) int {
	log = append(log, s)
	return len(log)
}

func init() { note("init 1") }

var second = note("var second")

func init() {
	note("init 2")
	registry["late"] = func(n int) int { return -n }
}

var registry = map[string]func(int) int{
	"double": func(n int) int { return 2 * n },
	"fact":   fact,
}

func fact(n int) int {
	if n < 2 {
		return 1
	}
	return n * fact(n-1)
}

func main() {
	note("main")
	fmt.Println(strings.Join(log, "; "))
	fmt.Println(first, second, len(registry))
	fmt.Println(registry["double"](4), registry["fact"](5), registry["late"](6))
}
