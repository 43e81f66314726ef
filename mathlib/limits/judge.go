package limits

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Answer is what a finding says of a rule.
type Answer int

// The four answers.
const (
	CannotTell Answer = iota // what is known does not decide: measure
	Under                    // below a minimum
	Within
	Over // above a maximum
)

// String gives the answer in words.
func (a Answer) String() string {
	switch a {
	case Under:
		return "under"
	case Within:
		return "within"
	case Over:
		return "over"
	}
	return "cannot tell: measure"
}

// rule is a minimum, a maximum, or both, in one unit. An end that is missing is infinite.
type rule struct {
	low, high float64
	strict    bool // strictly below high
	unit      string
}

// judge holds what a product has, from low to high in the rule's unit, against the rule. exact says that both ends come from
// an analysis of the product; bound that high is at least an upper bound for it.
func (r rule) judge(low, high float64, exact, bound bool) Answer {
	overMax := low > r.high || r.strict && low >= r.high
	underMin := high < r.low
	fitsMax := high <= r.high && !(r.strict && high >= r.high)
	fitsMin := low >= r.low
	switch {
	case overMax:
		return Over
	case underMin && exact:
		return Under
	case fitsMax && fitsMin && (exact || bound && math.IsInf(r.low, -1)):
		return Within
	}
	return CannotTell
}

// text gives the rule in words.
func (r rule) text() string {
	switch {
	case math.IsInf(r.low, -1) && r.strict:
		return fmt.Sprintf("less than %g %s", r.high, r.unit)
	case math.IsInf(r.low, -1) && r.high == 0:
		return "none"
	case math.IsInf(r.low, -1):
		return fmt.Sprintf("at most %g %s", r.high, r.unit)
	case math.IsInf(r.high, 1):
		return fmt.Sprintf("at least %g %s", r.low, r.unit)
	}
	return fmt.Sprintf("%g to %g %s", r.low, r.high, r.unit)
}

// methanolKgM3 is the density of methanol at 20 °C, kg/m³. Source: CRC Handbook of Chemistry and Physics.
const methanolKgM3 = 791.4

// in returns a concentration in a rule's unit.
func in(c quantity.Concentration, unit string, s alcoholometry.Strength) (float64, error) {
	switch unit {
	case "mg/kg":
		return alcoholometry.ConcentrationMgKg(c, s)
	case "g/hL pa":
		return alcoholometry.ConcentrationGHLPure(c, s)
	case "g/L":
		x, err := alcoholometry.ConcentrationMgL(c, s)
		return x / 1000, err
	case "% v/v": // of methanol
		x, err := alcoholometry.ConcentrationMgL(c, s)
		return x / 1000 / methanolKgM3 * 100, err
	}
	return 0, fmt.Errorf("limits: the unit %q of a rule is not known", unit)
}
