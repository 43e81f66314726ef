package mixing_test

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

func ExamplePlanSteps() {
	strong, _ := alcoholometry.ABV(72.4)
	bottle, _ := alcoholometry.ABV(43)
	haze, _ := alcoholometry.ABV(48)
	cellar, _ := quantity.Celsius(14)
	p, err := mixing.PlanSteps(mixing.StepOrder{
		Spirit: alcoholometry.Spirit{VolumeL: 356, Strength: strong}, To: bottle, Start: "2026-03-02",
		DropABV: 9, HazeBelow: haze, HazeDropABV: 3, RestDays: 2, TankTemp: cellar, WaterTemp: cellar,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, s := range p.Steps {
		fmt.Println(s)
	}
	fmt.Println(p)
	// Output:
	// step 1, 2026-03-02: 72.40 % vol to 64.27 % vol with 47.54 kg of water on the scales (47.62 L); 398.90 L, then shows 62.23
	// step 2, 2026-03-04: 64.27 % vol to 56.13 % vol with 60.55 kg of water on the scales (60.66 L); 456.83 L, then shows 53.98
	// step 3, 2026-03-06: 56.13 % vol to 48.00 % vol with 80.13 kg of water on the scales (80.28 L); 534.45 L, then shows 45.71
	// step 4, 2026-03-08: 48.00 % vol to 45.50 % vol with 30.15 kg of water on the scales (30.21 L); 563.90 L, then shows 43.16
	// step 5, 2026-03-10: 45.50 % vol to 43.00 % vol with 33.53 kg of water on the scales (33.59 L); 596.79 L, then shows 40.62
	// 5 steps, 251.90 kg of water on the scales in all, ready 2026-03-12: 596.79 L at 43.00 % vol
}

func ExampleReplanSteps() {
	strong, _ := alcoholometry.ABV(72.4)
	bottle, _ := alcoholometry.ABV(43)
	p, _ := mixing.PlanSteps(mixing.StepOrder{Spirit: alcoholometry.Spirit{VolumeL: 356, Strength: strong}, To: bottle, DropABV: 10, Start: "2026-03-02"})
	p, err := mixing.ReplanSteps(p, mixing.TankReading{AfterStep: 2, ReadingABV: 53.2, VolumeL: 481})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%+.2f %% vol off the plan\n", p.OffABV)
	for _, s := range p.Steps {
		fmt.Println(s)
	}
	// Output:
	// +0.40 % vol off the plan
	// step 3, 2026-03-04: 53.20 % vol to 48.10 % vol with 52.43 kg of water on the scales (52.58 L); 532.00 L, then shows 48.10
	// step 4, 2026-03-05: 48.10 % vol to 43.00 % vol with 64.35 kg of water on the scales (64.54 L); 595.10 L, then shows 43.00
}

func ExampleStrengthen() {
	s := func(litres, pct float64) alcoholometry.Spirit {
		strength, _ := alcoholometry.ABV(pct)
		return alcoholometry.Spirit{VolumeL: litres, Strength: strength}
	}
	wanted, _ := alcoholometry.ABV(43)
	fmt.Println(mixing.Strengthen(s(612, 42.4), wanted, s(8, 72.4), s(25, 96)))
	_, err := mixing.Strengthen(s(612, 42.4), wanted, s(8, 72.4))
	fmt.Println(err)
	// Output:
	// 612.00 L at 42.40 % vol (20.0 °C) + 8.00 L at 72.40 % vol + 2.32 L at 96.00 % vol = 622.11 L at 43.00 % vol (20.0 °C) <nil>
	// mixing.Strengthen: all the spirits at hand bring the tank to 42.794 % vol, and 43.00 % vol is wanted; 4.26 L more at 72.40 % vol would do
}

func ExampleOnScales() {
	strong, _ := alcoholometry.ABV(72.4)
	s, _ := mixing.OnScales(313.1, strong, quantity.Temperature{})
	fmt.Println(s)
	// Output: 356.42 L at 72.40 % vol (20.0 °C)
}

func ExampleReduction_WaterOnScalesKg() {
	strong, _ := alcoholometry.ABV(72.4)
	bottle, _ := alcoholometry.ABV(43)
	r, _ := mixing.Make(alcoholometry.Spirit{VolumeL: 600, Strength: bottle}, strong)
	fmt.Printf("%.2f kg, on the scales %.2f kg\n", r.WaterKg, r.WaterOnScalesKg())
	// Output: 252.41 kg, on the scales 252.15 kg
}

func ExampleDipL() {
	t := mixing.DipTable{Name: "tank 4", DipsMM: []float64{0, 200, 400, 600}, VolumesL: []float64{12, 168, 342, 512}}
	v, _ := mixing.DipL(t, 455, quantity.Temperature{})
	fmt.Printf("%.1f L\n", v)
	_, err := mixing.DipL(t, 610, quantity.Temperature{})
	fmt.Println(err)
	// Output:
	// 389.1 L
	// mixing.DipL: the dip is 610 mm; it must be from 0 to 600 mm (the table of tank 4)
}

func ExampleDipForMM() {
	t := mixing.DipTable{DipsMM: []float64{0, 200, 400, 600}, VolumesL: []float64{12, 168, 342, 512}}
	mm, _ := mixing.DipForMM(t, 300, quantity.Temperature{})
	fmt.Printf("%.0f mm\n", mm)
	// Output: 352 mm
}

func ExampleDipSpirit() {
	t := mixing.DipTable{DipsMM: []float64{0, 200, 400, 600}, VolumesL: []float64{12, 168, 342, 512}}
	strong, _ := alcoholometry.ABV(60)
	warm, _ := quantity.Celsius(24)
	s, _ := mixing.DipSpirit(t, 455, strong, warm)
	fmt.Println(s)
	fmt.Printf("%.1f L of pure alcohol\n", s.PureL())
	// Output:
	// 389.15 L at 60.00 % vol (24.0 °C)
	// 232.7 L of pure alcohol
}

func ExampleCylinderL() {
	v, _ := mixing.CylinderL(mixing.Cylinder{DiameterMM: 1200, LengthMM: 2500, Lying: true}, 300)
	fmt.Printf("%.1f L\n", v)
	// Output: 552.8 L
}

func ExampleCylinderTable() {
	t, _ := mixing.CylinderTable(mixing.Cylinder{DiameterMM: 1200, LengthMM: 2500, Lying: true}, 24)
	fmt.Println(t)
	// Output: the tank's table: 51 rows from 0 mm (0.000 L) to 1200 mm (2827.4 L)
}
