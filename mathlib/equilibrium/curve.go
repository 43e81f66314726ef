package equilibrium

import (
	"math"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

// Steps of the tables of a Curve, in the square root of the mole fraction, in which everything is smooth down to a trace.
const (
	vapourSteps = 256
	backSteps   = 512
	traceSteps  = 64
)

// Curve is the boiling line of ethanol and water under one pressure as a table, with the volatility of traces along it,
// for the many lookups of a distillation. It does not change and may be used by several goroutines.
//
// Accuracy against the functions that it is a table of, from 2 to 1100 kPa and from x = 1e-7 to 1: y within 1e-8 of its
// value, x for a given y within 1e-7 of its value, the temperature within 1e-6 K, ln K within 5e-5.
type Curve struct {
	p      quantity.Pressure
	pair   *Pair
	ratio  cubics // y/x over √x
	back   cubics // x/y over √y
	tempK  cubics // over √x
	traces []*trace
	known  []*compound.Compound
	lnK    [][4]float64 // step by step of √x, in each the traces in turn
	notes  [][]string
}

// NewCurve returns the boiling line under the pressure p, from 2 to 1100 kPa, with the named compounds as traces. Names
// are those of compound.Find; ethanol and water are no traces of themselves. It fails as VolatilityOf does.
func NewCurve(p quantity.Pressure, names []string, opts ...Option) (*Curve, error) {
	const fn = "equilibrium.NewCurve"
	set, err := apply(fn, opts)
	if err != nil {
		return nil, err
	}
	if err := checkPressure(fn, p.KPa()); err != nil {
		return nil, err
	}
	c := &Curve{p: p, pair: set.pair}
	lowK, highK, err := c.fillBoiling(fn)
	if err != nil {
		return nil, err
	}
	for _, name := range names {
		if err := c.addTrace(fn, name, !set.noAnchor, lowK-273.15, highK-273.15); err != nil {
			return nil, err
		}
	}
	c.fillTraces()
	return c, nil
}

// fillBoiling makes the tables of ethanol and water and returns the lowest and the highest temperature.
func (c *Curve) fillBoiling(function string) (lowK, highK float64, err error) {
	pKPa := c.p.KPa()
	lnP := math.Log(pKPa * 1000)
	ratio, tempK := make([]float64, vapourSteps+1), make([]float64, vapourSteps+1)
	lowK = math.Inf(1)
	for i := range ratio {
		s := float64(i) / vapourSteps
		x := s * s
		t, y, _, rounds := c.pair.boil(x, lnP)
		if rounds == 0 {
			return 0, 0, &ConvergenceError{Func: function, Model: c.pair.name, X: x, PKPa: pKPa}
		}
		tempK[i], ratio[i] = t, y/x
		if i == 0 {
			lnE, _, _, _ := c.pair.volatility(0, t)
			ratio[0] = math.Exp(lnE - lnP)
		}
		lowK, highK = math.Min(lowK, t), math.Max(highK, t)
	}
	c.ratio, c.tempK = newCubics(ratio), newCubics(tempK)
	// The way back is the inverse of the table above, not of the model, so that the two belong together.
	back := make([]float64, backSteps+1)
	back[0], back[backSteps] = 1/ratio[0], 1
	x := 0.0
	for i := 1; i < backSteps; i++ {
		y := math.Pow(float64(i)/backSteps, 2)
		x = c.invert(y, math.Max(x, y*back[i-1]))
		back[i] = x / y
	}
	c.back = newCubics(back)
	return lowK, highK, nil
}

// invert returns the x whose vapour in the table is y, by Newton's method inside a bracket.
func (c *Curve) invert(y, guess float64) float64 {
	low, high := 0.0, 1.0
	x := guess
	for range 100 {
		v, slope := c.Vapour(x)
		if v > y {
			high = x
		} else {
			low = x
		}
		next := x - (v-y)/slope
		if !(next > low && next < high) {
			next = (low + high) / 2
		}
		if math.Abs(next-x) <= 1e-15*x {
			return next
		}
		x = next
	}
	return x
}

func (c *Curve) addTrace(function, name string, anchored bool, lowC, highC float64) error {
	k, err := compound.Find(name)
	if err != nil {
		return named(function, err)
	}
	if k.Name == "ethanol" || k.Name == "water" {
		return &NoTraceError{function, k.Name}
	}
	t, err := newTrace(k, anchored)
	if err != nil {
		return named(function, err)
	}
	note, err := stretch(function, k.Name, &t.vapour, lowC, highC)
	if err != nil {
		return err
	}
	c.traces, c.known, c.notes = append(c.traces, t), append(c.known, k), append(c.notes, t.notes(k, note))
	return nil
}

// fillTraces makes the table of ln K.
func (c *Curve) fillTraces() {
	n := len(c.traces)
	if n == 0 {
		return
	}
	values := make([][]float64, n)
	for k := range values {
		values[k] = make([]float64, traceSteps+1)
	}
	lnP := math.Log(c.p.KPa() * 1000)
	original, dortmund := solvent{pair: originalPair()}, solvent{pair: dortmundPair()}
	for i := range traceSteps + 1 {
		s := float64(i) / traceSteps
		tempK, _ := c.tempK.at(s)
		original.set(s*s, tempK)
		dortmund.set(s*s, tempK)
		for k, t := range c.traces {
			lnPa, _ := t.vapour.LnPa(tempK)
			sol := &original
			if t.base == compound.Dortmund {
				sol = &dortmund
			}
			values[k][i] = t.lnGamma(sol) + lnPa - lnP
		}
	}
	c.lnK = make([][4]float64, traceSteps*n)
	for k := range values {
		for i, cubic := range newCubics(values[k]) {
			c.lnK[i*n+k] = cubic
		}
	}
}

// P returns the pressure of the table.
func (c *Curve) P() quantity.Pressure { return c.p }

// Pair returns the ethanol and water behind the table.
func (c *Curve) Pair() *Pair { return c.pair }

// Traces returns the compounds in the order in which LnK gives them.
func (c *Curve) Traces() []*compound.Compound { return append([]*compound.Compound(nil), c.known...) }

// Notes lists what is estimated, extrapolated or from memory in the volatility of the trace k. It panics if there is no
// such trace.
func (c *Curve) Notes(k int) []string { return append([]string(nil), c.notes[k]...) }

// Note says what there is to say of the boiling line itself: that it is extrapolated, or nothing.
func (c *Curve) Note() string { return noteAt(1, c.p.KPa()) }

// Vapour returns the mole fraction y of ethanol in the vapour over a boiling liquid with the mole fraction x, and dy/dx;
// both are dimensionless. It panics with a *quantity.RangeError if x is not from 0 to 1.
func (c *Curve) Vapour(x float64) (y, slope float64) {
	if !(x >= 0 && x <= 1) {
		panic(checkFraction("equilibrium.Curve.Vapour", "mole fraction of ethanol in the liquid", x))
	}
	s := math.Sqrt(x)
	r, d := c.ratio.at(s)
	return x * r, r + 0.5*s*d
}

// Liquid returns the mole fraction x of ethanol in the liquid under a vapour with the mole fraction y, and dx/dy; both are
// dimensionless. It panics with a *quantity.RangeError if y is not from 0 to 1.
func (c *Curve) Liquid(y float64) (x, slope float64) {
	if !(y >= 0 && y <= 1) {
		panic(checkFraction("equilibrium.Curve.Liquid", "mole fraction of ethanol in the vapour", y))
	}
	s := math.Sqrt(y)
	r, d := c.back.at(s)
	return y * r, r + 0.5*s*d
}

// TempK returns the temperature at which a liquid with the mole fraction x of ethanol boils, in kelvin. It panics with a
// *quantity.RangeError if x is not from 0 to 1.
func (c *Curve) TempK(x float64) float64 {
	if !(x >= 0 && x <= 1) {
		panic(checkFraction("equilibrium.Curve.TempK", "mole fraction of ethanol in the liquid", x))
	}
	t, _ := c.tempK.at(math.Sqrt(x))
	return t
}

// LnK puts the natural logarithm of K of each trace over a boiling liquid with the mole fraction x of ethanol into out,
// which must have a place for each; K is the mole fraction in the vapour over that in the liquid, dimensionless. It
// panics with a *quantity.RangeError if x is not from 0 to 1.
func (c *Curve) LnK(x float64, out []float64) {
	if !(x >= 0 && x <= 1) {
		panic(checkFraction("equilibrium.Curve.LnK", "mole fraction of ethanol in the liquid", x))
	}
	n := len(c.traces)
	i, f := place(math.Sqrt(x), traceSteps)
	out = out[:n]
	for k, a := range c.lnK[i*n : (i+1)*n] {
		out[k] = a[0] + f*(a[1]+f*(a[2]+f*a[3]))
	}
}

// LnVapourPressurePa returns the natural logarithm of the vapour pressure in Pa of the pure trace k at tempK,
// dimensionless: its activity coefficient in the liquid x is exp(LnK)·P over that pressure. It checks no range.
func (c *Curve) LnVapourPressurePa(k int, tempK float64) float64 {
	ln, _ := c.traces[k].vapour.LnPa(tempK)
	return ln
}
