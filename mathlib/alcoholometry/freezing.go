package alcoholometry

import "swanneck/mathlib/quantity"

const sourceFreezing = "freezing point, CRC Handbook of Chemistry and Physics, 102nd edition"

// freezing holds the mass fraction of ethanol and the temperature at which ice begins to form, °C. Source: CRC
// Handbook of Chemistry and Physics, 102nd edition, concentrative properties of aqueous solutions, ethanol. Near 32 %
// by mass other published series differ from it by about 1.5 °C.
var freezing = [...]struct{ w, c float64 }{
	{0, 0}, {0.005, -0.2}, {0.01, -0.4}, {0.02, -0.81}, {0.03, -1.23}, {0.04, -1.65}, {0.05, -2.09}, {0.06, -2.54}, {0.07, -2.99},
	{0.08, -3.47}, {0.09, -3.96}, {0.10, -4.47}, {0.11, -5}, {0.12, -5.56}, {0.13, -6.13}, {0.14, -6.73}, {0.15, -7.36},
	{0.16, -8.01}, {0.17, -8.69}, {0.18, -9.4}, {0.19, -10.14}, {0.20, -10.92}, {0.22, -12.6}, {0.24, -14.47}, {0.26, -16.41},
	{0.28, -18.43}, {0.30, -20.47}, {0.32, -22.44}, {0.34, -24.27}, {0.36, -25.98}, {0.38, -27.62}, {0.40, -29.26}, {0.42, -30.98},
	{0.44, -32.68}, {0.46, -34.36}, {0.48, -36.04}, {0.50, -37.67}, {0.52, -39.2}, {0.54, -40.65}, {0.56, -42.06}, {0.58, -43.49},
	{0.60, -44.93}, {0.62, -46.28}, {0.64, -47.52}, {0.66, -48.64}, {0.68, -49.52},
}

// FreezingPoint returns the temperature at which ice begins to form in a mixture of ethanol and water, for strengths
// up to 68 % by mass (75 % vol). It fails with an *UnsetError or, above that, with a *quantity.RangeError.
//
// Source: CRC Handbook of Chemistry and Physics, 102nd edition, concentrative properties of aqueous solutions;
// straight lines between its rows. Published series differ by up to 2 °C.
func FreezingPoint(s Strength) (quantity.Temperature, error) {
	const fn = "alcoholometry.FreezingPoint"
	if !s.set {
		return quantity.Temperature{}, &UnsetError{Func: fn, Param: "the strength"}
	}
	last := freezing[len(freezing)-1]
	if err := quantity.CheckRange(fn, "strength", s.ABW(), 0, 100*last.w, "% mass", sourceFreezing); err != nil {
		return quantity.Temperature{}, err
	}
	return quantity.Celsius(freezingC(s.w))
}

// freezingC returns the freezing point of the mass fraction w, °C. Beyond the last row it returns the last row's,
// which lies far below any temperature the density formula covers.
func freezingC(w float64) float64 {
	for i := 1; i < len(freezing); i++ {
		a, b := freezing[i-1], freezing[i]
		if w <= b.w {
			return a.c + (b.c-a.c)*(w-a.w)/(b.w-a.w)
		}
	}
	return freezing[len(freezing)-1].c
}

// weakestLiquid returns the smallest mass fraction that is liquid at tC, °C, for tC from -20 °C.
func weakestLiquid(tC float64) float64 {
	if tC >= 0 {
		return 0
	}
	for i := 1; i < len(freezing); i++ {
		a, b := freezing[i-1], freezing[i]
		if tC >= b.c {
			return a.w + (b.w-a.w)*(tC-a.c)/(b.c-a.c)
		}
	}
	return freezing[len(freezing)-1].w
}

// checkLiquid returns an error if the mixture of mass fraction w begins to freeze above t.
func checkLiquid(function string, w float64, t quantity.Temperature) error {
	if c := t.C(); c < 0 && w < weakestLiquid(c)-1e-12 {
		return &quantity.RangeError{Func: function, Param: "temperature", Value: c, Min: freezingC(w), Max: maxC, Unit: "°C", Source: sourceFreezing}
	}
	return nil
}
