package colour

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Reading is how green a liquid was on a day: an absorbance, mg/L, or anything else that goes with the green.
type Reading struct {
	Day   float64 // counted from any start; the unit is days
	Value float64 // the unit is the reading's own
}

// Readings are how one jar faded, all at one temperature.
type Readings struct {
	Readings  []Reading
	PlusMinus float64                // standard deviation of a reading, in its unit; 0.002 usual of an absorbance; must be given for two readings
	Browned   float64                // what the reading ends at when all green is gone, in its unit; 0 for a pigment
	Strength  alcoholometry.Strength // of the spirit; must be set
	Temp      quantity.Temperature   // of the jar; 20 °C if unset
}

// Loss is how fast a spirit loses its green: first order, at one strength, one temperature and in one light.
type Loss struct {
	PerDay     float64 // share of what is left that goes in a day, dimensionless
	LowPerDay  float64 // the least it may be (95 per cent), dimensionless
	HighPerDay float64 // the most it may be (95 per cent), dimensionless
	HighOpen   bool    // the readings do not bound it above: HighPerDay is only the end of the search
	Strength   alcoholometry.Strength
	Temp       quantity.Temperature
	From       string // what it rests on
}

// FitLoss returns the rate of loss from two readings or more: k in value = browned + (start - browned) exp(-k t).
//
// Two readings give k = ln[(A1 - A∞)/(A2 - A∞)]/Δt and its range from their stated uncertainty; three and more are fitted by least
// squares with the range of Student's t. A fall that the uncertainty could make is refused: too small to tell. The rate holds at
// the strength and in the light of the jar only; there are no default rates, since published ones span a factor of a thousand.
func FitLoss(r Readings) (Loss, error) {
	const fn = "colour.FitLoss"
	if err := checkReadings(fn, r); err != nil {
		return Loss{}, err
	}
	n := len(r.Readings)
	loss := Loss{Strength: r.Strength, Temp: r.Temp, From: fmt.Sprintf("%d readings", n)}
	ts, ys := make([]float64, n), make([]float64, n)
	for i, x := range r.Readings {
		ts[i], ys[i] = x.Day-r.Readings[0].Day, x.Value-r.Browned
	}
	days := ts[n-1]
	if n == 2 {
		loss.PerDay = math.Log(ys[0]/ys[1]) / days
		sd := math.Hypot(r.PlusMinus/ys[0], r.PlusMinus/ys[1]) / days
		if loss.PerDay < 2*sd {
			return Loss{}, tooSmall(fn, ys[0]-ys[1], days, loss.PerDay+z*sd)
		}
		loss.LowPerDay, loss.HighPerDay = loss.PerDay-z*sd, loss.PerDay+z*sd
		return loss, nil
	}
	f := fitProfile(ts, ys, func(k, t float64) float64 { return math.Exp(-k * t) }, 1e-4/days, 50/ts[1], r.PlusMinus)
	if f.lowOpen || f.p <= 2e-4/days {
		return Loss{}, tooSmall(fn, ys[0]-ys[n-1], days, f.high)
	}
	loss.PerDay, loss.LowPerDay, loss.HighPerDay, loss.HighOpen = f.p, f.low, f.high, f.highOpen
	return loss, nil
}

func tooSmall(function string, fall, days, most float64) error {
	if fall <= 0 {
		return fmt.Errorf("%s: the readings do not fall: %.3g more after %g days; look for evaporation, another lamp or a dirty cell", function, -fall, days)
	}
	return fmt.Errorf("%s: a fall of %.3g in %g days is too small to tell from the readings' uncertainty; the loss is at most %.3g per day; wait longer and read again", function, fall, days, most)
}

func checkReadings(function string, r Readings) error {
	if err := alcoholometry.CheckSet(function, "the strength of the spirit", r.Strength); err != nil {
		return err
	}
	n := len(r.Readings)
	if n < 2 {
		return fmt.Errorf("%s: %d readings give no rate; give at least two", function, n)
	}
	if n == 2 && !(r.PlusMinus > 0) {
		return fmt.Errorf("%s: two readings have no range without the uncertainty of one; give PlusMinus, such as 0.002 for an absorbance", function)
	}
	if err := quantity.CheckRange(function, "uncertainty of a reading", r.PlusMinus, 0, math.MaxFloat64, "", ""); err != nil {
		return err
	}
	if err := quantity.CheckRange(function, "the browned end", r.Browned, 0, math.MaxFloat64, "", ""); err != nil {
		return err
	}
	for i, x := range r.Readings {
		if err := quantity.CheckRange(function, fmt.Sprintf("day of reading %d", i+1), x.Day, -1e6, 1e6, "days", ""); err != nil {
			return err
		}
		if !(x.Value > r.Browned) || math.IsInf(x.Value, 0) {
			return fmt.Errorf("%s: reading %d is %g; it must be above the browned end, %g", function, i+1, x.Value, r.Browned)
		}
		if i > 0 && x.Day <= r.Readings[i-1].Day {
			return fmt.Errorf("%s: reading %d is on day %g, not after day %g; give them in order", function, i+1, x.Day, r.Readings[i-1].Day)
		}
	}
	return nil
}

// HalfDays returns the time in which half of the green goes; the unit is days. It panics with a *quantity.RangeError for a loss that nobody made.
func (l Loss) HalfDays() float64 {
	if err := checkLoss("colour.Loss.HalfDays", l); err != nil {
		panic(err)
	}
	return math.Ln2 / l.PerDay
}

func checkLoss(function string, l Loss) error {
	if err := quantity.CheckRange(function, "the loss", l.PerDay, math.SmallestNonzeroFloat64, math.MaxFloat64, "per day", "fit one from readings"); err != nil {
		return err
	}
	if !(l.LowPerDay >= 0 && l.LowPerDay <= l.PerDay && l.HighPerDay >= l.PerDay) {
		return fmt.Errorf("%s: the loss is %g per day, from %g to %g; the range must hold the figure", function, l.PerDay, l.LowPerDay, l.HighPerDay)
	}
	return alcoholometry.CheckSet(function, "the strength of the loss", l.Strength)
}

// String gives the rate with its range, strength and temperature in one line.
func (l Loss) String() string {
	high := fmt.Sprintf("%.3g", l.HighPerDay)
	if l.HighOpen {
		high = "not bounded above"
	}
	return fmt.Sprintf("%.3g per day (%.3g to %s) at %v and %v, by %s", l.PerDay, l.LowPerDay, high, l.Strength, l.Temp, l.From)
}

// Rows gives the rate, each row a label, a figure and a unit.
func (l Loss) Rows() [][]string {
	high := fmt.Sprintf("%.3g", l.HighPerDay)
	if l.HighOpen {
		high = "not bounded"
	}
	return [][]string{
		{fmt.Sprintf("loss of green at %v, %v (%s)", l.Strength, l.Temp, l.From), fmt.Sprintf("%.3g", l.PerDay), "1/day"},
		{"its range (95 %)", fmt.Sprintf("%.3g to %s", l.LowPerDay, high), "1/day"},
		{"half of it gone in", quantity.Figure(math.Ln2 / l.PerDay), "days"},
	}
}
