package alcoholometry_test

import (
	"testing"

	"swanneck/mathlib/alcoholometry"
)

func BenchmarkDensity(b *testing.B) {
	s, t := abv(43), celsius(26)
	for b.Loop() {
		the(alcoholometry.DensityKgM3(s, t))
	}
}

func BenchmarkStrengthFromDensity(b *testing.B) {
	t := celsius(26)
	for b.Loop() {
		the(alcoholometry.StrengthFromDensity(930, t))
	}
}

func BenchmarkABV(b *testing.B) {
	for b.Loop() {
		abv(43)
	}
}

func BenchmarkTrueStrength(b *testing.B) {
	t := celsius(26)
	for b.Loop() {
		the(alcoholometry.TrueStrength(43, t))
	}
}
