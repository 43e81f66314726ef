package sheet_test

import (
	"fmt"
	"testing"

	. "swanneck/mathlib/sheet"
)

func herbCharge() HerbCharge {
	b := Herb("juniper", 30)
	b.MoisturePct = 10
	return ChargeHerbs(Recipe{Name: "trial 3", Items: []Botanical{b, Herb("coriander", 12)}}, Spirit{VolumeL: 20, Strength: ABV(40)})
}

func distilled() (HerbCharge, MarkerCarryOver) {
	c := herbCharge()
	batch := Batch{Pot: c.Pot, Until: ABV(20), Heat: Heating{PowerKW: 3}}
	for _, t := range c.Traces() {
		batch.Congeners = append(batch.Congeners, Congener{Name: t.Compound, MassG: t.MassG})
	}
	run := Distil(batch)
	return c, CarryOver(c, run, NamedCut{"hearts", run.Cut(AtStart(), AtStrength(ABV(55)))}, NamedCut{"tails", run.Cut(AtStrength(ABV(55)), AtEnd())})
}

func ExampleChargeHerbs() {
	fmt.Println(herbCharge())
	// Output: trial 3 in 20.00 L at 40.00 % vol (20.0 °C): 336 g of plants with 1.36 to 6.73 g of oil (estimate unless analysed); the pot gets 20.02 L at 39.95 % vol (20.0 °C)
}

func ExampleHerb() {
	fmt.Println(Herb("juniper", 30))
	// Output: juniper, cone: 30 g to the litre; 0.5 to 2.6 % v/w of oil, dried, published
}

func ExampleFindPlant() {
	fmt.Println(FindPlant("wormwood").Minimum.Amount, "mL/kg")
	// Output: 2 mL/kg
}

func ExamplePlantNames() {
	fmt.Println(len(PlantNames()), PlantNames()[:3])
	// Output: 24 [angelica root aniseed bitter fennel]
}

func ExampleOilPerKg() {
	o := OilContent{Amount: Exactly(20), Unit: OilMLPerKg, Basis: Anhydrous, DensityKgL: Exactly(1)}
	fmt.Println(OilPerKg(o, 10), "g/kg")
	// Output: 18 g/kg
}

func ExampleRangeOf() {
	fmt.Println(RangeOf(0.5, 2.6))
	// Output: 0.5 to 2.6
}

func ExampleExactly() {
	fmt.Println(Exactly(19))
	// Output: 19
}

func ExampleGPerPureL() {
	fmt.Printf("%.1f g/L\n", GPerPureL(24, Spirit{VolumeL: 0.8, Strength: ABV(60)}))
	// Output: 50.0 g/L
}

func ExampleGPerChargeL() {
	fmt.Printf("%.1f g/L\n", GPerChargeL(24, Spirit{VolumeL: 0.8, Strength: ABV(60)}))
	// Output: 30.0 g/L
}

func ExampleScaleRecipe() {
	s := ScaleRecipe(Recipe{Items: []Botanical{Herb("juniper", 30)}}, Spirit{VolumeL: 1, Strength: ABV(50)}, Spirit{VolumeL: 250, Strength: ABV(50)})
	fmt.Println(s.Items[0].ToG, "g")
	// Output: 3750 g
}

func ExamplePotRoom() {
	fmt.Println(PotRoom(herbCharge(), 30))
	// Output: level 20.2 L, wet heap 1.04 to 1.91 L (estimate): 67.4 % of 30.00 L
}

func ExampleSteepRoom() {
	b := Herb("lemon balm", 40)
	b.Use = Infused
	c := ChargeHerbs(Recipe{Per: PerChargeL, Items: []Botanical{b}}, Spirit{VolumeL: 5, Strength: ABV(60)})
	fmt.Println(SteepRoom(c, 8))
	// Output: level 5.13 L, wet heap 0.667 to 1.22 L (estimate): 64.2 % of 8.00 L
}

func ExampleSpentHerbs() {
	fmt.Printf("%.2f L/kg\n", SpentHerbs(SpentHerb{WetKg: 1.26, DryKg: 0.5, Strength: ABV(60)}).LKg)
	// Output: 1.67 L/kg
}

func ExampleSaltedOut() {
	fmt.Println(SaltedOut(OilLayer{LayerML: 0.35, OfML: 250, DensityKgL: Exactly(0.98)}))
	// Output: oil in the spirit: at least 1.37 g/L; nothing bounds it above
}

func ExampleAssayedOil() {
	fmt.Println(AssayedOil(0.44, 0.02, 20))
	// Output: 21 to 23 mL/kg of oil, as weighed, analysed
}

func ExampleDryExtract() {
	fmt.Println(DryExtract(0.21, 50))
	// Output: 4200.0 mg/L
}

func ExampleMoistureFromReadings() {
	fmt.Printf("%.0f %%\n", MoistureFromReadings(Spirit{VolumeL: 1, Strength: ABV(72)}, 60, ABV(71.6)))
	// Output: 10 %
}

func ExampleCarryMarkers() {
	c := ChargeHerbs(Recipe{Items: []Botanical{Herb("bitter orange peel", 20)}}, Spirit{VolumeL: 10, Strength: ABV(50)})
	o := CarryMarkers(c, []HerbCut{{Name: "hearts", Spirit: Spirit{VolumeL: 4, Strength: ABV(80)}}}, []MarkerPassage{{Compound: "limonene", Shares: []float64{0.9}}})
	fmt.Println(o.Cut("hearts"))
	// Output: hearts, 4.00 L at 80.00 % vol (20.0 °C): limonene 161 to 440 mg/L (estimate)
}

func ExampleCarryOver() {
	_, o := distilled()
	fmt.Println(o)
	fmt.Printf("out by less than 1e-9 g: %v\n", o.ClosureG() < 1e-9)
	for _, f := range o.Cut("hearts").Content("limonene").From {
		fmt.Println(f.Plant, f.SharePct, "%")
	}
	// Output:
	// 10 markers of 2 plants over 2 cuts (estimate); 1 marker not followed
	// out by less than 1e-9 g: true
	// coriander 0.277 to 68.1 %
	// juniper 31.9 to 99.7 %
}

func ExampleCalibrateMarkers() {
	_, o := distilled()
	o = CalibrateMarkers(o, MeasuredMarker{Cut: "hearts", Compound: "linalool", Amount: MgL(50)})
	c := o.Cut("hearts").Content("linalool")
	fmt.Println(c.Least, c.Most, c.Measured)
	// Output: 50.00 mg/L 50.00 mg/L true
}

func ExampleCompareTrials() {
	_, o := distilled()
	fmt.Println(CompareTrials(o, o).Differences[0].Verdict)
	// Output: cannot tell
}

func ExampleBlendToTarget() {
	pine := MarkerProfile{Name: "juniper", Strength: ABV(70), Complete: true, Amounts: []MarkerAmount{{Compound: "alpha-pinene", Amount: MgL(300)}}}
	neutral := MarkerProfile{Name: "neutral", Strength: ABV(96), Complete: true}
	b := BlendToTarget(MarkerProfile{Strength: ABV(42), Amounts: []MarkerAmount{{Compound: "alpha-pinene", Amount: MgL(60)}}}, 100, pine, neutral)
	fmt.Printf("%.1f L, %.1f L, %.1f kg of water\n", b.Parts[0].VolumeL, b.Parts[1].VolumeL, b.WaterKg)
	// Output: 20.0 L, 29.2 L, 53.2 kg of water
}

func steep(litre float64, temp Temperature, s Strength) SteepFit {
	q := []float64{1.75, 3.42, 5.39, 8.11, 8.98, 9.95}
	for i := range q {
		q[i] *= litre
	}
	return FitSteep(SteepSeries{Hours: []float64{1, 2, 4, 8, 12, 24}, Readings: q, Unit: "g/L", Temp: temp, Strength: s}, FirstOrder)
}

func ExampleFitSteep() {
	fmt.Println(steep(1, Celsius(20), ABV(50)).Reached(14))
	// Output: reached after 14 h: 93.9 (92.3 to 95.3) %
}

func ExampleFitSteeps() {
	f := FitSteeps(SteepSeries{Hours: []float64{1, 2, 3, 4}, Readings: []float64{1.8, 3.3, 4.6, 5.4}, Unit: "g/L"})
	fmt.Println(f.Best().Model())
	// Output: first order
}

func ExampleSteepAfter() {
	fmt.Println(SteepAfter(steep(1, Celsius(20), ABV(50)), 14, SteepConditions{Temp: Celsius(30)}))
	// Output: reading after 14 h at 30.0 °C: 9.82 (9.43 to 10.2) g/L
}

func ExampleSteepReached() {
	fmt.Println(SteepReached(steep(1, Celsius(20), ABV(50)), 14, SteepConditions{}))
	// Output: reached after 14 h at 20.0 °C: 93.9 (92.3 to 95.3) %
}

func ExampleSteepBetween() {
	fmt.Println(SteepBetween(steep(1, Celsius(20), ABV(50)), steep(2, Celsius(20), ABV(70)), 14, ABV(60)))
	// Output: reading after 14 h at 60.00 % vol: 14.1 (13.8 to 14.4) g/L
}

func ExampleSteepActivation() {
	fmt.Printf("%.1f kJ/mol\n", SteepActivation(steep(1, Celsius(20), ABV(50)), steep(1, Celsius(40), ABV(50))).Value)
	// Output: 0.0 kJ/mol
}

func ExampleUsualReach() {
	fmt.Println(UsualReach(14, ABV(50), Celsius(20), 0).FirstOrderPct, "%")
	// Output: 50.3 to 98.5 %
}

func ExamplePelegLaw() {
	fmt.Printf("%.2f\n", PelegLaw(0.4, 0.08).At(14))
	// Output: 9.21
}

func ExampleSphereShare() {
	fmt.Printf("%.4f\n", SphereShare(0.05))
	// Output: 0.6069
}

func TestHerbsStopCells(t *testing.T) {
	c := herbCharge()
	recipe := Recipe{Items: []Botanical{{Plant: "junipper", GPerL: 3}}}
	unset := Spirit{VolumeL: 1}
	two := SteepSeries{Hours: []float64{1, 2}, Readings: []float64{1, 2}}
	for name, f := range map[string]func(){
		"Herb":                 func() { Herb("junipper", 3) },
		"FindPlant":            func() { FindPlant("junipper") },
		"OilPerKg":             func() { OilPerKg(OilContent{Amount: Exactly(20), Unit: OilMLPerKg}, 0) },
		"GPerPureL":            func() { GPerPureL(1, unset) },
		"GPerChargeL":          func() { GPerChargeL(-1, unset) },
		"ChargeHerbs":          func() { ChargeHerbs(recipe, Spirit{VolumeL: 1, Strength: ABV(60)}) },
		"ScaleRecipe":          func() { ScaleRecipe(recipe, unset, unset) },
		"PotRoom":              func() { PotRoom(c, 5) },
		"SteepRoom":            func() { SteepRoom(c, 5) },
		"SpentHerbs":           func() { SpentHerbs(SpentHerb{}) },
		"SaltedOut":            func() { SaltedOut(OilLayer{LayerML: 1}) },
		"AssayedOil":           func() { AssayedOil(1, 0, 0) },
		"DryExtract":           func() { DryExtract(1, 0) },
		"MoistureFromReadings": func() { MoistureFromReadings(unset, 10, ABV(40)) },
		"CarryMarkers":         func() { CarryMarkers(c, nil, nil) },
		"CarryMarkersBetween":  func() { CarryMarkersBetween(c, nil, nil, nil) },
		"CarryOver":            func() { CarryOver(c, Run{}) },
		"CalibrateMarkers":     func() { CalibrateMarkers(MarkerCarryOver{}, MeasuredMarker{}) },
		"CompareTrials":        func() { CompareTrials(MarkerCarryOver{}, MarkerCarryOver{}) },
		"BlendToTarget":        func() { BlendToTarget(MarkerProfile{}, 1) },
		"FitSteep":             func() { FitSteep(two, FirstOrder) },
		"FitSteeps":            func() { FitSteeps(two) },
		"SteepAfter":           func() { SteepAfter(SteepFit{}, 1, SteepConditions{}) },
		"SteepReached":         func() { SteepReached(SteepFit{}, 1, SteepConditions{}) },
		"SteepBetween":         func() { SteepBetween(SteepFit{}, SteepFit{}, 1, ABV(40)) },
		"SteepActivation":      func() { SteepActivation(SteepFit{}, SteepFit{}) },
		"UsualReach":           func() { UsualReach(14, ABV(90), Celsius(20), 0) },
		"PelegLaw":             func() { PelegLaw(0, 0) },
		"SphereShare":          func() { SphereShare(-1) },
	} {
		if line := stopped(t, f); len(line) < len(name)+2 || line[:len(name)+2] != name+": " {
			t.Errorf("%s: the cell prints %q; want a line of %s", name, line, name)
		}
	}
}
