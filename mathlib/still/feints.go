package still

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// FeintsPlan says where the cuts of a run are made and how much of heads and tails goes into the next run.
type FeintsPlan struct {
	HeadsEnd     Mark    // unset: there are no heads
	TailsBegin   Mark    // unset: there are no tails
	HeadsBackPct float64 // share of the heads that goes back, per cent, from 0 to 100
	TailsBackPct float64 // share of the tails that goes back, per cent
}

// Cycle is the run that repeats itself when feints go back from run to run.
type Cycle struct {
	Fresh  alcoholometry.Spirit // what is new in each charge
	Back   alcoholometry.Spirit // what comes back into it; without a strength if nothing does
	Run    Run                  // of the charge, fresh and back together
	Heads  Cut                  // without a strength if there are none
	Hearts Cut
	Tails  Cut
	Rounds int // of distilling until it repeats itself
}

// YieldPct returns the pure alcohol in the hearts over that of the fresh charge, per cent.
func (c Cycle) YieldPct() float64 { return 100 * c.Hearts.Spirit.PureL() / c.Fresh.PureL() }

// String gives the cycle in one line.
func (c Cycle) String() string {
	return fmt.Sprintf("each run takes %v and %s L of feints and gives hearts of %v, %.1f %% of the fresh alcohol", c.Fresh, quantity.Figure(c.Back.VolumeL), c.Hearts.Spirit, c.YieldPct())
}

// Rows gives the cycle as a table, each row a label, a figure and a unit.
func (c Cycle) Rows() [][]string {
	rows := [][]string{
		{"fresh charge", quantity.Figure(c.Fresh.VolumeL), "L"},
		{"feints that go back into it", quantity.Figure(c.Back.VolumeL), "L"},
	}
	if c.Back.Strength.IsSet() {
		rows = append(rows, []string{"their strength", fmt.Sprintf("%.1f", c.Back.Strength.ABV()), "% vol"})
	}
	rows = append(rows,
		[]string{"hearts", quantity.Figure(c.Hearts.Spirit.VolumeL), "L"},
		[]string{"their strength", fmt.Sprintf("%.1f", c.Hearts.Spirit.Strength.ABV()), "% vol"},
		[]string{"alcohol in the hearts over that of the fresh charge", fmt.Sprintf("%.1f", c.YieldPct()), "%"},
		[]string{"runs until it repeats itself", fmt.Sprint(c.Rounds), ""})
	for _, x := range c.Hearts.Contents {
		rows = append(rows, []string{x.Name + " in the hearts", threeDigits(x.PerPure.Value()), string(x.PerPure.Per())})
	}
	return rows
}

// The share of a compound that may come back into the next charge, dimensionless; above it, it piles up from run to run.
const mostBack = 0.995

const mostRounds = 200

// SteadyFeints returns the run that repeats itself when from each run a share of heads and tails goes into the next one, on
// top of the same fresh charge. The batch is the fresh charge with its congeners.
//
// It fails as Distil and Run.CutBetween do, and with an *InputError if a compound piles up: heads that all go back take
// nearly all of what boils lowest with them.
func SteadyFeints(b Batch, plan FeintsPlan) (Cycle, error) {
	const fn = "still.SteadyFeints"
	for _, c := range []struct {
		what string
		pct  float64
	}{{"share of the heads that goes back", plan.HeadsBackPct}, {"share of the tails that goes back", plan.TailsBackPct}} {
		if err := quantity.CheckRange(fn, c.what, c.pct, 0, 100, "%", ""); err != nil {
			return Cycle{}, err
		}
	}
	if err := alcoholometry.CheckSpirit(fn, b.Pot); err != nil {
		return Cycle{}, err
	}
	fresh, err := newBurden(fn, b.Congeners, b.Pot)
	if err != nil {
		return Cycle{}, err
	}
	f := feints{function: fn, batch: b, plan: plan, burden: fresh}
	f.start = f.amounts(b.Pot)
	for k, mol := range fresh.mol {
		f.start[2+k] = mol * fresh.molarG[k]
	}
	now := append([]float64(nil), f.start...)
	var history [][]float64
	for f.cycle.Rounds = 1; f.cycle.Rounds <= mostRounds; f.cycle.Rounds++ {
		next, err := f.round(now)
		if err != nil {
			return Cycle{}, err
		}
		if alike(now, next, 1e-9) {
			f.cycle.Fresh = b.Pot
			return f.cycle, nil
		}
		if history = append(history, now); len(history) == 3 {
			next = aitken(history[1], history[2], next)
			history = nil
		}
		now = next
	}
	return Cycle{}, inputf(fn, "after %d runs the charge still changes; send less of the feints back", mostRounds)
}

// feints carries the amounts from run to run: grams of ethanol and of water, then grams of each trace.
type feints struct {
	function string
	batch    Batch
	plan     FeintsPlan
	burden   burden
	start    []float64
	cycle    Cycle
}

func (f *feints) amounts(s alcoholometry.Spirit) []float64 {
	out := make([]float64, 2+len(f.burden.names))
	g := 1000 * s.MassKg()
	out[0] = g * s.Strength.ABW() / 100
	out[1] = g - out[0]
	return out
}

// round distils the amounts and returns those of the next charge.
func (f *feints) round(now []float64) ([]float64, error) {
	b := f.batch
	total := now[0] + now[1]
	var err error
	if b.Pot, err = alcoholometry.Weighed(total/1000, strengthByMass(100*now[0]/total)); err != nil {
		return nil, as(f.function, err)
	}
	b.Congeners = nil
	for k, name := range f.burden.names {
		c := Congener{Name: name, MassG: now[2+k]}
		if c.MassG == 0 {
			c.Amount = nothing
		}
		b.Congeners = append(b.Congeners, c)
	}
	run, err := distil(f.function, b, false)
	if err != nil {
		return nil, err
	}
	if err := f.cut(run); err != nil {
		return nil, err
	}
	next := append([]float64(nil), f.start...)
	for _, c := range []struct {
		cut   Cut
		share float64
	}{{f.cycle.Heads, f.plan.HeadsBackPct / 100}, {f.cycle.Tails, f.plan.TailsBackPct / 100}} {
		if !c.cut.Spirit.Strength.IsSet() || c.share == 0 {
			continue
		}
		part := c.cut.Spirit
		part.VolumeL *= c.share
		for i, g := range f.amounts(part) {
			next[i] += g
		}
		for k, x := range c.cut.Contents {
			next[2+k] += c.share * x.MassG
		}
	}
	f.cycle.Back = alcoholometry.Spirit{}
	g := next[0] - f.start[0]
	if all := g + next[1] - f.start[1]; all > 0 {
		if f.cycle.Back, err = alcoholometry.Weighed(all/1000, strengthByMass(100*g/all)); err != nil {
			return nil, as(f.function, err)
		}
	}
	for i, g := range now {
		if back := next[i] - f.start[i]; g > 0 && back > mostBack*g {
			return nil, inputf(f.function, "%s piles up: %.1f %% of it go back into the next charge; discard part of the heads or tails", f.nameOf(i), 100*back/g)
		}
	}
	return next, nil
}

func (f *feints) nameOf(i int) string {
	switch i {
	case 0:
		return "alcohol"
	case 1:
		return "water"
	}
	return f.burden.names[i-2]
}

// cut makes the three cuts of a run.
func (f *feints) cut(run Run) error {
	heads, tails := f.plan.HeadsEnd, f.plan.TailsBegin
	if !heads.IsSet() {
		heads = AtStart()
	}
	if !tails.IsSet() {
		tails = AtEnd()
	}
	c := &f.cycle
	c.Run, c.Heads, c.Tails = run, Cut{}, Cut{}
	var err error
	if heads.kind != startMark {
		if c.Heads, err = run.CutBetween(AtStart(), heads); err != nil {
			return as(f.function, err)
		}
	}
	if tails.kind != endMark {
		if c.Tails, err = run.CutBetween(tails, AtEnd()); err != nil {
			return as(f.function, err)
		}
	}
	c.Hearts, err = run.CutBetween(heads, tails)
	return as(f.function, err)
}

// alike reports whether two rows of amounts differ by less than tol of their value.
func alike(a, b []float64, tol float64) bool {
	for i := range a {
		if math.Abs(a[i]-b[i]) > tol*math.Abs(b[i]) {
			return false
		}
	}
	return true
}

// aitken returns where three rows of amounts, each made from the one before, lead to if each amount nears its end by an even
// ratio; where it does not, the last one.
//
// Source: Aitken's Δ² process (from memory).
func aitken(a, b, c []float64) []float64 {
	out := append([]float64(nil), c...)
	for i := range out {
		if d, e := b[i]-a[i], c[i]-b[i]; d != 0 && math.Abs(e/d) < mostBack {
			if x := c[i] + e*(e/d)/(1-e/d); x > 0 {
				out[i] = x
			}
		}
	}
	return out
}

// strengthByMass returns the strength of pct per cent by mass, in range but for rounding.
func strengthByMass(pct float64) alcoholometry.Strength {
	s, err := alcoholometry.ABW(math.Min(math.Max(pct, 0), 100))
	if err != nil {
		panic(err) // no number at all
	}
	return s
}

// nothing is a concentration of nought.
var nothing = func() quantity.Concentration {
	c, err := quantity.MgL(0)
	if err != nil {
		panic(err)
	}
	return c
}()
