package uncertainty

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// Agreement says whether the short way, FirstOrder, was good enough for a measurement.
type Agreement struct {
	Unit    string
	Digits  int     // significant digits of the standard uncertainty that are to be right
	Delta   float64 // what those digits allow the ends of the interval to differ, in the unit named
	LowOff  float64 // how far the low ends differ, in the unit named
	HighOff float64 // how far the high ends differ, in the unit named
	Agrees  bool    // neither differs by more than Delta
}

// Compare tells whether the interval of a budget agrees with that of the draws to so many significant digits of the
// standard uncertainty, 1 or 2: both ends within half a unit of the last digit. If not, take the interval of the draws.
// Draws scatter themselves: for 2 digits make a million or more. It fails for other digits, and for results that differ
// in their unit or coverage.
//
// Source: JCGM 101:2008, clause 8.1, with the shortest interval.
func Compare(b Budget, d Draws, digits int) (Agreement, error) {
	const fn = "uncertainty.Compare"
	if err := quantity.CheckRange(fn, "the number of digits", float64(digits), 1, 2, "", ""); err != nil {
		return Agreement{}, err
	}
	if b.Unit != d.Unit || b.CoveragePct != d.CoveragePct {
		return Agreement{}, fmt.Errorf("%s: the budget is in %q at %v %%, the draws in %q at %v %%; compare two answers to one question", fn, b.Unit, b.CoveragePct, d.Unit, d.CoveragePct)
	}
	a := Agreement{Unit: b.Unit, Digits: digits, LowOff: math.Abs(b.Value - b.Expanded - d.Low), HighOff: math.Abs(b.Value + b.Expanded - d.High)}
	if b.Standard > 0 {
		a.Delta = tolerance(b.Standard, digits)
	}
	a.Agrees = a.LowOff <= a.Delta && a.HighOff <= a.Delta
	return a, nil
}

// tolerance returns half a unit of the last of so many significant digits of a standard uncertainty, in its unit.
//
// Source: JCGM 101:2008, 7.9.2.
func tolerance(standard float64, digits int) float64 {
	place := int(math.Floor(math.Log10(standard)))
	if math.Round(standard/math.Pow(10, float64(place-digits+1))) >= math.Pow(10, float64(digits)) {
		place++
	}
	return math.Pow(10, float64(place-digits+1)) / 2
}

// String says in one line whether the two agree and by how much they differ.
func (a Agreement) String() string {
	word := "agree"
	if !a.Agrees {
		word = "disagree: take the interval of the draws;"
	}
	digits := "1 digit"
	if a.Digits != 1 {
		digits = fmt.Sprintf("%d digits", a.Digits)
	}
	return fmt.Sprintf("first order and draws %s to %s (ends differ by %s and %s %s, allowed %s)",
		word, digits, plain2(a.LowOff), plain2(a.HighOff), a.Unit, plain2(a.Delta))
}

func plain2(x float64) string {
	if x == 0 {
		return "0"
	}
	_, s := figures(0, x)
	return s
}
