package sensory

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// PanelFor says what a panel is to find. Give DPrime or TellersPct, one of the two.
type PanelFor struct {
	Method     Method
	DPrime     float64 // the sensory difference that is not to be missed, dimensionless; above 0
	TellersPct float64 // or the share of tasters who tell it, per cent; above 0, at most 100
	LevelPct   float64 // the chance of a false alarm that is accepted, per cent; 5 if 0
	PowerPct   float64 // the chance to find the difference that is wanted, per cent; 80 if 0
	TwoSided   bool    // Paired only: either sample may be chosen
}

// Panel is how many tasters a difference takes.
type Panel struct {
	For      PanelFor
	Tasters  int     // every panel from this size on reaches the power
	First    int     // the smallest panel that reaches it; a few more tasters may fall short again, since answers are counted
	Needed   int     // right answers that Tasters must give
	PowerPct float64 // the chance that Tasters find the difference, per cent
}

// mostTasters is the largest panel that PanelSize looks at.
const mostTasters = 5000

// PanelSize returns how many tasters it takes to find a difference with the wanted power, by the exact binomial
// distribution. It fails for a difference so small that 5000 tasters do not, for an unknown method, and for shares out of
// range.
//
// Source: ISO 4120 and ISO 10399, annex on the number of assessors, whose tables give the smallest panel.
func PanelSize(f PanelFor) (Panel, error) {
	const fn = "sensory.PanelSize"
	f, p, err := f.resolve(fn)
	if err != nil {
		return Panel{}, err
	}
	return f.size(fn, p)
}

// resolve checks what is to be found, puts the usual values in and returns the share of right answers it means.
func (f PanelFor) resolve(fn string) (PanelFor, float64, error) {
	if err := f.Method.check(fn); err != nil {
		return f, 0, err
	}
	if (f.DPrime != 0) == (f.TellersPct != 0) {
		return f, 0, fmt.Errorf("%s: give the difference by DPrime or by TellersPct, one of the two, above 0", fn)
	}
	if f.TwoSided && f.Method != Paired {
		return f, 0, fmt.Errorf("%s: a %v test has one right answer and is never two-sided", fn, f.Method)
	}
	var err error
	if f.LevelPct, err = share(fn, "the level", f.LevelPct, 5, 0.0001, 50); err != nil {
		return f, 0, err
	}
	if f.PowerPct, err = share(fn, "the power", f.PowerPct, 80, 1, 99.99); err != nil {
		return f, 0, err
	}
	if f.DPrime != 0 {
		if err := checkD(fn, f.DPrime); err != nil {
			return f, 0, err
		}
		return f, f.Method.right(f.DPrime), nil
	}
	if err := quantity.CheckRange(fn, "the share of tellers", f.TellersPct, 0, 100, "per cent", ""); err != nil {
		return f, 0, err
	}
	guess := f.Method.guess()
	return f, guess + (1-guess)*f.TellersPct/100, nil
}

// size looks for the panel from large to small.
func (f PanelFor) size(fn string, p float64) (Panel, error) {
	out := Panel{For: f, Tasters: 1}
	guess, level := f.Method.guess(), f.levelOneSided()
	k := needed(mostTasters, guess, level)
	for n := mostTasters; n >= 1; n-- {
		if k > 0 && atLeast(k-1, n, guess) <= level*(1+1e-12) { // one taster less needs one right answer less, or the same
			k--
		}
		if power := f.powerOf(n, k, p); power >= f.PowerPct/100 {
			out.First = n
			continue
		} else if n == mostTasters {
			return Panel{}, fmt.Errorf("%s: %d tasters find a difference of which %.2f %% of the answers are right with %.1f %% only; look for a larger difference or be content with less",
				fn, n, 100*p, 100*power)
		}
		out.Tasters = max(out.Tasters, n+1)
	}
	out.Needed = needed(out.Tasters, guess, level)
	out.PowerPct = 100 * f.powerOf(out.Tasters, out.Needed, p)
	return out, nil
}

// levelOneSided returns the chance of a false alarm on one side, dimensionless.
func (f PanelFor) levelOneSided() float64 {
	if f.TwoSided {
		return f.LevelPct / 200
	}
	return f.LevelPct / 100
}

// powerOf returns the chance that n tasters give k right answers or more, dimensionless.
func (f PanelFor) powerOf(n, k int, p float64) float64 {
	if f.TwoSided {
		return atLeast(k, n, p) + atLeast(k, n, 1-p)
	}
	return atLeast(k, n, p)
}

// Power returns the chance, in per cent, that a panel of so many tasters finds the difference that f describes; f.PowerPct
// is not used. It fails as PanelSize does, and for no tasters.
func Power(f PanelFor, tasters int) (float64, error) {
	const fn = "sensory.Power"
	if err := quantity.CheckRange(fn, "the number of tasters", float64(tasters), 1, mostTasters, "", ""); err != nil {
		return 0, err
	}
	f, p, err := f.resolve(fn)
	if err != nil {
		return 0, err
	}
	return 100 * f.powerOf(tasters, needed(tasters, f.Method.guess(), f.levelOneSided()), p), nil
}

func checkD(function string, d float64) error {
	return quantity.CheckRange(function, "d′", d, 0, farthest, "", "")
}

// String gives the panel in one line.
func (p Panel) String() string {
	of := fmt.Sprintf("d′ = %s", short(p.For.DPrime))
	if p.For.DPrime == 0 {
		of = fmt.Sprintf("%s %% of tasters who tell", short(p.For.TellersPct))
	}
	s := fmt.Sprintf("%v, %s: %d tasters, of whom %d must be right, find it with %.0f %% (false alarm at most %s %%)",
		p.For.Method, of, p.Tasters, p.Needed, math.Floor(p.PowerPct), short(p.For.LevelPct))
	if p.First < p.Tasters {
		s += fmt.Sprintf("; %d would do, but not every panel between", p.First)
	}
	return s
}
