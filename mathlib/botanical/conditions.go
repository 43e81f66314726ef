package botanical

import (
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Conditions are those under which an answer is wanted, where they are not the ones of the series.
type Conditions struct {
	Strength alcoholometry.Strength // within 3 % vol of the series; unset: that of the series
	Temp     quantity.Temperature   // as it is: unset is 20 °C
	GrainMM  float64                // size across of a piece of plant, cut alike; the unit is mm; 0: that of the series
	// ActivationKJMol is the activation energy, kJ/mol. Unset: 15 to 40 (from memory). ActivationEnergy finds one.
	ActivationKJMol Range
}

const gasKJMolK = 8.314462618e-3 // kJ/(mol K). Source: BIPM, SI Brochure, 9th edition (2019)

// strengthApart is how far, % vol, a strength may be from that of a series: nobody knows a rule for more. Own choice.
const strengthApart = 3

// factor returns by how much faster it goes under the conditions than in the series, dimensionless: the least, the usual and
// the most.
func (f Steep) factor(fn string, c Conditions) (low, usual, high float64, notes []string, err error) {
	s := f.Series
	if c.Strength.IsSet() {
		if !s.Strength.IsSet() {
			return 0, 0, 0, nil, inputf(fn, "the series has no Strength, so that nothing can be said for %v; give it", c.Strength)
		}
		if d := c.Strength.ABV() - s.Strength.ABV(); math.Abs(d) > strengthApart {
			return 0, 0, 0, nil, inputf(fn, "there is no series at %v: this one was at %v, and no rule for strength is known; take a second series and BetweenStrengths", c.Strength, s.Strength)
		}
	}
	if err := quantity.CheckRange(fn, "temperature", c.Temp.C(), -20, 90, "°C", ""); err != nil {
		return 0, 0, 0, nil, err
	}
	low, usual, high = 1, 1, 1
	if c.Temp != s.Temp {
		e, mid := c.ActivationKJMol, c.ActivationKJMol.middle()
		if !e.IsSet() {
			known := figureOf("activation energy")
			e, mid = known.Range, figureOf("usual activation energy").Low
			notes = append(notes, sprintf("temperature by an activation energy of %v kJ/mol, %s", e, known.from.Status.Words()))
		}
		if err := e.check(fn, "activation energy", 0, 200, "kJ/mol"); err != nil {
			return 0, 0, 0, nil, err
		}
		at := func(kJ float64) float64 { return math.Exp(-kJ / gasKJMolK * (1/c.Temp.K() - 1/s.Temp.K())) }
		a, b := at(e.Low), at(e.High)
		low, usual, high = math.Min(a, b), at(mid), math.Max(a, b)
	}
	if c.GrainMM != 0 && c.GrainMM != s.GrainMM {
		if err := quantity.CheckRange(fn, "size of a piece of plant", c.GrainMM, 0.01, 100, "mm", ""); err != nil {
			return 0, 0, 0, nil, err
		}
		if s.GrainMM == 0 {
			return 0, 0, 0, nil, inputf(fn, "the series has no GrainMM, so that nothing can be said for pieces of %g mm; give it", c.GrainMM)
		}
		times := (s.GrainMM / c.GrainMM) * (s.GrainMM / c.GrainMM)
		low, usual, high = low*times, usual*times, high*times
		notes = append(notes, "diffusion goes with one over the square of the size, for pieces cut alike; grinding also breaks cells, which only a series shows")
	}
	return low, usual, high, notes, nil
}

// AfterAt returns the reading after so many hours under other conditions than those of the series. The end stays what it
// is; the rate changes with temperature and size, so that hours count for more or fewer, and what is washed off at once stays
// the same. Beyond 3 % vol of the strength of the series there is no answer: see BetweenStrengths.
//
// It fails as the conditions demand, and where the hours come to more than twice the time of the last reading.
//
// Accuracy: an estimate; the interval holds the range of the activation energy.
func AfterAt(f Steep, hours float64, c Conditions) (Estimate, error) {
	const fn = "botanical.AfterAt"
	return f.under(fn, hours, c, f.after)
}

// ReachedAt returns what has come out after so many hours under other conditions, per cent of the end, as AfterAt does.
func ReachedAt(f Steep, hours float64, c Conditions) (Estimate, error) {
	const fn = "botanical.ReachedAt"
	return f.under(fn, hours, c, f.reached)
}

func (f Steep) under(fn string, hours float64, c Conditions, of func(string, float64) Estimate) (e Estimate, err error) {
	if f.p == nil {
		return Estimate{}, inputf(fn, "there is no fit; FitSteep makes one")
	}
	low, usual, high, notes, err := f.factor(fn, c)
	if err != nil {
		return Estimate{}, err
	}
	if err := quantity.CheckRange(fn, "time", hours, 0, 2*f.last()/high, "h", "twice the time of the last reading, which comes sooner or later under these conditions"); err != nil {
		return Estimate{}, err
	}
	e = of(fn, math.Min(hours*usual, 2*f.last())) // rounding must not put it beyond
	if low != high {
		slow, fast := of(fn, hours*low), of(fn, math.Min(hours*high, 2*f.last()))
		e.Low, e.HasLow = slow.Low, slow.HasLow
		e.High, e.HasHigh = fast.High, fast.HasHigh
	}
	e.What = sprintf("%s after %s h at %v", nameOr(f.Series.What, "reading"), threeDigits(hours), c.Temp)
	if e.Unit == "%" {
		e.What = sprintf("reached after %s h at %v", threeDigits(hours), c.Temp)
	}
	e.Notes = append(e.Notes, notes...)
	return e, nil
}

// BetweenStrengths returns the reading after so many hours at a strength between those of two fitted series, along a straight
// line in % vol. The series must be of one thing in one unit, at one temperature. It fails for a strength outside the two,
// and beyond twice the time of the last reading of either.
//
// Accuracy: an estimate. How extraction goes with strength is not known to be straight: keep the two series near.
func BetweenStrengths(a, b Steep, hours float64, s alcoholometry.Strength) (Estimate, error) {
	const fn = "botanical.BetweenStrengths"
	if a.p == nil || b.p == nil {
		return Estimate{}, inputf(fn, "there are no two fits; FitSteep makes them")
	}
	for _, x := range []alcoholometry.Strength{a.Series.Strength, b.Series.Strength, s} {
		if err := alcoholometry.CheckSet(fn, "a strength (of both series, and the one asked for)", x); err != nil {
			return Estimate{}, err
		}
	}
	if a.Series.Unit != b.Series.Unit || a.Series.Temp != b.Series.Temp {
		return Estimate{}, inputf(fn, "one series is in %q at %v and the other in %q at %v; they must be alike but for the strength", a.Series.Unit, a.Series.Temp, b.Series.Unit, b.Series.Temp)
	}
	qa, qb, q := a.Series.Strength.ABV(), b.Series.Strength.ABV(), s.ABV()
	if qa == qb || q < math.Min(qa, qb) || q > math.Max(qa, qb) {
		return Estimate{}, inputf(fn, "%v is not between the series at %v and %v; no rule for strength is known beyond them", s, a.Series.Strength, b.Series.Strength)
	}
	if err := quantity.CheckRange(fn, "time", hours, 0, 2*math.Min(a.last(), b.last()), "h", "twice the time of the last reading"); err != nil {
		return Estimate{}, err
	}
	x, y := a.after(fn, hours), b.after(fn, hours)
	w := (q - qa) / (qb - qa)
	line := func(u, v float64) float64 { return (1-w)*u + w*v }
	return Estimate{
		What: sprintf("%s after %s h at %v", a.Series.what(), threeDigits(hours), s), Unit: a.Series.Unit,
		Value: line(x.Value, y.Value), Low: line(x.Low, y.Low), High: line(x.High, y.High), HasLow: x.HasLow && y.HasLow, HasHigh: x.HasHigh && y.HasHigh,
		Notes: append(append([]string{"along a straight line between two strengths (estimate)"}, x.Notes...), y.Notes...),
	}, nil
}

// ActivationEnergy returns the activation energy, kJ/mol, of two fits of one law to series at two temperatures at least 5 °C
// apart. Its interval takes the worst ends of both rates. It fails for two laws, and for temperatures too near each other.
//
// Source: Arrhenius: k goes with exp(-E/(R T)).
func ActivationEnergy(a, b Steep) (Estimate, error) {
	const fn = "botanical.ActivationEnergy"
	if a.p == nil || b.p == nil {
		return Estimate{}, inputf(fn, "there are no two fits; FitSteep makes them")
	}
	if a.Model() != b.Model() {
		return Estimate{}, inputf(fn, "one fit is %s and the other %s; take one law for both", a.Model(), b.Model())
	}
	if a.Series.Temp.C() > b.Series.Temp.C() {
		a, b = b, a
	}
	if b.Series.Temp.C()-a.Series.Temp.C() < 5 {
		return Estimate{}, inputf(fn, "the series were at %v and %v; they must be at least 5 °C apart", a.Series.Temp, b.Series.Temp)
	}
	per := gasKJMolK / (1/a.Series.Temp.K() - 1/b.Series.Temp.K())
	x, y := a.RatePerH(), b.RatePerH()
	e := Estimate{What: "activation energy", Unit: "kJ/mol", Value: per * math.Log(y.Value/x.Value)}
	if x.HasHigh && y.HasLow {
		e.Low, e.HasLow = per*math.Log(y.Low/x.High), true
	}
	if x.HasLow && y.HasHigh {
		e.High, e.HasHigh = per*math.Log(y.High/x.Low), true
	}
	if e.HasLow && e.Low < 0 {
		e.Notes = append(e.Notes, "the rates may as well be equal: read more often or farther apart in temperature")
	}
	return e, nil
}

// Usual is what a maceration reaches where nobody has read a series: spans and no figures.
type Usual struct {
	Hours         float64 // the unit is hours
	FirstOrderPct Range   // by first order, per cent of what comes out in the end
	SpherePct     Range   // by diffusion out of a sphere of the size given, per cent; unset without a size
	Notes         []string
}

// UsualReach returns between what a maceration of whole herb in spirit of 40 to 60 % vol is thought to reach in so many hours
// (14 is a night): all rates are from memory, because no rates in spirit were found in print. grainMM is the size across of
// a piece of plant, unit mm, or 0. It fails outside those strengths, outside 0 to 60 °C, and for hours below 0.
//
// Accuracy: spans only. A series of four readings beats it.
func UsualReach(hours float64, s alcoholometry.Strength, t quantity.Temperature, grainMM float64) (Usual, error) {
	const fn = "botanical.UsualReach"
	if err := alcoholometry.CheckSet(fn, "the strength", s); err != nil {
		return Usual{}, err
	}
	for _, c := range []struct {
		what         string
		x, low, high float64
		unit         string
	}{{"time", hours, 0, 1e5, "h"}, {"strength", s.ABV(), 40 - 1e-9, 60 + 1e-9, "% vol"}, {"temperature", t.C(), 0, 60, "°C"}, {"size of a piece of plant", grainMM, 0, 100, "mm"}} {
		if err := quantity.CheckRange(fn, c.what, c.x, c.low, c.high, c.unit, "the recalled rates are of whole herb in 40 to 60 % vol"); err != nil {
			return Usual{}, err
		}
	}
	e := figureOf("activation energy").Range
	factor := func(kJ float64) float64 { return math.Exp(-kJ / gasKJMolK * (1/t.K() - 1/293.15)) }
	times := inOrder(factor(e.Low), factor(e.High))
	rate := figureOf("first-order rate").times(times)
	u := Usual{Hours: hours, FirstOrderPct: Between(-100*math.Expm1(-rate.Low*hours), -100*math.Expm1(-rate.High*hours)),
		Notes: []string{"estimate from memory, a span only: read a series of your own"}}
	if grainMM > 0 {
		r := grainMM / 2000 // m
		tau := figureOf("diffusion").times(times).scaled(hours * 3600 / (r * r))
		u.SpherePct = Between(100*sphereShare(tau.Low), 100*sphereShare(tau.High))
	}
	return u, nil
}

// String gives the spans in one line.
func (u Usual) String() string {
	s := sprintf("%s h: %v %% by first order", threeDigits(u.Hours), u.FirstOrderPct)
	if u.SpherePct.IsSet() {
		s += sprintf(", %v %% by diffusion out of a sphere", u.SpherePct)
	}
	return s + " (estimate from memory, a span only)"
}

// Rows gives the spans as a table, each row a label, a figure and a unit.
func (u Usual) Rows() [][]string {
	rows := [][]string{{"hours", threeDigits(u.Hours), "h"}, {"reached by first order (estimate)", u.FirstOrderPct.String(), "%"}}
	if u.SpherePct.IsSet() {
		rows = append(rows, []string{"reached by diffusion out of a sphere (estimate)", u.SpherePct.String(), "%"})
	}
	for _, n := range u.Notes {
		rows = append(rows, []string{"note", n, ""})
	}
	return rows
}
