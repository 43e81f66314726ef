package mixing_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

func TestMakeAgainstPharmacopoeia(t *testing.T) {
	const tolML = 0.25
	for _, r := range table(t, "pharmacopoeia_dilution_20C.csv") {
		from, to := r.number("from_pct_vol"), r.number("to_pct_vol")
		got := the(mixing.Make(alcoholometry.Spirit{VolumeL: 1, Strength: abv(to)}, abv(from)))
		if want := r.number("spirit_mL"); math.Abs(1000*got.SpiritL-want) > tolML {
			t.Errorf("1 L at %g %% vol takes %.2f mL at %g %% vol; the State Pharmacopoeia of the USSR gives %.1f ± %g", to, 1000*got.SpiritL, from, want, tolML)
		}
		if want := r.number("water_mL"); math.Abs(1000*got.WaterL-want) > tolML {
			t.Errorf("1 L at %g %% vol from %g %% vol takes %.2f mL of water; the State Pharmacopoeia of the USSR gives %.1f ± %g", to, from, 1000*got.WaterL, want, tolML)
		}
	}
}

func TestReduceAgainstGayLussac(t *testing.T) {
	t15 := celsius(15)
	misprints, checked := 0, 0
	for _, r := range table(t, "gay_lussac_dilution_15C.csv") {
		from, to, want := r.number("from_pct_vol"), r.number("to_pct_vol"), r.number("water_mL")
		spirit := alcoholometry.Spirit{VolumeL: 0.1, Strength: the(alcoholometry.ABVAt(from, t15)), Temp: t15}
		got := 1000 * the(mixing.Reduce(spirit, the(alcoholometry.ABVAt(to, t15)), mixing.WaterAt(t15))).WaterL
		tol := math.Max(0.005*want, 0.3)
		if r.text("flag") == "misprint" {
			// Held to be misprinted: each leaves the run of its neighbours in the table by a digit. If one of them
			// fitted, the flag would be wrong.
			misprints++
			tol = math.Min(tol, 0.25)
			if math.Abs(got-want) <= tol {
				t.Errorf("%g to %g %% vol: %.2f mL of water agrees with %.2f, which is held to be a misprint", from, to, got, want)
			}
			continue
		}
		checked++
		if math.Abs(got-want) > tol {
			t.Errorf("100 mL from %g to %g %% vol takes %.2f mL of water; Gay-Lussac gives %.2f ± %.2f", from, to, got, want, tol)
		}
	}
	if misprints != 2 || checked < 100 {
		t.Fatalf("%d rows checked, %d misprints", checked, misprints)
	}
}

func near(a, b, rel float64) bool { return math.Abs(a-b) <= rel*math.Max(math.Abs(a), math.Abs(b)) }

func TestReduceKeepsMassAndAlcohol(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := rapid.Float64Range(1, 100).Draw(t, "from")
		to := rapid.Float64Range(0.5, from).Draw(t, "to")
		temp := func(name string) quantity.Temperature { return celsius(rapid.Float64Range(0, 40).Draw(t, name)) }
		spirit := alcoholometry.Spirit{VolumeL: rapid.Float64Range(1e-3, 1e6).Draw(t, "litres"), Strength: abv(from), Temp: temp("spiritC")}
		r := the(mixing.Reduce(spirit, abv(to), mixing.WaterAt(temp("waterC")), mixing.ResultAt(temp("resultC"))))
		water := alcoholometry.Spirit{VolumeL: r.WaterL, Strength: alcoholometry.Water, Temp: r.WaterTemp}
		for _, c := range []struct {
			what string
			a, b float64
		}{
			{"spirit", r.SpiritKg, spirit.MassKg()},
			{"water", r.WaterKg, water.MassKg()},
			{"mass", r.SpiritKg + r.WaterKg, r.Result.MassKg()},
			{"pure alcohol", spirit.PureL(), r.Result.PureL()},
			{"litres of spirit", r.SpiritL, spirit.VolumeL},
		} {
			if !near(c.a, c.b, 1e-12) {
				t.Fatalf("%s: %.15g became %.15g", c.what, c.a, c.b)
			}
		}
		if r.WaterKg < 0 || r.WarmingC < -1e-9 {
			t.Fatalf("%.6g kg of water, warming %.6g °C", r.WaterKg, r.WarmingC)
		}
		// Make is the way back.
		m := the(mixing.Make(r.Result, spirit.Strength, mixing.SpiritAt(spirit.Temp), mixing.WaterAt(r.WaterTemp)))
		if !near(m.SpiritL, spirit.VolumeL, 1e-11) || math.Abs(m.WaterKg-r.WaterKg) > 1e-11*r.Result.MassKg() || m.Result != r.Result {
			t.Fatalf("Make gives %v; Reduce %v", m, r)
		}
		// And so is blending with the water.
		b := the(mixing.Blend(spirit, water))
		if !near(b.MassKg(), r.Result.MassKg(), 1e-12) || math.Abs(b.Strength.ABV()-to) > 1e-9 {
			t.Fatalf("Blend gives %v; Reduce %v", b, r.Result)
		}
	})
}

func TestMoreWaterForLess(t *testing.T) {
	spirit := alcoholometry.Spirit{VolumeL: 100, Strength: abv(96)}
	before := math.Inf(1)
	for to := 1.0; to < 96; to++ {
		r := the(mixing.Reduce(spirit, abv(to)))
		if r.WaterL >= before || r.ContractionL <= 0 {
			t.Fatalf("to %g %% vol: %.4f L of water (before %.4f), contraction %.4f L", to, r.WaterL, before, r.ContractionL)
		}
		before = r.WaterL
	}
}

// Goldens: our own figures, which show that nothing moved and are no source.
func TestReduceGolden(t *testing.T) {
	wanted := alcoholometry.Spirit{VolumeL: 600, Strength: abv(43)}
	r := the(mixing.Make(wanted, abv(72.4)))
	if math.Abs(r.SpiritL-356.35) > 6e-3 || math.Abs(r.WaterKg-252.41) > 6e-3 {
		t.Errorf("600 L at 43 from 72.4 %% vol: %.4f L and %.4f kg of water; golden 356.35 and 252.41", r.SpiritL, r.WaterKg)
	}
	if got := the(mixing.Reduce(alcoholometry.Spirit{VolumeL: 100, Strength: abv(96)}, abv(40))).WaterL; math.Abs(got-147.05) > 6e-3 {
		t.Errorf("100 L from 96 to 40 %% vol takes %.4f L of water; golden 147.05", got)
	}
	jar := func(pct float64) alcoholometry.Spirit { return alcoholometry.Spirit{VolumeL: 0.2, Strength: abv(pct)} }
	b := the(mixing.Blend(jar(76), jar(72), jar(65)))
	if math.Abs(1000*b.VolumeL-599.8) > 0.06 || math.Abs(b.Strength.ABV()-71.02) > 6e-3 {
		t.Errorf("three jars of 200 mL at 76, 72, 65 %% vol: %.3f mL at %.4f %% vol; golden 599.8 at 71.02", 1000*b.VolumeL, b.Strength.ABV())
	}
}

func TestSameStrengthNeedsNoWater(t *testing.T) {
	warm := celsius(30)
	s := alcoholometry.Spirit{VolumeL: 10, Strength: abv(43), Temp: warm}
	r := the(mixing.Reduce(s, abv(43)))
	if r.WaterKg != 0 || r.WaterL != 0 || r.WarmingC != 0 || r.ContractionL != 0 || r.MixedAt != warm {
		t.Errorf("Reduce to the same strength: %v, tank at %v", r, r.MixedAt)
	}
	if !near(r.Result.VolumeL, s.VolumeAt(celsius(20)), 1e-12) {
		t.Errorf("10 L at 30 °C are %.6f L at 20 °C; want %.6f", r.Result.VolumeL, s.VolumeAt(celsius(20)))
	}
	w := the(mixing.Reduce(alcoholometry.Spirit{VolumeL: 1, Strength: alcoholometry.Water}, alcoholometry.Water))
	if w.WaterKg != 0 {
		t.Errorf("water to water: %v", w)
	}
}

func TestReduceRefuses(t *testing.T) {
	fine := alcoholometry.Spirit{VolumeL: 1, Strength: abv(72.4)}
	no := func(_ mixing.Reduction, err error) error { return err }
	var unset alcoholometry.Strength
	for name, err := range map[string]error{
		"raising":         no(mixing.Reduce(fine, abv(80))),
		"down to nothing": no(mixing.Reduce(fine, alcoholometry.Water)),
		"raising, Make":   no(mixing.Make(fine, abv(40))),
	} {
		var s *mixing.StrengthError
		if !errors.As(err, &s) {
			t.Errorf("%s: %v; want a StrengthError", name, err)
		}
	}
	for name, err := range map[string]error{
		"unset target":       no(mixing.Reduce(fine, unset)),
		"unset spirit":       no(mixing.Reduce(alcoholometry.Spirit{VolumeL: 1}, abv(40))),
		"unset, Make":        no(mixing.Make(alcoholometry.Spirit{VolumeL: 1}, abv(40))),
		"unset source, Make": no(mixing.Make(fine, unset)),
	} {
		var u *alcoholometry.UnsetError
		if !errors.As(err, &u) {
			t.Errorf("%s: %v; want an UnsetError", name, err)
		}
	}
	for name, err := range map[string]error{
		"negative volume": no(mixing.Reduce(alcoholometry.Spirit{VolumeL: -1, Strength: abv(60)}, abv(40))),
		"no number":       no(mixing.Reduce(alcoholometry.Spirit{VolumeL: math.NaN(), Strength: abv(60)}, abv(40))),
		"hot spirit":      no(mixing.Reduce(alcoholometry.Spirit{VolumeL: 1, Strength: abv(60), Temp: celsius(50)}, abv(40))),
		"icy water":       no(mixing.Reduce(fine, abv(40), mixing.WaterAt(celsius(-1)))),
		"hot result":      no(mixing.Reduce(fine, abv(40), mixing.ResultAt(celsius(41)))),
		"hot spirit, M":   no(mixing.Make(fine, abv(80), mixing.SpiritAt(celsius(41)))),
	} {
		var r *quantity.RangeError
		if !errors.As(err, &r) {
			t.Errorf("%s: %v; want a RangeError", name, err)
		}
	}
	if err := no(mixing.Reduce(alcoholometry.Spirit{Strength: abv(60)}, abv(40))); err == nil {
		t.Error("0 L: no error")
	}
	if err := no(mixing.Reduce(fine, abv(40), mixing.SpiritAt(celsius(15)))); err == nil {
		t.Error("Reduce with SpiritAt: no error")
	}
	const want = "mixing.Reduce: cannot raise 72.40 % vol to 80.00 % vol by adding water"
	if err := no(mixing.Reduce(fine, abv(80))); err.Error() != want {
		t.Errorf("got  %v\nwant %s", err, want)
	}
}

func BenchmarkReduce(b *testing.B) {
	spirit, to := alcoholometry.Spirit{VolumeL: 356, Strength: abv(72.4)}, abv(43)
	for b.Loop() {
		the(mixing.Reduce(spirit, to))
	}
}
