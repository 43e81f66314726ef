package sensory

import (
	"fmt"

	"swanneck/mathlib/quantity"
)

// SimilarityTest is what a test tells that is to show that two samples are as good as the same.
type SimilarityTest struct {
	Answers Answers
	PValue  float64 // the chance of as few right answers or fewer if TellerPct of the tasters told the difference, dimensionless
	AtMost  int     // right answers up to which likeness is shown; -1 if the panel is too small for any
	Shown   bool    // likeness is shown at the level of the answers
}

// Similar tells whether a panel's answers show that no more than Answers.TellerPct per cent of people tell two samples
// apart: a new batch from the old one, say. The level is the chance to find likeness where that many do tell. It fails as
// Difference does, and for a TellerPct that is not above 0 and below 100.
//
// Source: ISO 4120 and ISO 10399, similarity tests, with the exact binomial distribution.
func Similar(a Answers) (SimilarityTest, error) {
	const fn = "sensory.Similar"
	a, err := a.check(fn)
	if err != nil {
		return SimilarityTest{}, err
	}
	if err := quantity.CheckRange(fn, "the share of tasters who may tell (TellerPct)", a.TellerPct, 0.01, 99.99, "per cent", ""); err != nil {
		return SimilarityTest{}, err
	}
	if a.TwoSided {
		return SimilarityTest{}, fmt.Errorf("%s: a test of likeness is one-sided; leave TwoSided unset", fn)
	}
	guess := a.Method.guess()
	p := guess + (1-guess)*a.TellerPct/100
	atMost := func(k int) float64 { return 1 - atLeast(k+1, a.Tasters, p) }
	t := SimilarityTest{Answers: a, PValue: atMost(a.Right), AtMost: -1}
	for t.AtMost+1 <= a.Tasters && atMost(t.AtMost+1) <= a.LevelPct/100*(1+1e-12) {
		t.AtMost++
	}
	t.Shown = a.Right <= t.AtMost
	return t, nil
}

// String gives the answers, the chance and the verdict in words, in one line.
func (t SimilarityTest) String() string {
	a := t.Answers
	verdict := fmt.Sprintf("likeness is not shown (at most %d right would be needed at %s %%)", t.AtMost, short(a.LevelPct))
	switch {
	case t.Shown:
		verdict = fmt.Sprintf("shown that no more than %s %% tell them apart (%s %%)", short(a.TellerPct), short(a.LevelPct))
	case t.AtMost < 0:
		verdict = fmt.Sprintf("nothing can be told: %d tasters are too few to show likeness (%s %%)", a.Tasters, short(a.LevelPct))
	}
	return fmt.Sprintf("%v: %d of %d right, p = %s: %s", a.Method, a.Right, a.Tasters, chanceText(t.PValue), verdict)
}
