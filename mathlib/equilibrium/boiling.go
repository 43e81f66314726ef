package equilibrium

import (
	"errors"
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Boiling is a boiling spirit: the liquid, the vapour in equilibrium with it, and where that is so.
type Boiling struct {
	Liquid, Vapour alcoholometry.Strength
	Temp           quantity.Temperature
	P              quantity.Pressure
	Model          string // the model of ethanol and water
	Note           string // what there is to say of the figures; mostly empty
}

// What a result says outside the range in which its model was held against boiling points.
const (
	noteExtrapolated = "extrapolated: the model was fitted from 5 to 105 kPa"
	noteVacuum       = "below 12 kPa the model keeps an azeotrope that is not there; the vapour of strong spirit is too weak"
)

func noteAt(x, pKPa float64) string {
	switch {
	case pKPa < azeotropeLowKPa && x > 0.85:
		return noteVacuum
	case pKPa < fittedLowKPa || pKPa > fittedHighKPa:
		return noteExtrapolated
	}
	return ""
}

// String gives the boiling spirit in one line.
func (b Boiling) String() string {
	return fmt.Sprintf("%v boils at %v (%v), vapour %v", b.Liquid, b.Temp, b.P, b.Vapour) + inBrackets(b.Note)
}

func inBrackets(note string) string {
	if note == "" {
		return ""
	}
	return " (" + note + ")"
}

// Rows gives the boiling spirit as a table, each row a label, a figure and a unit.
func (b Boiling) Rows() [][]string {
	rows := [][]string{
		{"liquid", fmt.Sprintf("%.2f", b.Liquid), "% vol"},
		{"vapour", fmt.Sprintf("%.2f", b.Vapour), "% vol"},
		{"boils at", fmt.Sprintf("%.2f", b.Temp), "°C"},
		{"under", fmt.Sprintf("%.2f", b.P), "kPa"},
		{"model", b.Model, ""},
	}
	if b.Note != "" {
		rows = append(rows, []string{"note", b.Note, ""})
	}
	return rows
}

// boiling turns a state into strengths. The caller puts back what it was given, so that it does not return changed in its
// last digit.
func (p *Pair) boiling(s State, note string) (Boiling, error) {
	b := Boiling{Model: p.name, Note: note}
	var errs [4]error
	b.Liquid, errs[0] = alcoholometry.MoleFraction(s.X)
	b.Vapour, errs[1] = alcoholometry.MoleFraction(s.Y)
	b.Temp, errs[2] = quantity.Kelvin(s.TempK)
	b.P, errs[3] = quantity.KPa(s.PKPa)
	return b, errors.Join(errs[:]...)
}

// Bubble returns the boiling point of a liquid under the pressure p, from 2 to 1100 kPa, and its first vapour. It fails
// with an *alcoholometry.UnsetError, a *quantity.RangeError or an *UnknownModelError.
//
// Accuracy of the default model against measurements at 101 kPa: 0.006 in the mole fraction of the vapour and 0.24 K
// against Perry's table, which is as far as published sets are from each other; the others see DEVIATIONS.md.
func Bubble(liquid alcoholometry.Strength, p quantity.Pressure, opts ...Option) (Boiling, error) {
	const fn = "equilibrium.Bubble"
	pair, x, err := prepare(fn, "the strength of the liquid", liquid, opts)
	if err != nil {
		return Boiling{}, err
	}
	if err := checkPressure(fn, p.KPa()); err != nil {
		return Boiling{}, err
	}
	s, err := pair.bubble(fn, x, p.KPa())
	if err != nil {
		return Boiling{}, err
	}
	b, err := pair.boiling(s, noteAt(s.X, s.PKPa))
	b.Liquid, b.P = liquid, p
	return b, err
}

// BubblePressure returns the pressure under which a liquid boils at t, from 1 to 185 °C, and its first vapour. It fails
// as Bubble does; the pressure must come to 2 to 1100 kPa.
func BubblePressure(liquid alcoholometry.Strength, t quantity.Temperature, opts ...Option) (Boiling, error) {
	const fn = "equilibrium.BubblePressure"
	pair, x, err := prepare(fn, "the strength of the liquid", liquid, opts)
	if err != nil {
		return Boiling{}, err
	}
	s, err := pair.BubbleAt(x, t.K())
	if err != nil {
		return Boiling{}, as(fn, err)
	}
	b, err := pair.boiling(s, noteAt(s.X, s.PKPa))
	b.Liquid, b.Temp = liquid, t
	return b, err
}

// Dew returns the temperature at which a vapour begins to condense under the pressure p, from 2 to 1100 kPa, and the
// first drop of liquid. It fails as Bubble does.
func Dew(vapour alcoholometry.Strength, p quantity.Pressure, opts ...Option) (Boiling, error) {
	const fn = "equilibrium.Dew"
	pair, y, err := prepare(fn, "the strength of the vapour", vapour, opts)
	if err != nil {
		return Boiling{}, err
	}
	s, err := pair.Dew(y, p.KPa())
	if err != nil {
		return Boiling{}, as(fn, err)
	}
	b, err := pair.boiling(s, noteAt(s.X, s.PKPa))
	b.Vapour, b.P = vapour, p
	return b, err
}

// DewPressure returns the pressure under which a vapour begins to condense at t, from 1 to 185 °C, and the first drop of
// liquid. It fails as BubblePressure does.
func DewPressure(vapour alcoholometry.Strength, t quantity.Temperature, opts ...Option) (Boiling, error) {
	const fn = "equilibrium.DewPressure"
	pair, y, err := prepare(fn, "the strength of the vapour", vapour, opts)
	if err != nil {
		return Boiling{}, err
	}
	s, err := pair.DewAt(y, t.K())
	if err != nil {
		return Boiling{}, as(fn, err)
	}
	b, err := pair.boiling(s, noteAt(s.X, s.PKPa))
	b.Vapour, b.Temp = vapour, t
	return b, err
}

// Azeotrope returns the spirit that boils without changing under the pressure p, from 12 to 250 kPa: the strongest that
// plain distilling reaches. It fails with a *quantity.RangeError, a *NoAzeotropeError or an *UnknownModelError.
//
// Accuracy: see Pair.Azeotrope.
func Azeotrope(p quantity.Pressure, opts ...Option) (Boiling, error) {
	const fn = "equilibrium.Azeotrope"
	set, err := apply(fn, opts)
	if err != nil {
		return Boiling{}, err
	}
	s, err := set.pair.Azeotrope(p.KPa())
	if err != nil {
		return Boiling{}, as(fn, err)
	}
	note := noteAt(0, s.PKPa)
	if s.PKPa < 45 {
		note = "the measured azeotrope is stronger: by 1 % mass at 26 kPa, 3 % at 13 kPa"
	}
	b, err := set.pair.boiling(s, note)
	b.P = p
	return b, err
}

// prepare returns the pair that the options choose, and the mole fraction of a strength.
func prepare(function, what string, s alcoholometry.Strength, opts []Option) (*Pair, float64, error) {
	if err := alcoholometry.CheckSet(function, what, s); err != nil {
		return nil, 0, err
	}
	set, err := apply(function, opts)
	if err != nil {
		return nil, 0, err
	}
	return set.pair, s.MoleFraction(), nil
}

// as returns err under the name of the function the caller called.
func as(function string, err error) error {
	var r *quantity.RangeError
	var c *ConvergenceError
	var n *NoAzeotropeError
	switch {
	case errors.As(err, &r):
		e := *r
		e.Func = function
		return &e
	case errors.As(err, &c):
		e := *c
		e.Func = function
		return &e
	case errors.As(err, &n):
		e := *n
		e.Func = function
		return &e
	}
	return fmt.Errorf("%s: %w", function, err)
}
