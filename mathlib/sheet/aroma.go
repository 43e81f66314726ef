package sheet

import "swanneck/mathlib/aroma"

// AromaDrink is a spirit with aroma compounds in it, in mg/L.
type AromaDrink = aroma.Drink

// AromaAmount is an aroma compound and how many milligrams of it a litre of drink holds.
type AromaAmount = aroma.Amount

// AromaGas is an aroma compound in the air over a drink.
type AromaGas = aroma.Gas

// AromaByStrength is one bottle as many drinks: the air over the glass at each strength, relative to the bottle's.
type AromaByStrength = aroma.Profile

// AromaLine is one compound in an AromaByStrength, in columns for a chart.
type AromaLine = aroma.Line

// OdourMatrix is what a compound is smelt from.
type OdourMatrix = aroma.Matrix

// OdourTimes is by how many times a compound passes its threshold, with the span that is left open.
type OdourTimes = aroma.Activity

// OdourRanking is the compounds of a drink by how far they pass their thresholds in one matrix.
type OdourRanking = aroma.Order

// WaterAir is how a compound parts between water and air, by every way that is known.
type WaterAir = aroma.WaterAir

// The matrices for which there are odour thresholds.
const (
	OdourInWater     = aroma.Water
	OdourInEthanol40 = aroma.Ethanol40
	OdourInAir       = aroma.Air
)

// InTheGlass returns how much of a compound hangs in the air over the drink, closed and at 25 °C.
func InTheGlass(d AromaDrink, compound string) AromaGas {
	v, err := aroma.Headspace(d, compound)
	return must("InTheGlass", v, err)
}

// AromaAt returns the drink watered to a lower strength.
func AromaAt(d AromaDrink, s Strength) AromaDrink {
	v, err := aroma.Dilute(d, s)
	return must("AromaAt", v, err)
}

// AromaProfile returns how the air over the glass changes as the drink is watered to each of the strengths.
func AromaProfile(d AromaDrink, strengths ...Strength) AromaByStrength {
	v, err := aroma.ProfileOf(d, strengths...)
	return must("AromaProfile", v, err)
}

// AromaOf returns the line of a compound in a profile.
func AromaOf(p AromaByStrength, compound string) AromaLine {
	v, err := p.Of(compound)
	return must("AromaOf", v, err)
}

// OdourActivity returns by how many times a compound passes its odour threshold in the same matrix; without one there is no
// answer.
func OdourActivity(d AromaDrink, compound string, m OdourMatrix) OdourTimes {
	v, err := aroma.OdourActivity(d, compound, m)
	return must("OdourActivity", v, err)
}

// RankOdours returns the compounds of a drink by how far they pass their thresholds in a matrix, and which leads, if anybody can
// tell.
func RankOdours(d AromaDrink, m OdourMatrix) OdourRanking {
	v, err := aroma.OrderOf(d, m)
	return must("RankOdours", v, err)
}

// WaterOverAir returns how a compound parts between water and air at 25 °C.
func WaterOverAir(compound string) WaterAir {
	v, err := aroma.WaterOverAir(compound)
	return must("WaterOverAir", v, err)
}
