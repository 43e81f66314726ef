package botanical

import (
	"slices"
	"strings"

	"swanneck/mathlib/alcoholometry"
)

// Trace is a compound that a charge brings into the pot, in grams: free in it or still to come out of the plants there.
type Trace struct {
	Compound    string  // as package compound has it
	MassG       float64 // to hand to the still: the upper end
	LowG, HighG float64
}

// Traces returns what the still is to carry along, sorted by compound. Both ends of the ranges go the same way through a
// run, in proportion, as long as no oil layer forms; if one does, run the lower end too and see CarryBetween.
func (c Charge) Traces() []Trace {
	var out []Trace
	for _, l := range c.Loads {
		low, high := l.Least.PotG+l.Least.LateG, l.Most.PotG+l.Most.LateG
		if high == 0 {
			continue
		}
		i := slices.IndexFunc(out, func(t Trace) bool { return t.Compound == l.Compound })
		if i < 0 {
			i = len(out)
			out = append(out, Trace{Compound: l.Compound})
		}
		out[i].LowG += low
		out[i].HighG += high
		out[i].MassG = out[i].HighG
	}
	slices.SortFunc(out, func(a, b Trace) int { return strings.Compare(a.Compound, b.Compound) })
	return out
}

// Traces returns what the recipe brings into a still that is charged with spirit; see NewCharge and Charge.Traces.
func (r Recipe) Traces(spirit alcoholometry.Spirit) ([]Trace, error) {
	c, err := newCharge("botanical.Recipe.Traces", r, spirit)
	if err != nil {
		return nil, err
	}
	return c.Traces(), nil
}
