package quantity_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/quantity"
)

func the[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

func TestFixedPoints(t *testing.T) {
	// BIPM SI Brochure 2.3.1 (0 °C = 273.15 K) and NIST SP 811 (2008), appendix B.8 (32 °F = 0 °C, 1.8 °F = 1 °C).
	for _, c := range []struct {
		what      string
		got, want float64
	}{
		{"Fahrenheit(32).C()", the(quantity.Fahrenheit(32)).C(), 0},
		{"Fahrenheit(60).C()", the(quantity.Fahrenheit(60)).C(), 15.555555555555556},
		{"Fahrenheit(68).C()", the(quantity.Fahrenheit(68)).C(), 20},
		{"Fahrenheit(212).C()", the(quantity.Fahrenheit(212)).C(), 100},
		{"Fahrenheit(-459.67).K()", the(quantity.Fahrenheit(-459.67)).K(), 0},
		{"Kelvin(273.15).C()", the(quantity.Kelvin(273.15)).C(), 0},
		{"Kelvin(0).C()", the(quantity.Kelvin(0)).C(), -273.15},
		{"Celsius(-40).F()", the(quantity.Celsius(-40)).F(), -40},
		{"Celsius(100).K()", the(quantity.Celsius(100)).K(), 373.15},
		{"Temperature{}.C()", quantity.Temperature{}.C(), 20},
		{"Temperature{}.F()", quantity.Temperature{}.F(), 68},
	} {
		if math.Abs(c.got-c.want) > 1e-12 {
			t.Errorf("%s = %.15g; want %.15g", c.what, c.got, c.want)
		}
	}
	if the(quantity.Celsius(20)) != (quantity.Temperature{}) || the(quantity.Fahrenheit(68)) != (quantity.Temperature{}) {
		t.Error("a stated 20 °C differs from an unstated one")
	}
	if the(quantity.Celsius(0)) == (quantity.Temperature{}) {
		t.Error("0 °C equals an unstated temperature")
	}
}

func TestTemperatureThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.Float64Range(-273.15, 2000).Draw(t, "c")
		x := the(quantity.Celsius(c))
		if x.C() != c {
			t.Fatalf("Celsius(%.17g).C() = %.17g", c, x.C())
		}
		for name, back := range map[string]quantity.Temperature{"Kelvin": the(quantity.Kelvin(x.K())), "Fahrenheit": the(quantity.Fahrenheit(math.Max(x.F(), -459.67)))} {
			if math.Abs(back.C()-c) > 1e-9 {
				t.Fatalf("%s there and back: %.17g °C became %.17g", name, c, back.C())
			}
		}
	})
}

func TestPressureUnits(t *testing.T) {
	// NIST SP 811 (2008), appendix B.8; the standard atmosphere by the 10th CGPM (1954).
	for _, c := range []struct {
		what      string
		got, want float64
		tol       float64
	}{
		{"Pressure{}.KPa()", quantity.Pressure{}.KPa(), 101.325, 0},
		{"Atm(1).KPa()", the(quantity.Atm(1)).KPa(), 101.325, 0},
		{"MmHg(760).KPa()", the(quantity.MmHg(760)).KPa(), 101.325, 2e-5},
		{"MmHg(1).KPa()", the(quantity.MmHg(1)).KPa(), 0.1333224, 5e-8},
		{"Bar(1).KPa()", the(quantity.Bar(1)).KPa(), 100, 0},
		{"PSI(1).KPa()", the(quantity.PSI(1)).KPa(), 6.894757, 5e-7},
		{"KPa(90).MmHg()", the(quantity.KPa(90)).MmHg(), 675.06, 5e-3},
		{"KPa(90).Bar()", the(quantity.KPa(90)).Bar(), 0.9, 1e-15},
		{"KPa(90).Atm()", the(quantity.KPa(90)).Atm(), 0.888231, 5e-7},
		{"Pressure{}.PSI()", quantity.Pressure{}.PSI(), 14.69595, 5e-6},
	} {
		if math.Abs(c.got-c.want) > c.tol {
			t.Errorf("%s = %.9g; want %.9g ± %g", c.what, c.got, c.want, c.tol)
		}
	}
	if the(quantity.KPa(101.325)) != (quantity.Pressure{}) || the(quantity.KPa(0)) == (quantity.Pressure{}) {
		t.Error("an unstated pressure is not one atmosphere")
	}
}

func TestAtAltitude(t *testing.T) {
	// U.S. Standard Atmosphere (1976), table I, geometric height; from memory.
	for _, c := range []struct{ m, kPa float64 }{{-1000, 113.93}, {0, 101.325}, {1000, 89.876}, {2000, 79.501}, {5000, 54.048}, {10000, 26.500}} {
		if got := the(quantity.AtAltitude(c.m)).KPa(); math.Abs(got-c.kPa) > 1e-3*c.kPa/10 {
			t.Errorf("AtAltitude(%g m) = %.4f kPa; U.S. Standard Atmosphere (1976) gives %g ± 0.01 %%", c.m, got, c.kPa)
		}
	}
}

func TestUnitsOfVolumeAndMass(t *testing.T) {
	// NIST Handbook 44 (2023), appendix C, and Weights and Measures Act 1985 (UK), schedule 1.
	for _, c := range []struct {
		what      string
		got, want float64
	}{
		{"1 US gallon, L", quantity.USGallonsToL(1), 3.785411784},
		{"1 US gallon, cubic inches", quantity.USGallonsToL(1) / (0.0254 * 0.0254 * 0.0254 * 1000), 231},
		{"1 Imperial gallon, L", quantity.ImperialGallonsToL(1), 4.54609},
		{"1 US fluid ounce, L", quantity.USFluidOuncesToL(1), 0.0295735295625},
		{"1 Imperial fluid ounce, L", quantity.ImperialFluidOuncesToL(1), 0.0284130625},
		{"1 pound, kg", quantity.PoundsToKg(1), 0.45359237},
		{"1 ounce, g", quantity.KgToG(quantity.OuncesToKg(1)), 28.349523125},
		{"750 mL, L", quantity.MLToL(750), 0.75},
		{"2 hL, L", quantity.HLToL(2), 200},
	} {
		if math.Abs(c.got-c.want) > 1e-14*c.want {
			t.Errorf("%s: %.15g; want %.15g", c.what, c.got, c.want)
		}
	}
}

func TestUnitsThereAndBack(t *testing.T) {
	pairs := map[string][2]func(float64) float64{
		"US gallons":            {quantity.USGallonsToL, quantity.LToUSGallons},
		"Imperial gallons":      {quantity.ImperialGallonsToL, quantity.LToImperialGallons},
		"US fluid ounces":       {quantity.USFluidOuncesToL, quantity.LToUSFluidOunces},
		"Imperial fluid ounces": {quantity.ImperialFluidOuncesToL, quantity.LToImperialFluidOunces},
		"mL":                    {quantity.MLToL, quantity.LToML},
		"hL":                    {quantity.HLToL, quantity.LToHL},
		"pounds":                {quantity.PoundsToKg, quantity.KgToPounds},
		"ounces":                {quantity.OuncesToKg, quantity.KgToOunces},
		"grams":                 {quantity.GToKg, quantity.KgToG},
	}
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(-1e9, 1e9).Draw(t, "x")
		if math.Abs(x) < 1e-300 {
			x = 0 // below there a float64 has fewer digits
		}
		for name, p := range pairs {
			if back := p[1](p[0](x)); math.Abs(back-x) > 1e-15*math.Abs(x)*4 {
				t.Fatalf("%s: %.17g came back as %.17g", name, x, back)
			}
		}
	})
	for name, p := range pairs {
		for _, f := range p {
			for _, bad := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
				if _, ok := caught(func() { f(bad) }).(*quantity.RangeError); !ok {
					t.Errorf("%s: %g does not panic with a RangeError", name, bad)
				}
			}
		}
	}
}

func caught(f func()) (r any) {
	defer func() { r = recover() }()
	f()
	return nil
}

func TestConstructorsRefuse(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	bad := map[string]error{}
	for name, f := range map[string]func(float64) (quantity.Temperature, error){"Celsius": quantity.Celsius, "Fahrenheit": quantity.Fahrenheit, "Kelvin": quantity.Kelvin} {
		_, bad[name+" NaN"] = f(nan)
		_, bad[name+" +Inf"] = f(inf)
		_, bad[name+" -Inf"] = f(-inf)
		_, bad[name+" -460"] = f(-460)
	}
	_, bad["Celsius(-273.16)"] = quantity.Celsius(-273.16)
	_, bad["Kelvin(-0.01)"] = quantity.Kelvin(-0.01)
	for name, f := range map[string]func(float64) (quantity.Pressure, error){"KPa": quantity.KPa, "MmHg": quantity.MmHg, "Bar": quantity.Bar, "Atm": quantity.Atm, "PSI": quantity.PSI} {
		_, bad[name+" NaN"] = f(nan)
		_, bad[name+" Inf"] = f(inf)
		_, bad[name+" -1"] = f(-1)
	}
	_, bad["AtAltitude(12000)"] = quantity.AtAltitude(12000)
	_, bad["AtAltitude(NaN)"] = quantity.AtAltitude(nan)
	for name, err := range bad {
		var out *quantity.RangeError
		if !errors.As(err, &out) {
			t.Errorf("%s: %v; want a RangeError", name, err)
		}
	}
}

func TestRangeErrorInWords(t *testing.T) {
	inf := math.Inf(1)
	for _, c := range []struct {
		e    quantity.RangeError
		want string
	}{
		{quantity.RangeError{"p.F", "t", 60, -20, 40, "°C", "OIML R 22 (1975)"}, "p.F: t is 60 °C; it must be from -20 to 40 °C (OIML R 22 (1975))"},
		{quantity.RangeError{"p.F", "x", -1, 0, 1, "", ""}, "p.F: x is -1; it must be from 0 to 1"},
		{quantity.RangeError{"p.F", "mass", -1, 0, inf, "kg", ""}, "p.F: mass is -1 kg; it must be at least 0 kg"},
		{quantity.RangeError{"p.F", "mass", 5, -inf, 4, "kg", ""}, "p.F: mass is 5 kg; it must be at most 4 kg"},
		{quantity.RangeError{"p.F", "mass", math.NaN(), -inf, inf, "kg", ""}, "p.F: mass is NaN kg; it must be a finite number"},
		{quantity.RangeError{"p.F", "t", 40.0000001, -20, 40, "°C", ""}, "p.F: t is 40.0000001 °C; it must be from -20 to 40 °C"},
	} {
		if got := c.e.Error(); got != c.want {
			t.Errorf("got  %s\nwant %s", got, c.want)
		}
	}
	if err := quantity.CheckRange("p.F", "x", 1, 0, 1, "", ""); err != nil {
		t.Errorf("the limit itself is refused: %v", err)
	}
}

func TestFigure(t *testing.T) {
	for x, want := range map[float64]string{0: "0.000", 0.7: "0.700", 0.9996: "1.00", 1: "1.00", 43.206: "43.21", 999.99: "999.99", 999.996: "1000.0", 2520: "2520.0", -0.0001: "0.000", -12.3: "-12.30"} {
		if got := quantity.Figure(x); got != want {
			t.Errorf("Figure(%g) = %s; want %s", x, got, want)
		}
	}
}
