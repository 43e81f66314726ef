package colour

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// A fit of y = a g(p, t) with one shape parameter p above 0. a follows from p by least squares, so only ln p is searched, and
// the interval of p is the range in which the sum of squares stays under Student's threshold (a profile). It has no ±
// that could cross 0, and it says where the readings leave an end open.
type profiled struct {
	p, low, high      float64
	lowOpen, highOpen bool
	a, sd, sumSquares float64
	degrees           int
}

// z is the 97.5 per cent point of the normal distribution.
const z = 1.959963984540054

// fitProfile fits the shape g to n > 2 points between from and to. sd is the stated standard deviation of a reading, 0 if none.
func fitProfile(ts, ys []float64, g func(p, t float64) float64, from, to, sd float64) profiled {
	n := len(ts)
	sum := func(lnP float64) (s, a float64) {
		p := math.Exp(lnP)
		var gy, gg float64
		for i, t := range ts {
			v := g(p, t)
			gy += v * ys[i]
			gg += v * v
		}
		if gg > 0 {
			a = gy / gg
		}
		for i, t := range ts {
			d := ys[i] - a*g(p, t)
			s += d * d
		}
		return s, a
	}
	const points = 240
	lo, hi := math.Log(from), math.Log(to)
	at := func(i int) float64 { return lo + (hi-lo)*float64(i)/points }
	best, bestS := 0, math.Inf(1)
	for i := range points + 1 {
		if s, _ := sum(at(i)); s < bestS {
			best, bestS = i, s
		}
	}
	l, h := at(max(0, best-1)), at(min(points, best+1))
	const golden = 0.6180339887498949
	for range 100 {
		if c, d := h-golden*(h-l), l+golden*(h-l); first(sum(c)) < first(sum(d)) {
			h = d
		} else {
			l = c
		}
	}
	x := (l + h) / 2
	s, a := sum(x)
	r := profiled{p: math.Exp(x), a: a, sumSquares: s, degrees: n - 2}
	t := distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(r.degrees)}.Quantile(0.975)
	limit := math.Max(s*(1+t*t/float64(r.degrees)), s+z*z*sd*sd)
	r.sd = math.Sqrt(s / float64(r.degrees))
	edge := func(outer float64) (float64, bool) {
		if first(sum(outer)) <= limit {
			return math.Exp(outer), true
		}
		in, out := x, outer
		for range 100 {
			if m := (in + out) / 2; first(sum(m)) <= limit {
				in = m
			} else {
				out = m
			}
		}
		return math.Exp(in), false
	}
	r.low, r.lowOpen = edge(lo)
	r.high, r.highOpen = edge(hi)
	return r
}

func first(a, _ float64) float64 { return a }
