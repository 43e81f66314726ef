package packing_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/packing"
)

// On the label's strength the chance of being within z uncertainties is 2 Φ(z) - 1; on the limit it is half.
func TestLabelChanceAgainstTheNormalTable(t *testing.T) {
	for _, r := range table(t, "normal_distribution.csv") {
		z, share := r.number("z"), r.number("share")
		if z > 0 {
			c := the(packing.LabelChanceOf(packing.Label{Rule: packing.EULabel(), LabelABV: 40, Strength: abv(40), UncertaintyABV: 0.3 / z}))
			if want := 2*share - 1; math.Abs(c.Within-want) > 1.2e-5 {
				t.Errorf("z = %g: within with %.6f; the normal table gives %.5f", z, c.Within, want)
			}
		}
		// Below the limit by z: Φ(-z) up to the far limit, 6.0/0.1 uncertainties away.
		c := the(packing.LabelChanceOf(packing.Label{Rule: packing.LabelRule{PlusMinusABV: 3}, LabelABV: 40, Strength: abv(37 - 0.1*z), UncertaintyABV: 0.1}))
		if math.Abs(c.Within-(1-share)) > 0.6e-5 || math.Abs(c.Below-share) > 0.6e-5 {
			t.Errorf("%g beyond the limit: within with %.6f; the normal table gives %.5f", z, c.Within, 1-share)
		}
	}
}

func TestLabelChancesAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := packing.Label{
			Rule:           rapid.SampledFrom([]packing.LabelRule{packing.EULabel(), packing.EUMaceratedLabel(), the(packing.USLabel())}).Draw(t, "rule"),
			LabelABV:       rapid.Float64Range(15, 96).Draw(t, "label"),
			UncertaintyABV: rapid.Float64Range(0.01, 1).Draw(t, "u"),
		}
		l.Strength = abv(l.LabelABV + rapid.Float64Range(-1, 1).Draw(t, "off"))
		c := the(packing.LabelChanceOf(l))
		if sum := c.Within + c.Below + c.Above; math.Abs(sum-1) > 1e-12 {
			t.Fatalf("the chances are %.15g in all", sum)
		}
		if c.MarginOK != (l.UncertaintyABV <= l.Rule.PlusMinusABV/1.959964) {
			t.Fatalf("u = %g: margin %v", l.UncertaintyABV, c.MarginOK)
		}
		if c.MarginOK {
			l.Strength, l.Rule.MeasuredAt = abv(l.LabelABV), celsius(20)
			l.LabelABV += c.MarginABV
			if at := the(packing.LabelChanceOf(l)); math.Abs(at.Within-0.95) > 1e-6 {
				t.Fatalf("on the margin of %g %% vol the chance is %.9g", c.MarginABV, at.Within)
			}
		}
	})
}

func TestLabelAtTheTemperatureOfTheRule(t *testing.T) {
	// 27 CFR 19.356(d): 40 % is met from 39.7 to 40.3, at 60 °F: 80.6 proof is 40.3.
	us := the(packing.USLabel())
	inside := the(packing.LabelChanceOf(packing.Label{Rule: us, LabelABV: 40, Strength: proof(80.59), UncertaintyABV: 1e-6}))
	outside := the(packing.LabelChanceOf(packing.Label{Rule: us, LabelABV: 40, Strength: proof(80.61), UncertaintyABV: 1e-6}))
	if inside.Within < 0.999 || outside.Within > 0.001 {
		t.Errorf("80.59 proof: %v; 80.61 proof: %v", inside, outside)
	}
	if math.Abs(inside.MeasuredABV-40.295) > 1e-9 {
		t.Errorf("80.59 proof is %.9g %% vol at 60 °F; by definition half of it", inside.MeasuredABV)
	}
}

func TestLabelRefuses(t *testing.T) {
	fine := packing.Label{Rule: packing.EULabel(), LabelABV: 40, Strength: abv(40.1), UncertaintyABV: 0.1}
	for name, change := range map[string]func(*packing.Label){
		"no tolerance":         func(l *packing.Label) { l.Rule.PlusMinusABV = 0 },
		"no uncertainty":       func(l *packing.Label) { l.UncertaintyABV = 0 },
		"negative uncertainty": func(l *packing.Label) { l.UncertaintyABV = -0.1 },
		"no strength":          func(l *packing.Label) { l.Strength = alcoholometry.Strength{} },
		"no label":             func(l *packing.Label) { l.LabelABV = 140 },
		"not a number":         func(l *packing.Label) { l.LabelABV = math.NaN() },
	} {
		l := fine
		change(&l)
		if c, err := packing.LabelChanceOf(l); err == nil {
			t.Errorf("%s: %v and no error", name, c)
		}
	}
	if c := the(packing.LabelChanceOf(fine)); c.Warning != "" {
		t.Errorf("40 %% vol: %s", c.Warning)
	}
	fine.LabelABV = 40.05 // Regulation (EU) 1169/2011, annex XII: at most one decimal
	if c := the(packing.LabelChanceOf(fine)); c.Warning == "" {
		t.Error("a label of 40.05 % vol and no warning")
	}
}
