package aroma

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/louche"
	"swanneck/mathlib/quantity"
)

// Amount is an aroma compound and how much of it a litre of drink holds.
type Amount struct {
	Compound string
	MgL      float64 // all of it, dissolved or not, mg/L of drink at 20 °C
}

// Drink is a spirit with aroma compounds in it.
type Drink struct {
	Strength alcoholometry.Strength // must be set; up to 90 % vol
	Amounts  []Amount
	// SolubleAs is an oil that louche.Calibrate was given drips of: its calibration then holds here too. Unset, the solubility
	// is by published numbers, good to a factor of two.
	SolubleAs louche.Oil
	// ByActivity takes the way to the air of compounds without descriptors from the activity coefficients of distilling: a
	// guess that differs from descriptors by a factor of two to four where there are both.
	ByActivity bool
}

const mostMgL = 400e3

// glass is a drink looked through: what is dissolved of each compound.
type glass struct {
	drink     Drink
	names     []string  // in the order of Amounts
	liquid    []float64 // all of it, mg/L
	dissolved []float64 // mg/L
	load      float64   // Σ c/S, dimensionless
}

// partition25 is the temperature of everything here, °C.
const partition25 = 25.0

func look(function string, d Drink) (glass, error) {
	if err := alcoholometry.CheckSet(function, "the drink's strength", d.Strength); err != nil {
		return glass{}, err
	}
	if err := quantity.CheckRange(function, "strength", d.Strength.ABV(), 0, 90*(1+1e-12), "% vol", "range of the solubility"); err != nil {
		return glass{}, err
	}
	if len(d.Amounts) == 0 {
		return glass{}, fmt.Errorf("%s: the drink has no aroma compounds; give at least one amount", function)
	}
	g := glass{drink: d}
	t := embedded()
	var oils []louche.Amount
	var place []int
	seen := map[string]bool{}
	for i, a := range d.Amounts {
		name := nameOf(a.Compound)
		_, described := t.descriptors[name]
		if _, err := compound.Find(name); err != nil && !described && !anyThreshold(t, name) {
			return glass{}, as(function, err)
		}
		if seen[name] {
			return glass{}, fmt.Errorf("%s: %s stands in the drink twice; give it one amount", function, name)
		}
		seen[name] = true
		if err := quantity.CheckRange(function, "amount of "+name, a.MgL, 0, mostMgL, "mg/L", ""); err != nil {
			return glass{}, err
		}
		g.names, g.liquid, g.dissolved = append(g.names, name), append(g.liquid, a.MgL), append(g.dissolved, a.MgL)
		if _, err := louche.OilOf(name); err == nil && a.MgL > 0 {
			oils, place = append(oils, louche.Amount{Compound: name, GL: a.MgL / 1000}), append(place, i)
		}
	}
	if len(oils) == 0 {
		return g, nil
	}
	o, err := louche.OilFromAmounts(oils...)
	if err != nil {
		return glass{}, as(function, err)
	}
	if len(d.SolubleAs.Compounds()) > 0 {
		if o, err = o.Like(d.SolubleAs); err != nil {
			return glass{}, as(function, err)
		}
	}
	t25, err := quantity.Celsius(partition25)
	if err != nil {
		return glass{}, as(function, err)
	}
	s, err := louche.Separate(louche.Drink{Strength: d.Strength, OilGL: o.TotalGL(), Temp: t25}, o)
	if err != nil {
		return glass{}, as(function, err)
	}
	g.load = s.Load
	for k, c := range s.Compounds {
		g.dissolved[place[k]] = math.Min(1000*c.DissolvedGL, g.liquid[place[k]]) // rounding only
	}
	return g, nil
}

func anyThreshold(t *tables, name string) bool {
	for _, m := range []Matrix{Water, Ethanol40, Air} {
		if len(t.thresholds[m][name]) > 0 {
			return true
		}
	}
	return false
}

// Dilute returns the drink watered to a lower strength. Strength and amounts are both per litre, so they fall alike: half the
// strength is exactly half the amount. It fails for a strength above the drink's, and as Headspace does.
func Dilute(d Drink, to alcoholometry.Strength) (Drink, error) {
	const fn = "aroma.Dilute"
	if _, err := look(fn, d); err != nil {
		return Drink{}, err
	}
	if err := alcoholometry.CheckSet(fn, "the strength to dilute to", to); err != nil {
		return Drink{}, err
	}
	from, q := d.Strength.ABV(), to.ABV()
	if q > from*(1+1e-12) || from == 0 {
		return Drink{}, fmt.Errorf("%s: cannot water %v to %v; give a strength below the drink's", fn, d.Strength, to)
	}
	amounts := make([]Amount, len(d.Amounts))
	for i, a := range d.Amounts {
		amounts[i] = Amount{a.Compound, a.MgL * math.Min(1, q/from)}
	}
	d.Strength, d.Amounts = to, amounts
	return d, nil
}

// String gives the drink in one line.
func (d Drink) String() string {
	s := d.Strength.String() + " with "
	for i, a := range d.Amounts {
		if i > 0 {
			s += ", "
		}
		s += quantity.Figure(a.MgL) + " mg/L of " + a.Compound
	}
	return s
}
