package alcoholometry

import "swanneck/mathlib/quantity"

// DensityKgM3 returns the density in vacuum (the true density, which an oscillating U-tube shows) of a mixture of
// ethanol and water, kg/m³, at t from -20 to 40 °C and not below the freezing point of the mixture. It fails with an
// *UnsetError or a *quantity.RangeError.
//
// t is a thermometer's reading on today's scale (ITS-90); the formula was made for IPTS-68. The two differ by at most
// 0.01 °C here, which is under 0.01 kg/m³, and the legal tables take no notice of it either.
//
// Source: OIML R 22 (1975), general formula. Agrees with the measurements of the National Bureau of Standards (1913)
// within 0.1 kg/m³ from 10 to 40 °C, and with the formula of Bettin and Spieweck (1990) within 0.005 kg/m³ at 20 °C.
func DensityKgM3(s Strength, t quantity.Temperature) (float64, error) {
	return densityFor("alcoholometry.DensityKgM3", s, t)
}

// densityFor returns the density in vacuum, kg/m³, under another function's name.
func densityFor(function string, s Strength, t quantity.Temperature) (float64, error) {
	if !s.set {
		return 0, &UnsetError{Func: function, Param: "the strength"}
	}
	if err := checkState(function, s.w, t); err != nil {
		return 0, err
	}
	a := isothermAt(t.C())
	return a.rho(s.w), nil
}

// densitySlack is how far a density may lie beyond that of water or ethanol before it is refused, kg/m³: it covers
// the rounding of a density that was itself computed, and nothing that an instrument could show.
const densitySlack = 1e-9

// StrengthFromDensity returns the strength of the mixture of ethanol and water whose density in vacuum at t, from -20
// to 40 °C, is kgM3, in kg/m³. Every density from ethanol to water (or, below 0 °C, to the mixture that freezes at t)
// belongs to one strength only. It fails with a *quantity.RangeError for any other.
//
// Source: OIML R 22 (1975), general formula, solved for the strength to better than 1e-6 % vol.
func StrengthFromDensity(kgM3 float64, t quantity.Temperature) (Strength, error) {
	const fn = "alcoholometry.StrengthFromDensity"
	if err := checkTemperature(fn, t); err != nil {
		return Strength{}, err
	}
	a := isothermAt(t.C())
	low := weakestLiquid(t.C())
	light, heavy := a.rho(1), a.rho(low)
	if !(kgM3 >= light-densitySlack && kgM3 <= heavy+densitySlack) {
		return Strength{}, &quantity.RangeError{Func: fn, Param: "density at " + t.String(), Value: kgM3, Min: light, Max: heavy,
			Unit: "kg/m³", Source: sourceR22 + ", ethanol to " + heavyEnd(low)}
	}
	return Strength{a.fractionOfDensity(kgM3, low), true}, nil
}

func heavyEnd(low float64) string {
	if low == 0 {
		return "water"
	}
	return "the mixture that freezes there"
}

// checkState returns an error unless the mixture of mass fraction w is covered by the formula at t: from -20 to 40 °C
// and liquid.
func checkState(function string, w float64, t quantity.Temperature) error {
	if c := t.C(); c >= 0 && c <= maxC {
		return nil // the usual case, kept short
	}
	if err := checkTemperature(function, t); err != nil {
		return err
	}
	return checkLiquid(function, w, t)
}

func checkTemperature(function string, t quantity.Temperature) error {
	if c := t.C(); c >= minC && c <= maxC {
		return nil
	}
	return &quantity.RangeError{Func: function, Param: "temperature", Value: t.C(), Min: minC, Max: maxC, Unit: "°C", Source: sourceR22}
}
