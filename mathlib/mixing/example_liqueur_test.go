package mixing_test

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

// damson is an invented liqueur.
func damson() mixing.Liqueur {
	s, _ := alcoholometry.ABV(26)
	return mixing.Liqueur{VolumeL: 100, Strength: s, SugarGL: 180}
}

func ExampleMakeLiqueur() {
	neutral, _ := alcoholometry.ABV(96)
	r, err := mixing.MakeLiqueur(damson(), mixing.LiqueurFrom{Spirit: neutral, SyrupPct: 65})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(r)
	// Output: 27.08 L at 96.00 % vol + 27.69 kg of syrup of 65 % + 54.10 L (54.00 kg) of water = 100.00 L at 26.00 % vol with 180.00 g/L of sugar (20.0 °C) (volume an estimate)
}

func ExampleBlendLiqueurs() {
	s, _ := alcoholometry.ABV(60)
	l, _ := mixing.BlendLiqueurs(damson(), mixing.Liqueur{VolumeL: 5, Strength: s})
	fmt.Println(l)
	// Output: 104.92 L at 27.64 % vol with 171.56 g/L of sugar (20.0 °C)
}

func ExampleSweeten() {
	s, _ := alcoholometry.ABV(40)
	l, _ := mixing.Sweeten(mixing.Liqueur{VolumeL: 100, Strength: s}, 10)
	fmt.Println(l)
	// Output: 106.20 L at 37.66 % vol with 94.16 g/L of sugar (20.0 °C)
}

func ExampleReduceLiqueur() {
	to, _ := alcoholometry.ABV(22)
	r, _ := mixing.ReduceLiqueur(damson(), to)
	fmt.Println(r)
	// Output: 100.00 L at 26.00 % vol with 180.00 g/L of sugar (20.0 °C) + 18.16 L (18.13 kg) of water = 118.18 L at 22.00 % vol with 152.31 g/L of sugar (20.0 °C) (volumes are estimates)
}

func ExampleLiqueurDensityKgM3() {
	rho, _ := mixing.LiqueurDensityKgM3(damson(), quantity.Temperature{})
	fmt.Printf("about %.0f kg/m³\n", rho)
	// Output: about 1036 kg/m³
}

func ExampleTrueStrengthWithExtract() {
	read, _ := alcoholometry.ABV(41.2)
	extract, _ := quantity.GL(4.5)
	o, _ := mixing.TrueStrengthWithExtract(mixing.Extracted{Apparent: read, Extract: extract})
	fmt.Println(o)
	// Output: true 42.20 % vol, 41.20 % vol as read: 4.50 g/L of extract hide 1.00 % vol ± 0.05 (estimate)
}

func ExampleTrueStrengthByDistilling() {
	read, _ := alcoholometry.ABV(41.2)
	distillate, _ := alcoholometry.ABV(42.3)
	o, _ := mixing.TrueStrengthByDistilling(mixing.DistilBack{Distillate: distillate, SampleML: 250, Apparent: read})
	fmt.Println(o)
	// Output: true 42.30 % vol, 41.20 % vol as read: 4.97 g/L of extract hide 1.10 % vol
}

func ExampleApparentStrength() {
	s, _ := alcoholometry.ABV(40)
	seen, _ := mixing.ApparentStrength(mixing.Liqueur{Strength: s, SugarGL: 20}, quantity.Temperature{})
	fmt.Println("looks like", seen)
	// Output: looks like 35.07 % vol
}

func ExampleUSObscured() {
	o, _ := mixing.USObscured(mixing.USSolids{ApparentProof: 84, ResidueG: 0.125})
	fmt.Println(o)
	_, err := mixing.USObscured(mixing.USSolids{ApparentProof: 84, SolidsMg: 900})
	fmt.Println(err)
	// Output:
	// 86.0 proof: 84 as read + 2.00 for 500.00 mg of solids in 100 mL
	// mixing.USObscured: 900.00 mg of solids in 100 mL; above 600 mg a sample must be distilled and made up, and its proof taken (27 CFR 30.31)
}
