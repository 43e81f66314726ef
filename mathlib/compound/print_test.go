package compound_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

func TestAgainstPrint(t *testing.T) {
	for _, r := range table(t, "compound_print.csv") {
		c := r.compound()
		var got float64
		switch q := r.text("quantity"); q {
		case "vapour_pressure":
			got = the(c.VapourPressureKPa(celsius(r.number("at_C"))))
		case "boiling":
			got = the(c.BoilingPoint(quantity.Pressure{})).C()
		case "vaporisation":
			got = the(c.VaporisationKJMol(celsius(r.number("at_C")))) / c.MolarMassG * 1000
		case "heat_capacity":
			got = the(c.LiquidHeatCapacityJMolK(celsius(r.number("at_C"))))
		default:
			t.Fatalf("nobody reckons %q", q)
		}
		if want, tol := r.number("value"), r.number("tolerance"); !(math.Abs(got-want) <= tol) {
			t.Errorf("%s of %s = %.4f; %s (%s) gives %g ± %g %s", r.text("quantity"), c.Name, got, r.text("source"), r.text("status"), want, tol, r.text("unit"))
		}
	}
}

// Goldens of another program that evaluates the same equations, so that a mistyped exponent shows.
func TestEquationsGolden(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range table(t, "compound.golden.csv") {
		c := r.compound()
		seen[c.Name] = true
		for _, p := range []struct {
			tempK float64
			want  float64
		}{{298.15, r.number("p25_Pa")}, {363.15, r.number("p90_Pa")}} {
			ln, _ := c.Vapour.LnPa(p.tempK)
			if got := math.Exp(ln); math.Abs(relative(got, p.want)) > 5e-5 {
				t.Errorf("vapour pressure of %s at %g K = %.6g Pa; golden %g", c.Name, p.tempK, got, p.want)
			}
		}
		boilingK := r.number("boiling_K")
		ln, _ := c.Vapour.LnPa(boilingK)
		_, perK := c.Vapour.LnPa(boilingK)
		if off := (ln - math.Log(101325)) / perK; math.Abs(off) > 0.0051 {
			t.Errorf("%s boils %.4f K below the golden %g K", c.Name, off, boilingK)
		}
		if got, err := c.BoilingPoint(quantity.Pressure{}); err == nil && math.Abs(got.K()-boilingK) > 0.0051 {
			t.Errorf("%s boils at %.4f K; golden %g", c.Name, got.K(), boilingK)
		}
		if want := r.number("molar_mass_g"); math.Abs(c.MolarMassG-want) > 0.0011 {
			t.Errorf("molar mass of %s = %.4f; golden %g", c.Name, c.MolarMassG, want)
		}
	}
	for _, n := range compound.Names() {
		if !seen[n] {
			t.Errorf("%s has no golden", n)
		}
	}
	if len(seen) < 45 {
		t.Errorf("%d compounds; want 45 or more", len(seen))
	}
}

func TestMolarMassesAgreeWithAlcoholometry(t *testing.T) {
	for name, want := range map[string]float64{"ethanol": alcoholometry.MolarMassEthanolG, "water": alcoholometry.MolarMassWaterG} {
		if got := find(name).MolarMassG; math.Abs(got-want) > 1e-12 {
			t.Errorf("molar mass of %s = %.12g; alcoholometry has %.12g", name, got, want)
		}
	}
}

// The derivative is that of the curve, vapour pressure rises with temperature, and the boiling point is its inverse,
// everywhere in the range of each equation.
func TestVapourPressureLaws(t *testing.T) {
	all := compound.All()
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.SampledFrom(all).Draw(t, "compound")
		v := &c.Vapour
		tempC := rapid.Float64Range(v.MinC+0.01, v.MaxC-0.01).Draw(t, "tC")
		tempK := tempC + 273.15
		ln, perK := v.LnPa(tempK)
		const h = 1e-3
		up, _ := v.LnPa(tempK + h)
		down, _ := v.LnPa(tempK - h)
		if slope := (up - down) / (2 * h); math.Abs(slope-perK) > 1e-5*perK+1e-9 || perK <= 0 {
			t.Fatalf("%s at %g °C: slope %g; by differences %g", c.Name, tempC, perK, slope)
		}
		p := the(c.VapourPressureKPa(celsius(tempC)))
		if math.Abs(p-math.Exp(ln)/1000) > 1e-9*p {
			t.Fatalf("%s at %g °C: %g kPa; LnPa gives %g", c.Name, tempC, p, math.Exp(ln)/1000)
		}
		back, err := c.BoilingPoint(the(quantity.KPa(p)))
		if err != nil || math.Abs(back.C()-tempC) > 1e-7 {
			t.Fatalf("%s boils at %v, %v under its vapour pressure at %.9f °C", c.Name, back.C(), err, tempC)
		}
	})
}

// WarmingJMol is the integral of CapacityJMolK: Simpson's rule is exact to the fourth power within 1e-6 here.
func TestWarmingIsTheIntegral(t *testing.T) {
	for _, name := range []string{"ethanol", "water"} {
		h := &find(name).Heat
		const from, to, n = 290.0, 370.0, 64
		sum := 0.0
		for i := range n + 1 {
			w := 2.0
			if i == 0 || i == n {
				w = 1
			} else if i%2 == 1 {
				w = 4
			}
			sum += w * h.CapacityJMolK(from+(to-from)*float64(i)/n)
		}
		sum *= (to - from) / n / 3
		if got := h.WarmingJMol(from, to); math.Abs(relative(got, sum)) > 1e-9 {
			t.Errorf("%s from %g to %g K: %.9g J/mol; Simpson %.9g", name, from, to, got, sum)
		}
	}
}

// Below the critical point heat of vaporisation falls with temperature, and near room temperature it is within 2 % of
// what the slope of the vapour pressure gives for an ideal vapour (Clapeyron): two tables, one physics.
func TestVaporisationAgainstClapeyron(t *testing.T) {
	const gasJMolK = 8.31446261815324 // J/(mol K), CODATA 2018, exact
	for _, name := range []string{"ethanol", "water"} {
		c := find(name)
		before := math.Inf(1)
		for tempC := 5.0; tempC < 230; tempC += 5 {
			h := the(c.VaporisationKJMol(celsius(tempC)))
			if h >= before {
				t.Errorf("%s: heat of vaporisation rises to %g kJ/mol at %g °C", name, h, tempC)
			}
			before = h
		}
		_, perK := c.Vapour.LnPa(298.15)
		clapeyron := gasJMolK * 298.15 * 298.15 * perK / 1000
		if h := the(c.VaporisationKJMol(celsius(25))); math.Abs(relative(h, clapeyron)) > 0.02 {
			t.Errorf("%s at 25 °C: %.3f kJ/mol; Clapeyron gives %.3f ± 2 %%", name, h, clapeyron)
		}
	}
}

// The anchors that come from Henry's constant alone are the quotient of the moles of water in a cubic metre and H p at
// 25 °C, here with the columns of two different files.
func TestHenryColumnGivesTheGammas(t *testing.T) {
	n := 0
	for _, r := range table(t, "gamma_inf_water_25C.csv") {
		c := r.compound()
		if !c.Henry.From.Known() || r.text("henry") == "" {
			continue
		}
		n++
		ln, _ := c.Vapour.LnPa(298.15)
		got := 55340 / (c.Henry.MolM3Pa * math.Exp(ln))
		if want := r.number("henry"); math.Abs(relative(got, want)) > 2e-4 && c.Name != "acetal" {
			t.Errorf("%s: 55340/(H p) = %.6g; the list gives %g", c.Name, got, want)
		}
	}
	if n < 30 {
		t.Fatalf("%d compounds have a Henry's constant; want 30", n)
	}
}
