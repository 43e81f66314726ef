package quantity

import (
	"fmt"
	"math"
	"strconv"
)

// Per says what a concentration is counted on. It reads as the unit.
type Per string

// The three things that the trade counts on.
const (
	PerLitre       Per = "mg/L"                 // a litre of the spirit at 20 °C
	PerKilogram    Per = "mg/kg"                // a kilogram of the spirit
	PerPureAlcohol Per = "g/hL of pure alcohol" // a hectolitre of the ethanol in it at 20 °C
)

// Concentration says how much of a compound there is in a spirit. Make one with MgL, GL, MgKg, PartsPerMillion or
// GHLPure; two compare with ==. Which of the three things it is counted on stays with it: one turns into another only
// with the strength of the spirit, which package alcoholometry does (ConcentrationMgL and its neighbours).
//
// The zero value is no concentration at all, which is not nought: IsSet tells.
type Concentration struct {
	value float64 // in the unit that per is
	per   Per
}

// MgL returns the concentration of x milligrams in a litre of the spirit at 20 °C. It fails with a *RangeError below 0 and
// for a value that is no finite number.
func MgL(x float64) (Concentration, error) {
	return concentration("quantity.MgL", x, math.Inf(1), "mg/L", 1, PerLitre)
}

// GL returns the concentration of x grams in a litre of the spirit at 20 °C, up to 1e9. It fails with a *RangeError.
func GL(x float64) (Concentration, error) {
	return concentration("quantity.GL", x, 1e9, "g/L", 1000, PerLitre)
}

// MgKg returns the concentration of x milligrams in a kilogram of the spirit, from 0 to a million. It fails with a
// *RangeError.
func MgKg(x float64) (Concentration, error) {
	return concentration("quantity.MgKg", x, 1e6, "mg/kg", 1, PerKilogram)
}

// PartsPerMillion returns the concentration of x parts in a million by mass, which is x mg/kg. It fails with a
// *RangeError.
func PartsPerMillion(x float64) (Concentration, error) {
	return concentration("quantity.PartsPerMillion", x, 1e6, "parts per million by mass", 1, PerKilogram)
}

// GHLPure returns the concentration of x grams to a hectolitre of the pure alcohol in the spirit, both at 20 °C: the way
// in which limits for congeners are written. It fails with a *RangeError below 0 and for a value that is no finite number.
func GHLPure(x float64) (Concentration, error) {
	return concentration("quantity.GHLPure", x, math.Inf(1), "g/hL of pure alcohol", 1, PerPureAlcohol)
}

func concentration(function string, x, most float64, unit string, times float64, per Per) (Concentration, error) {
	if err := CheckRange(function, "concentration", x, 0, most, unit, ""); err != nil {
		return Concentration{}, err
	}
	return Concentration{x * times, per}, nil
}

// IsSet reports whether c is a concentration. It is false for the zero value only.
func (c Concentration) IsSet() bool { return c.per != "" }

// Per returns what the concentration is counted on; it reads as the unit.
func (c Concentration) Per() Per { return c.per }

// Value returns the figure in the unit that Per names. The unset concentration has the figure 0 and no unit.
func (c Concentration) Value() float64 { return c.value }

// String gives the concentration with its unit, such as "31.8 mg/L": three digits below 1, and else as Figure does.
func (c Concentration) String() string {
	switch {
	case !c.IsSet():
		return "unset concentration"
	case c.value > 0 && c.value < 0.9995:
		return strconv.FormatFloat(c.value, 'g', 3, 64) + " " + string(c.per)
	}
	return Figure(c.value) + " " + string(c.per)
}

// Format implements fmt.Formatter: %v and %s give the text with its unit, %f, %e and %g the figure in the unit of Per.
func (c Concentration) Format(f fmt.State, verb rune) {
	FormatFigure(f, verb, c.Value, c.String, "Concentration")
}
