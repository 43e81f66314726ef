package sheet

import (
	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Concentration says how much of a compound there is in a spirit; unset, it is none at all and an error where one is needed.
// It is read with Value and Per.
type Concentration = quantity.Concentration

// MgL returns the concentration of x milligrams in a litre of spirit at 20 °C.
func MgL(x float64) Concentration {
	v, err := quantity.MgL(x)
	return must("MgL", v, err)
}

// GL returns the concentration of x grams in a litre of spirit at 20 °C.
func GL(x float64) Concentration {
	v, err := quantity.GL(x)
	return must("GL", v, err)
}

// MgKg returns the concentration of x milligrams in a kilogram of spirit.
func MgKg(x float64) Concentration {
	v, err := quantity.MgKg(x)
	return must("MgKg", v, err)
}

// PartsPerMillion returns the concentration of x parts in a million by mass, which is x mg/kg.
func PartsPerMillion(x float64) Concentration {
	v, err := quantity.PartsPerMillion(x)
	return must("PartsPerMillion", v, err)
}

// GHLPure returns the concentration of x grams to the hectolitre of pure alcohol in a spirit.
func GHLPure(x float64) Concentration {
	v, err := quantity.GHLPure(x)
	return must("GHLPure", v, err)
}

// InMgL returns a concentration in a spirit of strength s as milligrams to the litre at 20 °C; the unit is mg/L.
func InMgL(c Concentration, s Strength) float64 {
	v, err := alcoholometry.ConcentrationMgL(c, s)
	return must("InMgL", v, err)
}

// InMgKg returns a concentration in a spirit of strength s as milligrams to the kilogram; the unit is mg/kg.
func InMgKg(c Concentration, s Strength) float64 {
	v, err := alcoholometry.ConcentrationMgKg(c, s)
	return must("InMgKg", v, err)
}

// InGHLPure returns a concentration in a spirit of strength s as grams to the hectolitre of pure alcohol.
func InGHLPure(c Concentration, s Strength) float64 {
	v, err := alcoholometry.ConcentrationGHLPure(c, s)
	return must("InGHLPure", v, err)
}

// MassG returns how many grams of a compound a spirit holds at a concentration.
func MassG(c Concentration, spirit Spirit) float64 {
	v, err := alcoholometry.MassG(c, spirit)
	return must("MassG", v, err)
}
