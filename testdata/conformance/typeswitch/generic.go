// Go specification, "Type switches": type parameters and generic types as cases.

package main

import (
	"fmt"
	"time"
)

type Pair[A, B any] struct {
	a A
	b B
}

type List[T any] []T

func describe[T any](v T) string {
	switch x := any(v).(type) {
	case int:
		return fmt.Sprint("int:", x)
	case string:
		return "string:" + x
	case Pair[string, int]:
		return fmt.Sprint("pair:", x.a, x.b)
	case List[int]:
		return fmt.Sprint("list:", len(x))
	case []T:
		return "slice of itself"
	}
	return fmt.Sprintf("other:%T", v)
}

func is[T any](v any) bool {
	switch v.(type) {
	case T:
		return true
	case []T:
		return false
	}
	_, ok := v.(T)
	return ok
}

func main() {
	fmt.Println(describe(3), describe("s"), describe(Pair[string, int]{"k", 1}), describe(List[int]{4, 5}))
	fmt.Println(describe(Pair[int, int]{}), describe(List[string]{}), describe([]int{}))
	fmt.Println(is[int](1), is[string](1), is[error](fmt.Errorf("x")), is[List[int]](List[int]{}), is[[]int](List[int]{}))
	fmt.Println(is[fmt.Stringer](time.Second), is[any](nil))
}
