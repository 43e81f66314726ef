package mixing_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
)

func TestSugarInWaterAgainstCRC(t *testing.T) {
	for _, r := range tableIn(t, "mixing", "sucrose_water_20C.csv") {
		pct, want := r.number("mass_pct"), 1000*r.number("density_g_cm3")
		// The sugar in a litre by the table's own density.
		got := the(mixing.LiqueurDensityKgM3(mixing.Liqueur{Strength: alcoholometry.Water, SugarGL: pct / 100 * want}, celsius(20)))
		tol := 0.0012 * want
		if pct > 40 {
			tol = 0.007 * want
		}
		if math.Abs(got-want) > tol {
			t.Errorf("%g %% of sugar by mass: %.1f kg/m³; the CRC Handbook gives %.1f ± %.1f", pct, got, want, tol)
		}
	}
}

func drawLiqueur(t *rapid.T, name string) mixing.Liqueur {
	return mixing.Liqueur{VolumeL: rapid.Float64Range(0.1, 5000).Draw(t, name+"L"), Strength: abv(rapid.Float64Range(2, 55).Draw(t, name+"ABV")),
		SugarGL: rapid.SampledFrom([]float64{0, 5, 50, 120, 250, 400}).Draw(t, name+"GL"), Temp: celsius(rapid.Float64Range(2, 38).Draw(t, name+"C"))}
}

func TestLiqueursKeepMassAlcoholAndSugar(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawLiqueur(t, "a"), drawLiqueur(t, "b")
		sum := the(mixing.BlendLiqueurs(a, b))
		same := func(what string, got, want float64) {
			if !near(got, want, 1e-11) && math.Abs(got-want) > 1e-12 {
				t.Fatalf("%s: %.14g; want %.14g", what, got, want)
			}
		}
		same("mass", sum.MassKg(), a.MassKg()+b.MassKg())
		same("pure alcohol", sum.PureL(), a.PureL()+b.PureL())
		same("sugar", sum.SugarKg(), a.SugarKg()+b.SugarKg())
		// The strength of the whole is pure alcohol over volume at 20 °C.
		at20 := a
		at20.Temp = celsius(20)
		same("strength", 100*at20.PureL()/at20.VolumeL, a.Strength.ABV())
		same("sugar in a litre", 1000*at20.SugarKg()/at20.VolumeL, a.SugarGL)

		to := rapid.Float64Range(1, a.Strength.ABV()).Draw(t, "to")
		r := the(mixing.ReduceLiqueur(a, abv(to), mixing.WaterAt(celsius(12)), mixing.ResultAt(celsius(15))))
		same("mass", r.Result.MassKg(), a.MassKg()+r.WaterKg)
		same("pure alcohol", r.Result.PureL(), a.PureL())
		same("sugar", r.Result.SugarKg(), a.SugarKg())
		same("strength", r.Result.Strength.ABV(), to)

		if a.SugarGL == 0 { // then it is a spirit
			plain := the(mixing.Reduce(alcoholometry.Spirit{VolumeL: a.VolumeL, Strength: a.Strength, Temp: a.Temp}, abv(to)))
			same("water", r.WaterKg, plain.WaterKg)
			same("mass", a.MassKg(), plain.SpiritKg)
		}
		m := the(mixing.MakeLiqueur(a, mixing.LiqueurFrom{Spirit: abv(96)}))
		same("mass", m.SpiritKg+m.SugarKg+m.WaterKg, a.MassKg())
		same("pure alcohol", alcoholometry.Spirit{VolumeL: m.SpiritL, Strength: abv(96)}.PureL(), a.PureL())
		// Sugar put into what is left of it makes it again.
		base := a.Base()
		again := the(mixing.Sweeten(mixing.Liqueur{VolumeL: base.VolumeL, Strength: base.Strength, Temp: base.Temp}, a.SugarKg()))
		same("litres", again.VolumeL, a.VolumeL)
		same("strength", again.Strength.ABV(), a.Strength.ABV())
		same("sugar in a litre", again.SugarGL, a.SugarGL)
	})
}

func TestSyrupBringsSugarAndWater(t *testing.T) {
	wanted := mixing.Liqueur{VolumeL: 100, Strength: abv(28), SugarGL: 220}
	dry := the(mixing.MakeLiqueur(wanted, mixing.LiqueurFrom{Spirit: abv(96)}))
	syrup := the(mixing.MakeLiqueur(wanted, mixing.LiqueurFrom{Spirit: abv(96), SyrupPct: 65}))
	if !near(syrup.SyrupKg, 22/0.65, 1e-12) || !near(dry.WaterKg-syrup.WaterKg, 22*0.35/0.65, 1e-10) || dry.SpiritKg != syrup.SpiritKg {
		t.Errorf("%v\n%v", dry, syrup)
	}
	for want, from := range map[string]mixing.LiqueurFrom{
		"kg more water than the liqueur takes": {Spirit: abv(45), SyrupPct: 40},
		"is too weak":                          {Spirit: abv(20)},
		"not set":                              {},
		"the syrup's sugar is 120 % mass":      {Spirit: abv(96), SyrupPct: 120},
	} {
		if r, err := mixing.MakeLiqueur(wanted, from); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v, %v; want %q", r, err, want)
		}
	}
}

func TestLiqueursThatAreNone(t *testing.T) {
	for want, l := range map[string]mixing.Liqueur{
		"not set":                        {VolumeL: 1},
		"sugar of liqueur 1 is 900 g/L":  {VolumeL: 1, Strength: abv(20), SugarGL: 900},
		"no room for the alcohol":        {VolumeL: 1, Strength: abv(90), SugarGL: 300},
		"volume of liqueur 1 is -1 L":    {VolumeL: -1, Strength: abv(20)},
		"temperature is 60 °C":           {VolumeL: 1, Strength: abv(20), Temp: celsius(60)},
		"all liqueurs have 0 L; give at": {Strength: abv(20)},
	} {
		if got, err := mixing.BlendLiqueurs(l); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v, %v; want %q", got, err, want)
		}
	}
	if _, err := mixing.BlendLiqueurs(); err == nil {
		t.Error("a blend of nothing")
	}
	l := mixing.Liqueur{VolumeL: 10, Strength: abv(20), SugarGL: 100}
	if got, err := mixing.ReduceLiqueur(l, abv(21)); err == nil {
		t.Errorf("%v and no error", got)
	}
	if got, err := mixing.Sweeten(l, 20); err == nil {
		t.Errorf("%v and no error", got)
	}
	defer func() {
		if recover() == nil {
			t.Error("a liqueur without a strength has a mass")
		}
	}()
	_ = mixing.Liqueur{VolumeL: 1}.MassKg()
}
