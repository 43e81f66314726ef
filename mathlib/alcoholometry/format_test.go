package alcoholometry_test

import (
	"fmt"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

func TestFormat(t *testing.T) {
	s, err := alcoholometry.ABV(40)
	if err != nil {
		t.Fatal(err)
	}
	c, err := quantity.Celsius(18.25)
	if err != nil {
		t.Fatal(err)
	}
	p, err := quantity.KPa(95)
	if err != nil {
		t.Fatal(err)
	}
	for format, want := range map[string]string{
		"%v": "40.00 % vol|18.2 °C|95.00 kPa", "%.1f": "40.0|18.2|95.0", "%s": "40.00 % vol|18.2 °C|95.00 kPa",
		"%7.2f": "  40.00|  18.25|  95.00", "%d": "%!d(Strength=40.00 % vol)|%!d(Temperature=18.2 °C)|%!d(Pressure=95.00 kPa)",
		"%-6.0f": "40    |18    |95    ", "%+.0f": "+40|+18|+95",
	} {
		if got := fmt.Sprintf(format+"|"+format+"|"+format, s, c, p); got != want {
			t.Errorf("%s: %q; want %q", format, got, want)
		}
	}
}
