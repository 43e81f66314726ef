// Go specification, "Type parameter declarations": generic types with methods, constructors and String.

package main

import (
	"errors"
	"fmt"
	"strings"
)

type Stack[T any] struct{ items []T }

func NewStack[T any](items ...T) *Stack[T] { return &Stack[T]{items: items} }
func (s *Stack[T]) Push(x T)               { s.items = append(s.items, x) }
func (s *Stack[T]) Pop() (x T, err error) {
	if len(s.items) == 0 {
		return x, errors.New("empty")
	}
	x = s.items[len(s.items)-1]
	s.items = s.items[:len(s.items)-1]
	return x, nil
}

func (s Stack[_]) Len() int { return len(s.items) }
func (s *Stack[T]) String() string {
	parts := make([]string, len(s.items))
	for i, x := range s.items {
		parts[i] = fmt.Sprint(x)
	}
	return "[" + strings.Join(parts, "|") + "]"
}

type Pair[K comparable, V any] struct {
	Key K
	Val V
}

func (p Pair[K, V]) Swap() Pair[string, K] { return Pair[string, K]{fmt.Sprint(p.Val), p.Key} }

func main() {
	s := NewStack(1, 2)
	s.Push(3)
	fmt.Println(s, s.Len())
	x, err := s.Pop()
	fmt.Println(x, err, s)
	var e Stack[string]
	y, err := e.Pop()
	fmt.Printf("%q %v\n", y, err)
	p := Pair[int, float64]{1, 2.5}
	fmt.Println(p, p.Swap(), p.Swap().Swap())
	fmt.Printf("%T %T %+v %#v\n", s, p.Swap(), p, Pair[string, []int]{"a", nil})
	fmt.Println(Pair[int, int]{1, 2} == Pair[int, int]{1, 2}, map[Pair[string, int]]int{{"k", 1}: 5})
	st := NewStack(Pair[string, int]{"a", 1})
	st.Push(Pair[string, int]{Key: "b"})
	fmt.Println(st)
}
