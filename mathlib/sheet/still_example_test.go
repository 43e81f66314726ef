package sheet_test

import (
	"fmt"

	. "swanneck/mathlib/sheet"
)

func ExampleMgL() {
	fmt.Println(MgL(35))
	// Output: 35.00 mg/L
}

func ExampleInGHLPure() {
	fmt.Printf("%.1f g/hL\n", InGHLPure(MgKg(35), ABV(60)))
	// Output: 5.3 g/hL
}

func ExampleDistil() {
	run := Distil(Batch{
		Pot:       Spirit{VolumeL: 100, Strength: ABV(28)},
		Plates:    1,
		Reflux:    0.5,
		Until:     ABV(30),
		Congeners: []Congener{{Name: "methanol", Amount: MgL(300)}, {Name: "ethyl acetate", Amount: MgL(150)}},
	})
	fmt.Println(run.Distillate)
	hearts := run.Cut(AtVolume(1.5), AtStrength(ABV(55)))
	fmt.Println(hearts.Spirit)
	fmt.Println(hearts.Content("methanol").PerPure)
	// Output:
	// 38.07 L at 70.01 % vol (20.0 °C)
	// 30.34 L at 74.78 % vol (20.0 °C)
	// 96.46 g/hL of pure alcohol
}

func ExampleSuggestCuts() {
	run := Distil(Batch{Pot: Spirit{VolumeL: 100, Strength: ABV(28)}, Until: ABV(10), Congeners: []Congener{{Name: "ethyl acetate", Amount: MgL(150)}}})
	fmt.Println(SuggestCuts(run, CutLimits{HeadsUnder: []CongenerLimit{{Name: "ethyl acetate", Most: MgL(900)}}, TailsAt: ABV(45)}))
	// Output: heads 5.97 L at 74.24 % vol, hearts 30.60 L at 63.84 % vol, tails 13.22 L at 27.24 % vol (a starting point for the nose, not a rule)
}

func ExampleSteadyFeints() {
	cycle := SteadyFeints(Batch{Pot: Spirit{VolumeL: 100, Strength: ABV(28)}, Until: ABV(5)}, FeintsPlan{TailsBegin: AtStrength(ABV(45)), TailsBackPct: 100})
	fmt.Printf("%.1f %%\n", cycle.YieldPct())
	// Output: 99.2 %
}

func ExampleCombineJars() {
	fmt.Println(CombineJars(
		Jar{Name: "3", VolumeML: 200, Strength: ABV(76)},
		Jar{Name: "4", VolumeML: 200, ReadingABV: 73.1, Temp: Celsius(23), Note: "plum"}))
	// Output: jar 3 + jar 4: 0.399 L at 74.08 % vol (20.0 °C) with 0.296 L of pure alcohol
}

func ExampleColumnStages() {
	fmt.Println(ColumnStages(Column{Feeds: []ColumnFeed{{LH: 200, Strength: ABV(9)}}, Distillate: ABV(92), RecoveryPct: 98, Reflux: 4, OpenSteam: true}))
	// Output: 10.0 stages, feed on stage 6; least reflux 2.280, pinch at the feed, x = 0.029
}

func ExampleVentilationFor() {
	fmt.Printf("%.0f m³/h\n", VentilationFor(VapourLeak{LH: 1, Strength: ABV(60)}).AirM3H)
	// Output: 161 m³/h
}

func ExampleCheckMethanol() {
	fmt.Println(CheckMethanol(GHLPure(640), ABV(43), "eu-fruit", true).Answer)
	// Output: within
}

func ExampleBlockedOutlet() {
	fmt.Println(BlockedOutlet(Spirit{VolumeL: 10, Strength: ABV(10)}, Pressure{}, 2, 5))
	// Output: blocked outlet: pressure above the air 70 kPa, reached in 5.00 min, charge at 107 °C, pull on each square decimetre of lid and seam 72 kg
}
