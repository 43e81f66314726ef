package quantity

import "math"

const (
	// usGallonL is the United States (wine) gallon of 231 cubic inches, litres, exact. Source: NIST Handbook 44
	// (2023), appendix C.
	usGallonL = 3.785411784
	// imperialGallonL is the Imperial gallon, litres, exact. Source: Weights and Measures Act 1985 (UK), schedule 1,
	// part IV.
	imperialGallonL = 4.54609
	// usFluidOunceL is 1/128 of the United States gallon, litres, exact. Source: NIST Handbook 44 (2023), appendix C.
	usFluidOunceL = usGallonL / 128
	// imperialFluidOunceL is 1/160 of the Imperial gallon, litres, exact. Source: Weights and Measures Act 1985 (UK),
	// schedule 1, part IV.
	imperialFluidOunceL = imperialGallonL / 160
)

// USGallonsToL returns in litres the volume of gal United States gallons, 3.785411784 L each.
// It panics with a *RangeError if gal is no finite number.
func USGallonsToL(gal float64) float64 {
	return finite("quantity.USGallonsToL", gal, "gal (US)") * usGallonL
}

// LToUSGallons returns in United States gallons the volume of volumeL litres.
// It panics with a *RangeError if volumeL is no finite number.
func LToUSGallons(volumeL float64) float64 {
	return finite("quantity.LToUSGallons", volumeL, "L") / usGallonL
}

// ImperialGallonsToL returns in litres the volume of gal Imperial gallons, 4.54609 L each.
// It panics with a *RangeError if gal is no finite number.
func ImperialGallonsToL(gal float64) float64 {
	return finite("quantity.ImperialGallonsToL", gal, "gal (Imperial)") * imperialGallonL
}

// LToImperialGallons returns in Imperial gallons the volume of volumeL litres.
// It panics with a *RangeError if volumeL is no finite number.
func LToImperialGallons(volumeL float64) float64 {
	return finite("quantity.LToImperialGallons", volumeL, "L") / imperialGallonL
}

// USFluidOuncesToL returns in litres the volume of floz United States fluid ounces, 29.5735 mL each.
// It panics with a *RangeError if floz is no finite number.
func USFluidOuncesToL(floz float64) float64 {
	return finite("quantity.USFluidOuncesToL", floz, "fl oz (US)") * usFluidOunceL
}

// LToUSFluidOunces returns in United States fluid ounces the volume of volumeL litres.
// It panics with a *RangeError if volumeL is no finite number.
func LToUSFluidOunces(volumeL float64) float64 {
	return finite("quantity.LToUSFluidOunces", volumeL, "L") / usFluidOunceL
}

// ImperialFluidOuncesToL returns in litres the volume of floz Imperial fluid ounces, 28.4131 mL each.
// It panics with a *RangeError if floz is no finite number.
func ImperialFluidOuncesToL(floz float64) float64 {
	return finite("quantity.ImperialFluidOuncesToL", floz, "fl oz (Imperial)") * imperialFluidOunceL
}

// LToImperialFluidOunces returns in Imperial fluid ounces the volume of volumeL litres.
// It panics with a *RangeError if volumeL is no finite number.
func LToImperialFluidOunces(volumeL float64) float64 {
	return finite("quantity.LToImperialFluidOunces", volumeL, "L") / imperialFluidOunceL
}

// MLToL returns in litres the volume of volumeML millilitres.
// It panics with a *RangeError if volumeML is no finite number.
func MLToL(volumeML float64) float64 { return finite("quantity.MLToL", volumeML, "mL") / 1000 }

// LToML returns in millilitres the volume of volumeL litres.
// It panics with a *RangeError if volumeL is no finite number.
func LToML(volumeL float64) float64 { return finite("quantity.LToML", volumeL, "L") * 1000 }

// HLToL returns in litres the volume of volumeHL hectolitres.
// It panics with a *RangeError if volumeHL is no finite number.
func HLToL(volumeHL float64) float64 { return finite("quantity.HLToL", volumeHL, "hL") * 100 }

// LToHL returns in hectolitres the volume of volumeL litres.
// It panics with a *RangeError if volumeL is no finite number.
func LToHL(volumeL float64) float64 { return finite("quantity.LToHL", volumeL, "L") / 100 }

func finite(function string, x float64, unit string) float64 {
	if err := CheckRange(function, "value", x, math.Inf(-1), math.Inf(1), unit, ""); err != nil {
		panic(err)
	}
	return x
}
