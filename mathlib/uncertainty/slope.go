package uncertainty

import (
	"fmt"
	"math"
)

// sensitivities returns by how much the result moves for one unit of each input, around the readings.
//
// Each is a central difference over a quarter and over an eighth of the input's standard uncertainty, the two carried to
// the limit (Richardson), so it is exact for a polynomial of up to the fourth degree. Where the model has no answer on one
// side it is taken on the other, exact to the second degree.
func (p *problem) sensitivities() (y float64, c []float64, err error) {
	y, why := p.at(append([]float64(nil), p.x...))
	if why != nil {
		return 0, nil, fmt.Errorf("%s: %s cannot be worked out from the readings: %w", p.fn, p.title(), why)
	}
	for i := range p.x {
		ci, err := p.sensitivity(i, y)
		if err != nil {
			return 0, nil, err
		}
		c = append(c, ci)
	}
	return y, c, nil
}

func (p *problem) sensitivity(i int, y float64) (float64, error) {
	h := math.Max(p.u[i]/4, 1e-12*math.Abs(p.x[i]))
	at := func(d float64) (float64, float64, error) {
		x := append([]float64(nil), p.x...)
		x[i] += d
		v, err := p.at(x)
		return v, x[i] - p.x[i], err // the step as it is after rounding
	}
	var up, down [2]float64
	var upStep, downStep [2]float64
	var upErr, downErr error
	for k, d := range []float64{h, h / 2} {
		var e1, e2 error
		up[k], upStep[k], e1 = at(d)
		down[k], downStep[k], e2 = at(-d)
		if e1 != nil {
			upErr = e1
		}
		if e2 != nil {
			downErr = e2
		}
	}
	switch {
	case upErr == nil && downErr == nil:
		wide := (up[0] - down[0]) / (upStep[0] - downStep[0])
		near := (up[1] - down[1]) / (upStep[1] - downStep[1])
		return (4*near - wide) / 3, nil
	case upErr == nil:
		return 2*(up[1]-y)/upStep[1] - (up[0]-y)/upStep[0], nil
	case downErr == nil:
		return 2*(down[1]-y)/downStep[1] - (down[0]-y)/downStep[0], nil
	}
	in := p.inputs[i]
	return 0, fmt.Errorf("%s: %s cannot be worked out with %s a little above or below %s %s: %w",
		p.fn, p.title(), in.Name, plain(in.Value), in.Unit, upErr)
}
