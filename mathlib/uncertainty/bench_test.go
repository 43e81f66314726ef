package uncertainty_test

import (
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
	"swanneck/mathlib/uncertainty"
)

// A proofing as it is done in the cellar: 600 L at 26 °C to be brought down to 43 % vol.
func proofing() uncertainty.Proofing {
	return uncertainty.Proofing{
		Hydrometer:  uncertainty.Hydrometer{ReadingABV: 72.4, ToleranceABV: 0.1, DivisionABV: 0.1},
		Thermometer: uncertainty.Thermometer{ReadingC: 26, ToleranceC: 0.2, DivisionC: 0.1},
		Tank:        uncertainty.TankDip{VolumeL: 600, LPerMM: 0.8, StickMM: 2, TablePct: 0.2},
		To:          the(alcoholometry.ABV(43)),
	}
}

// Wanted: a million draws of a proofing in less than a second on one core.
func BenchmarkMillionDrawsOfAProofing(b *testing.B) {
	m := the(uncertainty.ProofedWater(proofing()))
	for b.Loop() {
		the(uncertainty.MonteCarlo(m, 1_000_000, 1))
	}
}

// The same with everything that a reduction tells, the warming too.
func BenchmarkHundredThousandDrawsOfAReduction(b *testing.B) {
	p := proofing()
	m := the(uncertainty.ProofedWater(p))
	m.Model = func(x []float64) float64 {
		t := the(quantity.Celsius(x[1]))
		s := the(alcoholometry.TrueStrength(x[0], t))
		return the(mixing.Reduce(alcoholometry.Spirit{VolumeL: x[2], Strength: s, Temp: t}, p.To)).WaterKg
	}
	for b.Loop() {
		the(uncertainty.MonteCarlo(m, 100_000, 1))
	}
}

func BenchmarkBudgetOfAProofing(b *testing.B) {
	m := the(uncertainty.ProofedWater(proofing()))
	for b.Loop() {
		the(uncertainty.FirstOrder(m))
	}
}
