package still_test

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
	"swanneck/mathlib/still"
)

// ABV and the like return errors; these are fine.
func pct(x float64) alcoholometry.Strength        { s, _ := alcoholometry.ABV(x); return s }
func degrees(c float64) quantity.Temperature      { t, _ := quantity.Celsius(c); return t }
func milligrams(x float64) quantity.Concentration { c, _ := quantity.MgL(x); return c }

func ExampleDistil() {
	run, err := still.Distil(still.Batch{
		Pot:       alcoholometry.Spirit{VolumeL: 100, Strength: pct(28)},
		Plates:    1,
		Reflux:    0.5,
		Until:     pct(30),
		Congeners: []still.Congener{{Name: "methanol", Amount: milligrams(300)}},
	})
	fmt.Println(run, err)
	fmt.Println(run.Congener("methanol"))
	// Output:
	// 100.00 L at 28.00 % vol (20.0 °C) gives 38.07 L at 70.01 % vol (20.0 °C) with 26.65 L of pure alcohol (95.2 % of the charge's), 63.06 L at 2.13 % vol (20.0 °C) left in the pot; it came to 30.00 % vol running <nil>
	// methanol: 26.63 g of 30.00 g come over (88.8 %)
}

func ExampleDistil_azeotrope() {
	_, err := still.Distil(still.Batch{Pot: alcoholometry.Spirit{VolumeL: 1, Strength: pct(98)}, Until: pct(97)})
	fmt.Println(err)
	// Output: still.Distil: the charge of 98.00 % vol is no weaker than the azeotrope, 97.37 % vol under 101.33 kPa; distilling does not make it stronger: charge something weaker
}

func ExampleDistil_hold() {
	// Eight plates hold 92 % vol by ever more reflux, until a reflux of 8 does it no longer.
	run, _ := still.Distil(still.Batch{Pot: alcoholometry.Spirit{VolumeL: 100, Strength: pct(28)}, Plates: 8, Hold: pct(92), MostReflux: 8})
	first, last := run.Steps[0], run.Steps[len(run.Steps)-1]
	fmt.Printf("reflux from %.1f to %.1f, %s\n", first.Reflux, last.Reflux, run.Ended)
	// Output: reflux from 1.0 to 8.0, 92.00 % vol could be held no longer, even with a reflux of 8
}

// aRun is the run of the following examples.
func aRun() still.Run {
	run, _ := still.Distil(still.Batch{Pot: alcoholometry.Spirit{VolumeL: 100, Strength: pct(28)}, Plates: 1, Reflux: 0.5, Until: pct(30),
		Congeners: []still.Congener{{Name: "methanol", Amount: milligrams(300)}, {Name: "ethyl acetate", Amount: milligrams(150)}},
		Heat:      still.Heating{PowerKW: 8, Charge: degrees(18), VesselKg: 40, WaterIn: degrees(12), WaterOut: degrees(50)}})
	return run
}

func ExampleRun_Cut() {
	run := aRun()
	hearts := run.Cut(still.AtVolume(1.5), still.AtStrength(pct(55)))
	fmt.Println(hearts)
	fmt.Println(hearts.Content("ethyl acetate").PerPure)
	// Output:
	// from 1.50 L collected to 55.00 % vol running: 30.34 L at 74.78 % vol (20.0 °C) with 22.69 L of pure alcohol (81.0 % of the charge's)
	// 40.98 g/hL of pure alcohol
}

func ExampleRun_CutBetween() {
	_, err := aRun().CutBetween(still.AtStart(), still.AtStrength(pct(10)))
	fmt.Println(err)
	// Output: still.Run.Cut: the run never comes to 10.00 % vol running: at the end 30.00 % vol runs
}

func ExampleRun_Jars() {
	for i, jar := range aRun().Jars(10) {
		fmt.Printf("jar %d: %.2f L at %.1f\n", i+1, jar.Spirit.VolumeL, jar.Spirit.Strength)
	}
	// Output:
	// jar 1: 10.00 L at 81.4
	// jar 2: 10.00 L at 78.1
	// jar 3: 10.00 L at 69.0
	// jar 4: 8.15 L at 46.7
}

func ExampleRun_CanCut() {
	fmt.Println(aRun().CanCut("methanol"))
	// Output: cutting does not help against methanol: it comes over throughout, and even the best half of the alcohol holds 94 g/hL of pure alcohol of it, all together 99.9; only another charge or a column made for it does
}

func ExampleRun_Cautions() {
	for _, line := range aRun().Cautions()[:2] {
		fmt.Println(line)
	}
	// Output:
	// never close the outlet of a still, and vent it before the heat goes off: pressure bursts it, suction crushes it
	// the condenser needs at least 197.25 L/h of water: without it vapour fills the room; have its failure cut off the heat
}

func ExampleSuggestCuts() {
	s, err := still.SuggestCuts(aRun(), still.CutLimits{
		HeadsUnder: []still.CongenerLimit{{Name: "ethyl acetate", Most: milligrams(1200)}},
		TailsAt:    pct(50),
	})
	fmt.Println(s, err)
	// Output: heads 4.51 L at 82.02 % vol, hearts 28.84 L at 72.88 % vol, tails 4.78 L at 40.43 % vol (a starting point for the nose, not a rule) <nil>
}

func ExampleSteadyFeints() {
	c, err := still.SteadyFeints(still.Batch{Pot: alcoholometry.Spirit{VolumeL: 100, Strength: pct(28)}, Until: pct(5)},
		still.FeintsPlan{HeadsEnd: still.AtVolume(1), TailsBegin: still.AtStrength(pct(45)), TailsBackPct: 100})
	fmt.Println(c, err)
	// Output: each run takes 100.00 L at 28.00 % vol (20.0 °C) and 20.10 L of feints and gives hearts of 41.64 L at 64.90 % vol (20.0 °C), 96.5 % of the fresh alcohol <nil>
}

func ExampleCombineJars() {
	b, err := still.CombineJars(
		still.Jar{Name: "3", VolumeML: 200, ReadingABV: 77.8, Temp: degrees(25)},
		still.Jar{Name: "4", VolumeML: 200, ReadingABV: 73.9, Temp: degrees(25), Note: "plum"},
		still.Jar{Name: "5", MassG: 180.2, Strength: pct(64.4), Temp: degrees(25)},
	)
	fmt.Println(b, err)
	// Output: jar 3 + jar 4 + jar 5: 0.601 L at 70.99 % vol (25.0 °C) with 0.425 L of pure alcohol <nil>
}

func ExampleDensityBottle_Strength() {
	s, err := still.DensityBottle{EmptyG: 18.42, WaterG: 43.33, SpiritG: 40.52, Temp: degrees(21)}.Strength()
	fmt.Printf("%.1f %v\n", s, err)
	// Output: 69.7 <nil>
}

func ExampleColumnStages() {
	s, err := still.ColumnStages(still.Column{
		Feeds:       []still.Feed{{LH: 200, Strength: pct(9)}},
		Distillate:  pct(92),
		RecoveryPct: 98,
		Reflux:      4,
		OpenSteam:   true,
	})
	fmt.Println(s, err)
	fmt.Printf("%.1f L/h of distillate, %.0f kg/h of steam\n", s.DistillateLH, s.SteamKgH)
	// Output:
	// 10.0 stages, feed on stage 6; least reflux 2.280, pinch at the feed, x = 0.029 <nil>
	// 19.2 L/h of distillate, 36 kg/h of steam
}

func ExampleMinimumReflux() {
	p, err := still.MinimumReflux(still.Column{Feeds: []still.Feed{{LH: 200, Strength: pct(30)}}, Distillate: pct(95), RecoveryPct: 98})
	fmt.Println(p, err)
	// Output: least reflux 1.309, pinch where the line touches the curve, x = 0.681 <nil>
}

func ExampleFeedVapourShare() {
	x, err := still.FeedVapourShare(pct(9), degrees(20), quantity.Pressure{})
	fmt.Printf("%.3f %v\n", x, err)
	// Output: -0.149 <nil>
}

func ExampleSmoothEquilibrium() {
	e, err := still.SmoothEquilibrium([]float64{0.02, 0.1, 0.3, 0.6, 0.894}, []float64{0.18, 0.44, 0.57, 0.7, 0.894})
	fmt.Println(e, err)
	// Output: own equilibrium: a smooth curve through 7 points <nil>
}

func ExampleStraightEquilibrium() {
	_, err := still.StraightEquilibrium([]float64{0.1, 0.3, 0.2}, []float64{0.44, 0.57, 0.7})
	fmt.Println(err)
	// Output: still.StraightEquilibrium: point 3 is (0.2, 0.7) after (0.3, 0.57); both fractions must rise from point to point
}

func ExampleLearnFromRun() {
	batch := still.Batch{Pot: alcoholometry.Spirit{VolumeL: 30, Strength: pct(28)}}
	var log still.RunLog
	for _, r := range []struct{ l, strength float64 }{{0.2, 84.1}, {1, 84.2}, {1.8, 83.3}, {2.6, 83.2}, {3.4, 82.1}, {4.2, 81.6}, {5, 80.0}, {5.8, 78.6}, {6.6, 76.4}, {7.4, 72.4}, {8.2, 68.1}, {9, 60.9}, {9.8, 50.6}, {10.6, 38.2}, {11.3, 26.1}} {
		log.CollectedL = append(log.CollectedL, r.l)
		log.Running = append(log.Running, pct(r.strength))
	}
	learned, err := still.LearnFromRun(batch, log, still.LearnOptions{})
	fmt.Println(learned, err)
	// Output: plates 1.29 (1.22 to 1.36), reflux 0.691 (0.662 to 0.722); 95 % intervals given the model, scatter 0.25 % vol <nil>
}

func ExampleScaleRun() {
	s, err := still.ScaleRun(aRun(), still.Apparatus{ChargeL: 100, PowerKW: 8, NeckMM: 80}, still.Apparatus{ChargeL: 400, PowerKW: 24, NeckMM: 150})
	fmt.Println(s, err)
	// Output: from 100 L to 400 L: 32 kW for the same time, 28.1 kW for the same speed of the vapour; with 24 kW 1.33 times as long, vapour at 0.99 m/s <nil>
}

func ExampleVentilationFor() {
	v, err := still.VentilationFor(still.Leak{LH: 1, Strength: pct(60)})
	fmt.Println(v, err)
	// Output: 474 g/h of ethanol need 161 m³/h of air to stay under 25 % of the lower flammable limit (mixing factor 5), 1259 m³/h for people in it <nil>
}

func ExampleFlammableLimits() {
	fmt.Println(still.FlammableLimits()[0])
	// Output: ethanol burns from 3.1 to 19 % of the air (IEC 60079-20-1; the figure in g/m³ is from memory)
}

func ExampleMethanolLimits() {
	fmt.Println(still.MethanolLimits()[4])
	// Output: EU, fruit spirit: methanol at most 1000.0 g/hL of pure alcohol (Austrian Codex B 23)
}

func ExampleCheckMethanol() {
	v, err := still.CheckMethanol(milligrams(3600), pct(40), "eu-fruit", false)
	fmt.Println(v, err)
	// Output: cannot tell: measure: 900.00 g/hL of pure alcohol of methanol, 90 % of the limit; EU, fruit spirit: methanol at most 1000.0 g/hL of pure alcohol (Austrian Codex B 23) <nil>
}

func ExampleBlockedOutlet() {
	h, err := still.BlockedOutlet(alcoholometry.Spirit{VolumeL: 100, Strength: pct(28)}, quantity.Pressure{}, 8, 10)
	fmt.Println(h, err)
	// Output: blocked outlet: pressure above the air 60 kPa, reached in 10.00 min, charge at 98 °C, pull on each square decimetre of lid and seam 61 kg <nil>
}

func ExampleClosedHotPot() {
	h, err := still.ClosedHotPot(pct(1), quantity.Pressure{}, degrees(30))
	fmt.Println(h, err)
	// Output: pot closed while hot: suction 97 kPa, cooled to 30 °C, weight on each square decimetre 99 kg <nil>
}

func ExampleRoomForBoiling() {
	h, err := still.RoomForBoiling(alcoholometry.Spirit{VolumeL: 100, Strength: pct(28)}, 150, true)
	fmt.Println(h.Cautions()[0], err)
	// Output: too full: charge at most 85.62 L <nil>
}

func ExampleHeaterCover() {
	h, err := still.HeaterCover(aRun(), 70)
	fmt.Println(h.Cautions()[0], err)
	// Output: the heater falls dry before the run ends: end it earlier or charge more <nil>
}

func ExampleMark() {
	fmt.Println(still.AtStrength(pct(62)))
	fmt.Println(still.AtVolume(1.2))
	fmt.Println(still.AtHead(degrees(86)))
	fmt.Println(still.UnderLimit("ethyl acetate", milligrams(500)))
	// Output:
	// 62.00 % vol running
	// 1.20 L collected
	// 86.0 °C at the head
	// ethyl acetate under 500.00 mg/L
}
