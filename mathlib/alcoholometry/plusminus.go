package alcoholometry

import (
	"math"

	"swanneck/mathlib/quantity"
)

// Tolerances says how far the two instruments behind a true strength may be wrong, either way.
type Tolerances struct {
	ReadingABV float64 // of the alcoholometer and its reading, % vol on its scale; 0 or more
	TempC      float64 // of the thermometer and its reading, °C; 0 or more
}

// StrengthPlusMinus returns how far TrueStrength(readingABV, t, opts...) may be wrong either way, in per cent by
// volume at 20 °C, if the alcoholometer and the thermometer may be wrong by tol.
//
// The two effects are taken as independent, small, and of one level of confidence (both standard uncertainties, or
// both at 95 %), and are added as the root of the sum of squares; the answer is then of that level too. It covers
// these two instruments only, not what is dissolved in the spirit. It fails as TrueStrength does, and for a tolerance
// that is negative.
//
// Source: JCGM 100:2008 (GUM), 5.1.2, first order, uncorrelated inputs.
func StrengthPlusMinus(readingABV float64, t quantity.Temperature, tol Tolerances, opts ...Option) (float64, error) {
	const fn = "alcoholometry.StrengthPlusMinus"
	if err := quantity.CheckRange(fn, "tolerance of the reading", tol.ReadingABV, 0, 100, "% vol", ""); err != nil {
		return 0, err
	}
	if err := quantity.CheckRange(fn, "tolerance of the temperature", tol.TempC, 0, maxC-minC, "°C", ""); err != nil {
		return 0, err
	}
	in, err := alcoholometer(fn, opts)
	if err != nil {
		return 0, err
	}
	centre, err := in.strength(fn, readingABV, t)
	if err != nil {
		return 0, err
	}
	byReading, err := slope(centre.ABV(), func(d float64) (Strength, error) { return in.strength(fn, readingABV+d, t) })
	if err != nil {
		return 0, err
	}
	byTemp, err := slope(centre.ABV(), func(d float64) (Strength, error) {
		moved, err := quantity.Celsius(t.C() + d)
		if err != nil {
			return Strength{}, err
		}
		return in.strength(fn, readingABV, moved)
	})
	if err != nil {
		return 0, err
	}
	return math.Hypot(byReading*tol.ReadingABV, byTemp*tol.TempC), nil
}

// slope returns the derivative, % vol per unit of the step, of a strength around its centre. At an end of the range
// it looks to the one side that is inside.
func slope(centreABV float64, at func(step float64) (Strength, error)) (float64, error) {
	const h = 1e-3
	up, upErr := at(h)
	down, downErr := at(-h)
	switch {
	case upErr == nil && downErr == nil:
		return (up.ABV() - down.ABV()) / (2 * h), nil
	case upErr == nil:
		return (up.ABV() - centreABV) / h, nil
	case downErr == nil:
		return (centreABV - down.ABV()) / h, nil
	}
	return 0, upErr
}
