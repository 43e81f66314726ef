// Go specification, "Conversions": parenthesised types and pointers to types with one underlying type.

package main

import (
	"fmt"
	"strings"
)

type Meters int
type Steps int
type Handler func(string) string

func (h Handler) Twice(s string) string { return h(h(s)) }

func shout(s string) string { return strings.ToUpper(s) + "!" }

func main() {
	m := Meters(7)
	p := (*Steps)(&m)
	*p += 3
	fmt.Println(m, *p)
	fmt.Printf("%T %T\n", m, *p)
	fmt.Println(Handler(shout).Twice("ho"))
	h := Handler(func(s string) string { return "<" + s + ">" })
	fmt.Println(h.Twice("x"), (func(string) string)(h)("y"))
	var ch = make(chan int, 1)
	ro := (<-chan int)(ch)
	so := (chan<- int)(ch)
	so <- 5
	fmt.Println(<-ro)
	fmt.Printf("%T %T\n", ro, so)
}
