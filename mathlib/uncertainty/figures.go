package uncertainty

import (
	"math"
	"strconv"
)

// figures prints a value and how far it may be off with the decimals that mean something: two significant digits of the
// latter.
//
// Source: JCGM 100:2008, 7.2.6.
func figures(value, off float64) (string, string) {
	if off == 0 {
		return plain(value), "0"
	}
	decimals := 1 - lastPlace(off)
	if decimals >= 0 {
		return fixed(value, decimals), fixed(off, decimals)
	}
	unit := math.Pow(10, float64(-decimals))
	return fixed(math.Round(value/unit)*unit, 0), fixed(math.Round(off/unit)*unit, 0)
}

// lastPlace returns the power of ten of the first of two significant digits, after rounding to two digits.
func lastPlace(off float64) int {
	place := int(math.Floor(math.Log10(off)))
	if math.Round(off/math.Pow(10, float64(place-1))) >= 100 {
		place++
	}
	return place
}

func fixed(x float64, decimals int) string {
	s := strconv.FormatFloat(x, 'f', decimals, 64)
	if x <= 0 {
		if y, err := strconv.ParseFloat(s, 64); err == nil && y == 0 {
			return strconv.FormatFloat(0, 'f', decimals, 64) // no "-0.00"
		}
	}
	return s
}

// plain prints a number with at most six significant digits.
func plain(x float64) string { return strconv.FormatFloat(x, 'g', 6, 64) }

// degreesText prints degrees of freedom.
func degreesText(x float64) string {
	if math.IsInf(x, 1) {
		return "∞"
	}
	return strconv.FormatFloat(x, 'f', 1, 64)
}
