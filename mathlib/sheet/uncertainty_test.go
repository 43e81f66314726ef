package sheet_test

import (
	"fmt"
	"strings"
	"testing"

	. "swanneck/mathlib/sheet"
)

func cellarProofing() Proofing {
	return Proofing{
		Hydrometer:  Hydrometer{ReadingABV: 72.4, ToleranceABV: 0.1, DivisionABV: 0.1},
		Thermometer: Thermometer{ReadingC: 26, ToleranceC: 0.2, DivisionC: 0.1},
		Tank:        TankDip{VolumeL: 600, LPerMM: 0.8, StickMM: 2, TablePct: 0.2},
		To:          ABV(43),
	}
}

// A measurement as a cell writes it: the function uses the sheet's own functions.
func waterMeasured() Measurement {
	p := cellarProofing()
	return Measurement{
		Name: "water to add", Unit: "kg",
		Inputs: []Measured{p.Hydrometer, p.Thermometer, p.Tank},
		Model: func(x []float64) float64 {
			s := TrueStrength(x[0], Celsius(x[1]))
			return Reduce(Spirit{VolumeL: x[2], Strength: s, Temp: Celsius(x[1])}, ABV(43)).WaterKg
		},
	}
}

func ExampleHowSure() {
	fmt.Println(HowSure(waterMeasured()))
	// Output: water to add = 394.2 ± 2.7 kg (95 %, k = 1.96); hydrometer makes 49 % of it
}

func ExampleHowSureSecondOrder() {
	fmt.Printf("%.3f kg\n", HowSureSecondOrder(waterMeasured()))
	// Output: 1.365 kg
}

func ExampleMonteCarlo() {
	fmt.Println(MonteCarlo(waterMeasured(), 20_000, 1))
	// Output: water to add = 394.2 kg, 95 % from 391.6 to 396.8 kg (standard uncertainty 1.4 kg, 20 000 draws, seed 1)
}

func ExampleCompareWays() {
	m := ProofedWater(cellarProofing())
	fmt.Println(CompareWays(HowSure(m), MonteCarlo(m, 200_000, 1), 1))
	// Output: first order and draws agree to 1 digit (ends differ by 0.014 and 0.053 kg, allowed 0.50)
}

func ExampleProofedStrength() {
	fmt.Println(HowSure(ProofedStrength(cellarProofing())))
	// Output: strength = 70.46 ± 0.15 % vol (95 %, k = 1.96); hydrometer makes 74 % of it
}

func ExampleProofedAlcohol() {
	fmt.Println(HowSure(ProofedAlcohol(cellarProofing())))
	// Output: pure alcohol = 420.3 ± 1.8 L (95 %, k = 1.96); tank dip makes 74 % of it
}

func ExampleProofedWater() {
	fmt.Println(HowSure(ProofedWater(cellarProofing())))
	// Output: water to add = 394.2 ± 2.7 kg (95 %, k = 1.96); hydrometer makes 49 % of it
}

func ExampleReducedStrength() {
	p := cellarProofing()
	p.Water = Balance{ReadingKg: 398, ToleranceKg: 0.5, DivisionKg: 0.1}
	fmt.Println(HowSure(ReducedStrength(p)))
	// Output: strength after reduction = 42.82 ± 0.12 % vol (95 %, k = 1.96); hydrometer makes 47 % of it
}

func extractOf(p ErrorPart) MeasuredInput {
	return MeasuredInput{Name: "dish", Value: 2.15, Unit: "g", Parts: []ErrorPart{p}}
}

func ExampleNormalError() {
	fmt.Println(extractOf(NormalError(0.002)))
	// Output: dish 2.1500 ± 0.0020 g (standard uncertainty)
}

func ExampleRectangularError() {
	fmt.Println(extractOf(RectangularError(0.002)))
	// Output: dish 2.1500 ± 0.0012 g (standard uncertainty)
}

func ExampleTriangularError() {
	fmt.Println(extractOf(TriangularError(0.002)))
	// Output: dish 2.15000 ± 0.00082 g (standard uncertainty)
}

func ExampleStudentTError() {
	fmt.Println(extractOf(StudentTError(0.002, 4)))
	// Output: dish 2.1500 ± 0.0020 g (standard uncertainty)
}

func ExampleCyclingError() {
	fmt.Println(extractOf(CyclingError(0.002)))
	// Output: dish 2.1500 ± 0.0014 g (standard uncertainty)
}

func TestUncertaintyStopsTheCell(t *testing.T) {
	none := Measurement{}
	weak := cellarProofing()
	weak.Hydrometer.ReadingABV = 43.1
	for name, f := range map[string]func(){
		"HowSure":            func() { HowSure(none) },
		"HowSureSecondOrder": func() { HowSureSecondOrder(none) },
		"MonteCarlo":         func() { MonteCarlo(ProofedWater(weak), 1000, 1) },
		"CompareWays":        func() { CompareWays(ErrorBudget{Unit: "L"}, RandomDraws{}, 1) },
		"ProofedStrength":    func() { ProofedStrength(Proofing{}) },
		"ProofedAlcohol":     func() { ProofedAlcohol(Proofing{}) },
		"ProofedWater":       func() { ProofedWater(Proofing{}) },
		"ReducedStrength":    func() { ReducedStrength(Proofing{}) },
	} {
		if line := stopped(t, f); !strings.HasPrefix(line, name+": ") || strings.Contains(line, "\n") {
			t.Errorf("%s stops with %q; want one line that begins with its name", name, line)
		}
	}
}
