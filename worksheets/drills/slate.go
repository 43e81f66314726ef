package drills

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"swanneck/worksheets/drills/walltable"
)

// Step is a line of a worked solution.
type Step struct {
	Do     string // what is done
	Finds  []Find // what is looked up for it
	Reckon string // what is reckoned, with the figures as printed, as "390 × 0.9983"; "" if the figure is the one found
	Figure string // what comes of it, as written down
	Unit   string // of the figure; "" for a factor
}

// Find is a figure looked up in a table.
type Find struct {
	Table       walltable.Sort
	Row, Column string // as a person names them, with their units; one of them is "" where the table has one edge
	Figure      string // as printed

	down, across float64
}

// String gives the step in one line.
func (s Step) String() string {
	var b strings.Builder
	b.WriteString(s.Do + ": ")
	for i, f := range s.Finds {
		if i == 0 {
			b.WriteString("table of " + f.Table.Name())
			if f.Column != "" {
				b.WriteString(", column " + f.Column)
			}
		}
		at := ", row "
		if f.Column == "" {
			at = ", at "
		}
		b.WriteString(at + f.Row + ": " + f.Figure)
	}
	if s.Reckon != "" {
		b.WriteString([]string{"", ". Between them "}[min(len(s.Finds), 1)] + s.Reckon + " = " + s.Figure)
	}
	return strings.TrimRight(b.String()+" "+s.Unit, " ")
}

// written is a number as it stands on the slate.
type written struct {
	x        float64
	decimals int
}

func (w written) String() string { return strconv.FormatFloat(w.x, 'f', w.decimals, 64) }

// given is a number of the problem, with the decimals it has there.
func given(x float64) written {
	for d := range 4 {
		if walltable.Round(x, d) == x {
			return written{x, d}
		}
	}
	return written{x, 4}
}

// slate is what a solution is worked on. It rounds as print and a person do and keeps the steps; to find out what rounding
// can do, it can also keep every digit, with one rounding moved by half a unit of its last digit.
type slate struct {
	exact bool
	moved int // which rounding is moved, if exact; none if below 0
	n     int // roundings so far
	steps []Step
}

func (s *slate) round(x float64, decimals int) written {
	i := s.n
	s.n++
	switch {
	case !s.exact:
		x = walltable.Round(x, decimals)
	case i == s.moved:
		x += 0.5 * math.Pow(10, -float64(decimals))
	}
	return written{x, decimals}
}

// reckon writes a step: what is done, the unit and decimals of its figure, the figure, and how it comes about.
func (s *slate) reckon(do, unit string, decimals int, x float64, format string, args ...any) written {
	w := s.round(x, decimals)
	s.steps = append(s.steps, Step{Do: do, Reckon: fmt.Sprintf(format, args...), Figure: w.String(), Unit: unit})
	return w
}

// rowsApart is how far apart the rows of the tables are that hang in the class.
var rowsApart = map[walltable.Sort]float64{
	walltable.Strength: 1, walltable.Proof: 1, walltable.Water: 1, walltable.Litres: 5, walltable.Gallons: 10,
	walltable.Mass: 1, walltable.Weight: 1,
}

var edgeUnits = map[walltable.Sort][2]string{
	walltable.Strength: {" % vol", " °C"}, walltable.Proof: {" proof", " °F"}, walltable.Water: {" % vol", " % vol"},
	walltable.Litres: {" % vol", " °C"}, walltable.Gallons: {" proof", " °F"}, walltable.Mass: {" % vol", ""}, walltable.Weight: {" % vol", ""},
}

// cell reads a cell of a table.
func (s *slate) cell(t walltable.Sort, down, across float64) (written, Find) {
	w := s.round(must(t.Exact(down, across)), t.Decimals())
	f := Find{Table: t, Row: given(down).String() + edgeUnits[t][0], Figure: w.String(), down: down, across: across}
	if edgeUnits[t][1] != "" {
		f.Column = given(across).String() + edgeUnits[t][1]
	}
	return w, f
}

// look looks a figure up; between two rows it takes the share in between, as a person does.
func (s *slate) look(do string, t walltable.Sort, down, across float64) written {
	step := rowsApart[t]
	row := math.Floor(down/step+1e-9) * step
	share := (down - row) / step
	low, find := s.cell(t, row, across)
	if share < 1e-9 {
		s.steps = append(s.steps, Step{Do: do, Finds: []Find{find}, Figure: low.String(), Unit: t.Unit()})
		return low
	}
	high, next := s.cell(t, row+step, across)
	if !s.exact && low.x == high.x { // nothing lies between them
		s.steps = append(s.steps, Step{Do: do, Finds: []Find{find, next}, Figure: low.String(), Unit: t.Unit()})
		return low
	}
	w := s.round(low.x+share*(high.x-low.x), t.Decimals())
	s.steps = append(s.steps, Step{Do: do, Finds: []Find{find, next}, Figure: w.String(), Unit: t.Unit(),
		Reckon: fmt.Sprintf("%v + %v × (%v − %v)", low, given(walltable.Round(share, 4)), high, low)})
	return w
}

// lookBack finds the row at which a table has a figure, in a column in which the figures grow: to so many decimals,
// between two rows by the share in between. about is where it will be.
func (s *slate) lookBack(do string, t walltable.Sort, figure written, across float64, about float64, unit string, decimals int) written {
	step := rowsApart[t]
	row := math.Floor(about/step) * step
	low, find := s.cell(t, row, across)
	high, next := s.cell(t, row+step, across)
	w := s.round(row+step*(figure.x-low.x)/(high.x-low.x), decimals)
	s.steps = append(s.steps, Step{Do: do, Finds: []Find{find, next}, Figure: w.String(), Unit: unit,
		Reckon: fmt.Sprintf("%v + (%v − %v) ÷ (%v − %v)", given(row), figure, low, high, low)})
	return w
}

// worked is what working a solution shows.
type worked struct {
	figure float64 // where the steps lead, in the unit of the problem
	steps  []Step
	worst  float64 // what rounding can move, in that unit: the sum over all roundings, and what lies between rows
}

// work works a solution as a person does, and again with every rounding moved in turn.
func work(solve func(*slate) float64, answer float64) worked {
	person, full := &slate{moved: -1}, &slate{exact: true, moved: -1}
	w := worked{figure: solve(person), steps: person.steps}
	plain := solve(full)
	w.worst = math.Abs(plain - answer)
	for i := range full.n {
		w.worst += math.Abs(solve(&slate{exact: true, moved: i}) - plain)
	}
	return w
}
