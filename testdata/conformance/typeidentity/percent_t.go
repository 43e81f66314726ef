// Go specification, "Type identity": %T of declared, composite, local and generic types.

package main

import (
	"fmt"
	"time"
)

type Litre float64
type Casks []Litre
type Reg map[string]*Casks
type Fn func(Litre, ...string) (Casks, error)
type G[T any] struct{ v T }
type Iface interface{ M() }
type impl struct{}

func (impl) M() {}

func show(vs ...any) {
	for _, v := range vs {
		fmt.Printf("%T; ", v)
	}
	fmt.Println()
}

func main() {
	type Local struct{ x int }
	var i Iface = impl{}
	var e error
	show(Litre(1), Casks{}, Reg{}, Fn(nil), &Casks{})
	show(G[int]{}, G[Litre]{}, G[G[string]]{}, &G[[]Litre]{})
	show(Local{}, []Local{}, map[Local]*Local{}, i, e, &i)
	show([3]Litre{}, [][]Casks{}, make(chan Litre), make(<-chan []Reg), func(Litre) {}, func(a, b int) (x Litre) { return })
	show(struct{ L Litre }{}, struct {
		Litre
		n int `t:"x"`
	}{}, []any{}, map[any]error{}, []Iface{i}, []fmt.Stringer{})
	show('a', 1, 1.0, 1i, "s", true, byte(1), uintptr(1), nil, time.Second, time.March)
}
