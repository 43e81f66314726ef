package uncertainty_test

import (
	"fmt"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
	"swanneck/mathlib/uncertainty"
)

// show prints an example's result and stops at its error.
func show(v any, err error) {
	if err != nil {
		panic(err)
	}
	fmt.Println(v)
}

// The extract of 25 mL of a liqueur, dried and weighed: two readings and a constant.
func extract() uncertainty.Measurement {
	return uncertainty.Measurement{
		Name: "extract", Unit: "g/L",
		Inputs: []uncertainty.Measured{
			uncertainty.Input{Name: "dish", Value: 2.150, Unit: "g", Parts: []uncertainty.Part{uncertainty.Rectangular(0.002).Called("balance")}},
			uncertainty.Input{Name: "pipette", Value: 25, Unit: "mL", Parts: []uncertainty.Part{uncertainty.Triangular(0.03).Called("class A")}},
		},
		Model: func(x []float64) float64 { return 1000 * x[0] / x[1] },
	}
}

func ExampleFirstOrder() {
	b, err := uncertainty.FirstOrder(extract())
	show(b, err)
	for _, r := range b.Rows() {
		fmt.Println(strings.TrimRight(strings.Join(r, " | "), "| "))
	}
	// Output:
	// extract = 86.00 ± 0.12 g/L (95 %, k = 1.96); dish makes 55 % of it
	// cause | value | unit | standard uncertainty | spread | degrees of freedom | result moves by | share
	// dish, balance | 2.1500 | g | 0.0012 | rectangular | ∞ | 0.046 g/L | 54.6 %
	// pipette, class A | 25.000 | mL | 0.012 | triangular | ∞ | 0.042 g/L | 45.4 %
	// extract | 86.00 | g/L | 0.063 |  | ∞ |  | 100 %
	// expanded uncertainty, 95 % | ± 0.12 | g/L | k = 1.96
	// limited by dish; if that were twice as good | ± 0.094 | g/L
}

func ExampleMonteCarlo() {
	show(uncertainty.MonteCarlo(extract(), 200_000, 1))
	// Output: extract = 86.00 g/L, 95 % from 85.88 to 86.12 g/L (standard uncertainty 0.063 g/L, 200 000 draws, seed 1)
}

func ExampleSecondOrderStandard() {
	u, err := uncertainty.SecondOrderStandard(extract())
	show(fmt.Sprintf("%.4f g/L", u), err)
	// Output: 0.0625 g/L
}

func ExampleCompare() {
	b, err := uncertainty.FirstOrder(extract())
	if err != nil {
		panic(err)
	}
	d, err := uncertainty.MonteCarlo(extract(), 1_000_000, 1)
	if err != nil {
		panic(err)
	}
	show(uncertainty.Compare(b, d, 1))
	// Output: first order and draws agree to 1 digit (ends differ by 0.0027 and 0.0030 g/L, allowed 0.0050)
}

func ExampleNormal() {
	fmt.Println(uncertainty.Normal(0.05).Standard)
	// Output: 0.05
}

func ExampleRectangular() {
	p := uncertainty.Rectangular(0.1)
	fmt.Printf("%v %.4f\n", p.Shape, p.Standard)
	// Output: rectangular 0.0577
}

func ExampleTriangular() {
	p := uncertainty.Triangular(0.1)
	fmt.Printf("%v %.4f\n", p.Shape, p.Standard)
	// Output: triangular 0.0408
}

func ExampleStudentT() {
	p := uncertainty.StudentT(0.1, 4)
	fmt.Printf("%v %.4f %d\n", p.Shape, p.Standard, p.Degrees)
	// Output: Student t 0.1000 4
}

func ExampleCycling() {
	p := uncertainty.Cycling(0.5)
	fmt.Printf("%v %.4f\n", p.Shape, p.Standard)
	// Output: cycling 0.3536
}

func ExamplePart_Loose() {
	p := uncertainty.Rectangular(0.05).Loose(0.025)
	fmt.Printf("%v: %.4f\n", p.Shape, p.Standard)
	// Output: rectangular, limits not exact: 0.0300
}

func ExamplePart_Called() {
	fmt.Println(uncertainty.Normal(0.05).Called("repeatability").What)
	// Output: repeatability
}

func ExampleHydrometer_Input() {
	show(uncertainty.Hydrometer{ReadingABV: 72.4, ToleranceABV: 0.1, DivisionABV: 0.1}.Input())
	// Output: hydrometer 72.400 ± 0.065 % vol (standard uncertainty)
}

func ExampleProofHydrometer_Input() {
	show(uncertainty.ProofHydrometer{ReadingProof: 120.4, ToleranceProof: 0.2}.Input())
	// Output: hydrometer 120.40 ± 0.12 proof (standard uncertainty)
}

func ExampleThermometer_Input() {
	show(uncertainty.Thermometer{ReadingC: 26, ToleranceC: 0.2, DivisionC: 0.1}.Input())
	// Output: thermometer 26.00 ± 0.12 °C (standard uncertainty)
}

func ExampleDensityMeter_Input() {
	show(uncertainty.DensityMeter{ReadingKgM3: 948.05, ToleranceKgM3: 0.05, RepeatabilityKgM3: 0.01}.Input())
	// Output: density meter 948.050 ± 0.031 kg/m³ (standard uncertainty)
}

func ExampleBalance_Input() {
	show(uncertainty.Balance{ReadingKg: 252.4, ToleranceKg: 0.2, DivisionKg: 0.1}.Input())
	// Output: balance 252.40 ± 0.12 kg (standard uncertainty)
}

func ExampleTankDip_Input() {
	show(uncertainty.TankDip{VolumeL: 600, LPerMM: 0.8, StickMM: 2, TablePct: 0.2}.Input())
	// Output: tank dip 600.0 ± 1.2 L (standard uncertainty)
}

func ExampleRepeated_Input() {
	show(uncertainty.Repeated{Name: "density", Unit: "kg/m³", Readings: []float64{948.06, 948.03, 948.05, 948.04}}.Input())
	// Output: density 948.0450 ± 0.0065 kg/m³ (standard uncertainty)
}

func ExampleCertificate_Input() {
	show(uncertainty.Certificate{Name: "reference water", Value: 998.203, Unit: "kg/m³", Expanded: 0.010}.Input())
	// Output: reference water 998.2030 ± 0.0050 kg/m³ (standard uncertainty)
}

func ExampleInput_Degrees() {
	in := uncertainty.Input{Name: "density", Value: 948.05, Unit: "kg/m³",
		Parts: []uncertainty.Part{uncertainty.StudentT(0.01, 3), uncertainty.Rectangular(0.02)}}
	fmt.Printf("%.1f\n", in.Degrees())
	// Output: 16.3
}

func ExampleInput_Standard() {
	in := uncertainty.Input{Name: "density", Value: 948.05, Unit: "kg/m³",
		Parts: []uncertainty.Part{uncertainty.Normal(0.03), uncertainty.Normal(0.04)}}
	fmt.Printf("%.3f kg/m³\n", in.Standard())
	// Output: 0.050 kg/m³
}

func ExampleProofedStrength() {
	m, err := uncertainty.ProofedStrength(inTheCellar())
	if err != nil {
		panic(err)
	}
	show(uncertainty.FirstOrder(m))
	// Output: strength = 70.46 ± 0.15 % vol (95 %, k = 1.96); hydrometer makes 74 % of it
}

func ExampleProofedAlcohol() {
	m, err := uncertainty.ProofedAlcohol(inTheCellar())
	if err != nil {
		panic(err)
	}
	show(uncertainty.FirstOrder(m))
	// Output: pure alcohol = 420.3 ± 1.8 L (95 %, k = 1.96); tank dip makes 74 % of it
}

func ExampleProofedWater() {
	m, err := uncertainty.ProofedWater(inTheCellar())
	if err != nil {
		panic(err)
	}
	show(uncertainty.FirstOrder(m))
	show(uncertainty.MonteCarlo(m, 200_000, 1))
	// Output:
	// water to add = 394.2 ± 2.7 kg (95 %, k = 1.96); hydrometer makes 49 % of it
	// water to add = 394.2 kg, 95 % from 391.5 to 396.8 kg (standard uncertainty 1.4 kg, 200 000 draws, seed 1)
}

func ExampleReducedStrength() {
	p := inTheCellar()
	p.Water = uncertainty.Balance{ReadingKg: 398, ToleranceKg: 0.5, DivisionKg: 0.1}
	m, err := uncertainty.ReducedStrength(p)
	if err != nil {
		panic(err)
	}
	show(uncertainty.FirstOrder(m))
	// Output: strength after reduction = 42.82 ± 0.12 % vol (95 %, k = 1.96); hydrometer makes 47 % of it
}

func inTheCellar() uncertainty.Proofing {
	t, err := quantity.Celsius(20)
	if err != nil {
		panic(err)
	}
	to, err := alcoholometry.ABV(43)
	if err != nil {
		panic(err)
	}
	return uncertainty.Proofing{
		Hydrometer:  uncertainty.Hydrometer{ReadingABV: 72.4, ToleranceABV: 0.1, DivisionABV: 0.1},
		MarkedAt:    t,
		Thermometer: uncertainty.Thermometer{ReadingC: 26, ToleranceC: 0.2, DivisionC: 0.1},
		Tank:        uncertainty.TankDip{VolumeL: 600, LPerMM: 0.8, StickMM: 2, TablePct: 0.2},
		To:          to,
	}
}

func ExampleDraws_ShareBelowPct() {
	d, err := uncertainty.MonteCarlo(extract(), 200_000, 1)
	if err != nil {
		panic(err)
	}
	fmt.Printf("%.1f %%\n", d.ShareBelowPct(86.1))
	// Output: 94.3 %
}

func ExampleDraws_Below() {
	d, err := uncertainty.MonteCarlo(extract(), 200_000, 1)
	if err != nil {
		panic(err)
	}
	fmt.Printf("half of the draws are below %.2f g/L\n", d.Below(50))
	// Output: half of the draws are below 86.00 g/L
}

func ExampleDraws_Outline() {
	d, err := uncertainty.MonteCarlo(extract(), 200_000, 1)
	if err != nil {
		panic(err)
	}
	values, shares := d.Outline(5)
	for i := range values {
		fmt.Printf("%.2f g/L %.1f %%\n", values[i], shares[i])
	}
	// Output:
	// 85.84 g/L 0.0 %
	// 85.84 g/L 6.2 %
	// 85.90 g/L 6.2 %
	// 85.90 g/L 25.3 %
	// 85.97 g/L 25.3 %
	// 85.97 g/L 37.2 %
	// 86.03 g/L 37.2 %
	// 86.03 g/L 25.0 %
	// 86.10 g/L 25.0 %
	// 86.10 g/L 6.1 %
	// 86.16 g/L 6.1 %
	// 86.16 g/L 0.0 %
}
