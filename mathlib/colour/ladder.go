package colour

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat/distuv"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// HueDiffers stands in place of a rung for somebody to whom no rung matched: the hue was another one.
const HueDiffers = -1

// Ladder is how many times stronger one jar's colour is than another's, by eye.
type Ladder struct {
	Step       float64 // how many times each rung is thinner than the one before, dimensionless
	Times      float64 // how many times the stronger jar must be diluted to match, dimensionless
	Low        float64 // its range: a bracket for one person, 95 per cent for more, dimensionless
	High       float64 // its range, dimensionless
	People     int     // how many looks it rests on
	NoMatch    bool    // the hue differs: the lots are browned unlike, and their concentrations cannot be compared
	HueDiffers int     // to how many people no rung matched
	Method     string
}

// DilutionLadder compares two jars of one lot without an instrument. The stronger jar is diluted with its own spirit in
// steps, 1, r, r², …, and seen beside the other on white in the same glass. Each person names the last rung, counted from 0,
// at which the diluted jar is still deeper, or HueDiffers. The answer lies between that rung and the next. step is
// dimensionless, above 1 and at most 2; 1.25 if 0.
//
// One look gives a bracket. More looks give their mean on the logarithm with the range of Student's t; the spread is never
// taken smaller than that of a bracket, ln r/√12. If half of the people or more say that the hue differs, that is the answer.
func DilutionLadder(step float64, lastDeeper ...int) (Ladder, error) {
	const fn = "colour.DilutionLadder"
	step, err := ladderStep(fn, step)
	if err != nil {
		return Ladder{}, err
	}
	if len(lastDeeper) == 0 {
		return Ladder{}, fmt.Errorf("%s: nobody has looked; give the last rung that was still deeper, counted from 0", fn)
	}
	l := Ladder{Step: step, Method: "rungs named"}
	var xs []float64
	for i, rung := range lastDeeper {
		switch {
		case rung == HueDiffers:
			l.HueDiffers++
		case rung < 0 || rung > 200:
			return Ladder{}, fmt.Errorf("%s: look %d names rung %d; rungs count from 0 (swap the jars if the diluted one was paler from the start)", fn, i+1, rung)
		default:
			xs = append(xs, (float64(rung)+0.5)*math.Log(step))
		}
	}
	l.People = len(xs)
	if 2*l.HueDiffers >= len(lastDeeper) {
		l.NoMatch = true
		return l, nil
	}
	bracket := math.Log(step) / math.Sqrt(12)
	mean, ss := 0.0, 0.0
	for _, x := range xs {
		mean += x / float64(len(xs))
	}
	for _, x := range xs {
		ss += (x - mean) * (x - mean)
	}
	half := math.Log(step) / 2
	if n := float64(len(xs)); n > 1 {
		s := math.Max(math.Sqrt(ss/(n-1)), bracket)
		half = distuv.StudentsT{Mu: 0, Sigma: 1, Nu: n - 1}.Quantile(0.975) * s / math.Sqrt(n)
	}
	l.set(mean, half)
	return l, nil
}

func (l *Ladder) set(mean, half float64) {
	l.Times, l.Low, l.High = math.Exp(mean), math.Exp(mean-half), math.Exp(mean+half)
}

func ladderStep(function string, step float64) (float64, error) {
	if step == 0 {
		step = 1.25
	}
	return step, quantity.CheckRange(function, "step of the ladder", step, 1.01, 2, "", "")
}

// Rung is what people said of one rung.
type Rung struct {
	Asked  int // how many looked
	Deeper int // how many saw the diluted jar as still deeper
}

// PanelLadder compares two jars by people who each look at every rung, from 0 on: the method of Spearman and Kärber, which takes
// no shape for granted. On the first rung all must have seen the diluted jar deeper, on the last nobody; shares that rise
// again on the way are pooled. step as in DilutionLadder.
//
// Source: Finney, Statistical Method in Biological Assay (1978), 18.3 (from memory).
func PanelLadder(step float64, rungs ...Rung) (Ladder, error) {
	const fn = "colour.PanelLadder"
	step, err := ladderStep(fn, step)
	if err != nil {
		return Ladder{}, err
	}
	if len(rungs) < 2 {
		return Ladder{}, fmt.Errorf("%s: %d rungs show no change; give them all, from where everybody saw it deeper to where nobody did", fn, len(rungs))
	}
	type pool struct {
		deeper, asked float64
		rungs         int
	}
	var pools []pool
	people := 0
	for i, r := range rungs {
		if r.Asked < 2 || r.Deeper < 0 || r.Deeper > r.Asked {
			return Ladder{}, fmt.Errorf("%s: on rung %d %d of %d saw it deeper; at least two people must look, and no more can see it than looked", fn, i, r.Deeper, r.Asked)
		}
		people = max(people, r.Asked)
		pools = append(pools, pool{float64(r.Deeper), float64(r.Asked), 1})
		for n := len(pools); n > 1 && pools[n-1].deeper*pools[n-2].asked > pools[n-2].deeper*pools[n-1].asked; n = len(pools) {
			a, b := pools[n-2], pools[n-1]
			pools = append(pools[:n-2], pool{a.deeper + b.deeper, a.asked + b.asked, a.rungs + b.rungs})
		}
	}
	var share []float64
	for _, p := range pools {
		for range p.rungs {
			share = append(share, p.deeper/p.asked)
		}
	}
	if share[0] != 1 || share[len(share)-1] != 0 {
		return Ladder{}, fmt.Errorf("%s: the shares go from %.2f to %.2f; add rungs until everybody sees it deeper at the start and nobody at the end", fn, share[0], share[len(share)-1])
	}
	d := math.Log(step)
	mean, variance := 0.0, 0.0
	for i := range share {
		if i > 0 {
			mean += (share[i-1] - share[i]) * (float64(i) - 0.5) * d
		}
		variance += d * d * share[i] * (1 - share[i]) / float64(rungs[i].Asked-1)
	}
	l := Ladder{Step: step, People: people, Method: "Spearman and Kärber"}
	// If everybody agrees, what is left is the bracket itself.
	l.set(mean, z*math.Max(math.Sqrt(variance), d/math.Sqrt(12)/math.Sqrt(float64(people))))
	return l, nil
}

// LossByLadder returns the rate of loss from a ladder of an older jar against a fresh one of the same lot, kept days apart at one
// temperature.
func LossByLadder(l Ladder, days float64, strength alcoholometry.Strength, temp quantity.Temperature) (Loss, error) {
	const fn = "colour.LossByLadder"
	if l.NoMatch {
		return Loss{}, fmt.Errorf("%s: the hue differs: the older jar is browned, and a ladder cannot compare the two; take a jar after fewer days", fn)
	}
	if err := quantity.CheckRange(fn, "times", l.Times, 1e-6, 1e30, "", "a dilution ladder makes it"); err != nil {
		return Loss{}, err
	}
	if err := quantity.CheckRange(fn, "time between the jars", days, 1e-3, 1e6, "days", ""); err != nil {
		return Loss{}, err
	}
	if err := alcoholometry.CheckSet(fn, "the strength of the spirit", strength); err != nil {
		return Loss{}, err
	}
	if l.Low <= 1 {
		return Loss{}, fmt.Errorf("%s: the jars differ by %.2f to %.2f times, which may be no loss at all; wait longer, or ask more people", fn, l.Low, l.High)
	}
	return Loss{PerDay: math.Log(l.Times) / days, LowPerDay: math.Log(l.Low) / days, HighPerDay: math.Log(l.High) / days, Strength: strength, Temp: temp,
		From: fmt.Sprintf("a dilution ladder, %d looks", l.People)}, nil
}

// String gives the comparison with its range in one line.
func (l Ladder) String() string {
	switch {
	case l.NoMatch:
		return "no rung matches: the hue differs (browned); the concentrations cannot be compared"
	case l.People == 1:
		return fmt.Sprintf("between %.2f and %.2f times as strong (one look)", l.Low, l.High)
	}
	return fmt.Sprintf("%.2f times as strong (%.2f to %.2f, %d looks, by eye)", l.Times, l.Low, l.High, l.People)
}

// Rows gives the comparison, each row a label, a figure and a unit.
func (l Ladder) Rows() [][]string {
	if l.NoMatch {
		return [][]string{{"dilution ladder", "no rung matches: the hue differs", ""}}
	}
	return [][]string{
		{"times as strong, by eye", fmt.Sprintf("%.2f", l.Times), ""},
		{"its range", fmt.Sprintf("%.2f to %.2f", l.Low, l.High), ""},
		{"looks", fmt.Sprint(l.People), ""},
	}
}
