package louche

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Composition is a mixture of water, ethanol and oil, in mass fractions that add up to 1.
type Composition struct {
	Water   float64 // mass fraction, dimensionless
	Ethanol float64 // mass fraction, dimensionless
	Oil     float64 // mass fraction, dimensionless
}

// TieLine joins the two liquids that a mixture parts into.
type TieLine struct {
	OilRich Composition
	Watery  Composition
}

// Curve is a line in the triangle, in columns for a chart.
type Curve struct {
	Water   []float64 // mass fractions, dimensionless
	Ethanol []float64 // mass fractions, dimensionless
	Oil     []float64 // mass fractions, dimensionless
}

func (c *Curve) add(p Composition) {
	c.Water, c.Ethanol, c.Oil = append(c.Water, p.Water), append(c.Ethanol, p.Ethanol), append(c.Oil, p.Oil)
}

// Triangle is the region of two liquids of ethanol, water and an oil. Of it only the watery side is computed.
type Triangle struct {
	Oil  Oil
	Temp quantity.Temperature

	Watery  Curve // where the watery liquid is just clear, up to 60 % vol: the model
	Beyond  Curve // its continuation to 90 % vol: an order of magnitude, to be drawn dashed
	OilRich Curve // the other side, QUALITATIVE: the shape of limonene's measured one, to be drawn dashed

	TieLines []TieLine // measured at 30 °C; of limonene only
	Note     string
}

// TriangleOf returns the region of two liquids of ethanol, water and an oil at t, in mass fractions. The watery side follows
// from the solubility; the side rich in oil is known for limonene only and lends its shape to every other oil: the whole
// figure is qualitative, and no plait point is computed.
//
// Source: the model of SolubilityOf; Chafer and others, Fluid Phase Equilib. 224 (2004) 251 for limonene at 30 °C. The gap closes near
// 0.73 of ethanol for limonene and 0.45 for citral at 20 °C (J. Chem. Eng. Data 40 (1995) 578).
func TriangleOf(o Oil, t quantity.Temperature) (Triangle, error) {
	const fn = "louche.TriangleOf"
	if err := checkUsable(fn, o); err != nil {
		return Triangle{}, err
	}
	if o.inParts {
		return Triangle{}, fmt.Errorf("%s: the oil is counted in parts, and a triangle needs grams; weigh the oil", fn)
	}
	if err := checkPlace(fn, alcoholometry.Water, t); err != nil {
		return Triangle{}, err
	}
	r := Triangle{Oil: o, Temp: t, Note: "qualitative: watery side by the model (factor of about 2), side rich in oil by the shape of limonene's"}
	for pct := 0.0; pct <= mostPctVol; pct++ {
		s, err := alcoholometry.ABV(pct)
		if err != nil {
			return Triangle{}, as(fn, err)
		}
		c, ok, err := o.wateryAt(fn, s, t)
		if err != nil {
			return Triangle{}, err
		}
		if !ok {
			break
		}
		if pct <= surePctVol {
			r.Watery.add(c)
		}
		if pct >= surePctVol {
			r.Beyond.add(c)
		}
	}
	tab := embedded()
	for _, l := range tab.tieLines {
		r.OilRich.add(l.OilRich)
	}
	if len(o.parts) == 1 && o.parts[0].name == "limonene" {
		r.TieLines = append(r.TieLines, tab.tieLines...)
		r.Note += "; tie-lines measured at 30 °C (" + tab.tieFrom.Source + ")"
	}
	return r, nil
}

// wateryAt returns the composition of a spirit just clear; false if the oil would fill the litre.
func (o Oil) wateryAt(function string, s alcoholometry.Strength, t quantity.Temperature) (Composition, bool, error) {
	at := t
	if t.C() < 0 {
		at = quantity.Temperature{} // only the density of the spirit, which no water at all has below 0 °C
	}
	rho, err := alcoholometry.DensityKgM3(s, at)
	if err != nil {
		return Composition{}, false, as(function, err)
	}
	gl := math.Exp(-o.lnLoad(1, share(s), t.K(), middle))
	litres := 0.0 // of oil in a gram
	for _, p := range o.parts {
		litres += p.share / p.densityKgM3
	}
	solvent := (1 - gl*litres) * rho
	if solvent <= 0 {
		return Composition{}, false, nil
	}
	oil := gl / (gl + solvent)
	w := s.ABW() / 100
	return Composition{Water: (1 - oil) * (1 - w), Ethanol: (1 - oil) * w, Oil: oil}, true, nil
}

// DilutionLine returns the way of a drink as water is added: in mass fractions a straight line towards the water corner.
func DilutionLine(d Drink, o Oil) (Curve, error) {
	const fn = "louche.DilutionLine"
	if err := checkUsable(fn, o); err != nil {
		return Curve{}, err
	}
	if err := checkDrink(fn, d, o); err != nil {
		return Curve{}, err
	}
	if o.inParts {
		return Curve{}, fmt.Errorf("%s: the oil is counted in parts, and a triangle needs grams; weigh the oil", fn)
	}
	rho, err := alcoholometry.DensityKgM3(d.Strength, quantity.Temperature{})
	if err != nil {
		return Curve{}, as(fn, err)
	}
	litres := 0.0
	for _, p := range o.parts {
		litres += d.OilGL * p.share / p.densityKgM3
	}
	solvent := (1 - litres) * rho
	if solvent <= 0 {
		return Curve{}, fmt.Errorf("%s: %s of oil fills the litre; give less", fn, unitText(d.OilGL, o))
	}
	oil := d.OilGL / (d.OilGL + solvent)
	w := d.Strength.ABW() / 100
	var c Curve
	c.add(Composition{(1 - oil) * (1 - w), (1 - oil) * w, oil})
	c.add(Composition{Water: 1})
	return c, nil
}

// String says in one line what the triangle shows.
func (t Triangle) String() string {
	return fmt.Sprintf("ethanol, water and %s at %v, %d tie-lines; %s", t.Oil, t.Temp, len(t.TieLines), t.Note)
}
