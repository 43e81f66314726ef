package alcoholometry_test

import (
	"math"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

func TestSingleFiguresFromPrint(t *testing.T) {
	ethanol, water := abw(100), alcoholometry.Water
	over := func(s alcoholometry.Strength, tC float64, other alcoholometry.Strength, otherC float64) float64 {
		return density(s, celsius(tC)) / density(other, celsius(otherC))
	}
	old95 := the(alcoholometry.ABVAt(95, celsius(15)))
	reckon := map[string]func() float64{
		"density_water_20C_kgM3":        func() float64 { return density(water, celsius(20)) },
		"density_ethanol_20C_kgM3":      func() float64 { return density(ethanol, celsius(20)) },
		"ethanol_over_water_20C_vacuum": func() float64 { return over(ethanol, 20, water, 20) },
		"ethanol_over_water_60F_vacuum": func() float64 { return the(alcoholometry.USGravityInVacuum(ethanol)) },
		"ethanol_over_water_60F_air":    func() float64 { return the(alcoholometry.USGravityInAir(ethanol)) },
		"ethanol_0C_over_water_3.9C":    func() float64 { return over(ethanol, 0, water, 3.9) },
		"ethanol_15C_over_water_3.9C":   func() float64 { return over(ethanol, 15, water, 3.9) },
		"ethanol_30C_over_water_3.9C":   func() float64 { return over(ethanol, 30, water, 3.9) },
		"abv95_15C_mass_pct":            func() float64 { return old95.ABW() },
		"abv95_15C_over_water_15C":      func() float64 { return over(old95, 15, water, 15) },
		"abv95_15C_over_water_4C":       func() float64 { return over(old95, 15, water, 4) },
		"abv95_15C_water_parts":         func() float64 { return 100 * over(old95, 15, water, 15) * (1 - old95.ABW()/100) },
		"density_23C_of_804.20_at_20C_kgM3": func() float64 {
			return density(the(alcoholometry.StrengthFromDensity(804.20, celsius(20))), celsius(23))
		},
		"density_abv40_20C_kgM3":      func() float64 { return density(abv(40), celsius(20)) },
		"density_mass50_20C_kgM3":     func() float64 { return density(abw(50), celsius(20)) },
		"volume_100_plus_100_15C_L":   func() float64 { _, v := together(100, 100, celsius(15)); return v },
		"abv_100_plus_100_15C_pct":    func() float64 { s, _ := together(100, 100, celsius(15)); return s.ABVAt(celsius(15)) },
		"volume_52.3_plus_47.7_15C_L": func() float64 { _, v := together(52.3, 47.7, celsius(15)); return v },
		"abv70_mass_pct":              func() float64 { return abv(70).ABW() },
		"density_abv70_20C_kgM3":      func() float64 { return density(abv(70), celsius(20)) },
		"abv50_mass_pct":              func() float64 { return abv(50).ABW() },
		"density_abv50_20C_kgM3":      func() float64 { return density(abv(50), celsius(20)) },
		"abv96_mass_pct":              func() float64 { return abv(96).ABW() },
		"density_abv96_20C_kgM3":      func() float64 { return density(abv(96), celsius(20)) },
	}
	seen := map[string]bool{}
	for _, r := range table(t, "verification.csv") {
		name := r.text("quantity")
		f, ok := reckon[name]
		if !ok {
			t.Errorf("nothing reckons %s", name)
			continue
		}
		seen[name] = true
		if got, want, tol := f(), r.number("value"), r.number("tolerance"); math.Abs(got-want) > tol {
			t.Errorf("%s = %.6g; %s gives %.6g ± %g", name, got, r.text("source"), want, tol)
		}
	}
	if len(seen) != len(reckon) {
		t.Errorf("%d of %d figures were checked", len(seen), len(reckon))
	}
}

// together returns the strength and the volume, L, of ethanol and water of the given volumes, all at t.
func together(ethanolL, waterL float64, t quantity.Temperature) (alcoholometry.Strength, float64) {
	e := ethanolL * density(abw(100), t)
	w := waterL * density(alcoholometry.Water, t)
	s := abw(100 * e / (e + w))
	return s, (e + w) / density(s, t)
}

func TestContraction(t *testing.T) {
	for _, r := range table(t, "contraction.csv") {
		e, w, temp := r.number("ethanol_L"), r.number("water_L"), celsius(r.number("t_C"))
		s, _ := together(e, w, temp)
		got := (e + w) * (1 - the(alcoholometry.ContractionPct(s, temp))/100)
		if want, tol := r.number("volume_L"), r.number("tolerance_L"); math.Abs(got-want) > tol {
			t.Errorf("%g L ethanol + %g L water at %v = %.3f L; %s gives %.2f ± %g", e, w, temp, got, r.text("source"), want, tol)
		}
	}
	for _, s := range []alcoholometry.Strength{alcoholometry.Water, abv(100)} {
		if got := the(alcoholometry.ContractionPct(s, celsius(20))); math.Abs(got) > 1e-12 {
			t.Errorf("ContractionPct(%v) = %g; nothing contracts alone", s, got)
		}
	}
	if _, err := alcoholometry.ContractionPct(abv(60), celsius(-5)); err == nil {
		t.Error("ContractionPct at -5 °C gave no error, although water is ice there")
	}
}

// Goldens: our own figures, which show that nothing moved and are no source.
func TestContractionGolden(t *testing.T) {
	best, at := 0.0, 0.0
	for pct := 0.0; pct <= 100; pct += 0.1 {
		if c := the(alcoholometry.ContractionPct(abv(pct), celsius(20))); c > best {
			best, at = c, pct
		}
	}
	if math.Abs(best-3.546) > 6e-4 || math.Abs(at-54.4) > 0.25 {
		t.Errorf("largest contraction %.4f %% at %.1f %% vol; golden 3.546 at 54.4", best, at)
	}
	if _, v := together(50, 50, celsius(20)); math.Abs(v-96.463) > 6e-4 {
		t.Errorf("50 L + 50 L at 20 °C = %.4f L; golden 96.463", v)
	}
	if _, v := together(50, 50, celsius(15)); math.Abs(v-96.370) > 6e-4 {
		t.Errorf("50 L + 50 L at 15 °C = %.4f L; golden 96.370", v)
	}
}
