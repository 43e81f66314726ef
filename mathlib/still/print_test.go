package still_test

import (
	"fmt"
	"math"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/equilibrium"
	"swanneck/mathlib/still"
)

// figure returns what a row of testdata asks of a run.
func figure(t *testing.T, r still.Run, name string) float64 {
	t.Helper()
	last := r.Steps[len(r.Steps)-1]
	switch name {
	case "left":
		return 100 * moles(r.Pot) / moles(r.Charge)
	case "integral":
		return math.Log(moles(r.Charge) / moles(r.Pot))
	case "mean":
		return r.Distillate.Strength.MoleFraction()
	case "first":
		return r.Steps[0].Strength.MoleFraction()
	case "last":
		return last.Strength.MoleFraction()
	case "pot":
		return r.Pot.Strength.MoleFraction()
	case "boil":
		return 1000 * r.Heat.BoilUpKJ / moles(r.Charge)
	case "condenser":
		return 1000 * r.Heat.CondenserKJ / moles(r.Charge)
	}
	t.Fatalf("no figure %q", name)
	return 0
}

func TestPublishedBatches(t *testing.T) {
	for _, row := range table(t, "batch.csv") {
		b := still.Batch{Pot: litres(100, row.number("x0")), Plates: row.number("plates"), Reflux: row.number("reflux"), UntilPot: mole(row.number("until")),
			Equilibrium: curve(t, row.text("equilibrium"), "perry_carey_lewis.csv")}
		r, err := still.Distil(b)
		if err != nil {
			t.Errorf("%s: %v", row.text("id"), err)
			continue
		}
		near(t, fmt.Sprintf("%s, %s, %s", row.text("id"), row.text("equilibrium"), row.text("figure")), figure(t, r, row.text("figure")), row.number("value"), row.number("tol"))
	}
}

// Coulson and Richardson's example 11.12 with its own table.
func TestPublishedHold(t *testing.T) {
	table112 := curve(t, "smooth", "perry_carey_lewis.csv")
	batch := still.Batch{Pot: litres(100, 0.55), Plates: 4, Hold: mole(0.75), MostReflux: 4.3, Equilibrium: table112}
	r := the(still.Distil(batch))
	rows := table(t, "hold.csv")
	for _, row := range rows {
		x := row.number("x")
		for i := 1; i < len(r.Steps); i++ {
			a, b := r.Steps[i-1], r.Steps[i]
			xa, xb := a.PotStrength.MoleFraction(), b.PotStrength.MoleFraction()
			if xa >= x-1e-9 && xb < x {
				near(t, fmt.Sprintf("reflux at x = %g", x), a.Reflux+(b.Reflux-a.Reflux)*(xa-x)/(xa-xb), row.number("reflux"), row.number("tol"))
				break
			}
			if i == len(r.Steps)-1 {
				t.Errorf("the pot does not come to x = %g", x)
			}
		}
	}
	batch.MostReflux = 4
	r = the(still.Distil(batch))
	near(t, "moles over of 100", 100*moles(r.Distillate)/moles(r.Charge), 71.4, 0.3)
	integral, before, reflux := 0.0, 0.0, r.Steps[0].Reflux
	for _, s := range r.Steps {
		d := 100 * moles(alcoholometry.Spirit{VolumeL: s.CollectedL, Strength: s.Collected}) / moles(r.Charge)
		integral += (d - before) * (s.Reflux + reflux) / 2
		before, reflux = d, s.Reflux
		near(t, "the strength held", s.Strength.MoleFraction(), 0.75, 1e-12)
	}
	near(t, "integral of the reflux", integral, 96, 2)
}

func TestPublishedColumns(t *testing.T) {
	for _, row := range table(t, "column.csv") {
		c := still.Column{Feeds: []still.Feed{{KmolH: 100, Strength: mole(row.number("feed"))}}, Distillate: mole(row.number("distillate")),
			Reflux: row.number("reflux"), OpenSteam: row.text("steam") == "yes", Equilibrium: curve(t, row.text("equilibrium"), "perry_carey_lewis.csv")}
		if row.text("recovery") != "" {
			c.RecoveryPct = row.number("recovery")
		} else {
			c.Bottoms = mole(row.number("bottoms"))
		}
		if c.Reflux == 0 {
			c.Reflux = 1.5 * the(still.MinimumReflux(c)).Reflux
		}
		s, err := still.ColumnStages(c)
		if err != nil {
			t.Errorf("%s: %v", row.text("id"), err)
			continue
		}
		got := map[string]float64{"stages": s.Stages, "feed_stage": float64(s.FeedStages[0]), "d": s.DistillateKmolH, "b": s.BottomsKmolH,
			"steam": s.SteamKmolH, "xb": s.Bottoms.MoleFraction(), "least": s.Minimum.Reflux}
		v, ok := got[row.text("figure")]
		if !ok {
			t.Fatalf("no figure %q", row.text("figure"))
		}
		near(t, fmt.Sprintf("%s, %s, %s", row.text("id"), row.text("equilibrium"), row.text("figure")), v, row.number("value"), row.number("tol"))
		if row.text("id") == "seader732" && !s.Minimum.Tangent {
			t.Errorf("%s: the pinch is at the feed, x = %.3f; it is a tangent", row.text("id"), s.Minimum.X)
		}
	}
}

// A stripping column without reflux; the least steam is that of a vapour in equilibrium with the feed.
func TestPublishedStripper(t *testing.T) {
	const feed, over = 0.033, 0.99
	e := curve(t, "straight", "geankoplis.csv")
	rows := table(t, "geankoplis.csv")
	least := over * feed / rows[len(rows)-1].number("y")
	near(t, "least steam", least, 0.121, 0.0005)
	xD := over * feed / (2 * least)
	near(t, "mean distillate", xD, 0.135, 0.0005)
	s := the(still.ColumnStages(still.Column{Feeds: []still.Feed{{KmolH: 100, Strength: mole(feed)}}, Distillate: mole(xD), RecoveryPct: 100 * over, OpenSteam: true, Equilibrium: e}))
	near(t, "steps", s.Stages, 5.0, 0.1)
	near(t, "bottoms", s.Bottoms.MoleFraction(), 0.00033, 0.000005)
	near(t, "steam", s.SteamKmolH, 200*least, 1e-9)
}

// Figures of another program on the same equations.
func TestReckoned(t *testing.T) {
	const dortmund = "UNIFAC Dortmund"
	for _, row := range table(t, "reckoned.golden.csv") {
		a, b, name := row.number("a"), row.number("b"), row.text("figure")
		what := fmt.Sprintf("%s %g %g, %s", row.text("case"), a, b, name)
		var got float64
		switch row.text("case") {
		case "staged":
			got = figure(t, the(still.Distil(still.Batch{Pot: litres(100, 0.1), Plates: a, Reflux: b, UntilPot: mole(0.01), Model: dortmund})), name)
		case "steam":
			// A charge at its boiling point, so that no steam goes into warming it.
			batch := still.Batch{Pot: litres(100, 0.05), Steam: still.LiveSteam{Live: true}, UntilPot: mole(a), Model: dortmund}
			batch.Heat.Charge = celsius(the(equilibrium.Bubble(batch.Pot.Strength, batch.P, equilibrium.UseModel(dortmund))).Temp.C() - 1e-5)
			r := the(still.Distil(batch))
			got = moles(r.Distillate) / moles(r.Pot)
		case "condenser":
			kind := still.InEquilibrium
			if name == "differential" {
				kind = still.Differential
			}
			got = firstOver(a, kind, dortmund)
		case "heat":
			batch := still.Batch{Pot: litres(100, 0.0329), Plates: a, Reflux: a / 2, Heat: still.Heating{Distillate: celsius(25)}}
			got = figure(t, shareOver(batch, b), name)
		case "thumper":
			pot := litres(100, 0.0329)
			x := mole(a)
			kg := 0.2 * moles(pot) / moles(the(alcoholometry.Weighed(1, x)))
			batch := still.Batch{Pot: pot, Thumper: still.Thumper{Charge: the(alcoholometry.Weighed(kg, x))}, Steps: 200}
			got = figure(t, shareOver(batch, b), name)
		default:
			t.Fatalf("no case %q", row.text("case"))
		}
		near(t, what, got, row.number("value"), row.number("tol"))
	}
}

// firstOver returns the first distillate over a vapour y of which a partial condenser gives back half.
func firstOver(y float64, kind still.Returns, model string) float64 {
	low, high := 0.001, y // the liquid whose vapour is y
	for range 60 {
		x := (low + high) / 2
		plain := the(still.Distil(still.Batch{Pot: litres(100, x), Stop: still.AtVolume(0.01), Steps: 20, Model: model}))
		if plain.Steps[0].Strength.MoleFraction() < y {
			low = x
		} else {
			high = x
		}
	}
	r := the(still.Distil(still.Batch{Pot: litres(100, low), Reflux: 1, Condenser: kind, Stop: still.AtVolume(0.01), Steps: 20, Model: model}))
	return r.Steps[0].Strength.MoleFraction()
}

// shareOver distils until a share of the pot's moles is over.
func shareOver(b still.Batch, share float64) still.Run {
	low, high := 0.001, b.Pot.VolumeL
	var r still.Run
	for range 50 {
		b.Stop = still.AtVolume((low + high) / 2)
		var err error
		if r, err = still.Distil(b); err != nil || moles(r.Distillate) > share*moles(r.Charge) {
			high = (low + high) / 2
		} else {
			low = (low + high) / 2
		}
	}
	b.Stop = still.AtVolume(low)
	return the(still.Distil(b))
}
