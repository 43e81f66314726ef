package botanical

import "math"

// rateEdges returns between which ln k the rate lies; nil for an end that the series does not bound.
func (f Steep) rateEdges() (low, high *float64) {
	at := func(ln float64) float64 {
		if f.p.rates == 1 {
			return f.p.eval([2]float64{ln}, func([2]float64) condition { return condition{} }).s - f.threshold
		}
		return f.washAt(ln) - f.threshold
	}
	edge := func(way float64) *float64 {
		inside := f.fit.ln[0]
		end := f.p.high
		if way < 0 {
			end = f.p.low
		}
		step := (f.p.high - f.p.low) / (gridPoints - 1)
		for outside := inside; outside != end; {
			outside = outside + way*step
			if (end-outside)*way < 0 {
				outside = end
			}
			if at(outside) > 0 {
				x := bisect(inside, outside, at)
				return &x
			}
			inside = outside
		}
		return nil
	}
	return edge(-1), edge(1)
}

// washAt returns the least sum of squares with the rate of diffusion fixed, over the rate of washing.
func (f Steep) washAt(ln float64) float64 {
	cond := func([2]float64) condition { return condition{} }
	least, at := math.Inf(1), 0
	const n = 40
	from, to := ln+apart, f.p.high
	if from >= to {
		return f.p.eval([2]float64{ln, to}, cond).s
	}
	point := func(i int) float64 { return from + (to-from)*float64(i)/n }
	for i := range n + 1 {
		if s := f.p.eval([2]float64{ln, point(i)}, cond).s; s < least {
			least, at = s, i
		}
	}
	low, high := point(max(at-1, 0)), point(min(at+1, n))
	const ratio = 0.6180339887498949
	for range 30 {
		a, b := high-ratio*(high-low), low+ratio*(high-low)
		sa, sb := f.p.eval([2]float64{ln, a}, cond).s, f.p.eval([2]float64{ln, b}, cond).s
		least = math.Min(least, math.Min(sa, sb))
		if sa < sb {
			high = b
		} else {
			low = a
		}
	}
	return least
}

// profile finds the ends of the interval of a figure: where the best fit that keeps it, under the condition, is worse than
// the threshold. The figure lies from least to most; an end that runs into those, or far away, is not bounded.
func (f Steep) profile(e *Estimate, least, most float64, fixed func(x float64) func([2]float64) condition) {
	edge := func(way float64) (float64, bool) {
		near := f.fit
		at := func(x float64) float64 {
			b := f.p.minimise(fixed(x), &near)
			if !math.IsInf(b.s, 1) {
				near = b
			}
			return b.s - f.threshold
		}
		inside, outside := e.Value, e.Value
		scale := e.Value
		if !math.IsInf(most, 1) {
			scale = math.Max(scale, most/100)
		}
		step := 0.02 * scale
		for range 200 {
			outside += way * step
			if outside <= least || outside >= most {
				outside = math.Min(math.Max(outside, least), most)
				if at(outside) <= 0 {
					return outside, true // the figure cannot be beyond that
				}
				return bisect(inside, outside, at), true
			}
			if outside > 1e4*scale {
				return 0, false
			}
			if at(outside) > 0 {
				return bisect(inside, outside, at), true
			}
			inside = outside
			step *= 1.5
		}
		return 0, false
	}
	e.Low, e.HasLow = edge(-1)
	e.High, e.HasHigh = edge(1)
}

// bisect finds where f passes 0 between inside, where it is 0 or below, and outside, where it is above.
func bisect(inside, outside float64, f func(float64) float64) float64 {
	for range 60 {
		mid := (inside + outside) / 2
		if math.Abs(outside-inside) <= 1e-10*math.Abs(mid) {
			break
		}
		if f(mid) > 0 {
			outside = mid
		} else {
			inside = mid
		}
	}
	return (inside + outside) / 2
}
