package mixing_test

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize/convex/lp"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

// drawBlend returns an order over n lots, the last of which is water, with limits on two congeners.
func drawBlend(r *rand.Rand, n int) mixing.BlendOrder {
	o := mixing.BlendOrder{Currency: "XTS", VolumeL: 100 + 900*r.Float64(), Strength: abv(38 + 12*r.Float64())}
	for i := range n {
		l := mixing.Lot{Name: fmt.Sprintf("lot %d", i+1), CostPerL: 1 + 9*r.Float64(), Holds: map[string]quantity.Concentration{
			"methanol": the(quantity.GHLPure(50 * r.Float64())),
			"esters":   the(quantity.MgL(300 * r.Float64())),
		}}
		l.Spirit = alcoholometry.Spirit{VolumeL: 50 + 400*r.Float64(), Strength: abv(35 + 60*r.Float64()), Temp: celsius(10 + 20*r.Float64())}
		if i == n-1 {
			l = mixing.Lot{Name: "water", CostPerL: 0.01, Spirit: alcoholometry.Spirit{VolumeL: 5000, Strength: alcoholometry.Water}}
		}
		if r.IntN(3) == 0 {
			l.MostPct = 20 + 60*r.Float64()
		}
		o.Lots = append(o.Lots, l)
	}
	o.Limits = []mixing.BlendLimit{
		{Name: "methanol", Most: the(quantity.GHLPure(15 + 20*r.Float64()))},
		{Name: "esters", Least: the(quantity.MgL(40 + 60*r.Float64())), Most: the(quantity.MgL(130 + 100*r.Float64()))},
	}
	return o
}

// byGonum solves an order with another solver, from the definitions: kilograms, grams and litres.
func byGonum(o mixing.BlendOrder) (float64, error) {
	n := len(o.Lots)
	blend := alcoholometry.Spirit{VolumeL: o.VolumeL, Strength: o.Strength, Temp: o.Temp}
	at20L := blend.VolumeAt(quantity.Temperature{})
	var rows [][]float64
	var most []float64
	sums := [][]float64{make([]float64, n), make([]float64, n)} // kg, litres of pure alcohol
	cost := make([]float64, n)
	grams := func(name string) []float64 {
		out := make([]float64, n)
		for i, l := range o.Lots {
			if c, ok := l.Holds[name]; ok {
				out[i] = the(alcoholometry.MassG(c, l.Spirit)) / l.Spirit.MassKg()
			}
		}
		return out
	}
	limit := func(row []float64, high float64) { rows, most = append(rows, row), append(most, high) }
	minus := func(row []float64) []float64 {
		out := make([]float64, n)
		for i, v := range row {
			out[i] = -v
		}
		return out
	}
	for i, l := range o.Lots {
		kg := l.Spirit.MassKg()
		sums[0][i], sums[1][i] = 1, l.Spirit.PureL()/kg
		cost[i] = l.CostPerL * l.Spirit.VolumeL / kg
		one := make([]float64, n)
		one[i] = 1
		high := kg
		if l.MostPct > 0 {
			high = min(high, l.MostPct/100*blend.MassKg())
		}
		limit(one, high)
	}
	limit(grams("methanol"), o.Limits[0].Most.Value()*blend.PureL()/100)
	limit(grams("esters"), o.Limits[1].Most.Value()*at20L/1000)
	limit(minus(grams("esters")), -o.Limits[1].Least.Value()*at20L/1000)
	m := len(rows)
	a := mat.NewDense(m+2, n+m, nil)
	b := make([]float64, m+2)
	for i, row := range rows {
		for j, v := range row {
			a.Set(i, j, v)
		}
		a.Set(i, n+i, 1)
		b[i] = most[i]
	}
	for k, total := range []float64{blend.MassKg(), blend.PureL()} {
		for j, v := range sums[k] {
			a.Set(m+k, j, v)
		}
		b[m+k] = total
	}
	c := make([]float64, n+m)
	copy(c, cost)
	v, _, err := lp.Simplex(c, a, b, 1e-10, nil)
	return v, err
}

func TestBlendsAgainstAnotherSolver(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 1))
	possible, not := 0, 0
	for k := range 1000 {
		o := drawBlend(r, 3+r.IntN(6))
		want, err := byGonum(o)
		got, gotErr := mixing.BlendLots(o)
		var none *mixing.BlendError
		switch {
		case errors.Is(err, lp.ErrInfeasible) && errors.As(gotErr, &none):
			not++
			checkBlocks(t, o, none)
		case err != nil || gotErr != nil:
			t.Fatalf("blend %d: %v; the other solver: %v", k, gotErr, err)
		case math.Abs(got.Cost-want) > 1e-8*want:
			t.Fatalf("blend %d costs %.10g; the other solver finds %.10g", k, got.Cost, want)
		default:
			possible++
			checkBlend(t, got)
		}
	}
	t.Logf("%d possible, %d not", possible, not)
	if possible < 200 || not < 200 {
		t.Fatalf("%d possible, %d not: the draw does not try both", possible, not)
	}
}

// checkBlend adds up what a blend is made of and holds it against its result and its limits.
func checkBlend(t *testing.T, p mixing.BlendPlan) {
	t.Helper()
	o := p.Order
	lots := map[string]mixing.Lot{}
	for _, l := range o.Lots {
		lots[l.Name] = l
	}
	var spirits []alcoholometry.Spirit
	kg, pureL, cost := 0.0, 0.0, 0.0
	grams := map[string]float64{}
	for _, b := range p.Parts {
		l := lots[b.Lot]
		s := l.Spirit
		s.VolumeL = b.VolumeL
		if !near(s.MassKg(), b.MassKg, 1e-12) || !near(s.PureL(), b.PureL, 1e-12) || b.VolumeL > l.Spirit.VolumeL || math.Abs(b.LeftL+b.VolumeL-l.Spirit.VolumeL) > 1e-9*l.Spirit.VolumeL {
			t.Fatalf("part %+v of %v", b, l.Spirit)
		}
		spirits = append(spirits, s)
		kg += s.MassKg()
		pureL += s.PureL()
		cost += b.VolumeL * l.CostPerL
		for name, c := range l.Holds {
			grams[name] += the(alcoholometry.MassG(c, s))
		}
		if l.MostPct > 0 && o.SharesOf == mixing.SharesOfMass && 100*s.MassKg()/p.MassKg > l.MostPct*(1+1e-9) {
			t.Fatalf("%s makes %.9g %% of the blend; at most %g", b.Lot, 100*s.MassKg()/p.MassKg, l.MostPct)
		}
	}
	all := the(mixing.Blend(spirits...))
	for what, c := range map[string][2]float64{
		"mass": {p.Result.MassKg(), kg}, "pure alcohol": {p.Result.PureL(), pureL}, "cost": {p.Cost, cost},
		"strength by mass": {p.Result.Strength.ABW(), all.Strength.ABW()}, "volume": {p.Result.VolumeL, all.VolumeAt(o.Temp)},
	} {
		if !near(c[0], c[1], 1e-9) {
			t.Fatalf("%s is %.12g and the parts give %.12g", what, c[0], c[1])
		}
	}
	if !o.AsMuch && p.Result.VolumeL != o.VolumeL {
		t.Fatalf("%.12g L; %.12g wanted", p.Result.VolumeL, o.VolumeL)
	}
	if w := p.Result.Strength.ABW(); w < o.Strength.ABW()-1e-9 || w > o.StrengthTo.ABW()+1e-9 {
		t.Fatalf("%v; %v to %v wanted", p.Result.Strength, o.Strength, o.StrengthTo)
	}
	for _, f := range p.Figures {
		if g := the(alcoholometry.MassG(f.Amount, p.Result)); !near(g, grams[f.Name], 1e-9) {
			t.Fatalf("%s: %v are %.12g g and the parts bring %.12g g", f.Name, f.Amount, g, grams[f.Name])
		}
		if f.Limit.Most.IsSet() && f.Amount.Value() > f.Limit.Most.Value()*(1+1e-9) || f.Limit.Least.IsSet() && f.Amount.Value() < f.Limit.Least.Value()*(1-1e-9) {
			t.Fatalf("%s is %v; limits %v and %v", f.Name, f.Amount, f.Limit.Least, f.Limit.Most)
		}
	}
}

// moved returns the order with a limit moved to a figure.
func moved(t *testing.T, o mixing.BlendOrder, b mixing.BlendBlock, to float64) (mixing.BlendOrder, bool) {
	t.Helper()
	o.Lots = append([]mixing.Lot(nil), o.Lots...)
	o.Limits = append([]mixing.BlendLimit(nil), o.Limits...)
	done := false
	for i := range o.Limits {
		if l := &o.Limits[i]; l.Name == b.Limit {
			c := the(quantity.MgL(to))
			if b.Unit == string(quantity.PerPureAlcohol) {
				c = the(quantity.GHLPure(to))
			}
			if b.High {
				l.Most = c
			} else {
				l.Least = c
			}
			done = true
		}
	}
	for i := range o.Lots {
		switch l := &o.Lots[i]; b.Limit {
		case "what there is of " + l.Name:
			l.Spirit.VolumeL, done = to, true
		case "the share of " + l.Name:
			if b.High {
				l.MostPct = to
			} else {
				l.LeastPct = to
			}
			done = true
		}
	}
	switch {
	case b.Limit == "the volume":
		o.VolumeL, done = to, true
	case b.Limit == "the strength" && b.High:
		o.StrengthTo, done = abv(to), true
	case b.Limit == "the strength":
		if !o.StrengthTo.IsSet() {
			o.StrengthTo = o.Strength
		}
		o.Strength, done = abv(to), true
	}
	return o, done
}

// checkBlocks moves each limit that stands in the way to what it would have to be, where there must be a blend, and a
// thousandth less far, where there must be none.
func checkBlocks(t *testing.T, o mixing.BlendOrder, e *mixing.BlendError) {
	t.Helper()
	if len(e.Blocks) == 0 {
		t.Fatalf("%v: no limit is named", e)
	}
	if e.Together {
		for _, b := range e.Blocks {
			next, ok := moved(t, o, b, b.Needed+1e-7*(b.Needed-b.Given))
			if !ok {
				t.Fatalf("%v names an unknown limit", e)
			}
			o = next
		}
		if _, err := mixing.BlendLots(o); err != nil {
			t.Fatalf("%v\nmoved, all of them: %v", e, err)
		}
		return
	}
	for _, b := range e.Blocks {
		if b.High != (b.Needed > b.Given) {
			t.Fatalf("%v moves a limit inwards", b)
		}
		for _, c := range []struct {
			to       float64
			possible bool
		}{{b.Needed + 1e-6*(b.Needed-b.Given), true}, {b.Needed - 1e-3*(b.Needed-b.Given), false}} {
			next, ok := moved(t, o, b, c.to)
			if !ok {
				t.Fatalf("%v names an unknown limit", b)
			}
			if _, err := mixing.BlendLots(next); (err == nil) != c.possible {
				t.Fatalf("%v\nmoved to %.9g: %v; possible should be %v", b, c.to, err, c.possible)
			}
		}
	}
}
