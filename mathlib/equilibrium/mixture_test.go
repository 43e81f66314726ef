package equilibrium_test

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/equilibrium"
	"swanneck/mathlib/quantity"
)

func TestMixtureOfTwoIsThePair(t *testing.T) {
	for _, base := range []compound.Base{compound.Original, compound.Dortmund} {
		model := map[compound.Base]string{compound.Original: "UNIFAC", compound.Dortmund: "UNIFAC Dortmund"}[base]
		pair := the(equilibrium.NewPair(equilibrium.UseModel(model)))
		m := the(equilibrium.NewMixture(base, "ethanol", "water"))
		y := make([]float64, 2)
		rapid.Check(t, func(t *rapid.T) {
			x, pKPa := fraction(t, "x"), pressure(t)
			s := the(pair.Bubble(x, pKPa))
			tempK := the(m.Bubble([]float64{x, 1 - x}, pKPa, y))
			if math.Abs(tempK-s.TempK) > 1e-6 || math.Abs(y[0]-s.Y) > 1e-8 || math.Abs(y[0]+y[1]-1) > 1e-12 {
				t.Fatalf("%s: x = %g under %g kPa boils at %.9f K with y %.9g; the pair %.9f K, %.9g", base, x, pKPa, tempK, y[0], s.TempK, s.Y)
			}
		})
	}
}

// Many compounds: the equations hold, and Gibbs and Duhem's along a line through the composition.
func TestMixtureLaws(t *testing.T) {
	many(t, "2000", "1500")
	names := []string{"ethanol", "water", "methanol", "acetaldehyde", "ethyl acetate", "1-propanol", "isobutanol", "isoamyl alcohol", "isoamyl acetate", "acetic acid"}
	for _, base := range []compound.Base{compound.Original, compound.Dortmund} {
		m := the(equilibrium.NewMixture(base, names...))
		n := len(names)
		y, g, up, down, to := make([]float64, n), make([]float64, n), make([]float64, n), make([]float64, n), make([]float64, n)
		solved := 0
		rapid.Check(t, func(t *rapid.T) {
			x, sum := make([]float64, n), 0.0
			for i := range x {
				x[i] = math.Pow(rapid.Float64Range(0, 1).Draw(t, names[i]), 4)
				sum += x[i]
			}
			if sum == 0 {
				return
			}
			for i := range x {
				x[i] /= sum
			}
			pKPa := math.Exp(rapid.Float64Range(math.Log(2), math.Log(300)).Draw(t, "ln kPa"))
			tempK, err := m.Bubble(x, pKPa, y)
			var split *equilibrium.SplitError
			var out *quantity.RangeError
			if errors.As(err, &split) || errors.As(err, &out) {
				return
			}
			if err != nil {
				t.Fatal(err)
			}
			solved++
			the(0, m.LnGamma(x, tempK, g))
			total := 0.0
			for i, name := range names {
				lnPa, _ := find(name).Vapour.LnPa(tempK)
				part := x[i] * math.Exp(g[i]+lnPa) / 1000 / pKPa
				total += part
				if math.Abs(part-y[i]) > 2e-8 {
					t.Fatalf("%s: y = %.10g; its partial pressure has %.10g of the whole", name, y[i], part)
				}
			}
			if math.Abs(total-1) > 2e-8 {
				t.Fatalf("the partial pressures sum to %.12g of the pressure", total)
			}
			// Gibbs and Duhem along the line towards the pure first compound.
			const h = 1e-6
			for i := range to {
				to[i] = -x[i]
			}
			to[0]++
			step := func(e float64, out []float64) {
				z := make([]float64, n)
				for i := range z {
					z[i] = x[i] + e*to[i]
				}
				the(0, m.LnGamma(z, tempK, out))
			}
			step(h, up)
			step(0, g)
			if x[0] > h {
				step(-h, down)
				gd := 0.0
				for i := range x {
					gd += x[i] * (up[i] - down[i]) / (2 * h)
				}
				if math.Abs(gd) > 1e-6 {
					t.Fatalf("Σ x dlnγ = %g along the line to pure ethanol", gd)
				}
			}
		})
		if solved < 100 {
			t.Errorf("%s: only %d of the draws boiled as one liquid", base, solved)
		}
	}
}

func TestMixtureRefuses(t *testing.T) {
	for name, err := range map[string]error{
		"nothing": second(equilibrium.NewMixture(compound.Original)),
		"unknown": second(equilibrium.NewMixture(compound.Original, "ethanol", "watr")),
		"twice":   second(equilibrium.NewMixture(compound.Original, "ethanol", "ethyl alcohol")),
		"method":  second(equilibrium.NewMixture("psrk", "ethanol")),
		"pair":    second(equilibrium.NewMixture(compound.Original, "furfural", "acetaldehyde", "trans-anethole")),
	} {
		if err == nil || !strings.HasPrefix(err.Error(), "equilibrium.NewMixture: ") {
			t.Errorf("%s: %v; want an error of NewMixture", name, err)
		}
	}
	m := the(equilibrium.NewMixture(compound.Original, "ethanol", "water", "limonene"))
	y := make([]float64, 3)
	for name, c := range map[string]struct {
		x   []float64
		kPa float64
	}{
		"too few": {[]float64{0.5, 0.5}, 100}, "sum": {[]float64{0.5, 0.4, 0}, 100}, "negative": {[]float64{1.1, -0.1, 0}, 100}, "no number": {[]float64{math.NaN(), 0.5, 0.5}, 100},
		"vacuum": {[]float64{0.5, 0.5, 0}, 1}, "pressure": {[]float64{0.5, 0.5, 0}, 2000},
	} {
		if tempK, err := m.Bubble(c.x, c.kPa, y); err == nil {
			t.Errorf("%s: %g K; want an error", name, tempK)
		}
	}
	_, err := m.Bubble([]float64{0.05, 0.94, 0.01}, 101.325, y)
	var split *equilibrium.SplitError
	if !errors.As(err, &split) || split.Compound != "limonene" || split.Activity <= 1 {
		t.Errorf("1 %% of limonene in weak spirit: %v; want a SplitError", err)
	}
	if err := m.LnGamma([]float64{0.5, 0.5, 0}, 600, y); err == nil {
		t.Error("600 K: no error")
	}
	if !slices.Equal(m.Names(), []string{"ethanol", "water", "limonene"}) {
		t.Errorf("%v", m.Names())
	}
	notes := strings.Join(the(equilibrium.NewMixture(compound.Original, "linalool", "camphor", "acetal")).Notes(390), "\n")
	for _, want := range []string{"linalool: vapour pressure estimated", "camphor: vapour pressure extrapolated below 177.9", "acetal: vapour pressure extrapolated above 102.9"} {
		if !strings.Contains(notes, want) {
			t.Errorf("notes %q; want %q", notes, want)
		}
	}
}

func second[T any](_ T, err error) error { return err }

func TestMixtureAllocatesNothing(t *testing.T) {
	m := the(equilibrium.NewMixture(compound.Dortmund, "ethanol", "water", "methanol"))
	x, y := []float64{0.1, 0.89, 0.01}, make([]float64, 3)
	if n := testing.AllocsPerRun(100, func() { the(m.Bubble(x, 101.325, y)) }); n != 0 {
		t.Errorf("Bubble allocates %g times", n)
	}
}
