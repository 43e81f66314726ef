package packing_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/packing"
)

// What the bottle holds is spirit and head space, at any temperature; and at FullAt nothing is left.
func TestHeadSpaceAddsUp(t *testing.T) {
	full := 0
	rapid.Check(t, func(t *rapid.T) {
		cold := rapid.Float64Range(0, 25).Draw(t, "closed at")
		c := packing.Closed{
			BrimL:    rapid.Float64Range(0.705, 0.78).Draw(t, "brim"),
			FillL:    0.7,
			Strength: abv(rapid.Float64Range(15, 96).Draw(t, "strength")),
			Temp:     celsius(cold),
			Warmest:  celsius(rapid.Float64Range(cold, 40).Draw(t, "warmest")),
			LeastPct: rapid.Float64Range(0, 5).Draw(t, "least"),
		}
		h, err := packing.HeadSpaceOf(c)
		if err != nil {
			return // too full when it is closed: TestHeadSpaceRefuses
		}
		spirit := alcoholometry.Spirit{VolumeL: 0.7, Strength: c.Strength}
		grown := func(brim float64, degC float64) float64 { return brim * (1 + 27e-6*(degC-20)) }
		if sum := spirit.VolumeAt(c.Warmest) + h.WarmL; math.Abs(sum-grown(c.BrimL, c.Warmest.C())) > 1e-12 {
			t.Fatalf("spirit and head space are %.12g L in a bottle of %.12g L", sum, grown(c.BrimL, c.Warmest.C()))
		}
		if h.WarmL > h.ClosedL+1e-12 {
			t.Fatalf("%v: warm, there is more room than closed", h)
		}
		c.BrimL = h.BrimNeededL
		if again, err := packing.HeadSpaceOf(c); err == nil && math.Abs(again.WarmPct-c.LeastPct) > 1e-9 {
			t.Fatalf("a bottle of the size needed has %.9g %% of head space; wanted %.9g", again.WarmPct, c.LeastPct)
		}
		if h.FillsUp {
			full++
			if room := grown(h.Closed.BrimL, h.FullAt.C()) - spirit.VolumeAt(h.FullAt); math.Abs(room) > 1e-9 {
				t.Fatalf("full at %v with %.3g L of room", h.FullAt, room)
			}
		}
		if h.FillsUp != (grown(h.Closed.BrimL, 40) <= spirit.VolumeAt(celsius(40))) {
			t.Fatalf("%v: at 40 °C the spirit takes %.6g L of %.6g", h, spirit.VolumeAt(celsius(40)), grown(h.Closed.BrimL, 40))
		}
	})
	if full == 0 {
		t.Error("no bottle filled up: the test looks at nothing")
	}
}

func TestHeadSpaceRefuses(t *testing.T) {
	fine := packing.Closed{BrimL: 0.73, FillL: 0.7, Strength: abv(40), Temp: celsius(15), Warmest: celsius(35), LeastPct: 1}
	for name, change := range map[string]func(*packing.Closed){
		"no bottle":        func(c *packing.Closed) { c.BrimL = 0 },
		"no contents":      func(c *packing.Closed) { c.FillL = 0 },
		"overfull":         func(c *packing.Closed) { c.FillL = 0.74 },
		"no strength":      func(c *packing.Closed) { c.Strength = alcoholometry.Strength{} },
		"too warm":         func(c *packing.Closed) { c.Warmest = celsius(55) },
		"colder than cold": func(c *packing.Closed) { c.Warmest = celsius(5) },
		"all head space":   func(c *packing.Closed) { c.LeastPct = 99 },
		"not a number":     func(c *packing.Closed) { c.LeastPct = math.NaN() },
	} {
		c := fine
		change(&c)
		if h, err := packing.HeadSpaceOf(c); err == nil {
			t.Errorf("%s: %v and no error", name, h)
		}
	}
	if h := the(packing.HeadSpaceOf(fine)); !h.Enough || h.MisleadingUS {
		t.Errorf("%v: enough %v, misleading %v", h, h.Enough, h.MisleadingUS)
	}
	fine.BrimL = 0.78
	if h := the(packing.HeadSpaceOf(fine)); !h.MisleadingUS { // 27 CFR 5.202(b): more than 8 per cent
		t.Errorf("%v: more than 8 %% of head space and not misleading", h)
	}
}

func TestBottlesFromATank(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := packing.Run{
			Tank:    alcoholometry.Spirit{VolumeL: rapid.Float64Range(10, 5000).Draw(t, "tank"), Strength: abv(rapid.Float64Range(15, 96).Draw(t, "strength")), Temp: celsius(rapid.Float64Range(0, 35).Draw(t, "t"))},
			LeftL:   rapid.Float64Range(0, 5).Draw(t, "left"),
			LossPct: rapid.Float64Range(0, 2).Draw(t, "loss"),
			Bottle:  packing.Bottle{NominalL: rapid.SampledFrom([]float64{0.1, 0.5, 0.7, 1}).Draw(t, "nominal"), OverL: rapid.Float64Range(0, 0.003).Draw(t, "over")},
			PerCase: rapid.IntRange(0, 12).Draw(t, "case"),
		}
		b := the(packing.BottlesFrom(r))
		net := alcoholometry.Spirit{VolumeL: (r.Tank.VolumeL - r.LeftL) * (1 - r.LossPct/100), Strength: r.Tank.Strength, Temp: r.Tank.Temp}
		rest := alcoholometry.Spirit{VolumeL: b.LeftOverL, Strength: r.Tank.Strength, Temp: r.Tank.Temp}
		if sum := b.PureL + rest.PureL(); math.Abs(sum-net.PureL()) > 1e-9*net.PureL() {
			t.Fatalf("%.9g L of pure alcohol became %.9g", net.PureL(), sum)
		}
		if one := r.Bottle.NominalL + r.Bottle.OverL; rest.VolumeAt(celsius(20)) > one+1e-6 {
			t.Fatalf("%.6g L are left over, more than the bottle's %.6g", b.LeftOverL, one)
		}
		if r.PerCase > 0 && b.Cases*r.PerCase+b.Loose != b.Bottles {
			t.Fatalf("%d cases of %d and %d bottles are not %d", b.Cases, r.PerCase, b.Loose, b.Bottles)
		}
	})
	exact := packing.Run{Tank: alcoholometry.Spirit{VolumeL: 700, Strength: abv(43)}, Bottle: packing.Bottle{NominalL: 0.7}}
	if b := the(packing.BottlesFrom(exact)); b.Bottles != 1000 {
		t.Errorf("700 L make %d bottles of 0.7 L", b.Bottles)
	}
	exact.Tank.Temp = celsius(30)
	if b := the(packing.BottlesFrom(exact)); b.Bottles >= 1000 { // warm litres are fewer at 20 °C
		t.Errorf("700 L at 30 °C make %d bottles of 0.7 L at 20 °C", b.Bottles)
	}
	for name, change := range map[string]func(*packing.Run){
		"empty tank":     func(r *packing.Run) { r.Tank.VolumeL = 0 },
		"more left":      func(r *packing.Run) { r.LeftL = 701 },
		"all lost":       func(r *packing.Run) { r.LossPct = 101 },
		"other strength": func(r *packing.Run) { r.Bottle.Strength = abv(40) },
		"no bottle":      func(r *packing.Run) { r.Bottle.NominalL = 0 },
		"no strength":    func(r *packing.Run) { r.Tank.Strength = alcoholometry.Strength{} },
		"negative case":  func(r *packing.Run) { r.PerCase = -1 },
		"tiny bottle":    func(r *packing.Run) { r.Bottle.NominalL = 1e-12 },
	} {
		r := exact
		change(&r)
		if b, err := packing.BottlesFrom(r); err == nil {
			t.Errorf("%s: %v and no error", name, b)
		}
	}
}
