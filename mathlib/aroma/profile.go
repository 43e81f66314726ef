package aroma

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"swanneck/mathlib/alcoholometry"
)

// Profile is one bottle as many drinks: the air over the glass at each strength, relative to the air over the bottle's own.
// No threshold takes part, so it says what opens and what closes, not what is smelt.
type Profile struct {
	Drink     Drink
	Strengths []alcoholometry.Strength
	Lines     []Line
	Cloudy    []bool   // at each strength, by all compounds together
	Unplaced  []string // compounds left out, with the reason
	Notes     []string
}

// Line is one compound in a profile.
type Line struct {
	Compound    string
	GasUgL      []float64 // in the air over each strength, µg/L
	TimesBottle []float64 // over the air over the bottle's strength, dimensionless
	CappedBy    []string  // BySolubility, ByVapourPressure or "" at each strength
	Notes       []string
}

// ProfileOf returns how the air over the glass changes as the drink is watered to each of the strengths, which must lie at
// the drink's or below. Compounds of which nobody knows how they leave a spirit are left out by name; if none is left, there is no
// profile. The rise is sure, its size good to a factor of two.
func ProfileOf(d Drink, strengths ...alcoholometry.Strength) (Profile, error) {
	const fn = "aroma.ProfileOf"
	g, err := look(fn, d)
	if err != nil {
		return Profile{}, err
	}
	if len(strengths) == 0 {
		return Profile{}, fmt.Errorf("%s: there are no strengths; give at least one, at %v or below", fn, d.Strength)
	}
	p := Profile{Drink: d, Strengths: slices.Clone(strengths)}
	glasses := make([]glass, len(strengths))
	for i, s := range strengths {
		w, err := Dilute(d, s)
		if err != nil {
			return Profile{}, as(fn, err)
		}
		if glasses[i], err = look(fn, w); err != nil {
			return Profile{}, err
		}
		p.Cloudy = append(p.Cloudy, glasses[i].load > 1)
	}
	for k, name := range g.names {
		l, err := lineOf(fn, &g, glasses, k)
		if err != nil {
			_, why, _ := strings.Cut(err.Error(), ": ")
			p.Unplaced = append(p.Unplaced, name+": "+why)
			continue
		}
		p.Lines = append(p.Lines, l)
	}
	if len(p.Lines) == 0 {
		return Profile{}, fmt.Errorf("%s: of none of the compounds is known how it leaves a spirit (%s); set ByActivity for a guess", fn, strings.Join(g.names, ", "))
	}
	p.Notes = append(p.Notes, "closed glass at 25 °C, estimate: that the aroma opens is sure, by how much is good to a factor of 2", "ethanol also masks smells: not counted in")
	return p, nil
}

func lineOf(function string, bottle *glass, glasses []glass, k int) (Line, error) {
	at, err := bottle.gas(function, k)
	if err != nil {
		return Line{}, err
	}
	if at.GasUgL <= 0 {
		return Line{}, fmt.Errorf("%s: there is none of it in the bottle, 0 mg/L", function)
	}
	l := Line{Compound: at.Compound, Notes: at.Notes}
	for i := range glasses {
		x, err := glasses[i].gas(function, k)
		if err != nil {
			return Line{}, err
		}
		l.GasUgL, l.TimesBottle, l.CappedBy = append(l.GasUgL, x.GasUgL), append(l.TimesBottle, x.GasUgL/at.GasUgL), append(l.CappedBy, x.CappedBy)
		for _, n := range x.Notes {
			if !slices.Contains(l.Notes, n) && !strings.HasPrefix(n, "two models clash") {
				l.Notes = append(l.Notes, n)
			}
		}
	}
	return l, nil
}

// StrengthsABV returns the strengths in % vol, for a chart.
func (p Profile) StrengthsABV() []float64 {
	out := make([]float64, len(p.Strengths))
	for i, s := range p.Strengths {
		out[i] = s.ABV()
	}
	return out
}

// Of returns the line of a compound. It fails for one that is not in the profile.
func (p Profile) Of(name string) (Line, error) {
	var names []string
	for _, l := range p.Lines {
		if l.Compound == nameOf(name) {
			return l, nil
		}
		names = append(names, l.Compound)
	}
	return Line{}, fmt.Errorf("aroma.Profile.Of: %q is not in the profile; it has %s", name, strings.Join(names, ", "))
}

// Opens says which compound opens most at the i-th strength, counted from 0, or that nobody can tell: the size of a rise is good to
// a factor of two, so one leads only if it rises more than four times as much as the next. It panics for a strength that is not
// there.
func (p Profile) Opens(i int) string {
	if i < 0 || i >= len(p.Strengths) {
		panic(&IndexError{Func: "aroma.Profile.Opens", Index: i, Len: len(p.Strengths)})
	}
	order := slices.Clone(p.Lines)
	slices.SortStableFunc(order, func(a, b Line) int {
		switch {
		case a.TimesBottle[i] > b.TimesBottle[i]:
			return -1
		case a.TimesBottle[i] < b.TimesBottle[i]:
			return 1
		}
		return strings.Compare(a.Compound, b.Compound)
	})
	first := order[0]
	if len(order) == 1 {
		return fmt.Sprintf("%s, %.2g times the bottle's", first.Compound, first.TimesBottle[i])
	}
	if first.TimesBottle[i] > 4*order[1].TimesBottle[i] {
		return fmt.Sprintf("%s opens most, %.2g times the bottle's", first.Compound, first.TimesBottle[i])
	}
	return "cannot tell which opens most"
}

// IndexError says that a strength was asked for that is not in the profile.
type IndexError struct {
	Func  string // the function, such as "aroma.Profile.Opens"
	Index int
	Len   int // how many there are
}

// Error gives the function and the places there are in one line.
func (e *IndexError) Error() string {
	return fmt.Sprintf("%s: there is no strength %d; they count from 0 to %d", e.Func, e.Index, e.Len-1)
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *IndexError) StopsCell() {}

// String gives for each strength in one line how far the compounds opened, from the least to the most.
func (p Profile) String() string {
	var parts []string
	for i, s := range p.Strengths {
		least, most := math.Inf(1), math.Inf(-1)
		for _, l := range p.Lines {
			least, most = math.Min(least, l.TimesBottle[i]), math.Max(most, l.TimesBottle[i])
		}
		text := fmt.Sprintf("%.1f %% vol: %s to %s times the bottle's", s.ABV(), figure(least), figure(most))
		if p.Cloudy[i] {
			text += ", cloudy"
		}
		parts = append(parts, text)
	}
	return "air over the glass (estimate) at " + strings.Join(parts, "; ")
}

// Rows gives the profile: a head with the strengths, then a row a compound with the air relative to the bottle's, and what was
// left out.
func (p Profile) Rows() [][]string {
	head := []string{"times the bottle's air (estimate)"}
	for i, s := range p.Strengths {
		h := fmt.Sprintf("%.1f %% vol", s.ABV())
		if p.Cloudy[i] {
			h += ", cloudy"
		}
		head = append(head, h)
	}
	rows := [][]string{head}
	for _, l := range p.Lines {
		row := []string{l.Compound}
		for i, x := range l.TimesBottle {
			text := "×" + figure(x)
			if l.CappedBy[i] != "" {
				text += " (capped)"
			}
			row = append(row, text)
		}
		rows = append(rows, row)
	}
	for _, u := range p.Unplaced {
		row := make([]string, len(head))
		row[0] = "left out: " + u
		rows = append(rows, row)
	}
	return rows
}
