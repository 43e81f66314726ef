package botanical_test

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/botanical"
	"swanneck/mathlib/quantity"
)

func aniseed() botanical.Charge {
	b, _ := botanical.Herb("aniseed", 40)
	b.MoisturePct = 8
	s, _ := alcoholometry.ABV(60)
	c, err := botanical.NewCharge(botanical.Recipe{Name: "trial 3", Items: []botanical.Botanical{b}}, alcoholometry.Spirit{VolumeL: 20, Strength: s})
	if err != nil {
		fmt.Println(err)
	}
	return c
}

func ExampleNewCharge() {
	c := aniseed()
	fmt.Println(c)
	for _, t := range c.Traces() {
		fmt.Println(t)
	}
	// Output:
	// trial 3 in 20.00 L at 60.00 % vol (20.0 °C): 480 g of plants with 7.04 to 23.9 g of oil (estimate unless analysed); the pot gets 20.04 L at 59.89 % vol (20.0 °C)
	// estragole: 0.0352 to 1.43 g (estimate)
	// linalool: 0.00704 to 0.358 g (estimate)
	// trans-anethole: 5.91 to 22.2 g (estimate)
}

func ExampleFind() {
	p, _ := botanical.Find("anise")
	fmt.Println(p)
	_, err := botanical.Find("fennel")
	fmt.Println(err)
	// Output:
	// aniseed (Pimpinella anisum, fruit): 1.5 to 5 % v/w of oil, dried, published; at least 20 mL/kg, anhydrous, in the pharmacopoeia
	// botanical.Find: no plant "fennel" is known; the nearest names are bitter fennel, sweet fennel, aniseed; for a plant that is not listed set Unlisted and give its Oil and Markers
}

func ExampleHerb() {
	b, _ := botanical.Herb("grand wormwood", 12)
	for _, row := range b.Rows() {
		fmt.Println(row)
	}
	// Output:
	// [grand wormwood, herb 12 g to the litre]
	// [oil content 0.2 to 1.5 % v/w of oil, dried, published ]
	// [marker thujone 0 to 70.6 % of the oil, published ]
	// [marker cis-epoxyocimene or trans-sabinyl acetate or chrysanthenyl acetate, share not known, published ]
}

func ExampleBotanical_WithMarker() {
	b, _ := botanical.Herb("grand wormwood", 12)
	b = b.WithMarker("thujone", botanical.Exactly(19))
	fmt.Println(b.Markers[len(b.Markers)-1])
	// Output: thujone 19 % of the oil, analysed
}

func ExampleOilContent_GPerKg() {
	star := botanical.OilContent{Amount: botanical.Exactly(70), Unit: botanical.OilMLPerKg, Basis: botanical.Anhydrous, DensityKgL: botanical.Exactly(0.9882)}
	g, err := star.GPerKg(10)
	fmt.Println(g, "g/kg", err)
	star.Basis = ""
	_, err = star.GPerKg(10)
	fmt.Println(err)
	// Output:
	// 62.3 g/kg <nil>
	// botanical.OilContent.GPerKg: the oil content of the plant, 70 mL/kg, has no basis; give Anhydrous, Dried or AsWeighed
}

func ExampleScale() {
	b, _ := botanical.Herb("juniper", 25)
	r := botanical.Recipe{Name: "trial 3", Items: []botanical.Botanical{b}}
	bench, _ := alcoholometry.ABV(60)
	still, _ := alcoholometry.ABV(50)
	from, to := alcoholometry.Spirit{VolumeL: 2, Strength: bench}, alcoholometry.Spirit{VolumeL: 200, Strength: still}
	_, err := botanical.Scale(r, from, to)
	fmt.Println(err)
	r.Per = botanical.PerPureL
	s, _ := botanical.Scale(r, from, to)
	fmt.Println(s)
	fmt.Println(s.Items[0].ToG, "g")
	fmt.Println(s.NotScaled()[0])
	// Output:
	// botanical.Scale: the charges are 60.00 % vol and 50.00 % vol: by pure alcohol the grams grow 83.33 times, by litres of charge 100 times; name the rule, Per: PerPureL or PerChargeL
	// trial 3 from 2.00 L at 60.00 % vol (20.0 °C) to 200.00 L at 50.00 % vol (20.0 °C): 83.3 times the grams, by the litre of pure alcohol in the charge
	// 2500 g
	// surface to each litre: 0.215 times as much in stills of one shape, so that the wall loses less of the heat and returns less reflux by itself
}

func ExampleCarry() {
	c := aniseed()
	s, _ := alcoholometry.ABV(76)
	w, _ := alcoholometry.ABV(30)
	cuts := []botanical.Cut{{Name: "hearts", Spirit: alcoholometry.Spirit{VolumeL: 12, Strength: s}}, {Name: "tails", Spirit: alcoholometry.Spirit{VolumeL: 4, Strength: w}}}
	o, err := botanical.Carry(c, cuts, []botanical.Passage{
		{Compound: "trans-anethole", Shares: []float64{0.8, 0.15}}, {Compound: "estragole", Shares: []float64{0.9, 0.1}}, {Compound: "linalool", Shares: []float64{0.6, 0.3}},
	})
	fmt.Println(o, err)
	fmt.Println(o.Cut("hearts"))
	fmt.Printf("out by %.0g g\n", o.ClosureG())
	// Output:
	// 3 markers of 1 plant over 2 cuts (estimate); 1 marker not followed <nil>
	// hearts, 12.00 L at 76.00 % vol (20.0 °C): estragole 2.64 to 107, linalool 0.352 to 17.9, trans-anethole 394 to 1481 mg/L (estimate)
	// out by 0 g
}

func ExampleCalibrate() {
	c := aniseed()
	s, _ := alcoholometry.ABV(76)
	cuts := []botanical.Cut{{Name: "hearts", Spirit: alcoholometry.Spirit{VolumeL: 12, Strength: s}}}
	o, _ := botanical.Carry(c, cuts, []botanical.Passage{
		{Compound: "trans-anethole", Shares: []float64{0.8}}, {Compound: "estragole", Shares: []float64{0.9}}, {Compound: "linalool", Shares: []float64{0.6}},
	})
	found, _ := quantity.MgL(900)
	o, err := botanical.Calibrate(o, botanical.Measured{Cut: "hearts", Compound: "anethole", Amount: found})
	fmt.Println(o.Cut("hearts").Content("anethole"), err)
	// Output: trans-anethole: 10.8 g, 900 mg/L (measured) <nil>
}

func ExampleFitSteep() {
	s := botanical.Series{What: "oil in the macerate", Hours: []float64{1, 2, 4, 8, 12, 24}, Readings: []float64{1.75, 3.42, 5.39, 8.11, 8.98, 9.95}, Unit: "g/L"}
	f, err := botanical.FitSteep(s, botanical.FirstOrder)
	fmt.Println(f, err)
	fmt.Println(f.RatePerH())
	fmt.Println(f.After(14))
	fmt.Println(f.Reached(14))
	// Output:
	// first order: end 10, rate 0.2 1/h; 6 readings, scatter 0.126 g/L <nil>
	// rate: 0.2 (0.183 to 0.219) 1/h
	// oil in the macerate after 14 h: 9.39 (9.18 to 9.6) g/L
	// reached after 14 h: 93.9 (92.3 to 95.3) %
}

func ExampleFitSteeps() {
	s := botanical.Series{Hours: []float64{1, 2, 3, 4}, Readings: []float64{1.8, 3.3, 4.6, 5.4}, Unit: "g/L"}
	f, _ := botanical.FitSteeps(s)
	fmt.Println(f)
	fmt.Println(f.After(4))
	// Output:
	// first order: end 9.24, rate 0.223 1/h; 4 readings, scatter 0.0844 g/L; as good by these readings: first order, Peleg
	// reading after 4 h: 5.45 (5.1 to 5.84) g/L
}

func ExampleSteep_End() {
	s := botanical.Series{Hours: []float64{1, 2, 3}, Readings: []float64{1.9, 3.5, 5.1}, Unit: "g/L"}
	f, _ := botanical.FitSteep(s, botanical.FirstOrder)
	fmt.Println(f.End())
	// Output: reading in the end: at least 5.38 g/L; nothing bounds it above
}

func ExampleUsualReach() {
	s, _ := alcoholometry.ABV(50)
	u, err := botanical.UsualReach(14, s, quantity.Temperature{}, 0)
	fmt.Println(u, err)
	// Output: 14 h: 50.3 to 98.5 % by first order (estimate from memory, a span only) <nil>
}

func ExampleUptake_At() {
	u, _ := botanical.FromPeleg(0.4, 0.08)
	fmt.Printf("%.2f of %.1f, half after %.0f h\n", u.At(14), u.End, u.HalfH())
	// Output: 9.21 of 12.5, half after 5 h
}

func ExampleSphereShare() {
	f, err := botanical.SphereShare(0.05)
	fmt.Printf("%.4f %v\n", f, err)
	// Output: 0.6069 <nil>
}

func ExampleSpentHerbs() {
	s, _ := alcoholometry.ABV(60)
	h, err := botanical.SpentHerbs(botanical.Spent{WetKg: 1.26, DryKg: 0.5, Strength: s})
	fmt.Println(h, err)
	// Output: 0.500 kg of dry plant hold 0.836 L at 60.00 % vol (20.0 °C), 1.67 L/kg, with 0.502 L of pure alcohol <nil>
}

func ExampleRoomFor() {
	r, err := botanical.RoomFor(aniseed(), 26)
	fmt.Println(r, err)
	fmt.Println(r.Notes[0])
	// Output:
	// level 20.3 L, wet heap 1.47 to 2.7 L (estimate): 78.2 % of 26.00 L <nil>
	// more than 75 % of the pot may be full: it may foam over (common practice, no source)
}

func ExampleSaltedOut() {
	e, err := botanical.SaltedOut(botanical.OilLayer{LayerML: 0.35, OfML: 250, DensityKgL: botanical.Between(0.978, 0.995)})
	fmt.Println(e, err)
	// Output: oil in the spirit: at least 1.37 g/L; nothing bounds it above <nil>
}

func ExampleAssayedOil() {
	o, err := botanical.AssayedOil(0.44, 0.02, 20)
	fmt.Println(o, err)
	// Output: 21 to 23 mL/kg of oil, as weighed, analysed <nil>
}

func ExampleDryExtract() {
	c, err := botanical.DryExtract(0.21, 50)
	fmt.Println(c, err)
	// Output: 4200.0 mg/L <nil>
}

func ExampleMoistureFromReadings() {
	before, _ := alcoholometry.ABV(72)
	after, _ := alcoholometry.ABV(71.6)
	pct, err := botanical.MoistureFromReadings(alcoholometry.Spirit{VolumeL: 1, Strength: before}, 60, after)
	fmt.Printf("%.0f %% %v\n", pct, err)
	// Output: 10 % <nil>
}

func ExampleMatchTarget() {
	s, _ := alcoholometry.ABV(70)
	bottle, _ := alcoholometry.ABV(42)
	mg := func(x float64) quantity.Concentration { c, _ := quantity.MgL(x); return c }
	juniper := botanical.Profile{Name: "juniper", Strength: s, Complete: true, Amounts: []botanical.Amount{{"alpha-pinene", mg(300)}, {"limonene", mg(80)}}}
	coriander := botanical.Profile{Name: "coriander", Strength: s, Complete: true, Amounts: []botanical.Amount{{"linalool", mg(500)}, {"limonene", mg(20)}}}
	neutral := botanical.Profile{Name: "neutral spirit", Strength: s, Complete: true}
	wanted := botanical.Profile{Strength: bottle, Amounts: []botanical.Amount{{"alpha-pinene", mg(60)}, {"linalool", mg(75)}}}
	b, err := botanical.MatchTarget(wanted, 100, juniper, coriander, neutral)
	fmt.Println(b, err)
	// Output: 20.00 L of juniper, 15.00 L of coriander, 25.00 L of neutral spirit, 41.34 kg of water: 100.00 L at 42.00 % vol (20.0 °C), markers within 0.0 % of the target <nil>
}
