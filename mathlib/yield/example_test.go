package yield_test

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/yield"
)

func ExampleAccountOf() {
	a, err := yield.AccountOf(
		yield.Passage{Kind: yield.StrippingRun, In: []alcoholometry.Spirit{spirit(1000, 9)}, Out: []alcoholometry.Spirit{spirit(330, 26.6)}},
		yield.Passage{Kind: yield.SpiritRun, In: []alcoholometry.Spirit{spirit(330, 26.6)}, Out: []alcoholometry.Spirit{spirit(95, 72)}, Kept: []alcoholometry.Spirit{spirit(48, 35)}},
	)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(a)
	for _, s := range a.Stages {
		fmt.Println(s)
	}
	// Output:
	// 68.40 of 90.00 L of pure alcohol (76.00 %); kept 16.80, thrown away 0.000, lost 4.80, between stages 0.000 L; 0 findings
	// stripping run: in 90.00, out 87.78, kept 0.000, thrown away 0.000, lost 2.22 L of pure alcohol (2.47 %, within)
	// spirit run: in 87.78, out 68.40, kept 16.80, thrown away 0.000, lost 2.58 L of pure alcohol (2.94 %, within)
}

func ExampleUsualLoss() {
	r, _ := yield.UsualLoss(yield.Filtration)
	fmt.Println(r)
	// Output: filtration: 0.3 to 2 % of the pure alcohol (common practice, no source): what stays in the filter and its first and last runnings
}

func ExampleForBottles() {
	p, err := yield.ForBottles(gin(), 1000)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p)
	for _, s := range p.Stages {
		fmt.Printf("%s: %d × %.1f L, days: %g\n", s.Stage.Name, s.Batches, s.BatchL, s.Days)
	}
	// Output:
	// 252.11 L of neutral spirit at 96.00 % vol make 1000 bottles of 0.5 L at 44.00 % vol; yield 90.90 %, 15 days; 7.69 XTS a bottle
	// maceration: 3 × 146.7 L, days: 2
	// botanical run: 3 × 181.3 L, days: 3
	// reduction: 1 × 288.6 L, days: 7
	// filtration: 1 × 510.2 L, days: 1
	// filling: 2 × 253.0 L, days: 2
}

func ExampleFromBase() {
	p, _ := yield.FromBase(gin(), 100)
	fmt.Println(p.Bottles, "bottles")
	for _, c := range p.Costs[:3] {
		fmt.Printf("%s: %.2f a bottle, %.1f %%\n", c.What, c.PerBottle, c.SharePct)
	}
	// Output:
	// 396 bottles
	// neutral spirit: 0.61 a bottle, 6.3 %
	// juniper: 0.11 a bottle, 1.2 %
	// coriander: 0.03 a bottle, 0.3 %
}

func ExampleOneMorePerCent() {
	p, _ := yield.ForBottles(gin(), 1000)
	g, _ := yield.OneMorePerCent(p)
	fmt.Println(g)
	fmt.Printf("%s: %.2f bottles\n", g.Stages[1].Stage, g.Stages[1].MoreBottles)
	// Output:
	// worth most at filling: 1 % less lost makes 10.12 bottles more, or saves 2.53 L of base
	// botanical run: 10.87 bottles
}
