// Go specification, "Defer statements": last in first out, arguments evaluated when the defer runs.

package main

import "fmt"

func arg(n int) int { fmt.Print("arg", n, " "); return n }

func show(n int) { fmt.Print("show", n, " ") }

type T struct{ n int }

func (t T) Val()  { fmt.Print("val", t.n, " ") }
func (t *T) Ptr() { fmt.Print("ptr", t.n, " ") }

func run() {
	x := 1
	defer show(x)
	defer func() { fmt.Print("closure", x, " ") }()
	x = 2
	defer show(arg(x * 10))
	t := T{5}
	defer t.Val()
	defer t.Ptr()
	t.n = 6
	f := func() { fmt.Print("first ") }
	defer f()
	f = func() { fmt.Print("second ") }
	for i := range 3 {
		defer fmt.Print("loop", i, " ")
	}
	fmt.Print("body ")
}

func main() {
	run()
	fmt.Println()
}
