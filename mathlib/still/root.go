package still

import "math"

// root returns where f, which has the values fa and fb of unlike sign at a and b, goes through 0, to within tol. The answer
// lies inside the bracket. It takes at most two evaluations more than bisection, mostly far fewer.
//
// Source: Oliveira and Takahashi, ACM Trans. Math. Softw. 47 (2020) 5 (from memory): interpolate, truncate, project, with
// their k1 = 0.2/(b-a), k2 = 2, n0 = 1.
func root(f func(float64) float64, a, b, fa, fb, tol float64) float64 {
	if fa == 0 {
		return a
	}
	if fb == 0 {
		return b
	}
	if a > b {
		a, b, fa, fb = b, a, fb, fa
	}
	sign := math.Copysign(1, fb) // so that sign*f rises
	k1 := 0.2 / (b - a)
	half := math.Max(math.Ceil(math.Log2((b-a)/(2*tol))), 0)
	for j := 0; j < 300 && b-a > 2*tol; j++ {
		mid := (a + b) / 2
		if mid <= a || mid >= b {
			break
		}
		reach := tol*math.Exp2(half+1-float64(j)) - (b-a)/2
		secant := (fb*a - fa*b) / (fb - fa)
		toward := math.Copysign(1, mid-secant)
		x := mid
		if d := k1 * (b - a) * (b - a); d <= math.Abs(mid-secant) {
			x = secant + toward*d
		}
		if math.Abs(x-mid) > reach {
			x = mid - toward*math.Max(reach, 0)
		}
		if !(x > a && x < b) {
			x = mid
		}
		switch fx := f(x); {
		case sign*fx > 0:
			b, fb = x, fx
		case sign*fx < 0:
			a, fa = x, fx
		default:
			return x
		}
	}
	if math.Abs(fa) < math.Abs(fb) {
		return a
	}
	return b
}
