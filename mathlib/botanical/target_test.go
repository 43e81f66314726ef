package botanical_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/botanical"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

func profile(name string, pct float64, amounts ...any) botanical.Profile {
	p := botanical.Profile{Name: name, Strength: abv(pct), Complete: true}
	for i := 0; i < len(amounts); i += 2 {
		p.Amounts = append(p.Amounts, botanical.Amount{Compound: amounts[i].(string), Amount: the(quantity.MgL(amounts[i+1].(float64)))})
	}
	return p
}

// A target that was blended is found again, and the water with it.
func TestTargetIsFoundAgain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		litre, mg := rapid.Float64Range(1, 20), rapid.Float64Range(20, 900)
		a := profile("juniper", rapid.Float64Range(60, 80).Draw(t, "q"), "alpha-pinene", mg.Draw(t, "a"), "limonene", mg.Draw(t, "b"))
		b := profile("coriander", rapid.Float64Range(60, 80).Draw(t, "q"), "linalool", mg.Draw(t, "c"), "limonene", mg.Draw(t, "d"))
		n := profile("neutral", 96)
		la, lb, ln := litre.Draw(t, "la"), litre.Draw(t, "lb"), litre.Draw(t, "ln")
		spirits := []botanical.Profile{a, b, n}
		pure := (la*a.Strength.ABV() + lb*b.Strength.ABV() + ln*96) / 100
		volume := pure / 0.42
		target := profile("wanted", 42, "alpha-pinene", la*a.Amounts[0].Amount.Value()/volume, "linalool", lb*b.Amounts[0].Amount.Value()/volume,
			"limonene", (la*a.Amounts[1].Amount.Value()+lb*b.Amounts[1].Amount.Value())/volume)
		blend, err := botanical.MatchTarget(target, volume, spirits...)
		if err != nil {
			t.Fatal(err)
		}
		for i, want := range []float64{la, lb, ln} {
			if !near(blend.Parts[i].VolumeL, want, 1e-6) {
				t.Fatalf("%v; blended were %g, %g and %g L", blend, la, lb, ln)
			}
		}
		mix := the(mixing.Blend(spirit(la, a.Strength.ABV()), spirit(lb, b.Strength.ABV()), spirit(ln, 96)))
		if r := the(mixing.Reduce(mix, abv(42))); !near(blend.WaterKg, r.WaterKg, 1e-6) {
			t.Fatalf("%g kg of water; Reduce says %g", blend.WaterKg, r.WaterKg)
		}
	})
}

// No blend near the answer is nearer to the target (the conditions of Kuhn and Tucker, by trying).
func TestTargetIsNearest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mg := rapid.Float64Range(5, 900)
		names := []string{"alpha-pinene", "limonene", "linalool", "camphor"}
		var spirits []botanical.Profile
		for i := range 3 {
			p := botanical.Profile{Name: string(rune('a' + i)), Strength: abv(70), Complete: true}
			for _, n := range names {
				p.Amounts = append(p.Amounts, botanical.Amount{Compound: n, Amount: the(quantity.MgL(mg.Draw(t, n)))})
			}
			spirits = append(spirits, p)
		}
		target := botanical.Profile{Strength: abv(40)}
		most := 0.0
		for _, n := range names {
			x := mg.Draw(t, "wanted "+n)
			most = math.Max(most, x)
			target.Amounts = append(target.Amounts, botanical.Amount{Compound: n, Amount: the(quantity.MgL(x))})
		}
		blend, err := botanical.MatchTarget(target, 100, spirits...)
		if err != nil {
			t.Fatal(err)
		}
		far := func(l []float64) float64 {
			sum := 0.0
			for k := range names {
				got := 0.0
				for j := range spirits {
					got += l[j] * spirits[j].Amounts[k].Amount.Value() / 100
				}
				want := target.Amounts[k].Amount.Value()
				d := (got - want) / math.Max(want, 0.05*most)
				sum += d * d
			}
			return sum
		}
		l := []float64{blend.Parts[0].VolumeL, blend.Parts[1].VolumeL, blend.Parts[2].VolumeL}
		if sum := l[0] + l[1] + l[2]; !near(sum, 100*40/70.0, 1e-9) {
			t.Fatalf("%g L of 70 %% vol for 100 L of 40", sum)
		}
		here := far(l)
		for i := range l {
			for j := range l {
				if i == j || l[i] < 0.01 {
					continue
				}
				moved := append([]float64(nil), l...)
				moved[i] -= 0.01
				moved[j] += 0.01
				if far(moved) < here-1e-7 {
					t.Fatalf("%v: %g; with 0.01 L less of %d and more of %d %g", blend, here, i, j, far(moved))
				}
			}
		}
	})
}

func TestTargetRefuses(t *testing.T) {
	wanted := profile("wanted", 42, "limonene", 50.0, "linalool", 30.0)
	a, b := profile("a", 70, "limonene", 100.0, "linalool", 10.0), profile("b", 70, "limonene", 10.0, "linalool", 100.0)
	c := profile("c", 70, "limonene", 50.0, "linalool", 90.0)
	d := profile("d", 60, "limonene", 20.0, "linalool", 20.0)
	half := a
	half.Complete, half.Amounts = false, a.Amounts[:1]
	for name, x := range map[string]struct {
		target  botanical.Profile
		volume  float64
		spirits []botanical.Profile
		want    string
	}{
		"no spirits":        {wanted, 10, nil, "no spirits"},
		"no volume":         {wanted, 0, []botanical.Profile{a, b}, "0 L"},
		"no markers":        {profile("x", 42), 10, []botanical.Profile{a, b}, "no marker"},
		"too weak":          {wanted, 10, []botanical.Profile{profile("weak", 30)}, "strongest"},
		"four of three":     {wanted, 10, []botanical.Profile{a, b, c, d}, "do not tell these spirits apart"},
		"alike":             {wanted, 10, []botanical.Profile{a, a}, "a, a"},
		"unknown in one":    {wanted, 10, []botanical.Profile{half, b}, "nothing is said of linalool"},
		"unset strength":    {botanical.Profile{}, 10, []botanical.Profile{a}, "strength of the target"},
		"unknown compound":  {profile("x", 42, "limonen", 3.0), 10, []botanical.Profile{a, b}, "no compound"},
		"twice":             {profile("x", 42, "limonene", 3.0, "dipentene", 3.0), 10, []botanical.Profile{a, b}, "twice"},
		"all amounts are 0": {profile("x", 42, "limonene", 0.0), 10, []botanical.Profile{a, b}, "0 mg/L"},
	} {
		_, err := botanical.MatchTarget(x.target, x.volume, x.spirits...)
		if err == nil || !strings.Contains(err.Error(), x.want) {
			t.Errorf("%s: %v; want an error with %q", name, err, x.want)
		}
	}
}
