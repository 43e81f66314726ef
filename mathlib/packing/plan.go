package packing

import (
	"fmt"
	"strings"
)

// Plan is a sampling plan: how many units are drawn from a batch and how many defective ones decide. A single plan has
// one stage, a double plan two.
type Plan struct {
	Name        string
	Stages      []Stage
	Source      string // where the plan is printed, and what of it was taken from memory
	Destructive bool   // the check opens the bottles
}

// Stage is a sample of a plan. The numbers of defectives count all stages so far: with Accept or fewer the batch is
// accepted, with Reject or more it is rejected, between them the next stage is drawn. In the last stage Reject is
// Accept + 1.
type Stage struct {
	Sample int // units drawn in this stage
	Accept int // accepted with at most so many defectives in all stages so far; -1 if it cannot be accepted yet
	Reject int // rejected with at least so many
}

// SampleSize returns the units that the plan draws at most.
func (p Plan) SampleSize() int {
	n := 0
	for _, s := range p.Stages {
		n += s.Sample
	}
	return n
}

// String gives the plan in one line, such as "draw 50: accept with 3 defective or fewer, reject with 4 or more".
func (p Plan) String() string {
	var parts []string
	for i, s := range p.Stages {
		word := "draw"
		if i > 0 {
			word = "else draw another"
		}
		accept := fmt.Sprintf("accept with %d defective or fewer, ", s.Accept)
		if s.Accept < 0 {
			accept = ""
		}
		parts = append(parts, fmt.Sprintf("%s %d: %sreject with %d or more", word, s.Sample, accept, s.Reject))
	}
	return strings.Join(parts, "; ")
}

// Rows gives the plan as a table.
func (p Plan) Rows() [][]string {
	rows := [][]string{{"plan", p.Name, ""}}
	for i, s := range p.Stages {
		stage := fmt.Sprintf("sample %d", i+1)
		rows = append(rows,
			[]string{stage + ": draw", fmt.Sprint(s.Sample), "bottles"},
			[]string{stage + ": accept with at most", fmt.Sprint(s.Accept), "defective in all"},
			[]string{stage + ": reject with at least", fmt.Sprint(s.Reject), "defective in all"})
	}
	return append(rows, []string{"source", p.Source, ""})
}

// check returns an error unless the plan comes to a decision.
func (p Plan) check(fn string) error {
	if len(p.Stages) == 0 {
		return fmt.Errorf("%s: the plan has no stage; make one with SinglePlan, DoublePlan or AQLPlan, or give it a stage", fn)
	}
	drawn, before := 0, 0
	for i, s := range p.Stages {
		last := i == len(p.Stages)-1
		drawn += s.Sample
		switch {
		case s.Sample < 1:
			return fmt.Errorf("%s: stage %d draws %d units; it must draw 1 or more", fn, i+1, s.Sample)
		case drawn > 100000:
			return fmt.Errorf("%s: the plan draws %d units; at most 100000 are reckoned with", fn, drawn)
		case s.Reject < 1:
			return fmt.Errorf("%s: stage %d rejects with %d defective, so every batch; it must reject with 1 or more", fn, i+1, s.Reject)
		case s.Accept < -1 || s.Reject <= s.Accept:
			return fmt.Errorf("%s: stage %d accepts with %d and rejects with %d defective; the second must be the larger", fn, i+1, s.Accept, s.Reject)
		case last && s.Reject != s.Accept+1:
			return fmt.Errorf("%s: the last stage accepts with %d and rejects with %d defective, which leaves a gap; it must reject with %d", fn, s.Accept, s.Reject, s.Accept+1)
		case s.Reject < before:
			return fmt.Errorf("%s: stage %d rejects with %d defective and the one before with %d; the numbers count all stages and cannot go down", fn, i+1, s.Reject, before)
		}
		before = s.Reject
	}
	return nil
}

// The plans of the directive. Source: the single plan and the rule for fewer than 100: Weights and Measures (Packaged
// Goods) Regulations 2006 (UK, SI 2006/659), schedule 2, 3.3 to 3.6; the destructive plan: Directive 76/211/EEC, annex
// II, 2.2.2; the double plan: annex II, 2.2.1, its first sample for 100 to 500 read in a transposition (Germany, 1994),
// the rest from memory.
const (
	singleSource  = "SI 2006/659 (UK), schedule 2, 3.3"
	smallSource   = "SI 2006/659 (UK), schedule 2, 3.6: at most 5 per cent defective"
	doubleSource  = "Directive 76/211/EEC, annex II, 2.2.1; largely from memory"
	destroySource = "Directive 76/211/EEC, annex II, 2.2.2"
)

// SinglePlan returns the single sampling plan without opening bottles for the contents of the bottles in a batch (an
// hour's production, or up to 10 000): defective is what falls short by more than the tolerable negative error. Of fewer
// than 100 bottles all are checked. It fails for a batch below 1.
//
// Source: SI 2006/659 (UK), schedule 2, 3.3 to 3.6, which has the same effect as the double plan of Directive 76/211/EEC.
func SinglePlan(batch int) (Plan, error) {
	const fn = "packing.SinglePlan"
	switch {
	case batch < 1:
		return Plan{}, fmt.Errorf("%s: a batch of %d bottles; give 1 or more", fn, batch)
	case batch < 100:
		accept := batch / 20
		return single("all of a small batch", smallSource, batch, accept), nil
	case batch <= 500:
		return single("single", singleSource, 50, 3), nil
	case batch <= 3200:
		return single("single", singleSource, 80, 5), nil
	}
	return single("single", singleSource, 125, 7), nil
}

func single(name, source string, n, accept int) Plan {
	return Plan{Name: name, Stages: []Stage{{n, accept, accept + 1}}, Source: source}
}

// DoublePlan returns the double sampling plan without opening bottles. It fails for a batch below 100, of which the
// directive has all checked.
//
// Source: Directive 76/211/EEC (as amended by 78/891/EEC), annex II, 2.2.1. The first sample of 30 with 1 and 3 was read
// in a transposition; the other figures are from memory: check the text in force.
func DoublePlan(batch int) (Plan, error) {
	const fn = "packing.DoublePlan"
	double := func(n, c1, d1, c2 int) Plan {
		return Plan{Name: "double", Stages: []Stage{{n, c1, d1}, {n, c2, c2 + 1}}, Source: doubleSource}
	}
	switch {
	case batch < 100:
		return Plan{}, fmt.Errorf("%s: a batch of %d bottles; the double plan is for 100 or more, so check all (SinglePlan)", fn, batch)
	case batch <= 500:
		return double(30, 1, 3, 4), nil
	case batch <= 3200:
		return double(50, 2, 5, 6), nil
	}
	return double(80, 3, 7, 8), nil
}

// DestructivePlan returns the plan for a check that opens the bottles: 20 of any batch of 100 or more. It fails for a
// batch below 100.
//
// Source: Directive 76/211/EEC, annex II, 2.2.2.
func DestructivePlan(batch int) (Plan, error) {
	if batch < 100 {
		return Plan{}, fmt.Errorf("packing.DestructivePlan: a batch of %d bottles; the directive opens bottles of 100 or more only", batch)
	}
	p := single("destructive", destroySource, 20, 1)
	p.Destructive = true
	return p, nil
}
