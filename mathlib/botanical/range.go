package botanical

import (
	"math"
	"strconv"

	"swanneck/mathlib/quantity"
)

// Range is what a figure lies in. Make one with Exactly or Between. The zero value says that nothing is known.
type Range struct {
	Low, High float64 // in the unit of what it is the range of; dimensionless for shares
	set       bool
}

// Exactly returns the range of a figure that is known, in the unit of what it stands for.
func Exactly(x float64) Range { return Range{x, x, true} }

// Between returns the range from low to high, both in the unit of what it stands for.
func Between(low, high float64) Range { return Range{low, high, true} }

// IsSet reports whether there is a range at all.
func (r Range) IsSet() bool { return r.set || r.Low != 0 || r.High != 0 }

// IsPoint reports whether the range is one figure.
func (r Range) IsPoint() bool { return r.IsSet() && r.Low == r.High }

// String gives the range to three digits, such as "0.5 to 1.2", without a unit.
func (r Range) String() string {
	switch {
	case !r.IsSet():
		return "not known"
	case threeDigits(r.Low) == threeDigits(r.High):
		return threeDigits(r.Low)
	}
	return threeDigits(r.Low) + " to " + threeDigits(r.High)
}

// times multiplies two ranges of figures that are not below 0.
func (r Range) times(f Range) Range { return Between(r.Low*f.Low, r.High*f.High) }

func (r Range) scaled(f float64) Range { return Between(r.Low*f, r.High*f) }

func (r Range) plus(o Range) Range { return Between(r.Low+o.Low, r.High+o.High) }

// middle returns the mean of both ends, in the unit of the range.
func (r Range) middle() float64 { return (r.Low + r.High) / 2 }

// check returns an error unless the range is unset, or lies from least to most with its ends in order.
func (r Range) check(function, what string, least, most float64, unit string) error {
	if !r.IsSet() {
		return nil
	}
	for _, x := range []float64{r.Low, r.High} {
		if err := quantity.CheckRange(function, what, x, least, most, unit, ""); err != nil {
			return err
		}
	}
	if r.Low > r.High {
		return inputf(function, "%s goes from %g down to %g %s; give the lower end first, or one figure with Exactly", what, r.Low, r.High, unit)
	}
	return nil
}

// threeDigits prints x, dimensionless here, to three significant digits without an exponent where that reads well.
func threeDigits(x float64) string {
	if math.Abs(x) >= 1000 {
		return strconv.FormatFloat(x, 'f', 0, 64)
	}
	y, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 3, 64), 64)
	if err != nil || y != 0 && math.Abs(y) < 1e-5 {
		return strconv.FormatFloat(x, 'g', 3, 64)
	}
	return strconv.FormatFloat(y, 'f', -1, 64)
}
