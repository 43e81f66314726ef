package sheet_test

import (
	"fmt"

	. "swanneck/mathlib/sheet"
)

func ExamplePlanSteps() {
	p := PlanSteps(StepOrder{Spirit: Spirit{VolumeL: 120, Strength: ABV(64)}, To: ABV(46), DropABV: 6, RestDays: 3, Start: "2026-05-04"})
	for _, s := range p.Steps {
		fmt.Println(s)
	}
	// Output:
	// step 1, 2026-05-04: 64.00 % vol to 58.00 % vol with 12.95 kg of water on the scales (12.99 L); 132.41 L, then shows 58.00
	// step 2, 2026-05-07: 58.00 % vol to 52.00 % vol with 15.81 kg of water on the scales (15.85 L); 147.69 L, then shows 52.00
	// step 3, 2026-05-10: 52.00 % vol to 46.00 % vol with 19.75 kg of water on the scales (19.81 L); 166.96 L, then shows 46.00
}

func ExampleReplanSteps() {
	p := PlanSteps(StepOrder{Spirit: Spirit{VolumeL: 120, Strength: ABV(64)}, To: ABV(46), DropABV: 6, RestDays: 3, Start: "2026-05-04"})
	fmt.Println(ReplanSteps(p, TankReading{AfterStep: 2, ReadingABV: 51.7}).Steps[0])
	// Output: step 3, 2026-05-10: 51.70 % vol to 46.00 % vol with 18.75 kg of water on the scales (18.80 L); 165.88 L, then shows 46.00
}

func ExampleStrengthen() {
	fmt.Println(Strengthen(Spirit{VolumeL: 612, Strength: ABV(42.4)}, ABV(43), Spirit{VolumeL: 50, Strength: ABV(72.4)}))
	// Output: 612.00 L at 42.40 % vol (20.0 °C) + 12.26 L at 72.40 % vol = 624.09 L at 43.00 % vol (20.0 °C)
}

func ExampleOnScales() {
	fmt.Println(OnScales(313.1, ABV(72.4), Celsius(15)))
	// Output: 354.74 L at 72.40 % vol (15.0 °C)
}

func dips() DipTable {
	return DipTable{Name: "tank 4", DipsMM: []float64{0, 200, 400, 600}, VolumesL: []float64{12, 168, 342, 512}}
}

func ExampleDipL() {
	fmt.Printf("%.1f L\n", DipL(dips(), 455, Temperature{}))
	// Output: 389.1 L
}

func ExampleDipForMM() {
	fmt.Printf("%.0f mm\n", DipForMM(dips(), 300, Temperature{}))
	// Output: 352 mm
}

func ExampleDipSpirit() {
	fmt.Println(DipSpirit(dips(), 455, ABV(60), Celsius(24)))
	// Output: 389.15 L at 60.00 % vol (24.0 °C)
}

func ExampleCylinderL() {
	fmt.Printf("%.1f L\n", CylinderL(Cylinder{DiameterMM: 1200, LengthMM: 2500, Lying: true}, 300))
	// Output: 552.8 L
}

func ExampleCylinderTable() {
	fmt.Println(CylinderTable(Cylinder{DiameterMM: 800, LengthMM: 1000}, 50))
	// Output: the tank's table: 21 rows from 0 mm (0.000 L) to 1000 mm (502.65 L)
}

func ExampleMakeLiqueur() {
	fmt.Println(MakeLiqueur(Liqueur{VolumeL: 50, Strength: ABV(24), SugarGL: 200}, LiqueurFrom{Spirit: ABV(96)}))
	// Output: 12.50 L at 96.00 % vol + 10.00 kg of sugar + 32.25 L (32.19 kg) of water = 50.00 L at 24.00 % vol with 200.00 g/L of sugar (20.0 °C) (volume an estimate)
}

func ExampleBlendLiqueurs() {
	fmt.Println(BlendLiqueurs(Liqueur{VolumeL: 50, Strength: ABV(24), SugarGL: 200}, Liqueur{VolumeL: 2, Strength: ABV(60)}))
	// Output: 51.97 L at 25.40 % vol with 192.44 g/L of sugar (20.0 °C)
}

func ExampleSweeten() {
	fmt.Println(Sweeten(Liqueur{VolumeL: 100, Strength: ABV(40)}, 1))
	// Output: 100.62 L at 39.75 % vol with 9.94 g/L of sugar (20.0 °C)
}

func ExampleReduceLiqueur() {
	fmt.Println(ReduceLiqueur(Liqueur{VolumeL: 50, Strength: ABV(24), SugarGL: 200}, ABV(22)))
	// Output: 50.00 L at 24.00 % vol with 200.00 g/L of sugar (20.0 °C) + 4.54 L (4.53 kg) of water = 54.55 L at 22.00 % vol with 183.33 g/L of sugar (20.0 °C) (volumes are estimates)
}

func ExampleLiqueurDensityKgM3() {
	fmt.Printf("about %.0f kg/m³\n", LiqueurDensityKgM3(Liqueur{Strength: ABV(24), SugarGL: 200}, Temperature{}))
	// Output: about 1046 kg/m³
}

func ExampleTrueStrengthWithExtract() {
	fmt.Println(TrueStrengthWithExtract(ExtractedSpirit{Apparent: TrueStrength(41.2, Celsius(18)), Temp: Celsius(18), Extract: GL(4.5)}))
	// Output: true 42.98 % vol, 41.99 % vol as read: 4.50 g/L of extract hide 0.99 % vol ± 0.05 (estimate)
}

func ExampleTrueStrengthByDistilling() {
	fmt.Println(TrueStrengthByDistilling(DistilBack{Distillate: ABV(42.3), SampleML: 250, Apparent: ABV(41.2)}))
	// Output: true 42.30 % vol, 41.20 % vol as read: 4.97 g/L of extract hide 1.10 % vol
}

func ExampleApparentStrength() {
	fmt.Println(ApparentStrength(Liqueur{Strength: ABV(40), SugarGL: 20}, Temperature{}))
	// Output: 35.07 % vol
}

func ExampleUSObscured() {
	fmt.Println(USObscured(USSolids{ApparentProof: 84, ResidueG: 0.125}))
	// Output: 86.0 proof: 84 as read + 2.00 for 500.00 mg of solids in 100 mL
}
