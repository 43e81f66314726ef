package still

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// leastSquares looks for the parameters at which the sum of the squares of the residuals is least, from a start, in at most
// so many rounds. residuals returns nil where there are none.
//
// Source: Levenberg, Quart. Appl. Math. 2 (1944) 164; Marquardt, J. SIAM 11 (1963) 431 (from memory). Slopes by central
// differences.
func leastSquares(residuals func(p []float64) []float64, start []float64, rounds int) (best []float64, r []float64, slopes *mat.Dense) {
	p := append([]float64(nil), start...)
	r = residuals(p)
	if r == nil {
		return nil, nil, nil
	}
	if len(p) == 0 {
		return p, r, nil
	}
	cost := sumOfSquares(r)
	lambda := 1e-3
	for range rounds {
		slopes = differences(residuals, p, len(r))
		if slopes == nil {
			return p, r, nil
		}
		var normal mat.Dense
		normal.Mul(slopes.T(), slopes)
		var gradient mat.VecDense
		gradient.MulVec(slopes.T(), mat.NewVecDense(len(r), r))
		better := false
		if cost < 1e-12 {
			break
		}
		for range 12 {
			damped := mat.DenseCopyOf(&normal)
			for i := range p {
				damped.Set(i, i, normal.At(i, i)*(1+lambda)+1e-12)
			}
			var step mat.VecDense
			if err := step.SolveVec(damped, &gradient); err != nil {
				lambda *= 10
				continue
			}
			next := append([]float64(nil), p...)
			for i := range next {
				next[i] -= step.AtVec(i)
			}
			rn := residuals(next)
			if rn == nil || !(sumOfSquares(rn) < cost) {
				lambda *= 4
				continue
			}
			gain := cost - sumOfSquares(rn)
			p, r, better = next, rn, gain > 1e-12*cost
			cost = sumOfSquares(rn)
			lambda = math.Max(lambda/5, 1e-9)
			break
		}
		if !better {
			break
		}
	}
	return p, r, differences(residuals, p, len(r))
}

// differences returns the slopes of the residuals by each parameter.
func differences(residuals func(p []float64) []float64, p []float64, n int) *mat.Dense {
	out := mat.NewDense(n, len(p), nil)
	for j := range p {
		h := 1e-4 * math.Max(math.Abs(p[j]), 0.3)
		q := append([]float64(nil), p...)
		q[j] = p[j] + h
		up := residuals(q)
		q[j] = p[j] - h
		down := residuals(q)
		if up == nil || down == nil {
			return nil
		}
		for i := range n {
			out.Set(i, j, (up[i]-down[i])/(2*h))
		}
	}
	return out
}

func sumOfSquares(r []float64) float64 {
	sum := 0.0
	for _, x := range r {
		sum += x * x
	}
	return sum
}

// covariance returns the inverse of the normal matrix, and the largest correlation of two parameters. It fails where the
// residuals do not tell the parameters apart at all.
func covariance(slopes *mat.Dense) (c *mat.Dense, correlation float64, ok bool) {
	if slopes == nil {
		return nil, 1, false
	}
	var normal, inverse mat.Dense
	normal.Mul(slopes.T(), slopes)
	if err := inverse.Inverse(&normal); err != nil {
		return nil, 1, false
	}
	n, _ := inverse.Dims()
	for i := range n {
		if !(inverse.At(i, i) > 0) {
			return nil, 1, false
		}
		for j := range i {
			correlation = math.Max(correlation, math.Abs(inverse.At(i, j))/math.Sqrt(inverse.At(i, i)*inverse.At(j, j)))
		}
	}
	return &inverse, correlation, true
}
