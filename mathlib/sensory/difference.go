package sensory

import (
	"fmt"
	"math"
	"strconv"

	"swanneck/mathlib/quantity"
)

// DifferenceTest is what a test of difference tells.
type DifferenceTest struct {
	Answers Answers
	PValue  float64 // the chance of as many right answers or more if everybody guessed, dimensionless, 0 to 1
	Needed  int     // right answers from which on the difference is shown; more than there are tasters if they are too few
	Shown   bool    // the difference is shown at the level of the answers

	TellersPct     float64 // estimate of the share who tell the difference and do not guess, per cent
	TellersLowPct  float64 // its lower limit, per cent
	TellersHighPct float64 // its upper limit, per cent

	DPrime     float64 // the sensory difference in standard deviations of the sensation, dimensionless; +Inf if all are right
	DPrimeLow  float64 // its lower limit, dimensionless
	DPrimeHigh float64 // its upper limit, dimensionless; +Inf if there is none
}

// Difference tells whether a panel's answers show a difference between two samples, and how large it is. The chance is that
// of the binomial distribution, exact; the limits are exact too, and hold back rather than promise. Fewer right answers
// than guessing gives are reported as a d′ of 0.
//
// It fails if the answers do not add up to the panel, for an unknown method, and for a level or surety out of range.
//
// Source: ISO 4120, ISO 10399 and ISO 5495 for the tests; Abbott's formula for the share of tellers; Method for d′.
func Difference(a Answers) (DifferenceTest, error) {
	const fn = "sensory.Difference"
	a, err := a.check(fn)
	if err != nil {
		return DifferenceTest{}, err
	}
	guess := a.Method.guess()
	t := DifferenceTest{Answers: a}
	if a.TwoSided {
		most := max(a.Right, a.Wrong)
		t.PValue = math.Min(1, 2*atLeast(most, a.Tasters, guess))
		t.Needed = needed(a.Tasters, guess, a.LevelPct/200)
		t.Shown = most >= t.Needed
	} else {
		t.PValue = atLeast(a.Right, a.Tasters, guess)
		t.Needed = needed(a.Tasters, guess, a.LevelPct/100)
		t.Shown = a.Right >= t.Needed
	}
	right := a.Right
	if a.TwoSided {
		right = max(a.Right, a.Wrong)
	}
	low, high := limits(right, a.Tasters, a.SuretyPct/100)
	seen := float64(right) / float64(a.Tasters)
	tellers := func(share float64) float64 { return 100 * math.Max((share-guess)/(1-guess), 0) }
	t.TellersPct, t.TellersLowPct, t.TellersHighPct = tellers(seen), tellers(low), tellers(high)
	t.DPrime, t.DPrimeLow, t.DPrimeHigh = a.Method.dPrime(seen), a.Method.dPrime(low), a.Method.dPrime(high)
	return t, nil
}

// String gives the answers, the chance, the verdict in words and the d′, in one line.
func (t DifferenceTest) String() string {
	a := t.Answers
	s := fmt.Sprintf("%v: %d of %d right, p = %s", a.Method, a.Right, a.Tasters, chanceText(t.PValue))
	return s + ": " + t.verdict() + fmt.Sprintf("; d′ = %s, %s %% from %s to %s", dText(t.DPrime), short(a.SuretyPct), dText(t.DPrimeLow), dText(t.DPrimeHigh))
}

func (t DifferenceTest) verdict() string {
	a := t.Answers
	switch {
	case t.Shown:
		return fmt.Sprintf("a difference is shown (%s %%)", short(a.LevelPct))
	case t.Needed > a.Tasters:
		return fmt.Sprintf("nothing can be told: %d tasters are too few even if all are right (%s %%)", a.Tasters, short(a.LevelPct))
	}
	return fmt.Sprintf("no difference is shown (%d right would be needed at %s %%), which does not show that there is none", t.Needed, short(a.LevelPct))
}

// Rows gives the test as a table, each row a label, a figure and a unit.
func (t DifferenceTest) Rows() [][]string {
	a := t.Answers
	rows := [][]string{
		{a.Method.String() + ", right answers", fmt.Sprintf("%d of %d", a.Right, a.Tasters), ""},
		{"chance of that by guessing", chanceText(t.PValue), ""},
	}
	if t.Needed <= a.Tasters {
		rows = append(rows, []string{fmt.Sprintf("right answers needed at %s %%", short(a.LevelPct)), strconv.Itoa(t.Needed), ""})
	}
	return append(rows,
		[]string{"verdict", t.verdict(), ""},
		[]string{"tasters who tell the difference", fmt.Sprintf("%.0f (%.0f to %.0f)", t.TellersPct, t.TellersLowPct, t.TellersHighPct), "%"},
		[]string{fmt.Sprintf("d′, and its limits at %s %%", short(a.SuretyPct)), fmt.Sprintf("%s (%s to %s)", dText(t.DPrime), dText(t.DPrimeLow), dText(t.DPrimeHigh)), ""})
}

// RightNeeded returns the fewest right answers with which a panel shows a difference, if a false alarm may come with the
// chance levelPct, in per cent. It fails for a panel so small that even all answers right would not do, for an unknown
// method, and for a level out of 0.0001 to 50 %.
//
// Source: as for Difference; reproduces the tables of ISO 4120 and ISO 10399.
func RightNeeded(m Method, tasters int, levelPct float64) (int, error) {
	const fn = "sensory.RightNeeded"
	a, err := Answers{Method: m, Wrong: tasters, Tasters: tasters, LevelPct: levelPct}.check(fn)
	if err != nil {
		return 0, err
	}
	k := needed(tasters, m.guess(), a.LevelPct/100)
	if k > tasters {
		return 0, fmt.Errorf("%s: %d of %d right in a %v test come about by guessing with %.2g %%, more than %s %%; take at least %d tasters",
			fn, tasters, tasters, m, 100*math.Pow(m.guess(), float64(tasters)), short(a.LevelPct), smallestPanel(m.guess(), a.LevelPct/100))
	}
	return k, nil
}

// smallestPanel returns how many tasters, all of them right, show a difference at a level; both dimensionless.
func smallestPanel(guess, level float64) int {
	return int(math.Ceil(math.Log(level)/math.Log(guess) - 1e-9))
}

// DPrimeOf returns the d′ at which sharePct per cent of the answers are expected to be right, dimensionless: 0 for what
// guessing gives or less. It fails for a share that is not from 0 to below 100 %, and for an unknown method.
//
// Source: as for Method.
func DPrimeOf(m Method, sharePct float64) (float64, error) {
	const fn = "sensory.DPrimeOf"
	if err := m.check(fn); err != nil {
		return 0, err
	}
	if sharePct == 100 {
		return 0, fmt.Errorf("%s: all answers are right, so the difference may be as large as it likes; give a share below 100 %%", fn)
	}
	if err := quantity.CheckRange(fn, "the share of right answers", sharePct, 0, 100, "per cent", ""); err != nil {
		return 0, err
	}
	return m.dPrime(sharePct / 100), nil
}

// RightPct returns how many of the answers are expected to be right, in per cent, for a sensory difference of dPrime
// standard deviations, from 0 to 30. It fails for another, and for an unknown method.
//
// Source: as for Method. Agrees with printed tables to their last digit.
func RightPct(m Method, dPrime float64) (float64, error) {
	const fn = "sensory.RightPct"
	if err := m.check(fn); err != nil {
		return 0, err
	}
	if err := checkD(fn, dPrime); err != nil {
		return 0, err
	}
	return 100 * m.right(dPrime), nil
}

// chanceText prints a chance, dimensionless, with as much as it is worth.
func chanceText(p float64) string {
	switch {
	case p < 0.0001:
		return "below 0.0001"
	case p < 0.01:
		return fmt.Sprintf("%.4f", p)
	}
	return fmt.Sprintf("%.3f", p)
}

func dText(d float64) string {
	if math.IsInf(d, 1) {
		return "∞"
	}
	return fmt.Sprintf("%.2f", d)
}

// short prints a number with at most six significant digits.
func short(x float64) string { return strconv.FormatFloat(x, 'g', 6, 64) }
