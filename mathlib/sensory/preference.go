package sensory

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// Votes are those of a panel for one of two samples: which they like better, say.
type Votes struct {
	First, Second string  // the samples
	ForFirst      int     // votes for the first
	ForSecond     int     // votes for the second
	Undecided     int     // no vote; they are left out of the test, and told of
	Tasters       int     // how many were asked
	LevelPct      float64 // the chance of a false alarm that is accepted, per cent; 5 if 0
}

// PreferenceTest is what votes for one of two samples tell.
type PreferenceTest struct {
	Votes   Votes
	PValue  float64 // the chance of votes at least as uneven if nobody preferred either, dimensionless, 0 to 1
	Needed  int     // votes for one sample from which on a preference is shown; more than there are votes if they are too few
	Shown   bool    // a preference is shown at the level of the votes
	LowPct  float64 // lower limit, at 95 %, of the share of people who prefer the first, per cent
	HighPct float64 // its upper limit, per cent
}

// Preference tells whether a panel prefers one of two samples, two-sided: either could have won. The chance and the limits
// are exact. It fails if the votes do not add up to the panel or nobody voted.
//
// Source: ISO 5495, two-sided, with the exact binomial distribution.
func Preference(v Votes) (PreferenceTest, error) {
	const fn = "sensory.Preference"
	if v.First == "" || v.Second == "" || v.First == v.Second {
		return PreferenceTest{}, fmt.Errorf("%s: the samples are called %q and %q; give two names", fn, v.First, v.Second)
	}
	if v.ForFirst < 0 || v.ForSecond < 0 || v.Undecided < 0 {
		return PreferenceTest{}, fmt.Errorf("%s: %d, %d and %d votes; give 0 or more of each", fn, v.ForFirst, v.ForSecond, v.Undecided)
	}
	n := v.ForFirst + v.ForSecond
	if n+v.Undecided != v.Tasters {
		return PreferenceTest{}, fmt.Errorf("%s: %d votes and %d undecided from %d tasters; every taster must be counted", fn, n, v.Undecided, v.Tasters)
	}
	if n == 0 {
		return PreferenceTest{}, fmt.Errorf("%s: none of the %d tasters voted; a test needs votes", fn, v.Tasters)
	}
	if v.LevelPct == 0 {
		v.LevelPct = 5
	}
	if err := quantity.CheckRange(fn, "the level", v.LevelPct, 0.0001, 50, "per cent", ""); err != nil {
		return PreferenceTest{}, err
	}
	most := max(v.ForFirst, v.ForSecond)
	t := PreferenceTest{Votes: v, PValue: math.Min(1, 2*atLeast(most, n, 0.5)), Needed: needed(n, 0.5, v.LevelPct/200)}
	t.Shown = most >= t.Needed
	low, high := limits(v.ForFirst, n, 0.95)
	t.LowPct, t.HighPct = 100*low, 100*high
	return t, nil
}

// String gives the votes, the chance and the verdict in words, in one line.
func (t PreferenceTest) String() string {
	v := t.Votes
	winner := v.First
	if v.ForSecond > v.ForFirst {
		winner = v.Second
	}
	verdict := fmt.Sprintf("%s is preferred (%s %%)", winner, short(v.LevelPct))
	switch n := v.ForFirst + v.ForSecond; {
	case t.Needed > n:
		verdict = fmt.Sprintf("nothing can be told: %d votes are too few even if all are for one (%s %%)", n, short(v.LevelPct))
	case !t.Shown:
		verdict = fmt.Sprintf("no preference is shown (%d votes for one would be needed at %s %%), which does not show that there is none", t.Needed, short(v.LevelPct))
	}
	s := fmt.Sprintf("%d for %s, %d for %s", v.ForFirst, v.First, v.ForSecond, v.Second)
	if v.Undecided > 0 {
		s += fmt.Sprintf(", %d undecided and left out", v.Undecided)
	}
	return fmt.Sprintf("%s, p = %s: %s; %.0f to %.0f %% of people prefer %s", s, chanceText(t.PValue), verdict, t.LowPct, t.HighPct, v.First)
}
