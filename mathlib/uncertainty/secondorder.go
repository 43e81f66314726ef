package uncertainty

import (
	"fmt"
	"math"
)

// SecondOrderStandard returns the standard uncertainty of the result, in its unit, with the next terms of the series: if
// it is much larger than the Standard of FirstOrder, the model is curved within the tolerances, and MonteCarlo gives the
// better interval. It takes the errors as spread normally and as not correlated.
//
// It fails as FirstOrder does, for correlated inputs, and where the model has no answer a quarter of a standard
// uncertainty away from the readings.
//
// Source: JCGM 100:2008, 5.1.2, note, the terms of next highest order.
func SecondOrderStandard(m Measurement) (float64, error) {
	const fn = "uncertainty.SecondOrderStandard"
	p, err := m.resolve(fn)
	if err != nil {
		return 0, err
	}
	if len(p.correlated) > 0 {
		return 0, fmt.Errorf("%s: the terms of second order are known for inputs without correlations only; use MonteCarlo", fn)
	}
	y, c, err := p.sensitivities()
	if err != nil {
		return 0, err
	}
	var sum float64
	for i := range c {
		sum += c[i] * c[i] * p.u[i] * p.u[i]
	}
	more, err := p.curvature(y, c)
	if err != nil {
		return 0, fmt.Errorf("%s: %s cannot be worked out a quarter of a standard uncertainty around the readings: %w", fn, p.title(), err)
	}
	return math.Sqrt(math.Max(sum+more, 0)), nil
}

// curvature returns the sum over all pairs of inputs of (½ f_ij² + f_i f_ijj) u_i² u_j², in the squared unit of the
// result, by differences over an eighth of the standard uncertainties: exact for a polynomial of the third degree.
func (p *problem) curvature(y float64, c []float64) (float64, error) {
	const part = 1.0 / 8
	step := make([]float64, len(p.u))
	for i, u := range p.u {
		step[i] = part * u
	}
	at := func(by map[int]float64) (float64, error) { return p.moved(step, by) }
	up, down := make([]float64, len(p.x)), make([]float64, len(p.x))
	var err error
	for i := range p.x {
		if up[i], err = at(map[int]float64{i: 1}); err != nil {
			return 0, err
		}
		if down[i], err = at(map[int]float64{i: -1}); err != nil {
			return 0, err
		}
	}
	var sum float64
	add := func(second, slope, third float64) {
		second, third = second/(part*part), third/(part*part*part)
		sum += second*second + slope*third
	}
	for i := range p.x {
		up2, err := at(map[int]float64{i: 2})
		if err != nil {
			return 0, err
		}
		down2, err := at(map[int]float64{i: -2})
		if err != nil {
			return 0, err
		}
		ci := c[i] * p.u[i]
		add((up[i]-2*y+down[i])/math.Sqrt2, ci, (up2-2*up[i]+2*down[i]-down2)/2)
		for j := range i {
			var f [2][2]float64
			for a, si := range []float64{-1, 1} {
				for b, sj := range []float64{-1, 1} {
					if f[a][b], err = at(map[int]float64{i: si, j: sj}); err != nil {
						return 0, err
					}
				}
			}
			cj := c[j] * p.u[j]
			add((f[1][1]-f[1][0]-f[0][1]+f[0][0])/4, ci, (f[1][1]+f[1][0]-f[0][1]-f[0][0]-2*up[i]+2*down[i])/2)
			add(0, cj, (f[1][1]+f[0][1]-f[1][0]-f[0][0]-2*up[j]+2*down[j])/2)
		}
	}
	return sum, nil
}
