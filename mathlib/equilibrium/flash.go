package equilibrium

import (
	"math"

	"swanneck/mathlib/quantity"
)

// Flash returns liquid and vapour into which a feed with the mole fraction z of ethanol parts under pKPa kilopascal if
// the share vapour of its moles (dimensionless, from 0 to 1) is boiled off and stays in equilibrium with the rest. It
// fails as Bubble does.
func (p *Pair) Flash(z, pKPa, vapour float64) (State, error) {
	const fn = "equilibrium.Pair.Flash"
	if err := checkFeed(fn, z, vapour); err != nil {
		return State{}, err
	}
	if err := checkPressure(fn, pKPa); err != nil {
		return State{}, err
	}
	return p.flash(fn, z, pKPa, vapour)
}

func (p *Pair) flash(function string, z, pKPa, vapour float64) (State, error) {
	last, err := p.dew(function, z, pKPa)
	if err != nil {
		return State{}, err
	}
	lnP := math.Log(pKPa * 1000)
	x := partLiquid(z, last.X, vapour, func(x float64) float64 {
		_, y, _, _ := p.boil(x, lnP)
		return y
	})
	return p.bubble(function, x, pKPa)
}

// FlashAt is Flash at a temperature instead of a pressure. It fails as BubbleAt does.
func (p *Pair) FlashAt(z, tempK, vapour float64) (State, error) {
	const fn = "equilibrium.Pair.FlashAt"
	if err := checkFeed(fn, z, vapour); err != nil {
		return State{}, err
	}
	if err := checkTemp(fn, tempK); err != nil {
		return State{}, err
	}
	last, err := p.dewAt(fn, z, tempK)
	if err != nil {
		return State{}, err
	}
	x := partLiquid(z, last.X, vapour, func(x float64) float64 {
		lnE, lnW, _, _ := p.volatility(x, tempK)
		e, w := x*math.Exp(lnE), (1-x)*math.Exp(lnW)
		return e / (e + w)
	})
	return p.pressureState(fn, x, tempK)
}

// partLiquid solves z = (1-v)x + v y(x) for x, which lies between the feed (v = 0) and the last drop (v = 1) and is one,
// because y rises with x.
func partLiquid(z, last, v float64, vapourOver func(float64) float64) float64 {
	balance := func(x float64) float64 { return x + v*(vapourOver(x)-x) - z }
	a, b := math.Min(z, last), math.Max(z, last)
	fa, fb := balance(a), balance(b)
	switch { // at the ends rounding may leave the sign on the wrong side
	case !(fa < 0):
		return a
	case !(fb > 0):
		return b
	}
	return root(balance, a, b, fa, fb)
}

// FlashTP returns liquid and vapour into which a feed with the mole fraction z of ethanol parts at tempK under pKPa
// kilopascal, and the share of its moles that is vapour, dimensionless. Where there is only liquid, or only vapour, the
// share is 0 or 1, and both fractions of the State are z. It fails as Bubble and BubbleAt do.
func (p *Pair) FlashTP(z, tempK, pKPa float64) (s State, vapour float64, err error) {
	const fn = "equilibrium.Pair.FlashTP"
	if err := rangeOf(fn, "mole fraction of ethanol in the feed", z, pKPa); err != nil {
		return State{}, 0, err
	}
	if err := checkTemp(fn, tempK); err != nil {
		return State{}, 0, err
	}
	boils, err := p.bubble(fn, z, pKPa)
	if err != nil {
		return State{}, 0, err
	}
	dry, err := p.dew(fn, z, pKPa)
	switch {
	case err != nil:
		return State{}, 0, err
	case tempK <= boils.TempK:
		return State{z, z, tempK, pKPa}, 0, nil
	case tempK >= dry.TempK:
		return State{z, z, tempK, pKPa}, 1, nil
	}
	// Between the feed and the last drop there is one liquid that boils at this temperature: both lie on the same side
	// of the azeotrope, where the boiling temperature only rises or only falls.
	lnP := math.Log(pKPa * 1000)
	off := func(x float64) float64 {
		t, _, _, _ := p.boil(x, lnP)
		return t - tempK
	}
	x := root(off, z, dry.X, boils.TempK-tempK, dry.TempK-tempK)
	if s, err = p.bubble(fn, x, pKPa); err != nil {
		return State{}, 0, err
	}
	return s, (z - s.X) / (s.Y - s.X), nil
}

func checkFeed(function string, z, vapour float64) error {
	if err := checkFraction(function, "mole fraction of ethanol in the feed", z); err != nil {
		return err
	}
	return quantity.CheckRange(function, "share of vapour", vapour, 0, 1, "", "")
}
