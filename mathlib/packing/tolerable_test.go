package packing_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/packing"
	"swanneck/mathlib/quantity"
)

func TestTolerableErrorAgainstTheDirective(t *testing.T) {
	for _, r := range table(t, "tolerable_negative_error.csv") {
		from, to := r.number("from_mL"), r.number("to_mL")
		for _, at := range []float64{from + 0.01*(to-from), (from + to) / 2, to} {
			got := the(packing.TolerableErrorML(at / 1000))
			var want float64
			if r.text("pct") == "" {
				want = r.number("mL")
			} else {
				want = math.Ceil(at*r.number("pct")/10-1e-9) / 10
			}
			if math.Abs(got-want) > 1e-12 {
				t.Errorf("TolerableErrorML(%g mL) = %g mL; Directive 76/211/EEC, annex I, 2.4 gives %g", at, got, want)
			}
		}
	}
	for _, c := range []struct{ nominalML, want float64 }{{700, 15}, {350, 10.5}, {187, 8.5}, {1750, 26.3}, {50, 4.5}, {40, 3.6}, {10000, 150}} {
		if got := the(packing.TolerableErrorML(c.nominalML / 1000)); got != c.want {
			t.Errorf("TolerableErrorML(%g mL) = %g mL; Directive 76/211/EEC, annex I, 2.4, rounded up to 0.1 mL, gives %g", c.nominalML, got, c.want)
		}
	}
	for _, bad := range []float64{0, -1, 0.004, 11, math.NaN(), math.Inf(1)} {
		if got, err := packing.TolerableErrorML(bad); err == nil {
			t.Errorf("TolerableErrorML(%g) = %g and no error", bad, got)
		}
	}
}

// The table runs without a step down, and no share falls as the bottle grows beyond the rounding.
func TestTolerableErrorRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(0.005, 10).Draw(t, "a")
		b := rapid.Float64Range(a, 10).Draw(t, "b")
		if x, y := the(packing.TolerableErrorML(a)), the(packing.TolerableErrorML(b)); x > y {
			t.Fatalf("%g L has %g mL and %g L has %g", a, x, b, y)
		} else if y/b > (x+0.1)/a {
			t.Fatalf("%g L has %g per L and %g L has %g", a, x/a, b, y/b)
		}
	})
}

func TestFillTarget(t *testing.T) {
	// 700 mL with 15 mL tolerable: a filler of 5 mL needs only the mean; 15 mL needs 685 + 1.96 × 15 = 714.4 and 670 + 3.719 × 15 = 725.8.
	for _, c := range []struct{ spread, want float64 }{{5, 700}, {7.6, 700}, {15, 725.786}, {8.2, 701.07}} {
		want := math.Max(700, math.Max(685+1.95996*c.spread, 670+3.71902*c.spread))
		got := the(packing.FillTargetFor(0.7, c.spread))
		if math.Abs(got.TargetML-want) > 1e-3 {
			t.Errorf("FillTargetFor(700 mL, %g mL) = %.4f mL; the quantiles 1.95996 and 3.71902 give %.4f", c.spread, got.TargetML, want)
		}
	}
	for _, bad := range []float64{0, -1, math.NaN()} {
		if got, err := packing.FillTargetFor(0.7, bad); err == nil {
			t.Errorf("a spread of %g mL: %v and no error", bad, got)
		}
	}
}

func TestUSFillAgainstTheRule(t *testing.T) {
	for _, r := range table(t, "us_fill_tolerance.csv") {
		from, to := r.number("from_mL"), r.number("to_mL")
		if to == 0 {
			to = 3750
		}
		for _, ml := range []float64{from, (from + to) / 2, to} {
			if got := the(packing.USFillTolerancePct(quantity.MLToL(ml))); got != r.number("pct") {
				t.Errorf("USFillTolerancePct(%g mL) = %g; 27 CFR 19.356(b) gives %g", ml, got, r.number("pct"))
			}
		}
	}
	// 750 mL ± 2 %: 735 to 765 mL.
	u := the(packing.CheckUSFill(0.75, []float64{735, 765, 750, 751, 752, 753, 754, 755, 756, 757}))
	if u.Outside != 0 || u.Over != 8 || u.Under != 1 || !u.WithinAll {
		t.Errorf("%v", u)
	}
	// 8 and 1 of 9: 2 (1 + 9)/2^9.
	if want := 20.0 / 512; math.Abs(u.EvenChance-want) > 1e-12 {
		t.Errorf("chance of 8 to 1: %.12g; 20/512 is %.12g", u.EvenChance, want)
	}
	if u := the(packing.CheckUSFill(0.75, []float64{734.9, 765.1})); u.Outside != 2 || u.EvenChance != 1 {
		t.Errorf("%v", u)
	}
	for name, contents := range map[string][]float64{"none": {}, "negative": {750, -1}, "not a number": {math.NaN()}} {
		if u, err := packing.CheckUSFill(0.75, contents); err == nil {
			t.Errorf("%s: %v and no error", name, u)
		}
	}
	if _, err := packing.USFillTolerancePct(0); err == nil {
		t.Error("a bottle of nothing has a tolerance")
	}
}

func TestSizes(t *testing.T) {
	lists := map[string]packing.Sizes{"EU": packing.EUSizes(), "US": packing.USSizes()}
	seen := map[string]int{}
	for _, r := range table(t, "sizes.csv") {
		s := the(packing.CheckSize(r.number("mL")/1000, lists[r.text("list")]))
		seen[r.text("list")]++
		if !s.Allowed || s.Warning != "" {
			t.Errorf("%s: %v; %s has it", r.text("list"), s, r.text("source"))
		}
	}
	for name, l := range lists {
		if seen[name] != len(l.ListML) {
			t.Errorf("%s: %d sizes in the list and %d in print", name, len(l.ListML), seen[name])
		}
		if l.Date == "" || l.Source == "" {
			t.Errorf("%s: no date or no source", name)
		}
	}
	for _, c := range []struct {
		list string
		ml   float64
		want bool
	}{{"EU", 750, false}, {"EU", 375, false}, {"EU", 50, true}, {"EU", 3000, true}, {"EU", 99, true}, {"US", 600, false}, {"US", 20, false}, {"US", 5000, true}} {
		if s := the(packing.CheckSize(c.ml/1000, lists[c.list])); s.Allowed != c.want || s.Allowed != (s.Warning == "") {
			t.Errorf("%s, %g mL: %v; want allowed: %v", c.list, c.ml, s, c.want)
		}
	}
	if _, err := packing.CheckSize(0, packing.EUSizes()); err == nil {
		t.Error("a bottle of nothing has a size")
	}
	if _, err := packing.CheckSize(0.7, packing.Sizes{}); err == nil {
		t.Error("an empty list allows a size")
	}
}
