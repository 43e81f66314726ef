package botanical

import (
	"math"
)

// problem is a series and a law to be fitted to it: q = Σ β_i c_i(t), where the columns c hang on one rate or two and the β
// are not below 0. Given the rates the β follow (variable projection).
type problem struct {
	model    Model
	t, q     []float64
	columns  int
	rates    int
	low      float64     // least of ln rate that is looked at
	high     float64     // greatest
	gridRate []float64   // ln rate
	grid     [][]columns // for each rate of the grid, at each t
}

// columns are the values of the columns at one time.
type columns [2]float64

const gridPoints = 121

// newProblem prepares a fit. Rates are looked for from where the series is still straight to where it is over before the
// first reading.
func newProblem(m Model, t, q []float64) *problem {
	p := &problem{model: m, t: t, q: q, columns: 1, rates: 1}
	straight := 0.02
	switch m {
	case WashedFirst:
		p.columns = 2
	case WashingAndDiffusion:
		p.columns, p.rates = 2, 2
	case FickSphere:
		straight = 1e-4 // where F is still under 4 %
	}
	p.low, p.high = math.Log(straight/t[len(t)-1]), math.Log(50/t[0])
	for i := range gridPoints {
		ln := p.low + (p.high-p.low)*float64(i)/(gridPoints-1)
		p.gridRate = append(p.gridRate, ln)
		at := make([]columns, len(t))
		for j, h := range t {
			at[j] = p.one(math.Exp(ln), h)
		}
		p.grid = append(p.grid, at)
	}
	return p
}

// one returns the columns at a time, for models of one rate; for two rates the column of each.
func (p *problem) one(rate, hours float64) columns {
	switch p.model {
	case WashedFirst:
		return columns{1, -math.Expm1(-rate * hours)}
	case Peleg:
		return columns{rate * hours / (1 + rate*hours)}
	case FickSphere:
		return columns{sphereShare(rate * hours)}
	}
	return columns{-math.Expm1(-rate * hours)}
}

// at returns the columns at a time for ln rates: of diffusion first, then of washing.
func (p *problem) at(ln [2]float64, hours float64) columns {
	c := p.one(math.Exp(ln[0]), hours)
	if p.rates == 2 {
		return columns{p.one(math.Exp(ln[1]), hours)[0], c[0]}
	}
	return c
}

// condition narrows the β: c·β = d. With ratio the β are a multiple of c, which must have no element below 0.
type condition struct {
	kind conditionKind
	c    columns
	d    float64
}

type conditionKind int

const (
	free conditionKind = iota
	fixedSum
	fixedRatio
	impossible
)

// solve returns the least sum of squares over the β, and them.
func (p *problem) solve(at []columns, cond condition) (float64, columns) {
	switch cond.kind {
	case impossible:
		return math.Inf(1), columns{}
	case fixedRatio:
		return p.along(at, columns{}, cond.c, 0, math.Inf(1))
	case fixedSum:
		if p.columns == 1 {
			if cond.c[0] <= 0 {
				return math.Inf(1), columns{}
			}
			b := columns{cond.d / cond.c[0]}
			return p.squares(at, b), b
		}
		if cond.c[0] <= 0 {
			return math.Inf(1), columns{}
		}
		if cond.c[1] <= 0 { // nothing has diffused yet: it says what was washed off
			return p.along(at, columns{cond.d / cond.c[0]}, columns{0, 1}, 0, math.Inf(1))
		}
		// β1 from 0 to d/c1, β0 what is left.
		return p.along(at, columns{cond.d / cond.c[0]}, columns{-cond.c[1] / cond.c[0], 1}, 0, cond.d/cond.c[1])
	}
	if p.columns == 1 {
		return p.along(at, columns{}, columns{1}, 0, math.Inf(1))
	}
	var a00, a01, a11, b0, b1 float64
	for i, c := range at {
		a00 += c[0] * c[0]
		a01 += c[0] * c[1]
		a11 += c[1] * c[1]
		b0 += c[0] * p.q[i]
		b1 += c[1] * p.q[i]
	}
	if det := a00*a11 - a01*a01; det > 1e-14*a00*a11 {
		b := columns{(b0*a11 - b1*a01) / det, (b1*a00 - b0*a01) / det}
		if b[0] >= 0 && b[1] >= 0 {
			return p.squares(at, b), b
		}
	}
	s0, beta0 := p.along(at, columns{}, columns{1, 0}, 0, math.Inf(1))
	s1, beta1 := p.along(at, columns{}, columns{0, 1}, 0, math.Inf(1))
	if s0 < s1 {
		return s0, beta0
	}
	return s1, beta1
}

// along returns the best β = from + x·way with x from low to high.
func (p *problem) along(at []columns, from, way columns, low, high float64) (float64, columns) {
	num, den := 0.0, 0.0
	for i, c := range at {
		w := c[0]*way[0] + c[1]*way[1]
		num += w * (p.q[i] - c[0]*from[0] - c[1]*from[1])
		den += w * w
	}
	x := low
	if den > 0 {
		x = math.Min(math.Max(num/den, low), high)
	}
	b := columns{from[0] + x*way[0], from[1] + x*way[1]}
	return p.squares(at, b), b
}

func (p *problem) squares(at []columns, b columns) float64 {
	sum := 0.0
	for i, c := range at {
		r := p.q[i] - c[0]*b[0] - c[1]*b[1]
		sum += r * r
	}
	return sum
}

// best is a fit.
type best struct {
	ln   [2]float64
	beta columns
	s    float64
}

// eval fits the β at given rates.
func (p *problem) eval(ln [2]float64, cond func(ln [2]float64) condition) best {
	at := make([]columns, len(p.t))
	for i, h := range p.t {
		at[i] = p.at(ln, h)
	}
	s, b := p.solve(at, cond(ln))
	return best{ln, b, s}
}

// minimise finds the rates, under a condition on the β that may hang on them. near, if not nil, is where to begin for models
// of two rates.
func (p *problem) minimise(cond func(ln [2]float64) condition, near *best) best {
	if p.rates == 2 {
		return p.minimiseTwo(cond, near)
	}
	at, least := 0, math.Inf(1)
	for i, row := range p.grid {
		if s, _ := p.solve(row, cond([2]float64{p.gridRate[i]})); s < least {
			at, least = i, s
		}
	}
	low, high := p.gridRate[max(at-1, 0)], p.gridRate[min(at+1, gridPoints-1)]
	return p.golden(low, high, cond)
}

// golden narrows one rate down by golden sections.
func (p *problem) golden(low, high float64, cond func(ln [2]float64) condition) best {
	const ratio = 0.6180339887498949
	eval := func(ln float64) best { return p.eval([2]float64{ln}, cond) }
	a, b := eval(high-ratio*(high-low)), eval(low+ratio*(high-low))
	ends := []best{eval(low), eval(high)}
	for range 42 {
		if a.s < b.s {
			high = b.ln[0]
			b = a
			a = eval(high - ratio*(high-low))
		} else {
			low = a.ln[0]
			a = b
			b = eval(low + ratio*(high-low))
		}
	}
	out := a
	for _, e := range append(ends, b) {
		if e.s < out.s {
			out = e
		}
	}
	return out
}
