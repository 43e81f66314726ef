package still_test

import (
	"math"
	"strings"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/still"
)

var feintsPlan = still.FeintsPlan{HeadsEnd: still.AtVolume(0.6), TailsBegin: still.AtStrength(abv(45)), HeadsBackPct: 50, TailsBackPct: 100}

// The cycle is where one run after the other leads, reckoned here without any acceleration.
func TestSteadyFeintsAreWhereRunsLead(t *testing.T) {
	b := wine()
	b.Steps = 150
	c := the(still.SteadyFeints(b, feintsPlan))
	fresh := the(still.Distil(b))
	freshE, freshW := grams(b.Pot)
	charge := b
	for range 60 {
		r := the(still.Distil(charge))
		heads, tails := r.Cut(still.AtStart(), feintsPlan.HeadsEnd), r.Cut(feintsPlan.TailsBegin, still.AtEnd())
		e, w := freshE, freshW
		var traces []still.Congener
		for k, f := range fresh.Congeners {
			traces = append(traces, still.Congener{Name: f.Name, MassG: f.ChargeG + 0.5*heads.Contents[k].MassG + tails.Contents[k].MassG})
		}
		for _, part := range []struct {
			cut   still.Cut
			share float64
		}{{heads, 0.5}, {tails, 1}} {
			pe, pw := grams(part.cut.Spirit)
			e, w = e+part.share*pe, w+part.share*pw
		}
		charge.Pot = the(alcoholometry.Weighed((e+w)/1000, the(alcoholometry.ABW(100*e/(e+w)))))
		charge.Congeners = traces
	}
	r := the(still.Distil(charge))
	hearts := r.Cut(feintsPlan.HeadsEnd, feintsPlan.TailsBegin)
	near(t, "pure alcohol in the hearts", c.Hearts.Spirit.PureL(), hearts.Spirit.PureL(), 1e-7)
	for k, x := range hearts.Contents {
		near(t, x.Name+" in the hearts", c.Hearts.Contents[k].MassG/x.MassG, 1, 1e-6)
	}
	if c.Rounds > 30 {
		t.Errorf("it took %d runs", c.Rounds)
	}
}

// In the steady state what is not sent back is what comes in.
func TestSteadyFeintsBalance(t *testing.T) {
	b := wine()
	c := the(still.SteadyFeints(b, feintsPlan))
	in, _ := grams(b.Pot)
	hearts, _ := grams(c.Hearts.Spirit)
	heads, _ := grams(c.Heads.Spirit)
	pot, _ := grams(c.Run.Pot)
	near(t, "alcohol out over in", (hearts+0.5*heads+pot)/in, 1, 1e-8)
	for k, f := range c.Run.Congeners {
		fresh := the(still.Distil(b)).Congeners[k].ChargeG
		near(t, f.Name+", out over in", (c.Hearts.Contents[k].MassG+0.5*c.Heads.Contents[k].MassG+f.PotG)/fresh, 1, 1e-8)
	}
	if c.YieldPct() <= 100*the(still.Distil(b)).Cut(feintsPlan.HeadsEnd, feintsPlan.TailsBegin).Spirit.PureL()/b.Pot.PureL() {
		t.Errorf("feints that go back raise the yield; it is %.2f %%", c.YieldPct())
	}
}

func TestHeadsPileUp(t *testing.T) {
	plan := feintsPlan
	plan.HeadsEnd, plan.HeadsBackPct = still.AtVolume(3), 100
	strong := wine()
	strong.Plates, strong.Reflux = 8, 5
	if _, err := still.SteadyFeints(strong, plan); err == nil || !strings.Contains(err.Error(), "piles up") {
		t.Errorf("all heads go back: %v", err)
	}
	if _, err := still.SteadyFeints(wine(), still.FeintsPlan{TailsBackPct: 120}); err == nil {
		t.Error("120 per cent of the tails go back")
	}
	none := the(still.SteadyFeints(wine(), still.FeintsPlan{HeadsEnd: feintsPlan.HeadsEnd}))
	if none.Back.Strength.IsSet() || none.Rounds > 1 || math.Abs(none.Run.YieldPct()-the(still.Distil(wine())).YieldPct()) > 1e-6 {
		t.Errorf("nothing goes back: %v after %d rounds", none, none.Rounds)
	}
}
