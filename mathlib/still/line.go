package still

import (
	"fmt"
	"sync"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/equilibrium"
	"swanneck/mathlib/quantity"
)

// A still works in this range: above it there is no heat of mixing.
const (
	lowestKPa, highestKPa = 2.0, 140.0
	pressureSource        = "the heat of mixing is known to 110 °C, Larkin (1975)"
)

// line is where liquid and vapour of ethanol and water meet under one pressure: by the model, or y over x by a curve of
// one's own with the temperatures and the traces by the model.
type line struct {
	*equilibrium.Curve
	*volatilities
	own  *Equilibrium
	most float64 // mole fraction of ethanol in the azeotrope, or 1
}

// lineKey says which line is meant; lines of the same key are the same.
type lineKey struct {
	model string
	pKPa  float64
	names string
}

// newLine returns the line under the pressure p with the traces named.
func newLine(function string, p quantity.Pressure, model string, own *Equilibrium, names []string) (*line, error) {
	if err := quantity.CheckRange(function, "pressure", p.KPa(), lowestKPa, highestKPa, "kPa", pressureSource); err != nil {
		return nil, err
	}
	k, err := recall(p, model, names)
	if err != nil {
		return nil, as(function, err)
	}
	l := &line{Curve: k.curve, volatilities: k.volatilities, own: own}
	l.most = l.azeotrope()
	return l, nil
}

// vapour returns the mole fraction of ethanol over the liquid x and its slope, dimensionless.
func (l *line) vapour(x float64) (y, slope float64) {
	if l.own != nil {
		return l.own.vapour(x)
	}
	return l.Vapour(x)
}

// liquid returns the mole fraction of ethanol under the vapour y and its slope, dimensionless.
func (l *line) liquid(y float64) (x, slope float64) {
	if l.own != nil {
		return l.own.liquid(y)
	}
	return l.Liquid(y)
}

// sameFraction is the difference of mole fractions, dimensionless, below which vapour and liquid are alike.
const sameFraction = 1e-7

// azeotrope returns the mole fraction of ethanol from which on the vapour is no stronger than the liquid.
func (l *line) azeotrope() float64 {
	gain := func(x float64) float64 {
		y, _ := l.vapour(x)
		return y - x - sameFraction
	}
	const low, high, steps = 0.5, 1.0, 500
	for i := 1; i <= steps; i++ {
		a, b := low+(high-low)*float64(i-1)/steps, low+(high-low)*float64(i)/steps
		if fa, fb := gain(a), gain(b); fa > 0 && fb <= 0 {
			return root(gain, a, b, fa, fb, 1e-12)
		}
	}
	return 1
}

// checkCharge returns an error unless the mole fraction x lies between water and the azeotrope.
func (l *line) checkCharge(function, what string, s alcoholometry.Strength) error {
	x := s.MoleFraction()
	if x < leastFraction {
		return inputf(function, "there is no alcohol in %s (%v); charge a spirit", what, s)
	}
	if x >= l.most {
		azeotrope, err := alcoholometry.MoleFraction(l.most)
		if err != nil {
			return err
		}
		return &TooStrongError{Func: function, Charge: s, Azeotrope: azeotrope, P: l.P()}
	}
	return nil
}

// leastFraction is the mole fraction of ethanol below which a pot counts as water, dimensionless.
const leastFraction = 1e-5

// The last few curves are kept: a worksheet distils one charge many times. What comes out does not depend on it.
var kept struct {
	sync.Mutex
	curves []keptCurve
}

type keptCurve struct {
	key          lineKey
	curve        *equilibrium.Curve
	volatilities *volatilities
}

const mostKept = 8

func recall(p quantity.Pressure, model string, names []string) (keptCurve, error) {
	key := lineKey{model, p.KPa(), fmt.Sprintf("%q", names)}
	kept.Lock()
	for _, k := range kept.curves {
		if k.key == key {
			kept.Unlock()
			return k, nil
		}
	}
	kept.Unlock()
	c, err := equilibrium.NewCurve(p, names, equilibrium.UseModel(model))
	if err != nil {
		return keptCurve{}, err
	}
	k := keptCurve{key, c, newVolatilities(c, len(names))}
	kept.Lock()
	defer kept.Unlock()
	kept.curves = append(kept.curves, k)
	if len(kept.curves) > mostKept {
		kept.curves = kept.curves[1:]
	}
	return k, nil
}
