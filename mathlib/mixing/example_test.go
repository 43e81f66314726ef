package mixing_test

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

func ExampleReduce() {
	strong, _ := alcoholometry.ABV(72.4)
	bottle, _ := alcoholometry.ABV(43)
	r, err := mixing.Reduce(alcoholometry.Spirit{VolumeL: 356, Strength: strong}, bottle)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("add %.1f kg of water, get %.1f L\n", r.WaterKg, r.Result.VolumeL)
	_, err = mixing.Reduce(r.Result, strong)
	fmt.Println(err)
	// Output:
	// add 252.2 kg of water, get 599.4 L
	// mixing.Reduce: cannot raise 43.00 % vol to 72.40 % vol by adding water
}

func ExampleMake() {
	strong, _ := alcoholometry.ABV(72.4)
	bottle, _ := alcoholometry.ABV(43)
	r, _ := mixing.Make(alcoholometry.Spirit{VolumeL: 600, Strength: bottle}, strong)
	fmt.Printf("%.1f L of spirit, %.1f kg of water\n", r.SpiritL, r.WaterKg)
	// Output: 356.4 L of spirit, 252.4 kg of water
}

func ExampleWaterAt() {
	strong, _ := alcoholometry.ABV(72.4)
	bottle, _ := alcoholometry.ABV(43)
	cold, _ := quantity.Celsius(8)
	r, _ := mixing.Reduce(alcoholometry.Spirit{VolumeL: 100, Strength: strong}, bottle, mixing.WaterAt(cold))
	fmt.Printf("%.1f L of water at %v\n", r.WaterL, r.WaterTemp)
	// Output: 70.8 L of water at 8.0 °C
}

func ExampleResultAt() {
	strong, _ := alcoholometry.ABV(72.4)
	bottle, _ := alcoholometry.ABV(43)
	cellar, _ := quantity.Celsius(12)
	r, _ := mixing.Reduce(alcoholometry.Spirit{VolumeL: 100, Strength: strong}, bottle, mixing.ResultAt(cellar))
	fmt.Println(r.Result)
	// Output: 167.40 L at 43.00 % vol (12.0 °C)
}

func ExampleSpiritAt() {
	strong, _ := alcoholometry.ABV(72.4)
	bottle, _ := alcoholometry.ABV(43)
	warm, _ := quantity.Celsius(28)
	r, _ := mixing.Make(alcoholometry.Spirit{VolumeL: 600, Strength: bottle}, strong, mixing.SpiritAt(warm))
	fmt.Printf("%.1f L of spirit at %v\n", r.SpiritL, r.Spirit.Temp)
	// Output: 359.1 L of spirit at 28.0 °C
}

func ExampleBlend() {
	jar := func(pct float64) alcoholometry.Spirit {
		s, _ := alcoholometry.ABV(pct)
		return alcoholometry.Spirit{VolumeL: 0.2, Strength: s}
	}
	b, _ := mixing.Blend(jar(76), jar(72), jar(65))
	fmt.Println(b)
	// Output: 0.600 L at 71.02 % vol (20.0 °C)
}

func ExampleReduction_String() {
	strong, _ := alcoholometry.ABV(72.4)
	bottle, _ := alcoholometry.ABV(43)
	r, _ := mixing.Make(alcoholometry.Spirit{VolumeL: 600, Strength: bottle}, strong)
	fmt.Println(r)
	// Output: 356.35 L at 72.40 % vol + 252.87 L (252.41 kg) of water = 600.00 L at 43.00 % vol; contraction 9.22 L, warms by about 6.4 °C
}

func ExampleReduction_Rows() {
	strong, _ := alcoholometry.ABV(72.4)
	bottle, _ := alcoholometry.ABV(43)
	r, _ := mixing.Make(alcoholometry.Spirit{VolumeL: 600, Strength: bottle}, strong)
	for _, row := range r.Rows() {
		fmt.Println(row[0]+":", row[1], row[2])
	}
	// Output:
	// spirit at 72.40 % vol, 20.0 °C: 356.35 L
	// spirit, mass: 313.42 kg
	// water to add, 20.0 °C: 252.87 L
	// water to add, mass: 252.41 kg
	// result at 43.00 % vol, 20.0 °C: 600.00 L
	// contraction: 9.22 L
	// warming by mixing (estimate, ±10 %): 6.4 °C
	// tank just after mixing (estimate): 26.4 °C
}

func ExampleHeatOfMixingKJ() {
	s, _ := alcoholometry.ABW(30)
	q, _ := mixing.HeatOfMixingKJ(1, s)
	fmt.Printf("%.0f kJ\n", q)
	// Output: 37 kJ
}

func ExampleExcessEnthalpyJMol() {
	warm, _ := quantity.Celsius(50)
	h, _ := mixing.ExcessEnthalpyJMol(0.15, warm)
	fmt.Printf("%.0f J/mol\n", h)
	// Output: -440 J/mol
}

func ExampleHeatCapacityKJKgK() {
	s, _ := alcoholometry.ABV(40)
	c, _ := mixing.HeatCapacityKJKgK(s, quantity.Temperature{})
	fmt.Printf("%.1f kJ/(kg K)\n", c)
	// Output: 4.1 kJ/(kg K)
}

func ExampleStrengthError() {
	from, _ := alcoholometry.ABV(40)
	to, _ := alcoholometry.ABV(50)
	fmt.Println(&mixing.StrengthError{Func: "mixing.Reduce", From: from, To: to})
	// Output: mixing.Reduce: cannot raise 40.00 % vol to 50.00 % vol by adding water
}
