// Go specification, "Type assertions": the texts of failed assertions.

package main

import "fmt"

type Shape interface{ Area() float64 }
type Sq struct{}
type Pt struct{}

func (Sq) Area() float64   { return 1 }
func (*Pt) Area() float64  { return 2 }
func (*Pt) Secret() string { return "" }

func try(f func()) {
	defer func() {
		r := recover()
		_, isErr := r.(error)
		fmt.Println(r, isErr)
	}()
	f()
}

func main() {
	var v any = "text"
	var none any
	var s Shape = Sq{}
	try(func() { _ = v.(int) })
	try(func() { _ = none.(int) })
	try(func() { _ = v.(fmt.Stringer) })
	try(func() { _ = none.(Shape) })
	try(func() { _ = s.(*Pt) })
	try(func() { _ = s.(interface{ Secret() string }) })
	try(func() { _ = any(Pt{}).(Shape) })
	try(func() { _ = any(3).(Sq) })
	try(func() { _ = any([]int{}).([]string) })
	n, ok := v.(int)
	fmt.Println(n, ok)
}
