package sheet_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	. "swanneck/mathlib/sheet"
)

func TestTheGlassStopsTheCell(t *testing.T) {
	anethole, noOil := OilOf("anethole"), Oil{}
	d, unset := Drink{Strength: ABV(45), OilGL: 2}, Strength{}
	smell := AromaDrink{Strength: ABV(40), Amounts: []AromaAmount{{Compound: "limonene", MgL: 2}}}
	loss := ColourLoss{PerDay: 0.01, LowPerDay: 0.005, HighPerDay: 0.02, Strength: ABV(65)}
	for name, f := range map[string]func(){
		"OilOf":                   func() { OilOf("anetole") },
		"OilFrom":                 func() { OilFrom(OilPart{Compound: "anethole", SharePct: 120}) },
		"OilFromAmounts":          func() { OilFromAmounts() },
		"OilLike":                 func() { OilLike(anethole, noOil) },
		"OilHeld":                 func() { OilHeld(anethole, ABV(95), Celsius(20)) },
		"AnetholeByDescriptorsGL": func() { AnetholeByDescriptorsGL(ABV(80)) },
		"Louche":                  func() { Louche(Drink{Strength: ABV(45)}, anethole) },
		"CloudPoint":              func() { CloudPoint(Drink{OilGL: 2}, anethole) },
		"ClearAt":                 func() { ClearAt(anethole, -1, Celsius(4)) },
		"ClearReduced":            func() { ClearReduced(d, noOil) },
		"PourWater":               func() { PourWater(d, anethole, Pouring{}, Pouring{}) },
		"TurbidityPerM":           func() { TurbidityPerM(OilDroplets{OutGL: 1, DiameterUM: 0.1}) },
		"CalibrateOil":            func() { CalibrateOil(anethole) },
		"WhichHaze":               func() { WhichHaze(HazeSigns{Flocs: "maybe"}) },
		"OilTriangle":             func() { OilTriangle(anethole, Celsius(90)) },
		"DilutionLine":            func() { DilutionLine(Drink{Strength: ABV(45)}, anethole) },
		"Pigments":                func() { Pigments(GreenAbsorbances{A664: 0.9, A649: 0.4, Strength: ABV(65)}) },
		"ColourOf":                func() { ColourOf([]float64{400, 700}, []float64{0.1}, 1) },
		"ColourOfPigments":        func() { ColourOfPigments(GreenPigments{}) },
		"BrownedColour":           func() { BrownedColour(GreenPigments{ChlorophyllAMgL: -1}) },
		"MixColours":              func() { MixColours() },
		"FitColourLoss":           func() { FitColourLoss(ColourReadings{Strength: ABV(65)}) },
		"ColourWarmthOf":          func() { ColourWarmthOf(loss, loss) },
		"KeepColour":              func() { KeepColour(ColourKeeping{}) },
		"FitGreenUptake":          func() { FitGreenUptake([]float64{1, 2}, []float64{1, 2}, 0) },
		"DilutionLadder":          func() { DilutionLadder(1.25) },
		"PanelLadder":             func() { PanelLadder(1.25) },
		"LossByLadder":            func() { LossByLadder(ColourLadder{}, 30, ABV(65), Celsius(20)) },
		"InTheGlass":              func() { InTheGlass(smell, "linalool") },
		"AromaAt":                 func() { AromaAt(smell, ABV(50)) },
		"AromaProfile":            func() { AromaProfile(smell) },
		"AromaOf":                 func() { AromaOf(AromaByStrength{}, "limonene") },
		"OdourActivity":           func() { OdourActivity(smell, "limonene", OdourInEthanol40) },
		"RankOdours":              func() { RankOdours(smell, OdourInWater) },
		"WaterOverAir":            func() { WaterOverAir("nobody") },
		"CheckLimits":             func() { CheckLimits(LimitCase{Jurisdiction: "EU", Strength: unset}) },
		"PublishedLimits":         func() { PublishedLimits("Atlantis") },
		"LimitScopes":             func() { LimitScopes("Atlantis") },
		"PlantCautions":           func() { PlantCautions("wormwod") },
	} {
		line := stopped(t, f)
		if !strings.HasPrefix(line, name+": ") || strings.Contains(line, "\n") {
			t.Errorf("%s stops with %q; want one line that begins with its name", name, line)
		}
		for _, pkg := range []string{"quantity.", "alcoholometry.", "louche.", "colour.", "aroma.", "limits.", "compound."} {
			if strings.Contains(strings.TrimPrefix(line, name+": "), pkg) {
				t.Errorf("%s stops with %q, which names a package", name, line)
			}
		}
	}
}

// The sheet hands through; the numbers are checked in the packages behind. Here: each function reaches the one it names.
func TestTheGlassHandsThrough(t *testing.T) {
	anethole := OilOf("anethole")
	d := Drink{Strength: ABV(45), OilGL: 2}
	cal := CalibrateOil(anethole, Dripped(d, 5.2), SeenClear(Drink{Strength: ABV(42), OilGL: 2, Temp: Celsius(14)}), SeenCloudy(Drink{Strength: ABV(42), OilGL: 2, Temp: Celsius(10)}))
	smell := AromaDrink{Strength: ABV(40), Amounts: []AromaAmount{{Compound: "limonene", MgL: 2}}}
	profile := AromaProfile(smell, ABV(20))
	green := GreenPigments{ChlorophyllAMgL: 3, ChlorophyllBMgL: 1.2}
	kept := KeepColour(ColourKeeping{Fresh: ColourOfPigments(green), Browned: BrownedColour(green), Strength: ABV(65), PathCM: 7,
		Loss: ColourLoss{PerDay: 0.01, LowPerDay: 0.005, HighPerDay: 0.02, Strength: ABV(65)}})
	ladder := DilutionLadder(0, 3, 3, 4)
	wave := ColourOf([]float64{400, 420, 440, 460, 480, 500, 520, 540, 560, 580, 600, 620, 640, 660, 680, 700}, make([]float64, 16), 0)
	for name, c := range map[string]struct{ got, want float64 }{
		"OilFrom":              {float64(len(OilFrom(OilPart{Compound: "anethole", SharePct: 90}, OilPart{Compound: "fenchone", SharePct: 5}).Compounds())), 2},
		"OilFromAmounts":       {OilFromAmounts(OilAmount{Compound: "anethole", GL: 1.5}).TotalGL(), 1.5},
		"OilLike":              {CloudPoint(d, OilLike(anethole, cal.Oil)).TempC, CloudPoint(d, cal.Oil).TempC},
		"OilHeld is Louche":    {OilHeld(anethole, ABV(20), Celsius(20)).GL, Louche(Drink{Strength: ABV(20), OilGL: 3}, anethole).DissolvedGL},
		"ClearReduced is Pour": {ClearReduced(d, anethole).Strength.ABV(), PourWater(d, anethole).Onset.Strength.ABV()},
		"Pouring":              {float64(len(PourWater(d, anethole, Pouring{StepML: 25}).Steps)), 5},
		"ClearAt":              {Louche(Drink{Strength: ClearAt(anethole, 2, Celsius(4)).Strength, OilGL: 2, Temp: Celsius(4)}, anethole).Load, 1},
		"Dripped":              {cal.Checks[0].After, 5.2},
		"TurbidityPerM":        {TurbidityPerM(OilDroplets{OutGL: 0.2}), 2 * TurbidityPerM(OilDroplets{OutGL: 0.1})},
		"OilTriangle":          {OilTriangle(anethole, Celsius(20)).Watery.Oil[0], 0.111 / 998.2 * 0.842},
		"DilutionLine":         {DilutionLine(d, anethole).Water[1], 1},
		"MixColours":           {MixColours(ColourLot{VolumeL: 1, Spectrum: ColourOfPigments(green)}, ColourLot{VolumeL: 1, Spectrum: ClearLiquid()}).PerCM(664), ColourOfPigments(green).PerCM(664) / 2},
		"ColourOf":             {wave.Through(5).Lab.L, 100},
		"ColourDifference":     {ColourDifference(kept.After(0).Lab, kept.After(kept.ShelfLife(1).Days).Lab), 1},
		"Pigments":             {math.Round(1e3 * Pigments(GreenAbsorbances{A664: 0.90977, A649: 0.41514, Strength: ABV(95)}).ChlorophyllAMgL), 1e4},
		"LossByLadder":         {LossByLadder(ladder, 30, ABV(65), Celsius(20)).PerDay * 30, math.Log(ladder.Times)},
		"PanelLadder":          {PanelLadder(2, LadderRung{Asked: 4, Deeper: 4}, LadderRung{Asked: 4}).Times, math.Sqrt2},
		"ChlorophyllWarmth":    {ChlorophyllWarmth().KJMol, 71.04},
		"AromaAt":              {AromaAt(smell, ABV(20)).Amounts[0].MgL, 1},
		"AromaOf":              {AromaOf(profile, "limonene").TimesBottle[0], InTheGlass(AromaAt(smell, ABV(20)), "limonene").GasUgL / InTheGlass(smell, "limonene").GasUgL},
		"OdourActivity":        {OdourActivity(smell, "limonene", OdourInAir).Low, RankOdours(smell, OdourInAir).Activities[0].Low},
		"WaterOverAir":         {math.Round(100 * WaterOverAir("limonene").ByHenry), 103},
		"PublishedLimits":      {float64(len(PublishedLimits("US"))), 3},
		"LimitScopes":          {float64(len(LimitScopes("US"))), 2},
		"LimitJurisdictions":   {float64(len(LimitJurisdictions())), 3},
		"SpiritCategories":     {float64(len(SpiritCategories())), 17},
	} {
		if math.Abs(c.got-c.want) > 1e-3*math.Max(1e-3, math.Abs(c.want)) {
			t.Errorf("%s: %.12g; want %.12g", name, c.got, c.want)
		}
	}
	if h := WhichHaze(HazeSigns{ClearsWarm: "no", ClearsWithAcid: "yes"}); h.Found != "hard water (carbonate)" {
		t.Error(h)
	}
	if CloudPoint(d, cal.Oil).At(Celsius(18)) != StaysClear || CloudPoint(d, cal.Oil).At(Celsius(-5)) != TurnsCloudy || CloudPoint(d, anethole).At(Celsius(4)) != CloudUndecided {
		t.Error(CloudPoint(d, cal.Oil), CloudPoint(d, anethole))
	}
	jar := func(c, k float64) ColourLoss {
		return ColourLoss{PerDay: k, LowPerDay: k * 0.9, HighPerDay: k * 1.1, Strength: ABV(65), Temp: Celsius(c)}
	}
	if w := ColourWarmthOf(jar(10, 0.01), jar(30, 0.03)); !w.Seen {
		t.Error(w)
	}
	fit := FitColourLoss(ColourReadings{Strength: ABV(65), PlusMinus: 0.002, Readings: []ColourReading{{Day: 0, Value: 0.8}, {Day: 30, Value: 0.6}}})
	if math.Abs(fit.PerDay*30-math.Log(0.8/0.6)) > 1e-12 {
		t.Error(fit)
	}
	if u := FitGreenUptake([]float64{1, 2, 4, 8}, []float64{1.8, 3.3, 5.5, 8}, 0); u.Infusion.AllMgL < 8 {
		t.Error(u)
	}
	if n := len(PlantCautions("hyssop", "rue")); n != 2 {
		t.Errorf("%d cautions", n)
	}
	for want, f := range map[LimitAnswer]LimitFinding{
		AnswerWithin:     FoundByAnalysis("thujone", MgL(20)),
		AnswerOver:       FoundBetween("thujone", MgL(40), MgL(45)),
		AnswerCannotTell: FoundInPrint("thujone", MgL(0), MgL(76)),
	} {
		r := CheckLimits(LimitCase{Jurisdiction: "EU", Scopes: []string{"artemisia"}, Strength: ABV(60), Findings: []LimitFinding{f}})
		if r.Lines[0].Answer != want {
			t.Errorf("%v: %v", f, r.Lines[0])
		}
	}
	bound := CheckLimits(LimitCase{Jurisdiction: "EU", Scopes: []string{"artemisia"}, Strength: ABV(60), Findings: []LimitFinding{FoundAtMost("thujone", MgL(20)), NotDetected("HCN", MgL(1)), NotMeasured("quassin")}})
	if bound.Lines[0].Answer != AnswerWithin || bound.Lines[1].Answer != AnswerWithin || bound.Lines[2].Answer != AnswerCannotTell {
		t.Error(bound.Lines)
	}
	short := CheckLimits(LimitCase{Jurisdiction: "EU", Category: "brandy", Strength: ABV(35)})
	if short.Lines[0].Answer != AnswerUnder {
		t.Error(short.Lines[0])
	}
}

func ExampleOilOf() {
	fmt.Println(OilOf("anethole"))
	// Output: trans-anethole; solubility not calibrated (estimate, factor of about 2)
}

func ExampleOilFrom() {
	fmt.Println(OilFrom(OilPart{Compound: "anethole", SharePct: 85}, OilPart{Compound: "fenchone", SharePct: 8}))
	// Output: trans-anethole 85 %, fenchone 8 %; solubility not calibrated (estimate, factor of about 2)
}

func ExampleOilFromAmounts() {
	oil := OilFromAmounts(OilAmount{Compound: "anethole", GL: 1.6}, OilAmount{Compound: "limonene", GL: 0.1})
	fmt.Println(Louche(Drink{Strength: ABV(33), OilGL: oil.TotalGL()}, oil))
	// Output: 33.00 % vol with 1.70 g/L of oil, 20.0 °C: cloudy, 0.461 g/L of oil out, 1.24 dissolved (estimate)
}

func ExampleOilLike() {
	last := CalibrateOil(OilOf("anethole"), Dripped(Drink{Strength: ABV(45), OilGL: 2}, 5.2))
	fmt.Println(OilLike(OilOf("anethole"), last.Oil))
	// Output: trans-anethole; calibrated by 1 drip at 20.0 °C: 0.934 times the published solubility
}

func ExampleOilHeld() {
	fmt.Println(OilHeld(OilOf("anethole"), ABV(45), Celsius(20)))
	// Output: 45.00 % vol at 20.0 °C holds 3.59 g/L of oil clear (1.79 to 7.17, estimate)
}

func ExampleAnetholeByDescriptorsGL() {
	fmt.Printf("%.1f g/L\n", AnetholeByDescriptorsGL(ABV(40)))
	// Output: 4.6 g/L
}

func ExampleLouche() {
	fmt.Println(Louche(Drink{Strength: ABV(20), OilGL: 0.9}, OilOf("anethole")))
	// Output: 20.00 % vol with 0.900 g/L of oil, 20.0 °C: cloudy, 0.427 g/L of oil out, 0.473 dissolved (estimate)
}

func ExampleCloudPoint() {
	drink, oil := Drink{Strength: ABV(45), OilGL: 2}, OilOf("anethole")
	fmt.Println(CloudPoint(drink, oil))
	seen := CalibrateOil(oil, Dripped(drink, 5.2))
	fmt.Println(CloudPoint(drink, seen.Oil))
	fmt.Println("at 12 °C:", CloudPoint(drink, seen.Oil).At(Celsius(12)))
	// Output:
	// 45.00 % vol with 2.00 g/L of oil: clouds below 4.2 °C (-12.5 to 23.2 °C; estimate, not calibrated); crystals of trans-anethole can grow below 11 °C (estimate)
	// 45.00 % vol with 2.00 g/L of oil: clouds below 6.0 °C (-2.7 to 9.8 °C; calibrated at one temperature); crystals of trans-anethole can grow below 12 °C (estimate)
	// at 12 °C: clear
}

func ExampleClearAt() {
	fmt.Println(ClearAt(OilOf("anethole"), 2, Celsius(4)))
	// Output: clear from 45.1 % vol upwards at 4.0 °C with 2.00 g/L of oil (36.5 to 53.7; estimate, not calibrated)
}

func ExampleClearReduced() {
	fmt.Println(ClearReduced(Drink{Strength: ABV(65), OilGL: 2}, OilOf("anethole")))
	// Output: clear from 26.9 % vol upwards at 20.0 °C with 0.828 g/L of oil (0.0 to 40.5; estimate, not calibrated); below 4.3 % vol it would clear again
}

func ExamplePourWater() {
	path := PourWater(Drink{Strength: ABV(45), OilGL: 2}, OilOf("anethole"), Pouring{StepML: 20})
	fmt.Println(path)
	fmt.Printf("%.1f\n", path.StrengthsABV())
	// Output:
	// 45.00 % vol with 2.00 g/L of oil, 20.0 °C: clouds at 1 + 0.31 (6.1 mL in 20 mL; 34.5 % vol); most oil out, 0.422 g/L, at 1 + 1.07 (21.8 % vol), milky; clears again at 1 + 16.3 (2.6 % vol) (estimate, not calibrated)
	// [45.0 22.5 15.0 11.2 9.0 7.5]
}

func ExampleTurbidityPerM() {
	fmt.Printf("%.0f 1/m\n", TurbidityPerM(OilDroplets{OutGL: 0.162}))
	// Output: 511 1/m
}

func ExampleDripped() {
	fmt.Println(Dripped(Drink{Strength: ABV(45), OilGL: 2}, 5.2))
	// Output: 45.00 % vol with 2.00 g/L of oil, 20.0 °C: 5.2 mL of water in 20 mL
}

func ExampleSeenClear() {
	fmt.Println(SeenClear(Drink{Strength: ABV(42), OilGL: 2, Temp: Celsius(4)}))
	// Output: 42.00 % vol with 2.00 g/L of oil, 4.0 °C: clear
}

func ExampleSeenCloudy() {
	fmt.Println(SeenCloudy(Drink{Strength: ABV(42), OilGL: 2, Temp: Celsius(4)}))
	// Output: 42.00 % vol with 2.00 g/L of oil, 4.0 °C: cloudy
}

func ExampleCalibrateOil() {
	c := CalibrateOil(OilOf("anethole"), Dripped(Drink{Strength: ABV(45), OilGL: 2}, 4.5))
	fmt.Println(c)
	fmt.Println(c.Checks[0])
	// Output:
	// 0.885 times the published solubility, by 1 drip at 20.0 °C, good to a factor of 1.02 there; heat of solution 25.0 kJ/mol (15.0 to 35.0, an estimate)
	// 45.00 % vol with 2.00 g/L of oil, 20.0 °C: 4.5 mL of water in 20 mL; predicted before 6.1 mL, after 4.5 mL
}

func ExampleWhichHaze() {
	fmt.Println(WhichHaze(HazeSigns{ClearsWarm: "yes"}))
	// Output: cannot tell yet (oil haze, fatty esters, anethole crystals): are there flocs or threads rather than an even veil?
}

func ExampleOilTriangle() {
	two := OilTriangle(OilOf("anethole"), Celsius(20))
	fmt.Printf("%.4f of oil by mass at 60 %% vol; %s\n", two.Watery.Oil[60], two.Note)
	// Output: 0.0133 of oil by mass at 60 % vol; qualitative: watery side by the model (factor of about 2), side rich in oil by the shape of limonene's
}

func ExampleDilutionLine() {
	line := DilutionLine(Drink{Strength: ABV(45), OilGL: 2}, OilOf("anethole"))
	fmt.Printf("%.4f\n", line.Oil)
	// Output: [0.0021 0.0000]
}

func ExamplePigments() {
	fmt.Println(Pigments(GreenAbsorbances{A664: 0.90977, A649: 0.41514, Strength: ABV(95)}))
	// Output: chlorophyll a 10.00 ± 0.03, b 4.00 ± 0.06 mg/L
}

func ExampleColourOf() {
	nm := []float64{400, 420, 440, 460, 480, 500, 520, 540, 560, 580, 600, 620, 640, 660, 680, 700}
	a := []float64{0.6, 0.8, 0.7, 0.4, 0.2, 0.08, 0.05, 0.05, 0.05, 0.06, 0.08, 0.1, 0.15, 0.35, 0.2, 0.03}
	fmt.Println(ColourOf(nm, a, 1).Through(1))
	// Output: L* 93.50, a* -22.81, b* 44.28 through 1 cm, #dff795
}

func ExampleColourOfPigments() {
	fmt.Println(ColourOfPigments(GreenPigments{ChlorophyllAMgL: 3, ChlorophyllBMgL: 1.2}).Through(1))
	// Output: L* 97.79, a* -11.85, b* 15.66 through 1 cm, #eeffda (estimate: spectra of the pigments in ether, moved and scaled)
}

func ExampleBrownedColour() {
	fmt.Println(BrownedColour(GreenPigments{ChlorophyllAMgL: 3, ChlorophyllBMgL: 1.2}).Through(1))
	// Output: L* 97.72, a* -5.60, b* 12.18 through 1 cm, #f7fbe1 (estimate: bands of the brown pigments from memory)
}

func ExampleClearLiquid() {
	fmt.Println(ClearLiquid().Through(7))
	// Output: L* 100.00, a* 0.00, b* 0.00 through 7 cm, #ffffff
}

func ExampleMixColours() {
	green := ColourOfPigments(GreenPigments{ChlorophyllAMgL: 9, ChlorophyllBMgL: 4})
	fmt.Println(MixColours(ColourLot{VolumeL: 20, Spectrum: green}, ColourLot{VolumeL: 40, Spectrum: ClearLiquid()}).Through(1))
	// Output: L* 97.70, a* -12.25, b* 16.48 through 1 cm, #edfed8 (estimate: spectra of the pigments in ether, moved and scaled)
}

func ExampleColourDifference() {
	fresh := ColourOfPigments(GreenPigments{ChlorophyllAMgL: 3, ChlorophyllBMgL: 1.2}).Through(7)
	weaker := ColourOfPigments(GreenPigments{ChlorophyllAMgL: 2.5, ChlorophyllBMgL: 1}).Through(7)
	fmt.Printf("%.1f\n", ColourDifference(fresh.Lab, weaker.Lab))
	// Output: 1.8
}

func ExampleFitColourLoss() {
	fmt.Println(FitColourLoss(ColourReadings{Strength: ABV(65), PlusMinus: 0.002, Readings: []ColourReading{{Day: 0, Value: 0.842}, {Day: 30, Value: 0.611}}}))
	// Output: 0.0107 per day (0.0104 to 0.011) at 65.00 % vol and 20.0 °C, by 2 readings
}

func ExampleChlorophyllWarmth() {
	fmt.Printf("%.2f times as fast at 30 as at 20 °C (estimate)\n", ChlorophyllWarmth().Factor(Celsius(20), Celsius(30)))
	// Output: 2.62 times as fast at 30 as at 20 °C (estimate)
}

func ExampleColourWarmthOf() {
	cool := ColourLoss{PerDay: 0.006, LowPerDay: 0.0055, HighPerDay: 0.0065, Strength: ABV(65), Temp: Celsius(12)}
	warm := ColourLoss{PerDay: 0.025, LowPerDay: 0.023, HighPerDay: 0.027, Strength: ABV(65), Temp: Celsius(28)}
	fmt.Println(ColourWarmthOf(cool, warm))
	// Output: 63.7 kJ/mol (58.5 to 68.9), own jars at 12.0 °C and 28.0 °C
}

func ExampleKeepColour() {
	green := GreenPigments{ChlorophyllAMgL: 3, ChlorophyllBMgL: 1.2}
	loss := FitColourLoss(ColourReadings{Strength: ABV(65), PlusMinus: 0.002, Readings: []ColourReading{{Day: 0, Value: 0.842}, {Day: 30, Value: 0.611}}})
	kept := KeepColour(ColourKeeping{Fresh: ColourOfPigments(green), Browned: BrownedColour(green), Loss: loss, Strength: ABV(65), PathCM: 7, Store: Celsius(12)})
	fmt.Println(kept.ShelfLife(2))
	fmt.Println(kept.On(0, 60).Hex)
	// Output:
	// difference of 2 through 7 cm: 38 days (37 to 39); with what is not known of the warmth 20 to 46 (estimate: spectra of the pigments in ether, moved and scaled; bands of the brown pigments from memory)
	// [#a4ed72 #b4e877]
}

func ExampleFitGreenUptake() {
	fmt.Println(FitGreenUptake([]float64{1, 2, 4, 8, 12}, []float64{1.8, 3.3, 5.5, 8, 9.1}, 0.001))
	// Output: uptake 0.197 per hour (at least 0.194, at most 0.199); the herb gives 10.14 mg/L in all
}

func ExampleDilutionLadder() {
	fmt.Println(DilutionLadder(1.25, 3, 3, 4))
	fmt.Println(DilutionLadder(1.25, HueDiffers))
	// Output:
	// 2.35 times as strong (1.71 to 3.24, 3 looks, by eye)
	// no rung matches: the hue differs (browned); the concentrations cannot be compared
}

func ExamplePanelLadder() {
	fmt.Println(PanelLadder(1.25, LadderRung{Asked: 5, Deeper: 5}, LadderRung{Asked: 5, Deeper: 2}, LadderRung{Asked: 5}))
	// Output: 1.22 times as strong (1.10 to 1.36, 5 looks, by eye)
}

func ExampleLossByLadder() {
	fmt.Println(LossByLadder(DilutionLadder(1.25, 3, 3, 4), 45, ABV(65), Celsius(18)))
	// Output: 0.019 per day (0.0119 to 0.0261) at 65.00 % vol and 18.0 °C, by a dilution ladder, 3 looks
}

func ExampleInTheGlass() {
	fmt.Println(InTheGlass(AromaDrink{Strength: ABV(45), Amounts: []AromaAmount{{Compound: "linalool", MgL: 12}}}, "linalool"))
	// Output: linalool over 45.00 % vol: 0.134 µg/L of air from 12.00 mg/L (estimate)
}

func ExampleAromaAt() {
	fmt.Println(AromaAt(AromaDrink{Strength: ABV(45), Amounts: []AromaAmount{{Compound: "linalool", MgL: 12}}}, ABV(15)))
	// Output: 15.00 % vol with 4.00 mg/L of linalool
}

func ExampleAromaProfile() {
	bottle := AromaDrink{Strength: ABV(45), Amounts: []AromaAmount{{Compound: "anethole", MgL: 1600}, {Compound: "linalool", MgL: 12}}}
	p := AromaProfile(bottle, ABV(45), ABV(30), ABV(15))
	fmt.Println(p)
	fmt.Println(p.Opens(2))
	// Output:
	// air over the glass (estimate) at 45.0 % vol: 1.00 to 1.00 times the bottle's; 30.0 % vol: 3.35 to 3.62 times the bottle's; 15.0 % vol: 5.85 to 6.01 times the bottle's, cloudy
	// cannot tell which opens most
}

func ExampleAromaOf() {
	bottle := AromaDrink{Strength: ABV(45), Amounts: []AromaAmount{{Compound: "linalool", MgL: 12}}}
	fmt.Printf("%.1f times the bottle's\n", AromaOf(AromaProfile(bottle, ABV(30), ABV(15)), "linalool").TimesBottle)
	// Output: [3.4 6.2] times the bottle's
}

func ExampleOdourActivity() {
	fmt.Println(OdourActivity(AromaDrink{Strength: ABV(40), Amounts: []AromaAmount{{Compound: "eugenol", MgL: 0.5}}}, "eugenol", OdourInEthanol40))
	// Output: eugenol in ethanol of 40 % vol: 500 µg/L, 22.3 to 223 times its threshold (from memory: Poisson and Schieberle, J. Agric. Food Chem. 56 (2008) 5813)
}

func ExampleRankOdours() {
	fmt.Println(RankOdours(AromaDrink{Strength: ABV(40), Amounts: []AromaAmount{{Compound: "eugenol", MgL: 0.5}, {Compound: "vanillin", MgL: 0.4}}}, OdourInEthanol40))
	// Output: 40.00 % vol in ethanol of 40 % vol: cannot tell which leads; times the threshold: eugenol 22.3 to 223, vanillin 5.75 to 57.5
}

func ExampleWaterOverAir() {
	fmt.Println(WaterOverAir("limonene"))
	// Output: limonene, water over air at 25 °C: 0.738 by descriptors, 1.03 by Henry's constant, 1.30 by solubility
}

func ExampleCheckLimits() {
	r := CheckLimits(LimitCase{Jurisdiction: "EU", Strength: ABV(60), Plants: []string{"wormwood"}, Findings: []LimitFinding{FoundByAnalysis("thujone", MgL(23))}})
	fmt.Println(r.Lines[0])
	fmt.Println(r.Worst())
	// Output:
	// thujone: within; allowed at most 35 mg/kg (alcoholic beverages made from Artemisia); thujone: 23.00 mg/L (measured in the product): 25.3 mg/kg [Regulation (EC) 1334/2008, annex III part B; read in an encyclopaedia and a report of the proposal; check the current text]
	// within
}

func ExampleFoundByAnalysis() {
	fmt.Println(FoundByAnalysis("thujone", MgKg(12)))
	// Output: thujone: 12.00 mg/kg (measured in the product)
}

func ExampleFoundBetween() {
	fmt.Println(FoundBetween("thujone", MgKg(11), MgKg(13)))
	// Output: thujone: 11.00 mg/kg to 13.00 mg/kg (measured in the product)
}

func ExampleNotDetected() {
	fmt.Println(NotDetected("safrole", MgKg(0.1)))
	// Output: safrole: at most 0.1 mg/kg (measured in the product)
}

func ExampleFoundAtMost() {
	fmt.Println(FoundAtMost("thujone", MgL(23)))
	// Output: thujone: at most 23.00 mg/L (analysed oil and mass balance)
}

func ExampleFoundInPrint() {
	fmt.Println(FoundInPrint("thujone", MgL(0), MgL(76)))
	// Output: thujone: 0.000 mg/L to 76.00 mg/L (range from print)
}

func ExampleNotMeasured() {
	fmt.Println(NotMeasured("pulegone"))
	// Output: pulegone: nothing measured
}

func ExamplePublishedLimits() {
	fmt.Println(PublishedLimits("US")[0])
	// Output: US, thujone, products that must be free of thujone: less than 10 mg/kg [TTB Industry Circular 2007-5; 21 CFR 172.510; parts per million by the official method]
}

func ExampleLimitScopes() {
	fmt.Println(LimitScopes("US"))
	// Output: [brandy thujone-free]
}

func ExampleLimitJurisdictions() {
	fmt.Println(LimitJurisdictions())
	// Output: [EU HMPC US]
}

func ExampleSpiritCategories() {
	fmt.Println(len(SpiritCategories()), SpiritCategories()[0])
	// Output: 17 gin
}

func ExamplePlantCautions() {
	fmt.Println(PlantCautions("hyssop")[0])
	// Output: hyssop: its pinocamphone causes fits; no rule limits it and nothing here follows it, so keep amounts small (from memory)
}
