package sensory

import "gonum.org/v1/gonum/integrate/quad"

// integral returns the integral of a smooth function from a to b by Gauss and Legendre's rule, on pieces short enough for
// the normal distribution: the error is below 1e-12.
func integral(a, b float64, f func(float64) float64) float64 {
	const pieces, points = 6, 16
	width := (b - a) / pieces
	var sum float64
	for i := range pieces {
		from := a + float64(i)*width
		sum += quad.Fixed(f, from, from+width, points, quad.Legendre{}, 0)
	}
	return sum
}
