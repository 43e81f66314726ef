package sheet_test

import (
	"fmt"

	. "swanneck/mathlib/sheet"
)

func ExampleABV() {
	fmt.Println(ABV(43))
	// Output: 43.00 % vol
}

func ExampleABVAt() {
	fmt.Println(ABVAt(43, Celsius(15)))
	// Output: 43.07 % vol
}

func ExampleABW() {
	fmt.Println(ABW(33.3))
	// Output: 40.00 % vol
}

func ExampleUSProof() {
	fmt.Println(USProof(120))
	// Output: 60.05 % vol
}

func ExampleMoleFraction() {
	fmt.Println(MoleFraction(0.16))
	// Output: 39.39 % vol
}

func ExampleCelsius() {
	fmt.Println(Celsius(15))
	// Output: 15.0 °C
}

func ExampleFahrenheit() {
	fmt.Println(Fahrenheit(60))
	// Output: 15.6 °C
}

func ExampleKelvin() {
	fmt.Println(Kelvin(293.15))
	// Output: 20.0 °C
}

func ExampleKPa() {
	fmt.Println(KPa(95))
	// Output: 95.00 kPa
}

func ExampleMmHg() {
	fmt.Println(MmHg(720))
	// Output: 95.99 kPa
}

func ExampleBar() {
	fmt.Println(Bar(0.1))
	// Output: 10.00 kPa
}

func ExampleAtm() {
	fmt.Println(Atm(1))
	// Output: 101.33 kPa
}

func ExamplePSI() {
	fmt.Println(PSI(14.5))
	// Output: 99.97 kPa
}

func ExampleAtAltitude() {
	fmt.Println(AtAltitude(1200))
	// Output: 87.72 kPa
}

func ExampleDensityKgM3() {
	fmt.Printf("%.2f kg/m³\n", DensityKgM3(ABV(40), Celsius(20)))
	// Output: 948.05 kg/m³
}

func ExampleDensityInAirKgM3() {
	fmt.Printf("%.2f kg/m³\n", DensityInAirKgM3(ABV(40), Celsius(20)))
	// Output: 946.99 kg/m³
}

func ExampleStrengthFromDensity() {
	fmt.Println(StrengthFromDensity(936.4, Celsius(22.5)))
	// Output: 45.73 % vol
}

func ExampleFreezingPoint() {
	fmt.Printf("%.0f °C\n", FreezingPoint(ABV(40)).C())
	// Output: -24 °C
}

func ExampleContractionPct() {
	fmt.Printf("%.2f %%\n", ContractionPct(ABV(54), Celsius(20)))
	// Output: 3.55 %
}

func ExampleWeighed() {
	fmt.Println(Weighed(100, ABV(60)))
	// Output: 110.00 L at 60.00 % vol (20.0 °C)
}

func ExampleMassFromBalanceKg() {
	fmt.Printf("%.2f kg\n", MassFromBalanceKg(100, ABV(60), Celsius(20)))
	// Output: 100.12 kg
}

func ExampleBalanceFromMassKg() {
	fmt.Printf("%.2f kg\n", BalanceFromMassKg(100, ABV(60), Celsius(20)))
	// Output: 99.88 kg
}

func ExampleProofGallons() {
	fmt.Printf("%.1f proof gallons\n", ProofGallons(Spirit{VolumeL: USGallons(50), Strength: USProof(120), Temp: Fahrenheit(60)}))
	// Output: 60.0 proof gallons
}

func ExampleTrueStrength() {
	fmt.Println(TrueStrength(40, Celsius(15)))
	// Output: 42.00 % vol
}

func ExampleTrueProof() {
	fmt.Printf("%.1f proof\n", TrueProof(193, Fahrenheit(75)).USProof())
	// Output: 189.5 proof
}

func ExampleReading() {
	fmt.Printf("%.1f\n", Reading(ABV(43), Celsius(26)))
	// Output: 45.3
}

func ExampleProofReading() {
	fmt.Printf("%.1f\n", ProofReading(USProof(80), Fahrenheit(70)))
	// Output: 84.4
}

func ExampleMarkedAt() {
	fmt.Println(TrueStrength(45, Celsius(22), MarkedAt(Celsius(15))))
	// Output: 42.34 % vol
}

func ExampleStrengthPlusMinus() {
	fmt.Printf("± %.2f %% vol\n", StrengthPlusMinus(43, Celsius(26), Tolerances{ReadingABV: 0.1, TempC: 0.5}))
	// Output: ± 0.22 % vol
}

func ExampleReduce() {
	fmt.Println(Reduce(Spirit{VolumeL: 100, Strength: ABV(72.4)}, ABV(43)))
	// Output: 100.00 L at 72.40 % vol + 70.96 L (70.83 kg) of water = 168.37 L at 43.00 % vol; contraction 2.59 L, warms by about 6.4 °C
}

func ExampleWaterAt() {
	fmt.Printf("%.1f L of water\n", Reduce(Spirit{VolumeL: 100, Strength: ABV(72.4)}, ABV(43), WaterAt(Celsius(8))).WaterL)
	// Output: 70.8 L of water
}

func ExampleResultAt() {
	fmt.Println(Reduce(Spirit{VolumeL: 100, Strength: ABV(72.4)}, ABV(43), ResultAt(Celsius(12))).Result)
	// Output: 167.40 L at 43.00 % vol (12.0 °C)
}

func ExampleSpiritAt() {
	fmt.Printf("%.1f L of spirit\n", Make(Spirit{VolumeL: 600, Strength: ABV(43)}, ABV(72.4), SpiritAt(Celsius(28))).SpiritL)
	// Output: 359.1 L of spirit
}

func ExampleMake() {
	fmt.Println(Make(Spirit{VolumeL: 600, Strength: ABV(43)}, ABV(72.4)))
	// Output: 356.35 L at 72.40 % vol + 252.87 L (252.41 kg) of water = 600.00 L at 43.00 % vol; contraction 9.22 L, warms by about 6.4 °C
}

func ExampleBlend() {
	fmt.Println(Blend(Spirit{VolumeL: 2, Strength: ABV(60)}, Spirit{VolumeL: 1, Strength: ABV(45)}))
	// Output: 3.00 L at 55.04 % vol (20.0 °C)
}

func ExampleUSGallons() {
	fmt.Printf("%.2f L\n", USGallons(50))
	// Output: 189.27 L
}

func ExampleLitresToUSGallons() {
	fmt.Printf("%.1f gal\n", LitresToUSGallons(600))
	// Output: 158.5 gal
}

func ExampleImperialGallons() {
	fmt.Printf("%.1f L\n", ImperialGallons(10))
	// Output: 45.5 L
}

func ExampleLitresToImperialGallons() {
	fmt.Printf("%.1f gal\n", LitresToImperialGallons(600))
	// Output: 132.0 gal
}

func ExampleUSFluidOunces() {
	fmt.Printf("%.4f L\n", USFluidOunces(1.5))
	// Output: 0.0444 L
}

func ExampleLitresToUSFluidOunces() {
	fmt.Printf("%.1f fl oz\n", LitresToUSFluidOunces(0.75))
	// Output: 25.4 fl oz
}

func ExampleImperialFluidOunces() {
	fmt.Printf("%.4f L\n", ImperialFluidOunces(1))
	// Output: 0.0284 L
}

func ExampleLitresToImperialFluidOunces() {
	fmt.Printf("%.1f fl oz\n", LitresToImperialFluidOunces(0.7))
	// Output: 24.6 fl oz
}

func ExampleMillilitres() {
	fmt.Printf("%.1f L\n", Millilitres(700))
	// Output: 0.7 L
}

func ExampleLitresToMillilitres() {
	fmt.Printf("%.0f mL\n", LitresToMillilitres(0.5))
	// Output: 500 mL
}

func ExampleHectolitres() {
	fmt.Printf("%.0f L\n", Hectolitres(6))
	// Output: 600 L
}

func ExampleLitresToHectolitres() {
	fmt.Printf("%.1f hL\n", LitresToHectolitres(2520))
	// Output: 25.2 hL
}

func ExamplePounds() {
	fmt.Printf("%.2f kg\n", Pounds(400))
	// Output: 181.44 kg
}

func ExampleKgToPounds() {
	fmt.Printf("%.1f lb\n", KgToPounds(100))
	// Output: 220.5 lb
}

func ExampleOunces() {
	fmt.Printf("%.3f kg\n", Ounces(8))
	// Output: 0.227 kg
}

func ExampleKgToOunces() {
	fmt.Printf("%.1f oz\n", KgToOunces(1))
	// Output: 35.3 oz
}

func ExampleGrams() {
	fmt.Printf("%.2f kg\n", Grams(250))
	// Output: 0.25 kg
}

func ExampleKgToGrams() {
	fmt.Printf("%.0f g\n", KgToGrams(1.5))
	// Output: 1500 g
}

func ExampleAltitude() {
	fmt.Println(Altitude(1200))
	// Output: 87.72 kPa
}

func ExampleBoil() {
	fmt.Println(Boil(ABV(10), Altitude(800)))
	// Output: 10.00 % vol boils at 89.8 °C (92.08 kPa), vapour 55.88 % vol
}

func ExampleBoilAt() {
	fmt.Println(BoilAt(ABV(10), Celsius(50)).P)
	// Output: 16.12 kPa
}

func ExampleCondense() {
	fmt.Println(Condense(ABV(60), Atm(1)))
	// Output: 12.04 % vol boils at 91.3 °C (101.33 kPa), vapour 60.00 % vol
}

func ExampleCondenseAt() {
	fmt.Println(CondenseAt(ABV(60), Celsius(60)).P)
	// Output: 27.38 kPa
}

func ExampleAzeotrope() {
	fmt.Println(Azeotrope(Atm(1)))
	// Output: 97.37 % vol boils at 78.1 °C (101.33 kPa), vapour 97.37 % vol
}

func ExampleBoilPart() {
	fmt.Println(BoilPart(ABV(40), Atm(1), 0.2))
	// Output: 40.00 % vol parts into 20.00 % of its moles as vapour of 73.88 % vol and liquid of 25.86 % vol at 86.5 °C (101.33 kPa)
}

func ExampleHoldAt() {
	fmt.Println(HoldAt(ABV(40), Celsius(70), Atm(1)))
	// Output: 40.00 % vol stays liquid at 70.0 °C (101.33 kPa)
}

func ExampleBoilingLine() {
	for _, b := range BoilingLine(Atm(1), 3) {
		fmt.Println(b)
	}
	// Output:
	// 0.00 % vol boils at 100.0 °C (101.33 kPa), vapour 0.00 % vol
	// 78.62 % vol boils at 79.8 °C (101.33 kPa), vapour 87.93 % vol
	// 100.00 % vol boils at 78.3 °C (101.33 kPa), vapour 100.00 % vol
}

func ExampleBoilingLineAt() {
	for _, b := range BoilingLineAt(Celsius(60), 3) {
		fmt.Println(b.Liquid, b.P)
	}
	// Output:
	// 0.00 % vol 19.95 kPa
	// 78.62 % vol 44.03 kPa
	// 100.00 % vol 46.93 kPa
}

func ExampleUseModel() {
	fmt.Println(Boil(ABV(10), Atm(1), UseModel("UNIFAC Dortmund")))
	// Output: 10.00 % vol boils at 92.4 °C (101.33 kPa), vapour 55.58 % vol
}

func ExampleWithoutAnchor() {
	fmt.Printf("%.1f\n", RelativeVolatility("ethyl acetate", ABV(10), Atm(1), WithoutAnchor()))
	// Output: 9.8
}

func ExampleFindCompound() {
	fmt.Println(FindCompound("3-methyl-1-butanol"))
	// Output: isoamyl alcohol, C5H12O, 88.150 g/mol
}

func ExampleCompoundNames() {
	fmt.Println(len(CompoundNames()), "compounds")
	// Output: 46 compounds
}

func ExampleRelativeVolatility() {
	for _, pct := range []float64{10, 40, 70} {
		fmt.Printf("%.2f\n", RelativeVolatility("isoamyl alcohol", ABV(pct), Atm(1)))
	}
	// Output:
	// 2.26
	// 0.93
	// 0.36
}

func ExampleVolatility() {
	fmt.Println(Volatility("linalool", ABV(40), Atm(1)))
	// Output: linalool over boiling 40.00 % vol (101.33 kPa): 0.32 times as volatile as ethanol, K = 1.01 (vapour pressure estimated: here from normal boiling point + P(25 °C) = 24 Pa (memory: literature 21-27 Pa), C = 18 - 0.19 Tb (Thomson))
}

func ExampleStop() {
	defer func() { fmt.Println(recover()) }() // the engine does this for each cell
	Reduce(Spirit{VolumeL: 10, Strength: ABV(72.4)}, ABV(80))
	// Output: Reduce: cannot raise 72.40 % vol to 80.00 % vol by adding water
}
