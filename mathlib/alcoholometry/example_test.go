package alcoholometry_test

import (
	"errors"
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

func ExampleABV() {
	s, err := alcoholometry.ABV(43)
	fmt.Println(s, err)
	_, err = alcoholometry.ABV(430)
	fmt.Println(err)
	// Output:
	// 43.00 % vol <nil>
	// alcoholometry.ABV: strength is 430 % vol; it must be from 0 to 100 % vol
}

func ExampleABVAt() {
	t, _ := quantity.Celsius(15)
	s, _ := alcoholometry.ABVAt(40, t) // 40 % vol in a country whose tables are made for 15 °C
	fmt.Println(s)
	// Output: 40.08 % vol
}

func ExampleABW() {
	s, _ := alcoholometry.ABW(33.3)
	fmt.Println(s)
	// Output: 40.00 % vol
}

func ExampleUSProof() {
	s, _ := alcoholometry.USProof(120)
	fmt.Println(s)
	// Output: 60.05 % vol
}

func ExampleMoleFraction() {
	s, _ := alcoholometry.MoleFraction(0.5)
	fmt.Printf("%.1f %% mass\n", s.ABW())
	// Output: 71.9 % mass
}

func ExampleStrength_IsSet() {
	var forgotten alcoholometry.Strength
	fmt.Println(forgotten.IsSet(), alcoholometry.Water.IsSet())
	// Output: false true
}

func ExampleStrength_ABV() {
	s, _ := alcoholometry.USProof(80)
	fmt.Printf("%.2f %% vol at 20 °C\n", s.ABV())
	// Output: 40.07 % vol at 20 °C
}

func ExampleStrength_ABVAt() {
	s, _ := alcoholometry.ABV(43)
	t, _ := quantity.Celsius(15)
	fmt.Printf("%.2f %% vol at 15 °C\n", s.ABVAt(t))
	// Output: 42.93 % vol at 15 °C
}

func ExampleStrength_ABW() {
	s, _ := alcoholometry.ABV(40)
	fmt.Printf("%.2f %% mass\n", s.ABW())
	// Output: 33.30 % mass
}

func ExampleStrength_USProof() {
	s, _ := alcoholometry.ABV(43)
	fmt.Printf("%.1f proof\n", s.USProof())
	// Output: 85.9 proof
}

func ExampleStrength_MoleFraction() {
	s, _ := alcoholometry.ABV(40)
	fmt.Printf("%.3f\n", s.MoleFraction())
	// Output: 0.163
}

func ExampleStrength_String() {
	s, _ := alcoholometry.ABW(94)
	fmt.Println(s, "and", alcoholometry.Strength{})
	// Output: 96.11 % vol and unset strength
}

func ExampleStrength_Rows() {
	s, _ := alcoholometry.ABV(43)
	for _, r := range s.Rows() {
		fmt.Println(r[0]+":", r[1], r[2])
	}
	// Output:
	// strength by volume at 20 °C: 43.00 % vol
	// strength by mass: 35.99 % mass
	// US proof: 85.9 proof
}

func ExampleDensityKgM3() {
	s, _ := alcoholometry.ABV(40)
	rho, _ := alcoholometry.DensityKgM3(s, quantity.Temperature{})
	fmt.Printf("%.2f kg/m³\n", rho)
	// Output: 948.05 kg/m³
}

func ExampleDensityInAirKgM3() {
	s, _ := alcoholometry.ABV(40)
	rho, _ := alcoholometry.DensityInAirKgM3(s, quantity.Temperature{})
	fmt.Printf("%.2f kg/m³\n", rho)
	// Output: 946.99 kg/m³
}

func ExampleStrengthFromDensity() {
	t, _ := quantity.Celsius(22.5)
	s, _ := alcoholometry.StrengthFromDensity(936.4, t)
	fmt.Println(s)
	// Output: 45.73 % vol
}

func ExampleFreezingPoint() {
	s, _ := alcoholometry.ABV(40)
	t, _ := alcoholometry.FreezingPoint(s)
	fmt.Printf("%.0f °C\n", t.C())
	// Output: -24 °C
}

func ExampleContractionPct() {
	s, _ := alcoholometry.ABV(54)
	pct, _ := alcoholometry.ContractionPct(s, quantity.Temperature{})
	fmt.Printf("%.2f %%\n", pct)
	// Output: 3.55 %
}

func ExampleTrueStrength() {
	t, _ := quantity.Celsius(15)
	s, _ := alcoholometry.TrueStrength(40, t)
	fmt.Println("an alcoholometer showing 40 at 15 °C means", s)
	// Output: an alcoholometer showing 40 at 15 °C means 42.00 % vol
}

func ExampleMarkedAt() {
	t, _ := quantity.Celsius(22)
	old, _ := quantity.Celsius(15)
	s, _ := alcoholometry.TrueStrength(45, t, alcoholometry.MarkedAt(old))
	fmt.Println(s)
	// Output: 42.34 % vol
}

func ExampleTrueProof() {
	t, _ := quantity.Fahrenheit(75)
	s, _ := alcoholometry.TrueProof(193, t)
	fmt.Printf("%.1f proof\n", s.USProof())
	// Output: 189.5 proof
}

func ExampleReading() {
	s, _ := alcoholometry.ABV(43)
	t, _ := quantity.Celsius(26)
	reading, _ := alcoholometry.Reading(s, t)
	fmt.Printf("the alcoholometer shows %.1f\n", reading)
	// Output: the alcoholometer shows 45.3
}

func ExampleProofReading() {
	s, _ := alcoholometry.USProof(80)
	t, _ := quantity.Fahrenheit(70)
	reading, _ := alcoholometry.ProofReading(s, t)
	fmt.Printf("the hydrometer shows %.1f\n", reading)
	// Output: the hydrometer shows 84.4
}

func ExampleStrengthPlusMinus() {
	t, _ := quantity.Celsius(26)
	pm, _ := alcoholometry.StrengthPlusMinus(43, t, alcoholometry.Tolerances{ReadingABV: 0.1, TempC: 0.5})
	fmt.Printf("± %.2f %% vol\n", pm)
	// Output: ± 0.22 % vol
}

func ExampleWeighed() {
	s, _ := alcoholometry.ABV(60)
	spirit, _ := alcoholometry.Weighed(100, s)
	fmt.Println(spirit)
	// Output: 110.00 L at 60.00 % vol (20.0 °C)
}

func ExampleSpirit_PureL() {
	s, _ := alcoholometry.ABV(60)
	fmt.Printf("%.0f L of pure alcohol\n", alcoholometry.Spirit{VolumeL: 2520, Strength: s}.PureL())
	// Output: 1512 L of pure alcohol
}

func ExampleSpirit_MassKg() {
	s, _ := alcoholometry.ABV(60)
	fmt.Printf("%.1f kg\n", alcoholometry.Spirit{VolumeL: 100, Strength: s}.MassKg())
	// Output: 90.9 kg
}

func ExampleSpirit_VolumeAt() {
	s, _ := alcoholometry.ABV(60)
	warm, _ := quantity.Celsius(28)
	fmt.Printf("%.1f L\n", alcoholometry.Spirit{VolumeL: 700, Strength: s}.VolumeAt(warm))
	// Output: 705.0 L
}

func ExampleSpirit_String() {
	s, _ := alcoholometry.ABV(43)
	fmt.Println(alcoholometry.Spirit{VolumeL: 0.7, Strength: s})
	// Output: 0.700 L at 43.00 % vol (20.0 °C)
}

func ExampleSpirit_Rows() {
	s, _ := alcoholometry.ABV(43)
	for _, r := range (alcoholometry.Spirit{VolumeL: 600, Strength: s}).Rows() {
		fmt.Println(r[0]+":", r[1], r[2])
	}
	// Output:
	// volume at 20.0 °C: 600.00 L
	// strength: 43.00 % vol
	// pure alcohol at 20 °C: 258.00 L
	// mass: 565.83 kg
}

func ExampleCheckSpirit() {
	fmt.Println(alcoholometry.CheckSpirit("Bottle", alcoholometry.Spirit{VolumeL: 0.7}))
	// Output: Bottle: the spirit's strength is not set; give one, such as ABV(43), or Water for no alcohol
}

func ExampleCheckSet() {
	err := alcoholometry.CheckSet("Bottle", "the label's strength", alcoholometry.Strength{})
	var unset *alcoholometry.UnsetError
	fmt.Println(errors.As(err, &unset), alcoholometry.CheckSet("Bottle", "the label's strength", alcoholometry.Water))
	// Output: true <nil>
}

func ExampleMassFromBalanceKg() {
	s, _ := alcoholometry.ABV(60)
	kg, _ := alcoholometry.MassFromBalanceKg(100, s, quantity.Temperature{})
	fmt.Printf("%.2f kg\n", kg)
	// Output: 100.12 kg
}

func ExampleBalanceFromMassKg() {
	s, _ := alcoholometry.ABV(60)
	bottle := alcoholometry.Spirit{VolumeL: 0.7, Strength: s}
	kg, _ := alcoholometry.BalanceFromMassKg(bottle.MassKg(), s, bottle.Temp)
	fmt.Printf("%.1f g\n", quantity.KgToG(kg))
	// Output: 635.6 g
}

func ExampleProofGallons() {
	s, _ := alcoholometry.USProof(120)
	t, _ := quantity.Fahrenheit(60)
	pg, _ := alcoholometry.ProofGallons(alcoholometry.Spirit{VolumeL: quantity.USGallonsToL(50), Strength: s, Temp: t})
	fmt.Printf("%.1f proof gallons\n", pg)
	// Output: 60.0 proof gallons
}

func ExampleUSGravityInAir() {
	s, _ := alcoholometry.USProof(100)
	g, _ := alcoholometry.USGravityInAir(s)
	fmt.Printf("%.4f\n", g)
	// Output: 0.9342
}

func ExampleUSGravityInVacuum() {
	s, _ := alcoholometry.USProof(100)
	g, _ := alcoholometry.USGravityInVacuum(s)
	fmt.Printf("%.4f\n", g)
	// Output: 0.9343
}

func ExampleUSPoundsPerWineGallon() {
	s, _ := alcoholometry.USProof(190)
	lb, _ := alcoholometry.USPoundsPerWineGallon(s)
	fmt.Printf("%.3f lb\n", lb)
	// Output: 6.794 lb
}

func ExampleUSPoundsPerProofGallon() {
	s, _ := alcoholometry.USProof(190)
	lb, _ := alcoholometry.USPoundsPerProofGallon(s)
	fmt.Printf("%.3f lb\n", lb)
	// Output: 3.576 lb
}

func ExampleUSWineGallonsPerPound() {
	s, _ := alcoholometry.USProof(190)
	gal, _ := alcoholometry.USWineGallonsPerPound(s)
	fmt.Printf("%.4f gal\n", gal)
	// Output: 0.1472 gal
}

func ExampleUSProofGallonsPerPound() {
	s, _ := alcoholometry.USProof(190)
	gal, _ := alcoholometry.USProofGallonsPerPound(s)
	fmt.Printf("%.4f proof gal\n", gal)
	// Output: 0.2797 proof gal
}

func ExampleUSWaterParts() {
	s, _ := alcoholometry.USProof(100)
	gal, _ := alcoholometry.USWaterParts(s)
	fmt.Printf("50 gal of ethanol and %.1f gal of water make 100 gal\n", gal)
	// Output: 50 gal of ethanol and 53.7 gal of water make 100 gal
}

func ExampleUSVolumeFactor() {
	s, _ := alcoholometry.USProof(190)
	t, _ := quantity.Fahrenheit(76)
	f, _ := alcoholometry.USVolumeFactor(s, t)
	fmt.Printf("%.3f\n", f)
	// Output: 0.991
}

func ExampleUSRoundTenth() {
	fmt.Println(alcoholometry.USRoundTenth(76.55))
	// Output: 76.6
}

func ExampleUnsetError() {
	_, err := alcoholometry.DensityKgM3(alcoholometry.Strength{}, quantity.Temperature{})
	fmt.Println(err)
	// Output: alcoholometry.DensityKgM3: the strength is not set; give one, such as ABV(43), or Water for no alcohol
}
