package alcoholometry

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// Strength says how much of a mixture of ethanol and water is ethanol. Make one with ABV, ABVAt, ABW, USProof,
// MoleFraction or StrengthFromDensity, or from a reading with TrueStrength or TrueProof; Water is strength 0.
//
// The zero value is no strength at all: whatever is asked of it fails with an *UnsetError, so that a field somebody
// forgot to fill in is not taken for water.
type Strength struct {
	w   float64 // mass fraction of ethanol, dimensionless
	set bool
}

// Water is the strength of water: no ethanol.
var Water = Strength{set: true}

// ABV returns the strength of a spirit with pct per cent of ethanol by volume, measured at 20 °C, from 0 to 100.
//
// Source: OIML R 22 (1975): q = p ρ(p,20)/ρ(1,20).
func ABV(pct float64) (Strength, error) {
	if err := quantity.CheckRange("alcoholometry.ABV", "strength", pct, 0, 100, "% vol", ""); err != nil {
		return Strength{}, err
	}
	return Strength{isotherm20.fractionOfVolumeShare(pct/100, 0), true}, nil
}

// ABVAt returns the strength of a spirit with pct per cent of ethanol by volume, from 0 to 100, if the spirit and the
// ethanol are both measured at the temperature t, from -20 to 40 °C. It is a true strength at another reference
// temperature, such as the 15 °C of older tables. What an alcoholometer shows in a spirit of temperature t is
// something else: that goes through TrueStrength.
//
// Source: OIML R 22 (1975), its definition of strength by volume taken at t: q = p ρ(p,t)/ρ(1,t).
func ABVAt(pct float64, t quantity.Temperature) (Strength, error) {
	const fn = "alcoholometry.ABVAt"
	if err := quantity.CheckRange(fn, "strength", pct, 0, 100, "% vol", ""); err != nil {
		return Strength{}, err
	}
	if err := checkTemperature(fn, t); err != nil {
		return Strength{}, err
	}
	a := isothermAt(t.C())
	w := a.fractionOfVolumeShare(pct/100, 0)
	if err := checkLiquid(fn, w, t); err != nil {
		return Strength{}, err
	}
	return Strength{w, true}, nil
}

// ABW returns the strength of a spirit with pct per cent of ethanol by mass, from 0 to 100.
func ABW(pct float64) (Strength, error) {
	if err := quantity.CheckRange("alcoholometry.ABW", "strength", pct, 0, 100, "% mass", ""); err != nil {
		return Strength{}, err
	}
	return Strength{pct / 100, true}, nil
}

// USProof returns the strength of a spirit of the given degrees of proof in the United States, from 0 to 200: twice
// the per cent of ethanol by volume at 60 °F. So 120 proof is 60.05 % vol at 20 °C.
//
// Source: 27 CFR 5.1 and 19.1, "proof".
func USProof(proof float64) (Strength, error) {
	if err := quantity.CheckRange("alcoholometry.USProof", "strength", proof, 0, 200, "US proof", ""); err != nil {
		return Strength{}, err
	}
	return Strength{isothermUS.fractionOfVolumeShare(proof/200, 0), true}, nil
}

// MoleFraction returns the strength of a mixture with x moles of ethanol in each mole, from 0 to 1.
func MoleFraction(x float64) (Strength, error) {
	if err := quantity.CheckRange("alcoholometry.MoleFraction", "mole fraction", x, 0, 1, "", ""); err != nil {
		return Strength{}, err
	}
	if x == 1 {
		return Strength{1, true}, nil
	}
	return Strength{x * MolarMassEthanolG / (x*MolarMassEthanolG + (1-x)*MolarMassWaterG), true}, nil
}

// Molar masses, g/mol. Source: IUPAC Commission on Isotopic Abundances and Atomic Weights, abridged standard atomic
// weights (2021): H 1.008, C 12.011, O 15.999.
const (
	MolarMassEthanolG = 2*12.011 + 6*1.008 + 15.999 // 46.069 g/mol
	MolarMassWaterG   = 2*1.008 + 15.999            // 18.015 g/mol
)

// IsSet reports whether s is a strength. It is false for the zero value only.
func (s Strength) IsSet() bool { return s.set }

// ABV returns the strength in per cent of ethanol by volume at 20 °C. It panics with an *UnsetError if s is unset.
func (s Strength) ABV() float64 {
	w := s.fraction("alcoholometry.Strength.ABV")
	return 100 * w * isotherm20.rho(w) / ethanol20KgM3
}

// ABVAt returns the strength in per cent of ethanol by volume, with spirit and ethanol measured at t, from -20 to
// 40 °C. It panics with an *UnsetError if s is unset, and with a *quantity.RangeError if t is out of range or the
// spirit is frozen there.
func (s Strength) ABVAt(t quantity.Temperature) float64 {
	const fn = "alcoholometry.Strength.ABVAt"
	w := s.fraction(fn)
	if err := checkState(fn, w, t); err != nil {
		panic(err)
	}
	a := isothermAt(t.C())
	return 100 * a.volumeShare(w)
}

// ABW returns the strength in per cent of ethanol by mass. It panics with an *UnsetError if s is unset.
func (s Strength) ABW() float64 { return 100 * s.fraction("alcoholometry.Strength.ABW") }

// USProof returns the strength in degrees of proof of the United States, twice the per cent by volume at 60 °F.
// It panics with an *UnsetError if s is unset.
func (s Strength) USProof() float64 {
	w := s.fraction("alcoholometry.Strength.USProof")
	return 200 * w * isothermUS.rho(w) / ethanolUSKgM3
}

// MoleFraction returns the moles of ethanol in each mole of the mixture, dimensionless, from 0 to 1.
// It panics with an *UnsetError if s is unset.
func (s Strength) MoleFraction() float64 {
	w := s.fraction("alcoholometry.Strength.MoleFraction")
	ethanol, water := w/MolarMassEthanolG, (1-w)/MolarMassWaterG
	return ethanol / (ethanol + water)
}

// String gives the strength in per cent by volume at 20 °C with two decimals, such as "43.00 % vol".
func (s Strength) String() string {
	if !s.set {
		return "unset strength"
	}
	return fmt.Sprintf("%.2f %% vol", math.Max(s.ABV(), 0))
}

// Rows gives the strength in the ways the trade states it, each as a label, a figure and a unit.
func (s Strength) Rows() [][]string {
	if !s.set {
		return [][]string{{"strength", "unset", ""}}
	}
	return [][]string{
		{"strength by volume at 20 °C", fmt.Sprintf("%.2f", s.ABV()), "% vol"},
		{"strength by mass", fmt.Sprintf("%.2f", s.ABW()), "% mass"},
		{"US proof", fmt.Sprintf("%.1f", s.USProof()), "proof"},
	}
}

// fraction returns the mass fraction, dimensionless, and panics if there is none.
func (s Strength) fraction(function string) float64 {
	if !s.set {
		panic(&UnsetError{Func: function, Param: "the strength"})
	}
	return s.w
}
