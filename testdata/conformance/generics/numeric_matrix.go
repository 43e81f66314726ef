// Go specification, "Type parameter declarations": a generic matrix over several number types.

package main

import "fmt"

type Num interface {
	~int | ~float64 | ~complex128
}

type Matrix[T Num] [][]T

func New[T Num](rows, cols int, f func(i, j int) T) Matrix[T] {
	m := make(Matrix[T], rows)
	for i := range m {
		m[i] = make([]T, cols)
		for j := range m[i] {
			m[i][j] = f(i, j)
		}
	}
	return m
}

func (a Matrix[T]) Mul(b Matrix[T]) Matrix[T] {
	return New(len(a), len(b[0]), func(i, j int) (s T) {
		for k := range b {
			s += a[i][k] * b[k][j]
		}
		return
	})
}

func (a Matrix[T]) Trace() (t T) {
	for i := range a {
		t += a[i][i]
	}
	return
}

func Identity[T Num](n int) Matrix[T] {
	return New(n, n, func(i, j int) T {
		if i == j {
			return 1
		}
		return 0
	})
}

func main() {
	a := New(2, 2, func(i, j int) int { return i + 2*j })
	fmt.Println(a, a.Mul(a), a.Mul(Identity[int](2)), a.Trace())
	b := Matrix[float64]{{0.5, 1}, {2, 4}}
	fmt.Println(b.Mul(b), b.Trace(), Identity[float64](1))
	c := Matrix[complex128]{{1i}}
	fmt.Println(c.Mul(c), c.Trace())
	fmt.Printf("%T %T\n", a, c)
}
