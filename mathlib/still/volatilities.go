package still

import (
	"math"

	"swanneck/mathlib/equilibrium"
)

// volatilities is a table of 1/K of the traces along a boiling line, where K is the mole fraction in the vapour over that in
// the liquid: on plates it is 1/K that is asked for, some sixty thousand times in a run, and a polynomial is quicker than an
// exponential. Steps are even in the square root of the mole fraction of ethanol, as those of the Curve it is made from.
//
// Accuracy: within 5e-6 of the K of the Curve, which is within 5e-5 of what it is a table of.
type volatilities struct {
	traces int
	steps  [][4]float64 // step by step, in each the traces in turn
}

const volatilitySteps = 128

func newVolatilities(c *equilibrium.Curve, traces int) *volatilities {
	v := &volatilities{traces, make([][4]float64, volatilitySteps*traces)}
	if traces == 0 {
		return v
	}
	lnK := make([]float64, traces)
	values := make([]float64, (volatilitySteps+1)*traces)
	for i := range volatilitySteps + 1 {
		s := float64(i) / volatilitySteps
		c.LnK(s*s, lnK)
		for k, ln := range lnK {
			values[i*traces+k] = math.Exp(-ln)
		}
	}
	at := func(i, k int) float64 {
		if i < 0 {
			i = -i // smooth in the mole fraction is even in its root
		}
		return values[i*traces+k]
	}
	slope := func(i, k int) float64 { // per step, by five points
		const n = volatilitySteps
		switch i {
		case n:
			return (25*at(n, k) - 48*at(n-1, k) + 36*at(n-2, k) - 16*at(n-3, k) + 3*at(n-4, k)) / 12
		case n - 1:
			return (3*at(n, k) + 10*at(n-1, k) - 18*at(n-2, k) + 6*at(n-3, k) - at(n-4, k)) / 12
		}
		return (at(i-2, k) - 8*at(i-1, k) + 8*at(i+1, k) - at(i+2, k)) / 12
	}
	for i := range volatilitySteps {
		for k := range traces {
			a, b, p, q := at(i, k), at(i+1, k), slope(i, k), slope(i+1, k)
			v.steps[i*traces+k] = [4]float64{a, p, 3*(b-a) - 2*p - q, 2*(a-b) + p + q}
		}
	}
	return v
}

// inverse puts 1/K of each trace over the liquid x into out.
func (v *volatilities) inverse(x float64, out []float64) {
	f := math.Sqrt(x) * volatilitySteps
	i := min(int(f), volatilitySteps-1)
	f -= float64(i)
	out = out[:v.traces]
	for k, a := range v.steps[i*v.traces : (i+1)*v.traces] {
		out[k] = a[0] + f*(a[1]+f*(a[2]+f*a[3]))
	}
}
