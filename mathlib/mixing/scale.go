package mixing

import (
	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// OnScales returns the spirit of strength s at t for which scales show scaleKg, tare off: the air that it displaces is
// added back, and its volume at t follows. So a tank on load cells or a weighed drum goes into Reduce, Blend and the rest as
// any other spirit. It fails with an *alcoholometry.UnsetError, and with a *quantity.RangeError for a negative scaleKg or a
// temperature out of range.
//
// Source: OIML D 28 (2004), air of 1.2 kg/m³ and weights of 8000 kg/m³; OIML R 22 (1975).
func OnScales(scaleKg float64, s alcoholometry.Strength, t quantity.Temperature) (alcoholometry.Spirit, error) {
	const fn = "mixing.OnScales"
	kg, err := alcoholometry.MassFromBalanceKg(scaleKg, s, t)
	if err != nil {
		return alcoholometry.Spirit{}, as(fn, err)
	}
	return amount(fn, kg, s, t)
}

// WaterOnScalesKg returns what scales show for the water of the reduction, kg: 0.105 % less than its true mass WaterKg. It
// panics with a *quantity.RangeError for a Reduction that Reduce or Make did not return, if its water is negative.
//
// Source: as for OnScales.
func (r Reduction) WaterOnScalesKg() float64 {
	kg, err := alcoholometry.BalanceFromMassKg(r.WaterKg, alcoholometry.Water, r.WaterTemp)
	if err != nil {
		panic(as("mixing.Reduction.WaterOnScalesKg", err))
	}
	return kg
}
