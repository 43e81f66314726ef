// Go specification, "Type parameter declarations": a type parameter used in its own constraint.

package main

import "fmt"

type Adder[A Adder[A]] interface {
	Add(A) A
	IsZero() bool
}

type Money struct{ cents int }
type Vec [2]int

func (m Money) Add(o Money) Money { return Money{m.cents + o.cents} }
func (m Money) IsZero() bool      { return m.cents == 0 }
func (v Vec) Add(o Vec) Vec       { return Vec{v[0] + o[0], v[1] + o[1]} }
func (v Vec) IsZero() bool        { return v == Vec{} }

func Total[A Adder[A]](xs ...A) (t A, nonZero int) {
	for _, x := range xs {
		t = t.Add(x)
		if !x.IsZero() {
			nonZero++
		}
	}
	return
}

type Lesser[T any] interface{ Less(T) bool }

func Min[T Lesser[T]](a T, rest ...T) T {
	for _, r := range rest {
		if r.Less(a) {
			a = r
		}
	}
	return a
}

func (m Money) Less(o Money) bool { return m.cents < o.cents }

func main() {
	fmt.Println(Total(Money{150}, Money{}, Money{99}))
	fmt.Println(Total(Vec{1, 2}, Vec{3, -2}, Vec{}))
	fmt.Println(Min(Money{5}, Money{3}, Money{9}), Min(Money{1}))
}
