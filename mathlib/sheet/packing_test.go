package sheet_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	. "swanneck/mathlib/sheet"
)

func TestPackingAndDutyStopTheCell(t *testing.T) {
	unset := Strength{}
	none := SamplingPlan{}
	for name, f := range map[string]func(){
		"FillBottle":          func() { FillBottle(Bottle{NominalL: 0.7}) },
		"BottleContentsL":     func() { BottleContentsL(BottleWeighing{GrossKg: 1, TareKg: 2, Strength: ABV(40)}) },
		"HeadSpaceOf":         func() { HeadSpaceOf(ClosedBottle{BrimL: 0.7, FillL: 0.8, Strength: ABV(40)}) },
		"BottlesFrom":         func() { BottlesFrom(FillingRun{Tank: Spirit{VolumeL: 10}}) },
		"TolerableErrorML":    func() { TolerableErrorML(0) },
		"FillTargetFor":       func() { FillTargetFor(0.7, 0) },
		"SinglePlan":          func() { SinglePlan(0) },
		"DoublePlan":          func() { DoublePlan(50) },
		"DestructivePlan":     func() { DestructivePlan(50) },
		"AQLPlan":             func() { AQLPlan(100, 3) },
		"AcceptChance":        func() { AcceptChance(none, 0.1) },
		"AcceptChanceOfBatch": func() { AcceptChanceOfBatch(SinglePlan(100), 10, 1) },
		"PlanOutcome":         func() { PlanOutcome(none, 0.1) },
		"QualityAt":           func() { QualityAt(none, 0.5) },
		"MeanFactor":          func() { MeanFactor(1) },
		"CheckBatch":          func() { CheckBatch(BatchCheck{NominalL: 0.7, Batch: 200}) },
		"USFillTolerancePct":  func() { USFillTolerancePct(0) },
		"CheckUSFill":         func() { CheckUSFill(0.75, nil) },
		"CheckBottleSize":     func() { CheckBottleSize(0, EUSizes()) },
		"LabelChanceOf":       func() { LabelChanceOf(StrengthLabel{Rule: EULabel(), LabelABV: 40, Strength: ABV(40)}) },
		"OnDay":               func() { OnDay("31.3.2026") },
		"Ledger":              func() { Ledger(LedgerColumns{Date: []string{"2026-03-01"}}) },
		"EntryPureL":          func() { EntryPureL(DutyEntry{}) },
		"ReturnOf":            func() { ReturnOf(DutyBooks{}) },
		"CountAlcohol":        func() { CountAlcohol(1, "") },
		"PureLFrom":           func() { PureLFrom(-1, USProofGallon) },
		"DutyOn":              func() { DutyOn(DutyRate{Money: 1, Per: PureLitre}, 1) },
		"ImperialProof":       func() { ImperialProof(unset) },
		"FromImperialProof":   func() { FromImperialProof(200) },
		"USGaugeByWeight":     func() { USGaugeByWeight(USWeight{Proof: 100}) },
		"USGaugeByTable3":     func() { USGaugeByTable3(USWeight{Proof: 100}) },
		"USGaugeByVolume":     func() { USGaugeByVolume(USVolume{Proof: 100}) },
		"USGallonsToDraw":     func() { USGallonsToDraw(0, USVolume{Proof: 100}) },
		"USGaugeCases":        func() { USGaugeCases(0, 9, 80) },
		"USReduceByTable6":    func() { USReduceByTable6(USReduction{FromProof: 80, ToProof: 90}) },
		"USReduceByTable4":    func() { USReduceByTable4(USReductionByWeight{FromProof: 80, ToProof: 70}) },
		"USContainerFor":      func() { USContainerFor(20, 190, 0) },
	} {
		line := stopped(t, f)
		if !strings.HasPrefix(line, name+": ") || strings.Contains(line, "\n") {
			t.Errorf("%s stops with %q; want one line that begins with its name", name, line)
		}
		for _, pkg := range []string{"quantity.", "alcoholometry.", "packing.", "duty."} {
			if strings.Contains(strings.TrimPrefix(line, name+": "), pkg) {
				t.Errorf("%s stops with %q, which names a package", name, line)
			}
		}
	}
	if got, want := stopped(t, func() {
		Ledger(LedgerColumns{Date: []string{"2026-03-01"}, Kind: []string{"made"}, Lot: []string{"A"}, Volume: []string{"421"}, Strength: []string{"60 %vol"}})
	}), `Ledger: line 2: the volume "421" has no unit; write it behind the figure, or give the unit of the column`; got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

func TestPackingAndDutyHandThrough(t *testing.T) {
	plan := SinglePlan(400)
	contents := make([]float64, 50)
	for i := range contents {
		contents[i] = 701
	}
	f := FillBottle(Bottle{NominalL: 0.7, Strength: ABV(60), Temp: Celsius(12)})
	entry := Ledger(LedgerColumns{Date: []string{"2026-03-01"}, Kind: []string{"made"}, Lot: []string{"A"}, Pure: []string{"12.5"}, Units: LedgerUnits{Pure: "L"}})
	books := DutyBooks{From: OnDay("2026-03-01"), To: OnDay("2026-03-31"), Entries: entry}
	for name, c := range map[string]struct{ got, want float64 }{
		"BottleContentsL":     {BottleContentsL(BottleWeighing{GrossKg: f.GrossKg, Strength: ABV(60), Temp: Celsius(12)}), 0.7},
		"HeadSpaceOf":         {HeadSpaceOf(ClosedBottle{BrimL: 0.75, FillL: 0.7, Strength: ABV(40)}).ClosedL, 0.05},
		"BottlesFrom":         {float64(BottlesFrom(FillingRun{Tank: Spirit{VolumeL: 70, Strength: ABV(40)}, Bottle: Bottle{NominalL: 0.7}}).Bottles), 100},
		"TolerableErrorML":    {TolerableErrorML(0.7), 15},
		"FillTargetFor":       {FillTargetFor(0.7, 1).TargetML, 700},
		"DoublePlan":          {float64(DoublePlan(400).SampleSize()), 60},
		"DestructivePlan":     {float64(DestructivePlan(400).SampleSize()), 20},
		"AQLPlan":             {float64(AQLPlan(400, 2.5).SampleSize()), 50},
		"AcceptChance":        {AcceptChance(plan, 0), 1},
		"AcceptChanceOfBatch": {AcceptChanceOfBatch(plan, 400, 3), 1},
		"PlanOutcome":         {PlanOutcome(plan, 0.1).Sampled, 50},
		"QualityAt":           {AcceptChance(plan, QualityAt(plan, 0.25)), 0.25},
		"MeanFactor":          {math.Round(1000 * MeanFactor(50)), 379},
		"CheckBatch":          {CheckBatch(BatchCheck{NominalL: 0.7, Batch: 400, ContentsML: contents}).MeanML, 701},
		"USFillTolerancePct":  {USFillTolerancePct(1), 1.5},
		"CheckUSFill":         {float64(CheckUSFill(0.7, contents).Over), 50},
		"EUSizes":             {EUSizes().ToML, 2000},
		"USSizes":             {USSizes().ListML[0], 50},
		"CheckBottleSize":     {CheckBottleSize(0.7, EUSizes()).NominalML, 700},
		"EULabel":             {EULabel().PlusMinusABV, 0.3},
		"EUMaceratedLabel":    {EUMaceratedLabel().PlusMinusABV, 1.5},
		"USLabel":             {USLabel().MeasuredAt.F(), 60},
		"LabelChanceOf":       {LabelChanceOf(StrengthLabel{Rule: EULabel(), LabelABV: 40, Strength: ABV(40), UncertaintyABV: 0.001}).Within, 1},
		"EntryPureL":          {EntryPureL(entry[0]), 12.5},
		"ReturnOf":            {ReturnOf(books).Total.MadeL, 12.5},
		"CountAlcohol":        {CountAlcohol(250, PureHectolitre), 2.5},
		"PureLFrom":           {PureLFrom(CountAlcohol(3, ImperialProofGallon), ImperialProofGallon), 3},
		"DutyOn":              {DutyOn(DutyRate{Money: 4, Currency: "XTS", Per: PureLitre}, 3).Money, 12},
		"ImperialProof":       {ImperialProof(FromImperialProof(70)), 70},
		"USGaugeByWeight":     {USGaugeByWeight(USWeight{WeightLb: 81000, Proof: 190, WineGalPerLb: 0.14718, ProofGalPerLb: 0.27964}).WineGal, 11921.6},
		"USGaugeByTable3":     {USGaugeByTable3(USWeight{WeightLb: 60378, Proof: 190, ProofGalPerLb: 0.27964}).ProofGal, 16884.1},
		"USGaugeByVolume":     {USGaugeByVolume(USVolume{ObservedGal: 1000, Proof: 190, Factor: 0.991}).WineGal, 991},
		"USGallonsToDraw":     {USGallonsToDraw(55.1, USVolume{Proof: 190, Factor: 0.991}), 55.6},
		"USGaugeCases":        {USGaugeCases(1, 10.5, 80).WineGal, 2.773806},
		"USReduceByTable6":    {USReduceByTable6(USReduction{FromProof: 191, ToProof: 188, FromWater: 5.59, ToWater: 7.36}).CutGal, 1.84},
		"USReduceByTable4":    {USReduceByTable4(USReductionByWeight{WeightLb: 1000, FromProof: 200, ToProof: 190, FromGalPerLb: 0.30258, ToGalPerLb: 0.27964}), 82.03},
		"USContainerFor":      {float64(USContainerFor(10, 190, 0).Lb), 68},
	} {
		if math.Abs(c.got-c.want) > 1e-9*math.Max(1, math.Abs(c.want)) {
			t.Errorf("%s: %.12g; want %.12g", name, c.got, c.want)
		}
	}
}

func ExampleFillBottle() {
	fmt.Println(FillBottle(Bottle{NominalL: 0.7, Strength: ABV(60), Temp: Celsius(10)}))
	// Output: 694.0 mL at 10.0 °C, 635.6 g on the balance (635.6 g with the bottle), for 700.0 mL at 20.0 °C
}

func ExampleBottleContentsL() {
	fmt.Printf("%.4f L\n", BottleContentsL(BottleWeighing{GrossKg: 1.146, TareKg: 0.487, Strength: ABV(43)}))
	// Output: 0.6996 L
}

func ExampleHeadSpaceOf() {
	fmt.Println(HeadSpaceOf(ClosedBottle{BrimL: 0.718, FillL: 0.7, Strength: ABV(43), Temp: Celsius(15), Warmest: Celsius(38)}))
	// Output: 20.5 mL (2.8 %) of head space when closed, 8.5 mL (1.2 %) at 38.0 °C; not full up to 40 °C
}

func ExampleBottlesFrom() {
	fmt.Println(BottlesFrom(FillingRun{Tank: Spirit{VolumeL: 598, Strength: ABV(43), Temp: Celsius(15)}, LeftL: 3.5, Bottle: Bottle{NominalL: 0.7}}))
	// Output: 852 bottles with 256.45 L of pure alcohol, 0.276 L left over, 0.000 L filled beyond the label
}

func ExampleTolerableErrorML() {
	fmt.Println(TolerableErrorML(0.7))
	// Output: 15
}

func ExampleFillTargetFor() {
	fmt.Println(FillTargetFor(0.7, 9))
	// Output: fill 703.5 mL on the average for 700.0 mL, with a standard deviation of 9 mL
}

func ExampleSinglePlan() {
	fmt.Println(SinglePlan(1000))
	// Output: draw 80: accept with 5 defective or fewer, reject with 6 or more
}

func ExampleDoublePlan() {
	fmt.Println(DoublePlan(1000))
	// Output: draw 50: accept with 2 defective or fewer, reject with 5 or more; else draw another 50: accept with 6 defective or fewer, reject with 7 or more
}

func ExampleDestructivePlan() {
	fmt.Println(DestructivePlan(1000))
	// Output: draw 20: accept with 1 defective or fewer, reject with 2 or more
}

func ExampleAQLPlan() {
	fmt.Println(AQLPlan(1000, 1))
	// Output: draw 80: accept with 2 defective or fewer, reject with 3 or more
}

func ExampleAcceptChance() {
	fmt.Printf("%.3f\n", AcceptChance(SinglePlan(1000), 0.025))
	// Output: 0.985
}

func ExampleAcceptChanceOfBatch() {
	fmt.Printf("%.3f\n", AcceptChanceOfBatch(SinglePlan(1000), 1000, 25))
	// Output: 0.989
}

func ExamplePlanOutcome() {
	fmt.Println(PlanOutcome(DoublePlan(1000), 0.025))
	// Output: accepted with a chance of 98.49 %, drawing 56.1 on the average
}

func ExampleQualityAt() {
	fmt.Printf("%.3f\n", QualityAt(SinglePlan(1000), 0.1))
	// Output: 0.113
}

func ExampleMeanFactor() {
	fmt.Printf("%.3f\n", MeanFactor(20))
	// Output: 0.640
}

func ExampleCheckBatch() {
	contents := []float64{701, 699, 702, 698, 700.5, 701.5}
	fmt.Println(CheckBatch(BatchCheck{NominalL: 0.7, Batch: 6, ContentsML: contents}))
	// Output: passed: mean 700.33 mL of at least 700.00 mL, 0 of 6 short by more than 15 mL, 0 by more than twice that
}

func ExampleUSFillTolerancePct() {
	fmt.Println(USFillTolerancePct(0.75))
	// Output: 2
}

func ExampleCheckUSFill() {
	fmt.Println(CheckUSFill(0.75, []float64{751, 748, 752, 749}))
	// Output: 0 of 4 beyond ± 2 %; 2 over, 2 under (chance of so uneven a split 1.00)
}

func ExampleEUSizes() {
	fmt.Println(EUSizes())
	// Output: Directive 2007/45/EC, annex (in force from 11 April 2009): 100 200 350 500 700 1000 1500 1750 2000 mL
}

func ExampleUSSizes() {
	fmt.Println(USSizes().Date)
	// Output: as of 10 January 2025 (T.D. TTB-200)
}

func ExampleCheckBottleSize() {
	fmt.Println(CheckBottleSize(0.7, EUSizes()))
	// Output: 700 mL is allowed by Directive 2007/45/EC, annex (in force from 11 April 2009)
}

func ExampleEULabel() {
	fmt.Println(EULabel().Source)
	// Output: Regulation (EU) 1169/2011, annex XII
}

func ExampleEUMaceratedLabel() {
	fmt.Println(EUMaceratedLabel().PlusMinusABV)
	// Output: 1.5
}

func ExampleUSLabel() {
	fmt.Println(USLabel().Source)
	// Output: 27 CFR 19.356(c) and 5.65
}

func ExampleLabelChanceOf() {
	fmt.Println(LabelChanceOf(StrengthLabel{Rule: EULabel(), LabelABV: 43, Strength: ABV(42.8), UncertaintyABV: 0.1}))
	// Output: 42.80 % vol measured for 43 % vol ± 0.3: within with a chance of 84.13 %
}
