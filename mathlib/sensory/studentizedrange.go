package sensory

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// rangeBeyond returns the chance that the largest and the smallest of k normal numbers of standard deviation 1 lie further
// apart than q, dimensionless: the studentized range with unlimited degrees of freedom.
//
// Source: the definition of the range, P(range ≤ q) = k ∫ φ(x) [Φ(x) - Φ(x-q)]^(k-1) dx with x the largest.
func rangeBeyond(k int, q float64) float64 {
	if q <= 0 {
		return 1
	}
	within := float64(k) * integral(-9, 9, func(x float64) float64 {
		return distuv.UnitNormal.Prob(x) * math.Pow(distuv.UnitNormal.CDF(x)-distuv.UnitNormal.CDF(x-q), float64(k-1))
	})
	return math.Min(math.Max(1-within, 0), 1)
}

// rangeQuantile returns the q that is exceeded with the chance level, both dimensionless.
func rangeQuantile(k int, level float64) float64 {
	low, high := 0.0, 40.0
	for range 200 {
		mid := low + (high-low)/2
		if rangeBeyond(k, mid) > level {
			low = mid
		} else {
			high = mid
		}
	}
	return high
}
