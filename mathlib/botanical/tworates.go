package botanical

import (
	"math"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize"
)

// apart is by how much the logarithm of the rate of washing must be above that of diffusion: nearer, they are one rate.
const apart = 0.1

// minimiseTwo finds two rates: from near, or from the best of a coarse grid, down the simplex of Nelder and Mead.
func (p *problem) minimiseTwo(cond func(ln [2]float64) condition, near *best) best {
	eval := func(ln [2]float64) best {
		if ln[0] < p.low || ln[1] > p.high || ln[1] < ln[0]+apart {
			return best{ln: ln, s: math.Inf(1)}
		}
		return p.eval(ln, cond)
	}
	out := best{s: math.Inf(1)}
	if near != nil {
		out = eval(near.ln)
	}
	if math.IsInf(out.s, 1) {
		for i := 0; i < gridPoints; i += 5 {
			for j := i + 5; j < gridPoints; j += 5 {
				if b := eval([2]float64{p.gridRate[i], p.gridRate[j]}); b.s < out.s {
					out = b
				}
			}
		}
	}
	if math.IsInf(out.s, 1) {
		return out
	}
	result, err := optimize.Minimize(
		optimize.Problem{Func: func(x []float64) float64 { return eval([2]float64{x[0], x[1]}).s }},
		[]float64{out.ln[0], out.ln[1]},
		&optimize.Settings{FuncEvaluations: 400, Converger: &optimize.FunctionConverge{Relative: 1e-12, Iterations: 40}},
		&optimize.NelderMead{SimplexSize: 0.1})
	if err != nil && result == nil {
		return out
	}
	if b := eval([2]float64{result.X[0], result.X[1]}); b.s < out.s {
		return b
	}
	return out
}

// mostAlike is the correlation from which two numbers of a fit cannot be told apart, dimensionless. Own choice.
const mostAlike = 0.98

// toldApart returns an error that names two numbers of the fit of two rates which the series does not tell apart.
func (p *problem) toldApart(fn string, b best) error {
	names := []string{"the end", "the washed share", "the rate of diffusion", "the rate of washing"}
	end, f := b.beta[0]+b.beta[1], 0.0
	if end > 0 {
		f = b.beta[0] / end
	}
	if b.beta[0] <= 0 || b.beta[1] <= 0 {
		return inputf(fn, "these readings show one rate only; fit FirstOrder")
	}
	at := func(x []float64, i int) float64 {
		c := p.at([2]float64{x[2], x[3]}, p.t[i])
		return x[0] * (x[1]*c[0] + (1-x[1])*c[1])
	}
	x := []float64{end, f, b.ln[0], b.ln[1]}
	n := len(x)
	j := mat.NewDense(len(p.t), n, nil)
	for k := range x {
		h := 1e-5 * math.Max(math.Abs(x[k]), 1e-3)
		up, down := append([]float64(nil), x...), append([]float64(nil), x...)
		up[k] += h
		down[k] -= h
		for i := range p.t {
			j.Set(i, k, (at(up, i)-at(down, i))/(2*h))
		}
	}
	var normal, inverse mat.Dense
	normal.Mul(j.T(), j)
	if err := inverse.Inverse(&normal); err != nil {
		return inputf(fn, "these readings do not tell two rates apart; fit WashedFirst, which washes at once")
	}
	for a := range n {
		for c := range a {
			r := inverse.At(a, c) / math.Sqrt(inverse.At(a, a)*inverse.At(c, c))
			if !(math.Abs(r) <= mostAlike) {
				return inputf(fn, "these readings do not tell %s and %s apart (correlation %.3f); fit WashedFirst, which washes at once, or read more often at the beginning", names[c], names[a], r)
			}
		}
	}
	return nil
}
