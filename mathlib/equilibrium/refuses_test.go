package equilibrium_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/equilibrium"
	"swanneck/mathlib/quantity"
)

func TestRangesAreRefused(t *testing.T) {
	pair := the(equilibrium.NewPair())
	wine := abv(12)
	for name, err := range map[string]error{
		"vacuum":             second(equilibrium.Bubble(wine, kPa(1.9))),
		"pressure cooker":    second(equilibrium.Bubble(wine, kPa(1200))),
		"dew in vacuum":      second(equilibrium.Dew(wine, kPa(1))),
		"hot":                second(equilibrium.BubblePressure(wine, celsius(190))),
		"cold":               second(equilibrium.BubblePressure(wine, celsius(0))),
		"low pressure":       second(equilibrium.BubblePressure(alcoholometry.Water, celsius(10))),
		"high pressure":      second(equilibrium.BubblePressure(abv(96), celsius(180))),
		"dew, hot":           second(equilibrium.DewPressure(wine, celsius(200))),
		"azeotrope, vacuum":  second(equilibrium.Azeotrope(kPa(11.9))),
		"azeotrope, 300 kPa": second(equilibrium.Azeotrope(kPa(300))),
		"share":              second(equilibrium.Flash(wine, quantity.Pressure{}, 1.1)),
		"negative share":     second(equilibrium.Flash(wine, quantity.Pressure{}, -0.1)),
		"share, FlashAt":     second(equilibrium.FlashAt(wine, celsius(90), math.NaN())),
		"flash in vacuum":    second(equilibrium.Flash(wine, kPa(1), 0.5)),
		"flash, hot":         second(equilibrium.FlashAt(wine, celsius(190), 0.5)),
		"FlashTP, hot":       second(equilibrium.FlashTP(wine, celsius(190), quantity.Pressure{})),
		"FlashTP, vacuum":    second(equilibrium.FlashTP(wine, celsius(90), kPa(1))),
		"diagram":            second(equilibrium.Txy(kPa(1), 10)),
		"diagram, cold":      second(equilibrium.Pxy(celsius(0.5), 10)),
		"volatility":         second(equilibrium.VolatilityOf("methanol", wine, kPa(1))),
		"acetal, hot":        second(equilibrium.VolatilityOf("acetal", wine, kPa(300))),
		"camphor, cold":      second(equilibrium.RelativeVolatility("camphor", wine, kPa(5))),
		"x":                  second(pair.Bubble(1.0001, 100)),
		"x, no number":       second(pair.Bubble(math.NaN(), 100)),
		"p, no number":       second(pair.Bubble(0.1, math.NaN())),
		"y":                  second(pair.Dew(-1e-9, 100)),
		"x at":               second(pair.BubbleAt(2, 350)),
		"T, no number":       second(pair.BubbleAt(0.5, math.NaN())),
		"y at":               second(pair.DewAt(2, 350)),
		"T":                  second(pair.DewAt(0.5, 200)),
		"z":                  second(pair.Flash(2, 100, 0.5)),
		"z at":               second(pair.FlashAt(-1, 350, 0.5)),
	} {
		var r *quantity.RangeError
		if !errors.As(err, &r) || !strings.HasPrefix(r.Func, "equilibrium.") {
			t.Errorf("%s: %v; want a RangeError", name, err)
		}
	}
	for name, err := range map[string]error{
		"Bubble":             second(equilibrium.Bubble(alcoholometry.Strength{}, quantity.Pressure{})),
		"BubblePressure":     second(equilibrium.BubblePressure(alcoholometry.Strength{}, celsius(90))),
		"Dew":                second(equilibrium.Dew(alcoholometry.Strength{}, quantity.Pressure{})),
		"DewPressure":        second(equilibrium.DewPressure(alcoholometry.Strength{}, celsius(90))),
		"Flash":              second(equilibrium.Flash(alcoholometry.Strength{}, quantity.Pressure{}, 0.1)),
		"FlashAt":            second(equilibrium.FlashAt(alcoholometry.Strength{}, celsius(90), 0.1)),
		"FlashTP":            second(equilibrium.FlashTP(alcoholometry.Strength{}, celsius(90), quantity.Pressure{})),
		"VolatilityOf":       second(equilibrium.VolatilityOf("methanol", alcoholometry.Strength{}, quantity.Pressure{})),
		"RelativeVolatility": second(equilibrium.RelativeVolatility("methanol", alcoholometry.Strength{}, quantity.Pressure{})),
	} {
		var u *alcoholometry.UnsetError
		if !errors.As(err, &u) || !strings.HasPrefix(err.Error(), "equilibrium."+name+": ") {
			t.Errorf("%s: %v; want an UnsetError", name, err)
		}
	}
	for _, points := range []int{-1, 0, 1, 10002} {
		if _, err := equilibrium.Txy(quantity.Pressure{}, points); err == nil {
			t.Errorf("%d points: no error", points)
		}
	}
	if _, _, err := equilibrium.XY(kPa(1), 10); err == nil || !strings.HasPrefix(err.Error(), "equilibrium.XY: ") {
		t.Errorf("XY in vacuum: %v", err)
	}
}

func TestUnknownNamesAreRefused(t *testing.T) {
	_, err := equilibrium.RelativeVolatility("isoamil alcohol", abv(40), quantity.Pressure{})
	var u *compound.UnknownError
	if !errors.As(err, &u) || u.Nearest[0] != "isoamyl alcohol" || !strings.HasPrefix(err.Error(), "equilibrium.RelativeVolatility: ") {
		t.Errorf("isoamil alcohol: %v", err)
	}
	use := equilibrium.UseModel("Margules")
	for name, err := range map[string]error{
		"NewPair":      second(equilibrium.NewPair(use)),
		"Bubble":       second(equilibrium.Bubble(abv(40), quantity.Pressure{}, use)),
		"Azeotrope":    second(equilibrium.Azeotrope(quantity.Pressure{}, use)),
		"Txy":          second(equilibrium.Txy(quantity.Pressure{}, 5, use)),
		"VolatilityOf": second(equilibrium.VolatilityOf("methanol", abv(40), quantity.Pressure{}, use)),
	} {
		var m *equilibrium.UnknownModelError
		if !errors.As(err, &m) || !strings.Contains(err.Error(), "equilibrium."+name+": no model is called \"Margules\"; there are NRTL, ") {
			t.Errorf("%s: %v", name, err)
		}
	}
	if a, b := the(equilibrium.Bubble(abv(40), quantity.Pressure{}, equilibrium.UseModel(" wilson "))), the(equilibrium.Bubble(abv(40), quantity.Pressure{}, equilibrium.UseModel("Wilson"))); a != b || a.Model != "Wilson" {
		t.Errorf("%v and %v", a, b)
	}
}

// ideal is the activity model of an ideal liquid.
type ideal struct{}

func (ideal) LnGamma(_, _ float64) (ln1, ln2, perK1, perK2 float64) { return 0, 0, 0, 0 }

// wild gives no number.
type wild struct{}

func (wild) LnGamma(x, _ float64) (ln1, ln2, perK1, perK2 float64) { return math.Log(x), 0, 0, 0 }

func TestOwnModels(t *testing.T) {
	// Raoult's law: y is x over the ratio of vapour pressures.
	b := the(equilibrium.Bubble(moles(0.3), quantity.Pressure{}, equilibrium.UseActivity(ideal{})))
	pe := the(find("ethanol").VapourPressureKPa(b.Temp))
	pw := the(find("water").VapourPressureKPa(b.Temp))
	if math.Abs(0.3*pe+0.7*pw-101.325) > 1e-9 || math.Abs(b.Vapour.MoleFraction()-0.3*pe/101.325) > 1e-12 || b.Model != "own model" {
		t.Errorf("%v under %g and %g kPa", b, pe, pw)
	}
	var none *equilibrium.NoAzeotropeError
	if _, err := equilibrium.Azeotrope(quantity.Pressure{}, equilibrium.UseActivity(ideal{})); !errors.As(err, &none) || none.Model != "own model" || !strings.Contains(err.Error(), "no azeotrope") {
		t.Errorf("azeotrope of an ideal liquid: %v", err)
	}
	same := equilibrium.Models()[0].Activity
	if a, b := the(equilibrium.Bubble(abv(40), quantity.Pressure{})), the(equilibrium.Bubble(abv(40), quantity.Pressure{}, equilibrium.UseActivity(same))); math.Abs(a.Temp.C()-b.Temp.C()) > 1e-10 {
		t.Errorf("%v and %v", a, b)
	}
	for what, a := range map[string]equilibrium.Activity{
		"splits":    equilibrium.NRTL{B12K: 900, B21K: 900, Alpha: 0.2},
		"no number": wild{},
	} {
		if b, err := equilibrium.Bubble(abv(40), quantity.Pressure{}, equilibrium.UseActivity(a)); err == nil {
			t.Errorf("%s: %v; want an error", what, b)
		}
	}
}

// What is outside the range of the fit says so, and what is inside says nothing.
func TestNotes(t *testing.T) {
	for _, c := range []struct {
		kPa, pct float64
		want     string
	}{
		{101.325, 40, ""}, {5, 40, ""}, {105, 40, ""}, {4, 40, "extrapolated"}, {120, 40, "extrapolated"}, {8, 97, "azeotrope that is not there"}, {8, 40, ""},
	} {
		b := the(equilibrium.Bubble(abv(c.pct), kPa(c.kPa)))
		if (c.want == "") != (b.Note == "") || !strings.Contains(b.Note, c.want) || b.Note != "" && !strings.Contains(b.String(), b.Note) {
			t.Errorf("%v; want a note with %q", b, c.want)
		}
	}
	if z := the(equilibrium.Azeotrope(kPa(13))); !strings.Contains(z.Note, "3 % at 13 kPa") {
		t.Errorf("%v", z)
	}
	if z := the(equilibrium.Azeotrope(kPa(200))); !strings.Contains(z.Note, "extrapolated") {
		t.Errorf("%v", z)
	}
}

// Liquid alone and vapour alone leave the other unset, which fails wherever it is used.
func TestFlashOfOnePhase(t *testing.T) {
	cold := the(equilibrium.FlashTP(abv(40), celsius(60), quantity.Pressure{}))
	hot := the(equilibrium.FlashTP(abv(40), celsius(120), quantity.Pressure{}))
	both := the(equilibrium.FlashTP(abv(40), celsius(88), quantity.Pressure{}))
	if cold.Vapour.IsSet() || cold.Liquid != abv(40) && math.Abs(cold.Liquid.ABV()-40) > 1e-9 || cold.VapourShare != 0 || !strings.Contains(cold.String(), "stays liquid") {
		t.Errorf("%v", cold)
	}
	if hot.Liquid.IsSet() || hot.VapourShare != 1 || !strings.Contains(hot.String(), "all vapour") {
		t.Errorf("%v", hot)
	}
	if !both.Liquid.IsSet() || !both.Vapour.IsSet() || both.VapourShare <= 0 || both.VapourShare >= 1 || !strings.Contains(both.String(), "parts into") {
		t.Errorf("%v", both)
	}
	for _, s := range []equilibrium.Split{cold, hot, both} {
		if n := len(s.Rows()); n < 5 {
			t.Errorf("%v has %d rows", s, n)
		}
	}
}
