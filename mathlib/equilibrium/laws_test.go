package equilibrium_test

import (
	"flag"
	"maps"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/equilibrium"
	"swanneck/mathlib/quantity"
)

// pairs are those of every model by name, and draw takes one of them.
type pairs map[string]*equilibrium.Pair

func everyPair() pairs {
	out := pairs{}
	for _, m := range equilibrium.Models() {
		out[m.Name] = the(equilibrium.NewPair(equilibrium.UseModel(m.Name)))
	}
	return out
}

func (p pairs) draw(t *rapid.T) *equilibrium.Pair {
	return p[rapid.SampledFrom(slices.Sorted(maps.Keys(p))).Draw(t, "model")]
}

// fraction draws mole fractions of all sizes, the ends included.
func fraction(t *rapid.T, name string) float64 {
	switch rapid.IntRange(0, 9).Draw(t, name+" kind") {
	case 0:
		return rapid.SampledFrom([]float64{0, 1, 1e-300, 1e-12, 1 - 1e-12}).Draw(t, name)
	case 1, 2:
		return math.Pow(10, rapid.Float64Range(-9, 0).Draw(t, name+" exponent"))
	}
	return rapid.Float64Range(0, 1).Draw(t, name)
}

// pressure draws kilopascals, as many in each decade.
func pressure(t *rapid.T) float64 {
	return math.Exp(rapid.Float64Range(math.Log(2), math.Log(1000)).Draw(t, "ln kPa"))
}

// x1 d ln γ1/dx1 + x2 d ln γ2/dx1 = 0 at constant temperature (Gibbs and Duhem), and the slopes by temperature are those
// of differences.
func TestGibbsDuhem(t *testing.T) {
	many(t, "5000", "1500")
	all := everyPair()
	rapid.Check(t, func(t *rapid.T) {
		p := all.draw(t)
		x := rapid.Float64Range(0.001, 0.999).Draw(t, "x")
		tempK := rapid.Float64Range(280, 450).Draw(t, "tempK")
		h := 1e-4 * math.Min(x, 1-x)
		// Five points, so that the differences are better than what they test.
		d := func(f func(float64) float64, h float64) float64 {
			return (f(-2*h) - 8*f(-h) + 8*f(h) - f(2*h)) / (12 * h)
		}
		d1 := d(func(e float64) float64 { a, _, _, _ := p.LnGamma(x+e, tempK); return a }, h)
		d2 := d(func(e float64) float64 { _, b, _, _ := p.LnGamma(x+e, tempK); return b }, h)
		if sum := x*d1 + (1-x)*d2; math.Abs(sum) > 1e-6 {
			t.Fatalf("%s at x = %g, %g K: x1 dlnγ1 + x2 dlnγ2 = %g", p.Name(), x, tempK, sum)
		}
		_, _, t1, t2 := p.LnGamma(x, tempK)
		n1 := d(func(e float64) float64 { a, _, _, _ := p.LnGamma(x, tempK+e); return a }, 0.01)
		n2 := d(func(e float64) float64 { _, b, _, _ := p.LnGamma(x, tempK+e); return b }, 0.01)
		if math.Abs(t1-n1) > 1e-9 || math.Abs(t2-n2) > 1e-9 {
			t.Fatalf("%s at x = %g, %g K: slopes %g, %g 1/K; by differences %g, %g", p.Name(), x, tempK, t1, t2, n1, n2)
		}
		if a, b, _, _ := p.LnGamma(1, tempK); math.Abs(a) > 1e-12 || math.IsNaN(b) {
			t.Fatalf("%s: ln γ of pure ethanol %g", p.Name(), a)
		}
		if a, b, _, _ := p.LnGamma(0, tempK); math.Abs(b) > 1e-12 || math.IsNaN(a) {
			t.Fatalf("%s: ln γ of pure water %g", p.Name(), b)
		}
	})
}

// many sets the number of draws of the random tests that follow in the test. In short mode rapid makes a fifth of the number.
func many(t *testing.T, draws, short string) {
	t.Helper()
	before := flag.Lookup("rapid.checks").Value.String()
	if testing.Short() {
		draws = short
	}
	if err := flag.Set("rapid.checks", draws); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		if err := flag.Set("rapid.checks", before); err != nil {
			t.Fatal(err)
		}
	})
}

// No composition and no pressure gives a number that is none, and every answer satisfies the equations it solves.
func TestEveryBubbleIsFiniteAndSolved(t *testing.T) {
	many(t, "100000", "20000")
	all := everyPair()
	ethanol, water := find("ethanol"), find("water")
	n, distinct := 0, map[float64]bool{}
	rapid.Check(t, func(t *rapid.T) {
		p := all.draw(t)
		x, pKPa := fraction(t, "x"), pressure(t)
		n++
		distinct[pKPa] = true
		s, err := p.Bubble(x, pKPa)
		if err != nil || !(s.Y >= 0 && s.Y <= 1 && s.TempK > 270 && s.TempK < 460) || s.X != x || s.PKPa != pKPa {
			t.Fatalf("%s.Bubble(%g, %g) = %+v, %v", p.Name(), x, pKPa, s, err)
		}
		g1, g2, _, _ := p.LnGamma(x, s.TempK)
		pe, _ := ethanol.Vapour.LnPa(s.TempK)
		pw, _ := water.Vapour.LnPa(s.TempK)
		e, w := x*math.Exp(g1+pe)/1000, (1-x)*math.Exp(g2+pw)/1000
		if math.Abs(e+w-pKPa) > 1e-11*pKPa || math.Abs(e/(e+w)-s.Y) > 1e-12 {
			t.Fatalf("%s.Bubble(%g, %g) = %+v: the partial pressures sum to %g and hold %g of ethanol", p.Name(), x, pKPa, s, e+w, e/(e+w))
		}
		at, err := p.BubbleAt(x, s.TempK)
		if err != nil || math.Abs(at.PKPa-pKPa) > 1e-11*pKPa || math.Abs(at.Y-s.Y) > 1e-12 {
			t.Fatalf("%s.BubbleAt(%g, %g K) = %+v, %v; Bubble has %g kPa and y %g", p.Name(), x, s.TempK, at, err, pKPa, s.Y)
		}
	})
	if n < 3000 || len(distinct) < n/2 {
		t.Errorf("%d draws, %d distinct pressures", n, len(distinct))
	}
}

// The vapour of the first drop is the vapour, and the first drop over a vapour is the liquid.
func TestDewIsTheWayBack(t *testing.T) {
	many(t, "5000", "1500")
	all := everyPair()
	rapid.Check(t, func(t *rapid.T) {
		p := all.draw(t)
		y, pKPa := fraction(t, "y"), pressure(t)
		d := the(p.Dew(y, pKPa))
		b := the(p.Bubble(d.X, pKPa))
		if math.Abs(b.Y-y) > 1e-12 || math.Abs(b.TempK-d.TempK) > 1e-9 || d.Y != y {
			t.Fatalf("%s: over %g the drop is %g at %g K, whose vapour is %g at %g K", p.Name(), y, d.X, d.TempK, b.Y, b.TempK)
		}
		x := fraction(t, "x")
		up := the(p.Bubble(x, pKPa))
		if back := the(p.Dew(up.Y, pKPa)); math.Abs(back.X-x) > 1e-8*math.Min(1, 1e6*x) {
			t.Fatalf("%s: the vapour of %g is %g, whose drop is %g", p.Name(), x, up.Y, back.X)
		}
		tempK := rapid.Float64Range(300, 420).Draw(t, "tempK")
		dt := the(p.DewAt(y, tempK))
		if bt := the(p.BubbleAt(dt.X, tempK)); math.Abs(bt.Y-y) > 1e-12 || math.Abs(bt.PKPa-dt.PKPa) > 1e-9 {
			t.Fatalf("%s at %g K: over %g the drop is %g under %g kPa, whose vapour is %g under %g kPa", p.Name(), tempK, y, dt.X, dt.PKPa, bt.Y, bt.PKPa)
		}
	})
}

// The vapour gets stronger with the liquid, the dew point lies above the boiling point, and at the azeotrope both are one
// and the boiling point is lowest.
func TestShapeOfTheDiagram(t *testing.T) {
	many(t, "3000", "1500")
	all := everyPair()
	rapid.Check(t, func(t *rapid.T) {
		p := all.draw(t)
		pKPa := pressure(t)
		a := rapid.Float64Range(0, 1).Draw(t, "a")
		b := rapid.Float64Range(a, 1).Draw(t, "b")
		if b-a < 1e-9 {
			return
		}
		sa, sb := the(p.Bubble(a, pKPa)), the(p.Bubble(b, pKPa))
		if sb.Y-sa.Y < 0.1*(b-a) {
			t.Fatalf("%s under %g kPa: y rises from %g to %g between x = %g and %g", p.Name(), pKPa, sa.Y, sb.Y, a, b)
		}
		if dew := the(p.Dew(a, pKPa)); dew.TempK < sa.TempK-1e-9 {
			t.Fatalf("%s under %g kPa at %g: condenses at %g K, below the boiling point %g K", p.Name(), pKPa, a, dew.TempK, sa.TempK)
		}
		zKPa := rapid.Float64Range(12, 250).Draw(t, "azeotrope kPa")
		z := the(p.Azeotrope(zKPa))
		s := the(p.Bubble(z.X, zKPa))
		if math.Abs(s.Y-z.X) > 1e-12 || z.Y != z.X || math.Abs(s.TempK-z.TempK) > 1e-12 {
			t.Fatalf("%s: azeotrope %+v; its bubble %+v", p.Name(), z, s)
		}
		for _, off := range []float64{-0.01, 0.01} {
			if n := the(p.Bubble(z.X+off, zKPa)); n.TempK <= z.TempK || (n.Y-n.X)*off >= 0 {
				t.Fatalf("%s under %g kPa: beside the azeotrope %+v stands %+v", p.Name(), zKPa, z, n)
			}
		}
	})
}

// A flash loses nothing, its liquid and vapour are in equilibrium, and the three ways of asking agree.
func TestFlash(t *testing.T) {
	many(t, "2000", "1500")
	all := everyPair()
	rapid.Check(t, func(t *rapid.T) {
		p := all.draw(t)
		z, pKPa := fraction(t, "z"), rapid.Float64Range(5, 300).Draw(t, "kPa")
		share := rapid.Float64Range(0, 1).Draw(t, "share")
		s := the(p.Flash(z, pKPa, share))
		if math.Abs((1-share)*s.X+share*s.Y-z) > 1e-14 {
			t.Fatalf("%s: %g parts into %g and %g, %g of it vapour", p.Name(), z, s.X, s.Y, share)
		}
		if b := the(p.Bubble(s.X, pKPa)); b != s {
			t.Fatalf("%s: flash %+v; Bubble of its liquid %+v", p.Name(), s, b)
		}
		at := the(p.FlashAt(z, s.TempK, share))
		if math.Abs(at.PKPa-pKPa) > 1e-7*pKPa || math.Abs(at.X-s.X) > 1e-7 {
			t.Fatalf("%s: at %g K %+v; under %g kPa %+v", p.Name(), s.TempK, at, pKPa, s)
		}
		both, got, err := p.FlashTP(z, s.TempK, pKPa)
		boils, dry := the(p.Bubble(z, pKPa)).TempK, the(p.Dew(z, pKPa)).TempK
		if err != nil || dry-boils > 1e-3 && share > 0.01 && share < 0.99 && (math.Abs(got-share) > 1e-5 || math.Abs(both.X-s.X) > 1e-6) {
			t.Fatalf("%s: at %g K and %g kPa %+v, %g vapour, %v; asked for %g: %+v", p.Name(), s.TempK, pKPa, both, got, err, share, s)
		}
	})
	p := all["NRTL"]
	for _, c := range []struct {
		offK, share float64
	}{{-1, 0}, {20, 1}} {
		s := the(p.Bubble(0.2, 101.325))
		if f, share, err := p.FlashTP(0.2, s.TempK+c.offK, 101.325); err != nil || share != c.share || f.X != 0.2 || f.Y != 0.2 {
			t.Errorf("%+.0f K from the boiling point: %+v, %g vapour, %v; want %g", c.offK, f, share, err, c.share)
		}
	}
}

// Bubble and its table of starts take two rounds and no memory.
func TestBubbleAllocatesNothing(t *testing.T) {
	for _, p := range everyPair() {
		if n := testing.AllocsPerRun(100, func() { the(p.Bubble(0.1, 101.325)) }); n != 0 {
			t.Errorf("%s: Bubble allocates %g times", p.Name(), n)
		}
	}
}

// Strengths and pressures go through unchanged, and the vapour of water is water.
func TestStrengthsGoThrough(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, p := abv(rapid.Float64Range(0, 100).Draw(t, "% vol")), kPa(pressure(t))
		b := the(equilibrium.Bubble(s, p))
		if b.Liquid != s || b.P != p || b.Model != "NRTL" {
			t.Fatalf("Bubble(%v, %v) = %v", s, p, b)
		}
		d := the(equilibrium.Dew(b.Vapour, p))
		if math.Abs(d.Liquid.ABW()-s.ABW()) > 1e-8 || math.Abs(d.Temp.C()-b.Temp.C()) > 1e-8 {
			t.Fatalf("Bubble(%v, %v) = %v; Dew of its vapour %v", s, p, b, d)
		}
		q := the(equilibrium.BubblePressure(s, b.Temp))
		if math.Abs(q.P.KPa()-p.KPa()) > 1e-9*p.KPa() {
			t.Fatalf("Bubble(%v, %v) = %v; BubblePressure %v", s, p, b, q)
		}
		if dp := the(equilibrium.DewPressure(q.Vapour, b.Temp)); math.Abs(dp.P.KPa()-p.KPa()) > 1e-8*p.KPa() {
			t.Fatalf("BubblePressure %v; DewPressure %v", q, dp)
		}
	})
	for _, pure := range []float64{0, 100} {
		b := the(equilibrium.Bubble(abv(pure), quantity.Pressure{}))
		if b.Vapour != abv(pure) || b.Liquid != abv(pure) {
			t.Errorf("%v", b)
		}
	}
}
