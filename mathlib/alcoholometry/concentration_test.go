package alcoholometry_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

func ExampleConcentrationMgL() {
	s, _ := alcoholometry.ABV(60)
	limit, _ := quantity.MgKg(35)
	x, _ := alcoholometry.ConcentrationMgL(limit, s)
	fmt.Printf("%v are %.1f mg/L\n", limit, x)
	// Output: 35.00 mg/kg are 31.8 mg/L
}

func ExampleConcentrationMgKg() {
	s, _ := alcoholometry.ABV(40)
	c, _ := quantity.MgL(10)
	x, _ := alcoholometry.ConcentrationMgKg(c, s)
	fmt.Printf("%.2f mg/kg\n", x)
	// Output: 10.55 mg/kg
}

func ExampleConcentrationGHLPure() {
	s, _ := alcoholometry.ABV(60)
	c, _ := quantity.MgKg(35)
	x, _ := alcoholometry.ConcentrationGHLPure(c, s)
	fmt.Printf("%.2f g/hL of pure alcohol\n", x)
	// Output: 5.30 g/hL of pure alcohol
}

func ExampleMassG() {
	s, _ := alcoholometry.ABV(40)
	c, _ := quantity.GHLPure(1000)
	x, _ := alcoholometry.MassG(c, alcoholometry.Spirit{VolumeL: 50, Strength: s})
	fmt.Printf("%.0f g\n", x)
	// Output: 200 g
}

// A litre of 40 % vol holds 0.4 L of ethanol and, at 948.05 kg/m³ (OIML R 22, 1975), weighs 0.94805 kg: by hand, 1 g/hL of
// pure alcohol is 10 mg to the litre of it, 4 mg/L and 4.2192 mg/kg.
func TestConcentrationsByHand(t *testing.T) {
	s := the(alcoholometry.ABV(40))
	for _, c := range []quantity.Concentration{the(quantity.GHLPure(1)), the(quantity.MgL(4)), the(quantity.MgKg(4.21919))} {
		for _, x := range []struct {
			unit string
			got  float64
			want float64
		}{
			{"mg/L", the(alcoholometry.ConcentrationMgL(c, s)), 4},
			{"mg/kg", the(alcoholometry.ConcentrationMgKg(c, s)), 4.21919},
			{"g/hL of pure alcohol", the(alcoholometry.ConcentrationGHLPure(c, s)), 1},
		} {
			if math.Abs(x.got-x.want) > 2e-5*x.want {
				t.Errorf("%v at %v is %.7g %s; by hand %.7g", c, s, x.got, x.unit, x.want)
			}
		}
	}
}

func TestConcentrationsThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := the(alcoholometry.ABV(rapid.Float64Range(0.1, 100).Draw(t, "% vol")))
		x := rapid.Float64Range(0, 1e4).Draw(t, "mg/L")
		c := the(quantity.MgL(x))
		kg := the(quantity.MgKg(the(alcoholometry.ConcentrationMgKg(c, s))))
		pure := the(quantity.GHLPure(the(alcoholometry.ConcentrationGHLPure(kg, s))))
		if back := the(alcoholometry.ConcentrationMgL(pure, s)); math.Abs(back-x) > 1e-9*x {
			t.Fatalf("%.12g mg/L at %v comes back as %.12g", x, s, back)
		}
		spirit := alcoholometry.Spirit{VolumeL: 3, Strength: s}
		if a, b := the(alcoholometry.MassG(c, spirit)), the(alcoholometry.MassG(pure, spirit)); math.Abs(a-3*x/1000) > 1e-9*a || math.Abs(a-b) > 1e-9*a {
			t.Fatalf("3 L with %.12g mg/L hold %.12g g or %.12g g", x, a, b)
		}
	})
}

func TestConcentrationsThatDoNotConvert(t *testing.T) {
	s, set := the(alcoholometry.ABV(40)), the(quantity.MgL(1))
	pure := the(quantity.GHLPure(1))
	var unset *alcoholometry.UnsetError
	for name, f := range map[string]func(quantity.Concentration, alcoholometry.Strength) (float64, error){
		"mg/L": alcoholometry.ConcentrationMgL, "mg/kg": alcoholometry.ConcentrationMgKg, "g/hL": alcoholometry.ConcentrationGHLPure} {
		if x, err := f(quantity.Concentration{}, s); err == nil {
			t.Errorf("%s of an unset concentration: %g", name, x)
		}
		if x, err := f(set, alcoholometry.Strength{}); !errors.As(err, &unset) {
			t.Errorf("%s at an unset strength: %g, %v", name, x, err)
		}
		if name != "g/hL" {
			if x, err := f(pure, alcoholometry.Water); err == nil {
				t.Errorf("%s of a concentration on no alcohol: %g", name, x)
			}
		}
	}
	if x, err := alcoholometry.ConcentrationGHLPure(set, alcoholometry.Water); err == nil {
		t.Errorf("to no alcohol: %g", x)
	}
	if x, err := alcoholometry.MassG(set, alcoholometry.Spirit{VolumeL: -1, Strength: s}); err == nil {
		t.Errorf("in -1 L: %g g", x)
	}
}
