package still

import (
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

// Congener is a compound that comes along in traces, and how much of it the charge holds: a concentration, or a mass, or
// both, which then add up. A name may stand twice; the amounts add up too, so that what herbs or fruit bring in can be
// appended to what a wine holds.
type Congener struct {
	Name   string                 // one of the names of package compound
	Amount quantity.Concentration // in the charge
	MassG  float64                // in the charge, g
}

// burden is what the congeners of a charge come to.
type burden struct {
	names  []string // as package compound has them, each once, in the order of the batch
	molarG []float64
	mol    []float64
}

// newBurden finds the congeners of a charge and adds up their amounts.
func newBurden(function string, congeners []Congener, charge alcoholometry.Spirit) (burden, error) {
	var b burden
	place := map[string]int{}
	for _, c := range congeners {
		known, err := compound.Find(c.Name)
		if err != nil {
			return burden{}, as(function, err)
		}
		if known.Name == "ethanol" || known.Name == "water" {
			return burden{}, inputf(function, "%s is no congener; the strength of the charge says how much there is", known.Name)
		}
		if err := quantity.CheckRange(function, "mass of "+known.Name, c.MassG, 0, math.Inf(1), "g", ""); err != nil {
			return burden{}, err
		}
		if !c.Amount.IsSet() && c.MassG == 0 {
			return burden{}, inputf(function, "it is not said how much %s the charge holds; give its Amount, such as MgL(35), or its MassG", known.Name)
		}
		grams := c.MassG
		if c.Amount.IsSet() {
			more, err := alcoholometry.MassG(c.Amount, charge)
			if err != nil {
				return burden{}, as(function, err)
			}
			grams += more
		}
		i, seen := place[known.Name]
		if !seen {
			i = len(b.names)
			place[known.Name] = i
			b.names, b.molarG, b.mol = append(b.names, known.Name), append(b.molarG, known.MolarMassG), append(b.mol, 0)
		}
		b.mol[i] += grams / known.MolarMassG
	}
	return b, nil
}

// enrichment works out how much more of each trace there is in the distillate than in the vessel, by mole fractions.
type enrichment struct {
	inverse, inVapour, k []float64 // room
}

func newEnrichment(n int) enrichment {
	return enrichment{make([]float64, n), make([]float64, n), make([]float64, n)}
}

// volatilities puts into k, for each trace, the mole fraction in the vapour over that in the liquid x of a vessel.
func (e *enrichment) volatilities(l *line, x float64) []float64 {
	l.inverse(x, e.k)
	for i, inverse := range e.k {
		e.k[i] = 1 / inverse
	}
	return e.k
}

// over puts into out what is in the distillate over what is in the vessel below, where fromVessel is vapour over liquid of
// the vessel and the plates are as last solved. From the top down, where the distillate is 1, everything is positive.
func (e *enrichment) over(p *plates, t float64, fromVessel, out []float64) {
	if p.idle(t) {
		copy(out, fromVessel)
		return
	}
	y := e.inVapour
	for k := range y {
		y[k] = 1
	}
	if p.differential {
		p.condenseTraces(t, e.inverse, y)
	}
	for n, share := range p.share {
		p.line.inverse(p.x[n], e.inverse)
		if share == 1 {
			for k, inverse := range e.inverse {
				y[k] = t*y[k]*inverse + 1 - t
			}
			continue
		}
		for k, inverse := range e.inverse {
			x := (y[k] - (1-share)*(1-t)) / ((1-share)*t + share/inverse)
			y[k] = t*x + 1 - t
		}
	}
	for k := range out {
		out[k] = fromVessel[k] / y[k]
	}
}
