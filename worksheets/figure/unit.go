package figure

import (
	"fmt"
	"strings"

	"swanneck/mathlib/quantity"
)

// unit is a unit that can be converted into others of its kind: times/parts of the kind's first unit (dimensionless).
type unit struct {
	kind  string
	times float64 // so many of the kind's first unit,
	parts float64 // divided by this; apart, so that 205.5 mL are 0.2055 L and not 0.20550000000000002
	names []string
}

// units are those that need no more than a factor. Strengths and temperatures have functions of their own.
var units = []unit{
	{"volume", 1, 1, []string{"L", "l", "litre", "litres", "liter", "liters"}},
	{"volume", 1, 1000, []string{"mL", "ml", "cm³", "cm3"}},
	{"volume", 1, 100, []string{"cL", "cl"}},
	{"volume", 1, 10, []string{"dL", "dl"}},
	{"volume", 100, 1, []string{"hL", "hl"}},
	{"volume", 1000, 1, []string{"m³", "m3"}},
	{"volume", quantity.USGallonsToL(1), 1, []string{"gal", "US gal", "gal (US)", "gallons"}},
	{"volume", quantity.ImperialGallonsToL(1), 1, []string{"imp gal", "gal (Imperial)", "UK gal"}},
	{"volume", quantity.USFluidOuncesToL(1), 1, []string{"fl oz", "US fl oz", "fl oz (US)"}},
	{"volume", quantity.ImperialFluidOuncesToL(1), 1, []string{"imp fl oz", "fl oz (Imperial)"}},
	{"mass", 1, 1, []string{"kg"}},
	{"mass", 1, 1000, []string{"g"}},
	{"mass", 1, 1e6, []string{"mg"}},
	{"mass", 1000, 1, []string{"t", "tonnes"}},
	{"mass", quantity.PoundsToKg(1), 1, []string{"lb", "lbs"}},
	{"mass", quantity.OuncesToKg(1), 1, []string{"oz"}},
	{"pressure", 1, 1, []string{"kPa"}},
	{"pressure", 1, 1000, []string{"Pa"}},
	{"pressure", 1, 10, []string{"hPa", "mbar"}},
	{"pressure", 100, 1, []string{"bar"}},
	{"pressure", must(quantity.Atm(1)).KPa(), 1, []string{"atm"}},
	{"pressure", must(quantity.MmHg(1)).KPa(), 1, []string{"mmHg"}},
	{"pressure", 101.325, 760, []string{"Torr", "torr"}}, // Source: NIST Special Publication 811 (2008), appendix B.8
	{"pressure", must(quantity.PSI(1)).KPa(), 1, []string{"psi", "psia"}},
	{"time", 1, 1, []string{"h", "hours", "hour"}},
	{"time", 1, 60, []string{"min", "minutes", "minute"}},
	{"time", 1, 3600, []string{"s", "seconds", "second"}},
	{"time", 24, 1, []string{"d", "days", "day"}},
	{"time", 168, 1, []string{"weeks", "week"}},
	{"length", 1, 1, []string{"m"}},
	{"length", 1, 100, []string{"cm"}},
	{"length", 1, 1000, []string{"mm"}},
	{"length", 0.3048, 1, []string{"ft"}}, // Source: NIST Special Publication 811 (2008), appendix B.8, exact
	{"length", 0.0254, 1, []string{"in"}}, // likewise
	{"power", 1, 1, []string{"kW"}},
	{"power", 1, 1000, []string{"W"}},
	{"heat", 1, 1, []string{"kJ"}},
	{"heat", 1000, 1, []string{"MJ"}},
	{"heat", 3600, 1, []string{"kWh"}},
	{"flow", 1, 1, []string{"L/h", "l/h"}},
	{"flow", 60, 1, []string{"L/min", "l/min"}},
	{"flow", 60, 1000, []string{"mL/min", "ml/min"}},
	{"mass in a volume", 1, 1, []string{"g/L", "g/l", "mg/mL", "kg/m³"}},
	{"mass in a volume", 1, 1000, []string{"mg/L", "mg/l"}},
	{"mass in a volume", 10, 1, []string{"g/100 mL", "g/100 ml"}},
	{"mass in a mass", 1, 1, []string{"g/kg"}},
	{"mass in a mass", 1, 1000, []string{"mg/kg", "ppm by mass"}},
	{"share", 1, 1, []string{"1"}},
	{"share", 1, 100, []string{"%"}},
}

func must(p quantity.Pressure, err error) quantity.Pressure {
	if err != nil {
		panic(err) // of a constant above
	}
	return p
}

var unitByName = func() map[string]unit {
	m := map[string]unit{}
	for _, u := range units {
		for _, n := range u.names {
			m[squeeze(n)] = u
		}
	}
	return m
}()

// squeeze takes the spaces out of a unit: "% vol" and "%vol" are the same.
func squeeze(s string) string { return strings.Join(strings.Fields(s), "") }

// Convert returns x, a number of the unit from, as a number of the unit to (dimensionless here). The same unit needs not
// be known: "bottles" are "bottles". gal and fl oz are those of the United States.
func Convert(x float64, from, to string) (float64, error) {
	if squeeze(from) == squeeze(to) {
		return x, nil
	}
	a, known := unitByName[squeeze(from)]
	b, wanted := unitByName[squeeze(to)]
	switch {
	case known && wanted && a.kind == b.kind:
		return x * a.times * b.parts / (a.parts * b.times), nil
	case wanted:
		return 0, fmt.Errorf("%q is no unit of %s; want %s", from, b.kind, list(b.kind))
	}
	return 0, fmt.Errorf("%q does not fit; want %s", from, to)
}

// list names the units of a kind.
func list(kind string) string {
	var names []string
	for _, u := range units {
		if u.kind == kind {
			names = append(names, u.names[0])
		}
	}
	return strings.Join(names[:len(names)-1], ", ") + " or " + names[len(names)-1]
}

// In reads a figure and returns it in the unit wanted (dimensionless here: in that unit). A figure without a unit is
// refused, unless what is wanted is a bare number ("1").
func In(text, unit string) (float64, error) {
	x, given, err := Split(text)
	if err != nil {
		return 0, err
	}
	if given == "" {
		if squeeze(unit) == "1" {
			return x, nil
		}
		return 0, fmt.Errorf("%q has no unit; want it as \"%s %s\"", text, strings.TrimSpace(text), unit)
	}
	y, err := Convert(x, given, unit)
	if err != nil {
		return 0, fmt.Errorf("%s: %w", strings.TrimSpace(text), err)
	}
	return y, nil
}
