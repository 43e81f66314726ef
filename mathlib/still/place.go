package still

import (
	"fmt"
	"math"
	"sort"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// place is a spot in a run, counted in steps with a fraction; behind the last step, drained says how much of the parrot has
// been emptied, from 0 to 1.
type place struct {
	at      float64
	drained float64
}

// flow is what has left the parrot up to a place: moles of ethanol, grams of spirit.
type flow struct{ e, g float64 }

func (r *Run) last() int { return len(r.Steps) - 1 }

// end is behind the last step, with the parrot drained.
func (r *Run) end() place { return place{float64(r.last()), 1} }

// flowTo returns what has left the parrot up to p, straight between two steps.
func (r *Run) flowTo(p place) flow {
	i, f := r.split(p)
	o := &r.out
	out := flow{o.e[i], o.g[i]}
	if f > 0 {
		out.e += f * (o.e[i+1] - o.e[i])
		out.g += f * (o.g[i+1] - o.g[i])
	}
	out.e += p.drained * o.drainE
	out.g += p.drained * o.drainG
	return out
}

// traceTo returns the grams of the trace k that have left the parrot up to p.
func (r *Run) traceTo(p place, k int) float64 {
	i, f := r.split(p)
	o := &r.out
	g := o.traceG[i*o.traces+k]
	if f > 0 {
		g += f * (o.traceG[(i+1)*o.traces+k] - g)
	}
	if o.drainK != nil {
		g += p.drained * o.drainK[k]
	}
	return g
}

func (r *Run) split(p place) (i int, f float64) {
	i = min(int(p.at), r.last())
	return i, p.at - float64(i)
}

// litresOf returns the volume of what flows between, L at 20 °C.
func litresOf(a, b flow) float64 {
	if b.g-a.g <= 0 {
		return 0
	}
	g := b.g - a.g
	e := b.e - a.e
	return litres(e, e+(g-e*alcoholometry.MolarMassEthanolG)/alcoholometry.MolarMassWaterG)
}

// find returns where a mark lies, from a place on.
func (r *Run) find(function string, m Mark, from place) (place, error) {
	if len(r.Steps) == 0 {
		return place{}, inputf(function, "there is no run; Distil makes one")
	}
	if err := m.check(function, r.names()); err != nil {
		return place{}, err
	}
	switch m.kind {
	case startMark:
		return place{}, nil
	case endMark:
		return r.end(), nil
	case volumeMark:
		return r.findVolume(function, m, flow{}, place{})
	case underMark, overMark:
		return r.findLimit(function, m, from)
	}
	left := func(i int) float64 { // above 0 before the mark
		switch m.kind {
		case strengthMark:
			return r.out.running[i] - m.strength.ABV()
		case potMark:
			return r.Steps[i].PotStrength.ABV() - m.strength.ABV()
		}
		return m.temp.C() - r.Steps[i].Head.C()
	}
	first := int(math.Ceil(from.at))
	if first > r.last() || left(first) <= 0 {
		return place{}, beyond(function, m, ": "+r.standing(m, min(first, r.last())))
	}
	for i := first + 1; i <= r.last(); i++ {
		if b := left(i); b <= 0 {
			a := left(i - 1)
			return place{at: float64(i-1) + a/(a-b)}, nil
		}
	}
	return r.whereItEnds(function, m, left(r.last()))
}

func beyond(function string, m Mark, where string) error {
	return &NeverError{Func: function, What: m.String(), Why: "it is beyond that already where the search begins" + where, Already: true}
}

// whereItEnds returns the end of the run if it is the mark but for rounding, as where the run was stopped there.
func (r *Run) whereItEnds(function string, m Mark, left float64) (place, error) {
	if left < 1e-6 {
		return place{at: float64(r.last())}, nil
	}
	return place{}, &NeverError{Func: function, What: m.String(), Why: "at the end " + r.standing(m, r.last())}
}

func (r *Run) standing(m Mark, i int) string {
	switch m.kind {
	case potMark:
		return fmt.Sprintf("the pot is at %v", r.Steps[i].PotStrength)
	case headMark:
		return fmt.Sprintf("the head is at %v", r.Steps[i].Head)
	}
	return fmt.Sprintf("%.2f %% vol runs", r.out.running[i])
}

// findVolume returns where the volume of the mark has run since what had flowed before, looking from a place on.
func (r *Run) findVolume(function string, m Mark, before flow, from place) (place, error) {
	at := func(p place) float64 { return litresOf(before, r.flowTo(p)) - m.volumeL }
	first := int(from.at)
	n := r.last() - first
	i := first + sort.Search(n+1, func(i int) bool { return at(place{at: float64(first + i)}) >= 0 })
	if i > r.last() {
		all := at(r.end())
		if all < -1e-9 {
			return place{}, &NeverError{Func: function, What: m.String(), Why: fmt.Sprintf("at the end it is %s L", quantity.Figure(all+m.volumeL))}
		}
		if last := at(place{at: float64(r.last())}); all > 0 && last < 0 { // while the parrot is emptied
			drain := func(share float64) float64 { return at(place{float64(r.last()), share}) }
			return place{float64(r.last()), root(drain, 0, 1, last, all, 1e-14)}, nil
		}
		return r.end(), nil
	}
	if i == 0 {
		return place{}, nil
	}
	a, b := float64(i-1), float64(i)
	f := func(x float64) float64 { return at(place{at: x}) }
	return place{at: root(f, a, b, f(a), f(b), 1e-12)}, nil
}

// findLimit returns where a compound crosses a limit: between the middles of two steps, whose mean it is known by.
func (r *Run) findLimit(function string, m Mark, from place) (place, error) {
	_, k, err := carried(function, m.name, r.names())
	if err != nil {
		return place{}, err
	}
	sign := 1.0
	if m.kind == overMark {
		sign = -1
	}
	before, last, known := 0.0, 0.0, false
	for i := int(from.at) + 1; i <= r.last(); i++ {
		a, b := place{at: float64(i - 1)}, place{at: float64(i)}
		fa, fb := r.flowTo(a), r.flowTo(b)
		g := fb.g - fa.g
		if g <= 0 {
			continue // the parrot fills
		}
		limit, err := alcoholometry.ConcentrationMgKg(m.limit, byGrams(fb.e-fa.e, g))
		if err != nil {
			return place{}, as(function, err)
		}
		left := sign * (1e6*(r.traceTo(b, k)-r.traceTo(a, k))/g - limit)
		switch {
		case left > 0:
			before, last, known = last, left, true
		case !known:
			return place{}, beyond(function, m, "")
		default:
			return place{at: math.Max(float64(i)-0.5-left/(left-last), from.at)}, nil
		}
	}
	if last < before && last-(before-last)/2 < 0.05*last { // the run was stopped just there: half a step on it is reached
		return place{at: float64(r.last())}, nil
	}
	return place{}, &NeverError{Func: function, What: m.String(), Why: "it is not beyond that at the end of the run"}
}
