package sheet

import (
	"swanneck/mathlib/alcoholometry"
)

// Strength says how much of a spirit is ethanol. Unset, it is an error wherever it is used. It is read with ABV, ABVAt,
// ABW, USProof and MoleFraction.
type Strength = alcoholometry.Strength

// Spirit is an amount of spirit: its volume as measured, its strength, and the temperature of the measurement, 20 °C if
// unset. It is read with PureL, MassKg and VolumeAt.
type Spirit = alcoholometry.Spirit

// Tolerances says how far an alcoholometer and a thermometer may be wrong.
type Tolerances = alcoholometry.Tolerances

// ReadingOption states how an alcoholometer is marked; MarkedAt makes one.
type ReadingOption = alcoholometry.Option

// Water is the strength of water: no ethanol.
var Water = alcoholometry.Water

// ABV returns the strength of pct per cent by volume at 20 °C.
func ABV(pct float64) Strength {
	v, err := alcoholometry.ABV(pct)
	return must("ABV", v, err)
}

// ABVAt returns the true strength of pct per cent by volume at another reference temperature t, from -20 to 40 °C. For what
// an alcoholometer shows at t, use TrueStrength.
func ABVAt(pct float64, t Temperature) Strength {
	v, err := alcoholometry.ABVAt(pct, t)
	return must("ABVAt", v, err)
}

// ABW returns the strength of pct per cent by mass.
func ABW(pct float64) Strength {
	v, err := alcoholometry.ABW(pct)
	return must("ABW", v, err)
}

// USProof returns the strength of the given degrees of United States proof: twice the per cent by volume at 60 °F.
func USProof(proof float64) Strength {
	v, err := alcoholometry.USProof(proof)
	return must("USProof", v, err)
}

// MoleFraction returns the strength of a mixture with x moles of ethanol in each mole; x is dimensionless, from 0 to 1.
func MoleFraction(x float64) Strength {
	v, err := alcoholometry.MoleFraction(x)
	return must("MoleFraction", v, err)
}

// DensityKgM3 returns the density in vacuum of a spirit of strength s at t, kg/m³, from -20 to 40 °C.
func DensityKgM3(s Strength, t Temperature) float64 {
	v, err := alcoholometry.DensityKgM3(s, t)
	return must("DensityKgM3", v, err)
}

// DensityInAirKgM3 returns what a cubic metre of a spirit of strength s at t weighs on a balance, kg/m³.
func DensityInAirKgM3(s Strength, t Temperature) float64 {
	v, err := alcoholometry.DensityInAirKgM3(s, t)
	return must("DensityInAirKgM3", v, err)
}

// StrengthFromDensity returns the strength of a spirit whose density in vacuum at t is kgM3, in kg/m³.
func StrengthFromDensity(kgM3 float64, t Temperature) Strength {
	v, err := alcoholometry.StrengthFromDensity(kgM3, t)
	return must("StrengthFromDensity", v, err)
}

// FreezingPoint returns the temperature at which ice begins to form in a spirit of up to 75 % vol.
func FreezingPoint(s Strength) Temperature {
	v, err := alcoholometry.FreezingPoint(s)
	return must("FreezingPoint", v, err)
}

// ContractionPct returns how much smaller a spirit is than the ethanol and the water in it, at t, in per cent of those.
func ContractionPct(s Strength, t Temperature) float64 {
	v, err := alcoholometry.ContractionPct(s, t)
	return must("ContractionPct", v, err)
}

// Weighed returns the spirit of which kg kilograms (true mass) of the given strength were weighed, as a volume at 20 °C.
func Weighed(kg float64, strength Strength) Spirit {
	v, err := alcoholometry.Weighed(kg, strength)
	return must("Weighed", v, err)
}

// MassFromBalanceKg returns the true mass in kilograms of spirit of strength s at t for which a balance shows balanceKg.
func MassFromBalanceKg(balanceKg float64, s Strength, t Temperature) float64 {
	v, err := alcoholometry.MassFromBalanceKg(balanceKg, s, t)
	return must("MassFromBalanceKg", v, err)
}

// BalanceFromMassKg returns in kilograms what a balance shows for a true mass of massKg of spirit of strength s at t.
func BalanceFromMassKg(massKg float64, s Strength, t Temperature) float64 {
	v, err := alcoholometry.BalanceFromMassKg(massKg, s, t)
	return must("BalanceFromMassKg", v, err)
}

// ProofGallons returns the United States proof gallons in a spirit.
func ProofGallons(spirit Spirit) float64 {
	v, err := alcoholometry.ProofGallons(spirit)
	return must("ProofGallons", v, err)
}
