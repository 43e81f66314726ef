package equilibrium

import "math"

// root returns where f is 0 between a and b, at which f has the values fa and fb of unlike sign. It stops when the
// bracket is a few roundings wide. The answer is always inside the bracket.
//
// Source: Chandrupatla, Adv. Eng. Softw. 28 (1997) 145 (from memory): inverse quadratic interpolation where it is safe,
// bisection elsewhere.
func root(f func(float64) float64, a, b, fa, fb float64) float64 {
	if fa == 0 {
		return a
	}
	if fb == 0 {
		return b
	}
	var c, fc float64
	t := 0.5
	for range 200 {
		x := a + t*(b-a)
		fx := f(x)
		if (fx > 0) == (fa > 0) {
			c, fc = a, fa
		} else {
			c, fc = b, fb
			b, fb = a, fa
		}
		a, fa = x, fx
		best, fBest := a, fa
		if math.Abs(fb) < math.Abs(fa) {
			best, fBest = b, fb
		}
		tol := 4e-16*math.Abs(best) + 1e-300
		limit := tol / math.Abs(b-a)
		if limit > 0.5 || fBest == 0 {
			return best
		}
		xi, phi := (a-b)/(c-b), (fa-fb)/(fc-fb)
		if phi*phi < xi && (1-phi)*(1-phi) < 1-xi {
			t = fa/(fb-fa)*fc/(fb-fc) + (c-a)/(b-a)*fa/(fc-fa)*fb/(fc-fb)
		} else {
			t = 0.5
		}
		t = math.Min(math.Max(t, limit), 1-limit)
	}
	return a
}
