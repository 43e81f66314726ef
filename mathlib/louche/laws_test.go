package louche_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/louche"
)

var names = []string{"trans-anethole", "limonene", "fenchone", "linalool", "alpha-pinene", "eucalyptol", "estragole", "alpha-thujone", "menthol", "geranial"}

// randomOil draws an oil of one to four compounds.
func randomOil(t *rapid.T) louche.Oil {
	first := rapid.IntRange(0, len(names)-1).Draw(t, "first")
	n := rapid.IntRange(1, 4).Draw(t, "compounds")
	parts := make([]louche.Part, n)
	left := 100.0
	for i := range parts {
		share := left
		if i < n-1 {
			share = left * rapid.Float64Range(0.05, 0.95).Draw(t, "share")
		}
		parts[i] = louche.Part{Compound: names[(first+i)%len(names)], SharePct: share}
		left -= share
	}
	return the(louche.OilFrom(parts...))
}

func randomDrink(t *rapid.T) louche.Drink {
	return louche.Drink{Strength: abv(rapid.Float64Range(1, 60).Draw(t, "pct")), OilGL: math.Exp(rapid.Float64Range(-6, 3).Draw(t, "lnGL")),
		Temp: celsius(rapid.Float64Range(-20, 40).Draw(t, "C"))}
}

func near(a, b, rel float64) bool { return math.Abs(a-b) <= rel*math.Max(math.Abs(a), math.Abs(b)) }

func TestSolubilityRisesWithStrengthAndWarmth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o, d := randomOil(t), randomDrink(t)
		more := rapid.Float64Range(0.01, 20).Draw(t, "more")
		s := the(louche.SolubilityOf(o, d.Strength, d.Temp))
		stronger := the(louche.SolubilityOf(o, abv(d.Strength.ABV()+more), d.Temp))
		warmer := the(louche.SolubilityOf(o, d.Strength, celsius(math.Min(40, d.Temp.C()+more))))
		if stronger.GL <= s.GL || warmer.GL < s.GL || !(s.LowGL <= s.GL && s.GL <= s.HighGL) {
			t.Fatalf("%v; at %v stronger %v; at warmer %v", s, stronger.Without, stronger, warmer)
		}
	})
}

func TestOneOilGivesWhatPassesItsSolubility(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o, d := the(louche.OilOf(rapid.SampledFrom(names).Draw(t, "oil"))), randomDrink(t)
		s := the(louche.SolubilityOf(o, d.Strength, d.Temp)).GL
		got := the(louche.Separate(d, o))
		if want := math.Max(0, d.OilGL-s); math.Abs(got.OutGL-want) > 1e-12*d.OilGL || !near(got.DissolvedGL, math.Min(d.OilGL, s), 1e-12) {
			t.Fatalf("%v; the solubility is %.15g g/L", got, s)
		}
		// The same oil in two halves is one oil.
		two := the(louche.OilFrom(louche.Part{Compound: o.Compounds()[0], SharePct: 100}))
		if again := the(louche.Separate(d, two)); again.OutGL != got.OutGL {
			t.Fatalf("%v; as an oil of parts %v", got, again)
		}
	})
}

func TestSeparatingKeepsTheOil(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o, d := randomOil(t), randomDrink(t)
		s := the(louche.Separate(d, o))
		active, all := 0.0, 0.0
		for _, c := range s.Compounds {
			active += c.Activity
			all += c.GL
			if c.DissolvedGL < 0 || c.DissolvedGL > c.GL*(1+1e-12) || c.Activity > 1+1e-12 {
				t.Fatalf("%v: %+v", s, c)
			}
		}
		if !near(s.DissolvedGL+s.OutGL, d.OilGL, 1e-12) || !near(all, d.OilGL, 1e-12) {
			t.Fatalf("%v: %.15g dissolved and %.15g out of %.15g", s, s.DissolvedGL, s.OutGL, d.OilGL)
		}
		if s.OutGL > 0 && math.Abs(active-1) > 1e-10 || s.OutGL == 0 && math.Abs(active-s.Load) > 1e-10*s.Load {
			t.Fatalf("%v: the activities add up to %.15g; load %.15g", s, active, s.Load)
		}
		if (s.Load > 1) != (s.OutGL > 0) {
			t.Fatalf("%v: load %.15g", s, s.Load)
		}
		// More of any oil never makes the drink clearer.
		more := d
		more.OilGL *= 1.01
		if x := the(louche.Separate(more, o)); x.Load <= s.Load || x.OutGL < s.OutGL {
			t.Fatalf("%v; with more oil %v", s, x)
		}
	})
}

func TestAnotherOilNeverHelps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := randomDrink(t)
		a := rapid.SampledFrom(names).Draw(t, "oil")
		b := rapid.SampledFrom(names).Filter(func(n string) bool { return n != a }).Draw(t, "other")
		extra := math.Exp(rapid.Float64Range(-8, 2).Draw(t, "lnExtra"))
		alone := the(louche.Separate(d, the(louche.OilOf(a))))
		o := the(louche.OilFromAmounts(louche.Amount{Compound: a, GL: d.OilGL}, louche.Amount{Compound: b, GL: extra}))
		d.OilGL = o.TotalGL()
		both := the(louche.Separate(d, o))
		if both.Load <= alone.Load || both.Compounds[0].DissolvedGL > alone.DissolvedGL*(1+1e-12) {
			t.Fatalf("%v; with %g g/L of %s %v", alone, extra, b, both)
		}
	})
}

func TestPathIsContinuousAndFalls(t *testing.T) {
	clouded := 0
	rapid.Check(t, func(t *rapid.T) {
		o := randomOil(t)
		d := louche.Drink{Strength: abv(rapid.Float64Range(20, 60).Draw(t, "pct")), Temp: celsius(rapid.Float64Range(0, 35).Draw(t, "C"))}
		d.OilGL = the(louche.SolubilityOf(o, d.Strength, d.Temp)).GL * rapid.Float64Range(0.05, 1.2).Draw(t, "fill")
		d.OilGL = math.Min(d.OilGL, 200)
		p := the(louche.Pour(d, o, louche.Pouring{SpiritML: 30, StepML: 2}))
		for i, s := range p.Steps[1:] {
			before := p.Steps[i]
			if s.Strength.ABV() >= before.Strength.ABV() || s.OilGL >= before.OilGL || s.OutGL < 0 {
				t.Fatalf("%v, then %v", before, s)
			}
			// Oil over strength is the same all along: both thin alike.
			if !near(s.OilGL/s.Strength.ABV(), d.OilGL/d.Strength.ABV(), 1e-9) {
				t.Fatalf("%v: oil per strength %.12g; in the bottle %.12g", s, s.OilGL/s.Strength.ABV(), d.OilGL/d.Strength.ABV())
			}
			if p.Clouds && s.OutGL > p.Thickest.OutGL*(1+1e-6) {
				t.Fatalf("%v has more oil out than the thickest, %v", s, p.Thickest)
			}
		}
		if !p.Clouds {
			return
		}
		if p.Onset.WaterML > 0 {
			clouded++
			if math.Abs(p.Onset.Load-1) > 1e-9 || p.Onset.OutGL > 1e-9*d.OilGL {
				t.Fatalf("onset %+v: Σ c/S is not 1 there", p.Onset)
			}
			// The way down by strength finds the same place as the way down by water.
			c := the(louche.ClearReduced(d, o))
			if math.Abs(c.Strength.ABV()-p.Onset.Strength.ABV()) > 1e-6 {
				t.Fatalf("ClearReduced says %v; the path clouds at %v", c, p.Onset)
			}
		}
		if p.ClearsAgain && math.Abs(p.Clear.Load-1) > 1e-9 {
			t.Fatalf("clears again at %+v", p.Clear)
		}
	})
	if clouded < 20 {
		t.Fatalf("only %d of the paths clouded", clouded)
	}
}

func TestCloudPointIsWhereTheLoadIsOne(t *testing.T) {
	met := 0
	rapid.Check(t, func(t *rapid.T) {
		o, d := randomOil(t), randomDrink(t)
		p := the(louche.CloudPointOf(d, o))
		if p.LowC > p.TempC || p.HighC < p.TempC {
			t.Fatalf("%v", p)
		}
		if p.State != louche.CloudsBelow || p.TempC > 40 {
			return
		}
		met++
		d.Temp = celsius(p.TempC)
		if s := the(louche.Separate(d, o)); math.Abs(s.Load-1) > 1e-9 {
			t.Fatalf("%v, but Σ c/S is %.12g there", p, s.Load)
		}
		if p.MayCrystallise && p.CrystalsBelowC > 21.4 {
			t.Fatalf("%v: crystals above the melting point", p)
		}
	})
	if met < 10 {
		t.Fatalf("only %d drinks had a cloud temperature", met)
	}
}

func TestClearAtIsWhereTheLoadIsOne(t *testing.T) {
	met := 0
	rapid.Check(t, func(t *rapid.T) {
		o, d := randomOil(t), randomDrink(t)
		c, err := louche.ClearAt(o, d.OilGL, d.Temp)
		if err != nil || c.EveryStrength {
			return
		}
		met++
		d.Strength = c.Strength
		if s := the(louche.Separate(d, o)); math.Abs(s.Load-1) > 1e-6 || c.Low.ABV() > c.Strength.ABV() || c.High.ABV() < c.Strength.ABV() {
			t.Fatalf("%v: Σ c/S is %.9g there", c, s.Load)
		}
	})
	if met < 10 {
		t.Fatalf("only %d oils had a strength", met)
	}
}

// The triangle's watery side is the solubility, and water added moves a drink straight to the corner.
func TestTriangle(t *testing.T) {
	o := the(louche.OilOf("limonene"))
	tri := the(louche.TriangleOf(o, celsius(30)))
	if len(tri.Watery.Oil) != 61 || len(tri.Beyond.Oil) < 5 || len(tri.TieLines) != 8 || len(tri.OilRich.Oil) != 8 {
		t.Fatalf("%v: %d, %d, %d, %d points", tri, len(tri.Watery.Oil), len(tri.Beyond.Oil), len(tri.TieLines), len(tri.OilRich.Oil))
	}
	for _, c := range []louche.Curve{tri.Watery, tri.Beyond, the(louche.DilutionLine(louche.Drink{Strength: abv(45), OilGL: 2}, o))} {
		for i := range c.Oil {
			if math.Abs(c.Water[i]+c.Ethanol[i]+c.Oil[i]-1) > 1e-12 || c.Oil[i] < 0 || c.Water[i] < 0 || c.Ethanol[i] < 0 {
				t.Errorf("point %d: %g %g %g", i, c.Water[i], c.Ethanol[i], c.Oil[i])
			}
		}
	}
	for i := 1; i < len(tri.Watery.Oil); i++ {
		if tri.Watery.Oil[i] <= tri.Watery.Oil[i-1] {
			t.Errorf("the watery side falls at point %d", i)
		}
	}
	// Measured compositions are printed to 0.001, and so are their sums.
	for _, l := range tri.TieLines {
		for _, c := range []louche.Composition{l.OilRich, l.Watery} {
			if math.Abs(c.Water+c.Ethanol+c.Oil-1) > 0.0031 {
				t.Errorf("a tie-line ends at %+v", c)
			}
		}
	}
	if tri := the(louche.TriangleOf(anethole(), celsius(-10))); len(tri.TieLines) != 0 || len(tri.Watery.Oil) != 61 {
		t.Errorf("%v: %d points of the watery side", tri, len(tri.Watery.Oil))
	}
}
