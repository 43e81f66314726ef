package simplex

import (
	"fmt"
	"math"
)

// Problem is a set of variables with bounds and rows of limits on sums of them.
type Problem struct {
	Low, High       []float64   // of the variables, dimensionless; infinite for no bound
	Rows            [][]float64 // coefficients, a row a limit, dimensionless
	RowLow, RowHigh []float64   // of the sums, dimensionless; infinite for no limit
}

// Bound is one side of a limit: of the variable Index, or of the row Index.
type Bound struct {
	Row   bool
	Index int
	High  bool // the upper side
}

// Infeasible says that no values keep all limits.
type Infeasible struct {
	// Blocks lists the bounds that cannot be kept together. Whoever wants a solution by moving a single bound must move
	// one of these: the others alone already exclude each other with these.
	Blocks []Bound
	Short  float64 // the least sum of what the limits are broken by, each row counted in units of its largest coefficient; dimensionless
}

// Error says it in one line.
func (e *Infeasible) Error() string {
	return fmt.Sprintf("no values keep all limits; %d of them collide", len(e.Blocks))
}

// Unbounded says that the sum falls without end.
type Unbounded struct{}

// Error says it in one line.
func (*Unbounded) Error() string { return "the sum falls without end; a limit is missing" }

// NoEnd says that the method did not come to an end: a fault of rounding in a very badly scaled problem.
type NoEnd struct{ Steps int }

// Error gives the number of steps.
func (e *NoEnd) Error() string {
	return fmt.Sprintf("no solution after %d steps; the figures differ by too many orders of magnitude", e.Steps)
}

// check returns an error for a problem whose parts do not fit.
func (p *Problem) check() error {
	n := len(p.Low)
	if len(p.High) != n || len(p.RowLow) != len(p.Rows) || len(p.RowHigh) != len(p.Rows) {
		return fmt.Errorf("%d lower and %d upper bounds, %d rows with %d and %d limits; give one each", n, len(p.High), len(p.Rows), len(p.RowLow), len(p.RowHigh))
	}
	for i, row := range p.Rows {
		if len(row) != n {
			return fmt.Errorf("row %d has %d coefficients for %d variables", i, len(row), n)
		}
		for j, a := range row {
			if math.IsNaN(a) || math.IsInf(a, 0) {
				return fmt.Errorf("row %d has the coefficient %g for variable %d", i, a, j)
			}
		}
	}
	for _, b := range [][2][]float64{{p.Low, p.High}, {p.RowLow, p.RowHigh}} {
		for i := range b[0] {
			if !(b[0][i] <= b[1][i]) || math.IsInf(b[0][i], 1) || math.IsInf(b[1][i], -1) {
				return fmt.Errorf("bound %d goes from %g to %g", i, b[0][i], b[1][i])
			}
		}
	}
	return nil
}
