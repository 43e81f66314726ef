package limits

import (
	"fmt"

	"swanneck/mathlib/quantity"
)

// Support says what a finding rests on.
type Support string

// From the strongest to the weakest.
const (
	ByAnalysis    Support = "measured in the product"
	ByMassBalance Support = "analysed oil and mass balance"
	ByPrint       Support = "range from print"
	ByNothing     Support = "nothing measured"
)

// Finding is how much of a substance a product holds, as far as somebody knows. Measured, MeasuredBetween, NotDetected,
// Analysed, Printed and Unknown make one.
type Finding struct {
	Substance string
	Low       quantity.Concentration // at least; unset is 0
	High      quantity.Concentration // at most; unset is not known
	Support   Support
}

// Measured is the result of an analysis of this product.
func Measured(substance string, c quantity.Concentration) Finding {
	return Finding{substance, c, c, ByAnalysis}
}

// MeasuredBetween is the result of an analysis of this product with its uncertainty: from low to high.
func MeasuredBetween(substance string, low, high quantity.Concentration) Finding {
	return Finding{substance, low, high, ByAnalysis}
}

// NotDetected is an analysis of this product that found nothing down to its limit of detection.
func NotDetected(substance string, detection quantity.Concentration) Finding {
	return Finding{Substance: substance, High: detection, Support: ByAnalysis}
}

// Analysed is an upper bound from an analysis of the oil or of the plant and a mass balance: all of it comes over.
func Analysed(substance string, most quantity.Concentration) Finding {
	return Finding{Substance: substance, High: most, Support: ByMassBalance}
}

// Printed is a range reckoned from figures of books: it can show that a product is over, and never that it is within.
func Printed(substance string, low, high quantity.Concentration) Finding {
	return Finding{substance, low, high, ByPrint}
}

// Unknown says that a substance is to be expected and nothing was measured.
func Unknown(substance string) Finding { return Finding{Substance: substance, Support: ByNothing} }

// String gives the finding in one line.
func (f Finding) String() string {
	s := f.Substance + ": "
	switch {
	case f.Support == ByNothing:
		return s + string(ByNothing)
	case !f.High.IsSet():
		s += "at least " + f.Low.String()
	case !f.Low.IsSet():
		s += "at most " + f.High.String()
	case f.Low == f.High:
		s += f.Low.String()
	default:
		s += f.Low.String() + " to " + f.High.String()
	}
	return fmt.Sprintf("%s (%s)", s, f.Support)
}

func checkFinding(function string, f Finding) error {
	switch f.Support {
	case ByNothing:
		if f.Low.IsSet() || f.High.IsSet() {
			return fmt.Errorf("%s: %s has an amount and nothing measured; say what it rests on", function, f.Substance)
		}
		return nil
	case ByAnalysis, ByMassBalance, ByPrint:
		if !f.Low.IsSet() && !f.High.IsSet() {
			return fmt.Errorf("%s: the concentration of %s is not set; give one, such as MgL(20)", function, f.Substance)
		}
		return nil
	}
	return fmt.Errorf("%s: %s rests on %q; it must be one of %q, %q, %q, %q", function, f.Substance, f.Support, ByAnalysis, ByMassBalance, ByPrint, ByNothing)
}
