package louche

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// Separated is a drink parted into the clear liquid and the oil that is out of it as droplets.
type Separated struct {
	Drink       Drink
	Oil         Oil
	Load        float64 // Σ c/S, dimensionless: up to 1 the drink is clear
	DissolvedGL float64 // oil in the clear liquid, g/L; in parts if the oil is counted so
	OutGL       float64 // oil out of it, g/L; 0 if clear; in parts if the oil is counted so
	Compounds   []SeparatedCompound
	Beyond      bool // beyond the range of the model: an order of magnitude
}

// SeparatedCompound is one compound of the oil in a parted drink.
type SeparatedCompound struct {
	Compound    string
	GL          float64 // all of it, g/L
	DissolvedGL float64 // in the clear liquid, g/L
	OutGL       float64 // in the droplets, g/L
	// Activity is how close the compound is to its pure liquid, dimensionless: c/S in a clear drink, its mole fraction in the
	// droplets of a cloudy one. It never passes 1.
	Activity float64
}

// Separate parts a drink into the clear liquid and the droplets. With O moles of oil out in a litre, compound k is x =
// c/(O + S) of the droplets, which sum to 1, and x S of it stays dissolved. One compound alone gives what passes its solubility.
//
// The droplets are taken as an ideal mixture (own choice). For the accuracy see SolubilityOf.
func Separate(d Drink, o Oil) (Separated, error) {
	const fn = "louche.Separate"
	if err := checkUsable(fn, o); err != nil {
		return Separated{}, err
	}
	if err := checkDrink(fn, d, o); err != nil {
		return Separated{}, err
	}
	return separate(d, o, share(d.Strength)), nil
}

func separate(d Drink, o Oil, f float64) Separated {
	n := len(o.parts)
	moles, room := make([]float64, n), make([]float64, n) // in a litre
	tempK := d.Temp.K()
	total, load := 0.0, 0.0
	for k, p := range o.parts {
		moles[k] = d.OilGL * p.share / p.molarG
		room[k] = math.Exp(o.lnS(k, f, tempK, middle)) / p.molarG
		total += moles[k]
		load += moles[k] / room[k]
	}
	out := 0.0
	if load > 1 {
		out = solveOut(moles, room, total)
	}
	r := Separated{Drink: d, Oil: o, Load: load}
	for k, p := range o.parts {
		c := SeparatedCompound{Compound: p.name, GL: moles[k] * p.molarG, DissolvedGL: moles[k] * p.molarG, Activity: moles[k] / room[k]}
		if out > 0 {
			c.Activity = moles[k] / (out + room[k])
			c.DissolvedGL = c.Activity * room[k] * p.molarG
			c.OutGL = out * c.Activity * p.molarG
			r.OutGL += c.OutGL
		}
		r.DissolvedGL += c.DissolvedGL
		r.Compounds = append(r.Compounds, c)
	}
	r.Beyond = 100*f > surePctVol*(1+1e-12) || r.DissolvedGL > sureGL && !o.inParts
	return r
}

// solveOut returns the moles of oil out, at which Σ c/(O + S) is 1. The sum falls and bends upwards, so Newton's method from 0
// never passes the root.
func solveOut(moles, room []float64, total float64) float64 {
	out := 0.0
	for range 200 {
		f, slope := -1.0, 0.0
		for k := range moles {
			q := 1 / (out + room[k])
			f += moles[k] * q
			slope -= moles[k] * q * q
		}
		next := math.Min(out-f/slope, total)
		if next-out <= 1e-15*total {
			return next
		}
		out = next
	}
	return out
}

// String says in one line whether the drink is clear and how much oil is out.
func (s Separated) String() string {
	unit := "g/L"
	if s.Oil.inParts {
		unit = "parts"
	}
	how := "estimate"
	if s.Oil.Calibrated() {
		how = "calibrated"
	}
	if s.OutGL == 0 {
		return fmt.Sprintf("%s: clear, at %.0f %% of what it holds (%s)", s.Drink.text(s.Oil), 100*s.Load, how)
	}
	return fmt.Sprintf("%s: cloudy, %s %s of oil out, %s dissolved (%s)", s.Drink.text(s.Oil), quantity.Figure(s.OutGL), unit, quantity.Figure(s.DissolvedGL), how)
}

// Rows gives each compound, dissolved and out, each as a label, a figure and a unit.
func (s Separated) Rows() [][]string {
	unit := "g/L"
	if s.Oil.inParts {
		unit = "parts"
	}
	rows := [][]string{
		{"share of what the liquid holds (cloudy above 1)", fmt.Sprintf("%.3g", s.Load), ""},
		{"oil dissolved", quantity.Figure(s.DissolvedGL), unit},
		{"oil out as droplets", quantity.Figure(s.OutGL), unit},
	}
	for _, c := range s.Compounds {
		rows = append(rows, []string{c.Compound + ", dissolved of " + quantity.Figure(c.GL), quantity.Figure(c.DissolvedGL), unit})
	}
	return rows
}
