// Go specification, "Function types": wrapping functions in layers, with variadics.

package main

import (
	"fmt"
	"strings"
)

type Handler func(string) string
type Layer func(Handler) Handler

func chain(h Handler, layers ...Layer) Handler {
	for i := len(layers) - 1; i >= 0; i-- {
		h = layers[i](h)
	}
	return h
}

func tag(name string) Layer {
	return func(next Handler) Handler {
		return func(s string) string { return "<" + name + ">" + next(s) + "</" + name + ">" }
	}
}

func counting(n *int) Layer {
	return func(next Handler) Handler {
		return func(s string) string {
			*n++
			return next(s)
		}
	}
}

func main() {
	hits := 0
	h := chain(strings.ToUpper, tag("b"), counting(&hits), tag("i"))
	fmt.Println(h("hello"))
	fmt.Println(chain(h)("again"))
	fmt.Println(hits)
	layers := []Layer{tag("x"), func(n Handler) Handler { return func(s string) string { return n(n(s)) } }}
	fmt.Println(chain(func(s string) string { return s + "." }, layers...)("dot"))
	fmt.Printf("%T %T\n", h, layers[0])
}
