package compound

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// HeatOfVaporisation is the equation of a compound's heat of vaporisation.
type HeatOfVaporisation struct {
	MinC, MaxC float64 // the range of the equation, °C
	From       Provenance

	c   [4]float64 // C1 in J/mol, the others dimensionless
	tcK float64
}

// JMol returns the heat of vaporisation at tempK, J/mol: C1 (1-Tr)^(C2 + C3 Tr + C4 Tr²). It checks nothing, and is no
// number above the critical temperature.
//
// Source: Perry's Chemical Engineers' Handbook, 8th edition, table 2-150. Accuracy: 1 %.
func (h *HeatOfVaporisation) JMol(tempK float64) float64 {
	tr := tempK / h.tcK
	return h.c[0] * math.Pow(1-tr, h.c[1]+tr*(h.c[2]+tr*h.c[3]))
}

// VaporisationKJMol returns the heat of vaporisation at t, kJ/mol. Only ethanol and water have one. It fails with a
// *quantity.RangeError outside the range of the equation.
//
// Source: Perry's Chemical Engineers' Handbook, 8th edition, table 2-150. Accuracy: 1 %.
func (c *Compound) VaporisationKJMol(t quantity.Temperature) (float64, error) {
	const fn = "compound.VaporisationKJMol"
	h := &c.Vaporisation
	if err := c.checkHeat(fn, "heat of vaporisation", h.From, t, h.MinC, h.MaxC); err != nil {
		return 0, err
	}
	return h.JMol(t.K()) / 1000, nil
}

// LiquidHeat is the equation of the heat capacity of a liquid compound.
type LiquidHeat struct {
	MinC, MaxC float64 // the range of the equation, °C
	From       Provenance

	c [5]float64 // J/(mol K), by powers of T in K
}

// CapacityJMolK returns the heat capacity of the liquid at tempK, J/(mol K). It checks nothing.
//
// Source: Perry's Chemical Engineers' Handbook, 8th edition, table 2-153. Accuracy: 1 %.
func (h *LiquidHeat) CapacityJMolK(tempK float64) float64 {
	c := &h.c
	return c[0] + tempK*(c[1]+tempK*(c[2]+tempK*(c[3]+tempK*c[4])))
}

// WarmingJMol returns the heat that warms the liquid from fromK to toK, J/mol: the integral of CapacityJMolK. It checks
// nothing.
func (h *LiquidHeat) WarmingJMol(fromK, toK float64) float64 {
	return h.integral(toK) - h.integral(fromK)
}

func (h *LiquidHeat) integral(t float64) float64 {
	c := &h.c
	return t * (c[0] + t*(c[1]/2+t*(c[2]/3+t*(c[3]/4+t*c[4]/5))))
}

// LiquidHeatCapacityJMolK returns the heat capacity of the liquid at t, J/(mol K). Only ethanol and water have one. It
// fails with a *quantity.RangeError outside the range of the equation.
//
// Source: Perry's Chemical Engineers' Handbook, 8th edition, table 2-153. Accuracy: 1 %.
func (c *Compound) LiquidHeatCapacityJMolK(t quantity.Temperature) (float64, error) {
	const fn = "compound.LiquidHeatCapacityJMolK"
	h := &c.Heat
	if err := c.checkHeat(fn, "heat capacity", h.From, t, h.MinC, h.MaxC); err != nil {
		return 0, err
	}
	return h.CapacityJMolK(t.K()), nil
}

func (c *Compound) checkHeat(function, what string, from Provenance, t quantity.Temperature, minC, maxC float64) error {
	if !from.Known() {
		return fmt.Errorf("%s: %s has no %s here; ethanol and water have", function, c.Name, what)
	}
	return quantity.CheckRange(function, "temperature", t.C(), minC, maxC, "°C", c.Name+", "+from.Source)
}
