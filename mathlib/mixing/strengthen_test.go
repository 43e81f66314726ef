package mixing_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
)

func TestStrengthenKeepsMassAndAlcohol(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		to := rapid.Float64Range(30, 60).Draw(t, "to")
		tank := alcoholometry.Spirit{VolumeL: rapid.Float64Range(1, 2000).Draw(t, "litres"), Strength: abv(to - rapid.Float64Range(0.01, 5).Draw(t, "short")), Temp: celsius(rapid.Float64Range(5, 35).Draw(t, "tC"))}
		var with []alcoholometry.Spirit
		for range rapid.IntRange(1, 4).Draw(t, "n") {
			with = append(with, alcoholometry.Spirit{VolumeL: rapid.Float64Range(1, 500).Draw(t, "L"), Strength: abv(rapid.Float64Range(to+1, 97).Draw(t, "abv")), Temp: celsius(rapid.Float64Range(5, 35).Draw(t, "C"))})
		}
		s, err := mixing.Strengthen(tank, abv(to), with...)
		all := append([]alcoholometry.Spirit{tank}, with...)
		reached := the(mixing.Blend(all...)).Strength.ABV()
		if err != nil {
			if reached > to+1e-9 || !strings.Contains(err.Error(), "all the spirits at hand bring the tank to") {
				t.Fatalf("%v; all of them reach %.6f", err, reached)
			}
			return
		}
		if reached < to-1e-9 {
			t.Fatalf("%v, and all of them reach only %.6f", s, reached)
		}
		b := the(mixing.Blend(append([]alcoholometry.Spirit{tank}, s.Added...)...))
		if !near(b.MassKg(), s.Result.MassKg(), 1e-11) || !near(b.PureL(), s.Result.PureL(), 1e-11) || math.Abs(b.Strength.ABV()-to) > 1e-9 || s.Result.Temp != tank.Temp {
			t.Fatalf("%v; blended %v", s, b)
		}
		for i, a := range s.Added { // the later ones only when the earlier are used up
			if a.VolumeL > with[i].VolumeL || a.VolumeL > 0 && i > 0 && s.Added[i-1].VolumeL < with[i-1].VolumeL*(1-1e-12) {
				t.Fatalf("%v", s)
			}
		}
	})
}

func TestStrengthenRefuses(t *testing.T) {
	tank := alcoholometry.Spirit{VolumeL: 100, Strength: abv(42)}
	strong := alcoholometry.Spirit{VolumeL: 10, Strength: abv(96)}
	for want, c := range map[string]struct {
		tank alcoholometry.Spirit
		to   float64
		with []alcoholometry.Spirit
	}{
		"Reduce tells":                    {tank, 41, []alcoholometry.Spirit{strong}},
		"at 42.00 % vol already":          {tank, 42, []alcoholometry.Spirit{strong}},
		"no stronger spirit is given":     {tank, 43, nil},
		"at hand is 0 L":                  {tank, 43, []alcoholometry.Spirit{{Strength: abv(90)}}},
		"spirit 2 at hand is at 43.00":    {tank, 43, []alcoholometry.Spirit{strong, {VolumeL: 1, Strength: abv(43)}}},
		"of spirit 1 at hand is not set":  {tank, 43, []alcoholometry.Spirit{{VolumeL: 1}}},
		"bring the tank to 47.083":        {tank, 50, []alcoholometry.Spirit{strong}},
		"the volume of the tank is 0 L; ": {alcoholometry.Spirit{Strength: abv(42)}, 43, []alcoholometry.Spirit{strong}},
	} {
		if s, err := mixing.Strengthen(c.tank, abv(c.to), c.with...); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v, %v; want %q", s, err, want)
		}
	}
	// The litres that are said to be missing are those that do.
	_, err := mixing.Strengthen(tank, abv(50), strong)
	if err == nil || !strings.Contains(err.Error(), "6.70 L more at 96.00 % vol would do") {
		t.Fatal(err)
	}
	strong.VolumeL += 6.705
	if _, err := mixing.Strengthen(tank, abv(50), strong); err != nil {
		t.Error(err)
	}
}

func TestOnScales(t *testing.T) {
	s := the(mixing.OnScales(313.08, abv(72.4), celsius(15)))
	kg := the(alcoholometry.MassFromBalanceKg(313.08, abv(72.4), celsius(15)))
	if !near(s.MassKg(), kg, 1e-12) || s.Temp != celsius(15) {
		t.Errorf("%v weighs %.6f kg; want %.6f", s, s.MassKg(), kg)
	}
	if _, err := mixing.OnScales(-1, abv(40), celsius(20)); err == nil {
		t.Error("a negative weight")
	}
	r := the(mixing.Reduce(s, abv(43)))
	if !near(r.WaterOnScalesKg(), the(alcoholometry.BalanceFromMassKg(r.WaterKg, alcoholometry.Water, r.WaterTemp)), 1e-14) {
		t.Errorf("%v", r.WaterOnScalesKg())
	}
}
