package equilibrium_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/equilibrium"
	"swanneck/mathlib/quantity"
)

var twelve = []string{"methanol", "acetaldehyde", "ethyl acetate", "1-propanol", "isobutanol", "isoamyl alcohol", "furfural", "acetic acid",
	"linalool", "trans-anethole", "limonene", "2-phenylethanol"}

// A Curve is what it is a table of, within what its comment says, from a trace of ethanol to ethanol.
func TestCurveIsATableOfTheFunctions(t *testing.T) {
	for _, c := range []struct {
		kPa    float64
		traces []string
	}{
		{2, []string{"methanol", "ethyl acetate", "1-propanol"}},
		{20, []string{"methanol", "ethyl acetate", "isoamyl alcohol", "limonene"}},
		{60, twelve}, {101.325, twelve}, {140, twelve},
		{1100, []string{"methanol", "ethyl acetate", "1-propanol"}},
	} {
		p := kPa(c.kPa)
		curve := the(equilibrium.NewCurve(p, c.traces))
		pair := curve.Pair()
		lnK := make([]float64, len(c.traces))
		for i := range 1000 {
			x := float64(i) / 999
			if i%2 == 0 && i > 0 {
				x = math.Pow(10, -7*x)
			}
			s := the(pair.Bubble(x, c.kPa))
			y, slope := curve.Vapour(x)
			if math.Abs(y-s.Y) > 1e-8*s.Y {
				t.Fatalf("%v, x = %g: y = %.12g; Bubble %.12g", p, x, y, s.Y)
			}
			back, backSlope := curve.Liquid(s.Y)
			if math.Abs(back-x) > 1e-7*x {
				t.Fatalf("%v, y = %g: x = %.12g; Bubble %.12g", p, s.Y, back, x)
			}
			if math.Abs(slope*backSlope-1) > 1e-4 {
				t.Fatalf("%v, x = %g: dy/dx = %g, dx/dy = %g", p, x, slope, backSlope)
			}
			if h := 1e-6 * x; x > 1e-6 && x < 0.999 {
				up, _ := curve.Vapour(x + h)
				down, _ := curve.Vapour(x - h)
				if d := (up - down) / (2 * h); math.Abs(slope-d) > 1e-6*(1+d) {
					t.Fatalf("%v, x = %g: dy/dx = %.9g; by differences %.9g", p, x, slope, d)
				}
			}
			if math.Abs(curve.TempK(x)-s.TempK) > 1e-6 {
				t.Fatalf("%v, x = %g: %.9f K; Bubble %.9f K", p, x, curve.TempK(x), s.TempK)
			}
			curve.LnK(x, lnK)
			if i%10 != 0 {
				continue
			}
			for k, name := range c.traces {
				v := the(equilibrium.VolatilityOf(name, moles(x), p))
				if math.Abs(lnK[k]-math.Log(v.K)) > 5e-5 {
					t.Fatalf("%v, %s at x = %g: ln K = %.9g; VolatilityOf %.9g", p, name, x, lnK[k], math.Log(v.K))
				}
				gamma := math.Exp(lnK[k]-curve.LnVapourPressurePa(k, curve.TempK(x))) * c.kPa * 1000
				if math.Abs(gamma/v.Gamma-1) > 1e-4 {
					t.Fatalf("%v, %s at x = %g: γ = %.9g; VolatilityOf %.9g", p, name, x, gamma, v.Gamma)
				}
			}
		}
	}
}

// The two ways through the table lead back to each other.
func TestCurveThereAndBack(t *testing.T) {
	many(t, "5000", "1500")
	curve := the(equilibrium.NewCurve(kPa(95), nil))
	rapid.Check(t, func(t *rapid.T) {
		x := fraction(t, "x")
		y, _ := curve.Vapour(x)
		if back, _ := curve.Liquid(math.Min(y, 1)); math.Abs(back-x) > 1e-7*x {
			t.Fatalf("x = %g has y = %g, which has x = %g", x, y, back)
		}
	})
	for _, x := range []float64{0, 1} {
		if y, _ := curve.Vapour(x); y != x {
			t.Errorf("y over x = %g is %g", x, y)
		}
		if l, _ := curve.Liquid(x); l != x {
			t.Errorf("x under y = %g is %g", x, l)
		}
	}
}

func TestCurveSaysWhatIsInIt(t *testing.T) {
	c := the(equilibrium.NewCurve(quantity.Pressure{}, []string{"linalool", "methanol"}))
	names := c.Traces()
	if len(names) != 2 || names[0].Name != "linalool" || names[1].Name != "methanol" || c.P() != (quantity.Pressure{}) || c.Note() != "" || c.Pair().Name() != "NRTL" {
		t.Errorf("%v, %v, %q", names, c.P(), c.Note())
	}
	if !strings.Contains(strings.Join(c.Notes(0), ";"), "estimated") || len(c.Notes(1)) != 0 {
		t.Errorf("linalool: %v; methanol: %v", c.Notes(0), c.Notes(1))
	}
	if n := the(equilibrium.NewCurve(kPa(200), nil)).Note(); !strings.Contains(n, "extrapolated") {
		t.Errorf("at 200 kPa: %q", n)
	}
	with, without := make([]float64, 1), make([]float64, 1)
	the(equilibrium.NewCurve(quantity.Pressure{}, []string{"limonene"})).LnK(0.01, with)
	the(equilibrium.NewCurve(quantity.Pressure{}, []string{"limonene"}, equilibrium.WithoutAnchor())).LnK(0.01, without)
	if math.Abs(with[0]-without[0]) < 0.3 {
		t.Errorf("limonene: ln K = %g with the anchor, %g without", with[0], without[0])
	}
}

func TestCurveRefuses(t *testing.T) {
	for name, c := range map[string]struct {
		kPa   float64
		trace string
		opts  []equilibrium.Option
	}{
		"1 kPa": {1, "methanol", nil}, "1200 kPa": {1200, "methanol", nil}, "unknown": {100, "metanol", nil}, "ethanol": {100, "ethanol", nil},
		"too hot": {1000, "acetal", nil}, "too cold": {2, "camphor", nil}, "model": {100, "methanol", []equilibrium.Option{equilibrium.UseModel("PSRK")}},
	} {
		if c, err := equilibrium.NewCurve(kPa(c.kPa), []string{c.trace}, c.opts...); err == nil {
			t.Errorf("%s: %v; want an error", name, c)
		}
	}
	c := the(equilibrium.NewCurve(quantity.Pressure{}, nil))
	for _, x := range []float64{-1e-9, 1.0000001, math.NaN(), math.Inf(1)} {
		for what, f := range map[string]func(){
			"Vapour": func() { c.Vapour(x) }, "Liquid": func() { c.Liquid(x) }, "TempK": func() { c.TempK(x) }, "LnK": func() { c.LnK(x, nil) },
		} {
			func() {
				defer func() {
					var r *quantity.RangeError
					if err, ok := recover().(error); !ok || !errors.As(err, &r) || !strings.HasPrefix(r.Func, "equilibrium.Curve."+what) {
						t.Errorf("%s(%g): %v; want a RangeError", what, x, err)
					}
				}()
				f()
			}()
		}
	}
}

// Lookups take no memory.
func TestLookupsAllocateNothing(t *testing.T) {
	c := the(equilibrium.NewCurve(quantity.Pressure{}, twelve))
	out := make([]float64, 12)
	if n := testing.AllocsPerRun(100, func() { c.Vapour(0.1); c.Liquid(0.1); c.TempK(0.1); c.LnK(0.1, out) }); n != 0 {
		t.Errorf("the lookups allocate %g times", n)
	}
}
