package botanical

import (
	"math"
	"slices"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
)

// Cut is a cut of a run: its name and the spirit in it. What is spilt or left in pipes may be a cut too.
type Cut struct {
	Name   string
	Spirit alcoholometry.Spirit
}

// Passage says what a run does with a compound.
type Passage struct {
	Compound string
	Shares   []float64 // of what was in the pot at the start, one share for each cut, dimensionless; the rest stays in the pot
	Course   []Moment  // how that goes on in time; needed for what comes late out of a plant
	Notes    []string  // what is estimated, extrapolated or from memory
}

// Moment is a moment of a run for one compound.
type Moment struct {
	Min  float64 // minutes since the heat was put on
	Left float64 // share of what was in the pot at the start that is still in it, dimensionless
	Cut  int     // number of the cut, from 0, that what comes over from here to the next moment goes into
}

// CarryOver is where the markers of a charge went in a run.
type CarryOver struct {
	Cuts   []CutProfile
	Loads  []Load // with the accounts after the run
	Others []Other

	notes []string
}

// Carry spreads the markers of a charge over the cuts of a run. It needs a passage for each compound of Charge.Traces.
//
// Source: mass balance; the shares are the run's. Traces go through a run in proportion to their amount, as long as there is
// no layer of oil in the pot.
//
// It fails for shares that are below 0 or add up to more than 1, for a compound without a passage, and where something comes
// late out of a plant and the passage has no Course.
func Carry(c Charge, cuts []Cut, passages []Passage) (CarryOver, error) {
	return carry("botanical.Carry", c, cuts, passages, passages)
}

// CarryBetween is Carry for a run that was reckoned twice, with the least and with the most that the charge may hold: with
// an oil layer in the pot the two do not go in proportion. Volumes are those of cuts.
func CarryBetween(c Charge, cuts []Cut, least, most []Passage) (CarryOver, error) {
	return carry("botanical.CarryBetween", c, cuts, least, most)
}

func carry(fn string, c Charge, cuts []Cut, least, most []Passage) (CarryOver, error) {
	if len(c.Items) == 0 {
		return CarryOver{}, inputf(fn, "there is no charge; NewCharge makes one")
	}
	if c.infusion() {
		return CarryOver{}, inputf(fn, "the recipe is an infusion, of which nothing is distilled; see Charge.Macerate")
	}
	if len(cuts) == 0 {
		return CarryOver{}, inputf(fn, "the run has no cuts; give at least one")
	}
	for i, cut := range cuts {
		if err := alcoholometry.CheckSpirit(fn, cut.Spirit); err != nil && cut.Spirit.VolumeL != 0 {
			return CarryOver{}, as(fn, err)
		}
		for _, other := range cuts[:i] {
			if other.Name == cut.Name {
				return CarryOver{}, inputf(fn, "two cuts are called %q; give each a name of its own", cut.Name)
			}
		}
	}
	lowWay, err := checkPassages(fn, least, len(cuts))
	if err != nil {
		return CarryOver{}, err
	}
	highWay, err := checkPassages(fn, most, len(cuts))
	if err != nil {
		return CarryOver{}, err
	}
	out := CarryOver{Others: slices.Clone(c.Others), notes: c.Notes()}
	for _, l := range c.Loads {
		for _, e := range []struct {
			a     *Account
			way   map[string]Passage
			perH  float64
			which string
		}{{&l.Least, lowWay, l.ReleasePerH.Low, "least"}, {&l.Most, highWay, l.ReleasePerH.High, "most"}} {
			*e.a, err = run(fn, *e.a, l, e.way, e.perH, len(cuts))
			if err != nil {
				return CarryOver{}, err
			}
		}
		out.Loads = append(out.Loads, l)
	}
	out.note(highWay)
	return out, out.fill(fn, cuts)
}

func checkPassages(fn string, passages []Passage, cuts int) (map[string]Passage, error) {
	out := map[string]Passage{}
	for _, p := range passages {
		known, err := compound.Find(p.Compound)
		if err != nil {
			return nil, as(fn, err)
		}
		if _, twice := out[known.Name]; twice {
			return nil, inputf(fn, "%s has two passages; give it one", known.Name)
		}
		if len(p.Shares) != cuts {
			return nil, inputf(fn, "the passage of %s has %d shares and there are %d cuts; give one for each", known.Name, len(p.Shares), cuts)
		}
		sum := 0.0
		for _, x := range p.Shares {
			if !(x >= 0 && x <= 1+1e-9) {
				return nil, inputf(fn, "a share of %s is %g; it must be from 0 to 1", known.Name, x)
			}
			sum += x
		}
		if sum > 1+1e-9 {
			return nil, inputf(fn, "the shares of %s add up to %.10g; more than 1 of it cannot come over", known.Name, sum)
		}
		if err := checkCourse(fn, known.Name, p.Course, cuts); err != nil {
			return nil, err
		}
		out[known.Name] = p
	}
	return out, nil
}

// run carries an account through a run: what leaves one place is what another one gets.
func run(fn string, a Account, l Load, way map[string]Passage, perH float64, cuts int) (Account, error) {
	a.CutsG = make([]float64, cuts)
	if a.PotG == 0 && a.LateG == 0 {
		return a, nil
	}
	p, ok := way[l.Compound]
	if !ok {
		return a, inputf(fn, "there is no passage of %s, of which %s brings some; carry it along in the run", l.Compound, l.Plant)
	}
	if l.ReleasePerH.IsSet() {
		if len(p.Course) == 0 {
			return a, inputf(fn, "%s comes late out of %s and its passage has no Course; give one, or leave ReleasePerH unset", l.Compound, l.Plant)
		}
		if p.Course[len(p.Course)-1].Min <= p.Course[0].Min {
			return a, inputf(fn, "%s comes late out of %s and the course of its passage takes no time; run the still with the power of its heater", l.Compound, l.Plant)
		}
		return late(a, p.Course, perH), nil
	}
	pot := a.PotG
	for i, share := range p.Shares {
		g := math.Min(pot*share, a.PotG)
		a.CutsG[i] = g
		a.PotG -= g
	}
	return a, nil
}

func (o *CarryOver) note(way map[string]Passage) {
	seen := map[string]bool{}
	for _, l := range o.Loads {
		if seen[l.Compound] {
			continue
		}
		seen[l.Compound] = true
		if f, ok := embedded().spread[l.Compound]; ok {
			o.notes = append(o.notes, sprintf("%s: two estimates of its volatility lie up to a factor of %s apart and no measurement decides; measure one cut and Calibrate", l.Compound, threeDigits(f.High)))
		}
		for _, n := range way[l.Compound].Notes {
			o.notes = append(o.notes, l.Compound+": "+n)
		}
	}
}

// fill makes the profiles of the cuts from the accounts.
func (o *CarryOver) fill(fn string, cuts []Cut) error {
	o.Cuts = nil
	for i, cut := range cuts {
		var rows []gift
		for _, l := range o.Loads {
			rows = append(rows, gift{l.Plant, l.Compound, Between(l.Least.CutsG[i], l.Most.CutsG[i])})
		}
		p, err := newProfile(fn, cut.Name, cut.Spirit, rows)
		if err != nil {
			return err
		}
		o.Cuts = append(o.Cuts, p)
	}
	return nil
}

// Cut returns the profile of a cut by its name. It panics with an *InputError if there is none.
func (o CarryOver) Cut(name string) CutProfile {
	names := make([]string, len(o.Cuts))
	for i, c := range o.Cuts {
		if c.Name == name {
			return c
		}
		names[i] = c.Name
	}
	panic(inputf("botanical.CarryOver.Cut", "there is no cut %q; there are %q", name, names))
}

// Notes lists what there is to say of the figures.
func (o CarryOver) Notes() []string { return slices.Clone(o.notes) }

// ClosureG returns by how much the worst account is out, grams: a check of the reckoning, 0 but for rounding.
func (o CarryOver) ClosureG() float64 {
	worst := 0.0
	for _, l := range o.Loads {
		for _, a := range []Account{l.Least, l.Most} {
			worst = math.Max(worst, math.Abs(a.ClosureG()))
		}
	}
	return worst
}
