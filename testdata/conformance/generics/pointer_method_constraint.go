// Go specification, "Type parameter declarations": a constraint that demands pointer methods of T.

package main

import (
	"fmt"
	"strconv"
)

type Setter[T any] interface {
	*T
	Set(string) error
}

type Temp struct{ c float64 }
type Count int

func (t *Temp) Set(s string) (err error) { t.c, err = strconv.ParseFloat(s, 64); return }
func (c *Count) Set(s string) error {
	n, err := strconv.Atoi(s)
	*c = Count(n)
	return err
}

func Parse[T any, P Setter[T]](ss ...string) ([]T, error) {
	out := make([]T, len(ss))
	for i, s := range ss {
		if err := P(&out[i]).Set(s); err != nil {
			return out[:i], fmt.Errorf("item %d: %w", i, err)
		}
	}
	return out, nil
}

type Number interface{ ~int | ~float64 }

func Scale[S ~[]E, E Number](s S, k E) S {
	r := make(S, len(s))
	for i, v := range s {
		r[i] = v * k
	}
	return r
}

type Point []float64

func (p Point) Norm1() (n float64) {
	for _, v := range p {
		n += v
	}
	return
}

func main() {
	fmt.Println(Parse[Temp]("20.5", "78"))
	fmt.Println(Parse[Count]("3", "x", "4"))
	fmt.Println(Scale(Point{1, 2}, 3).Norm1(), Scale([]int{1, 2}, 2))
	fmt.Printf("%T\n", Scale(Point{}, 1))
}
