package still

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// LearnOptions says what is known already when a still is learned from a log.
type LearnOptions struct {
	KnownPlates   bool    // take the batch's Plates as they are
	KnownReflux   bool    // take the batch's Reflux as it is
	ConfidencePct float64 // of the intervals, per cent; 95 if 0
}

// Estimate is a figure found from a log, with its interval, given the model; dimensionless unless its place says otherwise.
type Estimate struct {
	Value float64 // dimensionless unless its place says otherwise
	Low   float64 // lower end of the interval, dimensionless unless its place says otherwise
	High  float64 // upper end of the interval, dimensionless unless its place says otherwise
	Found bool    // false: it was taken as given, or there was nothing to find it from
}

// String gives the figure with its interval.
func (e Estimate) String() string {
	if !e.Found {
		return threeDigits(e.Value) + " (as given)"
	}
	return fmt.Sprintf("%s (%s to %s)", threeDigits(e.Value), threeDigits(e.Low), threeDigits(e.High))
}

// Residual is a row of a log beside what the learned still would have given.
type Residual struct {
	CollectedL  float64
	LoggedABV   float64 // 0 if no strengths were logged
	FittedABV   float64
	LoggedHeadC float64 // 0 if no temperatures were logged
	FittedHeadC float64
	LoggedMin   float64 // minutes after the first row; 0 if no times were logged
	FittedMin   float64 // minutes after the first row; 0 if there is no power
}

// Learned is a still as its log shows it.
type Learned struct {
	Plates            Estimate // ideal plates above the pot, dimensionless
	Reflux            Estimate // returned over taken, by moles, dimensionless
	HeatEfficiencyPct Estimate // share of the heating power that arrives, per cent; found if times and power are given
	ScatterABV        float64  // root mean square of the strengths about the fit, % vol
	Correlation       float64  // the largest between two of the figures found, dimensionless
	ConfidencePct     float64
	Residuals         []Residual
	Run               Run // of the learned still, to the end of the log
	Notes             []string

	batch   Batch
	log     RunLog
	sum     float64 // of the squares of the residuals
	rows    int     // residuals
	figures []string
	se      []float64
}

// How sure a reading is taken to be when strengths, temperatures and times are weighed against each other. Own choice; the
// strength's holds the model's own deviation, 0.006 in the mole fraction, too.
const (
	sureABV     = 0.7
	sureTotal   = 0.3
	sureHeadC   = 0.5
	sureMinutes = 0.01 // of the whole time, dimensionless
)

// learnSteps are those of a run while it is fitted.
const learnSteps = 200

// LearnFromRun returns the plates, the reflux and, from times and power, the heating efficiency with which a batch gives what
// a log says it gave. The batch says what was charged and how; its Plates and Reflux are what is sought, unless they are
// known. Where the run ends is taken from the log.
//
// The intervals hold given the model: they do not know that ethanol and water themselves are known to 0.006 in the mole
// fraction, about 1 % vol.
//
// It fails with an *InputError for a log with gaps, mixed units, times that go back or too few rows, naming row and column,
// and for a log that does not tell plates and reflux apart: then one of them must be known, or the run go on to weak spirit.
func LearnFromRun(b Batch, log RunLog, o LearnOptions) (Learned, error) {
	const fn = "still.LearnFromRun"
	if o.ConfidencePct == 0 {
		o.ConfidencePct = 95
	}
	if err := quantity.CheckRange(fn, "confidence", o.ConfidencePct, 50, 99.9, "%", ""); err != nil {
		return Learned{}, err
	}
	if o.KnownPlates && o.KnownReflux && (b.Heat.PowerKW == 0 || len(log.Min) == 0) {
		return Learned{}, inputf(fn, "plates and reflux are known, and without times and the PowerKW of the heater there is nothing to learn")
	}
	if err := alcoholometry.CheckSpirit(fn, b.Pot); err != nil {
		return Learned{}, err
	}
	l, err := newLine(fn, b.P, b.Model, b.Equilibrium, nil)
	if err != nil {
		return Learned{}, err
	}
	if err := log.check(fn, b, l); err != nil {
		return Learned{}, err
	}
	f := newFitting(fn, b, log, o)
	return f.learn()
}

// String gives what was learned in one line.
func (l Learned) String() string {
	s := fmt.Sprintf("plates %v, reflux %v", l.Plates, l.Reflux)
	if l.HeatEfficiencyPct.Found {
		s += fmt.Sprintf(", heating efficiency %v %%", l.HeatEfficiencyPct)
	}
	return s + fmt.Sprintf("; %g %% intervals given the model, scatter %.2f %% vol", l.ConfidencePct, l.ScatterABV)
}

// Rows gives what was learned as a table, each row a label, a figure and a unit.
func (l Learned) Rows() [][]string {
	rows := [][]string{{"ideal plates above the pot", l.Plates.String(), ""}, {"reflux, returned over taken", l.Reflux.String(), ""}}
	if l.HeatEfficiencyPct.Found {
		rows = append(rows, []string{"heating efficiency", l.HeatEfficiencyPct.String(), "%"})
	}
	rows = append(rows, []string{"scatter of the strengths", fmt.Sprintf("%.2f", l.ScatterABV), "% vol"}, []string{"intervals, given the model", fmt.Sprintf("%g", l.ConfidencePct), "%"})
	for _, n := range l.Notes {
		rows = append(rows, []string{"note", n, ""})
	}
	return rows
}

// notes works out the scatter and says what there is to say of the fit.
func (l *Learned) notes() {
	if len(l.log.Running) > 0 {
		sum := 0.0
		signs := make([]float64, 0, len(l.Residuals))
		for _, r := range l.Residuals {
			d := r.LoggedABV - r.FittedABV
			sum += d * d
			signs = append(signs, d)
		}
		l.ScatterABV = math.Sqrt(sum / float64(len(l.Residuals)))
		if trends(signs) && l.ScatterABV > 0.05 {
			l.Notes = append(l.Notes, "the strengths lie on one side of the fit for long stretches: something changed during the run that the model does not know (heat, reflux, a reading)")
		}
	}
	if l.HeatEfficiencyPct.Found && l.HeatEfficiencyPct.Low > 100 {
		l.Notes = append(l.Notes, "more heat arrives than the power given: check PowerKW, the volumes and the clock")
	}
}

// trends reports whether residuals keep their sign for longer than chance would have them, at about 2.5 %.
//
// Source: Wald and Wolfowitz, Ann. Math. Statist. 11 (1940) 147 (from memory): the number of runs of one sign, by its normal
// approximation.
func trends(residuals []float64) bool {
	above, below, runs := 0.0, 0.0, 0.0
	last := 0.0
	for _, r := range residuals {
		sign := math.Copysign(1, r)
		if sign > 0 {
			above++
		} else {
			below++
		}
		if sign != last {
			runs++
		}
		last = sign
	}
	n := above + below
	if above < 4 || below < 4 {
		return n >= 10 // ten and more, nearly all on one side
	}
	mean := 2*above*below/n + 1
	variance := (mean - 1) * (mean - 2) / (n - 1)
	return (runs-mean)/math.Sqrt(variance) < -1.96
}

func joined(names []string) string {
	out := ""
	for i, n := range names {
		switch {
		case i > 0 && i == len(names)-1:
			out += " and "
		case i > 0:
			out += ", "
		}
		out += n
	}
	return out
}
