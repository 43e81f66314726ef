// Go specification, "Type identity": instantiated types are identical when their arguments are.

package main

import "fmt"

type Box[T any] struct{ v T }

func (b Box[T]) String() string { return fmt.Sprintf("[%v]", b.v) }

type Kg float64
type IntBox = Box[int]
type MyBox Box[int]

func kind(v any) string {
	switch v.(type) {
	case Box[int]:
		return "Box[int]"
	case Box[string]:
		return "Box[string]"
	case Box[Kg]:
		return "Box[Kg]"
	case MyBox:
		return "MyBox"
	case fmt.Stringer:
		return "other Stringer"
	}
	return "?"
}

func mk[T any](v T) any { return Box[T]{v} }

func main() {
	for _, v := range []any{mk(1), mk("s"), mk(Kg(2)), mk(2.0), IntBox{4}, MyBox{5}, MyBox(IntBox{1}), mk(mk(1))} {
		fmt.Printf("%s %v %T\n", kind(v), v, v)
	}
	fmt.Println(mk(1) == any(IntBox{1}), mk(1) == mk(int8(1)), mk(Kg(1)) == mk(1.0))
	m := map[Box[string]]int{{"a"}: 1}
	m[Box[string]{"a"}]++
	fmt.Println(m, []Box[Kg]{{1}, {2.5}}, &Box[bool]{true})
}
