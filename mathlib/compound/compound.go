package compound

import (
	"fmt"
	"slices"
	"strconv"

	"swanneck/mathlib/quantity"
)

// Compound is one compound and what is known about it. Find returns one. What is not known has a From that says so.
type Compound struct {
	Name       string
	Synonyms   []string
	CAS        string // registry number
	Formula    string
	MolarMassG float64 // g/mol, from the formula
	Identity   Provenance

	Vapour       VapourPressure
	Density      Density
	Octanol      OctanolWater
	Solubility   Solubility
	Henry        Henry
	Groups       Groups
	InWater      WaterAnchor
	Vaporisation HeatOfVaporisation // ethanol and water only
	Heat         LiquidHeat         // ethanol and water only
}

// Density is the density of the pure compound as a liquid (of a solid: as its source lists it).
type Density struct {
	KgM3  float64 // kg/m³
	TempC float64 // at this temperature, °C
	From  Provenance
}

// OctanolWater says how a compound parts between octanol and water.
type OctanolWater struct {
	LogKow float64 // decimal logarithm of the ratio of concentrations, dimensionless, near 25 °C
	From   Provenance
}

// Solubility is how much of a compound water takes up.
type Solubility struct {
	GL    float64 // g/L
	TempC float64 // at this temperature, °C
	From  Provenance
}

// Henry is Henry's constant in water at 25 °C.
type Henry struct {
	MolM3Pa float64 // dissolved per partial pressure; the unit is mol/m³ per Pa
	SlopeK  float64 // d ln H/d(1/T), K; 0 if not known
	From    Provenance
}

// Group is a subgroup of a UNIFAC method and how often it stands in the molecule.
type Group struct {
	Sub   int // number of the subgroup
	Count int
}

// Groups says how a molecule is put together of groups.
type Groups struct {
	Original []Group // for the original UNIFAC
	Dortmund []Group // for the modified UNIFAC (Dortmund)
	From     Provenance
}

// Base names the group method that a compound's activity coefficients are taken from.
type Base string

// The two methods.
const (
	Original Base = "original" // UNIFAC
	Dortmund Base = "dortmund" // modified UNIFAC (Dortmund)
)

// WaterAnchor is a measured activity coefficient at infinite dilution in water, to which the group method is pulled.
type WaterAnchor struct {
	GammaInf float64 // dimensionless; 0 if none is taken
	TempC    float64 // at this temperature, °C
	Base     Base    // the group method
	From     Provenance
}

// Measured reports whether there is an anchor.
func (a WaterAnchor) Measured() bool { return a.GammaInf > 0 }

// String gives the compound's name, formula and molar mass.
func (c *Compound) String() string {
	return fmt.Sprintf("%s, %s, %.3f g/mol", c.Name, c.Formula, c.MolarMassG)
}

// Cautions lists in plain words which numbers of the compound are not published for this very compound, and why.
func (c *Compound) Cautions() []string {
	var out []string
	for _, f := range c.facts() {
		if f.from.Known() && (!f.from.Sure() || f.from.Note != "") {
			out = append(out, f.what+" "+f.from.String())
		}
	}
	return out
}

// Rows gives what is known about the compound, each as a label, a figure and a unit, with its status in the label where
// it is not published.
func (c *Compound) Rows() [][]string {
	rows := [][]string{
		{"name", c.Name, ""},
		{"registry number", c.CAS, ""},
		{"formula", c.Formula, ""},
		{"molar mass", strconv.FormatFloat(c.MolarMassG, 'f', 3, 64), "g/mol"},
	}
	if t, err := c.BoilingPoint(quantity.Pressure{}); err == nil {
		rows = append(rows, []string{"boiling point at " + quantity.Pressure{}.String() + label(c.Vapour.From), fmt.Sprintf("%.1f", t.C()), "°C"})
	}
	add := func(from Provenance, what string, x float64, decimals int, unit string) {
		if from.Known() {
			rows = append(rows, []string{what + label(from), strconv.FormatFloat(x, 'f', decimals, 64), unit})
		}
	}
	add(c.Density.From, fmt.Sprintf("density at %g °C", c.Density.TempC), c.Density.KgM3, 1, "kg/m³")
	add(c.Octanol.From, "octanol over water, log10", c.Octanol.LogKow, 2, "")
	if c.Solubility.From.Known() {
		rows = append(rows, []string{fmt.Sprintf("solubility in water at %g °C", c.Solubility.TempC) + label(c.Solubility.From), quantity.Figure(c.Solubility.GL), "g/L"})
	}
	if c.InWater.Measured() {
		rows = append(rows, []string{fmt.Sprintf("activity coefficient in water at %g °C", c.InWater.TempC) + label(c.InWater.From), threeDigits(c.InWater.GammaInf), ""})
	}
	return rows
}

// threeDigits prints x, dimensionless, to three significant digits without an exponent.
func threeDigits(x float64) string {
	x, _ = strconv.ParseFloat(strconv.FormatFloat(x, 'g', 3, 64), 64)
	return strconv.FormatFloat(x, 'f', -1, 64)
}

// label gives a status in brackets, and nothing for a published number.
func label(p Provenance) string {
	if p.Sure() {
		return ""
	}
	return " (" + p.Status.Words() + ")"
}

type fact struct {
	what string
	from Provenance
}

func (c *Compound) facts() []fact {
	return []fact{
		{"vapour pressure", c.Vapour.From},
		{"density", c.Density.From},
		{"octanol over water", c.Octanol.From},
		{"solubility", c.Solubility.From},
		{"Henry's constant", c.Henry.From},
		{"groups", c.Groups.From},
		{"activity coefficient in water", c.InWater.From},
		{"heat of vaporisation", c.Vaporisation.From},
		{"heat capacity", c.Heat.From},
	}
}

// clone returns a copy that shares nothing, so that nobody changes the numbers of somebody else.
func (c *Compound) clone() *Compound {
	d := *c
	d.Synonyms = slices.Clone(c.Synonyms)
	d.Groups.Original = slices.Clone(c.Groups.Original)
	d.Groups.Dortmund = slices.Clone(c.Groups.Dortmund)
	return &d
}
