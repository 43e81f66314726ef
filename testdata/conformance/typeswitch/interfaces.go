// Go specification, "Type switches": interface cases, order matters, with own and standard interfaces.

package main

import (
	"errors"
	"fmt"
	"strings"
)

type Pourer interface{ Pour() int }
type Drainer interface {
	Pourer
	Drain() int
}

type Jug struct{ ml int }
type Vat struct{ ml int }
type Note string

func (j Jug) Pour() int      { return j.ml / 2 }
func (v *Vat) Pour() int     { return 100 }
func (v *Vat) Drain() int    { return v.ml }
func (n Note) Error() string { return "note: " + string(n) }
func (j Jug) String() string { return fmt.Sprintf("jug(%d)", j.ml) }

func use(v any) string {
	switch v := v.(type) {
	case Drainer:
		return fmt.Sprint("drains ", v.Drain(), " pours ", v.Pour())
	case fmt.Stringer:
		return "prints " + v.String()
	case Pourer:
		return fmt.Sprint("pours ", v.Pour())
	case error:
		return v.Error()
	case interface{ Len() int }:
		return fmt.Sprint("len ", v.Len())
	}
	return "nothing"
}

func main() {
	var p Pourer = Jug{500}
	for _, v := range []any{&Vat{900}, p, &Jug{10}, Note("hi"), errors.New("e"), strings.NewReader("four"), 3, nil, Vat{1}} {
		fmt.Println(use(v))
	}
	switch p.(type) {
	case Drainer:
		fmt.Println("drainer")
	case Jug:
		fmt.Println("jug")
	}
}
