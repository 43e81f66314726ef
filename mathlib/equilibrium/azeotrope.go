package equilibrium

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// Azeotropes are answered for these pressures. Below 11 kPa ethanol and water have none, while most models keep one; up
// to 200 kPa the published ones are met.
const azeotropeLowKPa, azeotropeHighKPa = 12.0, 250.0

// NoAzeotropeError says that by the model there is no azeotrope at a pressure.
type NoAzeotropeError struct {
	Func  string // the function
	Model string // the activity model
	PKPa  float64
}

// Error gives the model and the pressure in one line.
func (e *NoAzeotropeError) Error() string {
	return fmt.Sprintf("%s: by the model %s there is no azeotrope under %.2f kPa; try another pressure or model", e.Func, e.Model, e.PKPa)
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *NoAzeotropeError) StopsCell() {}

// Azeotrope returns the state in which liquid and vapour are alike under pKPa kilopascal, from 12 to 250 kPa. It fails
// with a *quantity.RangeError, and with a *NoAzeotropeError if the model has none.
//
// Accuracy of the default model against Wade and Merriman (1911, from memory): 0.3 % by mass from 54 to 101 kPa, 0.4 % to
// 193 kPa, 1.1 % at 26 and 3 % at 13 kPa; 0.15 K.
func (p *Pair) Azeotrope(pKPa float64) (State, error) {
	const fn = "equilibrium.Pair.Azeotrope"
	if err := quantity.CheckRange(fn, "pressure", pKPa, azeotropeLowKPa, azeotropeHighKPa, "kPa", "Wade and Merriman (1911): none below 11 kPa, measured to 193 kPa"); err != nil {
		return State{}, err
	}
	lnP := math.Log(pKPa * 1000)
	lnAlpha := func(x float64) float64 {
		_, _, l, rounds := p.boil(x, lnP)
		if rounds == 0 {
			return math.NaN()
		}
		return l
	}
	const low, high = 0.7, 0.9999
	a, b := lnAlpha(low), lnAlpha(high)
	if !(a > 0 && b < 0) {
		return State{}, &NoAzeotropeError{fn, p.name, pKPa}
	}
	x := root(lnAlpha, low, high, a, b)
	s, err := p.bubble(fn, x, pKPa)
	s.Y = x
	return s, err
}
