package louche

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// ClearStrength is the strength down to which a spirit with oil in it stays clear.
type ClearStrength struct {
	Oil   Oil
	OilGL float64 // the oil in the bottle at Strength, g/L; in parts if the oil is counted so
	Temp  quantity.Temperature

	Strength alcoholometry.Strength // clear from here upwards; Water if EveryStrength
	Low      alcoholometry.Strength // the lowest it may be
	High     alcoholometry.Strength // the highest it may be

	EveryStrength bool // clear at every strength
	HighBeyond    bool // it may be higher still than High: than 90 % vol, or than the spirit to be reduced

	// ClearsAgain says that a reduced spirit clears again where it is watered down further still, below ClearsAgainBelow:
	// not a strength to bottle at.
	ClearsAgain      bool
	ClearsAgainBelow alcoholometry.Strength
}

// ClearAt returns the bottling strength from which oilGL of oil in the litre stays clear at t, whatever the strength. It
// fails where even 90 % vol would be cloudy.
//
// For the model and its accuracy see SolubilityOf; the range is the wider of what the solubility's factor and the heat of
// solution leave open, each alone.
func ClearAt(o Oil, oilGL float64, t quantity.Temperature) (ClearStrength, error) {
	const fn = "louche.ClearAt"
	if err := checkUsable(fn, o); err != nil {
		return ClearStrength{}, err
	}
	if err := checkDrink(fn, Drink{alcoholometry.Water, oilGL, t}, o); err != nil {
		return ClearStrength{}, err
	}
	r := ClearStrength{Oil: o, OilGL: oilGL, Temp: t}
	k := t.K()
	solve := func(v variant) (float64, bool) {
		load := func(f float64) float64 { return o.lnLoad(oilGL, f, k, v) }
		if load(0) <= 0 {
			return 0, true
		}
		if load(mostPctVol/100) > 0 {
			return mostPctVol / 100, false
		}
		return bisect(load, 0, mostPctVol/100), true
	}
	f, ok := solve(middle)
	if !ok {
		return ClearStrength{}, fmt.Errorf("%s: %s of oil is more than even %g %% vol holds clear at %v; give less oil or a warmer place", fn, unitText(oilGL, o), mostPctVol, t)
	}
	r.EveryStrength = f == 0
	low, high := f, f
	for _, v := range variants {
		x, ok := solve(v)
		low, high = min(low, x), max(high, x)
		r.HighBeyond = r.HighBeyond || !ok
	}
	return r, r.set(fn, f, low, high)
}

// ClearReduced returns down to what strength a spirit may be reduced with water at t, its own oil thinning with it, and stay
// clear. It fails for a spirit that is cloudy before any water.
//
// The oil in a litre falls as the strength does, exactly; the solubility falls faster. So there are two roots, an upper one
// where it clouds and a lower one where it clears again: the upper is the answer. For the accuracy see ClearAt.
func ClearReduced(d Drink, o Oil) (ClearStrength, error) {
	const fn = "louche.ClearReduced"
	if err := checkUsable(fn, o); err != nil {
		return ClearStrength{}, err
	}
	if err := checkDrink(fn, d, o); err != nil {
		return ClearStrength{}, err
	}
	f0, k := share(d.Strength), d.Temp.K()
	if f0 == 0 {
		return ClearStrength{}, fmt.Errorf("%s: the spirit is water, 0 %% vol; there is nothing to reduce", fn)
	}
	r := ClearStrength{Oil: o, Temp: d.Temp}
	load := func(v variant) func(float64) float64 {
		return func(f float64) float64 { return o.lnLoad(d.OilGL*f/f0, f, k, v) }
	}
	if load(middle)(f0) > 0 {
		return ClearStrength{}, fmt.Errorf("%s: %s is cloudy before any water is added; raise its strength or warm it", fn, d.text(o))
	}
	f, again := roots(load(middle), f0)
	low, high := f, f
	for _, v := range variants {
		if load(v)(f0) > 0 {
			high, r.HighBeyond = f0, true
			continue
		}
		x, _ := roots(load(v), f0)
		low, high = min(low, x), max(high, x)
	}
	r.EveryStrength = f == 0
	r.OilGL = d.OilGL * f / f0
	if again > 0 {
		var err error
		r.ClearsAgain = true
		if r.ClearsAgainBelow, err = alcoholometry.ABV(100 * again); err != nil {
			return ClearStrength{}, as(fn, err)
		}
	}
	return r, r.set(fn, f, low, high)
}

// roots returns where load passes 0 on the way down from f0, and where it falls below 0 again; 0 for none.
func roots(load func(float64) float64, f0 float64) (upper, lower float64) {
	const steps = 400
	before := f0
	for i := steps - 1; i > 0; i-- {
		f := f0 * float64(i) / steps
		switch v := load(f); {
		case upper == 0 && v > 0:
			upper = bisect(load, f, before)
		case upper > 0 && v <= 0:
			return upper, bisect(func(x float64) float64 { return -load(x) }, f, before)
		}
		before = f
	}
	if upper > 0 { // with no water left to add it is clear, since the oil is gone
		f := before
		for load(f) > 0 && f > 1e-9 {
			before, f = f, f/2
		}
		if load(f) <= 0 {
			lower = bisect(func(x float64) float64 { return -load(x) }, f, before)
		}
	}
	return upper, lower
}

// bisect returns where f, above 0 at a and not at b, passes 0.
func bisect(f func(float64) float64, a, b float64) float64 {
	for range 200 {
		m := (a + b) / 2
		if m == a || m == b {
			break
		}
		if f(m) > 0 {
			a = m
		} else {
			b = m
		}
	}
	return b
}

func (r *ClearStrength) set(function string, f, low, high float64) error {
	for _, x := range []struct {
		to *alcoholometry.Strength
		f  float64
	}{{&r.Strength, f}, {&r.Low, low}, {&r.High, high}} {
		s, err := alcoholometry.ABV(100 * x.f)
		if err != nil {
			return as(function, err)
		}
		*x.to = s
	}
	return nil
}

func unitText(oilGL float64, o Oil) string {
	if o.inParts {
		return fmt.Sprintf("%.3g parts", oilGL)
	}
	return quantity.Figure(oilGL) + " g/L"
}

// String gives the strength in one line, with its range and how sure it is.
func (r ClearStrength) String() string {
	how := "estimate, not calibrated"
	if r.Oil.Calibrated() {
		how = "calibrated"
	}
	if r.EveryStrength {
		return fmt.Sprintf("clear at every strength at %v (%s)", r.Temp, how)
	}
	s := fmt.Sprintf("clear from %.1f %% vol upwards at %v with %s of oil (%.1f to %s; %s)", r.Strength.ABV(), r.Temp, unitText(r.OilGL, r.Oil),
		r.Low.ABV(), r.highText(), how)
	if r.ClearsAgain {
		s += fmt.Sprintf("; below %.1f %% vol it would clear again", r.ClearsAgainBelow.ABV())
	}
	return s
}

func (r ClearStrength) highText() string {
	if r.HighBeyond {
		return fmt.Sprintf("above %.1f", r.High.ABV())
	}
	return fmt.Sprintf("%.1f", r.High.ABV())
}

// Rows gives the strength and its range, each as a label, a figure and a unit.
func (r ClearStrength) Rows() [][]string {
	how := " (estimate)"
	if r.Oil.Calibrated() {
		how = " (calibrated)"
	}
	if r.EveryStrength {
		return [][]string{{"clear at " + r.Temp.String() + how, "at every strength", ""}}
	}
	rows := [][]string{
		{"clear at " + r.Temp.String() + " from" + how, fmt.Sprintf("%.1f", r.Strength.ABV()), "% vol"},
		{"its range", fmt.Sprintf("%.1f to %s", r.Low.ABV(), r.highText()), "% vol"},
	}
	if r.ClearsAgain {
		rows = append(rows, []string{"clears again below", fmt.Sprintf("%.1f", r.ClearsAgainBelow.ABV()), "% vol"})
	}
	return rows
}
