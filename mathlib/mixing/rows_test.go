package mixing_test

import (
	"fmt"
	"strings"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

type shown interface {
	fmt.Stringer
	Rows() [][]string
}

// What a cell may show: one line, and a table without a hole in it. Empty values are shown too, not answered with a panic.
func TestEveryResultShows(t *testing.T) {
	spirit := alcoholometry.Spirit{VolumeL: 100, Strength: abv(70)}
	liqueur := mixing.Liqueur{VolumeL: 10, Strength: abv(25), SugarGL: 100}
	impossible := casks()
	impossible.Strength = abv(80)
	for _, c := range []struct {
		full, empty shown
		row         string // a part of the table of the full one
	}{
		{the(mixing.Reduce(spirit, abv(40))), mixing.Reduction{}, "contraction"},
		{the(mixing.PlanSteps(mixing.StepOrder{Spirit: spirit, To: abv(40)})), mixing.StepPlan{}, "ready | day 6"},
		{the(mixing.Strengthen(spirit, abv(75), alcoholometry.Spirit{VolumeL: 50, Strength: abv(96)})), mixing.Strengthening{}, "add of the spirit at 96.00 % vol"},
		{liqueur, mixing.Liqueur{}, "sugar in a litre | 100.00 | g/L"},
		{the(mixing.MakeLiqueur(liqueur, mixing.LiqueurFrom{Spirit: abv(96), SyrupPct: 60})), mixing.LiqueurRecipe{}, "syrup of 60 % by mass that brings it | 1.67 | kg"},
		{the(mixing.ReduceLiqueur(liqueur, abv(20))), mixing.LiqueurReduction{}, "sugar in a litre then | 80.00"},
		{the(mixing.TrueStrengthWithExtract(mixing.Extracted{Apparent: abv(40), Extract: the(quantity.GL(5))})), mixing.Obscuration{}, "extract | 5.00 | g/L"},
		{the(mixing.USObscured(mixing.USSolids{ApparentProof: 84, SolidsMg: 500})), mixing.USObscuration{}, "true proof by the rule | 86.0"},
		{the(mixing.CylinderTable(mixing.Cylinder{DiameterMM: 1000, LengthMM: 1000}, 500)), mixing.DipTable{}, "500 | 392.70"},
		{the(mixing.BlendLots(casks())), mixing.BlendPlan{}, "methanol | 600.00 g/hL of pure alcohol | at most 600.00 g/hL of pure alcohol"},
		{the(mixing.WhatBlocks(impossible)), mixing.Blockage{}, "the strength | at least | 80.000 |"},
	} {
		if s := c.full.String(); s == "" || strings.Contains(s, "\n") || strings.Contains(s, "%!") {
			t.Errorf("%T: %q", c.full, s)
		}
		var lines []string
		for _, row := range c.full.Rows() {
			lines = append(lines, strings.Join(row, " | "))
		}
		text := strings.Join(lines, "\n")
		if !strings.Contains(text, c.row) || strings.Contains(text, "%!") || strings.Contains(text, "NaN") {
			t.Errorf("%T: no row with %q:\n%s", c.full, c.row, text)
		}
		_ = c.empty.String()
		_ = c.empty.Rows()
	}
}
