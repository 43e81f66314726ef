package sheet

import (
	"swanneck/mathlib/compound"
	"swanneck/mathlib/equilibrium"
)

// Compound is what is known about a compound of spirits; its Cautions say which of its numbers are not published.
type Compound = compound.Compound

// Volatile says how strongly a trace of a compound goes into the vapour of a boiling spirit; its Notes say what is estimated
// or extrapolated.
type Volatile = equilibrium.Volatility

// FindCompound returns what is known about the compound of a name or of a usual synonym, such as "isoamyl alcohol" or
// "anethole".
func FindCompound(name string) *Compound {
	v, err := compound.Find(name)
	return must("FindCompound", v, err)
}

// CompoundNames returns the names of the compounds there are, sorted.
func CompoundNames() []string { return compound.Names() }

// RelativeVolatility returns how many times as volatile as the ethanol a trace of a compound is over a boiling liquid under
// the pressure p, dimensionless: the ratio of its mole fractions in vapour and liquid over the same ratio of ethanol. Above
// 1 it comes over ahead of the alcohol. How sure the number is, Volatility says.
func RelativeVolatility(name string, liquid Strength, p Pressure, opts ...BoilingOption) float64 {
	v, err := equilibrium.RelativeVolatility(name, liquid, p, opts...)
	return must("RelativeVolatility", v, err)
}

// Volatility returns how strongly a trace of a compound goes into the vapour over a boiling liquid under the pressure p, with
// notes of what is estimated or extrapolated.
func Volatility(name string, liquid Strength, p Pressure, opts ...BoilingOption) Volatile {
	v, err := equilibrium.VolatilityOf(name, liquid, p, opts...)
	return must("Volatility", v, err)
}
