package still

import (
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// RunLog is what was written down while a run was made: a row each time somebody read the parrot. Columns that were not kept
// stay empty.
type RunLog struct {
	CollectedL []float64                // collected until then, L at 20 °C in one vessel
	Running    []alcoholometry.Strength // what ran, true: a reading at the parrot's temperature goes through TrueStrength first
	Head       []quantity.Temperature   // thermometer at the head
	Min        []float64                // minutes by one clock
	Total      alcoholometry.Spirit     // all that was collected, measured at the end; without a strength if it was not
}

// How far a log may be from what a still can do before a figure counts as one in another unit, and how large a gap may be.
// Own choice.
const (
	mostGap      = 0.2  // of the whole volume, dimensionless
	jumpABV      = 25.0 // rise of the strength between two rows, % vol: a proof among per cent by volume
	headSlackC   = 5.0  // beyond the boiling points, °C: a thermometer that is not quite right
	fewestRows   = 3    // more than there are figures to find
	fewestOfRows = 4
)

// check returns an error that names row and column of what is wrong in the log of a batch, counting rows from 1.
func (g RunLog) check(function string, b Batch, l *line) error {
	n := len(g.CollectedL)
	if n < fewestOfRows {
		return inputf(function, "the log has %d rows; give at least %d, from the beginning of the run to its end", n, fewestOfRows)
	}
	for _, c := range []struct {
		name string
		rows int
	}{{"strength", len(g.Running)}, {"head temperature", len(g.Head)}, {"time", len(g.Min)}} {
		if c.rows != 0 && c.rows != n {
			return inputf(function, "the log has %d volumes and %d entries in the column %s; give one for each row, or none", n, c.rows, c.name)
		}
	}
	if len(g.Running) == 0 && len(g.Head) == 0 {
		return inputf(function, "the log has neither strengths nor head temperatures; one of them is needed")
	}
	at := func(i int, column, format string, args ...any) error {
		return inputf(function, "log, row %d, column %s: "+format, append([]any{i + 1, column}, args...)...)
	}
	last := g.CollectedL[n-1]
	for i, v := range g.CollectedL {
		switch {
		case !(v >= 0) || math.IsInf(v, 0):
			return at(i, "volume", "%g L; it must be a number from 0 L", v)
		case i > 0 && v < g.CollectedL[i-1]:
			return at(i, "volume", "%g L after %g L; what is collected does not get less (are millilitres among the litres?)", v, g.CollectedL[i-1])
		case i > 0 && v-g.CollectedL[i-1] > mostGap*last:
			return at(i, "volume", "%g L after %g L is a gap of %.0f %% of the run; log at least every %.0f %%", v, g.CollectedL[i-1], 100*(v-g.CollectedL[i-1])/last, 100*mostGap)
		}
	}
	if last == 0 {
		return inputf(function, "the log collects 0 L; give the volumes")
	}
	if last > b.Pot.VolumeL {
		return at(n-1, "volume", "%g L collected from a pot of %g L; is it in millilitres?", last, b.Pot.VolumeL)
	}
	if first := g.CollectedL[0]; first > mostGap*last {
		return at(0, "volume", "the log begins at %g L of %g L; begin earlier", first, last)
	}
	top := strengthOf(l.most).ABV()
	for i, s := range g.Running {
		switch {
		case !s.IsSet():
			return at(i, "strength", "it is not set; leave the row out, or fill it in")
		case s.ABV() > top+1:
			return at(i, "strength", "%.1f %% vol is above the azeotrope, %.1f %% vol; is it in proof?", s.ABV(), top)
		case i > 0 && math.Abs(s.ABV()-g.Running[i-1].ABV()) > jumpABV:
			return at(i, "strength", "%.1f %% vol after %.1f %% vol; are proof and per cent by volume mixed, or is a row missing?", s.ABV(), g.Running[i-1].ABV())
		}
	}
	lowC, highC := l.TempK(l.most)-273.15-headSlackC, l.TempK(0)-273.15+headSlackC
	for i, t := range g.Head {
		if t.C() < lowC || t.C() > highC {
			return at(i, "head temperature", "%.1f °C; under %v it lies from %.0f to %.0f °C (is it in °F, or not at the head?)", t.C(), l.P(), lowC, highC)
		}
	}
	for i, t := range g.Min {
		switch {
		case math.IsNaN(t) || math.IsInf(t, 0):
			return at(i, "time", "%g min is no time", t)
		case i > 0 && t <= g.Min[i-1]:
			return at(i, "time", "%g min after %g min; the clock does not go back", t, g.Min[i-1])
		}
	}
	if g.Total.Strength.IsSet() {
		return as(function, alcoholometry.CheckSpirit(function, g.Total))
	}
	return nil
}
