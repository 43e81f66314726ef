package sheet

import (
	"swanneck/mathlib/quantity"
)

// USGallons returns the volume of gal United States gallons in litres.
func USGallons(gal float64) float64 {
	return converted("USGallons", quantity.USGallonsToL, gal)
}

// LitresToUSGallons returns the volume of volumeL litres in United States gallons.
func LitresToUSGallons(volumeL float64) float64 {
	return converted("LitresToUSGallons", quantity.LToUSGallons, volumeL)
}

// ImperialGallons returns the volume of gal Imperial gallons in litres.
func ImperialGallons(gal float64) float64 {
	return converted("ImperialGallons", quantity.ImperialGallonsToL, gal)
}

// LitresToImperialGallons returns the volume of volumeL litres in Imperial gallons.
func LitresToImperialGallons(volumeL float64) float64 {
	return converted("LitresToImperialGallons", quantity.LToImperialGallons, volumeL)
}

// USFluidOunces returns the volume of floz United States fluid ounces in litres.
func USFluidOunces(floz float64) float64 {
	return converted("USFluidOunces", quantity.USFluidOuncesToL, floz)
}

// LitresToUSFluidOunces returns the volume of volumeL litres in United States fluid ounces.
func LitresToUSFluidOunces(volumeL float64) float64 {
	return converted("LitresToUSFluidOunces", quantity.LToUSFluidOunces, volumeL)
}

// ImperialFluidOunces returns the volume of floz Imperial fluid ounces in litres.
func ImperialFluidOunces(floz float64) float64 {
	return converted("ImperialFluidOunces", quantity.ImperialFluidOuncesToL, floz)
}

// LitresToImperialFluidOunces returns the volume of volumeL litres in Imperial fluid ounces.
func LitresToImperialFluidOunces(volumeL float64) float64 {
	return converted("LitresToImperialFluidOunces", quantity.LToImperialFluidOunces, volumeL)
}

// Millilitres returns the volume of volumeML millilitres in litres.
func Millilitres(volumeML float64) float64 {
	return converted("Millilitres", quantity.MLToL, volumeML)
}

// LitresToMillilitres returns the volume of volumeL litres in millilitres.
func LitresToMillilitres(volumeL float64) float64 {
	return converted("LitresToMillilitres", quantity.LToML, volumeL)
}

// Hectolitres returns the volume of volumeHL hectolitres in litres.
func Hectolitres(volumeHL float64) float64 {
	return converted("Hectolitres", quantity.HLToL, volumeHL)
}

// LitresToHectolitres returns the volume of volumeL litres in hectolitres.
func LitresToHectolitres(volumeL float64) float64 {
	return converted("LitresToHectolitres", quantity.LToHL, volumeL)
}

// Pounds returns the mass of massLb avoirdupois pounds in kilograms.
func Pounds(massLb float64) float64 {
	return converted("Pounds", quantity.PoundsToKg, massLb)
}

// KgToPounds returns the mass of massKg kilograms in avoirdupois pounds.
func KgToPounds(massKg float64) float64 {
	return converted("KgToPounds", quantity.KgToPounds, massKg)
}

// Ounces returns the mass of massOz avoirdupois ounces in kilograms.
func Ounces(massOz float64) float64 {
	return converted("Ounces", quantity.OuncesToKg, massOz)
}

// KgToOunces returns the mass of massKg kilograms in avoirdupois ounces.
func KgToOunces(massKg float64) float64 {
	return converted("KgToOunces", quantity.KgToOunces, massKg)
}

// Grams returns the mass of massG grams in kilograms.
func Grams(massG float64) float64 {
	return converted("Grams", quantity.GToKg, massG)
}

// KgToGrams returns the mass of massKg kilograms in grams.
func KgToGrams(massKg float64) float64 {
	return converted("KgToGrams", quantity.KgToG, massKg)
}
