package packing

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// LabelRule is how far the strength may be from the one on the label.
type LabelRule struct {
	Name         string
	PlusMinusABV float64              // allowed either way, % vol
	MeasuredAt   quantity.Temperature // the temperature of the strength by volume; 20 °C if unset
	Decimals     int                  // decimals that the label may show; -1 if any
	Source       string
}

// EULabel returns the rule of the European Union for spirits: ± 0.3 % vol at 20 °C, the label with at most one decimal.
//
// Source: Regulation (EU) 1169/2011, annex XII (in force from 13 December 2014).
func EULabel() LabelRule {
	return LabelRule{"European Union, spirits", 0.3, quantity.Temperature{}, 1, "Regulation (EU) 1169/2011, annex XII"}
}

// EUMaceratedLabel returns the rule of the European Union for drinks with macerated fruit or parts of plants in them: ±
// 1.5 % vol at 20 °C.
//
// Source: Regulation (EU) 1169/2011, annex XII (in force from 13 December 2014).
func EUMaceratedLabel() LabelRule {
	return LabelRule{"European Union, with macerated fruit or plants in it", 1.5, quantity.Temperature{}, 1, "Regulation (EU) 1169/2011, annex XII"}
}

// USLabel returns the rule of the United States: ± 0.3 % vol, measured at 60 °F.
//
// Source: 27 CFR 19.356(c) (as of October 2022); 27 CFR 5.65 has the same figure (T.D. TTB-158, from memory, as is the
// temperature).
func USLabel() (LabelRule, error) {
	t, err := quantity.Fahrenheit(60)
	if err != nil {
		return LabelRule{}, as("packing.USLabel", err)
	}
	return LabelRule{"United States", 0.3, t, -1, "27 CFR 19.356(c) and 5.65"}, nil
}

// Label is a strength measured against the one on the label.
type Label struct {
	Rule           LabelRule
	LabelABV       float64                // on the label, % vol
	Strength       alcoholometry.Strength // as measured
	UncertaintyABV float64                // its standard uncertainty (half of the one with k = 2), % vol; above 0
}

// LabelChance is the chance that the strength is within the tolerance of the label.
type LabelChance struct {
	Label       Label
	MeasuredABV float64 // the measured strength at the rule's temperature, % vol
	Within      float64 // the chance that the true strength is within the tolerance, dimensionless
	Below       float64 // that it is below, dimensionless
	Above       float64 // that it is above, dimensionless
	MarginABV   float64 // how far a measured strength may be from the label with Within of at least 0.95, % vol; if MarginOK
	MarginOK    bool    // false if the uncertainty is too large for 0.95 even on the label's strength
	Warning     string  // for a label with more decimals than the rule allows; else empty
}

// marginChance is the chance asked of MarginABV, dimensionless. Common practice, no source: the usual 95 per cent.
const marginChance = 0.95

// LabelChanceOf returns the chance that the true strength is within the tolerance of the label, given a measured strength
// and its standard uncertainty, both ways normal. Sugar or extract that make an instrument show too little are not in it.
// It fails with an *alcoholometry.UnsetError, and for a label not between 0 and 100 % vol, a tolerance or an uncertainty
// that is not above 0.
//
// Source: JCGM 106:2012, 7 (conformance probability, normal distribution); the clause from memory.
func LabelChanceOf(l Label) (LabelChance, error) {
	const fn = "packing.LabelChanceOf"
	if err := quantity.CheckRange(fn, "the label", l.LabelABV, 0, 100, "% vol", ""); err != nil {
		return LabelChance{}, err
	}
	if err := above0(fn, "the tolerance", l.Rule.PlusMinusABV, "% vol"); err != nil {
		return LabelChance{}, err
	}
	if err := above0(fn, "the uncertainty of the strength", l.UncertaintyABV, "% vol"); err != nil {
		return LabelChance{}, err
	}
	if err := alcoholometry.CheckSpirit(fn, alcoholometry.Spirit{Strength: l.Strength, Temp: l.Rule.MeasuredAt}); err != nil {
		return LabelChance{}, err
	}
	c := LabelChance{Label: l, MeasuredABV: l.Strength.ABVAt(l.Rule.MeasuredAt)}
	tol, u := l.Rule.PlusMinusABV, l.UncertaintyABV
	off := c.MeasuredABV - l.LabelABV
	c.Below = normalBelow((-tol - off) / u)
	c.Above = normalBelow((off - tol) / u)
	c.Within = within(off, tol, u)
	c.MarginABV, c.MarginOK = margin(tol, u)
	c.Warning = decimalsWarning(l)
	return c, nil
}

// within returns the chance, dimensionless, that a value measured off its mark with the standard uncertainty u is within
// tol of the mark.
func within(off, tol, u float64) float64 {
	off = math.Abs(off)
	return normalBelow((tol-off)/u) - normalBelow((-tol-off)/u)
}

// margin returns how far off the mark, % vol, a measured strength keeps marginChance.
func margin(tol, u float64) (offABV float64, ok bool) {
	if within(0, tol, u) < marginChance {
		return 0, false
	}
	low, high := 0.0, tol
	for range 60 {
		if mid := (low + high) / 2; within(mid, tol, u) >= marginChance {
			low = mid
		} else {
			high = mid
		}
	}
	return low, true
}

func decimalsWarning(l Label) string {
	if l.Rule.Decimals < 0 {
		return ""
	}
	scale := math.Pow(10, float64(l.Rule.Decimals))
	if x := l.LabelABV * scale; math.Abs(x-math.Round(x)) < 1e-9*scale {
		return ""
	}
	return fmt.Sprintf("a label of %s %% vol has more than %d decimal (%s)", plain(l.LabelABV), l.Rule.Decimals, l.Rule.Source)
}
