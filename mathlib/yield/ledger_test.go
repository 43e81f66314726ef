package yield_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/yield"
)

func abv(pct float64) alcoholometry.Strength { return the(alcoholometry.ABV(pct)) }

func spirit(litres, pct float64) alcoholometry.Spirit {
	return alcoholometry.Spirit{VolumeL: litres, Strength: abv(pct)}
}

func near(a, b, rel float64) bool { return math.Abs(a-b) <= rel*math.Max(math.Abs(a), math.Abs(b)) }

func TestTheLedgerAddsUp(t *testing.T) {
	kinds := []yield.Kind{yield.StrippingRun, yield.SpiritRun, yield.BotanicalRun, yield.Maceration, yield.Storage, yield.Reduction, yield.Filtration, yield.Filling}
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string, least int) (out []alcoholometry.Spirit) {
			for range rapid.IntRange(least, 3).Draw(t, name) {
				out = append(out, spirit(rapid.Float64Range(0, 1000).Draw(t, "L"), rapid.Float64Range(1, 96).Draw(t, "abv")))
			}
			return out
		}
		sum := func(spirits []alcoholometry.Spirit) float64 {
			pure := 0.0
			for _, s := range spirits {
				pure += s.PureL()
			}
			return pure
		}
		var passages []yield.Passage
		kept, thrown := 0.0, 0.0
		for range rapid.IntRange(1, 6).Draw(t, "stages") {
			p := yield.Passage{Kind: rapid.SampledFrom(kinds).Draw(t, "kind"), In: append(draw("in", 0), spirit(1, 10)), Out: draw("out", 0), Kept: draw("kept", 0), Thrown: draw("thrown", 0)}
			kept += sum(p.Kept)
			thrown += sum(p.Thrown)
			passages = append(passages, p)
		}
		a := the(yield.AccountOf(passages...))
		first, last := sum(passages[0].In), sum(passages[len(passages)-1].Out)
		total := a.OutL + a.KeptL + a.ThrownL + a.LossL + a.BetweenL
		scale := first + kept + thrown + 10000
		if math.Abs(a.InL-first) > 1e-9 || math.Abs(a.OutL-last) > 1e-9 || math.Abs(a.KeptL-kept) > 1e-9*scale || math.Abs(a.ThrownL-thrown) > 1e-9*scale || math.Abs(total-a.InL) > 1e-9*scale {
			t.Fatalf("%v\nin %.9g, out %.9g; all that is named adds up to %.9g", a, first, last, total)
		}
		for i, s := range a.Stages {
			if math.Abs(s.InL-s.OutL-s.KeptL-s.ThrownL-s.LossL) > 1e-9*scale || math.Abs(s.InL-sum(passages[i].In)) > 1e-9 {
				t.Fatalf("%v", s)
			}
			if (s.Verdict == yield.MoreOut) != (s.LossL < -1e-9*s.InL) {
				t.Fatalf("%v", s)
			}
		}
	})
}

func TestFindings(t *testing.T) {
	a := the(yield.AccountOf(
		yield.Passage{Kind: yield.StrippingRun, In: []alcoholometry.Spirit{spirit(1000, 9)}, Out: []alcoholometry.Spirit{spirit(330, 26.6)}},
		yield.Passage{Kind: yield.SpiritRun, In: []alcoholometry.Spirit{spirit(320, 26.6)}, Out: []alcoholometry.Spirit{spirit(90, 72)}, Kept: []alcoholometry.Spirit{spirit(40, 35)}, Thrown: []alcoholometry.Spirit{spirit(2, 78)}},
		yield.Passage{Kind: yield.Reduction, In: []alcoholometry.Spirit{spirit(90, 72)}, Out: []alcoholometry.Spirit{spirit(152, 43)}},
		yield.Passage{Kind: yield.Filling, In: []alcoholometry.Spirit{spirit(152, 43)}, Out: []alcoholometry.Spirit{spirit(0.7*216, 43)}, LeastPct: 0.1, MostPct: 0.3},
	))
	want := []yield.Verdict{yield.Within, yield.MoreLost, yield.MoreOut, yield.MoreLost}
	for i, s := range a.Stages {
		if s.Verdict != want[i] {
			t.Errorf("%v; want %s", s, want[i])
		}
	}
	text := strings.Join(a.Findings, "\n")
	for _, part := range []string{
		"2.66 L of pure alcohol that stripping run gave on did not go into spirit run",
		"spirit run lost 5.59 % of the pure alcohol, more than expected (1 to 3 %, common practice, no source)",
		"reduction: 0.560 L of pure alcohol more came out than went in; check the readings",
		"filling lost 0.53 % of the pure alcohol, more than expected (0.1 to 0.3 %, yours)",
	} {
		if !strings.Contains(text, part) {
			t.Errorf("the findings lack %q:\n%s", part, text)
		}
	}
	if len(a.Findings) != 4 {
		t.Errorf("%d findings:\n%s", len(a.Findings), text)
	}
}

func TestPassagesThatAreNone(t *testing.T) {
	in := []alcoholometry.Spirit{spirit(10, 40)}
	for want, p := range map[string]yield.Passage{
		"there is no stage \"\"":            {In: in},
		"there is no stage \"washing\"":     {Kind: "washing", In: in},
		"no alcohol goes into stage 1":      {Kind: yield.Filling},
		"no alcohol goes into stage 1, f":   {Kind: yield.Filling, In: []alcoholometry.Spirit{spirit(0, 40)}},
		"spirit 1 out in filling is not":    {Kind: yield.Filling, In: in, Out: []alcoholometry.Spirit{{VolumeL: 1}}},
		"volume is -1 L":                    {Kind: yield.Filling, In: in, Out: []alcoholometry.Spirit{spirit(-1, 40)}},
		"the least loss expected is 3 per ": {Kind: yield.Filling, In: in, LeastPct: 3, MostPct: 2},
		"greatest loss expected is 101":     {Kind: yield.Filling, In: in, MostPct: 101},
	} {
		if a, err := yield.AccountOf(p); err == nil || !strings.Contains(err.Error(), want) || !strings.HasPrefix(err.Error(), "yield.AccountOf: ") {
			t.Errorf("%v, %v; want %q", a, err, want)
		}
	}
	if _, err := yield.AccountOf(); err == nil {
		t.Error("an account of nothing")
	}
	if r, err := yield.UsualLoss("washing"); err == nil {
		t.Errorf("%v", r)
	}
	a := the(yield.AccountOf(yield.Passage{Kind: yield.Storage, In: in, Kept: in}))
	if a.Stages[0].Verdict != yield.NothingOut {
		t.Errorf("%v", a.Stages[0])
	}
}
