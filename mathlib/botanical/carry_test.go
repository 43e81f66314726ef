package botanical_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/botanical"
	"swanneck/mathlib/quantity"
)

// run draws a run for what a charge brings: cuts and the passage of each compound, with a course in time that agrees with it.
func drawRun(t *rapid.T, c botanical.Charge) ([]botanical.Cut, []botanical.Passage) {
	n := rapid.IntRange(1, 4).Draw(t, "cuts")
	var cuts []botanical.Cut
	for i := range n {
		cuts = append(cuts, botanical.Cut{Name: string(rune('a' + i)), Spirit: spirit(rapid.Float64Range(0.1, 50).Draw(t, "L"), rapid.Float64Range(10, 90).Draw(t, "q"))})
	}
	var out []botanical.Passage
	for _, x := range c.Traces() {
		p := botanical.Passage{Compound: x.Compound, Shares: make([]float64, n)}
		left, minutes := 1.0, rapid.Float64Range(0, 60).Draw(t, "heat-up")
		p.Course = []botanical.Moment{{Left: 1}}
		for i := range n {
			steps := rapid.IntRange(1, 6).Draw(t, "steps")
			for range steps {
				p.Course = append(p.Course, botanical.Moment{Min: minutes, Left: left, Cut: i})
				minutes += rapid.Float64Range(1, 60).Draw(t, "min")
				next := left * rapid.Float64Range(0, 1).Draw(t, "stays")
				p.Shares[i] += left - next
				left = next
			}
		}
		p.Course = append(p.Course, botanical.Moment{Min: minutes, Left: left, Cut: n - 1})
		out = append(out, p)
	}
	return cuts, out
}

// What a plant brings along is afterwards in plant, macerate, pot and cuts, to 1e-9.
func TestOilBalanceCloses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c, err := botanical.NewCharge(drawRecipe(t), spirit(rapid.Float64Range(0.5, 300).Draw(t, "L"), rapid.Float64Range(30, 85).Draw(t, "q")))
		if err != nil {
			t.Fatal(err)
		}
		cuts, way := drawRun(t, c)
		o, err := botanical.Carry(c, cuts, way)
		if err != nil {
			t.Fatal(err)
		}
		for _, l := range o.Loads {
			for _, a := range []botanical.Account{l.Least, l.Most} {
				if math.Abs(a.ClosureG()) > 1e-9*a.LoadG {
					t.Fatalf("%v: %+v is out by %g g of %g g", l, a, a.ClosureG(), a.LoadG)
				}
				for _, g := range append([]float64{a.PlantG, a.MacerateG, a.PotG, a.LateG}, a.CutsG...) {
					if g < -1e-12*a.LoadG || g > a.LoadG*(1+1e-9) {
						t.Fatalf("%v: %+v has an impossible place", l, a)
					}
				}
				if a.LateG != 0 {
					t.Fatalf("%v: after the run something is still to come", l)
				}
			}
		}
		// The cuts hold what the accounts say, and the shares of the plants are shares.
		for i, cut := range o.Cuts {
			for _, x := range cut.Contents {
				low, high := 0.0, 0.0
				for _, l := range o.Loads {
					if l.Compound == x.Compound {
						low += math.Min(l.Least.CutsG[i], l.Most.CutsG[i])
						high += math.Max(l.Least.CutsG[i], l.Most.CutsG[i])
					}
				}
				if math.Abs(x.G.Low-low) > 1e-9*high || math.Abs(x.G.High-high) > 1e-9*high {
					t.Fatalf("%s: %v; the accounts say %g to %g g", cut.Name, x, low, high)
				}
				litres := cut.Spirit.VolumeAt(quantity.Temperature{})
				if math.Abs(x.Most.Value()*litres/1000-high) > 1e-9*high {
					t.Fatalf("%s: %v in %g L; the accounts say %g g", cut.Name, x, litres, high)
				}
				for _, f := range x.From {
					if f.SharePct.Low < 0 || f.SharePct.High > 100+1e-9 || f.SharePct.Low > f.SharePct.High+1e-9 {
						t.Fatalf("%s: %s has a share of %v %%", cut.Name, f.Plant, f.SharePct)
					}
				}
			}
		}
	})
}

// Contributions of plants whose loads are known add up to 100 %, in every cut the same: the molecules do not know their plant.
func TestContributionsOfKnownLoads(t *testing.T) {
	plant := func(name string, g, share float64) botanical.Botanical {
		return botanical.Botanical{Plant: name, GPerL: g, Markers: []botanical.Marker{{Compound: "limonene", SharePct: botanical.Exactly(share)}},
			Oil: botanical.OilContent{Amount: botanical.Exactly(10), Unit: botanical.OilGPerKg, Basis: botanical.AsWeighed}}
	}
	c := the(botanical.NewCharge(botanical.Recipe{Items: []botanical.Botanical{plant("juniper", 10, 5), plant("coriander", 30, 5)}}, spirit(10, 60)))
	o := the(botanical.Carry(c, []botanical.Cut{{Name: "heads", Spirit: spirit(1, 80)}, {Name: "hearts", Spirit: spirit(3, 70)}}, []botanical.Passage{{Compound: "limonene", Shares: []float64{0.7, 0.2}}}))
	for _, cut := range o.Cuts {
		from := cut.Content("limonene").From
		if len(from) != 2 || !near(from[0].SharePct.Low, 75, 1e-9) || !near(from[1].SharePct.High, 25, 1e-9) {
			t.Errorf("%s: %+v; want 75 %% coriander and 25 %% juniper", cut.Name, from)
		}
	}
}

// Where one load is known and the other lies between 40 and 60 of the same unit against 150, its share lies between 40/190
// and 60/210.
func TestContributionsOfRanges(t *testing.T) {
	plant := func(name string, g float64, share botanical.Range) botanical.Botanical {
		return botanical.Botanical{Plant: name, GPerL: g, Markers: []botanical.Marker{{Compound: "limonene", SharePct: share}},
			Oil: botanical.OilContent{Amount: botanical.Exactly(10), Unit: botanical.OilGPerKg, Basis: botanical.AsWeighed}}
	}
	c := the(botanical.NewCharge(botanical.Recipe{Items: []botanical.Botanical{plant("juniper", 10, botanical.Between(4, 6)), plant("coriander", 30, botanical.Exactly(5))}}, spirit(10, 60)))
	o := the(botanical.Carry(c, []botanical.Cut{{Name: "hearts", Spirit: spirit(3, 70)}}, []botanical.Passage{{Compound: "limonene", Shares: []float64{0.7}}}))
	from := o.Cut("hearts").Content("limonene").From
	for i, want := range []botanical.Range{botanical.Between(15000.0/210, 15000.0/190), botanical.Between(4000.0/190, 6000.0/210)} {
		if got := from[i].SharePct; !near(got.Low, want.Low, 1e-9) || !near(got.High, want.High, 1e-9) {
			t.Errorf("%s: %v %%; want %v", from[i].Plant, got, want)
		}
	}
}

// What is released at once is what is free; what is never released stays in the plant; and slow release comes over later.
func TestLateRelease(t *testing.T) {
	var p botanical.Passage
	p.Compound = "limonene"
	const steps = 400
	rate := 0.06 // 1/min: what is in the pot boils off with it
	for i := range steps + 1 {
		cut := 0
		if i >= steps/2 {
			cut = 1
		}
		p.Course = append(p.Course, botanical.Moment{Min: float64(i), Left: math.Exp(-rate * float64(i)), Cut: cut})
	}
	half := math.Exp(-rate * steps / 2)
	p.Shares = []float64{1 - half, half - math.Exp(-rate*steps)}
	carry := func(perH float64) botanical.Account {
		b := botanical.Botanical{Plant: "juniper", GPerL: 10, ReleasePerH: botanical.Exactly(perH), Markers: []botanical.Marker{{Compound: "limonene", SharePct: botanical.Exactly(5)}},
			Oil: botanical.OilContent{Amount: botanical.Exactly(10), Unit: botanical.OilGPerKg, Basis: botanical.AsWeighed}}
		if perH == 0 {
			b.ReleasePerH = botanical.Range{}
		}
		c := the(botanical.NewCharge(botanical.Recipe{Items: []botanical.Botanical{b}}, spirit(10, 60)))
		o := the(botanical.Carry(c, []botanical.Cut{{Name: "first", Spirit: spirit(1, 80)}, {Name: "second", Spirit: spirit(1, 60)}}, []botanical.Passage{p}))
		return o.Loads[0].Most
	}
	free, fast := carry(0), carry(900)
	if !near(fast.CutsG[0], free.CutsG[0], 1e-3) || fast.PlantG > 1e-12 {
		t.Errorf("released at 900 1/h: %+v; free: %+v", fast, free)
	}
	// b' = -k b and p' = k b - r p give p = M k/(r-k) (e^{-kt} - e^{-rt}): own algebra. What came over is the rest.
	const perH = 0.6
	k := perH / 60
	slow := carry(perH)
	at := func(min float64) float64 {
		b := math.Exp(-k * min)
		pot := k / (rate - k) * (math.Exp(-k*min) - math.Exp(-rate*min))
		return slow.LoadG * (1 - b - pot)
	}
	if !near(slow.CutsG[0], at(steps/2), 2e-4) || !near(slow.CutsG[0]+slow.CutsG[1], at(steps), 2e-4) {
		t.Errorf("released at 0.6 1/h: %+v; the solution has %g and %g over", slow, at(steps/2), at(steps))
	}
	if !(slow.CutsG[1] > free.CutsG[1] && slow.CutsG[0] < free.CutsG[0]) {
		t.Errorf("slow release does not come later: %+v, free %+v", slow, free)
	}
	if none := carry(1e-9); none.PlantG < 0.999999*none.LoadG {
		t.Errorf("hardly released: %+v", none)
	}
}

func TestCalibrate(t *testing.T) {
	b := the(botanical.Herb("aniseed", 20))
	c := the(botanical.NewCharge(botanical.Recipe{Items: []botanical.Botanical{b}}, spirit(10, 60)))
	var way []botanical.Passage
	for _, x := range c.Traces() {
		way = append(way, botanical.Passage{Compound: x.Compound, Shares: []float64{0.1, 0.6}})
	}
	o := the(botanical.Carry(c, []botanical.Cut{{Name: "heads", Spirit: spirit(0.5, 80)}, {Name: "hearts", Spirit: spirit(4, 70)}}, way))
	hearts := o.Cut("hearts").Content("anethole")
	for _, times := range []float64{0.5, 1.2} { // of the lower end, and above the upper one
		x := times * hearts.Least.Value()
		if times > 1 {
			x = times * hearts.Most.Value()
		}
		cal, err := botanical.Calibrate(o, botanical.Measured{Cut: "hearts", Compound: "anethole", Amount: the(quantity.MgL(x))})
		if err != nil {
			t.Fatal(err)
		}
		got := cal.Cut("hearts").Content("anethole")
		if !near(got.Least.Value(), x, 1e-9) || !near(got.Most.Value(), x, 1e-9) {
			t.Errorf("measured %g mg/L; calibrated %v", x, got)
		}
		if heads := cal.Cut("heads").Content("anethole"); !near(heads.G.Low*6, got.G.Low, 1e-9) {
			t.Errorf("heads %v, hearts %v; want one to six", heads, got)
		}
		for _, l := range cal.Loads {
			if l.Least.PlantG < 0 || l.Most.PlantG < 0 {
				t.Errorf("%v: less than nothing is left in the plant: %+v", l, l.Most)
			}
		}
		if text := strings.Join(cal.Notes(), "; "); strings.Contains(text, "more of it came over") != (times > 1) {
			t.Errorf("%g times what was predicted: %s", times, text)
		}
		if cal.ClosureG() > 1e-9*hearts.G.High {
			t.Errorf("calibrated accounts are out by %g g", cal.ClosureG())
		}
		if e := cal.Cut("hearts").Content("estragole"); e.G != o.Cut("hearts").Content("estragole").G {
			t.Errorf("estragole changed to %v", e)
		}
	}
	for name, m := range map[string]botanical.Measured{
		"ten times the most": {Cut: "hearts", Compound: "anethole", Amount: the(quantity.MgL(10 * hearts.Most.Value()))},
		"no such cut":        {Cut: "heart", Compound: "anethole", Amount: the(quantity.MgL(100))},
		"no such compound":   {Cut: "hearts", Compound: "anetole", Amount: the(quantity.MgL(100))},
		"not brought":        {Cut: "hearts", Compound: "camphor", Amount: the(quantity.MgL(100))},
		"no amount":          {Cut: "hearts", Compound: "anethole"},
	} {
		if _, err := botanical.Calibrate(o, m); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

func TestMacerate(t *testing.T) {
	b := the(botanical.Herb("lemon balm", 40))
	b.Use, b.ReachedPct = botanical.Infused, botanical.Between(50, 80)
	c := the(botanical.NewCharge(botanical.Recipe{Per: botanical.PerChargeL, Items: []botanical.Botanical{b}}, spirit(10, 60)))
	m := c.Macerate()
	if len(c.Traces()) != 0 || c.Pot.VolumeL != 0 {
		t.Errorf("an infusion brings %v into a pot of %v", c.Traces(), c.Pot)
	}
	// The liquid that drips off is as strong in oil as the one in the herb: load × reached in all the liquid.
	citral := m.Sum("citral")
	want := 0.0
	for _, l := range c.Loads {
		want += 1000 * l.Most.LoadG * 0.8 / c.Steeped.VolumeL
	}
	if !near(citral.Most.Value(), want, 1e-9) {
		t.Errorf("%v; want up to %g mg/L", citral, want)
	}
	if !near(m.Spirit.VolumeL, 10-0.4*1.7, 1e-9) {
		t.Errorf("%v drips off; want 9.32 L", m.Spirit)
	}
}

func TestCarryRefuses(t *testing.T) {
	b := the(botanical.Herb("bitter orange peel", 20))
	c := the(botanical.NewCharge(botanical.Recipe{Items: []botanical.Botanical{b}}, spirit(10, 60)))
	late := c
	b.ReleasePerH = botanical.Exactly(1)
	late = the(botanical.NewCharge(botanical.Recipe{Items: []botanical.Botanical{b}}, spirit(10, 60)))
	cuts := []botanical.Cut{{Name: "heads", Spirit: spirit(1, 80)}}
	pass := func(shares ...float64) []botanical.Passage {
		return []botanical.Passage{{Compound: "limonene", Shares: shares}}
	}
	course := func(m ...botanical.Moment) []botanical.Passage {
		return []botanical.Passage{{Compound: "limonene", Shares: []float64{1}, Course: m}}
	}
	for name, f := range map[string]func() (botanical.CarryOver, error){
		"no charge":       func() (botanical.CarryOver, error) { return botanical.Carry(botanical.Charge{}, cuts, pass(0.5)) },
		"no cuts":         func() (botanical.CarryOver, error) { return botanical.Carry(c, nil, pass()) },
		"no passage":      func() (botanical.CarryOver, error) { return botanical.Carry(c, cuts, nil) },
		"too many shares": func() (botanical.CarryOver, error) { return botanical.Carry(c, cuts, pass(0.5, 0.5)) },
		"more than all":   func() (botanical.CarryOver, error) { return botanical.Carry(c, cuts, pass(1.1)) },
		"more than all of two": func() (botanical.CarryOver, error) {
			return botanical.Carry(c, []botanical.Cut{cuts[0], {Name: "hearts", Spirit: spirit(1, 70)}}, pass(0.6, 0.5))
		},
		"below nothing": func() (botanical.CarryOver, error) { return botanical.Carry(c, cuts, pass(-0.1)) },
		"no number":     func() (botanical.CarryOver, error) { return botanical.Carry(c, cuts, pass(math.NaN())) },
		"no course":     func() (botanical.CarryOver, error) { return botanical.Carry(late, cuts, pass(0.5)) },
		"no time": func() (botanical.CarryOver, error) {
			return botanical.Carry(late, cuts, course(botanical.Moment{Left: 1}, botanical.Moment{Left: 0.5}))
		},
		"time back": func() (botanical.CarryOver, error) {
			return botanical.Carry(late, cuts, course(botanical.Moment{Min: 5, Left: 1}, botanical.Moment{Min: 4, Left: 0.5}))
		},
		"more left": func() (botanical.CarryOver, error) {
			return botanical.Carry(late, cuts, course(botanical.Moment{Left: 0.4}, botanical.Moment{Min: 4, Left: 0.5}))
		},
		"cut that is not": func() (botanical.CarryOver, error) {
			return botanical.Carry(late, cuts, course(botanical.Moment{Left: 1, Cut: 1}, botanical.Moment{Min: 4, Left: 0.5}))
		},
		"unset strength": func() (botanical.CarryOver, error) {
			return botanical.Carry(c, []botanical.Cut{{Name: "x", Spirit: alcoholometry.Spirit{VolumeL: 1}}}, pass(0.5))
		},
		"no volume": func() (botanical.CarryOver, error) {
			return botanical.Carry(c, []botanical.Cut{{Name: "x"}}, pass(0.5))
		},
		"two cuts of a name": func() (botanical.CarryOver, error) {
			return botanical.Carry(c, []botanical.Cut{cuts[0], cuts[0]}, pass(0.5, 0.2))
		},
		"unknown compound": func() (botanical.CarryOver, error) {
			return botanical.Carry(c, cuts, []botanical.Passage{{Compound: "limonen", Shares: []float64{1}}})
		},
	} {
		if _, err := f(); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
