package still

import "math"

// plates are those above a vessel, from the top down, with the condenser's part if it gives back only some of the vapour.
// They hold no liquid, and the same moles rise everywhere.
//
// The line of a plate: what falls on the next one is y' = t x + (1-t) z, where t is the reflux over the vapour, R/(R+1), z
// the distillate, x the liquid that leaves the plate.
type plates struct {
	line         *line
	share        []float64 // Murphree's efficiency of each plate from the top, dimensionless
	differential bool      // the condenser gives back what condenses first, as it condenses

	x     []float64                   // liquid on each plate, as last solved
	along [condenserSteps + 1]float64 // vapour along a differential condenser, from its end to its beginning
}

// newPlates returns n ideal plates, of which each reaches share of its effect. A fraction of a plate is one at the top that
// reaches that fraction: so everything changes smoothly with n.
func newPlates(l *line, n, share float64, c Returns) plates {
	p := plates{line: l, differential: c == Differential}
	if c == InEquilibrium {
		p.share = append(p.share, 1)
	}
	whole := math.Floor(n + 1e-9)
	if part := n - whole; part > 1e-9 {
		p.share = append(p.share, part*share)
	}
	for range int(whole) {
		p.share = append(p.share, share)
	}
	p.x = make([]float64, len(p.share))
	return p
}

// idle reports whether the plates change nothing: none, or no reflux.
func (p *plates) idle(t float64) bool { return t == 0 || len(p.share) == 0 && !p.differential }

// bottom returns the vapour that must come from below for the distillate z, and its slope by z. It rises with z: from the
// top down all terms are positive, while from the bottom up errors grow manifold on every plate.
func (p *plates) bottom(z, t float64) (y, dy float64) {
	y, dy = z, 1
	if p.differential {
		y, dy = p.condense(z, t)
	}
	back := (1 - t) * z
	for n, share := range p.share {
		var x, dx float64
		if share == 1 {
			x, dx = p.line.liquid(y)
			dx *= dy
		} else {
			x, dx = p.lame(y, dy, z, t, share, p.x[n])
		}
		p.x[n] = x
		y, dy = t*x+back, t*dx+1-t
	}
	return y, dy
}

// lame returns the liquid on a plate of which the vapour y reaches only a share of its effect:
// y = (1-share) (t x + (1-t) z) + share y*(x). The right side rises with x.
func (p *plates) lame(y, dy, z, t, share, guess float64) (x, dx float64) {
	low, high := 0.0, 1.0
	x = guess
	if !(x > low && x < high) {
		x = 0.5 * y
	}
	rest := 1 - share
	for range 100 {
		v, d := p.line.vapour(x)
		f := rest*(t*x+(1-t)*z) + share*v - y
		slope := rest*t + share*d
		dx = (dy - rest*(1-t)) / slope
		if f > 0 {
			high = x
		} else {
			low = x
		}
		next := x - f/slope
		if !(next > low && next < high) {
			next = (low + high) / 2
		}
		if math.Abs(next-x) <= 1e-15+1e-14*x {
			return next, dx
		}
		x = next
	}
	return x, dx
}

// solve returns the distillate z over a vapour y that comes from below. Newton's method from a guess, and inside a bracket
// once it strays: no distillate is weaker than y, none stronger than what no draw at all would give.
func (p *plates) solve(y, t, guess float64) float64 {
	if p.idle(t) {
		return y
	}
	low, high, bracketed := y, 1.0, false
	z := guess
	for round := range 300 {
		if !bracketed && (round > 6 || !(z > y && z < 1)) {
			bracketed = true
			high = p.strongest(y, t)
			if z = (low + high) / 2; high <= low {
				return y
			}
		}
		v, d := p.bottom(z, t)
		step := (v - y) / d
		if bracketed {
			if v < y {
				low = z
			} else {
				high = z
			}
		}
		if math.Abs(step) <= 1e-12*z {
			return math.Min(z-step, 1)
		}
		next := z - step
		if bracketed && !(next > low && next < high) {
			if next = (low + high) / 2; high-low <= 1e-15*high {
				return next
			}
		}
		z = next
	}
	return z
}

// strongest returns the distillate over a vapour y if nothing is drawn, which is beyond any other. It ends at the azeotrope.
func (p *plates) strongest(y, t float64) float64 {
	z := y
	for range p.share {
		z, _ = p.line.vapour(z)
	}
	if p.differential {
		z = math.Max(z, p.line.most)
	}
	return math.Min(math.Max(z*(1+1e-6), y*(1+1e-12)), 1)
}

// hold returns the t at which the distillate is z over a vapour y from below, if that takes no more than most.
func (p *plates) hold(z, y, most, guess float64) (t float64, ok bool) {
	if y >= z {
		return 0, true
	}
	f := func(t float64) float64 {
		v, _ := p.bottom(z, t)
		return v - y
	}
	fMost := f(most)
	if fMost > 0 {
		return most, false
	}
	low, fLow := 0.0, z-y
	for _, near := range []float64{guess - 1e-3, guess - 1e-5} { // it changes little from moment to moment
		if near > low && near < most {
			if v := f(near); v > 0 {
				low, fLow = near, v
			}
		}
	}
	high := most
	if near := guess + 1e-3; guess > 0 && near > low && near < most {
		if v := f(near); v <= 0 {
			high, fMost = near, v
		}
	}
	t = root(f, low, high, fLow, fMost, 1e-14)
	f(t) // leaves the liquids of this t on the plates
	return t, true
}
