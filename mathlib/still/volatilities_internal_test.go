package still

import (
	"math"
	"testing"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/equilibrium"
	"swanneck/mathlib/quantity"
)

// The table of 1/K is that of the Curve, for every compound, from a trace of ethanol to ethanol.
func TestVolatilitiesAreThoseOfTheCurve(t *testing.T) {
	const tol = 5e-6
	for _, pKPa := range []float64{30, 101.325, 140} {
		p, err := quantity.KPa(pKPa)
		if err != nil {
			t.Fatal(err)
		}
		var names []string
		for _, n := range compound.Names() {
			if _, err := equilibrium.NewCurve(p, []string{n}); err == nil { // not ethanol, not water
				names = append(names, n)
			}
		}
		if len(names) < 40 {
			t.Fatalf("only %d compounds have a volatility under %g kPa", len(names), pKPa)
		}
		c, err := equilibrium.NewCurve(p, names)
		if err != nil {
			t.Fatal(err)
		}
		v := newVolatilities(c, len(names))
		lnK, inverse := make([]float64, len(names)), make([]float64, len(names))
		for i := range 4000 {
			x := math.Pow(float64(i)/3999, 3)
			c.LnK(x, lnK)
			v.inverse(x, inverse)
			for k, ln := range lnK {
				if off := math.Abs(inverse[k]*math.Exp(ln) - 1); !(off <= tol) {
					t.Fatalf("%s under %g kPa, x = %g: 1/K is off by %.2g of its value", names[k], pKPa, x, off)
				}
			}
		}
	}
}
