package sensory_test

import (
	"fmt"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/sensory"
)

// show prints an example's result and stops at its error.
func show(v any, err error) {
	if err != nil {
		panic(err)
	}
	fmt.Println(v)
}

func ExampleDifference() {
	show(sensory.Difference(sensory.Answers{Method: sensory.Triangle, Right: 14, Wrong: 10, Tasters: 24}))
	// Output: triangle: 14 of 24 right, p = 0.010: a difference is shown (5 %); d′ = 1.89, 95 % from 0.61 to 2.98
}

func ExampleSimilar() {
	show(sensory.Similar(sensory.Answers{Method: sensory.Triangle, Right: 22, Wrong: 44, Tasters: 66, TellerPct: 30}))
	// Output: triangle: 22 of 66 right, p = 0.0008: shown that no more than 30 % tell them apart (5 %)
}

func ExamplePreference() {
	show(sensory.Preference(sensory.Votes{First: "oak", Second: "chestnut", ForFirst: 9, ForSecond: 18, Undecided: 1, Tasters: 28}))
	// Output: 9 for oak, 18 for chestnut, 1 undecided and left out, p = 0.122: no preference is shown (20 votes for one would be needed at 5 %), which does not show that there is none; 17 to 54 % of people prefer oak
}

func ExampleRightNeeded() {
	show(sensory.RightNeeded(sensory.DuoTrio, 36, 5))
	// Output: 24
}

func ExampleDPrimeOf() {
	d, err := sensory.DPrimeOf(sensory.Triangle, 60.48)
	show(fmt.Sprintf("%.2f", d), err)
	// Output: 2.00
}

func ExampleRightPct() {
	p, err := sensory.RightPct(sensory.Tetrad, 1)
	show(fmt.Sprintf("%.1f %%", p), err)
	// Output: 49.4 %
}

func ExampleMethod_GuessPct() {
	fmt.Printf("%.1f %%\n", sensory.Tetrad.GuessPct())
	// Output: 33.3 %
}

func ExamplePanelSize() {
	show(sensory.PanelSize(sensory.PanelFor{Method: sensory.Triangle, TellersPct: 40}))
	// Output: triangle, 40 % of tasters who tell: 25 tasters, of whom 13 must be right, find it with 84 % (false alarm at most 5 %); 23 would do, but not every panel between
}

func ExamplePower() {
	p, err := sensory.Power(sensory.PanelFor{Method: sensory.Tetrad, DPrime: 1}, 30)
	show(fmt.Sprintf("%.0f %%", p), err)
	// Output: 55 %
}

func ExampleRankTest() {
	t, err := sensory.RankTest(sensory.Ranking{
		Samples: []string{"juniper", "citrus", "spice"},
		Ranks:   [][]float64{{1, 2, 3}, {1, 3, 2}, {1, 2, 3}, {2, 1, 3}, {1, 2, 3}, {1, 2.5, 2.5}, {2, 1, 3}, {1, 2, 3}},
		Tasters: 8,
	})
	show(t, err)
	for _, r := range t.Rows() {
		fmt.Println(strings.TrimRight(strings.Join(r, " | "), "| "))
	}
	// Output:
	// rank sums of 8 tasters: juniper 10, citrus 15.5, spice 22.5; F = 10.13, p = 0.0033 (exact): shown: juniper below spice
	// rank sum of juniper | 10
	// rank sum of citrus | 15.5
	// rank sum of spice | 22.5
	// Friedman's F | 10.13
	// chance of that if all are alike | 0.0033 | exact
	// sums differ from a distance of (5 %) | 9.5
	// juniper and citrus | 5.5 | not shown, p = 0.410
	// juniper and spice | 12.5 | differ, p = 0.0029
	// citrus and spice | 7 | not shown, p = 0.196
}

func servingOf(names ...string) sensory.ServingFor {
	strength, err := alcoholometry.ABV(20)
	if err != nil {
		panic(err)
	}
	f := sensory.ServingFor{Tasters: 6, PourML: 15, Seed: 4}
	for _, n := range names {
		f.Samples = append(f.Samples, sensory.Sample{Name: n, Strength: strength})
	}
	return f
}

func ExamplePlanDifference() {
	p, err := sensory.PlanDifference(sensory.Triangle, servingOf("lot 7", "lot 8"))
	show(p, err)
	for _, card := range p.Cards() {
		fmt.Println(card)
	}
	// Output:
	// triangle: 6 tasters, 3 glasses of 15 mL each; up to 7.1 g of ethanol a taster if it is swallowed, 0.7 standard drinks of 10 g: let tasters spit, eat and drink water, and nobody drive; none for the pregnant, the young or anyone who must not drink
	// taster 1: 889 405 471
	// taster 2: 937 486 411
	// taster 3: 177 443 237
	// taster 4: 727 257 565
	// taster 5: 634 790 597
	// taster 6: 404 528 263
}

func ExamplePlanRanking() {
	p, err := sensory.PlanRanking(servingOf("juniper", "citrus", "spice"))
	show(p, err)
	for _, r := range p.Rows()[:2] {
		fmt.Println(strings.TrimRight(strings.Join(r, " | "), "| "))
	}
	// Output:
	// ranking: 6 tasters, 3 glasses of 15 mL each; up to 7.1 g of ethanol a taster if it is swallowed, 0.7 standard drinks of 10 g: let tasters spit, eat and drink water, and nobody drive; none for the pregnant, the young or anyone who must not drink
	// taster 1 | 546 juniper | 427 spice | 249 citrus
	// taster 2 | 216 citrus | 336 juniper | 698 spice
}

func ExampleServingPlan_Cards() {
	p, err := sensory.PlanDifference(sensory.DuoTrio, servingOf("lot 7", "lot 8"))
	show(p.Cards()[0], err)
	// Output: taster 1: R 890 398
}

func ExampleMark() {
	p, err := sensory.PlanDifference(sensory.Triangle, servingOf("lot 7", "lot 8"))
	if err != nil {
		panic(err)
	}
	var answers []string // as if everybody took the first glass for the odd one
	for _, glasses := range p.Glasses {
		answers = append(answers, glasses[0].Code)
	}
	a, err := sensory.Mark(p, answers)
	show(fmt.Sprintf("%d right, %d wrong", a.Right, a.Wrong), err)
	// Output: 2 right, 4 wrong
}

func ExampleCountVotes() {
	p, err := sensory.PlanDifference(sensory.Paired, servingOf("oak", "chestnut"))
	if err != nil {
		panic(err)
	}
	answers := []string{"-"}
	for _, glasses := range p.Glasses[1:] {
		answers = append(answers, glasses[0].Code)
	}
	v, err := sensory.CountVotes(p, answers)
	show(fmt.Sprintf("%d for %s, %d for %s, %d undecided", v.ForFirst, v.First, v.ForSecond, v.Second, v.Undecided), err)
	// Output: 2 for oak, 3 for chestnut, 1 undecided
}

func ExampleRanksFrom() {
	p, err := sensory.PlanRanking(servingOf("juniper", "citrus", "spice"))
	if err != nil {
		panic(err)
	}
	var answers []string // the first glass best, the others level
	for _, g := range p.Glasses {
		answers = append(answers, g[0].Code+" "+g[1].Code+"="+g[2].Code)
	}
	r, err := sensory.RanksFrom(p, answers)
	show(r.Ranks[0], err)
	// Output: [1 2.5 2.5]
}

func ExampleSimplexLattice() {
	d, err := sensory.SimplexLattice([]string{"juniper", "coriander", "angelica"}, 2)
	show(d, err)
	for _, b := range d.Blends {
		fmt.Println(b.Shares, b.Kind)
	}
	// Output:
	// 6 blends of juniper, coriander, angelica
	// [1 0 0] pure
	// [0.5 0.5 0] binary
	// [0.5 0 0.5] binary
	// [0 1 0] pure
	// [0 0.5 0.5] binary
	// [0 0 1] pure
}

func ExampleSimplexCentroid() {
	show(sensory.SimplexCentroid([]string{"juniper", "coriander", "angelica", "orris"}))
	// Output: 15 blends of juniper, coriander, angelica, orris
}

func ExampleExtremeVertices() {
	d, err := sensory.ExtremeVertices([]sensory.ShareLimits{
		{Ingredient: "juniper", Low: 0.4, High: 0.7}, {Ingredient: "coriander", Low: 0.1, High: 0.4}, {Ingredient: "angelica", Low: 0.05, High: 0.2}})
	show(d, err)
	for _, r := range d.Rows() {
		fmt.Println(strings.TrimRight(strings.Join(r, " | "), "| "))
	}
	// Output:
	// 9 blends of juniper, coriander, angelica
	// blend | juniper, % | coriander, % | angelica, %
	// 1 | 40 | 40 | 20 | vertex
	// 2 | 55 | 40 | 5 | vertex
	// 3 | 70 | 10 | 20 | vertex
	// 4 | 70 | 25 | 5 | vertex
	// 5 | 70 | 17.5 | 12.5 | face
	// 6 | 47.5 | 40 | 12.5 | face
	// 7 | 62.5 | 32.5 | 5 | face
	// 8 | 55 | 25 | 20 | face
	// 9 | 58.7 | 28.8 | 12.5 | centroid
}

func ExampleInRandomOrder() {
	d, err := sensory.SimplexCentroid([]string{"juniper", "coriander", "angelica"})
	if err != nil {
		panic(err)
	}
	d, err = sensory.InRandomOrder(d, 2, 1)
	show(d, err)
	fmt.Println(d.Blends[0].Shares)
	// Output:
	// 14 blends of juniper, coriander, angelica
	// [0 0 1]
}

// A gin of three botanicals, scored from 0 to 10 by a panel; the blends of a centroid design, each tasted twice.
func ginTrial() sensory.MixtureFit {
	f, err := sensory.FitMixture(sensory.MixtureTrial{
		Ingredients: []string{"juniper", "coriander", "angelica"},
		Shares: [][]float64{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0.5, 0.5, 0}, {0.5, 0, 0.5}, {0, 0.5, 0.5}, {1.0 / 3, 1.0 / 3, 1.0 / 3},
			{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0.5, 0.5, 0}, {0.5, 0, 0.5}, {0, 0.5, 0.5}, {1.0 / 3, 1.0 / 3, 1.0 / 3}},
		Scores: []float64{5.1, 4.2, 2.9, 7.8, 6.0, 4.4, 7.0, 5.5, 3.8, 3.3, 7.2, 5.6, 4.9, 6.6},
		Model:  sensory.MixtureQuadratic,
	})
	if err != nil {
		panic(err)
	}
	return f
}

func ExampleFitMixture() {
	f := ginTrial()
	fmt.Println(f)
	for _, t := range f.Terms {
		fmt.Printf("%s %.1f (%.1f to %.1f)\n", t.Name, t.Coefficient, t.Low, t.High)
	}
	// Output:
	// score = 5.29 juniper + 3.99 coriander + 3.09 angelica + 11.67 juniper × coriander + 6.67 juniper × angelica + 4.67 coriander × angelica; R² 0.974 (adjusted 0.958), scatter 0.31
	// juniper 5.3 (4.8 to 5.8)
	// coriander 4.0 (3.5 to 4.5)
	// angelica 3.1 (2.6 to 3.6)
	// juniper × coriander 11.7 (9.4 to 14.0)
	// juniper × angelica 6.7 (4.4 to 9.0)
	// coriander × angelica 4.7 (2.4 to 7.0)
}

func ExamplePredict() {
	show(sensory.Predict(ginTrial(), []float64{0.6, 0.3, 0.1}))
	// Output: 60 : 30 : 10 %: 7.32 (6.97 to 7.66)
}

func ExampleFindBestBlend() {
	b, err := sensory.FindBestBlend(ginTrial(), sensory.ShareLimits{Ingredient: "angelica", Low: 0.05})
	show(b, err)
	for _, r := range b.Rows() {
		fmt.Println(strings.TrimRight(strings.Join(r, " | "), "| "))
	}
	// Output:
	// juniper 53.5 %, coriander 41.5 %, angelica 5 %: score 7.50, 95 % from 7.09 to 7.91; the best lies at the least angelica allowed, 5 %: less may be better still, and was not looked at
	// ingredient | best, % | cannot be told from the best, %
	// juniper | 53.5 | 49.4 to 58.9
	// coriander | 41.5 | 36.1 to 45.6
	// angelica | 5 | 5 to 5
	// score | 7.50 | 7.09 to 7.91 (95 %)
	// note: the best lies at the least angelica allowed, 5 %: less may be better still, and was not looked at
}

func ExampleBetterThanPct() {
	b, err := sensory.FindBestBlend(ginTrial())
	if err != nil {
		panic(err)
	}
	p, err := sensory.BetterThanPct(b, []float64{0.8, 0.1, 0.1})
	show(fmt.Sprintf("%.1f %%", p), err)
	// Output: 100.0 %
}

func ExampleTriangleGrid() {
	grid, err := sensory.TriangleGrid(ginTrial(), 2)
	if err != nil {
		panic(err)
	}
	for _, p := range grid {
		fmt.Printf("%.2f %.3f: %.2f ± %.2f\n", p.X, p.Y, p.Score, p.Standard)
	}
	// Output:
	// 0.50 0.866: 5.29 ± 0.22
	// 0.25 0.433: 7.55 ± 0.20
	// 0.75 0.433: 5.85 ± 0.20
	// 0.00 0.000: 3.99 ± 0.22
	// 0.50 0.000: 4.70 ± 0.20
	// 1.00 0.000: 3.09 ± 0.22
}

func ExampleTriangleContours() {
	lines, err := sensory.TriangleContours(ginTrial(), []float64{5, 7}, 40)
	if err != nil {
		panic(err)
	}
	for _, l := range lines {
		fmt.Printf("score %g: %d points\n", l.Score, len(l.Xs))
	}
	// Output:
	// score 5: 78 points
	// score 7: 60 points
}

func ExamplePlaceOnTriangle() {
	p, err := sensory.PlaceOnTriangle([]float64{0.5, 0.25, 0.25})
	show(fmt.Sprintf("%.3f %.3f", p.X, p.Y), err)
	// Output: 0.500 0.433
}
