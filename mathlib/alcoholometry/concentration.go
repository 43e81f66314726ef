package alcoholometry

import (
	"fmt"

	"swanneck/mathlib/quantity"
)

// The functions in this file turn one way of stating a concentration into another. The compound itself is taken as so
// little that it changes neither the density nor the strength of the spirit. A litre is one at 20 °C.
//
// They fail with an *UnsetError for a spirit without strength and for an unset concentration, and where there is no
// alcohol to count on.

// ConcentrationMgKg returns a concentration in a spirit of strength s in mg/kg of the spirit (a unit of mass, the same as
// parts per million).
func ConcentrationMgKg(c quantity.Concentration, s Strength) (float64, error) {
	return mgKg("alcoholometry.ConcentrationMgKg", c, s)
}

// ConcentrationMgL returns a concentration in a spirit of strength s in mg/L (milligrams to the litre of spirit at 20 °C).
func ConcentrationMgL(c quantity.Concentration, s Strength) (float64, error) {
	x, err := mgKg("alcoholometry.ConcentrationMgL", c, s)
	if err != nil || c.Per() == quantity.PerLitre {
		return c.Value(), err
	}
	return x * isotherm20.rho(s.w) / 1000, nil
}

// ConcentrationGHLPure returns a concentration in a spirit of strength s in g/hL of pure alcohol (grams to the hectolitre
// of ethanol at 20 °C).
func ConcentrationGHLPure(c quantity.Concentration, s Strength) (float64, error) {
	const fn = "alcoholometry.ConcentrationGHLPure"
	x, err := mgKg(fn, c, s)
	if err != nil || c.Per() == quantity.PerPureAlcohol {
		return c.Value(), err
	}
	if s.w == 0 {
		return 0, noAlcohol(fn)
	}
	return x / s.w * ethanol20KgM3 / 1e4, nil
}

// MassG returns how many grams of a compound there are in a spirit at a concentration.
func MassG(c quantity.Concentration, spirit Spirit) (float64, error) {
	const fn = "alcoholometry.MassG"
	if err := CheckSpirit(fn, spirit); err != nil {
		return 0, err
	}
	x, err := mgKg(fn, c, spirit.Strength)
	if err != nil {
		return 0, err
	}
	return x * spirit.MassKg() / 1000, nil
}

// mgKg returns a concentration in mg/kg, under another function's name.
func mgKg(function string, c quantity.Concentration, s Strength) (float64, error) {
	if err := CheckSet(function, "the strength", s); err != nil {
		return 0, err
	}
	switch c.Per() {
	case quantity.PerKilogram:
		return c.Value(), nil
	case quantity.PerLitre:
		return c.Value() / isotherm20.rho(s.w) * 1000, nil
	case quantity.PerPureAlcohol:
		if s.w == 0 {
			return 0, noAlcohol(function)
		}
		return c.Value() * s.w / ethanol20KgM3 * 1e4, nil
	}
	return 0, fmt.Errorf("%s: the concentration is not set; give one, such as MgL(35)", function)
}

func noAlcohol(function string) error {
	return fmt.Errorf("%s: the strength is 0 %% vol, which has no pure alcohol to count on; give the concentration per litre or kilogram", function)
}
