package simplex

import "math"

// Solution is the least value found, and where.
type Solution struct {
	X     []float64 // the variables, dimensionless
	Rows  []float64 // the sums, dimensionless
	Value float64   // of the first sum asked for, dimensionless
	Steps int
}

// Minimise returns the values with the least sum of costs × variables. Further costs decide among those that are equal in
// the ones before. Without costs any values that keep the limits do. It fails with an *Infeasible, an *Unbounded or a
// *NoEnd.
func (s *Solver) Minimise(costs ...[]float64) (Solution, error) {
	s.steps = 0
	low, high := append([]float64(nil), s.low...), append([]float64(nil), s.high...)
	defer func() { copy(s.low, low); copy(s.high, high) }() // fixed for the costs that follow
	if err := s.again(); err != nil {
		return Solution{}, err
	}
	if err := s.search(nil); err != nil {
		return Solution{}, err
	}
	for k, cost := range costs {
		c, largest := make([]float64, s.n+s.m), 0.0
		for j, v := range cost {
			c[j] = v
			largest = math.Max(largest, math.Abs(v))
		}
		if largest == 0 {
			continue
		}
		for j := range c {
			c[j] /= largest
		}
		if err := s.search(c); err != nil {
			return Solution{}, err
		}
		if k < len(costs)-1 {
			for j, d := range s.reduced(c) {
				if s.where[j] < 0 && math.Abs(d) > cheaper {
					s.low[j], s.high[j] = s.x[j], s.x[j]
				}
			}
		}
	}
	if err := s.again(); err != nil { // the last digits, without the rounding of the steps
		return Solution{}, err
	}
	return s.solution(costs), nil
}

func (s *Solver) again() error {
	if s.pivots > 0 {
		if err := s.remake(); err != nil {
			s.start()
		}
	}
	s.settle()
	return nil
}

func (s *Solver) solution(costs [][]float64) Solution {
	out := Solution{X: append([]float64(nil), s.x[:s.n]...), Rows: make([]float64, s.m), Steps: s.steps}
	for j := range out.X {
		out.X[j] = math.Min(math.Max(out.X[j], s.low[j]), s.high[j])
	}
	for i := range out.Rows {
		sum := 0.0
		for j, a := range s.a[i*s.n : (i+1)*s.n] {
			sum += a * out.X[j]
		}
		out.Rows[i] = sum / s.scale[i]
	}
	if len(costs) > 0 {
		for j, c := range costs[0] {
			out.Value += c * out.X[j]
		}
	}
	return out
}

// slack is how far a bound may be broken.
func slack(bound float64) float64 { return feasible * math.Max(1, math.Abs(bound)) }

// broken returns -1 for a variable below its lower bound, 1 for one above its upper bound, and 0 else.
func (s *Solver) broken(j int) float64 {
	switch {
	case s.x[j] < s.low[j]-slack(s.low[j]):
		return -1
	case s.x[j] > s.high[j]+slack(s.high[j]):
		return 1
	}
	return 0
}

// reduced returns what the costs gain for each unit of every variable that is not basic, once the basic ones follow.
// Without costs, what all limits together are broken by counts.
func (s *Solver) reduced(c []float64) []float64 {
	total := s.n + s.m
	d := make([]float64, total)
	copy(d, c)
	for i, b := range s.basis {
		f := 0.0
		if c != nil {
			f = c[b]
		} else {
			f = s.broken(b)
		}
		if f == 0 {
			continue
		}
		for j, t := range s.t[i*total : (i+1)*total] {
			d[j] -= f * t
		}
	}
	return d
}

// search goes from corner to corner until the costs fall no more, or, without costs, until the limits are kept.
func (s *Solver) search(c []float64) error {
	total := s.n + s.m
	most := 50*total + 1000
	standing := 0 // steps that gained nothing
	for range most {
		if s.pivots >= refresh {
			if err := s.again(); err != nil {
				return err
			}
		}
		any := false
		for _, b := range s.basis {
			any = any || s.broken(b) != 0
		}
		if c == nil && !any && s.pivots == 0 {
			return nil
		}
		costs := c
		if any {
			costs = nil // rounding broke a limit again: mend that first
		}
		d := s.reduced(costs)
		bland := standing > total
		enter, sign := s.entering(d, bland)
		if enter < 0 {
			if s.pivots > 0 { // judge by a tableau without the rounding of the steps
				if err := s.again(); err != nil {
					return err
				}
				continue
			}
			if any {
				return s.infeasible(d)
			}
			return nil
		}
		gain, err := s.step(enter, sign, costs == nil, bland)
		if err != nil && s.pivots > 0 {
			if err := s.again(); err != nil {
				return err
			}
			continue
		}
		if err != nil {
			return err
		}
		s.steps++
		if standing++; gain > 1e-13 {
			standing = 0
		}
	}
	return &NoEnd{s.steps}
}

// entering returns the variable that is to move off its bound, and whether up (1) or down (-1), or -1 if none gains.
func (s *Solver) entering(d []float64, bland bool) (enter int, sign float64) {
	enter, best := -1, cheaper
	for j, dj := range d {
		if s.where[j] >= 0 || s.low[j] == s.high[j] || math.Abs(dj) <= best {
			continue
		}
		up := dj < 0
		if up && s.x[j] >= s.high[j] || !up && s.x[j] <= s.low[j] {
			continue
		}
		enter, sign = j, 1
		if !up {
			sign = -1
		}
		if bland {
			return enter, sign
		}
		best = math.Abs(dj)
	}
	return enter, sign
}

// step moves the variable enter until a bound stops it, and returns how far. Of the bounds that stop it at about the same
// place the one with the largest pivot is taken (P. M. J. Harris, Math. Program. 5 (1973) 1–28), or by Bland's rule the
// one with the lowest number.
func (s *Solver) step(enter int, sign float64, mending, bland bool) (float64, error) {
	total := s.n + s.m
	own := s.high[enter] - s.low[enter] // to its own other bound
	limit, over := own, passing
	if bland {
		over = 0
	}
	for i, b := range s.basis {
		rate := -sign * s.t[i*total+enter]
		if math.Abs(rate) < pivotal {
			continue
		}
		if stop, ok := s.stop(b, rate, mending); ok {
			limit = math.Min(limit, math.Max((stop-s.x[b])/rate, 0)+over/math.Abs(rate))
		}
	}
	far, leave, to, size := own, -1, 0.0, 0.0
	if !math.IsInf(limit, 1) {
		for i, b := range s.basis {
			rate := -sign * s.t[i*total+enter]
			if math.Abs(rate) < pivotal {
				continue
			}
			stop, ok := s.stop(b, rate, mending)
			if !ok {
				continue
			}
			t := math.Max((stop-s.x[b])/rate, 0)
			if t > limit || t > own {
				continue
			}
			if leave < 0 || bland && b < s.basis[leave] || !bland && math.Abs(rate) > size {
				far, leave, to, size = t, i, stop, math.Abs(rate)
			}
		}
	}
	if math.IsInf(far, 1) {
		return 0, &Unbounded{}
	}
	for i, b := range s.basis {
		s.x[b] -= sign * s.t[i*total+enter] * far
	}
	s.x[enter] += sign * far
	if leave < 0 { // from one bound of its own to the other
		if sign > 0 {
			s.x[enter] = s.high[enter]
		} else {
			s.x[enter] = s.low[enter]
		}
		return far, nil
	}
	out := s.basis[leave]
	s.x[out] = to
	s.eliminate(leave, enter)
	s.basis[leave], s.where[enter], s.where[out] = enter, leave, -1
	return far, nil
}

// stop returns the bound at which a basic variable that moves at the rate given stops the step.
func (s *Solver) stop(b int, rate float64, mending bool) (float64, bool) {
	low, high := s.low[b], s.high[b]
	if mending {
		switch side := s.broken(b); {
		case side < 0 && rate > 0:
			return low, true
		case side > 0 && rate < 0:
			return high, true
		case side != 0:
			return 0, false // it goes on breaking its bound
		}
	}
	if rate < 0 {
		return low, !math.IsInf(low, -1)
	}
	return high, !math.IsInf(high, 1)
}

// infeasible names the bounds that hold each other up: those on which variables stand that would mend something, and
// those that are broken.
func (s *Solver) infeasible(d []float64) error {
	e := &Infeasible{}
	add := func(j int, high bool) {
		b := Bound{Index: j, High: high}
		if j >= s.n {
			b = Bound{Row: true, Index: j - s.n, High: high}
		}
		e.Blocks = append(e.Blocks, b)
	}
	for j := range s.x {
		switch {
		case s.where[j] < 0 && math.Abs(d[j]) > cheaper:
			add(j, d[j] < 0)
		case s.where[j] >= 0 && s.broken(j) < 0:
			add(j, false)
			e.Short += s.low[j] - s.x[j]
		case s.where[j] >= 0 && s.broken(j) > 0:
			add(j, true)
			e.Short += s.x[j] - s.high[j]
		}
	}
	return e
}
