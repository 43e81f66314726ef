package botanical_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/botanical"
)

func near(got, want, relative float64) bool { return math.Abs(got-want) <= relative*math.Abs(want) }

// drawRecipe draws a recipe of listed plants.
func drawRecipe(t *rapid.T) botanical.Recipe {
	r := botanical.Recipe{Per: rapid.SampledFrom([]botanical.Per{"", botanical.PerPureL, botanical.PerChargeL}).Draw(t, "per")}
	names := rapid.SliceOfNDistinct(rapid.SampledFrom(botanical.PlantNames()), 1, 5, rapid.ID[string]).Draw(t, "plants")
	strained := false
	for _, n := range names {
		b := the(botanical.Herb(n, rapid.Float64Range(0.5, 25).Draw(t, "g")))
		b.MoisturePct = rapid.Float64Range(0, 18).Draw(t, "moisture")
		switch rapid.IntRange(0, 3).Draw(t, "use") {
		case 0:
			b.Use = botanical.Strained
			low := rapid.Float64Range(0, 100).Draw(t, "reached")
			b.ReachedPct = botanical.Between(low, rapid.Float64Range(low, 100).Draw(t, "reached"))
			strained = true
		case 1:
			low := rapid.Float64Range(0, 100).Draw(t, "released")
			b.ReleasedPct = botanical.Between(low, rapid.Float64Range(low, 100).Draw(t, "released"))
		case 2:
			b.ReleasePerH = botanical.Between(0.05, rapid.Float64Range(0.05, 20).Draw(t, "rate"))
			b.ReachedPct = botanical.Exactly(rapid.Float64Range(0, 100).Draw(t, "free"))
		}
		r.Items = append(r.Items, b)
	}
	if strained {
		r.KeepPct = rapid.Float64Range(0, 60).Draw(t, "kept")
	}
	return r
}

func TestScalingIsLinear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := drawRecipe(t)
		r.Per = rapid.SampledFrom([]botanical.Per{botanical.PerPureL, botanical.PerChargeL}).Draw(t, "rule")
		litre := rapid.Float64Range(0.5, 500)
		pct := rapid.Float64Range(20, 90)
		a, b, c := spirit(litre.Draw(t, "a"), pct.Draw(t, "qa")), spirit(litre.Draw(t, "b"), pct.Draw(t, "qb")), spirit(litre.Draw(t, "c"), pct.Draw(t, "qc"))
		ab, err1 := botanical.Scale(r, a, b)
		bc, err2 := botanical.Scale(r, b, c)
		ac, err3 := botanical.Scale(r, a, c)
		if err1 != nil || err2 != nil || err3 != nil {
			t.Fatal(err1, err2, err3)
		}
		if !near(ab.Factor*bc.Factor, ac.Factor, 1e-12) {
			t.Fatalf("%g times %g is %g; want %g", ab.Factor, bc.Factor, ab.Factor*bc.Factor, ac.Factor)
		}
		for i := range ab.Items {
			if !near(ab.Items[i].ToG, bc.Items[i].FromG, 1e-12) || !near(ab.Items[i].ToG, ab.Factor*ab.Items[i].FromG, 1e-12) {
				t.Fatalf("%s: %v then %v", ab.Items[i].Plant, ab.Items[i], bc.Items[i])
			}
		}
	})
}

func TestScalingNeedsItsRule(t *testing.T) {
	r := botanical.Recipe{Items: []botanical.Botanical{the(botanical.Herb("juniper", 20))}}
	if _, err := botanical.Scale(r, spirit(1, 60), spirit(100, 60.4)); err != nil {
		t.Errorf("strengths alike: %v", err)
	}
	_, err := botanical.Scale(r, spirit(1, 60), spirit(100, 50))
	if err == nil || !strings.Contains(err.Error(), "name the rule") {
		t.Errorf("strengths 10 %% vol apart: %v; want a refusal that asks for the rule", err)
	}
	r.Per = botanical.PerPureL
	pure := the(botanical.Scale(r, spirit(1, 60), spirit(100, 50)))
	r.Per = botanical.PerChargeL
	charge := the(botanical.Scale(r, spirit(1, 60), spirit(100, 50)))
	if !near(charge.Factor, 100, 1e-12) || !near(pure.Factor, 100*50/60.0, 1e-9) {
		t.Errorf("by charge %g, by pure alcohol %g times; want 100 and 83.33", charge.Factor, pure.Factor)
	}
}

// The oil of a plant is the sum of what the accounts say, before any run, and never more than the plant.
func TestAccountsOfACharge(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := drawRecipe(t)
		c, err := botanical.NewCharge(r, spirit(rapid.Float64Range(0.5, 300).Draw(t, "L"), rapid.Float64Range(30, 85).Draw(t, "q")))
		if err != nil {
			t.Fatal(err)
		}
		for _, l := range c.Loads {
			for _, a := range []botanical.Account{l.Least, l.Most} {
				if math.Abs(a.ClosureG()) > 1e-12*a.LoadG || a.PlantG < -1e-12 || a.PotG < 0 || a.LateG < 0 || a.MacerateG < 0 {
					t.Fatalf("%v: %+v is out by %g", l, a, a.ClosureG())
				}
			}
			if l.Least.LoadG > l.Most.LoadG {
				t.Fatalf("%v: the least is more than the most", l)
			}
		}
		for _, i := range c.Items {
			if i.OilG.High > i.MassG/4 {
				t.Fatalf("%s: %v g of oil in %g g", i.Plant, i.OilG, i.MassG)
			}
		}
		// Water only weakens; mass adds up.
		if c.Pot.Strength.ABV() > c.Spirit.Strength.ABV()+1e-9 {
			t.Fatalf("the pot is %v, charged with %v", c.Pot.Strength, c.Spirit.Strength)
		}
	})
}

// More oil, a larger share or more plant never bring less of a marker.
func TestLoadsAreMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		share, oil, g := rapid.Float64Range(1, 50).Draw(t, "share"), rapid.Float64Range(1, 100).Draw(t, "oil"), rapid.Float64Range(1, 50).Draw(t, "g")
		load := func(share, oil, g float64) float64 {
			b := botanical.Botanical{Plant: "juniper", GPerL: g, Markers: []botanical.Marker{{Compound: "limonene", SharePct: botanical.Exactly(share)}},
				Oil: botanical.OilContent{Amount: botanical.Exactly(oil), Unit: botanical.OilMLPerKg, Basis: botanical.AsWeighed}}
			return the(botanical.Recipe{Items: []botanical.Botanical{b}}.Traces(spirit(10, 60)))[0].HighG
		}
		x := load(share, oil, g)
		if load(share*1.1, oil, g) <= x || load(share, oil*1.1, g) <= x || load(share, oil, g*1.1) <= x {
			t.Fatalf("a load of %g g does not grow", x)
		}
	})
}

func TestCapOfShares(t *testing.T) {
	b := the(botanical.Herb("star anise", 10))
	c := the(botanical.NewCharge(botanical.Recipe{Items: []botanical.Botanical{b}}, spirit(1, 60)))
	for _, l := range c.Loads {
		if l.Compound != "trans-anethole" {
			continue
		}
		// At least 86 % has no upper figure in print; limonene (1.4) and estragole (0.6) leave 98 % at most.
		if high := 100 * l.Most.LoadG / c.OilG().High; !near(high, 98, 1e-9) {
			t.Errorf("anethole up to %.3f %% of the oil; want 98", high)
		}
		return
	}
	t.Error("star anise brings no anethole")
}

// The worked figure of the liquid that a herb keeps: 60 g/L, 1.7 L/kg, 72 % vol keep 0.102 L with 0.0734 L of pure alcohol.
func TestRetainedLiquid(t *testing.T) {
	b := the(botanical.Herb("lemon balm", 60))
	b.Use, b.RetainedLKg = botanical.Strained, botanical.Exactly(1.7)
	c := the(botanical.NewCharge(botanical.Recipe{Per: botanical.PerChargeL, Items: []botanical.Botanical{b}}, spirit(1, 72)))
	if got := c.RetainedL.Low; !near(got, 0.102, 1e-9) {
		t.Errorf("%g L stay in the herb; want 0.102", got)
	}
	if got := c.RetainedPureL().Low; math.Abs(got-0.0734) > 5e-5 {
		t.Errorf("%g L of pure alcohol stay in the herb; want 0.0734", got)
	}
	if !near(c.Pot.VolumeL, 0.898, 1e-9) {
		t.Errorf("%g L into the pot; want 0.898", c.Pot.VolumeL)
	}
	h, err := botanical.SpentHerbs(botanical.Spent{DryKg: 0.06, WetKg: 0.06 + 0.102*c.Steeped.MassKg(), Strength: abv(72)})
	if err != nil || !near(h.LKg, 1.7, 1e-9) || math.Abs(h.PureL-0.0734) > 5e-5 {
		t.Errorf("weighed: %v, %v; want 1.7 L/kg", h, err)
	}
}

func TestRoom(t *testing.T) {
	b := the(botanical.Herb("juniper", 100))
	r := botanical.Recipe{Per: botanical.PerChargeL, Items: []botanical.Botanical{b}}
	c := the(botanical.NewCharge(r, spirit(10, 50)))
	room, err := botanical.RoomFor(c, 20)
	if err != nil {
		t.Fatal(err)
	}
	// 1 kg of dry plant raises the level by 0.667 L; in a heap it takes (0.667 + 2 to 3)/(0.8 to 0.6).
	if !near(room.LevelL.Low, 10.667, 1e-9) || !near(room.HeapL.Low, 2.667/0.8, 1e-9) || !near(room.HeapL.High, 3.667/0.6, 1e-9) || len(room.Notes) != 0 {
		t.Errorf("%v %v", room, room.Notes)
	}
	if room, err = botanical.RoomFor(c, 14); err != nil || len(room.Notes) != 1 || !strings.Contains(room.Notes[0], "foam") {
		t.Errorf("three quarters full: %v, %v", room.Notes, err)
	}
	if _, err = botanical.RoomFor(c, 10); err == nil {
		t.Error("10.7 L go into 10 L")
	}
	b.Use = botanical.Infused
	c = the(botanical.NewCharge(botanical.Recipe{Per: botanical.PerChargeL, Items: []botanical.Botanical{b}}, spirit(10, 50)))
	if _, err := botanical.RoomFor(c, 20); err == nil {
		t.Error("an infusion has room in a pot")
	}
	if room, err = botanical.RoomToSteep(c, 20); err != nil || !near(room.LevelL.Low, 10.667, 1e-9) {
		t.Errorf("a jar of 20 L: %v, %v", room, err)
	}
}

func TestOwnAnalysisComesFirst(t *testing.T) {
	b := the(botanical.Herb("grand wormwood", 25)).
		WithOil(botanical.OilContent{Amount: botanical.Exactly(0.6), Unit: botanical.OilPctMass, Basis: botanical.AsWeighed}).
		WithMarker("thujone", botanical.Exactly(19))
	c := the(botanical.NewCharge(botanical.Recipe{Per: botanical.PerChargeL, Items: []botanical.Botanical{b}}, spirit(1, 70)))
	total := 0.0
	for _, l := range c.Loads {
		if l.Least.LoadG != l.Most.LoadG {
			t.Errorf("%v: a range after an analysis", l)
		}
		total += 1000 * l.Least.LoadG
	}
	if !near(total, 28.5, 1e-9) { // 25 g × 0.6 % × 19 %
		t.Errorf("%g mg/L of thujone; want 28.5", total)
	}
	for _, n := range c.Notes() {
		if strings.Contains(n, "no middle") {
			t.Errorf("after an analysis it says %q", n)
		}
	}
}
