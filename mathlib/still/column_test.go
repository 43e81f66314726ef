package still_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/still"
)

// What goes into a column comes out of it, and the staircase leads from the distillate to the bottoms between curve and line.
func TestColumnBalances(t *testing.T) {
	done := 0
	rapid.Check(t, func(t *rapid.T) {
		c := still.Column{
			Feeds:       []still.Feed{{KmolH: rapid.Float64Range(1, 200).Draw(t, "feed"), Strength: mole(rapid.Float64Range(0.01, 0.3).Draw(t, "z")), VapourShare: rapid.SampledFrom([]float64{0, 0, -0.1, 0.5}).Draw(t, "vapour")}},
			Distillate:  mole(rapid.Float64Range(0.4, 0.85).Draw(t, "xD")),
			RecoveryPct: rapid.Float64Range(80, 99.9).Draw(t, "recovery"), OpenSteam: rapid.Bool().Draw(t, "steam"),
			EfficiencyPct: rapid.SampledFrom([]float64{0, 60}).Draw(t, "efficiency"),
		}
		if rapid.Bool().Draw(t, "side feed") {
			c.Feeds = append(c.Feeds, still.Feed{KmolH: 20, Strength: mole(c.Feeds[0].Strength.MoleFraction() / 3)})
		}
		p, err := still.MinimumReflux(c)
		if err != nil {
			return
		}
		c.Reflux = p.Reflux*rapid.Float64Range(1.2, 4).Draw(t, "over the least") + 0.05
		s, err := still.ColumnStages(c)
		if err != nil {
			return
		}
		done++
		in, inE := s.SteamKmolH, 0.0
		for _, f := range c.Feeds {
			in, inE = in+f.KmolH, inE+f.KmolH*f.Strength.MoleFraction()
		}
		xD, xB := c.Distillate.MoleFraction(), s.Bottoms.MoleFraction()
		if d := s.DistillateKmolH + s.BottomsKmolH - in; math.Abs(d) > 1e-11*in {
			t.Fatalf("moles out less moles in: %g", d)
		}
		if d := s.DistillateKmolH*xD + s.BottomsKmolH*xB - inE; math.Abs(d) > 1e-11*inE {
			t.Fatalf("alcohol out less alcohol in: %g", d)
		}
		if s.X[0] != xD || s.Y[0] != xD || s.X[len(s.X)-1] > xB || s.X[len(s.X)-2] <= xB {
			t.Fatalf("the staircase goes from (%g, %g) to %g; the distillate is %g, the bottoms %g", s.X[0], s.Y[0], s.X[len(s.X)-1], xD, xB)
		}
		if len(s.FeedStages) != len(c.Feeds) {
			t.Fatalf("%d feeds go to stages %v", len(c.Feeds), s.FeedStages)
		}
		for i := 1; i < len(s.X); i++ {
			if i%2 == 1 && (s.Y[i] != s.Y[i-1] || s.X[i] >= s.X[i-1]) || i%2 == 0 && (s.X[i] != s.X[i-1] || s.Y[i] >= s.Y[i-1]) {
				t.Fatalf("corner %d goes from (%g, %g) to (%g, %g)", i, s.X[i-1], s.Y[i-1], s.X[i], s.Y[i])
			}
		}
		c.Reflux *= 1.5 // with open steam more of it waters the bottoms down, which takes more stages
		if more, err := still.ColumnStages(c); err == nil && !c.OpenSteam && math.Ceil(more.Stages) > math.Ceil(s.Stages) {
			t.Fatalf("more reflux takes %g stages, less %g", more.Stages, s.Stages)
		}
	})
	if done < 30 {
		t.Fatalf("only %d columns worked: the test tests nothing", done)
	}
}

// Between the least reflux and a little less lies the whole difference between a column and none.
func TestTheLeastRefluxIsTheLeast(t *testing.T) {
	for _, c := range []still.Column{
		{Feeds: []still.Feed{{LH: 100, Strength: abv(10)}}, Distillate: abv(93), RecoveryPct: 98, OpenSteam: true},
		{Feeds: []still.Feed{{LH: 100, Strength: abv(30)}}, Distillate: abv(80), RecoveryPct: 98},
		{Feeds: []still.Feed{{LH: 50, Strength: abv(40)}, {LH: 100, Strength: abv(8)}}, Distillate: abv(92), Bottoms: abv(0.1), OpenSteam: true},
	} {
		p := the(still.MinimumReflux(c))
		c.Reflux = p.Reflux * (1 + 1e-7)
		above, err := still.ColumnStages(c)
		if err == nil && above.Stages < 20 {
			t.Errorf("just above the least reflux of %.3f %.1f stages are enough", p.Reflux, above.Stages)
		}
		c.Reflux = p.Reflux * 0.999
		if _, err := still.ColumnStages(c); err == nil {
			t.Errorf("below the least reflux of %.3f a column works", p.Reflux)
		}
	}
}

func TestFeedRatesAndShares(t *testing.T) {
	byL := still.Column{Feeds: []still.Feed{{LH: 250, Strength: abv(10)}}, Distillate: abv(90), RecoveryPct: 98, Reflux: 4}
	byMol := byL
	byMol.Feeds = []still.Feed{{KmolH: moles(alcoholometry.Spirit{VolumeL: 250, Strength: abv(10)}) / 1000, Strength: abv(10)}}
	a, b := the(still.ColumnStages(byL)), the(still.ColumnStages(byMol))
	near(t, "stages", a.Stages, b.Stages, 1e-9)
	// Pure alcohol in and out: 25 L/h, of which 98 %.
	near(t, "pure alcohol in the distillate", a.DistillateLH*0.9, 24.5, 1e-6)
	// A feed that boils is no vapour; 10 % vol at 20 °C warms by 72 °C at about 4.3 kJ/(kg K) and 17 g/0.92 mol: 0.14 of the
	// 40.8 kJ that a mole takes to boil (by hand).
	near(t, "vapour share of a cold feed", the(still.FeedVapourShare(abv(10), celsius(20), kPa(101.325))), -0.145, 0.008)
	if _, err := still.FeedVapourShare(abv(10), celsius(95), kPa(101.325)); err == nil {
		t.Error("a liquid above its boiling point")
	}
	cold := byL
	cold.Feeds = []still.Feed{{LH: 250, Strength: abv(10), VapourShare: -0.145}}
	if c := the(still.ColumnStages(cold)); c.VapourKmolH <= a.VapourKmolH {
		t.Errorf("a cold feed takes %g kmol/h of vapour at the bottom, a boiling one %g", c.VapourKmolH, a.VapourKmolH)
	}
}
