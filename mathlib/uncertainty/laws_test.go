package uncertainty_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/uncertainty"
)

var parts = []func(float64) uncertainty.Part{uncertainty.Normal, uncertainty.Rectangular, uncertainty.Triangular, uncertainty.Cycling}

// A linear model is exact: u² = Σ a²u² + 2 Σ a_i a_j r u_i u_j, and the sensitivities are the coefficients.
func TestLinearIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 6).Draw(t, "n")
		a := rapid.SliceOfN(rapid.Float64Range(-100, 100), n, n).Draw(t, "a")
		m := uncertainty.Measurement{Model: func(x []float64) float64 {
			y := 3.0
			for i := range x {
				y += a[i] * x[i]
			}
			return y
		}}
		u := make([]float64, n)
		for i := range u {
			part := parts[rapid.IntRange(0, len(parts)-1).Draw(t, "shape")](rapid.Float64Range(0.01, 10).Draw(t, "half"))
			u[i] = part.Standard
			m.Inputs = append(m.Inputs, input(string(rune('a'+i)), rapid.Float64Range(-1000, 1000).Draw(t, "x"), part))
		}
		var want float64
		for i := range u {
			want += a[i] * a[i] * u[i] * u[i]
		}
		if n > 1 {
			r := rapid.Float64Range(-1, 1).Draw(t, "r")
			m.Correlations = []uncertainty.Correlation{{First: "a", Second: "b", R: r}}
			want += 2 * r * a[0] * a[1] * u[0] * u[1]
		}
		b, err := uncertainty.FirstOrder(m)
		if err != nil {
			t.Fatal(err)
		}
		scale := 3.0 // rounding of the model itself
		for i := range u {
			scale += math.Abs(a[i]) * (1000 + u[i])
		}
		if got, tol := b.Standard*b.Standard, 1e-9*want+1e-11*scale*scale; math.Abs(got-want) > tol {
			t.Fatalf("variance of a linear model = %.15g; want %.15g ± %.2g", got, want, tol)
		}
		var share float64
		for _, l := range b.Lines {
			share += l.SharePct
		}
		if b.Standard > 1e-3*scale && math.Abs(share-100) > 1e-6 {
			t.Fatalf("the shares add up to %.9g %%; want 100", share)
		}
	})
}

// The second order changes nothing in a linear model, and adds exactly ½ f”² u⁴ to a square.
func TestSecondOrderOfAPolynomial(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(-5, 5).Draw(t, "x")
		a, b := rapid.Float64Range(-3, 3).Draw(t, "a"), rapid.Float64Range(-3, 3).Draw(t, "b")
		u := rapid.Float64Range(0.01, 1).Draw(t, "u")
		m := uncertainty.Measurement{Inputs: []uncertainty.Measured{input("x", x, uncertainty.Normal(u))},
			Model: func(x []float64) float64 { return a*x[0] + b*x[0]*x[0] }}
		got, err := uncertainty.SecondOrderStandard(m)
		if err != nil {
			t.Fatal(err)
		}
		c := a + 2*b*x
		want := c*c*u*u + 2*b*b*u*u*u*u // exact for a normal x
		if math.Abs(got*got-want) > 1e-9*(want+1) {
			t.Fatalf("variance of %g x + %g x² at %g = %.12g; want %.12g", a, b, x, got*got, want)
		}
	})
}

// Each shape has the standard deviation that its part says, the mean 0, and stays within its limits.
func TestShapesAreWhatTheySay(t *testing.T) {
	for name, c := range map[string]struct {
		part  uncertainty.Part
		limit float64 // 0: none
		std   float64 // 0: part.Standard
	}{
		"normal":      {uncertainty.Normal(2), 0, 0},
		"rectangular": {uncertainty.Rectangular(3), 3, 3 / math.Sqrt(3)},
		"triangular":  {uncertainty.Triangular(3), 3, 3 / math.Sqrt(6)},
		"cycling":     {uncertainty.Cycling(3), 3, 3 / math.Sqrt2},
		"loose":       {uncertainty.Rectangular(3).Loose(1), 4, math.Sqrt(9.0/3 + 1.0/9)},
		"student":     {uncertainty.StudentT(2, 12), 0, 2 * math.Sqrt(12.0/10)}, // ν/(ν-2)
	} {
		d := the(uncertainty.MonteCarlo(four(c.part), 400_000, 5))
		want := c.std
		if want == 0 {
			want = c.part.Standard
		}
		if math.Abs(d.Mean) > 4*want/math.Sqrt(400_000) {
			t.Errorf("%s: mean %.5g; want 0", name, d.Mean)
		}
		if math.Abs(d.Standard/want-1) > 0.008 {
			t.Errorf("%s: standard deviation %.5g; want %.5g", name, d.Standard, want)
		}
		if c.part.Shape != uncertainty.ShapeStudentT && math.Abs(c.part.Standard/want-1) > 1e-12 {
			t.Errorf("%s: Standard is %.12g; want %.12g", name, c.part.Standard, want)
		}
		if low, high := d.Below(0), d.Below(100); c.limit > 0 && (low < -c.limit || high > c.limit || high < 0.98*c.limit) {
			t.Errorf("%s: draws from %.4g to %.4g; want the limits ±%g", name, low, high, c.limit)
		}
	}
}

// Correlated draws have the correlation asked for: u² of a sum and of a difference.
func TestCorrelatedDraws(t *testing.T) {
	for _, r := range []float64{-1, -0.5, 0.3, 0.9, 1} {
		m := four(uncertainty.Normal(1), uncertainty.Normal(2), uncertainty.Rectangular(1))
		m.Correlations = []uncertainty.Correlation{{First: "a", Second: "b", R: r}}
		b := the(uncertainty.FirstOrder(m))
		d := the(uncertainty.MonteCarlo(m, 200_000, 9))
		want := math.Sqrt(1 + 4 + 1.0/3 + 4*r)
		if math.Abs(b.Standard-want) > 1e-9 || math.Abs(d.Standard/want-1) > 0.01 {
			t.Errorf("r = %g: standard uncertainty %.6g and by draws %.6g; want %.6g", r, b.Standard, d.Standard, want)
		}
	}
}

func TestSameSeedSameBits(t *testing.T) {
	m := the(uncertainty.ProofedWater(proofing()))
	a, b, other := the(uncertainty.MonteCarlo(m, 20_000, 3)), the(uncertainty.MonteCarlo(m, 20_000, 3)), the(uncertainty.MonteCarlo(m, 20_000, 4))
	if a.String() != b.String() || a.Mean != b.Mean || a.Low != b.Low || a.High != b.High || a.Below(31.4) != b.Below(31.4) {
		t.Errorf("one seed gives %v and %v", a, b)
	}
	if a.Mean == other.Mean {
		t.Errorf("two seeds give one mean, %v", a.Mean)
	}
}

// No interval that holds its share is shorter than the shortest, and it holds its share.
func TestShortestInterval(t *testing.T) {
	d := the(uncertainty.MonteCarlo(loss(0.01, 0), 20_000, 2))
	if held := d.ShareBelowPct(d.High) - d.ShareBelowPct(d.Low); math.Abs(held-95) > 0.02 {
		t.Errorf("the shortest interval holds %.3f %%; want 95", held)
	}
	for p := 0.0; p <= 5; p += 0.05 {
		if other := d.Below(min(p+95.005, 100)) - d.Below(p); other < d.High-d.Low {
			t.Errorf("the interval from %.2f %% on is %.6g long, the shortest %.6g", p, other, d.High-d.Low)
		}
	}
}

// The two ways agree for a proofing, whose model is nearly straight within the tolerances.
func TestTheTwoWaysAgreeForAProofing(t *testing.T) {
	p := proofing()
	p.Water = uncertainty.Balance{ReadingKg: 420, ToleranceKg: 0.5, DivisionKg: 0.1}
	weighed := p
	weighed.Tank, weighed.Balance = uncertainty.TankDip{}, uncertainty.Balance{ReadingKg: 520, ToleranceKg: 0.5, RepeatabilityKg: 0.2}
	for _, p := range []uncertainty.Proofing{p, weighed} {
		for name, of := range map[string]func(uncertainty.Proofing) (uncertainty.Measurement, error){"strength": uncertainty.ProofedStrength,
			"alcohol": uncertainty.ProofedAlcohol, "water": uncertainty.ProofedWater, "reduced": uncertainty.ReducedStrength} {
			m := the(of(p))
			b, d := the(uncertainty.FirstOrder(m)), the(uncertainty.MonteCarlo(m, 100_000, 1))
			if math.Abs(b.Standard/d.Standard-1) > 0.01 || math.Abs(b.Value-d.Mean) > 0.02*b.Standard {
				t.Errorf("%s: first order %.6g, u %.4g; draws %.6g, u %.4g", name, b.Value, b.Standard, d.Mean, d.Standard)
			}
			if u2 := the(uncertainty.SecondOrderStandard(m)); math.Abs(u2/b.Standard-1) > 0.005 {
				t.Errorf("%s: second order %.6g, first %.6g", name, u2, b.Standard)
			}
		}
	}
}
