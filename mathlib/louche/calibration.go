package louche

import (
	"fmt"
	"math"
)

// Calibration is an oil's solubility fitted to what was seen, and what was predicted before and after.
type Calibration struct {
	Oil       Oil // calibrated: use this one
	Published Oil // the same oil by published numbers

	Factor         float64 // observed over published solubility, dimensionless; without meaning for an oil counted in parts
	Spread         float64 // the factor the solubility is now good to at the temperature of the drips, dimensionless
	ResidualFactor float64 // by what factor the drips scatter around the fit, dimensionless; 1 if there are no more than unknowns

	HeatKJMol     float64 // how the solubility changes with temperature, kJ/mol
	HeatLowKJMol  float64 // its range, kJ/mol
	HeatHighKJMol float64 // its range, kJ/mol
	HeatSeen      bool    // whether that comes from observations; otherwise an estimate
	SlopeChange   float64 // what was added to the slope against strength, dimensionless; 0 unless two drips fixed it

	Checks []Check // each observation, predicted before and after
	Notes  []string
}

// Check is an observation beside its predictions: millilitres of water for a drip, the cloud temperature for a bottle.
type Check struct {
	Seen        Seen
	Before      float64 // by published numbers; the unit is mL of water for a drip, °C for a bottle
	BeforeKnown bool    // false if there is no such prediction
	After       float64 // by the calibration; the unit is mL of water for a drip, °C for a bottle
	AfterKnown  bool
	Fits        bool // whether the observation fits the calibration within its range
	oil         Oil
}

func (c Calibration) check(function string, s Seen) (Check, error) {
	r := Check{Seen: s, oil: c.Oil}
	var err error
	predict := func(o Oil) (float64, bool) {
		if o.inParts && o.seen == 0 {
			return 0, false
		}
		if s.As != CloudedByWater {
			t := o.cloudC(s.Drink, middle)
			return t, t > -273.15 && !math.IsInf(t, 1)
		}
		at, _, clouds, _, e := onset(function, s.Drink, o)
		if e != nil {
			err = e
		}
		return at * s.spiritML(), clouds
	}
	r.Before, r.BeforeKnown = predict(c.Published)
	r.After, r.AfterKnown = predict(c.Oil)
	if s.As == CloudedByWater {
		r.Fits = r.AfterKnown && math.Abs(r.After-s.WaterML) <= s.readingML()*(1+1e-9)
	} else {
		p, e := CloudPointOf(s.Drink, c.Oil)
		if e != nil {
			return Check{}, as(function, e)
		}
		r.Fits = !(s.As == WasClear && p.At(s.Drink.Temp) == TurnsCloudy) && !(s.As == WasCloudy && p.At(s.Drink.Temp) == StaysClear)
	}
	return r, err
}

// String gives the observation with what was predicted before and after, in one line.
func (c Check) String() string {
	s := c.Seen.text(c.oil) + "; predicted before " + c.figure(c.Before, c.BeforeKnown) + ", after " + c.figure(c.After, c.AfterKnown)
	if !c.Fits {
		s += "; does not fit"
	}
	return s
}

func (c Check) figure(x float64, known bool) string {
	switch {
	case !known && c.Seen.As == CloudedByWater:
		return "no cloud"
	case !known:
		return "nothing"
	case c.Seen.As == CloudedByWater:
		return fmt.Sprintf("%.1f mL", x)
	}
	return "clouds below " + degrees(x, 1)
}

// String gives the calibration in one line: its factor, and what is known of the change with temperature.
func (c Calibration) String() string {
	heat := "an estimate"
	if c.HeatSeen {
		heat = "seen"
	}
	head := fmt.Sprintf("%.3g times the published solubility", c.Factor)
	if c.Oil.inParts {
		head = "calibrated in parts"
	}
	return fmt.Sprintf("%s, %s, good to a factor of %.3g there; heat of solution %.1f kJ/mol (%.1f to %.1f, %s)",
		head, c.Oil.calibratedAt, c.Spread, c.HeatKJMol, c.HeatLowKJMol, c.HeatHighKJMol, heat)
}

// Rows gives the calibration, each row a label, a figure and a unit; observations have what was predicted before and after.
func (c Calibration) Rows() [][]string {
	heat := " (estimate)"
	if c.HeatSeen {
		heat = " (seen)"
	}
	rows := [][]string{{"observed over published solubility, " + c.Oil.calibratedAt, fmt.Sprintf("%.3g", c.Factor), ""}}
	if c.Oil.inParts {
		rows = [][]string{{"calibrated in parts", c.Oil.calibratedAt, ""}}
	}
	rows = append(rows, [][]string{
		{"good to a factor of, there, by the readings alone", fmt.Sprintf("%.3g", c.Spread), ""},
		{"heat of solution" + heat, fmt.Sprintf("%.1f (%.1f to %.1f)", c.HeatKJMol, c.HeatLowKJMol, c.HeatHighKJMol), "kJ/mol"},
	}...)
	if c.SlopeChange != 0 {
		rows = append(rows, []string{"change of the slope against strength", fmt.Sprintf("%+.2f", c.SlopeChange), ""})
	}
	for _, k := range c.Checks {
		rows = append(rows, []string{k.Seen.text(c.Oil), "before " + k.figure(k.Before, k.BeforeKnown) + ", after " + k.figure(k.After, k.AfterKnown), ""})
	}
	for _, n := range c.Notes {
		rows = append(rows, []string{"note", n, ""})
	}
	return rows
}

// CloudPoints returns the cloud temperature of a drink by published numbers and by the calibration, to be shown side by side.
func (c Calibration) CloudPoints(d Drink) (before, after CloudPoint, err error) {
	const fn = "louche.Calibration.CloudPoints"
	if after, err = CloudPointOf(d, c.Oil); err != nil {
		return CloudPoint{}, CloudPoint{}, as(fn, err)
	}
	if c.Published.inParts {
		return CloudPoint{}, CloudPoint{}, fmt.Errorf("%s: of oil counted in parts there is no prediction before the calibration; weigh the oil for one", fn)
	}
	before, err = CloudPointOf(d, c.Published)
	return before, after, as(fn, err)
}
