package colour

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

const gasJMolK = 8.314462618 // J/(mol K). Source: BIPM, SI Brochure, 9th edition (2019)

// Warmth is how the loss of green depends on the temperature: its activation energy.
type Warmth struct {
	KJMol     float64 // kJ/mol
	LowKJMol  float64 // its range, kJ/mol
	HighKJMol float64 // its range, kJ/mol
	Seen      bool    // from the house's own two temperatures; otherwise published for something else
	From      string
}

// ChlorophyllWarmth returns the published activation energy of the loss of chlorophyll a: 71.04 ± 4.89 kJ/mol (one standard
// deviation), with the range 18.4 to 85.1 that another study of the pure pigment in 1 to 60 % ethanol spans.
//
// Source: Weemaes and others, J. Agric. Food Chem. 47 (1999) 2404, broccoli juice above 60 °C: in a cellar an extrapolation. Range: Shen,
// Hsu, Huang and Wu, J. Agric. Food Chem. 58 (2010) 8056.
func ChlorophyllWarmth() Warmth {
	t := embedded()
	a, span := t.loss[0], t.loss[2]
	return Warmth{KJMol: a.kJ, LowKJMol: span.low, HighKJMol: span.high, From: a.source + ", range " + span.source + "; estimate for spirit"}
}

// WarmthOf returns the activation energy from the rates of one lot at two temperatures, at least 5 °C apart.
func WarmthOf(a, b Loss) (Warmth, error) {
	const fn = "colour.WarmthOf"
	for _, l := range []Loss{a, b} {
		if err := checkLoss(fn, l); err != nil {
			return Warmth{}, err
		}
		if l.HighOpen {
			return Warmth{}, fmt.Errorf("%s: the rate at %v is not bounded above; add readings to that jar", fn, l.Temp)
		}
	}
	if err := sameStrength(fn, a.Strength, b.Strength); err != nil {
		return Warmth{}, err
	}
	ta, tb := a.Temp.K(), b.Temp.K()
	if math.Abs(ta-tb) < 5 {
		return Warmth{}, fmt.Errorf("%s: the two jars stood at %v and %v; their temperatures must be 5 °C apart or more", fn, a.Temp, b.Temp)
	}
	d := 1/ta - 1/tb
	kJ := gasJMolK * math.Log(b.PerDay/a.PerDay) / d / 1000
	// Ranges are 95 per cent; the two rates are independent, so their logarithms add in squares.
	part := func(l Loss, up bool) float64 {
		if up {
			return math.Log(l.HighPerDay / l.PerDay)
		}
		if l.LowPerDay == 0 {
			return math.Inf(1)
		}
		return math.Log(l.PerDay / l.LowPerDay)
	}
	warmer, colder := b, a
	if ta > tb {
		warmer, colder = a, b
	}
	scale := gasJMolK / math.Abs(d) / 1000
	w := Warmth{KJMol: kJ, LowKJMol: kJ - scale*math.Hypot(part(warmer, false), part(colder, true)),
		HighKJMol: kJ + scale*math.Hypot(part(warmer, true), part(colder, false)), Seen: true, From: fmt.Sprintf("own jars at %v and %v", a.Temp, b.Temp)}
	if w.KJMol <= 0 {
		return Warmth{}, fmt.Errorf("%s: the colder jar faded faster, %.3g against %.3g per day; look whether both stood in the same light", fn, colder.PerDay, warmer.PerDay)
	}
	if math.IsInf(w.LowKJMol, 0) || math.IsInf(w.HighKJMol, 0) {
		return Warmth{}, fmt.Errorf("%s: a rate is not bounded below; add readings", fn)
	}
	return w, nil
}

// sameStrengthPct is how far two strengths may be apart for one rate of loss, % vol. Own choice: rates change a
// hundredfold between 40 and 60 % vol.
const sameStrengthPct = 3.0

func sameStrength(function string, a, b alcoholometry.Strength) error {
	if math.Abs(a.ABV()-b.ABV()) <= sameStrengthPct {
		return nil
	}
	return fmt.Errorf("%s: a rate from %v is not carried to %v: the loss of green changes many times over with the strength, and is fastest near 40 %% vol; read two jars at that strength", function, a, b)
}

// Factor returns by what the rate changes from one temperature to another, dimensionless, both from -25 to 60 °C.
//
// Source: the equation of Arrhenius. It panics with a *quantity.RangeError for a temperature outside.
func (w Warmth) Factor(from, to quantity.Temperature) float64 { return w.factor(w.KJMol, from, to) }

func (w Warmth) factor(kJ float64, from, to quantity.Temperature) float64 {
	const fn = "colour.Warmth.Factor"
	for _, t := range []quantity.Temperature{from, to} {
		if err := quantity.CheckRange(fn, "temperature", t.C(), -25, 60, "°C", ""); err != nil {
			panic(err)
		}
	}
	return math.Exp(kJ * 1000 / gasJMolK * (1/from.K() - 1/to.K()))
}

// FactorRange returns the least and the most that the rate may change by from one temperature to another, dimensionless.
func (w Warmth) FactorRange(from, to quantity.Temperature) (low, high float64) {
	low, high = w.factor(w.LowKJMol, from, to), w.factor(w.HighKJMol, from, to)
	return math.Min(low, high), math.Max(low, high)
}

// String gives the activation energy with its range and source in one line.
func (w Warmth) String() string {
	return fmt.Sprintf("%.1f kJ/mol (%.1f to %.1f), %s", w.KJMol, w.LowKJMol, w.HighKJMol, w.From)
}
