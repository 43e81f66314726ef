package mixing

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"

	"swanneck/mathlib/internal/simplex"
)

// BlendBlock is a limit that stands in the way of a blend.
type BlendBlock struct {
	Limit  string  // what is limited, such as "methanol"
	High   bool    // whether it is limited from above
	Given  float64 // the limit, dimensionless here: in Unit
	Needed float64 // what it would have to be, all else staying as it is, dimensionless here: in Unit
	Unit   string
}

// BlendError says that no blend keeps all limits, and why.
type BlendError struct {
	Func string
	// Blocks are the limits that collide. Each alone, moved to what it would have to be, makes a blend possible; if Together
	// is set, no single one does, but all of them together do.
	Blocks   []BlendBlock
	Together bool
}

// shownBlocks is how many limits the one line of an error names.
const shownBlocks = 4

// Error names the limits and what they would have to be, in one line; Rows gives all of them.
func (e *BlendError) Error() string { return e.Func + ": " + e.text() }

func (e *BlendError) text() string {
	var parts []string
	for _, b := range e.Blocks {
		parts = append(parts, b.String())
	}
	more := ""
	if len(parts) > shownBlocks {
		more = fmt.Sprintf("; and %d more", len(parts)-shownBlocks)
		parts = parts[:shownBlocks]
	}
	how := "any one of these would do: "
	switch {
	case e.Together:
		how = "no single change would do, but these together: "
	case len(e.Blocks) == 1:
		how = "this would do: "
	}
	return fmt.Sprintf("no blend of these lots keeps all limits; %s%s%s", how, strings.Join(parts, "; "), more)
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *BlendError) StopsCell() {}

// String gives what the limit would have to be and what it is.
func (b BlendBlock) String() string {
	side := "at least"
	if b.High {
		side = "at most"
	}
	return fmt.Sprintf("%s %s %s instead of %s %s", b.Limit, side, outward(b.Needed, b.High), outward(b.Given, !b.High), b.Unit)
}

// Rows gives the limits that collide, a row each.
func (e *BlendError) Rows() [][]string {
	rows := [][]string{{"limit", "side", "given", "would have to be", "unit"}}
	for _, b := range e.Blocks {
		side := "at least"
		if b.High {
			side = "at most"
		}
		rows = append(rows, []string{b.Limit, side, outward(b.Given, !b.High), outward(b.Needed, b.High), b.Unit})
	}
	return rows
}

// outward prints a figure with five digits, rounded up or down, so that what is printed is enough.
func outward(x float64, up bool) string {
	if x == 0 {
		return "0"
	}
	step := math.Pow(10, math.Floor(math.Log10(math.Abs(x)))-4)
	n := x / step
	if whole := math.Round(n); math.Abs(n-whole) < 1e-5 {
		n = whole
	}
	if up {
		n = math.Ceil(n)
	} else {
		n = math.Floor(n)
	}
	return strconv.FormatFloat(n*step, 'f', max(0, 4-int(math.Floor(math.Log10(math.Abs(x))))), 64)
}

// explain returns a *BlendError with the limits that collide. It returns a strength if there is a blend after all, at that
// strength: the sums made at another one missed it by a hair.
func (m *blendModel) explain(function string, none *simplex.Infeasible, w float64) (float64, error) {
	colliding := map[simplex.Bound]bool{}
	for _, b := range none.Blocks {
		colliding[b] = true
	}
	e := &BlendError{Func: function}
	r := &reacher{m: m}
	for _, l := range m.limits {
		side := simplex.Bound{Row: l.row >= 0, Index: l.row, High: l.high}
		if l.row < 0 {
			side.Index = l.lot
		}
		if !colliding[side] {
			continue
		}
		needed, at, err := r.reach(function, l, w)
		var none *simplex.Infeasible
		if errors.As(err, &none) {
			continue // it does not do alone
		}
		if err != nil {
			return 0, err
		}
		if l.keeps(needed) {
			return at, nil
		}
		if l.kind == limitAmount && needed < 1e-9*l.value {
			continue // nothing at all is no blend
		}
		if l.kind == limitStrength && !l.high && needed < 1e-9 {
			continue // nor is water
		}
		e.Blocks = append(e.Blocks, l.block(needed))
	}
	if len(e.Blocks) > 0 {
		return 0, e
	}
	e.Together = true
	blocks, err := m.together(function, w)
	if err != nil {
		return 0, err
	}
	e.Blocks = blocks
	return 0, e
}

func (l *sideLimit) keeps(figure float64) bool {
	slack := 1e-10 * math.Max(math.Abs(l.value), 1e-6)
	return l.high && figure <= l.value+slack || !l.high && figure >= l.value-slack
}

func (l *sideLimit) block(needed float64) BlendBlock {
	show := l.show
	if show == nil {
		show = func(x float64) float64 { return x }
	}
	return BlendBlock{Limit: l.name, High: l.high, Given: show(l.value), Needed: show(needed), Unit: l.unit}
}

// reacher keeps the solver of one strength, whose last corner is near the next one.
type reacher struct {
	m      *blendModel
	p      *simplex.Problem
	solver *simplex.Solver
	w      float64
}

// at makes the solver for a strength, unless it is there.
func (r *reacher) at(function string, w float64) error {
	if r.solver != nil && r.w == w {
		return nil
	}
	p, err := r.m.problem(function, w)
	if err != nil {
		return err
	}
	s, err := simplex.New(p)
	if err != nil {
		return fmt.Errorf("%s: %w", function, err)
	}
	r.p, r.solver, r.w = p, s, w
	return nil
}

// without returns the least of a sum when one limit is taken out.
func (r *reacher) without(l *sideLimit, aim []float64) (simplex.Solution, error) {
	row, index, low, high := false, l.lot, r.p.Low, r.p.High
	if l.row >= 0 {
		row, index, low, high = true, l.row, r.p.RowLow, r.p.RowHigh
	}
	if l.high {
		r.solver.SetBounds(row, index, low[index], math.Inf(1))
	} else {
		r.solver.SetBounds(row, index, math.Inf(-1), high[index])
	}
	defer r.solver.SetBounds(row, index, low[index], high[index])
	return r.solver.Minimise(aim)
}

// reach returns how close to a limit its figure comes if it is not a limit and all others are, and at what strength.
func (r *reacher) reach(function string, free *sideLimit, w float64) (figure, at float64, err error) {
	figure = math.NaN()
	from := free.value
	for range 40 {
		if err := r.at(function, w); err != nil {
			return 0, 0, err
		}
		// A quotient is least where num - figure × den is, once figure is its value there (W. Dinkelbach, Management
		// Science 13 (1967) 492–498).
		aim := r.m.each(func(i int) float64 {
			a := free.num[i]
			if free.den != nil {
				a -= from * free.den[i]
			}
			if !free.high {
				a = -a
			}
			return a
		})
		found, err := r.without(free, aim)
		if err != nil {
			return 0, 0, err
		}
		next, strength := r.m.figure(free, found.X), r.m.strength(found.X)
		done := math.Abs(next-figure) <= 1e-12*math.Abs(next) && math.Abs(strength-w) <= 1e-12
		figure, from = next, next
		if done {
			break
		}
		if math.Abs(strength-w) > 1e-12 {
			w = strength
		}
	}
	return figure, w, nil
}

// together returns limits that make a blend possible if all of them are moved, by as little as may be in the sum of their
// parts.
func (m *blendModel) together(function string, w float64) ([]BlendBlock, error) {
	var x []float64
	for range 20 {
		p, err := m.problem(function, w)
		if err != nil {
			return nil, err
		}
		cost := make([]float64, len(m.lots))
		for _, l := range m.limits {
			if l.kind == limitAmount && !l.high {
				continue // less of a blend that cannot be made is none either
			}
			// A variable of its own moves the limit: 1 is all of it.
			row := l.row
			if row < 0 { // what there is of a lot: make a row of it
				one := make([]float64, l.lot+1)
				one[l.lot] = 1
				p.Rows, p.RowLow, p.RowHigh = append(p.Rows, one), append(p.RowLow, math.Inf(-1)), append(p.RowHigh, p.High[l.lot])
				p.High[l.lot] = math.Inf(1)
				row = len(p.Rows) - 1
			}
			size := m.size(l, w)
			if l.high {
				size = -size
			}
			p.Low, p.High, cost = append(p.Low, 0), append(p.High, math.Inf(1)), append(cost, 1)
			p.Rows[row] = padded(p.Rows[row], len(p.Low))
			p.Rows[row][len(p.Low)-1] = size
		}
		for i := range p.Rows {
			p.Rows[i] = padded(p.Rows[i], len(p.Low))
		}
		s, err := simplex.New(p)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", function, err)
		}
		found, err := s.Minimise(cost)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", function, err)
		}
		x = found.X[:len(m.lots)]
		next := m.strength(x)
		if math.Abs(next-w) <= 1e-12 {
			break
		}
		w = next
	}
	var blocks []BlendBlock
	for _, l := range m.limits {
		if f := m.figure(l, x); !l.keeps(f) && math.Abs(f-l.value) > 1e-9*math.Abs(l.value) {
			blocks = append(blocks, l.block(f))
		}
	}
	return blocks, nil
}

// size returns by what a row changes when its limit is moved by all of its value.
func (m *blendModel) size(l *sideLimit, w float64) float64 {
	value := math.Abs(l.value)
	if value == 0 { // a limit of 0 is moved by what the lots hold
		for i := range l.num {
			if l.den == nil {
				value = math.Max(value, l.num[i])
			} else if l.den[i] > 0 {
				value = math.Max(value, l.num[i]/l.den[i])
			}
		}
	}
	switch {
	case l.row < 0:
		return m.lots[l.lot].thereKg / m.refKg
	case l.den == nil:
		return value / m.refKg
	}
	// The blend counts for about as much as its strength lies between the lots.
	den, n := 0.0, 0.0
	for i, lot := range m.lots {
		if math.Abs(lot.w-w) < 0.5 {
			den += l.den[i]
			n++
		}
	}
	if n == 0 || den == 0 {
		return math.Max(value, 1e-9)
	}
	return math.Max(value*den/n, 1e-9)
}
