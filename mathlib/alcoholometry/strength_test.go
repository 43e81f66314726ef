package alcoholometry_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

func TestStrengthThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(0, 1).Draw(t, "share")
		temp := celsius(rapid.Float64Range(0, 40).Draw(t, "tC"))
		for _, c := range []struct {
			name      string
			got, want float64
		}{
			{"ABV", abv(100 * x).ABV(), 100 * x},
			{"ABVAt", the(alcoholometry.ABVAt(100*x, temp)).ABVAt(temp), 100 * x},
			{"ABW", abw(100 * x).ABW(), 100 * x},
			{"USProof", proof(200 * x).USProof(), 200 * x},
			{"MoleFraction", the(alcoholometry.MoleFraction(x)).MoleFraction(), x},
		} {
			if math.Abs(c.got-c.want) > 1e-11*(1+c.want) {
				t.Fatalf("%s(%.17g) there and back = %.17g", c.name, c.want, c.got)
			}
		}
	})
}

func TestStrengthRises(t *testing.T) {
	for _, f := range []func(float64) alcoholometry.Strength{
		abv,
		func(p float64) alcoholometry.Strength { return proof(2 * p) },
		func(p float64) alcoholometry.Strength { return the(alcoholometry.ABVAt(p, celsius(40))) },
		func(p float64) alcoholometry.Strength { return the(alcoholometry.MoleFraction(p / 100)) },
	} {
		before := -1.0
		for i := 0; i <= 1000; i++ {
			w := f(float64(i) / 10).ABW()
			if w <= before {
				t.Fatalf("the mass fraction does not rise at %g", float64(i)/10)
			}
			before = w
		}
	}
}

func TestEndsOfStrength(t *testing.T) {
	for _, s := range []alcoholometry.Strength{abv(0), abw(0), proof(0), the(alcoholometry.MoleFraction(0))} {
		if s != alcoholometry.Water {
			t.Errorf("strength 0 is %v, not Water", s)
		}
	}
	for _, s := range []alcoholometry.Strength{abv(100), abw(100), proof(200), the(alcoholometry.MoleFraction(1)), the(alcoholometry.ABVAt(100, celsius(-20)))} {
		if s.ABW() != 100 || s.ABV() != 100 || s.USProof() != 200 {
			t.Errorf("pure ethanol is %.17g %% mass, %.17g %% vol, %.17g US proof", s.ABW(), s.ABV(), s.USProof())
		}
	}
}

func TestProofIsTwiceThePerCentAt60F(t *testing.T) {
	// 27 CFR 5.1: proof is twice the per cent by volume at 60 °F. So 120 proof is 60 % vol there, and a little more at
	// 20 °C (common practice, no source, puts them equal).
	s := proof(120)
	if got := s.ABVAt(fahrenheit(60)); math.Abs(got-60) > 1e-9 {
		t.Errorf("USProof(120).ABVAt(60 °F) = %.10g; want 60", got)
	}
	if got := s.ABV(); math.Abs(got-60) > 0.1 {
		t.Errorf("USProof(120).ABV() = %.3f; common practice gives 60 ± 0.1", got)
	}
	for _, c := range []struct{ proof, golden float64 }{{80, 40.069}, {86, 43.066}, {100, 50.061}, {120, 60.054}, {190, 95.007}} {
		if got := proof(c.proof).ABV(); math.Abs(got-c.golden) > 6e-4 {
			t.Errorf("USProof(%g).ABV() = %.4f; golden %.3f", c.proof, got, c.golden)
		}
	}
}

func TestStrengthRefuses(t *testing.T) {
	var out *quantity.RangeError
	for name, err := range map[string]error{
		"ABV(-0.1)":           second(alcoholometry.ABV(-0.1)),
		"ABV(100.1)":          second(alcoholometry.ABV(100.1)),
		"ABV(NaN)":            second(alcoholometry.ABV(math.NaN())),
		"ABW(101)":            second(alcoholometry.ABW(101)),
		"USProof(201)":        second(alcoholometry.USProof(201)),
		"MoleFraction(1.1)":   second(alcoholometry.MoleFraction(1.1)),
		"ABVAt(101, 20 °C)":   second(alcoholometry.ABVAt(101, celsius(20))),
		"ABVAt(40, 41 °C)":    second(alcoholometry.ABVAt(40, celsius(41))),
		"ABVAt(5, -10 °C)":    second(alcoholometry.ABVAt(5, celsius(-10))), // ice
		"ABVAt(+Inf, 20 °C)":  second(alcoholometry.ABVAt(math.Inf(1), celsius(20))),
		"MoleFraction(-1e-9)": second(alcoholometry.MoleFraction(-1e-9)),
	} {
		if !errors.As(err, &out) {
			t.Errorf("%s: %v; want a RangeError", name, err)
		}
	}
}

func second(_ alcoholometry.Strength, err error) error { return err }

func TestUnsetStrengthIsNeverWater(t *testing.T) {
	var s alcoholometry.Strength
	if s.IsSet() || !alcoholometry.Water.IsSet() {
		t.Error("IsSet does not tell the zero value from Water")
	}
	spirit := alcoholometry.Spirit{VolumeL: 1}
	for name, f := range map[string]func(){
		"ABV":          func() { s.ABV() },
		"ABVAt":        func() { s.ABVAt(celsius(20)) },
		"ABW":          func() { s.ABW() },
		"USProof":      func() { s.USProof() },
		"MoleFraction": func() { s.MoleFraction() },
		"PureL":        func() { spirit.PureL() },
		"MassKg":       func() { spirit.MassKg() },
		"VolumeAt":     func() { spirit.VolumeAt(celsius(20)) },
	} {
		if _, ok := caught(f).(*alcoholometry.UnsetError); !ok {
			t.Errorf("%s of an unset strength does not panic with an UnsetError", name)
		}
	}
	t20 := celsius(20)
	for name, err := range map[string]error{
		"Weighed":                errOf(alcoholometry.Weighed(1, s)),
		"Reading":                errOf(alcoholometry.Reading(s, t20)),
		"ProofReading":           errOf(alcoholometry.ProofReading(s, t20)),
		"DensityInAirKgM3":       errOf(alcoholometry.DensityInAirKgM3(s, t20)),
		"MassFromBalanceKg":      errOf(alcoholometry.MassFromBalanceKg(1, s, t20)),
		"BalanceFromMassKg":      errOf(alcoholometry.BalanceFromMassKg(1, s, t20)),
		"ContractionPct":         errOf(alcoholometry.ContractionPct(s, t20)),
		"FreezingPoint":          errOf(alcoholometry.FreezingPoint(s)),
		"ProofGallons":           errOf(alcoholometry.ProofGallons(spirit)),
		"USGravityInAir":         errOf(alcoholometry.USGravityInAir(s)),
		"USGravityInVacuum":      errOf(alcoholometry.USGravityInVacuum(s)),
		"USPoundsPerWineGallon":  errOf(alcoholometry.USPoundsPerWineGallon(s)),
		"USPoundsPerProofGallon": errOf(alcoholometry.USPoundsPerProofGallon(s)),
		"USWineGallonsPerPound":  errOf(alcoholometry.USWineGallonsPerPound(s)),
		"USProofGallonsPerPound": errOf(alcoholometry.USProofGallonsPerPound(s)),
		"USWaterParts":           errOf(alcoholometry.USWaterParts(s)),
		"USVolumeFactor":         errOf(alcoholometry.USVolumeFactor(s, t20)),
		"CheckSpirit":            alcoholometry.CheckSpirit("test", spirit),
		"CheckSet":               alcoholometry.CheckSet("test", "it", s),
	} {
		var unset *alcoholometry.UnsetError
		if !errors.As(err, &unset) {
			t.Errorf("%s with an unset strength: %v; want an UnsetError", name, err)
		}
	}
	if s.String() != "unset strength" || len(s.Rows()) != 1 || len(spirit.Rows()) != 2 {
		t.Errorf("an unset strength prints as %v, %v, %v", s, s.Rows(), spirit.Rows())
	}
}

func errOf[T any](_ T, err error) error { return err }

// caught returns what f panics with, or nil.
func caught(f func()) (r any) {
	defer func() { r = recover() }()
	f()
	return nil
}
