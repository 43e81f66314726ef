package equilibrium

import (
	"math"
)

// The vapour holds more ethanol the more the liquid holds, in every model here, so that for each vapour there is one
// liquid. It is sought by the logarithm z of x/(1-x): there the vapour's logarithm is z + lnα, and lnα lies between the
// bounds below, with room to spare (it goes from about 2.6 in water to -0.9 in ethanol).
const leastLnAlpha, mostLnAlpha = -4.0, 8.0

// liquidFor returns the mole fraction x of ethanol whose vapour holds y, where lnAlpha gives the logarithm of the ratio
// of y/x of ethanol to that of water. ok is false if that lies outside its bounds.
func liquidFor(y float64, lnAlpha func(x float64) float64) (x float64, ok bool) {
	if y == 0 || y == 1 {
		return y, true
	}
	target := math.Log(y / (1 - y))
	f := func(z float64) float64 { return z + lnAlpha(fromLogit(z)) - target }
	low, high := target-mostLnAlpha, target-leastLnAlpha
	fLow, fHigh := f(low), f(high)
	if !(fLow <= 0 && fHigh >= 0) {
		return 0, false
	}
	return fromLogit(root(f, low, high, fLow, fHigh)), true
}

func fromLogit(z float64) float64 {
	if z > 0 {
		return 1 / (1 + math.Exp(-z))
	}
	e := math.Exp(z)
	return e / (1 + e)
}

// Dew returns the state in which a vapour with the mole fraction y of ethanol begins to condense under pKPa kilopascal:
// its X is the first drop. It fails as Bubble does.
//
// Accuracy: Bubble of the liquid gives y back to 1e-12.
func (p *Pair) Dew(y, pKPa float64) (State, error) {
	const fn = "equilibrium.Pair.Dew"
	if !(y >= 0 && y <= 1 && pKPa >= lowestKPa && pKPa <= highestKPa) {
		return State{}, rangeOf(fn, "mole fraction of ethanol in the vapour", y, pKPa)
	}
	return p.dew(fn, y, pKPa)
}

func (p *Pair) dew(function string, y, pKPa float64) (State, error) {
	lnP := math.Log(pKPa * 1000)
	x, ok := liquidFor(y, func(x float64) float64 {
		_, _, lnAlpha, rounds := p.boil(x, lnP)
		if rounds == 0 {
			return math.NaN()
		}
		return lnAlpha
	})
	if !ok {
		return State{}, &ConvergenceError{Func: function, Model: p.name, X: y, PKPa: pKPa}
	}
	s, err := p.bubble(function, x, pKPa)
	s.Y = y
	return s, err
}

// DewAt returns the state in which a vapour with the mole fraction y of ethanol begins to condense at tempK as its
// pressure rises. It fails as BubbleAt does.
func (p *Pair) DewAt(y, tempK float64) (State, error) {
	const fn = "equilibrium.Pair.DewAt"
	if err := checkFraction(fn, "mole fraction of ethanol in the vapour", y); err != nil {
		return State{}, err
	}
	if err := checkTemp(fn, tempK); err != nil {
		return State{}, err
	}
	return p.dewAt(fn, y, tempK)
}

func (p *Pair) dewAt(function string, y, tempK float64) (State, error) {
	x, ok := liquidFor(y, func(x float64) float64 {
		lnE, lnW, _, _ := p.volatility(x, tempK)
		return lnE - lnW
	})
	if !ok {
		return State{}, &ConvergenceError{Func: function, Model: p.name, X: y}
	}
	s, err := p.pressureState(function, x, tempK)
	s.Y = y
	return s, err
}
