package alcoholometry_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

func TestTenDaysOfBottling(t *testing.T) {
	// By the definition of strength by volume: 360 bottles a day for 10 days, 0.70 L at 60 % vol, at 20 °C.
	volumeL := 360 * 10 * 0.70
	s := alcoholometry.Spirit{VolumeL: volumeL, Strength: abv(60)}
	if math.Abs(volumeL-2520) > 1e-9 || math.Abs(s.PureL()-1512) > 1e-9 {
		t.Errorf("%.6f L hold %.6f L of pure alcohol; want 2520 and 1512", volumeL, s.PureL())
	}
}

func TestPureAlcoholAndMassDoNotDependOnTheTemperature(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, temp := liquid(t)
		other := celsius(rapid.Float64Range(0, 40).Draw(t, "otherC"))
		a := alcoholometry.Spirit{VolumeL: rapid.Float64Range(0, 1e6).Draw(t, "litres"), Strength: s, Temp: temp}
		b := alcoholometry.Spirit{VolumeL: a.VolumeAt(other), Strength: s, Temp: other}
		if !near(a.MassKg(), b.MassKg(), 1e-12) || !near(a.PureL(), b.PureL(), 1e-12) || !near(b.VolumeAt(temp), a.VolumeL, 1e-12) {
			t.Fatalf("%v: %.15g kg, %.15g L pure; as %v: %.15g kg, %.15g L pure", a, a.MassKg(), a.PureL(), b, b.MassKg(), b.PureL())
		}
		w := the(alcoholometry.Weighed(a.MassKg(), s))
		if !near(w.MassKg(), a.MassKg(), 1e-12) || w.Temp != (quantity.Temperature{}) {
			t.Fatalf("Weighed(%.15g kg) has %.15g kg at %v", a.MassKg(), w.MassKg(), w.Temp)
		}
	})
}

// near reports whether a and b are equal to a share of rel.
func near(a, b, rel float64) bool { return math.Abs(a-b) <= rel*math.Max(math.Abs(a), math.Abs(b)) }

func TestWeighingInAir(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, temp := liquid(t)
		kg := rapid.Float64Range(0, 1e5).Draw(t, "kg")
		shown := the(alcoholometry.BalanceFromMassKg(kg, s, temp))
		if back := the(alcoholometry.MassFromBalanceKg(shown, s, temp)); !near(back, kg, 1e-12) {
			t.Fatalf("%.15g kg shown as %.15g came back as %.15g", kg, shown, back)
		}
		// What a litre shows on the balance is its density in air.
		if want := the(alcoholometry.DensityInAirKgM3(s, temp)); !near(the(alcoholometry.BalanceFromMassKg(density(s, temp), s, temp)), want, 1e-12) {
			t.Fatalf("density in air %.9g", want)
		}
	})
	// Golden: 0.7 L at 60 % vol weigh 635.6 g in air.
	s := alcoholometry.Spirit{VolumeL: 0.7, Strength: abv(60)}
	if got := 1000 * the(alcoholometry.BalanceFromMassKg(s.MassKg(), s.Strength, s.Temp)); math.Abs(got-635.6) > 0.06 {
		t.Errorf("0.7 L at 60 %% vol shows %.2f g; golden 635.6", got)
	}
}

func TestBottleWarmedGolden(t *testing.T) {
	s := alcoholometry.Spirit{VolumeL: 0.7, Strength: abv(60)}
	for _, c := range []struct{ tC, goldenML float64 }{{10, 694.0}, {28, 705.0}} {
		if got := 1000 * s.VolumeAt(celsius(c.tC)); math.Abs(got-c.goldenML) > 0.06 {
			t.Errorf("700 mL (20 °C) at 60 %% vol takes up %.2f mL at %g °C; golden %.1f", got, c.tC, c.goldenML)
		}
	}
}

func TestSpiritRefuses(t *testing.T) {
	for name, s := range map[string]alcoholometry.Spirit{
		"negative volume": {VolumeL: -1, Strength: abv(40)},
		"no number":       {VolumeL: math.NaN(), Strength: abv(40)},
		"endless":         {VolumeL: math.Inf(1), Strength: abv(40)},
		"hot":             {VolumeL: 1, Strength: abv(40), Temp: celsius(50)},
		"frozen":          {VolumeL: 1, Strength: abv(5), Temp: celsius(-10)},
	} {
		if _, ok := caught(func() { s.PureL() }).(*quantity.RangeError); !ok {
			t.Errorf("%s: PureL does not panic with a RangeError", name)
		}
		if _, err := alcoholometry.ProofGallons(s); err == nil {
			t.Errorf("%s: ProofGallons gives no error", name)
		}
		if len(s.Rows()) != 2 || s.String() == "" {
			t.Errorf("%s: prints as %v, %v", name, s, s.Rows())
		}
	}
	fine := alcoholometry.Spirit{VolumeL: 1, Strength: abv(40)}
	if _, ok := caught(func() { fine.VolumeAt(celsius(41)) }).(*quantity.RangeError); !ok {
		t.Error("VolumeAt(41 °C) does not panic with a RangeError")
	}
	if _, err := alcoholometry.Weighed(-1, abv(40)); err == nil {
		t.Error("Weighed(-1 kg) gives no error")
	}
	if _, err := alcoholometry.MassFromBalanceKg(-1, abv(40), celsius(20)); err == nil {
		t.Error("MassFromBalanceKg(-1 kg) gives no error")
	}
}
