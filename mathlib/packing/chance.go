package packing

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// Outcome is how a plan decides on average.
type Outcome struct {
	Accept  float64 // the chance that the batch is accepted, dimensionless, 0 to 1
	Sampled float64 // the units drawn on the average, dimensionless
}

// AcceptChance returns the chance, dimensionless, that a plan accepts a batch from a process of which the share
// defective (dimensionless, 0 to 1) is defective: the operating characteristic by the binomial distribution, exact. It
// fails for a plan that comes to no decision and with a *quantity.RangeError.
//
// Source: ISO 2859-1, MIL-STD-105E (1989), 4.10 and tables X (operating characteristic curves).
func AcceptChance(p Plan, defective float64) (float64, error) {
	o, err := planOutcome("packing.AcceptChance", p, defective)
	return o.Accept, err
}

// PlanOutcome returns the chance of acceptance and the number of units drawn on the average, as AcceptChance does.
func PlanOutcome(p Plan, defective float64) (Outcome, error) {
	return planOutcome("packing.PlanOutcome", p, defective)
}

func planOutcome(fn string, p Plan, defective float64) (Outcome, error) {
	if err := p.check(fn); err != nil {
		return Outcome{}, err
	}
	if err := quantity.CheckRange(fn, "the share defective", defective, 0, 1, "", ""); err != nil {
		return Outcome{}, err
	}
	return decide(p, func(_, _, n int) []float64 { return binomial(n, defective) }), nil
}

// AcceptChanceOfBatch returns the chance, dimensionless, that a plan accepts a batch of so many units of which so many
// are defective: by the hypergeometric distribution, exact, as the sample is not put back. It fails for a plan that comes
// to no decision or draws more than the batch, and for more defectives than units.
//
// Source: Directive 76/211/EEC, annex II, 2 (samples drawn at random from one batch); the distribution is elementary.
func AcceptChanceOfBatch(p Plan, batch, defective int) (float64, error) {
	const fn = "packing.AcceptChanceOfBatch"
	if err := p.check(fn); err != nil {
		return 0, err
	}
	switch {
	case batch < p.SampleSize():
		return 0, fmt.Errorf("%s: the plan draws up to %d units and the batch has %d; give a batch of at least that", fn, p.SampleSize(), batch)
	case defective < 0 || defective > batch:
		return 0, fmt.Errorf("%s: %d defective of %d; give 0 to %d", fn, defective, batch, batch)
	}
	o := decide(p, func(drawn, found, n int) []float64 { return hypergeometric(batch-drawn, defective-found, n) })
	return o.Accept, nil
}

// decide walks through the stages of a plan. draw gives the chances of 0, 1, 2 … defectives among n units, after so many
// were drawn with so many found.
func decide(p Plan, draw func(drawn, found, n int) []float64) Outcome {
	open := map[int]float64{0: 1} // defectives found so far, and how likely the plan stands there
	out := Outcome{}
	drawn, top := 0, 0
	for _, s := range p.Stages {
		next := map[int]float64{}
		nextTop := 0
		for found := 0; found <= top; found++ { // in order: the same sum every time
			chance := open[found]
			if chance == 0 {
				continue
			}
			out.Sampled += chance * float64(s.Sample)
			for k, q := range draw(drawn, found, s.Sample) {
				switch total := found + k; {
				case total <= s.Accept:
					out.Accept += chance * q
				case total < s.Reject:
					next[total] += chance * q
					nextTop = max(nextTop, total)
				}
			}
		}
		drawn += s.Sample
		open, top = next, nextTop
	}
	out.Accept = math.Min(out.Accept, 1) // the sum of shares may round to above 1
	return out
}

// binomial returns the chances of 0 to n defectives among n, each defective with the chance p.
func binomial(n int, p float64) []float64 {
	out := make([]float64, n+1)
	switch p {
	case 0:
		out[0] = 1
		return out
	case 1:
		out[n] = 1
		return out
	}
	for k := range out {
		out[k] = math.Exp(logChoose(n, k) + float64(k)*math.Log(p) + float64(n-k)*math.Log1p(-p))
	}
	return out
}

// hypergeometric returns the chances of 0 to n defectives among n drawn from a batch with so many defective.
func hypergeometric(batch, defective, n int) []float64 {
	out := make([]float64, n+1)
	all := logChoose(batch, n)
	for k := range out {
		if k > defective || n-k > batch-defective {
			continue
		}
		out[k] = math.Exp(logChoose(defective, k) + logChoose(batch-defective, n-k) - all)
	}
	return out
}

// logChoose returns the logarithm of the number of ways to choose k of n.
func logChoose(n, k int) float64 {
	if k == 0 || k == n {
		return 0
	}
	a, _ := math.Lgamma(float64(n + 1))
	b, _ := math.Lgamma(float64(k + 1))
	c, _ := math.Lgamma(float64(n - k + 1))
	return a - b - c
}

// QualityAt returns the share defective (dimensionless, 0 to 1) of a process whose batches a plan accepts with the chance
// given (dimensionless, above 0 and below 1): 0.95 for the packer's risk of 5 per cent, 0.1 for what a plan still lets
// through once in ten. It fails for a plan that comes to no decision or that never rejects, and with a
// *quantity.RangeError.
//
// Source: as for AcceptChance, solved to 1e-12.
func QualityAt(p Plan, chance float64) (float64, error) {
	const fn = "packing.QualityAt"
	if err := p.check(fn); err != nil {
		return 0, err
	}
	if err := quantity.CheckRange(fn, "the chance", chance, 0, 1, "", ""); err != nil {
		return 0, err
	}
	if chance == 0 || chance == 1 {
		return 0, fmt.Errorf("%s: a chance of %s; give one between 0 and 1", fn, plain(chance))
	}
	at := func(q float64) float64 {
		return decide(p, func(_, _, n int) []float64 { return binomial(n, q) }).Accept
	}
	if at(1) > chance || at(0) < chance {
		return 0, fmt.Errorf("%s: the plan (%v) accepts or rejects everything; give one that decides", fn, p)
	}
	low, high := 0.0, 1.0
	for range 60 {
		if mid := (low + high) / 2; at(mid) > chance {
			low = mid
		} else {
			high = mid
		}
	}
	return (low + high) / 2, nil
}
