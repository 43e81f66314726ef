package colour_test

import (
	"math"
	"strings"
	"testing"

	"swanneck/mathlib/colour"
)

func second[T any](_ T, err error) error { return err }

func TestDifferenceAgainstSharma(t *testing.T) {
	rows := table(t, "ciede2000_pairs.csv")
	if len(rows) != 34 {
		t.Fatalf("%d pairs; Sharma, Wu and Dalal have 34", len(rows))
	}
	for i, r := range rows {
		a := colour.Lab{L: r.number("L1"), A: r.number("a1"), B: r.number("b1")}
		b := colour.Lab{L: r.number("L2"), A: r.number("a2"), B: r.number("b2")}
		want := r.number("dE00")
		for _, got := range []float64{colour.Difference(a, b), colour.Difference(b, a)} {
			if math.Abs(got-want) > 1e-4 {
				t.Errorf("pair %d: Difference(%v, %v) = %.5f; Sharma and others give %.4f ± 0.0001", i+1, a, b, got, want)
			}
		}
	}
}

func TestWhiteAgainstTheCIE(t *testing.T) {
	for _, r := range table(t, "white.csv") {
		w := colour.White()
		sum := w.X + w.Y + w.Z
		for _, c := range []struct {
			name     string
			got, tol float64
		}{{"X", w.X, 0.02}, {"Y", w.Y, 1e-9}, {"Z", w.Z, 0.02}, {"x", w.X / sum, 1e-4}, {"y", w.Y / sum, 1e-4}} {
			if want := r.number(c.name); math.Abs(c.got-want) > c.tol {
				t.Errorf("white has %s %.5f; the CIE gives %g ± %g", c.name, c.got, want, c.tol)
			}
		}
	}
}

func TestLabAgainstPrint(t *testing.T) {
	for _, r := range table(t, "lab.csv") {
		got := the(colour.ToLab(colour.XYZ{X: r.number("X"), Y: r.number("Y"), Z: r.number("Z")}, colour.XYZ{X: r.number("whiteX"), Y: r.number("whiteY"), Z: r.number("whiteZ")}))
		want := colour.Lab{L: r.number("L"), A: r.number("a"), B: r.number("b")}
		if colour.PlainDistance(got, want) > 2e-4 {
			t.Errorf("ToLab = %v; print gives %v", got, want)
		}
	}
}

// The screen's own red, as IEC 61966-2-1 makes it, comes back as full red; white as white; and deep green is beyond it.
func TestSwatches(t *testing.T) {
	for _, c := range []struct {
		xyz    colour.XYZ
		hex    string
		beyond bool
	}{
		{colour.White(), "#ffffff", false},
		{colour.XYZ{}, "#000000", false},
		{colour.XYZ{X: 41.24, Y: 21.26, Z: 1.93}, "#ff0000", false},
		{colour.XYZ{X: 35.76, Y: 71.52, Z: 11.92}, "#00ff00", false},
		{colour.XYZ{X: 10, Y: 50, Z: 5}, "#00f600", true},
	} {
		s := colour.ToSwatch(c.xyz)
		if c.beyond != s.Beyond || !c.beyond && s.Hex() != c.hex || (s.Note() != "") != s.Beyond {
			t.Errorf("ToSwatch(%v) = %v; want %s, beyond %v", c.xyz, s, c.hex, c.beyond)
		}
	}
}

func TestPigmentsAgainstPrint(t *testing.T) {
	for _, r := range table(t, "chlorophyll.csv") {
		p := the(colour.PigmentsOf(colour.Absorbances{A664: r.number("A664"), A649: r.number("A649"), Strength: abv(95)}))
		for _, c := range []struct{ got, want, other float64 }{{p.ChlorophyllAMgL, r.number("a_mgL"), r.number("other_a_mgL")}, {p.ChlorophyllBMgL, r.number("b_mgL"), r.number("other_b_mgL")}} {
			if math.Abs(c.got-c.want) > 1e-3 {
				t.Errorf("%v; Lichtenthaler and Buschmann give %g", p, c.want)
			}
			if math.Abs(c.got/c.other-1) > 0.06 {
				t.Errorf("%v; Wintermans and De Mots give %g", p, c.other)
			}
		}
		// Twice the path, half the figure; haze taken off.
		q := the(colour.PigmentsOf(colour.Absorbances{A664: r.number("A664") + 0.01, A649: r.number("A649") + 0.01, A750: 0.01, PathCM: 2, Strength: abv(95.6)}))
		if math.Abs(q.ChlorophyllAMgL-p.ChlorophyllAMgL/2) > 1e-9 {
			t.Errorf("through 2 cm %v; through 1 cm %v", q, p)
		}
		if math.Abs(p.PlusMinusAMgL-0.029) > 1e-3 || math.Abs(p.PlusMinusBMgL-0.057) > 1e-3 {
			t.Errorf("a reading ± 0.002 gives ± %.4f and ± %.4f; want 0.029 and 0.057", p.PlusMinusAMgL, p.PlusMinusBMgL)
		}
	}
}

func TestPigmentsRefuse(t *testing.T) {
	fine := colour.Absorbances{A664: 0.9, A649: 0.4, Strength: abv(95)}
	for name, c := range map[string]struct {
		change func(*colour.Absorbances)
		says   string
	}{
		"browned":      {func(a *colour.Absorbances) { a.A649 = 0.26 }, "chlorophyll b comes out as"},
		"swapped":      {func(a *colour.Absorbances) { a.A664, a.A649 = 0.3, 0.9 }, "chlorophyll a comes out as"},
		"spirit":       {func(a *colour.Absorbances) { a.Strength = abv(65) }, "dilution ladder"},
		"absolute":     {func(a *colour.Absorbances) { a.Strength = abv(99.5) }, "93 to 97"},
		"too dark":     {func(a *colour.Absorbances) { a.A664 = 2.4 }, "dilute"},
		"negative":     {func(a *colour.Absorbances) { a.A649 = -0.1 }, "-0.1"},
		"unset":        {func(a *colour.Absorbances) { a.Strength = (colour.Absorbances{}).Strength }, "not set"},
		"carotenoids":  {func(a *colour.Absorbances) { a.A470 = 0.01 }, "carotenoids"},
		"no number":    {func(a *colour.Absorbances) { a.A664 = math.NaN() }, "NaN"},
		"no cell":      {func(a *colour.Absorbances) { a.PathCM = -1 }, "path"},
		"sure as hell": {func(a *colour.Absorbances) { a.Reading = -1 }, "uncertainty"},
	} {
		a := fine
		c.change(&a)
		if _, err := colour.PigmentsOf(a); err == nil || !strings.Contains(err.Error(), c.says) || !strings.HasPrefix(err.Error(), "colour.PigmentsOf: ") {
			t.Errorf("%s: %v; want %q", name, err, c.says)
		}
	}
	if p := the(colour.PigmentsOf(colour.Absorbances{A664: 1.2, A649: 0.5, A470: 0.9, Strength: abv(95)})); !p.Dark || !p.HasCarotenoids || p.CarotenoidsMgL <= 0 {
		t.Errorf("%+v", p)
	}
}

func TestWarmthAgainstThePublishedEnergies(t *testing.T) {
	for _, r := range table(t, "warmth.csv") {
		w := colour.Warmth{KJMol: r.number("kJ_mol"), LowKJMol: r.number("kJ_mol"), HighKJMol: r.number("kJ_mol")}
		if got, want := w.Factor(celsius(r.number("from_C")), celsius(r.number("to_C"))), r.number("factor"); math.Abs(got-want) > 0.002 {
			t.Errorf("%g kJ/mol from %g to %g °C: %.4f; want %g ± 0.002", r.number("kJ_mol"), r.number("from_C"), r.number("to_C"), got, want)
		}
	}
	w := colour.ChlorophyllWarmth()
	if low, high := w.FactorRange(celsius(20), celsius(30)); math.Abs(low-1.28) > 0.01 || math.Abs(high-3.2) > 0.05 || w.Seen {
		t.Errorf("%v: 20 to 30 °C changes the rate by %.3f to %.3f; want 1.28 to 3.2", w, low, high)
	}
	if low, high := w.FactorRange(celsius(20), celsius(4)); math.Abs(low-0.13) > 0.005 || math.Abs(high-0.65) > 0.01 {
		t.Errorf("20 to 4 °C changes the rate by %.3f to %.3f; want 0.13 to 0.65", low, high)
	}
}

func TestDemonstrationGolden(t *testing.T) {
	for _, r := range table(t, "demonstration.golden.csv") {
		got := the(colour.Demonstration(colour.Pigments{ChlorophyllAMgL: r.number("a_mgL"), ChlorophyllBMgL: r.number("b_mgL")})).Through(1)
		want := colour.Lab{L: r.number("L"), A: r.number("a"), B: r.number("b")}
		if colour.PlainDistance(got.Lab, want) > 0.03 {
			t.Errorf("%g + %g mg/L: %v; golden %v", r.number("a_mgL"), r.number("b_mgL"), got, want)
		}
		if got.Estimate == "" || !strings.Contains(got.String(), "estimate") {
			t.Errorf("%v does not say that it is an estimate", got)
		}
	}
}
