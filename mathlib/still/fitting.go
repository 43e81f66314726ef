package still

import (
	"math"
	"sort"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat/distuv"

	"swanneck/mathlib/alcoholometry"
)

// fitting is a log and the batch that is to give it.
type fitting struct {
	function string
	batch    Batch
	log      RunLog
	options  LearnOptions
	timed    bool
	names    []string // of the figures sought
	failure  error    // the last with which a run failed
}

func newFitting(function string, b Batch, log RunLog, o LearnOptions) *fitting {
	f := &fitting{function: function, batch: b, log: log, options: o, timed: b.Heat.PowerKW > 0 && len(log.Min) > 0}
	f.batch.Until, f.batch.UntilPot = alcoholometry.Strength{}, alcoholometry.Strength{}
	f.batch.Hold, f.batch.Plan, f.batch.Congeners = alcoholometry.Strength{}, nil, nil
	f.batch.Stop = AtVolume(log.CollectedL[len(log.CollectedL)-1])
	f.batch.Steps = learnSteps
	if !o.KnownPlates {
		f.names = append(f.names, "plates")
	}
	if !o.KnownReflux {
		f.names = append(f.names, "reflux")
	}
	if f.timed {
		f.names = append(f.names, "heating efficiency")
	}
	return f
}

// still returns the batch with the figures of the parameters. Plates are a square and the others exponentials, so that none
// falls below 0.
func (f *fitting) still(p []float64) Batch {
	b := f.batch
	for i, name := range f.names {
		switch name {
		case "plates":
			b.Plates = p[i] * p[i]
		case "reflux":
			b.Reflux = math.Exp(p[i])
		case "heating efficiency":
			b.Heat.PowerKW *= math.Exp(p[i])
		}
	}
	return b
}

// parameters is the way back.
func (f *fitting) parameters(plates, reflux float64) []float64 {
	var p []float64
	for _, name := range f.names {
		switch name {
		case "plates":
			p = append(p, math.Sqrt(plates))
		case "reflux":
			p = append(p, math.Log(reflux))
		case "heating efficiency":
			p = append(p, math.Log(0.8))
		}
	}
	return p
}

// residuals returns how far a still is from the log, each over how sure it is, and the rows; nil if it cannot make the run.
func (f *fitting) residuals(p []float64) []float64 {
	rows, run, err := f.rows(f.still(p))
	if err != nil {
		f.failure = err
		return nil
	}
	var out []float64
	n := len(rows)
	for _, r := range rows {
		if len(f.log.Running) > 0 {
			out = append(out, (r.FittedABV-r.LoggedABV)/sureABV)
		}
		if len(f.log.Head) > 0 {
			out = append(out, (r.FittedHeadC-r.LoggedHeadC)/sureHeadC)
		}
		if f.timed {
			out = append(out, (r.FittedMin-r.LoggedMin)/(sureMinutes*rows[n-1].LoggedMin))
		}
	}
	if t := f.log.Total; t.Strength.IsSet() {
		out = append(out, (run.Distillate.Strength.ABV()-t.Strength.ABV())/sureTotal)
	}
	return out
}

// rows returns the log beside the run of a still.
func (f *fitting) rows(b Batch) ([]Residual, Run, error) {
	if b.Plates > 100 || b.Reflux > 500 {
		return nil, Run{}, inputf(f.function, "the log asks for %.0f plates and a reflux of %.0f, which no still has", b.Plates, b.Reflux)
	}
	run, err := distil(f.function, b, true)
	if err != nil {
		return nil, Run{}, err
	}
	volumes := make([]float64, len(run.Steps))
	for i := range volumes {
		volumes[i] = litresOf(flow{}, run.flowTo(place{at: float64(i)}))
	}
	out := make([]Residual, len(f.log.CollectedL))
	first := 0.0
	for i, v := range f.log.CollectedL {
		j := min(max(sort.SearchFloat64s(volumes, v), 1), len(volumes)-1)
		way := 0.0
		if d := volumes[j] - volumes[j-1]; d > 0 {
			way = math.Min(math.Max((v-volumes[j-1])/d, 0), 1)
		}
		mix := func(a, b float64) float64 { return a + way*(b-a) }
		r := Residual{CollectedL: v,
			FittedABV:   mix(run.out.running[j-1], run.out.running[j]),
			FittedHeadC: mix(run.Steps[j-1].Head.C(), run.Steps[j].Head.C()),
		}
		if len(f.log.Running) > 0 {
			r.LoggedABV = f.log.Running[i].ABV()
		}
		if len(f.log.Head) > 0 {
			r.LoggedHeadC = f.log.Head[i].C()
		}
		if f.timed {
			minutes := mix(run.Steps[j-1].Min, run.Steps[j].Min)
			if i == 0 {
				first = minutes
			}
			r.LoggedMin, r.FittedMin = f.log.Min[i]-f.log.Min[0], minutes-first
		}
		out[i] = r
	}
	return out, run, nil
}

// The search begins from all of these plates and refluxes, goes a few rounds from each, and then to the end from the best.
var startPlates, startRefluxes = []float64{0.5, 1, 2, 4, 8}, []float64{0.4, 2}

const (
	firstRounds    = 6
	lastRounds     = 60
	startsFollowed = 3
)

func (f *fitting) learn() (Learned, error) {
	plates, refluxes := startPlates, startRefluxes
	if f.options.KnownPlates {
		plates = []float64{f.batch.Plates}
	}
	if f.options.KnownReflux {
		refluxes = []float64{math.Max(f.batch.Reflux, 1e-3)}
	}
	var all []learnt
	for _, n := range plates {
		for _, r := range refluxes {
			if p, res, slopes := leastSquares(f.residuals, f.parameters(n, r), firstRounds); res != nil {
				all = append(all, learnt{p, res, slopes})
			}
		}
	}
	if len(all) == 0 {
		return Learned{}, as(f.function, f.failure)
	}
	sort.SliceStable(all, func(i, j int) bool { return all[i].cost() < all[j].cost() })
	best := all[0]
	for _, s := range all[:min(startsFollowed, len(all))] {
		if p, res, slopes := leastSquares(f.residuals, s.p, lastRounds); res != nil && sumOfSquares(res) <= best.cost() {
			best = learnt{p, res, slopes}
		}
	}
	if !f.options.KnownPlates {
		if l, err := f.plainPot(best); err != nil || l.rows > 0 {
			return l, err
		}
	}
	if n, need := len(best.r), len(best.p)+fewestRows; n < need {
		return Learned{}, inputf(f.function, "the log has %d readings for %d figures; give at least %d", n, len(best.p), need)
	}
	return f.result(best)
}

// result turns the fitted parameters into figures with intervals.
func (f *fitting) result(best learnt) (Learned, error) {
	var c *mat.Dense
	correlation, ok := 0.0, true
	if len(best.p) > 0 {
		c, correlation, ok = covariance(best.slopes)
	}
	const mostCorrelated = 0.98
	if !ok || correlation > mostCorrelated {
		return Learned{}, inputf(f.function, "this log does not tell %s apart (correlation %.3f); say which is known (KnownReflux, KnownPlates), or log a run that goes on to weak spirit", joined(f.names), correlation)
	}
	n, k := len(best.r), len(best.p)
	out := Learned{ConfidencePct: f.options.ConfidencePct, Correlation: correlation, batch: f.batch, log: f.log, sum: sumOfSquares(best.r), rows: n, figures: f.names}
	variance := out.sum / float64(n-k)
	t := distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(n - k)}.Quantile(0.5 + f.options.ConfidencePct/200)
	b := f.still(best.p)
	out.Plates, out.Reflux = Estimate{Value: b.Plates}, Estimate{Value: b.Reflux}
	for i, name := range f.names {
		half := t * math.Sqrt(variance*c.At(i, i))
		low, high := best.p[i]-half, best.p[i]+half
		out.se = append(out.se, math.Sqrt(variance*c.At(i, i)))
		switch name {
		case "plates":
			p := math.Abs(best.p[i])
			low, high = math.Max(p-half, 0), p+half
			out.Plates = Estimate{b.Plates, low * low, high * high, true}
		case "reflux":
			out.Reflux = Estimate{b.Reflux, math.Exp(low), math.Exp(high), true}
		case "heating efficiency":
			out.HeatEfficiencyPct = Estimate{100 * math.Exp(best.p[i]), 100 * math.Exp(low), 100 * math.Exp(high), true}
		}
	}
	var err error
	if out.Residuals, out.Run, err = f.rows(b); err != nil {
		return Learned{}, err
	}
	out.notes()
	return out, nil
}

// plainPot returns what is learned of a still if a plain pot explains its log as well as the best of the others does (F test
// at 5 %), and nothing if not. Up to how many plates there may be is told for the reflux known or for one of 1, because where
// nothing is strengthened no reflux can be seen.
func (f *fitting) plainPot(best learnt) (Learned, error) {
	g := *f
	g.names = nil
	g.batch.Plates, g.batch.Reflux = 0, 0
	if f.timed {
		g.names = []string{"heating efficiency"}
	}
	p, r, slopes := leastSquares(g.residuals, g.parameters(0, 1), lastRounds)
	if r == nil {
		return Learned{}, nil
	}
	n, more := float64(len(r)), float64(len(best.p)-len(p))
	free := n - float64(len(best.p))
	if free < fewestRows {
		return Learned{}, nil
	}
	if ratio := (sumOfSquares(r) - best.cost()) / more / (best.cost() / free); ratio > (distuv.F{D1: more, D2: free}).Quantile(0.95) {
		return Learned{}, nil
	}
	out, err := g.result(learnt{p, r, slopes})
	if err != nil {
		return Learned{}, err
	}
	t := distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(len(r) - len(p))}.Quantile(0.5 + f.options.ConfidencePct/200)
	most := out.sum * (1 + t*t/float64(len(r)-len(p)))
	rise := func(plates float64) float64 {
		h := g
		h.batch.Plates, h.batch.Reflux = plates, 1
		if f.options.KnownReflux {
			h.batch.Reflux = f.batch.Reflux
		}
		r := h.residuals(p)
		if r == nil {
			return 1
		}
		return sumOfSquares(r) - most
	}
	const many = 5
	high := many * 1.0
	if at := rise(many); at > 0 {
		high = root(rise, 0, many, -t*t*out.sum, at, 1e-3)
	}
	out.Plates = Estimate{Value: 0, Low: 0, High: high, Found: true}
	out.Notes = append(out.Notes, "no plate shows: a plain pot explains the log as well, and no reflux can be seen; how many plates there may be is told for a reflux of 1 where none is known")
	return out, nil
}

// learnt is where a search came to.
type learnt struct {
	p, r   []float64
	slopes *mat.Dense
}

func (l learnt) cost() float64 { return sumOfSquares(l.r) }
