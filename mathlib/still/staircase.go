package still

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Staircase is McCabe and Thiele's construction for a column.
type Staircase struct {
	Stages     float64   // ideal stages from the top, real plates where an efficiency was given, the reboiler included; dimensionless
	FeedStages []int     // the stage that each feed goes to, from the top
	X, Y       []float64 // the staircase: mole fractions of its corners, from the distillate down
	LineX      []float64 // the operating lines: their corners, from the distillate down
	LineY      []float64
	Bottoms    alcoholometry.Strength
	Minimum    Pinch

	DistillateKmolH float64 // the unit is kmol/h, as in the next three
	BottomsKmolH    float64
	VapourKmolH     float64 // at the bottom
	SteamKmolH      float64 // open steam; 0 with a reboiler
	DistillateLH    float64 // at 20 °C
	BottomsLH       float64
	SteamKgH        float64 // the unit is kg/h
	CondenserKW     float64 // heat that the condenser takes up, kW; the unit is kW
	Notes           []string
}

// Pinch is the least reflux with which a column can do its work, with infinitely many plates, and where they crowd.
type Pinch struct {
	Reflux  float64 // returned over taken, by moles (dimensionless)
	X, Y    float64 // mole fractions of ethanol in liquid and vapour there, dimensionless
	Tangent bool    // the operating line touches the curve between feed and top, not at the feed
}

// String gives the pinch in one line.
func (p Pinch) String() string {
	if p.Reflux == 0 {
		return "no reflux is needed"
	}
	where := "at the feed"
	if p.Tangent {
		where = "where the line touches the curve"
	}
	return fmt.Sprintf("least reflux %.3f, pinch %s, x = %.3f", p.Reflux, where, p.X)
}

const mostStages = 300

// ColumnStages returns the stages of a column. Near a tangent pinch their number hangs on how the equilibrium is drawn: the same
// table gives 19 stages with straight lines and 23 with a smooth curve.
//
// It fails with an *InputError at and below the least reflux, with a *TooStrongError for a distillate no weaker than the
// azeotrope, and for what is unset or out of range.
func ColumnStages(c Column) (Staircase, error) {
	const fn = "still.ColumnStages"
	build, err := c.plan(fn)
	if err != nil {
		return Staircase{}, err
	}
	for _, r := range []struct {
		what      string
		v, lo, hi float64
		unit      string
	}{{"reflux", c.Reflux, 0, 1e4, ""}, {"efficiency of the plates", c.EfficiencyPct, 0, 100, "%"}} {
		if err := quantity.CheckRange(fn, r.what, r.v, r.lo, r.hi, r.unit, ""); err != nil {
			return Staircase{}, err
		}
	}
	least, err := minimumReflux(fn, build)
	if err != nil {
		return Staircase{}, err
	}
	if c.Reflux < least.Reflux || c.Reflux == least.Reflux && least.Reflux > 0 {
		return Staircase{}, inputf(fn, "the reflux is %g and the least is %.3f (x = %.3f); give a higher one", c.Reflux, least.Reflux, least.X)
	}
	t, err := build(c.Reflux)
	if err != nil {
		return Staircase{}, err
	}
	out := Staircase{Minimum: least}
	if err := out.climb(fn, t, percent(c.EfficiencyPct)); err != nil {
		return Staircase{}, err
	}
	out.fill(t)
	return out, nil
}

// climb counts the stages from the top down.
func (s *Staircase) climb(function string, t *tower, efficiency float64) error {
	x, y := t.xD, t.xD
	s.X, s.Y = []float64{x}, []float64{y}
	k := 0
	for n := 1; n <= mostStages; n++ {
		before := x
		ideal, _ := t.line.liquid(y)
		last := ideal <= t.xB
		// The reboiler, and a last stage that an ideal one would be more than enough for, is ideal.
		if x = ideal; efficiency < 1 && !(last && !t.steam) {
			x = t.lame(y, efficiency)
		}
		s.X, s.Y = append(s.X, x), append(s.Y, y)
		for k < len(t.crossings) && x <= t.crossings[k] {
			k++
			s.FeedStages = append(s.FeedStages, n)
		}
		if x <= t.xB {
			s.Stages = float64(n-1) + (before-t.xB)/(before-x)
			return nil
		}
		y = t.sections[k].y(x)
		s.X, s.Y = append(s.X, x), append(s.Y, y)
	}
	return inputf(function, "more than %d stages are needed; give a higher reflux", mostStages)
}

// lame returns the liquid on a plate that leaves the vapour y and reaches a share of its effect between the operating line
// and the curve.
func (t *tower) lame(y, share float64) float64 {
	f := func(x float64) float64 {
		v, _ := t.line.vapour(x)
		op := t.sections[t.at(x)].y(x)
		return op + share*(v-op) - y
	}
	return root(f, 0, 1, f(0), f(1), 1e-14)
}

// fill adds the lines and the rates.
func (s *Staircase) fill(t *tower) {
	top, bottom := t.sections[0], t.sections[len(t.sections)-1]
	s.LineX, s.LineY = []float64{t.xD}, []float64{t.xD}
	for k, x := range t.crossings {
		s.LineX, s.LineY = append(s.LineX, x), append(s.LineY, t.sections[k].y(x))
	}
	s.LineX, s.LineY = append(s.LineX, t.xB), append(s.LineY, bottom.y(t.xB))
	s.Bottoms = strengthOf(t.xB)
	s.DistillateKmolH, s.BottomsKmolH, s.VapourKmolH = t.d, t.b, bottom.vapour
	s.DistillateLH, s.BottomsLH = litres(1000*t.d*t.xD, 1000*t.d), litres(1000*t.b*t.xB, 1000*t.b)
	if t.steam {
		s.SteamKmolH = bottom.vapour
		s.SteamKgH = bottom.vapour * alcoholometry.MolarMassWaterG
	}
	x, _ := t.line.liquid(t.xD)
	h := heats()
	s.CondenserKW = top.vapour * (h.vapour(t.xD, t.line.TempK(x)) - h.liquid(t.xD, t.line.TempK(t.xD))) / 3600
	if s.Minimum.Tangent && t.reflux < 1.5*s.Minimum.Reflux {
		s.Notes = append(s.Notes, "close to a tangent pinch: the number of stages hangs on the equilibrium, by a tenth and more from model to model")
	}
	if n := t.line.Note(); n != "" {
		s.Notes = append(s.Notes, "the boiling line is "+n)
	}
}

// String gives the construction in one line.
func (s Staircase) String() string {
	return fmt.Sprintf("%.1f stages, feed on stage %s; %v", s.Stages, numbers(s.FeedStages), s.Minimum)
}

func numbers(n []int) string {
	out := ""
	for i, v := range n {
		if i > 0 {
			out += " and "
		}
		out += fmt.Sprint(v)
	}
	return out
}

// Rows gives the construction as a table, each row a label, a figure and a unit.
func (s Staircase) Rows() [][]string {
	rows := [][]string{
		{"stages", fmt.Sprintf("%.1f", s.Stages), ""},
		{"feed on stage", numbers(s.FeedStages), ""},
		{"least reflux", fmt.Sprintf("%.3f", s.Minimum.Reflux), ""},
		{"pinch at a mole fraction of", fmt.Sprintf("%.3f", s.Minimum.X), ""},
		{"distillate", quantity.Figure(s.DistillateLH), "L/h"},
		{"bottoms", quantity.Figure(s.BottomsLH), "L/h"},
		{"their strength", fmt.Sprintf("%.2f", s.Bottoms.ABV()), "% vol"},
	}
	if s.SteamKgH > 0 {
		rows = append(rows, []string{"steam", quantity.Figure(s.SteamKgH), "kg/h"})
	}
	rows = append(rows, []string{"heat into the condenser", quantity.Figure(s.CondenserKW), "kW"})
	for _, n := range s.Notes {
		rows = append(rows, []string{"note", n, ""})
	}
	return rows
}

// MinimumReflux returns the least reflux of a column and where its plates crowd. It fails as ColumnStages does; the column's own
// Reflux plays no part.
func MinimumReflux(c Column) (Pinch, error) {
	const fn = "still.MinimumReflux"
	build, err := c.plan(fn)
	if err != nil {
		return Pinch{}, err
	}
	return minimumReflux(fn, build)
}

// minimumReflux seeks the reflux at which the operating lines just touch the curve.
func minimumReflux(function string, build func(float64) (*tower, error)) (Pinch, error) {
	clear := func(reflux float64) (least, x float64) {
		t, err := build(reflux)
		if err != nil {
			return -1, 0 // too little reflux to close the balance
		}
		return t.clearance()
	}
	if at0, x := clear(0); at0 > 0 {
		t, err := build(0)
		if err != nil {
			return Pinch{}, err
		}
		y, _ := t.line.vapour(x)
		return Pinch{X: x, Y: y}, nil // the feed on the top plate does it by itself
	}
	const low, high = 1e-6, 1e4
	atLow, _ := clear(low)
	atHigh, _ := clear(high)
	if atLow >= 0 {
		return Pinch{Reflux: low}, nil
	}
	if atHigh < 0 {
		return Pinch{}, inputf(function, "no reflux up to %g gives this distillate; ask for a weaker one", high)
	}
	ln := root(func(ln float64) float64 { c, _ := clear(math.Exp(ln)); return c }, math.Log(low), math.Log(high), atLow, atHigh, 1e-10)
	p := Pinch{Reflux: math.Exp(ln)}
	t, err := build(p.Reflux)
	if err != nil {
		return Pinch{}, err
	}
	_, p.X = t.clearance()
	p.Y, _ = t.line.vapour(p.X)
	p.Tangent = true
	for _, x := range t.crossings {
		p.Tangent = p.Tangent && math.Abs(p.X-x) > 2e-3
	}
	return p, nil
}

// clearance returns how far the operating lines stay below the curve at the least, by mole fractions, and where.
func (t *tower) clearance() (least, at float64) {
	before := t.xD
	for _, x := range t.crossings {
		if !(x < before && x > t.xB) {
			return -1, math.Min(math.Max(x, t.xB), t.xD) // the lines do not meet where the column works
		}
		before = x
	}
	gap := func(x float64) float64 {
		v, _ := t.line.vapour(x)
		return v - t.sections[t.at(x)].y(x)
	}
	const grid = 1000
	least = math.Inf(1)
	width := (t.xD - t.xB) / grid
	for i := 1; i < grid; i++ {
		x := t.xB + float64(i)*width
		if g := gap(x); g < least {
			least, at = g, x
		}
	}
	for _, x := range t.crossings { // a corner of the lines
		if g := gap(x); g < least {
			least, at = g, x
		}
	}
	// Between the neighbours of the least, by golden sections.
	a, b := math.Max(at-width, t.xB), math.Min(at+width, t.xD)
	const golden = 0.6180339887498949
	for range 40 {
		c, d := b-golden*(b-a), a+golden*(b-a)
		if gap(c) < gap(d) {
			b = d
		} else {
			a = c
		}
	}
	if x := (a + b) / 2; x > t.xB && x < t.xD {
		if g := gap(x); g < least {
			least, at = g, x
		}
	}
	return least, at
}
