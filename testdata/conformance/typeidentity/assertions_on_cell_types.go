// Go specification, "Type assertions": to declared concrete types, interfaces and function types.

package main

import (
	"fmt"
	"strings"
)

type Volume float64
type Handler func(string) string
type Shape interface{ Area() Volume }
type Sq struct{ side Volume }
type Rows []Sq

func (s Sq) Area() Volume { return s.side * s.side }
func (r Rows) Area() (t Volume) {
	for _, s := range r {
		t += s.Area()
	}
	return
}
func (h Handler) Area() Volume { return Volume(len(h("four"))) }

func main() {
	things := []any{Volume(2), Sq{3}, &Sq{4}, Rows{{1}, {2}}, Handler(strings.ToUpper), strings.ToUpper, 2.0}
	for i, t := range things {
		v, isVol := t.(Volume)
		s, isShape := t.(Shape)
		_, isH := t.(Handler)
		_, isF := t.(func(string) string)
		_, isP := t.(*Sq)
		fmt.Print(i, ": ", v, isVol, isShape, isH, isF, isP)
		if isShape {
			fmt.Print(" area ", s.Area())
		}
		fmt.Println()
	}
	var sh Shape = Rows{{5}}
	rows := sh.(Rows)
	rows[0].side = 6
	fmt.Println(sh.Area(), sh.(interface{ Area() Volume }).Area(), len(sh.(Rows)))
	if _, ok := sh.(interface{ Perimeter() Volume }); !ok {
		fmt.Println("no perimeter")
	}
	fmt.Println(things[1].(Shape).(Sq).side, any(sh).(Shape) != nil)
}
