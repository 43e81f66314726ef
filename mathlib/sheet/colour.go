package sheet

import "swanneck/mathlib/colour"

// GreenAbsorbances are readings of a green extract in 95 % ethanol.
type GreenAbsorbances = colour.Absorbances

// GreenPigments are the pigments of an extract, in mg/L.
type GreenPigments = colour.Pigments

// ColourSpectrum is how strongly a liquid takes light out; its Through gives the colour through a path in cm.
type ColourSpectrum = colour.Spectrum

// ColourSeen is a liquid's colour through a path in daylight: Lab, XYZ and Swatch.
type ColourSeen = colour.Seen

// ColourLab is a colour by lightness L, green to red A and blue to yellow B.
type ColourLab = colour.Lab

// Swatch is a colour as a screen shows it; Hex is what plots.NewSwatches takes.
type Swatch = colour.Swatch

// ColourLot is an amount of spirit of one colour.
type ColourLot = colour.Lot

// ColourReading is how green a jar was on a day.
type ColourReading = colour.Reading

// ColourReadings are how one jar faded.
type ColourReadings = colour.Readings

// ColourLoss is how fast a spirit loses its green, at one strength and temperature.
type ColourLoss = colour.Loss

// ColourWarmth is how that loss depends on the temperature.
type ColourWarmth = colour.Warmth

// ColourKeeping is a coloured spirit in its bottle: fresh and browned spectra, the loss, the path and the store.
type ColourKeeping = colour.Keeping

// KeptColour is a coloured spirit with its rate worked out: After, On, ShelfLife, Left, AfterStays.
type KeptColour = colour.Kept

// ColourStay is a time at a temperature.
type ColourStay = colour.Stay

// ColourSeries is how a colour looks on several days, in columns for charts and swatches.
type ColourSeries = colour.Series

// ColourShelfLife is how long a bottle keeps its colour.
type ColourShelfLife = colour.ShelfLife

// GreenInfusion is a herb giving its green to a spirit while the spirit loses it: AfterMgL, GreenestH.
type GreenInfusion = colour.Infusion

// GreenUptake is how fast a herb gave its green, fitted to readings.
type GreenUptake = colour.UptakeFit

// ColourLadder is how many times stronger one jar's colour is than another's, by eye.
type ColourLadder = colour.Ladder

// LadderRung is what people said of one rung.
type LadderRung = colour.Rung

// HueDiffers stands in place of a rung for somebody to whom no rung matched.
const HueDiffers = colour.HueDiffers

// Pigments returns the chlorophylls of an extract from two absorbances, in 93 to 97 % vol of ethanol only.
func Pigments(a GreenAbsorbances) GreenPigments {
	v, err := colour.PigmentsOf(a)
	return must("Pigments", v, err)
}

// ColourOf returns the spectrum of readings: wavelengths in nm from 400 or below to 700 or above, and absorbances through a cell of
// pathCM centimetres.
func ColourOf(nm, absorbance []float64, pathCM float64) ColourSpectrum {
	v, err := colour.NewSpectrum(nm, absorbance, pathCM)
	return must("ColourOf", v, err)
}

// ColourOfPigments draws a spectrum of pigments for pictures. It is an estimate.
func ColourOfPigments(p GreenPigments) ColourSpectrum {
	v, err := colour.Demonstration(p)
	return must("ColourOfPigments", v, err)
}

// BrownedColour draws the spectrum when all the green of the pigments has browned. It is an estimate, with bands from memory.
func BrownedColour(p GreenPigments) ColourSpectrum {
	v, err := colour.Browned(p)
	return must("BrownedColour", v, err)
}

// ClearLiquid is the spectrum of water and spirit without colour.
func ClearLiquid() ColourSpectrum { return colour.ClearLiquid() }

// MixColours returns the spectrum of lots put together: absorbances add up by volume.
func MixColours(lots ...ColourLot) ColourSpectrum {
	v, err := colour.MixSpectra(lots...)
	return must("MixColours", v, err)
}

// ColourDifference returns the distance between two colours as the eye takes it (CIEDE2000), dimensionless.
func ColourDifference(a, b ColourLab) float64 { return colour.Difference(a, b) }

// FitColourLoss returns how fast a jar lost its green, from two readings or more.
func FitColourLoss(r ColourReadings) ColourLoss {
	v, err := colour.FitLoss(r)
	return must("FitColourLoss", v, err)
}

// ChlorophyllWarmth returns the published dependence on temperature, with the wide range that spirit leaves open.
func ChlorophyllWarmth() ColourWarmth { return colour.ChlorophyllWarmth() }

// ColourWarmthOf returns the dependence on temperature from the rates of one lot at two temperatures.
func ColourWarmthOf(a, b ColourLoss) ColourWarmth {
	v, err := colour.WarmthOf(a, b)
	return must("ColourWarmthOf", v, err)
}

// KeepColour works out how a coloured spirit fades in its store.
func KeepColour(k ColourKeeping) KeptColour {
	v, err := colour.KeepColour(k)
	return must("KeepColour", v, err)
}

// FitGreenUptake fits how fast a herb gave its green to readings in mg/L (or any unit), hours rising; lossPerH is the loss in a share
// per hour, dimensionless.
func FitGreenUptake(hours, mgL []float64, lossPerH float64) GreenUptake {
	v, err := colour.FitUptake(hours, mgL, lossPerH)
	return must("FitGreenUptake", v, err)
}

// DilutionLadder compares two jars without an instrument: each person names the last rung, counted from 0, at which the diluted
// jar is still deeper, or HueDiffers. step is dimensionless, 1.25 if 0.
func DilutionLadder(step float64, lastDeeper ...int) ColourLadder {
	v, err := colour.DilutionLadder(step, lastDeeper...)
	return must("DilutionLadder", v, err)
}

// PanelLadder compares two jars by people who each look at every rung, from 0 on.
func PanelLadder(step float64, rungs ...LadderRung) ColourLadder {
	v, err := colour.PanelLadder(step, rungs...)
	return must("PanelLadder", v, err)
}

// LossByLadder returns the rate of loss from a ladder of an older jar against a fresh one, kept days apart.
func LossByLadder(l ColourLadder, days float64, s Strength, t Temperature) ColourLoss {
	v, err := colour.LossByLadder(l, days, s, t)
	return must("LossByLadder", v, err)
}
