package sheet

import (
	"swanneck/mathlib/mixing"
)

// Liqueur is an amount of a sweetened spirit; its strength is that of the whole, as on a label. Volumes are estimates.
type Liqueur = mixing.Liqueur

// LiqueurFrom says what a liqueur is made of.
type LiqueurFrom = mixing.LiqueurFrom

// LiqueurRecipe is what goes into a liqueur.
type LiqueurRecipe = mixing.LiqueurRecipe

// LiqueurReduction is a liqueur brought down with water.
type LiqueurReduction = mixing.LiqueurReduction

// ExtractedSpirit is a spirit with something dissolved in it, as an instrument reads it.
type ExtractedSpirit = mixing.Extracted

// Obscuration is how much strength what is dissolved hides.
type Obscuration = mixing.Obscuration

// DistilBack is a measured sample that was distilled, and its distillate.
type DistilBack = mixing.DistilBack

// USSolids is a spirit whose solids were dried and weighed, for the rule of the United States.
type USSolids = mixing.USSolids

// USObscuration is the proof with what its solids hide added by the rule of the United States.
type USObscuration = mixing.USObscuration

// MakeLiqueur returns how much spirit, sugar or syrup, and water make the wanted liqueur.
func MakeLiqueur(wanted Liqueur, from LiqueurFrom) LiqueurRecipe {
	v, err := mixing.MakeLiqueur(wanted, from)
	return must("MakeLiqueur", v, err)
}

// BlendLiqueurs returns what comes of putting liqueurs, spirits and water together; a spirit is a liqueur with no sugar.
func BlendLiqueurs(parts ...Liqueur) Liqueur {
	v, err := mixing.BlendLiqueurs(parts...)
	return must("BlendLiqueurs", v, err)
}

// Sweeten returns what comes of dissolving sugarKg kilograms of dry sugar in a liqueur or spirit.
func Sweeten(l Liqueur, sugarKg float64) Liqueur {
	v, err := mixing.Sweeten(l, sugarKg)
	return must("Sweeten", v, err)
}

// ReduceLiqueur returns how much water brings a liqueur down to the strength to, of the whole.
func ReduceLiqueur(l Liqueur, to Strength, opts ...MixingOption) LiqueurReduction {
	v, err := mixing.ReduceLiqueur(l, to, opts...)
	return must("ReduceLiqueur", v, err)
}

// LiqueurDensityKgM3 returns the density of a liqueur at t, kg/m³, an estimate.
func LiqueurDensityKgM3(l Liqueur, t Temperature) float64 {
	v, err := mixing.LiqueurDensityKgM3(l, t)
	return must("LiqueurDensityKgM3", v, err)
}

// TrueStrengthWithExtract returns the true strength of a spirit whose dry extract is known, an estimate.
func TrueStrengthWithExtract(e ExtractedSpirit) Obscuration {
	v, err := mixing.TrueStrengthWithExtract(e)
	return must("TrueStrengthWithExtract", v, err)
}

// TrueStrengthByDistilling returns the true strength of a sample from that of its distillate, made up with water.
func TrueStrengthByDistilling(d DistilBack) Obscuration {
	v, err := mixing.TrueStrengthByDistilling(d)
	return must("TrueStrengthByDistilling", v, err)
}

// ApparentStrength returns what a liqueur or an infused spirit looks like to an instrument at t.
func ApparentStrength(l Liqueur, t Temperature) Strength {
	v, err := mixing.ApparentStrength(l, t)
	return must("ApparentStrength", v, err)
}

// USObscured returns the proof of a spirit with solids by the evaporation method of the United States.
func USObscured(u USSolids) USObscuration {
	v, err := mixing.USObscured(u)
	return must("USObscured", v, err)
}
