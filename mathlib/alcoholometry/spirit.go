package alcoholometry

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// Spirit is an amount of ethanol and water. Its methods take it as free of sugar and extract.
type Spirit struct {
	VolumeL  float64              // the volume as measured at Temp, L
	Strength Strength             // must be set
	Temp     quantity.Temperature // the temperature at which VolumeL was measured; 20 °C if unset
}

// Weighed returns the spirit of which kg kilograms of the given strength were weighed, with its volume at 20 °C. The
// mass is the true mass; a balance shows about 0.11 % less for spirit (see MassFromBalanceKg). It fails with an
// *UnsetError, or with a *quantity.RangeError if kg is negative.
func Weighed(kg float64, strength Strength) (Spirit, error) {
	const fn = "alcoholometry.Weighed"
	if err := CheckSet(fn, "the strength", strength); err != nil {
		return Spirit{}, err
	}
	if err := quantity.CheckRange(fn, "mass", kg, 0, math.Inf(1), "kg", ""); err != nil {
		return Spirit{}, err
	}
	return Spirit{VolumeL: kg / isotherm20.rho(strength.w) * 1000, Strength: strength}, nil
}

// PureL returns the ethanol in the spirit as litres of pure alcohol at 20 °C, the usual base of duty. It panics with an
// *UnsetError or a *quantity.RangeError if the spirit has no strength, a negative volume or a temperature out of range.
func (s Spirit) PureL() float64 {
	return s.massKg("alcoholometry.Spirit.PureL") * s.Strength.w / ethanol20KgM3 * 1000
}

// MassKg returns the true mass of the spirit in kilograms. What a balance shows in air is about 0.11 % less (see
// BalanceFromMassKg). It panics as PureL does.
func (s Spirit) MassKg() float64 { return s.massKg("alcoholometry.Spirit.MassKg") }

// VolumeAt returns the volume in litres that the spirit takes up at t, from -20 to 40 °C. It panics as PureL does, or
// if t is out of range.
func (s Spirit) VolumeAt(t quantity.Temperature) float64 {
	const fn = "alcoholometry.Spirit.VolumeAt"
	kg := s.massKg(fn)
	if err := checkState(fn, s.Strength.w, t); err != nil {
		panic(err)
	}
	a := isothermAt(t.C())
	return kg / a.rho(s.Strength.w) * 1000
}

func (s Spirit) massKg(function string) float64 {
	if err := CheckSpirit(function, s); err != nil {
		panic(err)
	}
	a := isothermAt(s.Temp.C())
	return s.VolumeL / 1000 * a.rho(s.Strength.w)
}

// CheckSpirit returns the error, under the name of the function given, with which the methods of s would panic: an
// *UnsetError for no strength, a *quantity.RangeError for a negative volume, a temperature out of range or a frozen
// spirit; or nil.
func CheckSpirit(function string, s Spirit) error {
	if err := CheckSet(function, "the spirit's strength", s.Strength); err != nil {
		return err
	}
	if err := quantity.CheckRange(function, "the spirit's volume", s.VolumeL, 0, math.Inf(1), "L", ""); err != nil {
		return err
	}
	return checkState(function, s.Strength.w, s.Temp)
}

// String gives the spirit in one line, such as "600.00 L at 43.00 % vol (20.0 °C)".
func (s Spirit) String() string {
	return fmt.Sprintf("%s L at %v (%v)", quantity.Figure(s.VolumeL), s.Strength, s.Temp)
}

// Rows gives the spirit's volume, strength, pure alcohol and mass, each as a label, a figure and a unit. What cannot be
// told, as long as a field is missing or wrong, is left out.
func (s Spirit) Rows() [][]string {
	rows := [][]string{{"volume at " + s.Temp.String(), quantity.Figure(s.VolumeL), "L"}}
	if !s.Strength.set {
		return append(rows, []string{"strength", "unset", ""})
	}
	rows = append(rows, []string{"strength", fmt.Sprintf("%.2f", s.Strength.ABV()), "% vol"})
	if CheckSpirit("alcoholometry.Spirit.Rows", s) != nil {
		return rows
	}
	return append(rows,
		[]string{"pure alcohol at 20 °C", quantity.Figure(s.PureL()), "L"},
		[]string{"mass", quantity.Figure(s.MassKg()), "kg"})
}
