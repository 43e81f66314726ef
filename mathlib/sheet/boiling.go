package sheet

import (
	"swanneck/mathlib/equilibrium"
)

// Boiling is a boiling spirit: Liquid, the Vapour over it, the temperature Temp and the pressure P; Note says if the figures
// are extrapolated.
type Boiling = equilibrium.Boiling

// PartBoiled is a spirit partly boiled off: Liquid and Vapour in equilibrium, and VapourShare, the vapour's share of the
// moles.
type PartBoiled = equilibrium.Split

// BoilingOption chooses something other than the usual model; UseModel and WithoutAnchor make one.
type BoilingOption = equilibrium.Option

// Boil returns the boiling point of a liquid under the pressure p, from 2 to 1100 kPa, and its first vapour.
func Boil(liquid Strength, p Pressure, opts ...BoilingOption) Boiling {
	v, err := equilibrium.Bubble(liquid, p, opts...)
	return must("Boil", v, err)
}

// BoilAt returns the pressure under which a liquid boils at t, from 1 to 185 °C, and its first vapour.
func BoilAt(liquid Strength, t Temperature, opts ...BoilingOption) Boiling {
	v, err := equilibrium.BubblePressure(liquid, t, opts...)
	return must("BoilAt", v, err)
}

// Condense returns the temperature at which a vapour begins to condense under the pressure p, from 2 to 1100 kPa, and the
// first drop of liquid.
func Condense(vapour Strength, p Pressure, opts ...BoilingOption) Boiling {
	v, err := equilibrium.Dew(vapour, p, opts...)
	return must("Condense", v, err)
}

// CondenseAt returns the pressure under which a vapour begins to condense at t, from 1 to 185 °C, and the first drop of
// liquid.
func CondenseAt(vapour Strength, t Temperature, opts ...BoilingOption) Boiling {
	v, err := equilibrium.DewPressure(vapour, t, opts...)
	return must("CondenseAt", v, err)
}

// Azeotrope returns the spirit that boils without changing under the pressure p, from 12 to 250 kPa.
func Azeotrope(p Pressure, opts ...BoilingOption) Boiling {
	v, err := equilibrium.Azeotrope(p, opts...)
	return must("Azeotrope", v, err)
}

// BoilPart returns what comes of a feed of which the share vapour of the moles (dimensionless, from 0 to 1) is boiled off
// under the pressure p and stays in equilibrium with the rest.
func BoilPart(feed Strength, p Pressure, vapour float64, opts ...BoilingOption) PartBoiled {
	v, err := equilibrium.Flash(feed, p, vapour, opts...)
	return must("BoilPart", v, err)
}

// HoldAt returns what comes of a feed that is held at the temperature t, from 1 to 185 °C, under the pressure p: liquid and
// vapour, or one of them alone.
func HoldAt(feed Strength, t Temperature, p Pressure, opts ...BoilingOption) PartBoiled {
	v, err := equilibrium.FlashTP(feed, t, p, opts...)
	return must("HoldAt", v, err)
}

// BoilingLine returns the boiling diagram under the pressure p: points of it, from 2 to 10001, at equal steps of the mole
// fraction of ethanol in the liquid, from water to ethanol.
func BoilingLine(p Pressure, points int, opts ...BoilingOption) []Boiling {
	v, err := equilibrium.Txy(p, points, opts...)
	return must("BoilingLine", v, err)
}

// BoilingLineAt returns the boiling diagram at the temperature t, from 1 to 185 °C: points of it, from 2 to 10001, at equal
// steps of the mole fraction of ethanol in the liquid, from water to ethanol.
func BoilingLineAt(t Temperature, points int, opts ...BoilingOption) []Boiling {
	v, err := equilibrium.Pxy(t, points, opts...)
	return must("BoilingLineAt", v, err)
}

// UseModel chooses the model of ethanol and water by its name: NRTL (the default), NRTL 2012, NRTL DECHEMA, Wilson, Wilson
// DECHEMA, Wilson DECHEMA 2, UNIQUAC, UNIFAC or UNIFAC Dortmund.
func UseModel(name string) BoilingOption { return equilibrium.UseModel(name) }

// WithoutAnchor takes the volatility of a compound from the group method alone, and not from a measurement in water.
func WithoutAnchor() BoilingOption { return equilibrium.WithoutAnchor() }
