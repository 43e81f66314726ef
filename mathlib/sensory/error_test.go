package sensory_test

import (
	"math"
	"strings"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/sensory"
)

func TestMistakes(t *testing.T) {
	difference := func(a sensory.Answers) error { _, err := sensory.Difference(a); return err }
	similar := func(a sensory.Answers) error { _, err := sensory.Similar(a); return err }
	prefer := func(v sensory.Votes) error { _, err := sensory.Preference(v); return err }
	panel := func(f sensory.PanelFor) error { _, err := sensory.PanelSize(f); return err }
	rank := func(r sensory.Ranking) error { _, err := sensory.RankTest(r); return err }
	plan := func(change func(*sensory.ServingFor)) error {
		f := serving(2, 6, 1)
		change(&f)
		_, err := sensory.PlanDifference(sensory.Triangle, f)
		return err
	}
	tri := the(sensory.PlanDifference(sensory.Triangle, serving(2, 2, 1)))
	pair := the(sensory.PlanDifference(sensory.Paired, serving(2, 2, 1)))
	order := the(sensory.PlanRanking(serving(3, 2, 1)))
	mark := func(answers ...string) error { _, err := sensory.Mark(tri, answers); return err }
	ranks := func(answers ...string) error { _, err := sensory.RanksFrom(order, answers); return err }
	lattice := func(names []string, m int) error { _, err := sensory.SimplexLattice(names, m); return err }
	vertices := func(l ...sensory.ShareLimits) error { _, err := sensory.ExtremeVertices(l); return err }
	fit := func(change func(*sensory.MixtureTrial)) error {
		trial := yarn(t, sensory.MixtureQuadratic)
		change(&trial)
		_, err := sensory.FitMixture(trial)
		return err
	}
	f := the(sensory.FitMixture(yarn(t, sensory.MixtureQuadratic)))
	best := func(l ...sensory.ShareLimits) error { _, err := sensory.FindBestBlend(f, l...); return err }
	limit := func(name string, low, high float64) sensory.ShareLimits {
		return sensory.ShareLimits{Ingredient: name, Low: low, High: high}
	}
	_, neededErr := sensory.RightNeeded(sensory.Triangle, 3, 1)
	_, dErr := sensory.DPrimeOf(sensory.Triangle, 100)
	_, d2Err := sensory.DPrimeOf(sensory.Triangle, 101)
	_, d3Err := sensory.DPrimeOf(sensory.Method(7), 50)
	_, rightErr := sensory.RightPct(sensory.Triangle, -1)
	_, right2Err := sensory.RightPct(sensory.Method(-1), 1)
	_, powerErr := sensory.Power(sensory.PanelFor{DPrime: 1}, 0)
	_, power2Err := sensory.Power(sensory.PanelFor{}, 10)
	_, planErr := sensory.PlanDifference(sensory.Method(9), serving(2, 2, 1))
	_, plan2Err := sensory.PlanRanking(serving(13, 2, 1))
	_, votesErr := sensory.CountVotes(tri, []string{"1", "2"})
	_, markPairErr := sensory.Mark(pair, []string{"1", "2"})
	_, ranksErr := sensory.RanksFrom(tri, []string{"1", "2"})
	_, orderErr := sensory.InRandomOrder(sensory.MixtureDesign{}, 0, 1)
	_, predictErr := sensory.Predict(sensory.MixtureFit{}, []float64{1})
	_, predict2Err := sensory.Predict(f, []float64{0.5, 0.5})
	_, bestErr := sensory.FindBestBlend(sensory.MixtureFit{})
	_, betterErr := sensory.BetterThanPct(sensory.BestBlend{}, []float64{1})
	_, gridErr := sensory.TriangleGrid(sensory.MixtureFit{}, 10)
	_, grid2Err := sensory.TriangleGrid(f, 0)
	_, contourErr := sensory.TriangleContours(f, []float64{math.NaN()}, 10)
	_, placeErr := sensory.PlaceOnTriangle([]float64{1, 1, 1})
	_, noPlanErr := sensory.Mark(sensory.ServingPlan{}, nil)
	two := []float64{1, 2}
	for _, c := range []struct {
		err  error
		want string
	}{
		{difference(sensory.Answers{Right: 14, Wrong: 8, Tasters: 24}), "14 right and 8 wrong answers from 24 tasters: 2 answers are missing"},
		{difference(sensory.Answers{Right: 14, Wrong: 12, Tasters: 24}), "2 answers are too many"},
		{difference(sensory.Answers{Right: 14}), "a panel of 0 tasters"},
		{difference(sensory.Answers{Right: -1, Wrong: 5, Tasters: 4}), "-1 right and 5 wrong answers; give 0 or more"},
		{difference(sensory.Answers{Method: 5, Right: 1, Tasters: 1}), "there is no method 5"},
		{difference(sensory.Answers{Right: 1, Tasters: 1, LevelPct: 60}), "the level is 60 per cent"},
		{difference(sensory.Answers{Right: 1, Tasters: 1, SuretyPct: 100}), "the surety is 100 per cent"},
		{difference(sensory.Answers{Right: 1, Tasters: 1, TwoSided: true}), "a triangle test has one right answer and is never two-sided"},
		{similar(sensory.Answers{Right: 1, Tasters: 1}), "the share of tasters who may tell (TellerPct) is 0 per cent"},
		{similar(sensory.Answers{Method: sensory.Paired, Right: 1, Tasters: 1, TellerPct: 20, TwoSided: true}), "a test of likeness is one-sided"},
		{neededErr, "3 of 3 right in a triangle test come about by guessing with 3.7 %, more than 1 %; take at least 5 tasters"},
		{dErr, "all answers are right"}, {d2Err, "the share of right answers is 101 per cent"}, {d3Err, "there is no method 7"},
		{rightErr, "d′ is -1; it must be from 0 to 30"}, {right2Err, "there is no method -1"},
		{prefer(sensory.Votes{First: "a", Second: "a"}), `the samples are called "a" and "a"`},
		{prefer(sensory.Votes{First: "a", Second: "b", ForFirst: 3, Tasters: 5}), "3 votes and 0 undecided from 5 tasters"},
		{prefer(sensory.Votes{First: "a", Second: "b", Undecided: 3, Tasters: 3}), "none of the 3 tasters voted"},
		{prefer(sensory.Votes{First: "a", Second: "b", ForFirst: -3, Tasters: 3}), "-3, 0 and 0 votes"},
		{prefer(sensory.Votes{First: "a", Second: "b", ForFirst: 3, Tasters: 3, LevelPct: -1}), "the level is -1 per cent"},
		{panel(sensory.PanelFor{}), "give the difference by DPrime or by TellersPct"},
		{panel(sensory.PanelFor{DPrime: 1, TellersPct: 10}), "give the difference by DPrime or by TellersPct"},
		{panel(sensory.PanelFor{DPrime: -1}), "d′ is -1"}, {panel(sensory.PanelFor{TellersPct: 101}), "the share of tellers is 101 per cent"},
		{panel(sensory.PanelFor{DPrime: 0.05}), "5000 tasters find a difference of which 33.36 % of the answers are right with"},
		{panel(sensory.PanelFor{DPrime: 1, PowerPct: 100}), "the power is 100 per cent"}, {panel(sensory.PanelFor{DPrime: 1, LevelPct: 99}), "the level is 99 per cent"},
		{panel(sensory.PanelFor{DPrime: 1, TwoSided: true}), "never two-sided"}, {panel(sensory.PanelFor{Method: 9, DPrime: 1}), "there is no method 9"},
		{powerErr, "the number of tasters is 0"}, {power2Err, "give the difference by DPrime or by TellersPct"},
		{rank(sensory.Ranking{Samples: []string{"A"}}), "1 samples; a ranking needs two or more"},
		{rank(sensory.Ranking{Samples: []string{"A", "A"}}), "give each a name of its own"},
		{rank(sensory.Ranking{Samples: names(2), Ranks: [][]float64{two, two}, Tasters: 3}), "2 rankings from 3 tasters"},
		{rank(sensory.Ranking{Samples: names(2), Ranks: [][]float64{two}, Tasters: 1}), "1 tasters; give two or more"},
		{rank(sensory.Ranking{Samples: names(3), Ranks: [][]float64{{1, 2, 3}, two}, Tasters: 2}), "taster 2 ranked 2 of 3 samples"},
		{rank(ranking([]float64{1, 2, 3}, []float64{1, 1, 3})), "taster 2 gave the ranks 1 1 3; 3 samples take the ranks 1 to 3, and samples that are level the mean of theirs: here 1.5 1.5 3"},
		{rank(ranking([]float64{2, 2, 2}, []float64{2, 2, 2})), "every taster found all 3 samples level"},
		{rank(ranking([]float64{1, 2, math.NaN()}, []float64{2, 2, 2})), "taster 1 gave the ranks"},
		{plan(func(f *sensory.ServingFor) { f.Samples = f.Samples[:1] }), "1 samples; give 2"},
		{plan(func(f *sensory.ServingFor) { f.Samples[1].Name = "S1" }), `sample 2 is called "S1"`},
		{plan(func(f *sensory.ServingFor) { f.Samples[1].Strength = alcoholometry.Strength{} }), "the strength of S2 is not set"},
		{plan(func(f *sensory.ServingFor) { f.Tasters = 0 }), "the number of tasters is 0"},
		{plan(func(f *sensory.ServingFor) { f.PourML = 0 }), "the pour is 0 mL"}, {plan(func(f *sensory.ServingFor) { f.PourML = 500 }), "the pour is 500 mL"},
		{planErr, "there is no method 9"}, {plan2Err, "13 samples; give 2 to 12"},
		{mark(tri.Glasses[0][0].Code), "1 answers from 2 tasters"},
		{mark(tri.Glasses[0][0].Code, " "), "taster 2 gave no answer"},
		{mark(tri.Glasses[0][0].Code, "12"), `taster 2 answered "12", which is none of the codes`},
		{mark(tri.Glasses[0][0].Code, tri.Glasses[1][0].Code+" "+tri.Glasses[1][1].Code), "give 1 of the codes"},
		{ranks("1 2 3", "1 2"), "which is none of the codes"},
		{ranks(order.Glasses[0][0].Code+"=="+order.Glasses[0][1].Code, ""), "join two codes that are level by one ="},
		{ranks(order.Glasses[0][0].Code+" "+order.Glasses[0][0].Code+" "+order.Glasses[0][1].Code, "1 2 3"), "twice"},
		{votesErr, "the plan is for a triangle"}, {markPairErr, "a paired comparison has no right answer"}, {ranksErr, "the plan is for a triangle"},
		{lattice([]string{"A"}, 2), "1 ingredients; give 2 to 10"}, {lattice([]string{"A", ""}, 2), `ingredient 2 is called ""`},
		{lattice(names(3), 0), "the degree is 0"}, {lattice([]string{"a", "b", "c", "d", "e", "f", "g", "h", "i", "j"}, 10), "92378 blends"},
		{orderErr, "how often to make each blend is 0"},
		{vertices(limit("A", 0.6, 0.7), limit("B", 0.6, 0.7)), "the least shares add up to 120 %, 20 % too much"},
		{vertices(limit("A", 0, 0.4), limit("B", 0, 0.3)), "the greatest shares add up to 70 %, 30 % short"},
		{vertices(limit("A", 0.5, 0.4), limit("B", 0, 1)), "the least share of A, 50 %, is above its greatest, 40 %"},
		{vertices(limit("A", -0.1, 0.4), limit("B", 0, 1)), "the least share of A is -0.1"}, {vertices(limit("A", 0, 40), limit("B", 0, 1)), "the greatest share of A is 40"},
		{vertices(make([]sensory.ShareLimits, 2)...), `ingredient 1 is called ""`},
		{fit(func(m *sensory.MixtureTrial) { m.Scores = m.Scores[1:] }), "15 blends and 14 scores"},
		{fit(func(m *sensory.MixtureTrial) { m.Scores[3] = math.NaN() }), "the score of tasting 4 is NaN"},
		{fit(func(m *sensory.MixtureTrial) { m.Shares[3] = []float64{0.5, 0.6, 0} }), "the shares of tasting 4 add up to 1.1"},
		{fit(func(m *sensory.MixtureTrial) { m.Shares[3] = []float64{50, 50, 0} }), "the share of x1 in tasting 4 is 50"},
		{fit(func(m *sensory.MixtureTrial) { m.Shares[3] = []float64{1} }), "tasting 4 has 1 shares for 3 ingredients"},
		{fit(func(m *sensory.MixtureTrial) { m.Model = 5 }), "there is no model 5"},
		{fit(func(m *sensory.MixtureTrial) { m.SuretyPct = 10 }), "the surety is 10 per cent"},
		{fit(func(m *sensory.MixtureTrial) { m.Model = sensory.MixtureSpecialCubic }), `the blends leave "x1 × x2 × x3" undetermined`},
		{fit(func(m *sensory.MixtureTrial) { m.Shares, m.Scores = m.Shares[:6], m.Scores[:6] }), "6 tastings for the 6 terms of a quadratic model"},
		{predictErr, "there is no fitted surface"}, {predict2Err, "the blend has 2 shares for 3 ingredients"},
		{bestErr, "there is no fitted surface"}, {best(limit("juniper", 0, 1)), `there is no ingredient "juniper" in the trial`},
		{best(limit("x1", 0, 1), limit("x1", 0, 1)), "x1 has two limits"}, {best(limit("x1", 0, 0.2), limit("x2", 0, 0.2), limit("x3", 0, 0.2)), "short of the whole"},
		{betterErr, "there is no best blend"}, {gridErr, "there is no fitted surface"}, {grid2Err, "the number of steps is 0"}, {contourErr, "the score is NaN"},
		{noPlanErr, "there is no plan"},
		{placeErr, "the shares of the blend add up to 3"},
	} {
		if c.err == nil || !strings.Contains(c.err.Error(), c.want) || !strings.HasPrefix(c.err.Error(), "sensory.") || strings.Contains(c.err.Error(), "\n") {
			t.Errorf("error %q; want one line with %q under the function's name", c.err, c.want)
		}
	}
}

func TestVerdictsInWords(t *testing.T) {
	for _, c := range []struct{ got, want string }{
		{the(sensory.Difference(sensory.Answers{Right: 14, Wrong: 10, Tasters: 24})).String(), "a difference is shown (5 %)"},
		{the(sensory.Difference(sensory.Answers{Right: 12, Wrong: 12, Tasters: 24})).String(), "no difference is shown (13 right would be needed at 5 %), which does not show that there is none"},
		{the(sensory.Difference(sensory.Answers{Right: 2, Tasters: 2})).String(), "nothing can be told: 2 tasters are too few even if all are right (5 %); d′ = ∞"},
		{the(sensory.Preference(sensory.Votes{First: "old", Second: "new", ForFirst: 2, ForSecond: 3, Undecided: 1, Tasters: 6})).String(), "1 undecided and left out, p = 1.000: nothing can be told: 5 votes are too few"},
		{the(sensory.Preference(sensory.Votes{First: "old", Second: "new", ForFirst: 4, ForSecond: 16, Tasters: 20})).String(), "new is preferred (5 %)"},
		{the(sensory.Preference(sensory.Votes{First: "old", Second: "new", ForFirst: 8, ForSecond: 12, Tasters: 20})).String(), "no preference is shown (15 votes for one would be needed"},
		{the(sensory.Similar(sensory.Answers{Right: 20, Wrong: 10, Tasters: 30, TellerPct: 30})).String(), "likeness is not shown"},
		{the(sensory.Similar(sensory.Answers{Right: 1, Wrong: 2, Tasters: 3, TellerPct: 30})).String(), "too few to show likeness"},
		{the(sensory.RankTest(ranking([]float64{1, 2}, []float64{1, 2}))).String(), "no difference is shown (5 %), which does not show that there is none"},
		{the(sensory.RankTest(ranking([]float64{1, 2, 3}, []float64{1, 2, 3}, []float64{1, 2, 3}, []float64{1, 2, 3}))).String(), "shown: A below C"},
	} {
		if !strings.Contains(c.got, c.want) {
			t.Errorf("%q; want %q in it", c.got, c.want)
		}
	}
}
