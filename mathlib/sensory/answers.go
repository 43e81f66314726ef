package sensory

import (
	"fmt"

	"swanneck/mathlib/quantity"
)

// Answers are those of a panel to a test of difference. Every taster's answer counts: right and wrong ones must add up to
// the panel. Whoever could not decide must guess; that is part of the test.
type Answers struct {
	Method    Method
	Right     int     // right answers
	Wrong     int     // wrong answers
	Tasters   int     // how many were asked
	LevelPct  float64 // the chance of a false alarm that is accepted, per cent; 5 if 0
	TwoSided  bool    // Paired only: nobody could know beforehand which sample would be chosen
	SuretyPct float64 // how often the limits of the d′ hold the true one, per cent; 95 if 0
	TellerPct float64 // only for Similar: the share of tasters who tell the difference that would still be accepted, per cent
}

func (a Answers) check(function string) (Answers, error) {
	if err := a.Method.check(function); err != nil {
		return a, err
	}
	if a.Tasters < 1 {
		return a, fmt.Errorf("%s: a panel of %d tasters; give the number that was asked, 1 or more", function, a.Tasters)
	}
	if a.Right < 0 || a.Wrong < 0 {
		return a, fmt.Errorf("%s: %d right and %d wrong answers; give 0 or more of each", function, a.Right, a.Wrong)
	}
	if given := a.Right + a.Wrong; given != a.Tasters {
		what := fmt.Sprintf("%d answers are missing", a.Tasters-given)
		if given > a.Tasters {
			what = fmt.Sprintf("%d answers are too many", given-a.Tasters)
		}
		return a, fmt.Errorf("%s: %d right and %d wrong answers from %d tasters: %s; ask again, or state the panel as it was", function, a.Right, a.Wrong, a.Tasters, what)
	}
	if a.TwoSided && a.Method != Paired {
		return a, fmt.Errorf("%s: a %v test has one right answer and is never two-sided", function, a.Method)
	}
	var err error
	if a.LevelPct, err = share(function, "the level", a.LevelPct, 5, 0.0001, 50); err != nil {
		return a, err
	}
	a.SuretyPct, err = share(function, "the surety", a.SuretyPct, 95, 50, 99.99)
	return a, err
}

// share returns a per cent, or the usual one for 0, if it lies in the range given.
func share(function, what string, pct, usual, low, high float64) (float64, error) {
	if pct == 0 {
		return usual, nil
	}
	return pct, quantity.CheckRange(function, what, pct, low, high, "per cent", "")
}
