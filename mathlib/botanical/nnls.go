package botanical

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// nonNegative returns the x of no element below 0 that makes ‖Ax - b‖ least. A has a row for each equation. It is the
// algorithm of Lawson and Hanson, which ends because each set of columns in use is better than all before.
//
// Source: Lawson and Hanson, Solving Least Squares Problems (1974), chapter 23, from memory.
func nonNegative(a *mat.Dense, b []float64) []float64 {
	_, n := a.Dims()
	x := make([]float64, n)
	used := make([]bool, n)
	scale := mat.Norm(a, 2) * norm(b)
	for range 30 * n {
		w := gradient(a, b, x)
		best := -1
		for j := range n {
			if !used[j] && w[j] > 1e-12*scale && (best < 0 || w[j] > w[best]) {
				best = j
			}
		}
		if best < 0 {
			return x
		}
		used[best] = true
		for {
			z := leastSquares(a, b, used)
			worst := math.Inf(1)
			for j := range n {
				if used[j] && z[j] <= 0 {
					worst = math.Min(worst, x[j]/(x[j]-z[j]))
				}
			}
			if math.IsInf(worst, 1) {
				x = z
				break
			}
			for j := range n {
				if used[j] {
					x[j] += worst * (z[j] - x[j])
					if x[j] <= 1e-14*math.Abs(z[j]) || z[j] <= 0 && x[j] < 1e-13 {
						x[j], used[j] = 0, false
					}
				}
			}
			if !anyOf(used) {
				break
			}
		}
	}
	return x
}

func anyOf(used []bool) bool {
	for _, u := range used {
		if u {
			return true
		}
	}
	return false
}

// gradient returns Aᵀ(b - Ax): by how much each x would better the fit.
func gradient(a *mat.Dense, b, x []float64) []float64 {
	m, n := a.Dims()
	w := make([]float64, n)
	for i := range m {
		r := b[i]
		for j := range n {
			r -= a.At(i, j) * x[j]
		}
		for j := range n {
			w[j] += a.At(i, j) * r
		}
	}
	return w
}

// leastSquares solves for the columns in use; the others are 0.
func leastSquares(a *mat.Dense, b []float64, used []bool) []float64 {
	m, n := a.Dims()
	var columns []int
	for j := range n {
		if used[j] {
			columns = append(columns, j)
		}
	}
	sub := mat.NewDense(m, len(columns), nil)
	for k, j := range columns {
		for i := range m {
			sub.Set(i, k, a.At(i, j))
		}
	}
	var svd mat.SVD
	out := make([]float64, n)
	if !svd.Factorize(sub, mat.SVDThin) {
		return out
	}
	rank := svd.Rank(1e-13)
	if rank == 0 {
		return out
	}
	var z mat.Dense
	svd.SolveTo(&z, mat.NewDense(m, 1, b), rank)
	for k, j := range columns {
		out[j] = z.At(k, 0)
	}
	return out
}

func norm(x []float64) float64 {
	sum := 0.0
	for _, v := range x {
		sum += v * v
	}
	return math.Sqrt(sum)
}
