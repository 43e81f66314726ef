package still

import (
	"fmt"
	"math"
	"sort"

	"gonum.org/v1/gonum/interp"
)

// Equilibrium is an equilibrium curve of one's own, in place of the model's: the mole fraction of ethanol in the vapour
// over that in the liquid, as a table in a book gives it. Make one with SmoothEquilibrium or StraightEquilibrium. It does
// not change.
type Equilibrium struct {
	x, y   []float64
	smooth *interp.FritschButland // nil: straight lines
}

// SmoothEquilibrium returns the curve through the points with the mole fractions x in the liquid and y in the vapour,
// dimensionless: a cubic from point to point that never turns back where the points do not (Fritsch and Butland). It fails
// for lengths that differ, fewer than three points, and fractions that do not rise from 0 to 1.
func SmoothEquilibrium(x, y []float64) (*Equilibrium, error) {
	e, err := newEquilibrium("still.SmoothEquilibrium", x, y)
	if err != nil {
		return nil, err
	}
	e.smooth = &interp.FritschButland{}
	return e, e.smooth.Fit(e.x, e.y)
}

// StraightEquilibrium is SmoothEquilibrium with straight lines from point to point, as one reads a table by hand.
func StraightEquilibrium(x, y []float64) (*Equilibrium, error) {
	return newEquilibrium("still.StraightEquilibrium", x, y)
}

func newEquilibrium(function string, x, y []float64) (*Equilibrium, error) {
	if len(x) != len(y) || len(x) < 3 {
		return nil, inputf(function, "there are %d fractions in the liquid and %d in the vapour; give at least three pairs", len(x), len(y))
	}
	e := &Equilibrium{x: []float64{0}, y: []float64{0}}
	for i := range x {
		if !(x[i] >= 0 && x[i] <= 1 && y[i] >= 0 && y[i] <= 1) {
			return nil, inputf(function, "point %d is (%g, %g); mole fractions go from 0 to 1", i+1, x[i], y[i])
		}
		if x[i] == 0 && y[i] == 0 && i == 0 {
			continue
		}
		if last := len(e.x) - 1; !(x[i] > e.x[last] && y[i] > e.y[last]) {
			return nil, inputf(function, "point %d is (%g, %g) after (%g, %g); both fractions must rise from point to point", i+1, x[i], y[i], e.x[last], e.y[last])
		}
		e.x, e.y = append(e.x, x[i]), append(e.y, y[i])
	}
	switch last := len(e.x) - 1; {
	case e.x[last] < 1 && e.y[last] < 1:
		e.x, e.y = append(e.x, 1), append(e.y, 1)
	case e.x[last] != 1 || e.y[last] != 1:
		return nil, inputf(function, "the last point is (%g, %g); pure liquid and pure vapour belong together, as (1, 1)", e.x[last], e.y[last])
	}
	return e, nil
}

// vapour returns y over x and its slope, dimensionless.
func (e *Equilibrium) vapour(x float64) (y, slope float64) {
	if e.smooth != nil {
		return e.smooth.Predict(x), e.smooth.PredictDerivative(x)
	}
	i := e.step(e.x, x)
	slope = (e.y[i+1] - e.y[i]) / (e.x[i+1] - e.x[i])
	return e.y[i] + slope*(x-e.x[i]), slope
}

// liquid returns the x under y and its slope, dimensionless.
func (e *Equilibrium) liquid(y float64) (x, slope float64) {
	i := e.step(e.y, y)
	x = e.x[i] + (e.x[i+1]-e.x[i])*(y-e.y[i])/(e.y[i+1]-e.y[i])
	if e.smooth == nil {
		return x, (e.x[i+1] - e.x[i]) / (e.y[i+1] - e.y[i])
	}
	low, high := e.x[i], e.x[i+1]
	for range 100 {
		v, d := e.vapour(x)
		if v > y {
			high = x
		} else {
			low = x
		}
		next := x - (v-y)/d
		if !(next > low && next < high) {
			next = (low + high) / 2
		}
		if math.Abs(next-x) <= 1e-15 {
			x = next
			break
		}
		x = next
	}
	_, d := e.vapour(x)
	return x, 1 / d
}

// step returns which of the steps between the knots holds v.
func (e *Equilibrium) step(knots []float64, v float64) int {
	return min(max(sort.SearchFloat64s(knots, v)-1, 0), len(knots)-2)
}

// String says what the curve is.
func (e *Equilibrium) String() string {
	how := "straight lines"
	if e.smooth != nil {
		how = "a smooth curve"
	}
	return fmt.Sprintf("own equilibrium: %s through %d points", how, len(e.x))
}
