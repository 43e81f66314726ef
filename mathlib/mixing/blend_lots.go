package mixing

import (
	"errors"
	"fmt"
	"math"

	"swanneck/mathlib/internal/simplex"
	"swanneck/mathlib/quantity"
)

// BlendLots returns how much of each lot makes the wanted blend, within all limits: the cheapest, the one closest to a
// profile of markers, or one that draws evenly on the lots. Of any number of lots any number may go in; water is a lot of
// strength 0. Masses, pure alcohol and what is held add up to the last digits.
//
// If no blend keeps all limits, it fails with a *BlendError that names the limits that collide and what each would have to
// be. It also fails for a lot that holds nothing or has no figure for something limited, for shares that cannot add up, for
// costs without a currency, and with an *alcoholometry.UnsetError or a *quantity.RangeError.
//
// Source: a linear programme over masses (G. B. Dantzig, Linear Programming and Extensions, 1963); volumes by OIML R 22
// (1975). With one strength the blend is the best there is; with a range of strengths contraction bends the sums a little,
// and the search, which begins at both ends and in the middle, may miss a better one by as little.
func BlendLots(o BlendOrder) (BlendPlan, error) {
	const fn = "mixing.BlendLots"
	if err := o.check(fn); err != nil {
		return BlendPlan{}, err
	}
	m, err := newBlendModel(fn, o)
	if err != nil {
		return BlendPlan{}, err
	}
	x, err := m.best(fn)
	if err != nil {
		return BlendPlan{}, err
	}
	if o.AsMuch && m.nothing(x) {
		return BlendPlan{}, m.whyNothing(fn)
	}
	return m.plan(fn, x)
}

// nothing reports whether the masses are none.
func (m *blendModel) nothing(x []float64) bool {
	sum := 0.0
	for _, v := range x {
		sum += v
	}
	return sum < 1e-9
}

// whyNothing says why the lots give no blend at all: because they do not even give a thousandth of their litres.
func (m *blendModel) whyNothing(function string) error {
	o := m.o
	o.AsMuch = false
	for _, l := range o.Lots {
		o.VolumeL += l.Spirit.VolumeL / 1000
	}
	little, err := newBlendModel(function, o)
	if err != nil {
		return err
	}
	if _, err = little.best(function); err == nil {
		err = fmt.Errorf("%s: the limits leave room for next to nothing; give some of them more", function)
	}
	return err
}

// best returns the best masses, in units of refKg.
func (m *blendModel) best(function string) ([]float64, error) {
	starts := []float64{m.low}
	if m.high > m.low {
		starts = append(starts, m.high, (m.low+m.high)/2)
	}
	var best []float64
	var values []float64
	var none *simplex.Infeasible
	noneAt := 0.0
	for _, w := range starts {
		x, v, err := m.from(function, w)
		var i *simplex.Infeasible
		switch {
		case errors.As(err, &i):
			none, noneAt = i, w
			continue
		case err != nil:
			return nil, fmt.Errorf("%s: %w", function, err)
		}
		if best == nil || less(v, values) {
			best, values = x, v
		}
	}
	if best != nil {
		return best, nil
	}
	w, err := m.explain(function, none, noneAt)
	if err != nil {
		return nil, err
	}
	x, _, err := m.at(function, w) // there is one after all, at a strength where none was looked for
	return x, err
}

// less compares what was aimed at, the first thing first.
func less(a, b []float64) bool {
	for i := range a {
		if math.Abs(a[i]-b[i]) > 1e-12*math.Max(1, math.Abs(b[i])) {
			return a[i] < b[i]
		}
	}
	return false
}

// from searches from a strength on until the sums are made at the strength that they give.
func (m *blendModel) from(function string, w float64) (x, values []float64, err error) {
	for range 30 {
		if x, values, err = m.at(function, w); err != nil {
			return nil, nil, err
		}
		next := m.strength(x)
		if math.Abs(next-w) <= 1e-13 {
			return x, values, nil
		}
		w = next
	}
	// It goes to and fro between two blends: hold the strength where it is.
	held := *m
	held.low, held.high = w, w
	held.limits = nil
	held.amounts()
	held.strengths()
	held.contents()
	held.shares()
	held.stocks()
	return held.at(function, w)
}

// at returns the best masses with the sums made at one strength, and what was aimed at.
func (m *blendModel) at(function string, w float64) (x, values []float64, err error) {
	p, err := m.problem(function, w)
	if err != nil {
		return nil, nil, err
	}
	costs, err := m.aims(function, p, w)
	if err != nil {
		return nil, nil, err
	}
	s, err := simplex.New(p)
	if err != nil {
		return nil, nil, fmt.Errorf("%s: %w", function, err)
	}
	found, err := s.Minimise(costs...)
	if err != nil {
		return nil, nil, err
	}
	for _, c := range costs {
		v := 0.0
		for j := range c {
			v += c[j] * found.X[j]
		}
		values = append(values, v)
	}
	x = found.X[:len(m.lots)]
	for i := range x {
		if x[i] < 1e-12 {
			x[i] = 0 // a milligram in a thousand tonnes: the rounding of the search
		}
	}
	return x, values, nil
}

// aims puts the variables of the aim into the problem and returns what is to be made small, the first thing first.
func (m *blendModel) aims(function string, p *simplex.Problem, w float64) ([][]float64, error) {
	n := len(m.lots)
	var costs [][]float64
	if m.o.AsMuch {
		v, err := m.volumesAt(function, w)
		if err != nil {
			return nil, err
		}
		costs = append(costs, m.each(func(i int) float64 { return -m.litresAt(i, v.ethanol, v.water) }))
	}
	variable := func(low float64) int {
		p.Low, p.High = append(p.Low, low), append(p.High, math.Inf(1))
		return len(p.Low) - 1
	}
	var deviation []float64
	// differs makes a row whose sum is what a deviation up less one down is, at a price for each.
	differs := func(coefficients map[int]float64, price float64) {
		up, down := variable(0), variable(0)
		row := make([]float64, len(p.Low))
		for j, c := range coefficients {
			row[j] = c
		}
		row[up], row[down] = -1, 1
		p.Rows, p.RowLow, p.RowHigh = append(p.Rows, row), append(p.RowLow, 0), append(p.RowHigh, 0)
		for len(deviation) < len(p.Low) {
			deviation = append(deviation, 0)
		}
		deviation[up], deviation[down] = price, price
	}
	switch m.o.Aim {
	case Closest:
		v, err := m.volumesAt(function, w)
		if err != nil {
			return nil, err
		}
		for _, k := range m.o.Profile {
			num, den := m.counted(k.Name, k.Wanted.Per())(v)
			c := map[int]float64{}
			for i := range n {
				c[i] = (num[i] - k.Wanted.Value()*den[i]) / (k.Wanted.Value() * m.typical(k, v, w))
			}
			differs(c, weight(k))
		}
	case Evenly:
		part := variable(0)
		for i, l := range m.lots {
			if l.w > 0 {
				differs(map[int]float64{i: m.refKg / l.thereKg, part: -1}, 1)
			}
		}
	}
	if deviation != nil {
		costs = append(costs, deviation)
	}
	costs = append(costs, m.each(func(i int) float64 { return m.lots[i].cost }))
	for k := range costs {
		costs[k] = padded(costs[k], len(p.Low))
	}
	for i := range p.Rows {
		p.Rows[i] = padded(p.Rows[i], len(p.Low))
	}
	return costs, nil
}

// padded returns a row with noughts behind it, up to n.
func padded(row []float64, n int) []float64 {
	if len(row) == n {
		return row
	}
	out := make([]float64, n)
	copy(out, row)
	return out
}

func weight(k BlendMarker) float64 {
	if k.Weight == 0 {
		return 1
	}
	return k.Weight
}

// typical returns what a kilogram of the blend counts for under a marker: its litres, kilograms or pure litres.
func (m *blendModel) typical(k BlendMarker, v volumes, w float64) float64 {
	switch k.Wanted.Per() {
	case quantity.PerLitre:
		return w*v.ethanol20 + (1-w)*v.water20
	case quantity.PerPureAlcohol:
		for _, l := range m.lots {
			if l.w > 0 {
				return w * l.pureL / l.w
			}
		}
	}
	return 1
}
