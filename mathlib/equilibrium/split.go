package equilibrium

import (
	"errors"
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Split is a feed partly boiled off, liquid and vapour in equilibrium. Where there is no liquid, or no vapour, its
// strength is unset.
type Split struct {
	Feed, Liquid, Vapour alcoholometry.Strength
	VapourShare          float64 // of the feed's moles, dimensionless, from 0 to 1
	Temp                 quantity.Temperature
	P                    quantity.Pressure
	Model                string // the model of ethanol and water
	Note                 string // what there is to say of the figures; mostly empty
}

// String gives the split in one line.
func (s Split) String() string {
	where := fmt.Sprintf("at %v (%v)", s.Temp, s.P) + inBrackets(s.Note)
	switch {
	case !s.Vapour.IsSet():
		return fmt.Sprintf("%v stays liquid %s", s.Feed, where)
	case !s.Liquid.IsSet():
		return fmt.Sprintf("%v is all vapour %s", s.Feed, where)
	}
	return fmt.Sprintf("%v parts into %.2f %% of its moles as vapour of %v and liquid of %v %s", s.Feed, 100*s.VapourShare, s.Vapour, s.Liquid, where)
}

// Rows gives the split as a table, each row a label, a figure and a unit.
func (s Split) Rows() [][]string {
	rows := [][]string{{"feed", fmt.Sprintf("%.2f", s.Feed), "% vol"}}
	if s.Vapour.IsSet() {
		rows = append(rows, []string{"vapour", fmt.Sprintf("%.2f", s.Vapour), "% vol"})
	}
	if s.Liquid.IsSet() {
		rows = append(rows, []string{"liquid", fmt.Sprintf("%.2f", s.Liquid), "% vol"})
	}
	rows = append(rows,
		[]string{"vapour's share of the moles", fmt.Sprintf("%.2f", 100*s.VapourShare), "%"},
		[]string{"temperature", fmt.Sprintf("%.2f", s.Temp), "°C"},
		[]string{"pressure", fmt.Sprintf("%.2f", s.P), "kPa"},
		[]string{"model", s.Model, ""})
	if s.Note != "" {
		rows = append(rows, []string{"note", s.Note, ""})
	}
	return rows
}

func (p *Pair) split(feed alcoholometry.Strength, s State, share float64) (Split, error) {
	out := Split{Feed: feed, VapourShare: share, Model: p.name, Note: noteAt(s.X, s.PKPa)}
	var errs [4]error
	if share < 1 {
		out.Liquid, errs[0] = alcoholometry.MoleFraction(s.X)
	}
	if share > 0 {
		out.Vapour, errs[1] = alcoholometry.MoleFraction(s.Y)
	}
	out.Temp, errs[2] = quantity.Kelvin(s.TempK)
	out.P, errs[3] = quantity.KPa(s.PKPa)
	return out, errors.Join(errs[:]...)
}

// Flash returns what comes of a feed of which the share vapour of the moles (dimensionless, from 0 to 1) is boiled off
// under the pressure p and stays in equilibrium with the rest. It fails as Bubble does.
func Flash(feed alcoholometry.Strength, p quantity.Pressure, vapour float64, opts ...Option) (Split, error) {
	const fn = "equilibrium.Flash"
	pair, z, err := prepare(fn, "the strength of the feed", feed, opts)
	if err != nil {
		return Split{}, err
	}
	s, err := pair.Flash(z, p.KPa(), vapour)
	if err != nil {
		return Split{}, as(fn, err)
	}
	out, err := pair.split(feed, s, vapour)
	out.P = p
	return out, err
}

// FlashAt is Flash at a temperature, from 1 to 185 °C, instead of a pressure. It fails as BubblePressure does.
func FlashAt(feed alcoholometry.Strength, t quantity.Temperature, vapour float64, opts ...Option) (Split, error) {
	const fn = "equilibrium.FlashAt"
	pair, z, err := prepare(fn, "the strength of the feed", feed, opts)
	if err != nil {
		return Split{}, err
	}
	s, err := pair.FlashAt(z, t.K(), vapour)
	if err != nil {
		return Split{}, as(fn, err)
	}
	out, err := pair.split(feed, s, vapour)
	out.Temp = t
	return out, err
}

// FlashTP returns what comes of a feed that is held at the temperature t, from 1 to 185 °C, and the pressure p, from 2 to
// 1100 kPa: liquid and vapour, or one of them alone. It fails as Bubble does.
func FlashTP(feed alcoholometry.Strength, t quantity.Temperature, p quantity.Pressure, opts ...Option) (Split, error) {
	const fn = "equilibrium.FlashTP"
	pair, z, err := prepare(fn, "the strength of the feed", feed, opts)
	if err != nil {
		return Split{}, err
	}
	s, share, err := pair.FlashTP(z, t.K(), p.KPa())
	if err != nil {
		return Split{}, as(fn, err)
	}
	out, err := pair.split(feed, s, share)
	out.Temp, out.P = t, p
	return out, err
}
