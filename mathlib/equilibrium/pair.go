package equilibrium

import (
	"fmt"
	"math"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

// The pressures and temperatures for which there is an answer. At 1100 kPa ethanol boils at 155 and water at 184 °C; the
// total pressures measured at 150 °C, to 1001 kPa, are met within 4 %.
const (
	lowestKPa, highestKPa = 2.0, 1100.0
	lowestC, highestC     = 1.0, 185.0
	// The default was fitted in this range.
	fittedLowKPa, fittedHighKPa = 5.0, 105.0
)

const noPressure = "the vapour is taken as ideal; held against measurements from 4 to 1001 kPa"

// State is a boiling mixture of ethanol and water by mole fractions.
type State struct {
	X, Y  float64 // mole fraction of ethanol in the liquid and in the vapour, dimensionless
	TempK float64
	PKPa  float64
}

// Pair is ethanol and water in one activity model. It does not change and may be used by several goroutines.
type Pair struct {
	name           string
	own            bool // a model of the caller's
	activity       Activity
	ethanol, water compound.VapourPressure
	start          startTable
}

// NewPair returns the pair of the model chosen, NRTL as fitted here if none is.
func NewPair(opts ...Option) (*Pair, error) {
	s, err := apply("equilibrium.NewPair", opts)
	return s.pair, err
}

func newPair(name string, a Activity) *Pair {
	p := &Pair{name: name, activity: a, ethanol: vapourOf("ethanol"), water: vapourOf("water")}
	p.start.fill(p)
	return p
}

// vapourOf returns the vapour pressure of ethanol or water, which the data files hold.
func vapourOf(name string) compound.VapourPressure {
	c, err := compound.Find(name)
	if err != nil {
		panic(err)
	}
	return c.Vapour
}

// Name returns the name of the model.
func (p *Pair) Name() string { return p.name }

// LnGamma returns the natural logarithms of the activity coefficients of ethanol and water, dimensionless, at the mole
// fraction x of ethanol and at tempK, and their slopes, 1/K. It checks nothing.
func (p *Pair) LnGamma(x, tempK float64) (ln1, ln2, perK1, perK2 float64) {
	return p.activity.LnGamma(x, tempK)
}

// volatility is one evaluation at a liquid and a temperature: ln K = ln(y/x) for each, times the pressure in Pa, and its
// slope by temperature.
func (p *Pair) volatility(x, tempK float64) (lnE, lnW, perKE, perKW float64) {
	g1, g2, d1, d2 := p.activity.LnGamma(x, tempK)
	pe, de := p.ethanol.LnPa(tempK)
	pw, dw := p.water.LnPa(tempK)
	return g1 + pe, g2 + pw, d1 + de, d2 + dw
}

// boil solves for the temperature at which the liquid x boils under a pressure whose logarithm in Pa is lnP. lnAlpha is
// the logarithm of the ratio y/x of ethanol to that of water. rounds is 0 if it fails.
func (p *Pair) boil(x, lnP float64) (tempK, y, lnAlpha float64, rounds int) {
	return p.boilFrom(x, lnP, p.start.at(x, lnP))
}

// boilFrom is boil from a first guess u of 1/T.
//
// Newton's method in u = 1/T, in which ln p is nearly straight. A last step from |f| < 1e-6 leaves an error of the order
// f², below rounding; y and lnAlpha go along to first order.
func (p *Pair) boilFrom(x, lnP, u float64) (tempK, y, lnAlpha float64, rounds int) {
	for n := 1; n <= 40; n++ {
		t := 1 / u
		lnE, lnW, dE, dW := p.volatility(x, t)
		e, w := x*math.Exp(lnE-lnP), (1-x)*math.Exp(lnW-lnP)
		sum := e + w
		y = e / sum
		f := math.Log(sum)
		next := u + f*u*u/(y*dE+(1-y)*dW)
		if math.Abs(f) < 1e-6 {
			tempK = 1 / next
			step := (dE - dW) * (tempK - t)
			return tempK, y + y*(1-y)*step, lnE - lnW + step, n
		}
		u = math.Min(math.Max(next, 1.0/505), 1.0/255) // inside the vapour pressure equations; NaN stays and fails
	}
	return 0, 0, 0, 0
}

// Bubble returns the state in which a liquid with the mole fraction x of ethanol boils under pKPa kilopascal. It fails
// with a *quantity.RangeError for x outside 0 to 1 and for pressures outside 2 to 1100 kPa. It takes well under a
// microsecond and allocates nothing.
//
// Accuracy: see DEVIATIONS.md; the equations are solved to 1e-12 K.
func (p *Pair) Bubble(x, pKPa float64) (State, error) {
	const fn = "equilibrium.Pair.Bubble"
	if !(x >= 0 && x <= 1 && pKPa >= lowestKPa && pKPa <= highestKPa) {
		return State{}, rangeOf(fn, "mole fraction of ethanol in the liquid", x, pKPa)
	}
	return p.bubble(fn, x, pKPa)
}

func (p *Pair) bubble(function string, x, pKPa float64) (State, error) {
	lnP := math.Log(pKPa * 1000)
	tempK, y, _, rounds := p.boil(x, lnP)
	if rounds == 0 {
		return State{}, &ConvergenceError{Func: function, Model: p.name, X: x, PKPa: pKPa}
	}
	return State{x, y, tempK, pKPa}, nil
}

// BubbleAt returns the state in which a liquid with the mole fraction x of ethanol boils at tempK. It fails with a
// *quantity.RangeError for x outside 0 to 1, temperatures outside 1 to 185 °C and pressures outside 2 to 1100 kPa.
func (p *Pair) BubbleAt(x, tempK float64) (State, error) {
	const fn = "equilibrium.Pair.BubbleAt"
	if err := checkFraction(fn, "mole fraction of ethanol in the liquid", x); err != nil {
		return State{}, err
	}
	if err := checkTemp(fn, tempK); err != nil {
		return State{}, err
	}
	return p.pressureState(fn, x, tempK)
}

func (p *Pair) pressureState(function string, x, tempK float64) (State, error) {
	lnE, lnW, _, _ := p.volatility(x, tempK)
	e, w := x*math.Exp(lnE), (1-x)*math.Exp(lnW)
	s := State{x, e / (e + w), tempK, (e + w) / 1000}
	const slack = 1e-9
	if s.PKPa >= lowestKPa*(1-slack) && s.PKPa <= highestKPa*(1+slack) {
		return s, nil // so that the temperature found for a pressure at the end of the range leads back to it
	}
	return s, quantity.CheckRange(function, "pressure at this temperature", s.PKPa, lowestKPa, highestKPa, "kPa", noPressure)
}

func rangeOf(function, what string, x, pKPa float64) error {
	if err := checkFraction(function, what, x); err != nil {
		return err
	}
	return checkPressure(function, pKPa)
}

func checkFraction(function, what string, x float64) error {
	return quantity.CheckRange(function, what, x, 0, 1, "", "")
}

func checkPressure(function string, pKPa float64) error {
	return quantity.CheckRange(function, "pressure", pKPa, lowestKPa, highestKPa, "kPa", noPressure)
}

func checkTemp(function string, tempK float64) error {
	return quantity.CheckRange(function, "temperature", tempK-273.15, lowestC, highestC, "°C", noPressure)
}

// ConvergenceError says that an iteration did not come to an end: with the models of this package it does not happen.
type ConvergenceError struct {
	Func  string  // the function
	Model string  // the activity model
	X     float64 // mole fraction of ethanol, dimensionless
	PKPa  float64
}

// Error gives what was asked for in one line.
func (e *ConvergenceError) Error() string {
	return fmt.Sprintf("%s: no boiling temperature was found by the model %s for a mole fraction of %g under %g kPa; try another model", e.Func, e.Model, e.X, e.PKPa)
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *ConvergenceError) StopsCell() {}
