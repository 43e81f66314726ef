package duty

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// Rate is a rate of duty that the user states: so much money for a unit of alcohol. No rate comes with this package.
type Rate struct {
	Money    float64 // for one unit, in the unit of Currency; 0 or more
	Currency string  // three letters of ISO 4217, such as "EUR"
	Per      Unit    // the unit of alcohol, such as PureLitre
	Step     float64 // the quantity is rounded to whole steps of so much of the unit first, a half up; 0 for no rounding
}

// Duty is what is owed at a rate.
type Duty struct {
	Rate     Rate
	PureL    float64 // pure alcohol at 20 °C, L
	Quantity float64 // the same in the rate's unit, rounded to its step
	Money    float64 // the duty in the unit of the rate's currency, not rounded
}

// Due returns the duty on so many litres of pure alcohol at 20 °C (pureL) at a rate that the user states. The money is
// not rounded. It fails for a rate without a currency or a unit of alcohol, and for negative money, step or alcohol.
//
// Source: none; it multiplies. For the units see Count. The United States round the proof gallons to a tenth (27 CFR
// 30.64), which is a Step of 0.1.
func Due(rate Rate, pureL float64) (Duty, error) {
	const fn = "duty.Due"
	if !currency(rate.Currency) {
		return Duty{}, fmt.Errorf("%s: the currency of the rate is %q; give its three letters, such as \"EUR\"", fn, rate.Currency)
	}
	if _, err := litresIn(fn, rate.Per); err != nil {
		return Duty{}, err
	}
	if err := notBelow0(fn, "the rate", rate.Money, rate.Currency+" for one "+string(rate.Per)); err != nil {
		return Duty{}, err
	}
	if err := notBelow0(fn, "the step", rate.Step, string(rate.Per)); err != nil {
		return Duty{}, err
	}
	n, err := Count(pureL, rate.Per)
	if err != nil {
		return Duty{}, as(fn, err)
	}
	d := Duty{Rate: rate, PureL: pureL, Quantity: n}
	if rate.Step > 0 {
		d.Quantity = math.Floor(n/rate.Step+0.5+1e-9) * rate.Step
	}
	d.Money = d.Quantity * rate.Money
	return d, nil
}

// currency reports whether c is three capital letters.
func currency(c string) bool {
	if len(c) != 3 {
		return false
	}
	for _, r := range c {
		if r < 'A' || r > 'Z' {
			return false
		}
	}
	return true
}

// String gives the duty in one line.
func (d Duty) String() string {
	return fmt.Sprintf("%.2f %s on %s %s at %s %s", d.Money, d.Rate.Currency, quantity.Figure(d.Quantity), d.Rate.Per, plain(d.Rate.Money), d.Rate.Currency)
}

// Rows gives the duty as a table, each row a label, a figure and a unit.
func (d Duty) Rows() [][]string {
	return [][]string{
		{"pure alcohol at 20 °C", quantity.Figure(d.PureL), "L"},
		{"for the duty", quantity.Figure(d.Quantity), string(d.Rate.Per)},
		{"rate, as given", plain(d.Rate.Money), d.Rate.Currency + " for one " + string(d.Rate.Per)},
		{"duty, not rounded", fmt.Sprintf("%.4f", d.Money), d.Rate.Currency},
	}
}
