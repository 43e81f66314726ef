package equilibrium

import (
	"fmt"

	"swanneck/mathlib/quantity"
)

const fewestPoints, mostPoints = 2, 10001

// Txy returns the boiling diagram at the pressure p, from 2 to 1100 kPa: points of it, from 2 to 10001, at equal steps of
// the mole fraction of ethanol in the liquid, from water to ethanol. It fails as Bubble does.
func Txy(p quantity.Pressure, points int, opts ...Option) ([]Boiling, error) {
	const fn = "equilibrium.Txy"
	return diagram(fn, points, opts, func(pair *Pair, x float64) (Boiling, error) {
		s, err := pair.Bubble(x, p.KPa())
		if err != nil {
			return Boiling{}, as(fn, err)
		}
		b, err := pair.boiling(s, noteAt(s.X, s.PKPa))
		b.P = p
		return b, err
	})
}

// Pxy returns the boiling diagram at the temperature t, from 1 to 185 °C: points of it, from 2 to 10001, at equal steps of
// the mole fraction of ethanol in the liquid, from water to ethanol. It fails as BubblePressure does.
func Pxy(t quantity.Temperature, points int, opts ...Option) ([]Boiling, error) {
	const fn = "equilibrium.Pxy"
	return diagram(fn, points, opts, func(pair *Pair, x float64) (Boiling, error) {
		s, err := pair.BubbleAt(x, t.K())
		if err != nil {
			return Boiling{}, as(fn, err)
		}
		b, err := pair.boiling(s, noteAt(s.X, s.PKPa))
		b.Temp = t
		return b, err
	})
}

func diagram(function string, points int, opts []Option, at func(pair *Pair, x float64) (Boiling, error)) ([]Boiling, error) {
	if points < fewestPoints || points > mostPoints {
		return nil, fmt.Errorf("%s: %d points are asked for; give %d to %d", function, points, fewestPoints, mostPoints)
	}
	set, err := apply(function, opts)
	if err != nil {
		return nil, err
	}
	out := make([]Boiling, points)
	for i := range out {
		if out[i], err = at(set.pair, float64(i)/float64(points-1)); err != nil {
			return nil, err
		}
	}
	return out, nil
}

// XY returns the mole fractions of ethanol in the liquid and in the vapour at the pressure p, dimensionless, for drawing:
// points of them, from 2 to 10001, at equal steps in the liquid. It fails as Bubble does.
func XY(p quantity.Pressure, points int, opts ...Option) (x, y []float64, err error) {
	const fn = "equilibrium.XY"
	line, err := Txy(p, points, opts...)
	if err != nil {
		return nil, nil, as(fn, err)
	}
	for _, b := range line {
		x = append(x, b.Liquid.MoleFraction())
		y = append(y, b.Vapour.MoleFraction())
	}
	return x, y, nil
}
