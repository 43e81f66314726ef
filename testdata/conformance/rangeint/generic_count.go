// Go specification, "For statements with range clause": integer ranges in generic code.

package main

import "fmt"

type Integer interface {
	~int8
}

func Count[T Integer](n T) []T {
	var out []T
	for i := range n {
		out = append(out, i*i)
	}
	return out
}

type Shelf int8

func (s Shelf) String() string { return fmt.Sprintf("shelf-%c", 'A'+rune(s)) }

func Repeat[T any](n int, f func(int) T) []T {
	out := make([]T, 0, n)
	for i := range n {
		out = append(out, f(i))
	}
	return out
}

func main() {
	fmt.Println(Count(int8(4)), Count(Shelf(3)))
	fmt.Printf("%T %T\n", Count(int8(1)), Count(Shelf(1)))
	fmt.Println(Repeat(3, func(i int) string { return string(rune('x' + i)) }))
	fmt.Println(Repeat(4, func(i int) Shelf { return Shelf(3 - i) }))
	for s := range Shelf(2) {
		fmt.Print(s, " ")
	}
	fmt.Println()
}
