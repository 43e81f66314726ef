package botanical_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/botanical"
)

// trial distils juniper and coriander with the same shares over heads and hearts.
func trial(t testing.TB, juniperG, coriander float64, lot string) botanical.CarryOver {
	t.Helper()
	a, b := the(botanical.Herb("juniper", juniperG)), the(botanical.Herb("coriander", coriander))
	a.Lot, b.Lot = lot, lot
	c, err := botanical.NewCharge(botanical.Recipe{Items: []botanical.Botanical{a, b}}, spirit(10, 50))
	if err != nil {
		t.Fatal(err)
	}
	var way []botanical.Passage
	for _, x := range c.Traces() {
		way = append(way, botanical.Passage{Compound: x.Compound, Shares: []float64{0.2, 0.7}})
	}
	return the(botanical.Carry(c, []botanical.Cut{{Name: "heads", Spirit: spirit(0.3, 82)}, {Name: "hearts", Spirit: spirit(5, 74)}}, way))
}

func TestCompare(t *testing.T) {
	verdict := func(c botanical.Comparison, name string) botanical.Difference {
		for _, d := range c.Differences {
			if d.Cut == "hearts" && d.Compound == name {
				return d
			}
		}
		t.Fatalf("no %s in %v", name, c)
		return botanical.Difference{}
	}
	// Sabinene comes from juniper alone: half as much again of one lot is exactly half as much again, whatever it holds.
	same := the(botanical.Compare(trial(t, 20, 10, "24-07"), trial(t, 30, 10, "24-07")))
	if d := verdict(same, "sabinene"); d.Verdict != "more" || !near(d.Times.Low, 1.5, 1e-12) || !near(d.Times.High, 1.5, 1e-12) || !d.SameLots {
		t.Errorf("one lot: %v", d)
	}
	// Linalool comes from coriander alone and stays.
	if d := verdict(same, "linalool"); d.Verdict != "the same" {
		t.Errorf("coriander unchanged: %v", d)
	}
	// Limonene comes from both: between no more and half as much again.
	if d := verdict(same, "limonene"); d.Verdict != "more" || !(d.Times.Low > 1 && d.Times.High < 1.5) || len(d.By) != 2 || d.By[0].Plant != "coriander" {
		t.Errorf("two plants: %v, %+v", d, d.By)
	}
	// Of another lot nothing can be told: its oil may be anything from 0.5 to 2.6 %.
	other := the(botanical.Compare(trial(t, 20, 10, "24-07"), trial(t, 30, 10, "25-01")))
	if d := verdict(other, "sabinene"); d.Verdict != "cannot tell" || d.SameLots {
		t.Errorf("another lot: %v", d)
	}
	if _, err := botanical.Compare(trial(t, 20, 10, ""), botanical.CarryOver{}); err == nil {
		t.Error("a trial without cuts is compared")
	}
	if text := strings.Join(same.Notes, "; "); !strings.Contains(text, "cancel") {
		t.Errorf("notes: %s", text)
	}
}

// The ratio of two trials of the same lots lies in what the contents of those lots can make of it.
func TestRatiosHoldTheTruth(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		g := rapid.Float64Range(1, 40)
		a, b, c, d := g.Draw(rt, "a"), g.Draw(rt, "b"), g.Draw(rt, "c"), g.Draw(rt, "d")
		cmp := the(botanical.Compare(trial(t, a, b, "x"), trial(t, c, d, "x")))
		// Any juniper and any coriander of the printed ranges.
		x := rapid.Float64Range(0.5*0.857*2.3, 2.6*0.876*10.9).Draw(rt, "juniper")
		y := rapid.Float64Range(0.4*0.862*0.5, 1.5*0.878*4).Draw(rt, "coriander")
		ratio := (c*x + d*y) / (a*x + b*y)
		for _, diff := range cmp.Differences {
			if diff.Compound == "limonene" && (ratio < diff.Times.Low*(1-1e-9) || ratio > diff.Times.High*(1+1e-9)) {
				rt.Fatalf("a true ratio of %g is outside %v", ratio, diff.Times)
			}
		}
		swapped := the(botanical.Compare(trial(t, c, d, "x"), trial(t, a, b, "x")))
		for i, diff := range cmp.Differences {
			if s := swapped.Differences[i]; diff.Times.IsSet() && math.Abs(s.Times.Low*diff.Times.High-1) > 1e-9 {
				rt.Fatalf("%v and the other way round %v", diff, s)
			}
		}
	})
}
