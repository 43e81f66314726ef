package simplex

import (
	"errors"
	"math"
)

const (
	feasible = 1e-10 // how far a bound may be broken, in units of the row's largest coefficient or relative to the bound
	cheaper  = 1e-10 // how much a step must gain for each unit, relative to the largest cost
	pivotal  = 1e-9  // the least pivot
	passing  = 5e-11 // how far a step may carry others past their bounds so that it can turn on a large pivot
	refresh  = 60    // pivots after which the tableau is made anew
)

// Solver holds a problem and the corner of its limits that was found last, from which the next search begins. Variables
// are those of the problem and, behind them, the value of each row.
type Solver struct {
	n, m      int       // variables, rows
	a         []float64 // scaled coefficients, m × n
	scale     []float64 // by which each row is multiplied
	low, high []float64 // of variables and rows, scaled
	t         []float64 // tableau, m × (n + m): basic = -Σ t × nonbasic
	basis     []int     // the variable that is basic in each row
	where     []int     // the row in which a variable is basic, or -1
	x         []float64 // the value of every variable
	pivots    int       // since the tableau was made anew
	steps     int       // of the last search
	filled    []int     // the columns of a row that are not 0, while it is worked on
}

// New returns a solver for the problem, which it copies.
func New(p *Problem) (*Solver, error) {
	if err := p.check(); err != nil {
		return nil, err
	}
	s := &Solver{n: len(p.Low), m: len(p.Rows)}
	s.a, s.scale = make([]float64, s.m*s.n), make([]float64, s.m)
	s.low, s.high = append([]float64(nil), p.Low...), append([]float64(nil), p.High...)
	for i, row := range p.Rows {
		largest := 0.0
		for _, a := range row {
			largest = math.Max(largest, math.Abs(a))
		}
		s.scale[i] = 1
		if largest > 0 {
			_, e := math.Frexp(largest)
			s.scale[i] = math.Ldexp(1, -e) // a power of two changes no digit
		}
		for j, a := range row {
			s.a[i*s.n+j] = a * s.scale[i]
		}
		s.low = append(s.low, p.RowLow[i]*s.scale[i])
		s.high = append(s.high, p.RowHigh[i]*s.scale[i])
	}
	s.start()
	return s, nil
}

// SetBounds moves the bounds of a variable, or of a row, dimensionless. The corner found last is kept.
func (s *Solver) SetBounds(row bool, index int, low, high float64) {
	j := index
	if row {
		j += s.n
		low, high = low*s.scale[index], high*s.scale[index]
	}
	s.low[j], s.high[j] = low, high
}

// start makes the rows basic and puts every variable on the bound nearest to 0.
func (s *Solver) start() {
	total := s.n + s.m
	s.t = make([]float64, s.m*total)
	s.basis, s.where, s.x = make([]int, s.m), make([]int, total), make([]float64, total)
	for j := range s.where {
		s.where[j] = -1
	}
	for i := range s.basis {
		s.basis[i], s.where[s.n+i] = s.n+i, i
	}
	s.fillTableau()
}

func (s *Solver) fillTableau() {
	total := s.n + s.m
	for i := range s.m {
		row := s.t[i*total : (i+1)*total]
		for j, a := range s.a[i*s.n : (i+1)*s.n] {
			row[j] = -a
		}
		clear(row[s.n:])
		row[s.n+i] = 1
	}
	s.pivots = 0
}

// settle puts the variables that are not basic on a bound and works out the basic ones.
func (s *Solver) settle() {
	for j := range s.x {
		if s.where[j] >= 0 {
			continue
		}
		low, high := s.low[j], s.high[j]
		switch {
		case math.IsInf(low, -1) && math.IsInf(high, 1):
			s.x[j] = 0
		case math.IsInf(low, -1):
			s.x[j] = high
		case math.IsInf(high, 1):
			s.x[j] = low
		case s.x[j] >= high || s.x[j] > low && high-s.x[j] < s.x[j]-low:
			s.x[j] = high
		default:
			s.x[j] = low
		}
	}
	total := s.n + s.m
	for i, b := range s.basis {
		sum := 0.0
		for j, t := range s.t[i*total : (i+1)*total] {
			if s.where[j] < 0 {
				sum -= t * s.x[j]
			}
		}
		s.x[b] = sum
	}
}

var errSingular = errors.New("the basis has become singular")

// remake works the tableau out anew from the coefficients, so that rounding does not pile up.
func (s *Solver) remake() error {
	wanted := append([]int(nil), s.basis...)
	s.fillTableau()
	for i := range s.basis {
		s.basis[i] = s.n + i
	}
	for j := range s.where {
		s.where[j] = -1
	}
	free := make([]bool, s.m)
	for i := range free {
		free[i] = true
	}
	total := s.n + s.m
	// Rows that are basic in themselves stay; the others are brought in on the free row with the largest pivot.
	var rest []int
	for _, v := range wanted {
		if v >= s.n {
			free[v-s.n], s.where[v] = false, v-s.n
		} else {
			rest = append(rest, v)
		}
	}
	for _, v := range rest {
		best, size := -1, pivotal*1e-3
		for i := range s.m {
			if free[i] && math.Abs(s.t[i*total+v]) > size {
				best, size = i, math.Abs(s.t[i*total+v])
			}
		}
		if best < 0 {
			return errSingular
		}
		free[best] = false
		s.eliminate(best, v)
		s.basis[best], s.where[v] = v, best
	}
	s.pivots = 0
	return nil
}

// eliminate makes column v the unit column of row r.
func (s *Solver) eliminate(r, v int) {
	total := s.n + s.m
	row := s.t[r*total : (r+1)*total]
	inverse := 1 / row[v]
	s.filled = s.filled[:0]
	for j := range row {
		if row[j] != 0 {
			row[j] *= inverse
			s.filled = append(s.filled, j)
		}
	}
	row[v] = 1
	sparse := 2*len(s.filled) < total
	for i := range s.m {
		if i == r {
			continue
		}
		other := s.t[i*total : (i+1)*total]
		f := other[v]
		switch {
		case f == 0:
			continue
		case sparse:
			for _, j := range s.filled {
				other[j] -= f * row[j]
			}
		default:
			for j, t := range row {
				other[j] -= f * t
			}
		}
		other[v] = 0
	}
	s.pivots++
}
