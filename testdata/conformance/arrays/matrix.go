// Go specification, "Array types": two-dimensional arrays as values: product, transpose, power.

package main

import "fmt"

type Matrix [2][2]int

var identity = Matrix{{1, 0}, {0, 1}}

func (a Matrix) Mul(b Matrix) (c Matrix) {
	for i := range a {
		for j := range b[0] {
			for k := range b {
				c[i][j] += a[i][k] * b[k][j]
			}
		}
	}
	return
}

func (a Matrix) T() Matrix { return Matrix{{a[0][0], a[1][0]}, {a[0][1], a[1][1]}} }

func (a Matrix) Pow(n int) Matrix {
	r := identity
	for ; n > 0; n >>= 1 {
		if n&1 == 1 {
			r = r.Mul(a)
		}
		a = a.Mul(a)
	}
	return r
}

func main() {
	f := Matrix{{1, 1}, {1, 0}}
	for _, n := range []int{0, 1, 2, 10, 50} {
		fmt.Println(n, f.Pow(n)[0][1])
	}
	m := Matrix{{1, 2}, {3, 4}}
	fmt.Println(m, m.T(), m.Mul(m.T()), m == m.T().T())
	row := m[1]
	row[0] = -9
	fmt.Println(m, row)
}
