// Go specification, "Interface types": unions, tildes, comparable and methods in constraints.

package main

import "fmt"

type Number interface {
	~int | ~int64 | ~uint8 | ~float32 | ~float64
}

type Grams float64

func Sum[T Number](xs ...T) (t T) {
	for _, x := range xs {
		t += x
	}
	return
}

type Labelled interface {
	~string
	Label() string
}

type Tag string

func (t Tag) Label() string { return "#" + string(t) }

func Join[T Labelled](ts []T) (s string) {
	for _, t := range ts {
		s += t.Label() + "(" + string(t[:1]) + ")"
	}
	return
}

func Index[T comparable](xs []T, x T) int {
	for i, v := range xs {
		if v == x {
			return i
		}
	}
	return -1
}

func Bytes[T []byte | string](x T) (n int) {
	for i := range len(x) {
		n += int(x[i])
	}
	return
}

func main() {
	fmt.Println(Sum(1, 2, 3), Sum(1.5, 2), Sum[uint8](200, 100), Sum(Grams(2), 0.5), Sum[int64]())
	fmt.Printf("%T\n", Sum(Grams(1)))
	fmt.Println(Join([]Tag{"dry", "oak"}))
	fmt.Println(Index([]string{"a", "b"}, "b"), Index([][2]int{{1, 2}}, [2]int{1, 2}), Index([]any{1, "1", nil}, any(nil)), Index([]error{}, nil))
	fmt.Println(Bytes("ab"), Bytes([]byte{1, 2}))
}
