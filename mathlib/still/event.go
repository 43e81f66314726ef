package still

import (
	"errors"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

// event is a mark made ready to be watched for during a run.
type event struct {
	mark Mark
	x    float64 // of its strength, or of the vapour of its temperature, as a mole fraction
	k    int     // the trace
}

func (m *machine) newEvent(mark Mark) (*event, error) {
	if err := mark.check(m.function, m.burden.names); err != nil {
		return nil, err
	}
	e := &event{mark: mark}
	switch mark.kind {
	case startMark, endMark:
		return nil, inputf(m.function, "a phase ends at %v; give a strength, a volume, a temperature or a limit", mark)
	case strengthMark, potMark:
		e.x = mark.strength.MoleFraction()
	case underMark, overMark:
		_, k, err := carried(m.function, mark.name, m.burden.names)
		if err != nil {
			return nil, err
		}
		e.k = k
	}
	return e, nil
}

// traced reports whether the event is one of a trace.
func (e *event) traced() bool {
	return e != nil && (e.mark.kind == underMark || e.mark.kind == overMark)
}

// left returns how far there is to go: above 0 before the event, 0 or below from it on. The unit is the mark's.
func (e *event) left(m *machine, s *state, mo *moment) float64 {
	switch e.mark.kind {
	case strengthMark:
		return mo.z - e.x
	case potMark:
		return s.v.e/s.v.n - e.x
	case volumeMark:
		return e.mark.volumeL - m.outL(s)
	case headMark:
		return e.mark.temp.K() - m.headK(mo.z)
	case underMark:
		return m.runningMgKg(e.k, s, mo) - m.limitMgKg(e, mo)
	case overMark:
		return m.limitMgKg(e, mo) - m.runningMgKg(e.k, s, mo)
	}
	return math.Inf(1)
}

// headK returns the temperature of the vapour that becomes the distillate z, K.
func (m *machine) headK(z float64) float64 {
	x, _ := m.head.liquid(z)
	return m.head.TempK(x)
}

// outL returns what has come over, L at 20 °C in one vessel.
func (m *machine) outL(s *state) float64 {
	if s.outN <= 0 {
		return 0
	}
	return litres(s.outE, s.outN)
}

// litres returns the volume of moles of ethanol and water as one liquid at 20 °C, L.
func litres(ethanol, all float64) float64 {
	g := gramsOf(ethanol, all)
	if g <= 0 {
		return 0
	}
	rho, err := alcoholometry.DensityKgM3(byGrams(ethanol, g), quantity.Temperature{})
	if err != nil {
		panic(err) // a strength at 20 °C has a density
	}
	return g / rho
}

// byGrams returns the strength of what holds the moles of ethanol in g grams.
func byGrams(ethanol, g float64) alcoholometry.Strength {
	return strengthByMass(100 * ethanol * alcoholometry.MolarMassEthanolG / g)
}

// runningMgKg returns how much of the trace k there is in what runs just now, mg/kg.
func (m *machine) runningMgKg(k int, s *state, mo *moment) float64 {
	base, n := s.potK, s.v.n
	if m.thumping {
		base, n = s.thumpK, s.v.thumpN
	}
	return 1e6 * mo.rise[k] * base[k] / n * m.burden.molarG[k] / gramsOf(mo.z, 1)
}

func (m *machine) limitMgKg(e *event, mo *moment) float64 {
	x, err := alcoholometry.ConcentrationMgKg(e.mark.limit, strengthOf(mo.z))
	if err != nil {
		return 0 // no alcohol runs to count on: nothing is over a limit counted on it
	}
	return x
}

// carried returns the name of a compound as package compound has it, and its place among the names carried along.
func carried(function, name string, names []string) (string, int, error) {
	c, err := compound.Find(name)
	if err != nil {
		var u *compound.UnknownError
		if errors.As(err, &u) {
			return "", 0, as(function, err)
		}
		return "", 0, err
	}
	for k, n := range names {
		if n == c.Name {
			return n, k, nil
		}
	}
	return "", 0, &NotCarriedError{Func: function, Name: c.Name, Carried: names}
}

// pureLitresOf returns the pure alcohol in what flows between, L at 20 °C.
func pureLitresOf(a, b flow) float64 {
	if b.g-a.g <= 0 {
		return 0
	}
	s, err := alcoholometry.Weighed((b.g-a.g)/1000, byGrams(b.e-a.e, b.g-a.g))
	if err != nil {
		panic(err) // an amount that is no number
	}
	return s.PureL()
}
