package simplex_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/mat"

	"swanneck/mathlib/internal/simplex"
)

// draw returns a problem of n variables and m rows with many figures that coincide, so that corners are degenerate.
func draw(r *rand.Rand, n, m int) (*simplex.Problem, []float64) {
	p := &simplex.Problem{}
	cost := make([]float64, n)
	for j := range n {
		p.Low = append(p.Low, float64(r.IntN(3)))
		p.High = append(p.High, p.Low[j]+float64(r.IntN(6)))
		cost[j] = float64(r.IntN(9) - 4)
	}
	for range m {
		row := make([]float64, n)
		for j := range row {
			if r.IntN(3) > 0 {
				row[j] = float64(r.IntN(9) - 4)
			}
		}
		low := float64(r.IntN(21) - 10)
		high := low + float64(r.IntN(8))
		switch r.IntN(4) {
		case 0:
			low = math.Inf(-1)
		case 1:
			high = math.Inf(1)
		case 2:
			high = low
		}
		p.Rows, p.RowLow, p.RowHigh = append(p.Rows, row), append(p.RowLow, low), append(p.RowHigh, high)
	}
	return p, cost
}

// corners finds the least value by going through all corners: every choice of n limits that are met exactly.
func corners(p *simplex.Problem, cost []float64) (least float64, found bool) {
	n := len(cost)
	type side struct {
		row   []float64
		value float64
	}
	var sides []side
	add := func(row []float64, low, high float64) {
		if !math.IsInf(low, 0) {
			sides = append(sides, side{row, low})
		}
		if !math.IsInf(high, 0) && high != low {
			sides = append(sides, side{row, high})
		}
	}
	for j := range n {
		row := make([]float64, n)
		row[j] = 1
		add(row, p.Low[j], p.High[j])
	}
	for i := range p.Rows {
		add(p.Rows[i], p.RowLow[i], p.RowHigh[i])
	}
	least = math.Inf(1)
	chosen := make([]int, 0, n)
	var pick func(from int)
	pick = func(from int) {
		if len(chosen) == n {
			a, b := mat.NewDense(n, n, nil), mat.NewVecDense(n, nil)
			for k, s := range chosen {
				a.SetRow(k, sides[s].row)
				b.SetVec(k, sides[s].value)
			}
			var lu mat.LU
			lu.Factorize(a)
			if lu.Cond() > 1e9 {
				return
			}
			x := mat.NewVecDense(n, nil)
			if lu.SolveVecTo(x, false, b) != nil || !keeps(p, x.RawVector().Data, 1e-7) {
				return
			}
			v := 0.0
			for j, c := range cost {
				v += c * x.AtVec(j)
			}
			least, found = math.Min(least, v), true
			return
		}
		for s := from; s < len(sides); s++ {
			chosen = append(chosen, s)
			pick(s + 1)
			chosen = chosen[:len(chosen)-1]
		}
	}
	pick(0)
	return least, found
}

func keeps(p *simplex.Problem, x []float64, tol float64) bool {
	for j := range x {
		if x[j] < p.Low[j]-tol || x[j] > p.High[j]+tol {
			return false
		}
	}
	for i, row := range p.Rows {
		sum := 0.0
		for j, a := range row {
			sum += a * x[j]
		}
		if sum < p.RowLow[i]-tol || sum > p.RowHigh[i]+tol {
			return false
		}
	}
	return true
}

func TestAgainstAllCorners(t *testing.T) {
	r := rand.New(rand.NewPCG(1512, 1))
	solved, without := 0, 0
	for k := range 700 {
		p, cost := draw(r, 2+r.IntN(3), r.IntN(4))
		want, found := corners(p, cost)
		got, err := the(simplex.New(p)).Minimise(cost)
		var none *simplex.Infeasible
		switch {
		case !found && errors.As(err, &none):
			without++
			checkBlocks(t, p, none)
		case !found || err != nil:
			t.Fatalf("problem %d: %v, %v; going through the corners gives %g, %v\n%+v", k, got, err, want, found, p)
		case math.Abs(got.Value-want) > 1e-8 || !keeps(p, got.X, 1e-9):
			t.Fatalf("problem %d: %v; going through the corners gives %g", k, got, want)
		default:
			solved++
		}
	}
	if solved < 200 || without < 150 {
		t.Fatalf("%d solved, %d without a solution: the draw does not try both", solved, without)
	}
}

// checkBlocks makes sure that a problem stays without a solution if only the bounds named are kept, and that no bound
// that is not named mends it alone.
func checkBlocks(t *testing.T, p *simplex.Problem, e *simplex.Infeasible) {
	t.Helper()
	if len(e.Blocks) == 0 || !(e.Short > 0) {
		t.Fatalf("%+v has no solution, and blocks are %+v, short by %g", p, e.Blocks, e.Short)
	}
	q := &simplex.Problem{Rows: p.Rows}
	for range p.Low {
		q.Low, q.High = append(q.Low, math.Inf(-1)), append(q.High, math.Inf(1))
	}
	for range p.Rows {
		q.RowLow, q.RowHigh = append(q.RowLow, math.Inf(-1)), append(q.RowHigh, math.Inf(1))
	}
	for _, b := range e.Blocks {
		switch {
		case b.Row && b.High:
			q.RowHigh[b.Index] = p.RowHigh[b.Index]
		case b.Row:
			q.RowLow[b.Index] = p.RowLow[b.Index]
		case b.High:
			q.High[b.Index] = p.High[b.Index]
		default:
			q.Low[b.Index] = p.Low[b.Index]
		}
	}
	var none *simplex.Infeasible
	if _, err := the(simplex.New(q)).Minimise(); !errors.As(err, &none) {
		t.Fatalf("%+v: the bounds %+v alone leave a solution: %v", p, e.Blocks, err)
	}
}

// Each further cost decides only where the ones before do not.
func TestFurtherCosts(t *testing.T) {
	r := rand.New(rand.NewPCG(1512, 2))
	tried := 0
	for range 1000 {
		p, cost := draw(r, 4, 2)
		for j := range 2 {
			cost[j] = 0 // so that there is something left to decide
		}
		second := []float64{1, -2, 3, float64(r.IntN(5) - 2)}
		s := the(simplex.New(p))
		first, err := s.Minimise(cost)
		if err != nil {
			continue
		}
		both := the(s.Minimise(cost, second))
		if math.Abs(both.Value-first.Value) > 1e-8 {
			t.Fatalf("a further cost raised the first from %g to %g", first.Value, both.Value)
		}
		// The same by a limit on the first cost.
		p.Rows, p.RowLow, p.RowHigh = append(p.Rows, cost), append(p.RowLow, math.Inf(-1)), append(p.RowHigh, first.Value+1e-9)
		want := the(the(simplex.New(p)).Minimise(second)).Value
		got := 0.0
		for j, c := range second {
			got += c * both.X[j]
		}
		if math.Abs(got-want) > 1e-6 {
			t.Fatalf("the second cost is %.9g; held to the first by a limit it is %.9g", got, want)
		}
		tried++
	}
	if tried < 200 {
		t.Fatalf("only %d problems had a solution", tried)
	}
}

// A solver whose bounds were moved gives what a new one gives.
func TestMovedBounds(t *testing.T) {
	r := rand.New(rand.NewPCG(1512, 3))
	p, cost := draw(r, 12, 8)
	s := the(simplex.New(p))
	with := 0
	for range 2000 {
		if r.IntN(2) == 0 {
			j := r.IntN(12)
			p.Low[j] = float64(r.IntN(4) - 2)
			p.High[j] = p.Low[j] + float64(r.IntN(9))
			s.SetBounds(false, j, p.Low[j], p.High[j])
		} else {
			i := r.IntN(8)
			p.RowLow[i] = float64(r.IntN(30) - 25)
			p.RowHigh[i] = p.RowLow[i] + float64(r.IntN(30))
			s.SetBounds(true, i, p.RowLow[i], p.RowHigh[i])
		}
		cost[r.IntN(12)] = float64(r.IntN(9) - 4)
		got, err := s.Minimise(cost)
		want, err2 := the(simplex.New(p)).Minimise(cost)
		if (err == nil) != (err2 == nil) || err == nil && math.Abs(got.Value-want.Value) > 1e-7 {
			t.Fatalf("%v, %v; a new solver gives %v, %v", got.Value, err, want.Value, err2)
		}
		if err == nil {
			with++
		}
	}
	if with < 300 || with > 1950 {
		t.Fatalf("%d of 2000 had a solution: the draw does not try both", with)
	}
}

func TestUnboundedAndMisfits(t *testing.T) {
	p := &simplex.Problem{Low: []float64{0, 0}, High: []float64{math.Inf(1), math.Inf(1)}, Rows: [][]float64{{1, -1}}, RowLow: []float64{0}, RowHigh: []float64{1}}
	var u *simplex.Unbounded
	if v, err := the(simplex.New(p)).Minimise([]float64{-1, 0}); !errors.As(err, &u) {
		t.Errorf("%v, %v; want an *Unbounded", v, err)
	}
	for name, bad := range map[string]*simplex.Problem{
		"bounds":     {Low: []float64{0}, High: nil},
		"row":        {Low: []float64{0}, High: []float64{1}, Rows: [][]float64{{1, 2}}, RowLow: []float64{0}, RowHigh: []float64{1}},
		"nan":        {Low: []float64{0}, High: []float64{1}, Rows: [][]float64{{math.NaN()}}, RowLow: []float64{0}, RowHigh: []float64{1}},
		"turned":     {Low: []float64{2}, High: []float64{1}},
		"nan bound":  {Low: []float64{math.NaN()}, High: []float64{1}},
		"no row low": {Low: []float64{0}, High: []float64{1}, Rows: [][]float64{{1}}, RowHigh: []float64{1}},
	} {
		if _, err := simplex.New(bad); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
