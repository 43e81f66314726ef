package still

import "math"

// Returns says how a partial condenser gives back the part of the vapour that it condenses. The zero value is a condenser
// that condenses everything and returns the reflux from the distillate.
type Returns string

// The ways of a partial condenser.
const (
	InEquilibrium Returns = "in equilibrium" // vapour and liquid leave together: one more ideal plate
	Differential  Returns = "differential"   // each drop falls back as it forms, as on the wall of a rising neck
)

// condenserSteps are those of the way along a differential condenser; an even number.
const condenserSteps = 24

// condense returns the vapour that enters a differential condenser which lets z pass and gives back the share t, and its
// slope by z. Along the way d(V y) = x dV, which in s = ln V is dy/ds = x(y) - y, from V = 1-t, where it is z, to V = 1.
func (p *plates) condense(z, t float64) (y, dy float64) {
	h := -math.Log1p(-t) / condenserSteps
	rate := func(y, dy float64) (f, df float64) {
		x, d := p.line.liquid(y)
		return x - y, (d - 1) * dy
	}
	y, dy = z, 1
	p.along[0] = y
	for i := range condenserSteps {
		k1, d1 := rate(y, dy)
		k2, d2 := rate(y+h/2*k1, dy+h/2*d1)
		k3, d3 := rate(y+h/2*k2, dy+h/2*d2)
		k4, d4 := rate(y+h*k3, dy+h*d3)
		y += h / 6 * (k1 + 2*k2 + 2*k3 + k4)
		dy += h / 6 * (d1 + 2*d2 + 2*d3 + d4)
		p.along[i+1] = y
	}
	return y, dy
}

// condenseTraces puts into out, for each trace, what enters a differential condenser over what passes it. Along the way
// d ln(V y) = (1/K) d ln V for each, so that their moles go by the integral of 1/K (Simpson's rule).
func (p *plates) condenseTraces(t float64, inverse, out []float64) {
	h := -math.Log1p(-t) / condenserSteps
	clear(out)
	for i, y := range p.along {
		weight := 2.0
		switch {
		case i == 0 || i == condenserSteps:
			weight = 1
		case i%2 == 1:
			weight = 4
		}
		x, _ := p.line.liquid(y)
		p.line.inverse(x, inverse)
		for k, v := range inverse {
			out[k] += weight * h / 3 * v
		}
	}
	for k, integral := range out {
		out[k] = (1 - t) * math.Exp(integral)
	}
}
