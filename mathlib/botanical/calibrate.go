package botanical

import (
	"math"
	"slices"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

// Measured is what an analysis found of a compound in a cut. Compound may be a sum, "thujone" or "citral".
type Measured struct {
	Cut      string // name of the cut
	Compound string
	Amount   quantity.Concentration
}

// farthest is by which factor a measurement may lie beyond what was predicted. Own choice: the volatilities are good to a
// factor of 2 to 4.
const farthest = 5

// Calibrate returns the carry-over with each measured compound as measured: everything that moves of it, in all cuts, in the
// pot and in what was kept back, is multiplied by one factor so that the cut measured holds what was found, and the plants
// keep the rest. Shares among the cuts stay as predicted. Where more came over than the figures give, the plants are taken
// to have brought so much more.
//
// It fails for a cut or compound that there is not, for two measurements of one compound, for a cut in which nothing was
// predicted, and where a measurement is beyond a factor of 5 of what was predicted: then oil content, marker or run is not
// what was thought.
func Calibrate(o CarryOver, measured ...Measured) (CarryOver, error) {
	const fn = "botanical.Calibrate"
	out := o
	out.Loads = slices.Clone(o.Loads)
	out.notes = o.Notes()
	done := map[string]bool{}
	for _, m := range measured {
		cut := slices.IndexFunc(o.Cuts, func(c CutProfile) bool { return c.Name == m.Cut })
		if cut < 0 {
			return CarryOver{}, inputf(fn, "there is no cut %q; give one of the run's", m.Cut)
		}
		names, title, err := compoundsOf(fn, m.Compound)
		if err != nil {
			return CarryOver{}, err
		}
		for _, n := range names {
			if done[n] {
				return CarryOver{}, inputf(fn, "%s is measured twice; one measurement sets its factor", n)
			}
			done[n] = true
		}
		grams, err := alcoholometry.MassG(m.Amount, o.Cuts[cut].Spirit)
		if err != nil {
			return CarryOver{}, as(fn, err)
		}
		if err := out.calibrate(fn, title, names, cut, grams); err != nil {
			return CarryOver{}, err
		}
	}
	cuts := make([]Cut, len(o.Cuts))
	for i, c := range o.Cuts {
		cuts[i] = Cut{c.Name, c.Spirit}
	}
	if err := out.fill(fn, cuts); err != nil {
		return CarryOver{}, err
	}
	for _, m := range measured {
		names, _, _ := compoundsOf(fn, m.Compound) // found above
		for i := range out.Cuts {
			for j := range out.Cuts[i].Contents {
				c := &out.Cuts[i].Contents[j]
				c.Measured = c.Measured || out.Cuts[i].Name == m.Cut && slices.Contains(names, c.Compound)
			}
		}
	}
	return out, nil
}

// compoundsOf returns the compounds of a name, which may be a sum, and the name as it is written here.
func compoundsOf(fn, name string) ([]string, string, error) {
	for title, s := range embedded().sums {
		if plain(title) == plain(name) {
			return s.compounds, title, nil
		}
	}
	known, err := compound.Find(name)
	if err != nil {
		return nil, "", as(fn, err)
	}
	return []string{known.Name}, known.Name, nil
}

func (o *CarryOver) calibrate(fn, title string, names []string, cut int, grams float64) error {
	least, most := 0.0, 0.0
	for _, l := range o.Loads {
		if slices.Contains(names, l.Compound) {
			least += l.Least.CutsG[cut]
			most += l.Most.CutsG[cut]
		}
	}
	low, high := math.Min(least, most), math.Max(least, most)
	if high == 0 {
		return inputf(fn, "no %s is predicted in %q, so that there is nothing to multiply", title, o.Cuts[cut].Name)
	}
	if grams < low/farthest || grams > high*farthest {
		return inputf(fn, "%s g of %s were measured in %q where %v g were predicted, more than a factor of %d apart; look for the cause before calibrating", threeDigits(grams), title, o.Cuts[cut].Name, Between(low, high), farthest)
	}
	more := 0.0
	for i := range o.Loads {
		l := &o.Loads[i]
		if !slices.Contains(names, l.Compound) {
			continue
		}
		// An end at which nothing was predicted has no factor; it takes the accounts of the other one.
		if least == 0 {
			l.Least = l.Most.clone()
		}
		if most == 0 {
			l.Most = l.Least.clone()
		}
		more = math.Max(more, l.Most.multiply(factor(grams, most, least)))
		l.Least.multiply(factor(grams, least, most))
		l.Lot = "" // what is in the cut no longer hangs on what the lot holds
		l.Label += "; calibrated by an analysis of " + o.Cuts[cut].Name
	}
	o.notes = append(o.notes, sprintf("%s: %s g measured in %s, %v g predicted", title, threeDigits(grams), o.Cuts[cut].Name, Between(low, high)))
	if more > 0 {
		o.notes = append(o.notes, sprintf("%s: more of it came over than oil content and share give; the load is taken as larger", title))
	}
	return nil
}

// factor returns measured over predicted, dimensionless, by the other end's prediction where there is none.
func factor(measured, predicted, other float64) float64 {
	if predicted == 0 {
		predicted = other
	}
	return measured / predicted
}

// multiply multiplies all that moved and leaves the rest in the plant. It returns the grams by which the load had to grow.
func (a *Account) multiply(f float64) (more float64) {
	moved := a.MacerateG*f + a.PotG*f
	a.MacerateG *= f
	a.PotG *= f
	cuts := make([]float64, len(a.CutsG))
	for i, g := range a.CutsG {
		cuts[i] = g * f
		moved += cuts[i]
	}
	a.CutsG = cuts
	a.PlantG = a.LoadG - moved
	if a.PlantG < 0 {
		more = -a.PlantG
		a.LoadG, a.PlantG = moved, 0
	}
	return more
}

func (a Account) clone() Account {
	a.CutsG = slices.Clone(a.CutsG)
	return a
}
