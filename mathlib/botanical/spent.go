package botanical

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Spent is a plant as it was weighed wet after steeping or after a run.
type Spent struct {
	WetKg    float64                // with the liquid that it holds
	DryKg    float64                // the dry plant that went in; for a fresh one its mass without its water
	ExtractG float64                // what the liquid took out of it, g, as DryExtract finds it (g/L times litres); 0 if nobody knows
	Strength alcoholometry.Strength // of the liquid that it holds: the macerate, or the pot after the run
}

// Held is what a spent plant holds back.
type Held struct {
	Spent  Spent
	Liquid alcoholometry.Spirit // at 20 °C
	LKg    float64              // liquid to a kilogram of dry plant, L
	PureL  float64              // pure alcohol in it, L
}

// SpentHerbs returns the liquid that a spent plant holds back and the alcohol in it, by weighing. LKg is what the field
// RetainedLKg of a Botanical takes, after the same straining. It fails for masses that are not above 0, for a wet plant
// lighter than the dry one, for more extract than plant, and without a strength.
func SpentHerbs(s Spent) (Held, error) {
	const fn = "botanical.SpentHerbs"
	if err := quantity.CheckRange(fn, "dry mass", s.DryKg, 0, math.Inf(1), "kg", ""); err != nil {
		return Held{}, err
	}
	if s.DryKg == 0 {
		return Held{}, inputf(fn, "the dry mass is 0 kg; give one above 0 kg")
	}
	if err := quantity.CheckRange(fn, "extract", s.ExtractG, 0, 1000*s.DryKg, "g", "no more than the dry plant"); err != nil {
		return Held{}, err
	}
	liquid := s.WetKg - s.DryKg + s.ExtractG/1000
	if !(liquid >= 0) || math.IsInf(liquid, 0) {
		return Held{}, inputf(fn, "the wet plant weighs %g kg and the dry one %g kg with %g g taken out; wet it must weigh more", s.WetKg, s.DryKg, s.ExtractG)
	}
	l, err := alcoholometry.Weighed(liquid, s.Strength)
	if err != nil {
		return Held{}, as(fn, err)
	}
	return Held{s, l, l.VolumeL / s.DryKg, l.PureL()}, nil
}

// String gives what is held back in one line.
func (h Held) String() string {
	return fmt.Sprintf("%s kg of dry plant hold %v, %s L/kg, with %s L of pure alcohol", quantity.Figure(h.Spent.DryKg), h.Liquid, threeDigits(h.LKg), quantity.Figure(h.PureL))
}

// Rows gives what is held back as a table, each row a label, a figure and a unit.
func (h Held) Rows() [][]string {
	return [][]string{
		{"liquid held back", quantity.Figure(h.Liquid.VolumeL), "L"},
		{"to a kilogram of dry plant", threeDigits(h.LKg), "L/kg"},
		{"pure alcohol in it", quantity.Figure(h.PureL), "L"},
	}
}
