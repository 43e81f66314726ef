package still

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat/distuv"

	"swanneck/mathlib/quantity"
)

// Difference is one figure of two stills beside each other.
type Difference struct {
	What  string
	A, B  float64 // the figure of each still, dimensionless, per cent for the heating efficiency
	Ratio float64 // B over A, dimensionless; for the plates B less A
	Low   float64 // lower end of the ratio's (the difference's) interval, dimensionless
	High  float64 // upper end, dimensionless
	Clear bool    // the interval leaves out that they are alike
}

// Comparison is two learned runs beside each other.
type Comparison struct {
	Differences []Difference
	FarthestABV float64 // the largest difference of the fitted strengths at the same share of the pure alcohol, % vol, B less A
	AtPct       float64 // that share of the charge's pure alcohol, per cent
	AsOnePct    float64 // how often, if both runs came from one still, logs would differ as much: a probability, per cent
}

// String gives the comparison in one line.
func (c Comparison) String() string {
	s := fmt.Sprintf("strengths differ by up to %.1f %% vol (with %.0f %% of the alcohol over); ", c.FarthestABV, c.AtPct)
	if c.AsOnePct < 5 {
		return s + fmt.Sprintf("one still does not give both logs (%.2g %%)", c.AsOnePct)
	}
	return s + fmt.Sprintf("one still may give both logs (%.0f %%)", c.AsOnePct)
}

// Rows gives the comparison as a table, each row a label, a figure and a unit.
func (c Comparison) Rows() [][]string {
	var rows [][]string
	for _, d := range c.Differences {
		verdict := "no difference shows"
		if d.Clear {
			verdict = "differ"
		}
		rows = append(rows, []string{d.What, fmt.Sprintf("%s and %s: %s", threeDigits(d.A), threeDigits(d.B), verdict), ""})
	}
	return append(rows,
		[]string{"largest difference of the strengths", fmt.Sprintf("%.1f", c.FarthestABV), "% vol"},
		[]string{"with that much of the alcohol over", fmt.Sprintf("%.0f", c.AtPct), "%"},
		[]string{"chance of such logs from one still", fmt.Sprintf("%.2g", c.AsOnePct), "%"})
}

// CompareRuns puts two learned runs beside each other: each figure with the interval of its difference, the strengths at the
// same share of the alcohol, and how well the still of the first explains the log of the second.
//
// Intervals take the two runs as independent. The last is the F test of the sum of squares of B's log under A's figures
// against that under its own.
func CompareRuns(a, b Learned) (Comparison, error) {
	const fn = "still.CompareRuns"
	if a.rows == 0 || b.rows == 0 {
		return Comparison{}, inputf(fn, "a run is missing; give two that LearnFromRun has learned")
	}
	var c Comparison
	quantile := func(l Learned) float64 {
		return distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(l.rows - len(l.figures))}.Quantile(0.5 + a.ConfidencePct/200)
	}
	t := math.Max(quantile(a), quantile(b))
	for _, p := range []struct {
		what, figure string
		a, b         Estimate
	}{{"ideal plates above the pot", "plates", a.Plates, b.Plates}, {"reflux", "reflux", a.Reflux, b.Reflux}, {"heating efficiency, %", "heating efficiency", a.HeatEfficiencyPct, b.HeatEfficiencyPct}} {
		sa, okA := a.spread(p.figure)
		sb, okB := b.spread(p.figure)
		if !okA || !okB {
			continue
		}
		d := Difference{What: p.what, A: p.a.Value, B: p.b.Value}
		half := t * math.Hypot(sa, sb)
		if p.figure == "plates" { // the parameter is the root of the number
			half = t * math.Hypot(2*math.Sqrt(p.a.Value)*sa, 2*math.Sqrt(p.b.Value)*sb)
			d.Ratio = d.B - d.A
			d.Low, d.High = d.Ratio-half, d.Ratio+half
			d.Clear = d.Low > 0 || d.High < 0
		} else {
			d.Ratio = d.B / d.A
			d.Low, d.High = d.Ratio*math.Exp(-half), d.Ratio*math.Exp(half)
			d.Clear = d.Low > 1 || d.High < 1
		}
		c.Differences = append(c.Differences, d)
	}
	c.farthest(&a.Run, &b.Run)
	return c, c.asOne(fn, a, b)
}

// spread returns the standard deviation of a parameter.
func (l Learned) spread(figure string) (float64, bool) {
	for i, name := range l.figures {
		if name == figure {
			return l.se[i], true
		}
	}
	return 0, false
}

// farthest finds where the strengths of two runs differ most at the same share of the alcohol.
func (c *Comparison) farthest(a, b *Run) {
	at := func(r *Run) (share []float64) {
		for i := range r.Steps {
			share = append(share, 100*pureLitresOf(flow{}, r.flowTo(place{at: float64(i)}))/r.chargeL())
		}
		return share
	}
	sa, sb := at(a), at(b)
	top := math.Min(sa[len(sa)-1], sb[len(sb)-1])
	i, j := 0, 0
	const points = 200
	for n := range points + 1 {
		s := top * float64(n) / points
		for i < len(sa)-1 && sa[i] < s {
			i++
		}
		for j < len(sb)-1 && sb[j] < s {
			j++
		}
		if d := b.out.running[j] - a.out.running[i]; math.Abs(d) > math.Abs(c.FarthestABV) {
			c.FarthestABV, c.AtPct = d, s
		}
	}
}

// asOne fits nothing: it puts the figures of A into the run of B.
func (c *Comparison) asOne(function string, a, b Learned) error {
	f := newFitting(function, b.batch, b.log, LearnOptions{})
	var p []float64
	for _, name := range f.names {
		switch name {
		case "plates":
			p = append(p, math.Sqrt(a.Plates.Value))
		case "reflux":
			p = append(p, math.Log(math.Max(a.Reflux.Value, 1e-3)))
		case "heating efficiency":
			e := a.HeatEfficiencyPct
			if !e.Found {
				e = b.HeatEfficiencyPct
			}
			p = append(p, math.Log(e.Value/100))
		}
	}
	r := f.residuals(p)
	if r == nil {
		c.AsOnePct = 0
		return nil
	}
	k, n := float64(len(b.figures)), float64(b.rows)
	if k == 0 || b.sum == 0 {
		c.AsOnePct = 100
		return nil
	}
	ratio := (sumOfSquares(r) - b.sum) / k / (b.sum / (n - k))
	if ratio <= 0 {
		c.AsOnePct = 100
		return nil
	}
	c.AsOnePct = 100 * distuv.F{D1: k, D2: n - k}.Survival(ratio)
	return quantity.CheckRange(function, "probability", c.AsOnePct, 0, 100, "%", "")
}
