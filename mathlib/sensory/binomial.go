package sensory

import (
	"math"

	"gonum.org/v1/gonum/mathext"
)

// atLeast returns the chance of k or more right answers of n, each right with the chance p; all dimensionless.
func atLeast(k, n int, p float64) float64 {
	switch {
	case k <= 0:
		return 1
	case k > n:
		return 0
	}
	return mathext.RegIncBeta(float64(k), float64(n-k+1), p)
}

// needed returns the fewest right answers of n that come about by chance alone with at most the chance level, all
// dimensionless; n+1 if even n right answers do not.
func needed(n int, guess, level float64) int {
	// A chance that equals the level to the last digits counts as reaching it, as in the printed tables.
	low, high := 0, n+1
	for low < high {
		mid := (low + high) / 2
		if atLeast(mid, n, guess) <= level*(1+1e-12) {
			high = mid
		} else {
			low = mid + 1
		}
	}
	return low
}

// limits returns the exact confidence limits of a share of which right of n were seen, each missed with the chance
// (1-confidence)/2 at most; all dimensionless.
//
// Source: C. J. Clopper, E. S. Pearson, Biometrika 26 (1934) 404–413.
func limits(right, n int, confidence float64) (low, high float64) {
	tail := (1 - confidence) / 2
	k, m := float64(right), float64(n)
	low, high = 0, 1
	if right > 0 {
		low = mathext.InvRegIncBeta(k, m-k+1, tail)
	}
	if right < n {
		high = mathext.InvRegIncBeta(k+1, m-k, 1-tail)
	}
	return math.Max(low, 0), math.Min(high, 1)
}
