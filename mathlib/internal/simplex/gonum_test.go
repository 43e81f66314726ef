package simplex_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize/convex/lp"

	"swanneck/mathlib/internal/simplex"
)

// blendLike draws a problem shaped like a blend: shares of n lots that add up to 1, none beyond what there is, and m
// limits on averages, all of which the equal shares keep.
func blendLike(r *rand.Rand, n, m int) (*simplex.Problem, []float64) {
	p := &simplex.Problem{}
	cost, ones := make([]float64, n), make([]float64, n)
	for j := range n {
		ones[j] = 1
		p.Low, p.High = append(p.Low, 0), append(p.High, (1.2+3*r.Float64())/float64(n))
		cost[j] = 1 + 9*r.Float64()
	}
	p.Rows, p.RowLow, p.RowHigh = [][]float64{ones}, []float64{1}, []float64{1}
	for range m {
		row, mean := make([]float64, n), 0.0
		for j := range row {
			row[j] = 100 * r.Float64()
			mean += row[j] / float64(n)
		}
		p.Rows, p.RowLow, p.RowHigh = append(p.Rows, row), append(p.RowLow, math.Inf(-1)), append(p.RowHigh, mean*(1+0.02*r.Float64()))
	}
	return p, cost
}

// gonum solves the same problem with optimize/convex/lp, whose variables are 0 or more and whose rows are equations: every
// upper bound and every limit takes a row and a variable of its own.
func gonum(p *simplex.Problem, cost []float64) (float64, error) {
	n := len(cost)
	rows := len(p.Rows) + n
	a := mat.NewDense(rows, n+rows-1, nil)
	b := make([]float64, rows)
	spare := n
	for i, row := range p.Rows {
		for j, v := range row {
			a.Set(i, j, v)
		}
		if p.RowLow[i] != p.RowHigh[i] {
			a.Set(i, spare, 1)
			spare++
		}
		b[i] = p.RowHigh[i]
	}
	for j := range n {
		a.Set(len(p.Rows)+j, j, 1)
		a.Set(len(p.Rows)+j, spare, 1)
		spare++
		b[len(p.Rows)+j] = p.High[j]
	}
	c := make([]float64, n+rows-1)
	copy(c, cost)
	v, _, err := lp.Simplex(c, a, b, 1e-10, nil)
	return v, err
}

func TestAgainstGonum(t *testing.T) {
	r := rand.New(rand.NewPCG(1512, 4))
	agree, gaveUp := 0, 0
	for range 150 {
		p, cost := blendLike(r, 3+r.IntN(10), 1+r.IntN(4))
		got := the(the(simplex.New(p)).Minimise(cost))
		want, err := gonum(p, cost)
		if err != nil {
			gaveUp++
			continue
		}
		if agree++; math.Abs(got.Value-want) > 1e-7*want {
			t.Fatalf("least value %.12g; gonum's simplex gives %.12g", got.Value, want)
		}
	}
	t.Logf("%d agree, gonum's simplex gave up on %d", agree, gaveUp)
	if agree < 100 {
		t.Fatalf("only %d problems were solved by both", agree)
	}
}

func BenchmarkBlendOf200LotsUnder30Limits(b *testing.B) {
	p, cost := blendLike(rand.New(rand.NewPCG(1512, 5)), 200, 30)
	for b.Loop() {
		the(the(simplex.New(p)).Minimise(cost))
	}
}
