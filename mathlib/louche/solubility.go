package louche

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Solubility is how much of an oil a spirit takes up before it clouds.
type Solubility struct {
	GL      float64 // g of oil in a litre of spirit, g/L; in parts if the oil is counted so
	LowGL   float64 // the least it may be, g/L
	HighGL  float64 // the most it may be, g/L
	Beyond  bool    // beyond the range of the model: an order of magnitude
	Oil     Oil
	Without alcoholometry.Strength // the strength of the spirit, the oil not counted
	Temp    quantity.Temperature
}

// SolubilityOf returns how much of an oil a spirit of strength s takes up at t, up to 90 % vol and from -25 to 40 °C. Of
// several compounds it is the oil as a whole, at the shares that it has.
//
// Model: log10 S = log10 Sw + σ f, with f the strength in % vol at 20 °C over 100, Sw the solubility in water and σ = 0.95 log Kow +
// 0.30; S(T) = S(25 °C) exp(-ΔH/R (1/T - 1/298.15)) with ΔH 25 kJ/mol, 15 to 35, an estimate. The papers have f as the
// share before mixing, which is smaller by 0.013 at 40 % vol and 0.021 at 60; the check figures this package is held
// against come out with the strength, and a calibration swallows the difference.
//
// Source: Yalkowsky, Solubility and Solubilization in Aqueous Media (1999); Millard, Alvarez-Nunez and Yalkowsky, Int. J. Pharm.
// 245 (2002) 153 (slope, from memory). Accuracy: a factor of about 2 up to 60 % vol and 30 g/L, an order of magnitude beyond;
// after a calibration, as good as the oil's amount is known at that temperature.
func SolubilityOf(o Oil, s alcoholometry.Strength, t quantity.Temperature) (Solubility, error) {
	const fn = "louche.SolubilityOf"
	if err := checkUsable(fn, o); err != nil {
		return Solubility{}, err
	}
	if err := checkPlace(fn, s, t); err != nil {
		return Solubility{}, err
	}
	r := Solubility{Oil: o, Without: s, Temp: t}
	f, k := share(s), t.K()
	at := func(v variant) float64 { return math.Exp(-o.lnLoad(1, f, k, v)) }
	r.GL = at(middle)
	r.LowGL, r.HighGL = r.GL, r.GL
	for _, v := range variants {
		r.LowGL, r.HighGL = math.Min(r.LowGL, at(v)), math.Max(r.HighGL, at(v))
	}
	if 100*f > surePctVol*(1+1e-12) || r.GL > sureGL && !o.inParts {
		r.Beyond = true
		r.LowGL, r.HighGL = math.Min(r.LowGL, r.GL/10), math.Max(r.HighGL, r.GL*10)
	}
	return r, nil
}

// String gives the solubility in one line, with its range and how sure it is.
func (s Solubility) String() string {
	unit := "g/L"
	if s.Oil.inParts {
		unit = "parts"
	}
	how := "estimate"
	switch {
	case s.Beyond:
		how = "beyond the range of the model: an order of magnitude"
	case s.Oil.Calibrated():
		how = "calibrated"
	}
	return fmt.Sprintf("%v at %v holds %s %s of oil clear (%s to %s, %s)", s.Without, s.Temp, quantity.Figure(s.GL), unit,
		quantity.Figure(s.LowGL), quantity.Figure(s.HighGL), how)
}

// variant is one way in which the model may be off: each is taken alone, and the widest counts.
type variant struct {
	spread float64 // -1, 0 or 1: the factor the solubility is good to
	heat   int     // -1, 0 or 1: low, middle or high heat of solution
}

var (
	middle   = variant{}
	variants = []variant{{spread: -1}, {spread: 1}, {heat: -1}, {heat: 1}}
)

// lnS returns ln of the solubility of compound k, in g/L.
func (o Oil) lnS(k int, f, tempK float64, v variant) float64 {
	p := &o.parts[k]
	h := o.heat
	switch v.heat {
	case -1:
		h = o.heatLow
	case 1:
		h = o.heatHigh
	}
	return p.lnSw + (p.sigma+o.slope)*f*math.Ln10 + o.shift + v.spread*math.Log(o.spread) - h/gasJMolK*(1/tempK-1/o.refK)
}

// lnLoad returns ln Σ c/S for oilGL of the oil: above 0 the drink is cloudy. Masses may stand for moles here, since each
// compound is measured against itself.
func (o Oil) lnLoad(oilGL, f, tempK float64, v variant) float64 {
	most := math.Inf(-1)
	for k := range o.parts {
		most = math.Max(most, math.Log(o.parts[k].share)-o.lnS(k, f, tempK, v))
	}
	sum := 0.0
	for k := range o.parts {
		sum += math.Exp(math.Log(o.parts[k].share) - o.lnS(k, f, tempK, v) - most)
	}
	return math.Log(oilGL) + most + math.Log(sum)
}

// Second opinion for anethole: a fit to the equations of Abraham and Acree for ethanol and water.
const sourceAbraham = "Abraham and Acree, J. Solution Chem. 40 (2011) 1279, with estimated descriptors of anethole (from memory)"

// AnetholeByDescriptorsGL returns what another model says of trans-anethole at 25 °C, g/L, from 0 to 60 % vol: log10(S/Sw) = 1.970
// f + 8.149 f² - 7.453 f³. It is for comparing, never for averaging: where the two models disagree, no measurement decides.
//
// Source: Abraham and Acree, J. Solution Chem. 40 (2011) 1279, with estimated descriptors (from memory). It has 1.6 times the
// solubility of the log-linear model at 40 % vol and 2.5 times at 60.
func AnetholeByDescriptorsGL(s alcoholometry.Strength) (float64, error) {
	const fn = "louche.AnetholeByDescriptorsGL"
	if err := alcoholometry.CheckSet(fn, "the drink's strength", s); err != nil {
		return 0, err
	}
	if err := quantity.CheckRange(fn, "strength", s.ABV(), 0, surePctVol*(1+1e-12), "% vol", sourceAbraham); err != nil {
		return 0, err
	}
	o, err := OilOf("trans-anethole")
	if err != nil {
		return 0, as(fn, err)
	}
	f := share(s)
	return math.Exp(o.parts[0].lnSw) * math.Pow(10, f*(1.970+f*(8.149-7.453*f))), nil
}
