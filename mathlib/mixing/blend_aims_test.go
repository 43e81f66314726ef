package mixing_test

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"time"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

// lot returns a lot without anything in it but spirit.
func lot(name string, litres, pct, costPerL float64) mixing.Lot {
	s := alcoholometry.Strength(alcoholometry.Water)
	if pct > 0 {
		s = abv(pct)
	}
	return mixing.Lot{Name: name, CostPerL: costPerL, Spirit: alcoholometry.Spirit{VolumeL: litres, Strength: s}}
}

// On a grid: three lots and water make a blend of one strength with two choices left; going through both finds no cheaper
// one, and one that is nearly as cheap.
func TestBlendsAgainstAGrid(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 2))
	tried, close := 0, 0
	for range 300 {
		o := drawBlend(r, 4)
		got, err := mixing.BlendLots(o)
		if err != nil {
			continue
		}
		tried++
		blend := alcoholometry.Spirit{VolumeL: o.VolumeL, Strength: o.Strength, Temp: o.Temp}
		kg, ethanolKg := blend.MassKg(), blend.MassKg()*blend.Strength.ABW()/100
		at20L := blend.VolumeAt(quantity.Temperature{})
		const n = 60
		best := math.Inf(1)
		a := o.Lots
		w := func(i int) float64 { return a[i].Spirit.Strength.ABW() / 100 }
		for i := range n + 1 {
			for j := range n + 1 {
				x := [4]float64{kg * float64(i) / n, kg * float64(j) / n, 0, 0}
				x[2] = (ethanolKg - x[0]*w(0) - x[1]*w(1)) / w(2)
				x[3] = kg - x[0] - x[1] - x[2]
				cost, methanolG, estersG, fits := 0.0, 0.0, 0.0, true
				for k, l := range a {
					fits = fits && x[k] >= 0 && x[k] <= l.Spirit.MassKg() && (l.MostPct == 0 || x[k] <= l.MostPct/100*kg)
					s := l.Spirit
					s.VolumeL *= math.Max(x[k], 0) / l.Spirit.MassKg()
					cost += s.VolumeL * l.CostPerL
					if k < 3 {
						methanolG += the(alcoholometry.MassG(l.Holds["methanol"], s))
						estersG += the(alcoholometry.MassG(l.Holds["esters"], s))
					}
				}
				fits = fits && methanolG <= o.Limits[0].Most.Value()*blend.PureL()/100 && estersG <= o.Limits[1].Most.Value()*at20L/1000 && estersG >= o.Limits[1].Least.Value()*at20L/1000
				if fits {
					best = math.Min(best, cost)
				}
			}
		}
		if best < got.Cost*(1-1e-9) {
			t.Fatalf("the grid has a blend for %.6f; found %.6f", best, got.Cost)
		}
		if best < got.Cost*1.05 {
			close++
		}
	}
	// Where the limits leave a sliver the grid misses it; else it comes near.
	if tried < 100 || close < tried*2/3 {
		t.Fatalf("%d blends, %d of them with a point of the grid within 5 %%", tried, close)
	}
}

// A range of strengths against going through the strengths.
func TestRangeOfStrengths(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 3))
	tried := 0
	for range 60 {
		o := drawBlend(r, 6)
		o.StrengthTo = abv(o.Strength.ABV() + 1 + 4*r.Float64())
		got, err := mixing.BlendLots(o)
		best := math.Inf(1)
		low, high := o.Strength.ABV(), o.StrengthTo.ABV()
		for k := range 101 {
			exact := o
			exact.Strength, exact.StrengthTo = abv(low+(high-low)*float64(k)/100), alcoholometry.Strength{}
			if p, err := mixing.BlendLots(exact); err == nil {
				best = math.Min(best, p.Cost)
			}
		}
		if err != nil {
			if !math.IsInf(best, 1) {
				t.Fatalf("%v; one strength allows a blend for %.6f", err, best)
			}
			continue
		}
		tried++
		checkBlend(t, got)
		if best < got.Cost*(1-1e-7) {
			t.Fatalf("%v costs %.8f; a strength between allows %.8f", got, got.Cost, best)
		}
	}
	if tried < 20 {
		t.Fatalf("only %d blends", tried)
	}
}

func TestAsMuchAsThereIs(t *testing.T) {
	o := mixing.BlendOrder{AsMuch: true, Strength: abv(40), Lots: []mixing.Lot{lot("Birkenau 3", 200, 70, 0), lot("Birkenau 4", 100, 60, 0), lot("water", 1e5, 0, 0)}}
	p := the(mixing.BlendLots(o))
	checkBlend(t, p)
	want := the(mixing.Reduce(the(mixing.Blend(o.Lots[0].Spirit, o.Lots[1].Spirit)), abv(40))).Result.VolumeL
	if !near(p.Result.VolumeL, want, 1e-10) {
		t.Errorf("%.6f L; both lots reduced give %.6f", p.Result.VolumeL, want)
	}
	o.TankL = 300
	if p = the(mixing.BlendLots(o)); !near(p.Result.VolumeL, 300, 1e-10) || !slices.Contains(p.AtLimit, "the tank at most 300.00 L") {
		t.Errorf("%v, at its limits %q; want the tank full", p, p.AtLimit)
	}
	o.Strength = abv(80)
	var none *mixing.BlendError
	if p, err := mixing.BlendLots(o); !errors.As(err, &none) || none.Blocks[0].Limit != "the strength" || math.Abs(none.Blocks[0].Needed-70) > 1e-6 {
		t.Errorf("%v, %v; want a strength of at most 70", p, err)
	}
}

func TestEvenly(t *testing.T) {
	var o mixing.BlendOrder
	for i, pct := range []float64{71, 68, 64, 62, 59} {
		o.Lots = append(o.Lots, lot(fmt.Sprint("cask ", i+1), 180, pct, 0))
	}
	o.Lots = append(o.Lots, lot("water", 1000, 0, 0))
	o.VolumeL, o.Strength = 700, abv(43)
	p := the(mixing.BlendLots(o))
	checkBlend(t, p)
	if p.Order.Aim != mixing.Evenly {
		t.Errorf("the aim is %q", p.Order.Aim)
	}
	for _, b := range p.Parts[:5] {
		if !near(b.VolumeL, p.Parts[0].VolumeL, 1e-9) {
			t.Errorf("%v draws unevenly", p)
		}
	}
	// Without water the strength has to come from the lots: not all can be drawn alike.
	o.Lots, o.Strength, o.VolumeL = o.Lots[:5], abv(66), 500
	p = the(mixing.BlendLots(o))
	checkBlend(t, p)
	alike := 0
	for _, b := range p.Parts {
		if near(b.VolumeL, p.Parts[1].VolumeL, 1e-9) {
			alike++
		}
	}
	if alike < 3 {
		t.Errorf("%v: only %d lots are drawn alike", p, alike)
	}
}

func TestClosestToAProfile(t *testing.T) {
	with := func(l mixing.Lot, esters, smoke float64) mixing.Lot {
		l.Holds = map[string]quantity.Concentration{"esters": the(quantity.GHLPure(esters)), "smoke": the(quantity.PartsPerMillion(smoke))}
		return l
	}
	o := mixing.BlendOrder{VolumeL: 100, Strength: abv(45), Currency: "XTS", Lots: []mixing.Lot{
		with(lot("A", 100, 65, 4), 100, 0), with(lot("B", 100, 63, 5), 300, 20), with(lot("C", 100, 60, 9), 50, 80), lot("water", 100, 0, 0)}}
	// A blend that exists is found again by what it holds, and its deviation is none.
	parts := []alcoholometry.Spirit{}
	for i, litres := range []float64{25, 30, 15} {
		s := o.Lots[i].Spirit
		s.VolumeL = litres
		parts = append(parts, s)
	}
	blend := the(mixing.Reduce(the(mixing.Blend(parts...)), abv(45))).Result
	esters, smoke := 0.0, 0.0
	for i, s := range parts {
		esters += the(alcoholometry.MassG(o.Lots[i].Holds["esters"], s))
		smoke += the(alcoholometry.MassG(o.Lots[i].Holds["smoke"], s))
	}
	o.VolumeL = blend.VolumeL
	o.Profile = []mixing.BlendMarker{{Name: "esters", Wanted: the(quantity.GHLPure(esters / blend.PureL() * 100))}, {Name: "smoke", Wanted: the(quantity.PartsPerMillion(smoke / blend.MassKg() * 1000))}}
	p := the(mixing.BlendLots(o))
	checkBlend(t, p)
	if p.DeviationPct > 1e-7 || !near(p.Parts[0].VolumeL, 25, 1e-7) || !near(p.Parts[1].VolumeL, 30, 1e-7) || !near(p.Parts[2].VolumeL, 15, 1e-7) {
		t.Errorf("%v; the profile is that of 25, 30 and 15 L", p)
	}
	// A profile out of reach: the deviation is the least of all shares.
	o.Profile[1].Wanted = the(quantity.PartsPerMillion(100))
	p = the(mixing.BlendLots(o))
	checkBlend(t, p)
	for i := range 41 {
		for j := range 41 - i {
			a, b := float64(i)/40, float64(j)/40
			c := 1 - a - b
			// Shares of the pure alcohol; the mass of smoke follows from each lot's strength.
			e := 100*a + 300*b + 50*c
			kgPerL := func(k int) float64 { return o.Lots[k].Spirit.MassKg() / o.Lots[k].Spirit.PureL() }
			perKg := (20*b*kgPerL(1) + 80*c*kgPerL(2)) / (blend.MassKg() / blend.PureL())
			d := 50 * (math.Abs(e/o.Profile[0].Wanted.Value()-1) + math.Abs(perKg/100-1))
			if d < p.DeviationPct-1e-9 {
				t.Fatalf("%v; shares of %g, %g and %g are %.4f %% off", p, a, b, c, d)
			}
		}
	}
}

func TestGroupsAndSharesOfPureAlcohol(t *testing.T) {
	o := mixing.BlendOrder{VolumeL: 300, Strength: abv(42), Currency: "XTS", SharesOf: mixing.SharesOfPureAlcohol,
		Lots:   []mixing.Lot{lot("neutral", 400, 96, 1), lot("malt 1", 100, 63, 8), lot("malt 2", 100, 58, 7), lot("water", 500, 0, 0)},
		Groups: []mixing.LotGroup{{Name: "malt", Lots: []string{"malt 1", "malt 2"}, LeastPct: 30}}}
	o.Lots[1].LeastL = 10
	p := the(mixing.BlendLots(o))
	checkBlend(t, p)
	share := 0.0
	for _, b := range p.Parts {
		if strings.HasPrefix(b.Lot, "malt") {
			share += 100 * b.PureL / p.PureL
		}
		if b.Lot == "malt 1" && !near(b.VolumeL, 10, 1e-9) {
			t.Errorf("%v takes %.6f L of malt 1; 10 L must go in and the other is cheaper", p, b.VolumeL)
		}
	}
	if !near(share, 30, 1e-9) {
		t.Errorf("%v: malt makes %.9g %% of the pure alcohol; 30 is the cheapest", p, share)
	}
	if !slices.Contains(p.AtLimit, "the share of group malt at least 30.00 % of the pure alcohol") {
		t.Errorf("at its limits: %q", p.AtLimit)
	}
}

func TestBlendsThatAreRefused(t *testing.T) {
	fine := func() mixing.BlendOrder {
		return mixing.BlendOrder{VolumeL: 100, Strength: abv(42), Lots: []mixing.Lot{lot("A", 100, 65, 0), lot("water", 100, 0, 0)}}
	}
	if _, err := mixing.BlendLots(fine()); err != nil {
		t.Fatal(err)
	}
	for want, spoil := range map[string]func(o *mixing.BlendOrder){
		"no lots":              func(o *mixing.BlendOrder) { o.Lots = nil },
		"0 L; give one above":  func(o *mixing.BlendOrder) { o.Lots[0].Spirit.VolumeL = 0 },
		"not set":              func(o *mixing.BlendOrder) { o.Strength = alcoholometry.Strength{} },
		"has no name":          func(o *mixing.BlendOrder) { o.Lots[0].Name = "" },
		"two lots are named":   func(o *mixing.BlendOrder) { o.Lots[0].Name = "water" },
		"the currency is":      func(o *mixing.BlendOrder) { o.Lots[0].CostPerL = 3 },
		"must be at least 0":   func(o *mixing.BlendOrder) { o.Lots[0].CostPerL, o.Currency = -3, "XTS" },
		"volume wanted is 0 L": func(o *mixing.BlendOrder) { o.VolumeL = 0 },
		"both AsMuch":          func(o *mixing.BlendOrder) { o.AsMuch = true },
		"the tank holds":       func(o *mixing.BlendOrder) { o.TankL = 99 },
		"must not be below":    func(o *mixing.BlendOrder) { o.StrengthTo = abv(41) },
		"is 0 % vol":           func(o *mixing.BlendOrder) { o.Strength = alcoholometry.Water },
		"limits nothing":       func(o *mixing.BlendOrder) { o.Limits = []mixing.BlendLimit{{Name: "methanol"}} },
		"no figure for methanol": func(o *mixing.BlendOrder) {
			o.Limits = []mixing.BlendLimit{{Name: "methanol", Most: the(quantity.MgL(1))}}
		},
		"count both on the same": func(o *mixing.BlendOrder) {
			o.Limits = []mixing.BlendLimit{{Name: "x", Least: the(quantity.MgL(1)), Most: the(quantity.MgKg(2))}}
		},
		"least must not be above": func(o *mixing.BlendOrder) {
			o.Limits = []mixing.BlendLimit{{Name: "x", Least: the(quantity.MgL(3)), Most: the(quantity.MgL(2))}}
		},
		"add up to 120 %":       func(o *mixing.BlendOrder) { o.Lots[0].LeastPct, o.Lots[1].LeastPct = 70, 50 },
		"add up to 90 %":        func(o *mixing.BlendOrder) { o.Lots[0].MostPct, o.Lots[1].MostPct = 60, 30 },
		"from 50 to 40 %":       func(o *mixing.BlendOrder) { o.Lots[0].LeastPct, o.Lots[0].MostPct = 50, 40 },
		"must be from 0 to 100": func(o *mixing.BlendOrder) { o.Lots[0].MostPct = 101 },
		"no lot or stands": func(o *mixing.BlendOrder) {
			o.Groups = []mixing.LotGroup{{Name: "g", Lots: []string{"B"}, MostPct: 10}}
		},
		"group g limits nothing": func(o *mixing.BlendOrder) { o.Groups = []mixing.LotGroup{{Name: "g", Lots: []string{"A"}}} },
		"there is none":          func(o *mixing.BlendOrder) { o.Aim = mixing.Closest },
		`aim is "best"`:          func(o *mixing.BlendOrder) { o.Aim = "best" },
		`shares of "volume"`:     func(o *mixing.BlendOrder) { o.SharesOf = "volume" },
		"above 0 (a limit": func(o *mixing.BlendOrder) {
			o.Profile = []mixing.BlendMarker{{Name: "x", Wanted: the(quantity.MgL(0))}}
		},
		"must be from 0 to 100 L":                              func(o *mixing.BlendOrder) { o.Lots[0].LeastL = 101 },
		"the volume at least":                                  func(o *mixing.BlendOrder) { o.VolumeL = 1e4 },
		"the strength at least 65.000 instead of 70.000 % vol": func(o *mixing.BlendOrder) { o.Strength = abv(70) },
	} {
		o := fine()
		spoil(&o)
		p, err := mixing.BlendLots(o)
		if err == nil {
			t.Errorf("%s: %v and no error", want, p)
			continue
		}
		if !strings.HasPrefix(err.Error(), "mixing.BlendLots: ") || !strings.Contains(err.Error(), want) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%q; want one line of mixing.BlendLots with %q", err, want)
		}
	}
}

// A blend that must end on limits which all meet in one corner, several times over.
func TestLimitsThatMeet(t *testing.T) {
	o := mixing.BlendOrder{VolumeL: 100, Strength: abv(40), Currency: "XTS"}
	for i := range 12 { // twins, so that many blends are equally cheap
		l := lot(fmt.Sprint("lot ", i), 50, 60, 2)
		l.Holds = map[string]quantity.Concentration{"x": the(quantity.GHLPure(10))}
		l.MostPct = 25
		o.Lots = append(o.Lots, l)
	}
	o.Lots = append(o.Lots, lot("water", 100, 0, 0))
	for range 8 {
		o.Limits = append(o.Limits, mixing.BlendLimit{Name: "x", Least: the(quantity.GHLPure(10)), Most: the(quantity.GHLPure(10))})
	}
	p := the(mixing.BlendLots(o))
	checkBlend(t, p)
	again := the(mixing.BlendLots(o))
	if fmt.Sprint(p.Rows()) != fmt.Sprint(again.Rows()) || p.Cost != again.Cost {
		t.Errorf("the same order gave %v and %v", p, again)
	}
	o.Limits[3].Most = the(quantity.GHLPure(9.5))
	o.Limits[3].Least = the(quantity.GHLPure(9))
	var none *mixing.BlendError
	if p, err := mixing.BlendLots(o); !errors.As(err, &none) || none.Blocks[0].Limit != "x" {
		t.Errorf("%v, %v; x cannot be 9.5", p, err)
	}
}

// large returns an order of n lots under m limits.
func large(n, m int) mixing.BlendOrder {
	r := rand.New(rand.NewPCG(8, 4))
	o := mixing.BlendOrder{VolumeL: 20 * float64(n), Strength: abv(43), Currency: "XTS"}
	for i := range n {
		l := lot(fmt.Sprint("cask ", i), 100+100*r.Float64(), 50+25*r.Float64(), 3+9*r.Float64())
		l.Holds = map[string]quantity.Concentration{}
		for k := range m {
			l.Holds[fmt.Sprint("marker ", k)] = the(quantity.GHLPure(100 * r.Float64()))
		}
		o.Lots = append(o.Lots, l)
	}
	o.Lots = append(o.Lots, lot("water", 1e6, 0, 0.01))
	for k := range m {
		o.Limits = append(o.Limits, mixing.BlendLimit{Name: fmt.Sprint("marker ", k), Most: the(quantity.GHLPure(48 + 4*r.Float64()))})
	}
	return o
}

func BenchmarkBlendOf200LotsUnder30Limits(b *testing.B) {
	o := large(200, 30)
	for b.Loop() {
		the(mixing.BlendLots(o))
	}
}

func BenchmarkBlendOf200LotsExplained(b *testing.B) {
	o := large(200, 30)
	o.Limits[7].Most = the(quantity.GHLPure(3))
	for b.Loop() {
		if _, err := mixing.BlendLots(o); err == nil {
			b.Fatal("a blend")
		}
	}
}

func TestLargeBlend(t *testing.T) {
	o := large(200, 30)
	begin := time.Now()
	p := the(mixing.BlendLots(o))
	took := time.Since(begin)
	checkBlend(t, p)
	t.Logf("%d lots go in, %d limits meet; %v", len(p.Parts), len(p.AtLimit), took)
	if took > time.Second { // 50 ms are wanted; the benchmark measures, this catches a search that runs away
		t.Errorf("200 lots under 30 limits took %v", took)
	}
}

// Any aim, a range or one strength, a volume or as much as there is: what is found keeps the limits and adds up.
func TestBlendsOfEveryKindAddUp(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 5))
	found := 0
	for k := range 400 {
		o := drawBlend(r, 3+r.IntN(40))
		o.Aim = []mixing.BlendAim{mixing.Cheapest, mixing.Evenly, mixing.Closest}[k%3]
		if o.Aim == mixing.Closest {
			o.Profile = []mixing.BlendMarker{{Name: "esters", Wanted: the(quantity.MgKg(60 + 80*r.Float64()))}, {Name: "methanol", Wanted: the(quantity.GHLPure(5 + 30*r.Float64())), Weight: 3}}
		}
		if r.IntN(2) == 0 {
			o.SharesOf = mixing.SharesOfPureAlcohol
		}
		if r.IntN(3) == 0 {
			o.StrengthTo = abv(o.Strength.ABV() + 4*r.Float64())
		}
		if r.IntN(4) == 0 {
			o.AsMuch, o.VolumeL = true, 0
		}
		p, err := mixing.BlendLots(o)
		var none *mixing.BlendError
		if err == nil {
			checkBlend(t, p)
			found++
		} else if !errors.As(err, &none) {
			t.Fatalf("order %d: %v", k, err)
		}
	}
	if found < 300 {
		t.Fatalf("only %d blends", found)
	}
}
