package still

import (
	"math"
	"strconv"

	"swanneck/mathlib/alcoholometry"
)

// outflow is what has left the parrot at each step, and what leaves it at the end when it is drained. Without a parrot it is
// what has left the condenser.
type outflow struct {
	e, g    []float64 // moles of ethanol, grams of spirit
	running []float64 // strength, % vol
	traceG  []float64 // step by step
	traces  int
	drainE  float64 // moles of ethanol left in the parrot at the end
	drainG  float64 // grams of spirit
	drainK  []float64
}

// mixer is what is in the parrot: it fills first; then what flows in pushes out as much of what is in it, which is mixed, so
// that its composition follows that of the inflow with exp(-Δm/m).
type mixer struct {
	full, held float64   // grams of spirit: what it takes, what is in it
	amounts    []float64 // in it, of each thing
}

// pour adds g grams with the amounts in, and returns the grams that flow out, with their amounts in out.
func (m *mixer) pour(g float64, in, out []float64) float64 {
	fills, share := math.Min(g, m.full-m.held), 1.0
	if g > 0 {
		share = fills / g
	}
	if m.held += fills; g > fills {
		m.held = m.full
	}
	flows := g - fills
	for k, x := range in {
		holds, rest := m.amounts[k]+share*x, (1-share)*x
		after := holds
		if flows > 0 {
			mixed := rest / flows * m.full
			after = mixed + (holds-mixed)*math.Exp(-flows/m.full)
		}
		out[k] = holds + rest - after
		m.amounts[k] = after
	}
	return flows
}

// parrot passes what came over through the parrot.
func (w *writer) parrot() (outflow, error) {
	n, traces := len(w.run.Steps), len(w.m.burden.names)
	out := outflow{e: w.e, g: w.g, traceG: w.traceG, traces: traces, running: make([]float64, n)}
	p := w.m.batch.Parrot
	for i := range w.run.Steps {
		s := &w.run.Steps[i]
		s.Parrot, s.ParrotTemp = s.Strength, p.Temp
		out.running[i] = s.Strength.ABV()
	}
	if p.HoldUpL == 0 {
		return out, nil
	}
	rho, err := alcoholometry.DensityKgM3(w.run.Steps[0].Strength, p.Temp)
	if err != nil {
		return outflow{}, as(w.m.function, err)
	}
	out.e, out.g, out.traceG = make([]float64, n), make([]float64, n), make([]float64, n*traces)
	m := mixer{full: p.HoldUpL * rho, amounts: make([]float64, 1+traces)} // the moles of ethanol, then the grams of the traces
	in, passed := make([]float64, 1+traces), make([]float64, 1+traces)
	var g, e, flowed, passedE float64
	trace, passedK := make([]float64, traces), make([]float64, traces)
	for i := range n {
		now := w.traceG[i*traces : (i+1)*traces]
		in[0] = w.e[i] - e
		for k := range trace {
			in[1+k] = now[k] - trace[k]
		}
		flowed += m.pour(w.g[i]-g, in, passed)
		passedE += passed[0]
		for k := range trace {
			passedK[k] += passed[1+k]
		}
		g, e, trace = w.g[i], w.e[i], now
		out.g[i], out.e[i] = flowed, passedE
		copy(out.traceG[i*traces:], passedK)
		s := &w.run.Steps[i]
		s.Parrot = alcoholometry.Strength{}
		if m.held == m.full {
			s.Parrot = byGrams(m.amounts[0], m.held)
			out.running[i] = s.Parrot.ABV()
		}
	}
	out.drainE, out.drainG, out.drainK = m.amounts[0], m.held, m.amounts[1:]
	return out, nil
}

// threeDigits prints x, dimensionless here, to three significant digits.
func threeDigits(x float64) string {
	y, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 3, 64), 64)
	if err != nil || y != 0 && math.Abs(y) < 1e-4 {
		return strconv.FormatFloat(x, 'g', 3, 64)
	}
	return strconv.FormatFloat(y, 'f', -1, 64)
}
