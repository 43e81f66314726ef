package quantity_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"swanneck/mathlib/quantity"
)

func ExampleMgL() {
	c, err := quantity.MgL(31.8)
	fmt.Println(c, err)
	// Output: 31.80 mg/L <nil>
}

func ExampleGL() {
	c, _ := quantity.GL(2)
	fmt.Println(c)
	// Output: 2000.0 mg/L
}

func ExampleMgKg() {
	c, _ := quantity.MgKg(35)
	fmt.Println(c)
	// Output: 35.00 mg/kg
}

func ExamplePartsPerMillion() {
	c, _ := quantity.PartsPerMillion(0.025)
	fmt.Println(c)
	// Output: 0.025 mg/kg
}

func ExampleGHLPure() {
	c, _ := quantity.GHLPure(1000)
	fmt.Println(c)
	// Output: 1000.0 g/hL of pure alcohol
}

func ExampleConcentration_Value() {
	c, _ := quantity.GL(0.5)
	fmt.Println(c.Value(), c.Per())
	// Output: 500 mg/L
}

func ExampleConcentration_IsSet() {
	nought, _ := quantity.MgL(0)
	fmt.Println(nought.IsSet(), quantity.Concentration{}.IsSet(), quantity.Concentration{})
	// Output: true false unset concentration
}

func TestConcentrationsThatCannotBe(t *testing.T) {
	for name, make := range map[string]func(float64) (quantity.Concentration, error){"MgL": quantity.MgL, "GL": quantity.GL,
		"MgKg": quantity.MgKg, "PartsPerMillion": quantity.PartsPerMillion, "GHLPure": quantity.GHLPure} {
		for _, x := range []float64{-1e-9, math.NaN(), math.Inf(1), math.Inf(-1)} {
			c, err := make(x)
			var r *quantity.RangeError
			if !errors.As(err, &r) || r.Func != "quantity."+name || c.IsSet() {
				t.Errorf("%s(%g) = %v, %v", name, x, c, err)
			}
		}
		if c, err := make(1); err != nil || !c.IsSet() {
			t.Errorf("%s(1) = %v, %v", name, c, err)
		}
	}
	if _, err := quantity.MgKg(1.1e6); err == nil {
		t.Error("more than a kilogram in a kilogram")
	}
	if a, b := the(quantity.MgKg(5)), the(quantity.PartsPerMillion(5)); a != b {
		t.Errorf("5 mg/kg is %v and 5 parts per million are %v", a, b)
	}
	if a, b := the(quantity.MgL(5)), the(quantity.MgKg(5)); a == b {
		t.Error("5 mg/L and 5 mg/kg are the same")
	}
	if got := fmt.Sprintf("%.1f|%8.2f|%v", the(quantity.MgL(2)), the(quantity.MgL(2)), the(quantity.MgL(0.00012))); got != "2.0|    2.00|0.00012 mg/L" {
		t.Errorf("formats as %q", got)
	}
}
