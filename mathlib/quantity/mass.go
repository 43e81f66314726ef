package quantity

const (
	// poundKg is the avoirdupois pound, kilograms, exact. Source: Weights and Measures Act 1985 (UK), section 1, and
	// NIST Handbook 44 (2023), appendix C (international agreement of 1959).
	poundKg = 0.45359237
	// ounceKg is the avoirdupois ounce, 1/16 pound, kilograms, exact. Source: as for the pound.
	ounceKg = poundKg / 16
)

// PoundsToKg returns in kilograms the mass of massLb avoirdupois pounds, 0.45359237 kg each.
// It panics with a *RangeError if massLb is no finite number.
func PoundsToKg(massLb float64) float64 { return finite("quantity.PoundsToKg", massLb, "lb") * poundKg }

// KgToPounds returns in avoirdupois pounds the mass of massKg kilograms.
// It panics with a *RangeError if massKg is no finite number.
func KgToPounds(massKg float64) float64 { return finite("quantity.KgToPounds", massKg, "kg") / poundKg }

// OuncesToKg returns in kilograms the mass of massOz avoirdupois ounces, 28.349523125 g each.
// It panics with a *RangeError if massOz is no finite number.
func OuncesToKg(massOz float64) float64 { return finite("quantity.OuncesToKg", massOz, "oz") * ounceKg }

// KgToOunces returns in avoirdupois ounces the mass of massKg kilograms.
// It panics with a *RangeError if massKg is no finite number.
func KgToOunces(massKg float64) float64 { return finite("quantity.KgToOunces", massKg, "kg") / ounceKg }

// GToKg returns in kilograms the mass of massG grams.
// It panics with a *RangeError if massG is no finite number.
func GToKg(massG float64) float64 { return finite("quantity.GToKg", massG, "g") / 1000 }

// KgToG returns in grams the mass of massKg kilograms.
// It panics with a *RangeError if massKg is no finite number.
func KgToG(massKg float64) float64 { return finite("quantity.KgToG", massKg, "kg") * 1000 }
