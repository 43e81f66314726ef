package uncertainty

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"swanneck/mathlib/quantity"
)

// Draws is what a Monte Carlo simulation found.
type Draws struct {
	Name        string
	Unit        string
	Draws       int     // how many were made
	Seed        uint64  // the seed they were made with
	Stopped     int     // draws for which the model had no answer; they are left out
	FirstStop   string  // why the first of them had none
	Mean        float64 // of the results, in the unit named
	Standard    float64 // their standard deviation, the standard uncertainty, in the unit named
	CoveragePct float64 // how often the intervals hold the true value, per cent
	Low, High   float64 // the shortest interval, in the unit named
	EvenLow     float64 // the interval with as much left out below as above, in the unit named: its low end
	EvenHigh    float64 // its high end, in the unit named

	sorted []float64
}

// shortest returns the ends of the shortest interval that holds the share pct, per cent, of sorted results.
//
// Source: JCGM 101:2008, 7.7.4 and the note on rounding pM in 7.7.2.
func shortest(sorted []float64, pct float64) (low, high float64) {
	m := len(sorted)
	q := min(int(pct/100*float64(m)+0.5), m-1)
	best := 0
	for r := 1; r+q < m; r++ {
		if sorted[r+q]-sorted[r] < sorted[best+q]-sorted[best] {
			best = r
		}
	}
	return sorted[best], sorted[best+q]
}

// Below returns the value, in the unit of the result, below which pct per cent of the results lie, from 0 to 100. It
// panics with a *quantity.RangeError for another pct, and for draws that were not made by MonteCarlo.
func (d Draws) Below(pct float64) float64 {
	const fn = "uncertainty.Draws.Below"
	if err := quantity.CheckRange(fn, "the share", pct, 0, 100, "per cent", ""); err != nil {
		panic(err)
	}
	d.mustHold(fn)
	at := pct / 100 * float64(len(d.sorted)-1)
	i := int(at)
	if i == len(d.sorted)-1 {
		return d.sorted[i]
	}
	return d.sorted[i] + (at-float64(i))*(d.sorted[i+1]-d.sorted[i])
}

// ShareBelowPct returns how many of the results lie below a limit, in per cent: the chance that the true value does. The
// limit is in the unit of the result. It panics with a *quantity.RangeError for a limit that is no finite number, and for
// draws that were not made by MonteCarlo.
func (d Draws) ShareBelowPct(limit float64) float64 {
	const fn = "uncertainty.Draws.ShareBelowPct"
	if err := quantity.CheckRange(fn, "the limit", limit, math.Inf(-1), math.Inf(1), d.Unit, ""); err != nil {
		panic(err)
	}
	d.mustHold(fn)
	i, _ := slices.BinarySearch(d.sorted, limit)
	return 100 * float64(i) / float64(len(d.sorted))
}

func (d Draws) mustHold(function string) {
	if len(d.sorted) == 0 {
		panic(&quantity.RangeError{Func: function, Param: "the number of draws", Value: 0, Min: fewestDraws, Max: mostDraws})
	}
}

// Outline returns the draws as the outline of a histogram, to be drawn as a line: the values along the axis, in the unit
// of the result, and the share of the draws in each bar, in per cent. The outermost 0.1 % on both sides are left out. It
// panics with a *quantity.RangeError for fewer than 5 or more than 1000 bars.
func (d Draws) Outline(bars int) (values, sharesPct []float64) {
	if err := quantity.CheckRange("uncertainty.Draws.Outline", "the number of bars", float64(bars), 5, 1000, "", ""); err != nil {
		panic(err)
	}
	from, to := d.Below(0.1), d.Below(99.9)
	if from == to {
		return []float64{from, from}, []float64{0, 100}
	}
	width := (to - from) / float64(bars)
	values, sharesPct = append(values, from), append(sharesPct, 0)
	below := d.ShareBelowPct(from)
	for i := range bars {
		end := from + float64(i+1)*width
		next := d.ShareBelowPct(end)
		values = append(values, end-width, end)
		sharesPct = append(sharesPct, next-below, next-below)
		below = next
	}
	return append(values, to), append(sharesPct, 0)
}

// String gives the result with its interval, in one line.
func (d Draws) String() string {
	half := (d.High - d.Low) / 2
	value, _ := figures(d.Mean, half)
	low, _ := figures(d.Low, half)
	high, _ := figures(d.High, half)
	_, u := figures(d.Mean, d.Standard)
	s := fmt.Sprintf("%s = %s %s, %s %% from %s to %s %s (standard uncertainty %s %s, %s draws, seed %d)",
		d.Name, value, d.Unit, plain(d.CoveragePct), low, high, d.Unit, u, d.Unit, thousands(d.Draws), d.Seed)
	if d.Stopped > 0 {
		s += fmt.Sprintf("; %s without an answer are left out, the first: %s", thousands(d.Stopped), d.FirstStop)
	}
	return s
}

// Rows gives the draws as a table, each row a label, a figure and a unit.
func (d Draws) Rows() [][]string {
	half := (d.High - d.Low) / 2
	show := func(x float64) string { s, _ := figures(x, half); return s }
	_, u := figures(d.Mean, d.Standard)
	rows := [][]string{
		{d.Name + ", mean", show(d.Mean), d.Unit},
		{"standard uncertainty", u, d.Unit},
		{fmt.Sprintf("shortest interval of %s %%", plain(d.CoveragePct)), show(d.Low) + " to " + show(d.High), d.Unit},
		{"interval with as much below as above", show(d.EvenLow) + " to " + show(d.EvenHigh), d.Unit},
		{"draws, seed " + strconv.FormatUint(d.Seed, 10), thousands(d.Draws), ""},
	}
	if d.Stopped > 0 {
		rows = append(rows, []string{"draws without an answer, left out; the first: " + d.FirstStop, thousands(d.Stopped), ""})
	}
	return rows
}

// thousands prints a whole number with spaces between groups of three digits.
func thousands(n int) string {
	s := strconv.Itoa(n)
	for i := len(s) - 3; i > 0; i -= 3 {
		s = s[:i] + " " + s[i:]
	}
	return s
}
