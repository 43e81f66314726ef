package packing_test

import (
	"fmt"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/packing"
	"swanneck/mathlib/quantity"
)

func show(rows [][]string) {
	for _, r := range rows {
		fmt.Println(strings.TrimSpace(r[0] + ": " + r[1] + " " + r[2]))
	}
}

func ExampleFillBottle() {
	s, _ := alcoholometry.ABV(60)
	cold, _ := quantity.Celsius(10)
	f, err := packing.FillBottle(packing.Bottle{NominalL: 0.7, Strength: s, Temp: cold, TareKg: 0.485})
	fmt.Println(f, err)
	_, err = packing.FillBottle(packing.Bottle{Strength: s})
	fmt.Println(err)
	// Output:
	// 694.0 mL at 10.0 °C, 635.6 g on the balance (1120.6 g with the bottle), for 700.0 mL at 20.0 °C <nil>
	// packing.FillBottle: the nominal volume is 0 L; give one above 0
}

func ExampleFilling_String() {
	s, _ := alcoholometry.ABV(40)
	f, _ := packing.FillBottle(packing.Bottle{NominalL: 0.5, Strength: s})
	fmt.Println(f)
	// Output: 500.0 mL at 20.0 °C, 473.5 g on the balance (473.5 g with the bottle), for 500.0 mL at 20.0 °C
}

func ExampleFilling_Rows() {
	s, _ := alcoholometry.ABV(60)
	warm, _ := quantity.Celsius(28)
	f, _ := packing.FillBottle(packing.Bottle{NominalL: 0.7, Strength: s, Temp: warm, TareKg: 0.485})
	show(f.Rows())
	// Output:
	// contents at 20.0 °C: 700.0 mL
	// to fill at 28.0 °C: 705.0 mL
	// weight on the balance, without the bottle: 635.6 g
	// weight on the balance, with the bottle: 1120.6 g
	// true mass of the spirit: 636.4 g
}

func ExampleContentsL() {
	s, _ := alcoholometry.ABV(43)
	litres, _ := packing.ContentsL(packing.Weighing{GrossKg: 1.146, TareKg: 0.487, Strength: s})
	fmt.Printf("%.1f mL\n", 1000*litres)
	// Output: 699.6 mL
}

func ExampleHeadSpaceOf() {
	s, _ := alcoholometry.ABV(43)
	cold, _ := quantity.Celsius(15)
	warm, _ := quantity.Celsius(38)
	h, _ := packing.HeadSpaceOf(packing.Closed{BrimL: 0.718, FillL: 0.7, Strength: s, Temp: cold, Warmest: warm, LeastPct: 1})
	fmt.Println(h)
	fmt.Println("enough:", h.Enough)
	// Output:
	// 20.5 mL (2.8 %) of head space when closed, 8.5 mL (1.2 %) at 38.0 °C; not full up to 40 °C
	// enough: true
}

func ExampleHeadSpace_String() {
	s, _ := alcoholometry.ABV(60)
	warm, _ := quantity.Celsius(35)
	h, _ := packing.HeadSpaceOf(packing.Closed{BrimL: 0.71, FillL: 0.7, Strength: s, Warmest: warm})
	fmt.Println(h)
	// Output: 10.0 mL (1.4 %) of head space when closed, 0.7 mL (0.1 %) at 35.0 °C; full at 36.1 °C
}

func ExampleHeadSpace_Rows() {
	s, _ := alcoholometry.ABV(60)
	warm, _ := quantity.Celsius(35)
	h, _ := packing.HeadSpaceOf(packing.Closed{BrimL: 0.71, FillL: 0.7, Strength: s, Warmest: warm, LeastPct: 1})
	show(h.Rows())
	// Output:
	// head space when closed, 20.0 °C: 10.0 mL
	// of what the bottle holds: 1.4 %
	// head space at 35.0 °C: 0.7 mL
	// of what the bottle holds: 0.1 %
	// enough for 1 %: no
	// a bottle must hold, at 20 °C: 716.5 mL
	// spirit fills the bottle at: 36.1 °C
}

func tank() packing.Run {
	s, _ := alcoholometry.ABV(43)
	cellar, _ := quantity.Celsius(15)
	return packing.Run{
		Tank:    alcoholometry.Spirit{VolumeL: 598, Strength: s, Temp: cellar},
		LeftL:   3.5,
		Bottle:  packing.Bottle{NominalL: 0.7, OverL: 0.001},
		PerCase: 6,
	}
}

func ExampleBottlesFrom() {
	b, err := packing.BottlesFrom(tank())
	fmt.Println(b, err)
	// Output: 851 bottles with 256.52 L of pure alcohol, 0.125 L left over, 0.851 L filled beyond the label <nil>
}

func ExampleBottles_String() {
	r := tank()
	r.LossPct = 0.5
	b, _ := packing.BottlesFrom(r)
	fmt.Println(b)
	// Output: 846 bottles with 255.01 L of pure alcohol, 0.645 L left over, 0.846 L filled beyond the label
}

func ExampleBottles_Rows() {
	b, _ := packing.BottlesFrom(tank())
	show(b.Rows())
	// Output:
	// full bottles: 851
	// cases of 6: 141
	// loose bottles: 5
	// left over, 15.0 °C: 0.125 L
	// filled beyond the label: 0.851 L
	// pure alcohol in the bottles, 20 °C: 256.52 L
}

func ExampleTolerableErrorML() {
	for _, litres := range []float64{0.05, 0.35, 0.7, 1.75} {
		ml, _ := packing.TolerableErrorML(litres)
		fmt.Println(litres, "L:", ml, "mL")
	}
	// Output:
	// 0.05 L: 4.5 mL
	// 0.35 L: 10.5 mL
	// 0.7 L: 15 mL
	// 1.75 L: 26.3 mL
}

func ExampleFillTargetFor() {
	f, _ := packing.FillTargetFor(0.7, 9)
	fmt.Println(f)
	// Output: fill 703.5 mL on the average for 700.0 mL, with a standard deviation of 9 mL
}

func ExampleFillTarget_String() {
	f, _ := packing.FillTargetFor(0.7, 2)
	fmt.Println(f)
	// Output: fill 700.0 mL on the average for 700.0 mL, with a standard deviation of 2 mL
}

func ExampleFillTarget_Rows() {
	f, _ := packing.FillTargetFor(0.05, 2.5)
	show(f.Rows())
	// Output:
	// tolerable negative error: 4.5 mL
	// average for the nominal volume: 50.0 mL
	// average for 1 in 40 beyond the tolerable error: 50.4 mL
	// average for 1 in 10 000 beyond twice that: 50.3 mL
	// least average to set: 50.4 mL
}

func ExampleMeanFactor() {
	k, _ := packing.MeanFactor(30)
	fmt.Printf("%.3f\n", k)
	// Output: 0.503
}

func ExampleSinglePlan() {
	p, _ := packing.SinglePlan(400)
	fmt.Println(p)
	// Output: draw 50: accept with 3 defective or fewer, reject with 4 or more
}

func ExampleDoublePlan() {
	p, _ := packing.DoublePlan(400)
	fmt.Println(p)
	// Output: draw 30: accept with 1 defective or fewer, reject with 3 or more; else draw another 30: accept with 4 defective or fewer, reject with 5 or more
}

func ExampleDestructivePlan() {
	p, _ := packing.DestructivePlan(400)
	fmt.Println(p)
	_, err := packing.DestructivePlan(60)
	fmt.Println(err)
	// Output:
	// draw 20: accept with 1 defective or fewer, reject with 2 or more
	// packing.DestructivePlan: a batch of 60 bottles; the directive opens bottles of 100 or more only
}

func ExampleAQLPlan() {
	p, _ := packing.AQLPlan(1000, 2.5)
	fmt.Println(p)
	// Output: draw 80: accept with 5 defective or fewer, reject with 6 or more
}

func ExamplePlan_SampleSize() {
	p, _ := packing.DoublePlan(5000)
	fmt.Println(p.SampleSize())
	// Output: 160
}

func ExamplePlan_String() {
	fmt.Println(packing.Plan{Stages: []packing.Stage{{Sample: 5, Accept: 0, Reject: 1}}})
	// Output: draw 5: accept with 0 defective or fewer, reject with 1 or more
}

func ExamplePlan_Rows() {
	p, _ := packing.SinglePlan(400)
	show(p.Rows())
	// Output:
	// plan: single
	// sample 1: draw: 50 bottles
	// sample 1: accept with at most: 3 defective in all
	// sample 1: reject with at least: 4 defective in all
	// source: SI 2006/659 (UK), schedule 2, 3.3
}

func ExampleAcceptChance() {
	p, _ := packing.SinglePlan(400)
	for _, share := range []float64{0.01, 0.025, 0.1} {
		chance, _ := packing.AcceptChance(p, share)
		fmt.Printf("%g %% defective: accepted with %.1f %%\n", 100*share, 100*chance)
	}
	// Output:
	// 1 % defective: accepted with 99.8 %
	// 2.5 % defective: accepted with 96.4 %
	// 10 % defective: accepted with 25.0 %
}

func ExamplePlanOutcome() {
	p, _ := packing.DoublePlan(400)
	o, _ := packing.PlanOutcome(p, 0.025)
	fmt.Println(o)
	// Output: accepted with a chance of 95.65 %, drawing 34.0 on the average
}

func ExampleOutcome_String() {
	fmt.Println(packing.Outcome{Accept: 0.95, Sampled: 50})
	// Output: accepted with a chance of 95.00 %, drawing 50.0 on the average
}

func ExampleAcceptChanceOfBatch() {
	p, _ := packing.SinglePlan(400)
	chance, _ := packing.AcceptChanceOfBatch(p, 400, 10)
	fmt.Printf("%.1f %%\n", 100*chance)
	// Output: 97.4 %
}

func ExampleQualityAt() {
	p, _ := packing.SinglePlan(400)
	good, _ := packing.QualityAt(p, 0.95)
	bad, _ := packing.QualityAt(p, 0.1)
	fmt.Printf("%.1f %% defective passes nineteen times of twenty, %.1f %% once in ten\n", 100*good, 100*bad)
	// Output: 2.8 % defective passes nineteen times of twenty, 12.9 % once in ten
}

func batch() packing.Check {
	c := packing.Check{NominalL: 0.7, Batch: 400}
	for i := range 50 {
		c.ContentsML = append(c.ContentsML, 699+float64(i%5))
	}
	c.ContentsML[7] = 684
	return c
}

func ExampleCheckBatch() {
	v, err := packing.CheckBatch(batch())
	fmt.Println(v, err)
	// Output: passed: mean 700.43 mL of at least 698.28 mL, 1 of 50 short by more than 15 mL, 0 by more than twice that <nil>
}

func ExampleVerdict_String() {
	c := batch()
	c.ContentsML[3] = 660
	v, _ := packing.CheckBatch(c)
	fmt.Println(v)
	// Output: not passed: mean 699.03 mL of at least 695.91 mL, 2 of 50 short by more than 15 mL, 1 by more than twice that
}

func ExampleVerdict_Rows() {
	v, _ := packing.CheckBatch(batch())
	show(v.Rows())
	// Output:
	// mean of 30: 700.43 mL
	// standard deviation: 3.42 mL
	// least mean, k = 0.503: 698.28 mL
	// mean: accepted
	// short by more than 15 mL, of 50: 1 bottles
	// contents (SI 2006/659 (UK), schedule 2, 3.3): accepted
	// short by more than twice that, not for sale: 0 bottles
	// reference test: passed
}

func ExampleUSFillTolerancePct() {
	pct, _ := packing.USFillTolerancePct(0.75)
	fmt.Println("±", pct, "%")
	// Output: ± 2 %
}

func ExampleCheckUSFill() {
	u, _ := packing.CheckUSFill(0.75, []float64{751, 748, 752, 749, 733, 750.5})
	fmt.Println(u)
	// Output: 1 of 6 beyond ± 2 %; 3 over, 3 under (chance of so uneven a split 1.00)
}

func ExampleUSFill_String() {
	u, _ := packing.CheckUSFill(1, []float64{1001, 1002, 1003, 1004, 1005, 1006})
	fmt.Println(u)
	// Output: 0 of 6 beyond ± 1.5 %; 6 over, 0 under (chance of so uneven a split 0.03)
}

func ExampleUSFill_Rows() {
	u, _ := packing.CheckUSFill(0.75, []float64{751, 748, 752, 749, 733, 750.5})
	show(u.Rows())
	// Output:
	// bottles measured: 6
	// beyond ± 2 %: 1 bottles
	// overfilled: 3 bottles
	// underfilled: 3 bottles
	// chance of so uneven a split: 100.00 %
	// mean deviation: -0.37 %
	// largest deviation: -2.27 %
}

func ExampleEUSizes() {
	fmt.Println(packing.EUSizes())
	// Output: Directive 2007/45/EC, annex (in force from 11 April 2009): 100 200 350 500 700 1000 1500 1750 2000 mL
}

func ExampleUSSizes() {
	fmt.Println(len(packing.USSizes().ListML), "sizes", packing.USSizes().Date)
	// Output: 25 sizes as of 10 January 2025 (T.D. TTB-200)
}

func ExampleSizes_String() {
	fmt.Println(packing.Sizes{Name: "House list", Date: "2026", ListML: []float64{20, 40}})
	// Output: House list (2026): 20 40 mL
}

func ExampleCheckSize() {
	s, err := packing.CheckSize(0.75, packing.EUSizes())
	fmt.Println(s.Allowed, err)
	fmt.Println(s.Warning)
	// Output:
	// false <nil>
	// 750 mL is no size of Directive 2007/45/EC, annex (in force from 11 April 2009), which has 100, 200, 350, 500, 700, 1000, 1500, 1750, 2000 mL; check the text in force
}

func ExampleSize_String() {
	s, _ := packing.CheckSize(0.7, packing.USSizes())
	fmt.Println(s)
	// Output: 700 mL is allowed by 27 CFR 5.203 (as of 10 January 2025 (T.D. TTB-200))
}

func ExampleEULabel() {
	fmt.Println("±", packing.EULabel().PlusMinusABV, "% vol")
	// Output: ± 0.3 % vol
}

func ExampleEUMaceratedLabel() {
	fmt.Println("±", packing.EUMaceratedLabel().PlusMinusABV, "% vol")
	// Output: ± 1.5 % vol
}

func ExampleUSLabel() {
	r, _ := packing.USLabel()
	fmt.Println("±", r.PlusMinusABV, "% vol at", r.MeasuredAt)
	// Output: ± 0.3 % vol at 15.6 °C
}

func ExampleLabelChanceOf() {
	s, _ := alcoholometry.ABV(42.8)
	c, err := packing.LabelChanceOf(packing.Label{Rule: packing.EULabel(), LabelABV: 43, Strength: s, UncertaintyABV: 0.1})
	fmt.Println(c, err)
	_, err = packing.LabelChanceOf(packing.Label{Rule: packing.EULabel(), LabelABV: 43, Strength: s})
	fmt.Println(err)
	// Output:
	// 42.80 % vol measured for 43 % vol ± 0.3: within with a chance of 84.13 % <nil>
	// packing.LabelChanceOf: the uncertainty of the strength is 0 % vol; give one above 0
}

func ExampleLabelChance_String() {
	s, _ := alcoholometry.ABV(43)
	c, _ := packing.LabelChanceOf(packing.Label{Rule: packing.EULabel(), LabelABV: 43, Strength: s, UncertaintyABV: 0.2})
	fmt.Println(c)
	// Output: 43.00 % vol measured for 43 % vol ± 0.3: within with a chance of 86.64 %
}

func ExampleLabelChance_Rows() {
	s, _ := alcoholometry.ABV(42.8)
	c, _ := packing.LabelChanceOf(packing.Label{Rule: packing.EULabel(), LabelABV: 43, Strength: s, UncertaintyABV: 0.1})
	show(c.Rows())
	// Output:
	// measured, at 20.0 °C: 42.80 % vol
	// label: 43 ± 0.3 % vol
	// chance of being within: 84.13 %
	// chance of being below: 15.87 %
	// chance of being above: 0.00 %
	// measured within this of the label for 95 %: 0.14 % vol
	// rule: European Union, spirits: Regulation (EU) 1169/2011, annex XII
}
