package sheet_test

import (
	"fmt"
	"strings"
	"testing"

	. "swanneck/mathlib/sheet"
)

func ExampleJudgeDifference() {
	fmt.Println(JudgeDifference(TastingAnswers{Method: Triangle, Right: 14, Wrong: 10, Tasters: 24}))
	// Output: triangle: 14 of 24 right, p = 0.010: a difference is shown (5 %); d′ = 1.89, 95 % from 0.61 to 2.98
}

func ExampleJudgeSimilarity() {
	fmt.Println(JudgeSimilarity(TastingAnswers{Method: Triangle, Right: 22, Wrong: 44, Tasters: 66, TellerPct: 30}))
	// Output: triangle: 22 of 66 right, p = 0.0008: shown that no more than 30 % tell them apart (5 %)
}

func ExampleJudgePreference() {
	fmt.Println(JudgePreference(TastingVotes{First: "oak", Second: "chestnut", ForFirst: 9, ForSecond: 18, Undecided: 1, Tasters: 28}))
	// Output: 9 for oak, 18 for chestnut, 1 undecided and left out, p = 0.122: no preference is shown (20 votes for one would be needed at 5 %), which does not show that there is none; 17 to 54 % of people prefer oak
}

func ExampleJudgeRanking() {
	fmt.Println(JudgeRanking(TastingRanking{
		Samples: []string{"juniper", "citrus", "spice"},
		Ranks:   [][]float64{{1, 2, 3}, {1, 3, 2}, {1, 2, 3}, {2, 1, 3}, {1, 2, 3}, {1, 2.5, 2.5}, {2, 1, 3}, {1, 2, 3}},
		Tasters: 8,
	}))
	// Output: rank sums of 8 tasters: juniper 10, citrus 15.5, spice 22.5; F = 10.13, p = 0.0033 (exact): shown: juniper below spice
}

func ExampleRightAnswersNeeded() {
	fmt.Println(RightAnswersNeeded(DuoTrio, 36, 5))
	// Output: 24
}

func ExampleDPrimeOf() {
	fmt.Printf("%.2f\n", DPrimeOf(Paired, 76))
	// Output: 1.00
}

func ExampleRightAnswersPct() {
	fmt.Printf("%.1f %%\n", RightAnswersPct(Tetrad, 1))
	// Output: 49.4 %
}

func ExamplePanelSize() {
	fmt.Println(PanelSize(PanelFor{Method: Triangle, TellersPct: 40}))
	// Output: triangle, 40 % of tasters who tell: 25 tasters, of whom 13 must be right, find it with 84 % (false alarm at most 5 %); 23 would do, but not every panel between
}

func ExamplePanelPowerPct() {
	fmt.Printf("%.0f %%\n", PanelPowerPct(PanelFor{Method: Tetrad, DPrime: 1}, 30))
	// Output: 55 %
}

func tastingOf(names ...string) ServingFor {
	f := ServingFor{Tasters: 6, PourML: 15, Seed: 4}
	for _, n := range names {
		f.Samples = append(f.Samples, TastingSample{Name: n, Strength: ABV(20)})
	}
	return f
}

func ExamplePlanDifference() {
	p := PlanDifference(Triangle, tastingOf("lot 7", "lot 8"))
	fmt.Println(p.Cards()[0])
	fmt.Println(p.Rows()[0])
	// Output:
	// taster 1: 889 405 471
	// [taster 1 889 lot 8 405 lot 7 471 lot 7]
}

func ExamplePlanRanking() {
	p := PlanRanking(tastingOf("juniper", "citrus", "spice"))
	fmt.Println(p.Cards()[0])
	// Output: taster 1: 546 427 249
}

func ExampleMarkAnswers() {
	p := PlanDifference(Triangle, tastingOf("lot 7", "lot 8"))
	a := MarkAnswers(p, []string{"889", "486", "443", "565", "634", "404"})
	fmt.Println(a.Right, "right,", a.Wrong, "wrong")
	// Output: 1 right, 5 wrong
}

func ExampleCountVotes() {
	p := PlanDifference(Paired, tastingOf("oak", "chestnut"))
	answers := []string{"-"}
	for _, glasses := range p.Glasses[1:] {
		answers = append(answers, glasses[0].Code)
	}
	v := CountVotes(p, answers)
	fmt.Println(v.ForFirst, v.ForSecond, v.Undecided)
	// Output: 2 3 1
}

func ExampleRanksFrom() {
	p := PlanRanking(tastingOf("juniper", "citrus", "spice"))
	var answers []string
	for _, g := range p.Glasses {
		answers = append(answers, g[0].Code+" "+g[1].Code+"="+g[2].Code)
	}
	fmt.Println(RanksFrom(p, answers).Ranks[0])
	// Output: [1 2.5 2.5]
}

func ExampleSimplexLattice() {
	fmt.Println(SimplexLattice([]string{"juniper", "coriander", "angelica"}, 2))
	// Output: 6 blends of juniper, coriander, angelica
}

func ExampleSimplexCentroid() {
	fmt.Println(SimplexCentroid([]string{"juniper", "coriander", "angelica"}))
	// Output: 7 blends of juniper, coriander, angelica
}

func ExampleExtremeVertices() {
	fmt.Println(ExtremeVertices(ShareLimits{Ingredient: "juniper", Low: 0.4, High: 0.7}, ShareLimits{Ingredient: "coriander", Low: 0.1, High: 0.4},
		ShareLimits{Ingredient: "angelica", Low: 0.05, High: 0.2}))
	// Output: 9 blends of juniper, coriander, angelica
}

func ExampleInRandomOrder() {
	d := InRandomOrder(SimplexCentroid([]string{"juniper", "coriander", "angelica"}), 2, 1)
	fmt.Println(d, d.Blends[0].Shares)
	// Output: 14 blends of juniper, coriander, angelica [0 0 1]
}

func threeBotanicals() MixtureFit {
	return FitMixture(MixtureTrial{
		Ingredients: []string{"juniper", "coriander", "angelica"},
		Shares: [][]float64{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0.5, 0.5, 0}, {0.5, 0, 0.5}, {0, 0.5, 0.5}, {1.0 / 3, 1.0 / 3, 1.0 / 3},
			{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0.5, 0.5, 0}, {0.5, 0, 0.5}, {0, 0.5, 0.5}, {1.0 / 3, 1.0 / 3, 1.0 / 3}},
		Scores: []float64{5.1, 4.2, 2.9, 7.8, 6.0, 4.4, 7.0, 5.5, 3.8, 3.3, 7.2, 5.6, 4.9, 6.6},
		Model:  MixtureQuadratic,
	})
}

func ExampleFitMixture() {
	fmt.Println(threeBotanicals())
	// Output: score = 5.29 juniper + 3.99 coriander + 3.09 angelica + 11.67 juniper × coriander + 6.67 juniper × angelica + 4.67 coriander × angelica; R² 0.974 (adjusted 0.958), scatter 0.31
}

func ExamplePredictBlend() {
	fmt.Println(PredictBlend(threeBotanicals(), 0.6, 0.3, 0.1))
	// Output: 60 : 30 : 10 %: 7.32 (6.97 to 7.66)
}

func ExampleFindBestBlend() {
	fmt.Println(FindBestBlend(threeBotanicals(), ShareLimits{Ingredient: "angelica", Low: 0.05}))
	// Output: juniper 53.5 %, coriander 41.5 %, angelica 5 %: score 7.50, 95 % from 7.09 to 7.91; the best lies at the least angelica allowed, 5 %: less may be better still, and was not looked at
}

func ExampleBetterThanPct() {
	fmt.Printf("%.1f %%\n", BetterThanPct(FindBestBlend(threeBotanicals()), 0.55, 0.35, 0.10))
	// Output: 98.6 %
}

func ExampleTriangleGrid() {
	p := TriangleGrid(threeBotanicals(), 2)[1]
	fmt.Printf("%.2f %.3f: %.2f ± %.2f\n", p.X, p.Y, p.Score, p.Standard)
	// Output: 0.25 0.433: 7.55 ± 0.20
}

func ExampleTriangleContours() {
	for _, l := range TriangleContours(threeBotanicals(), []float64{5, 7}, 40) {
		fmt.Println(l.Score, len(l.Xs))
	}
	// Output:
	// 5 78
	// 7 60
}

func ExamplePlaceOnTriangle() {
	fmt.Printf("%.3f\n", PlaceOnTriangle(0.5, 0.25, 0.25))
	// Output: {0.500 0.433}
}

func TestSensoryStopsTheCell(t *testing.T) {
	for name, f := range map[string]func(){
		"JudgeDifference":    func() { JudgeDifference(TastingAnswers{Right: 14, Wrong: 8, Tasters: 24}) },
		"JudgeSimilarity":    func() { JudgeSimilarity(TastingAnswers{Right: 1, Tasters: 1}) },
		"JudgePreference":    func() { JudgePreference(TastingVotes{First: "a", Second: "b", Tasters: 3}) },
		"JudgeRanking":       func() { JudgeRanking(TastingRanking{}) },
		"RightAnswersNeeded": func() { RightAnswersNeeded(Triangle, 3, 1) },
		"DPrimeOf":           func() { DPrimeOf(Triangle, 100) },
		"RightAnswersPct":    func() { RightAnswersPct(Triangle, -1) },
		"PanelSize":          func() { PanelSize(PanelFor{}) },
		"PanelPowerPct":      func() { PanelPowerPct(PanelFor{DPrime: 1}, 0) },
		"PlanDifference":     func() { PlanDifference(Triangle, ServingFor{}) },
		"PlanRanking":        func() { PlanRanking(ServingFor{Samples: []TastingSample{{Name: "a"}, {Name: "b"}}}) },
		"MarkAnswers":        func() { MarkAnswers(ServingPlan{}, []string{"1"}) },
		"CountVotes":         func() { CountVotes(ServingPlan{}, nil) },
		"RanksFrom":          func() { RanksFrom(ServingPlan{}, nil) },
		"SimplexLattice":     func() { SimplexLattice(nil, 2) },
		"SimplexCentroid":    func() { SimplexCentroid(nil) },
		"ExtremeVertices":    func() { ExtremeVertices() },
		"InRandomOrder":      func() { InRandomOrder(MixtureDesign{}, 0, 1) },
		"FitMixture":         func() { FitMixture(MixtureTrial{}) },
		"PredictBlend":       func() { PredictBlend(MixtureFit{}, 1) },
		"FindBestBlend":      func() { FindBestBlend(MixtureFit{}) },
		"BetterThanPct":      func() { BetterThanPct(BestBlend{}, 1) },
		"TriangleGrid":       func() { TriangleGrid(MixtureFit{}, 2) },
		"TriangleContours":   func() { TriangleContours(MixtureFit{}, nil, 2) },
		"PlaceOnTriangle":    func() { PlaceOnTriangle(1) },
	} {
		if line := stopped(t, f); !strings.HasPrefix(line, name+": ") || strings.Contains(line, "\n") {
			t.Errorf("%s stops with %q; want one line that begins with its name", name, line)
		}
	}
}
