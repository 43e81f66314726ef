package mixing_test

import (
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

func TestBlendKeepsMassAndAlcohol(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 12).Draw(t, "n")
		var spirits []alcoholometry.Spirit
		kg, pureL := 0.0, 0.0
		low, high := 100.0, 0.0
		for range n {
			s := alcoholometry.Spirit{
				VolumeL:  rapid.Float64Range(1e-3, 1e5).Draw(t, "litres"),
				Strength: abw(rapid.Float64Range(0, 100).Draw(t, "massPct")),
				Temp:     celsius(rapid.Float64Range(0, 40).Draw(t, "tC")),
			}
			spirits = append(spirits, s)
			kg += s.MassKg()
			pureL += s.PureL()
			low, high = min(low, s.Strength.ABW()), max(high, s.Strength.ABW())
		}
		b := the(mixing.Blend(spirits...))
		if !near(b.MassKg(), kg, 1e-12) || !near(b.PureL(), pureL, 1e-12) {
			t.Fatalf("%.15g kg with %.15g L of pure alcohol became %.15g and %.15g", kg, pureL, b.MassKg(), b.PureL())
		}
		if w := b.Strength.ABW(); w < low-1e-10 || w > high+1e-10 {
			t.Fatalf("a blend of %.6g to %.6g %% by mass has %.6g", low, high, w)
		}
	})
}

func TestTemperatureOfABlend(t *testing.T) {
	a := alcoholometry.Spirit{VolumeL: 1, Strength: abv(60), Temp: celsius(12)}
	b := alcoholometry.Spirit{VolumeL: 2, Strength: abv(40), Temp: celsius(12)}
	c := alcoholometry.Spirit{VolumeL: 2, Strength: abv(40), Temp: celsius(13)}
	if got := the(mixing.Blend(a, b)).Temp; got != celsius(12) {
		t.Errorf("all at 12 °C: the blend is stated at %v", got)
	}
	for _, in := range [][]alcoholometry.Spirit{{a, c}, {c, a, a}, {a, c, a}} {
		if got := the(mixing.Blend(in...)).Temp; got != (quantity.Temperature{}) {
			t.Errorf("at 12 and 13 °C: the blend is stated at %v; want 20 °C", got)
		}
	}
	if got := the(mixing.Blend(a)); !near(got.VolumeL, a.VolumeL, 1e-12) || got.Strength != a.Strength || got.Temp != a.Temp {
		t.Errorf("Blend of one = %v; want %v", got, a)
	}
}

func TestBlendRefuses(t *testing.T) {
	fine := alcoholometry.Spirit{VolumeL: 1, Strength: abv(60)}
	for name, in := range map[string][]alcoholometry.Spirit{
		"nothing":         {},
		"unset strength":  {fine, {VolumeL: 1}},
		"negative volume": {fine, {VolumeL: -0.5, Strength: abv(40)}},
		"hot":             {fine, {VolumeL: 1, Strength: abv(40), Temp: celsius(60)}},
		"no litres":       {{Strength: abv(40)}},
	} {
		if got, err := mixing.Blend(in...); err == nil {
			t.Errorf("%s: %v and no error", name, got)
		}
	}
	if got := the(mixing.Blend(fine, alcoholometry.Spirit{Strength: abv(40)})); !near(got.VolumeL, 1, 1e-12) {
		t.Errorf("an empty jar adds to the blend: %v", got)
	}
}
