package packing

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// MeanFactor returns the factor k of the test of the mean, dimensionless: a batch is refused if the mean of n contents is
// below the nominal volume by more than k times their standard deviation. k is Student's t at 0.995 with n - 1 degrees of
// freedom over the root of n. It fails for n below 2.
//
// Source: Directive 76/211/EEC, annex II, 2.3.1. It prints 0.503 for 30, 0.379 for 50 and 0.640 for 20.
func MeanFactor(n int) (float64, error) {
	if n < 2 {
		return 0, fmt.Errorf("packing.MeanFactor: %d contents; give 2 or more", n)
	}
	return studentQuantile(0.995, float64(n-1)) / math.Sqrt(float64(n)), nil
}

// Check is the reference test of a batch of bottles.
type Check struct {
	NominalL   float64   // the nominal volume, L at 20 °C
	Batch      int       // bottles in the batch: an hour's production, or up to 10 000
	ContentsML []float64 // the contents of the bottles drawn, mL at 20 °C, in the order in which they were drawn
	Plan       Plan      // for the contents; SinglePlan(Batch) if it has no stages
}

// Verdict is what the reference test says of a batch.
type Verdict struct {
	Check       Check
	TolerableML float64 // the tolerable negative error, mL
	Defective   int     // bottles short by more than that, among those that the plan looked at
	Looked      int     // bottles that the plan looked at
	ContentsOK  bool    // the plan accepts
	Twice       int     // bottles short by more than twice the tolerable error, among all drawn: not for sale
	MeanOf      int     // bottles of which the mean was taken
	MeanML      float64 // their mean, mL
	SpreadML    float64 // their standard deviation, mL
	FactorK     float64 // k, dimensionless; 0 if all bottles of the batch were measured
	LeastMeanML float64 // the nominal volume less k times the standard deviation, mL
	MeanOK      bool    // the mean is at least that
	Passed      bool    // both checks are passed and no bottle is short by more than twice the tolerable error
}

// meanSample returns how many of the contents the mean is taken of, and the factor as the directive prints it.
func meanSample(c Check) (n int, k float64) {
	switch {
	case c.Plan.Destructive:
		return 20, 0.640
	case c.Batch < 100:
		return c.Batch, 0 // all are measured: the mean is not an estimate
	case c.Batch <= 500:
		return 30, 0.503
	}
	return 50, 0.379
}

// CheckBatch runs the reference test on the contents of bottles drawn at random: the count of bottles that fall short by
// more than the tolerable negative error against the plan, and the mean of the first 30 (batches of 100 to 500), 50
// (larger) or 20 (a destructive plan) against the nominal volume less k standard deviations. Of fewer than 100 bottles
// all are measured, and their mean must be at least the nominal volume. It needs as many contents as the plan and the
// mean ask for, and fails if there are fewer, for contents that are negative or no number, for a nominal volume outside 5
// mL to 10 L, and for a plan that comes to no decision.
//
// Source: Directive 76/211/EEC, annex I, 1 and annex II, 2; k as printed there, also in SI 2006/659 (UK), schedule 2, 4.
func CheckBatch(c Check) (Verdict, error) {
	const fn = "packing.CheckBatch"
	tne, err := tolerableML(fn, c.NominalL)
	if err != nil {
		return Verdict{}, err
	}
	if c.Batch < 1 {
		return Verdict{}, fmt.Errorf("%s: a batch of %d bottles; give 1 or more", fn, c.Batch)
	}
	if len(c.Plan.Stages) == 0 {
		if c.Plan, err = SinglePlan(c.Batch); err != nil {
			return Verdict{}, as(fn, err)
		}
	}
	if err := c.Plan.check(fn); err != nil {
		return Verdict{}, err
	}
	for i, x := range c.ContentsML {
		if err := quantity.CheckRange(fn, fmt.Sprintf("the contents of bottle %d", i+1), x, 0, math.Inf(1), "mL", ""); err != nil {
			return Verdict{}, err
		}
	}
	if len(c.ContentsML) > c.Batch {
		return Verdict{}, fmt.Errorf("%s: %d contents of a batch of %d; give no more than the batch has", fn, len(c.ContentsML), c.Batch)
	}
	v := Verdict{Check: c, TolerableML: tne}
	v.MeanOf, v.FactorK = meanSample(c)
	if len(c.ContentsML) < v.MeanOf {
		return Verdict{}, fmt.Errorf("%s: %d contents; the mean of a batch of %d is taken of %d", fn, len(c.ContentsML), c.Batch, v.MeanOf)
	}
	if err := v.contents(fn); err != nil {
		return Verdict{}, err
	}
	v.mean()
	v.Passed = v.ContentsOK && v.MeanOK && v.Twice == 0
	return v, nil
}

// contents counts what falls short and lets the plan decide.
func (v *Verdict) contents(fn string) error {
	nominalML, contents := 1000*v.Check.NominalL, v.Check.ContentsML
	short := func(x, byML float64) bool { return x < nominalML-byML-1e-9 } // 685.0 of 700 mL is not short by more than 15
	for _, x := range contents {
		if short(x, 2*v.TolerableML) {
			v.Twice++
		}
	}
	for i, s := range v.Check.Plan.Stages {
		if len(contents) < v.Looked+s.Sample {
			return fmt.Errorf("%s: %d contents; sample %d of the plan needs %d in all", fn, len(contents), i+1, v.Looked+s.Sample)
		}
		for _, x := range contents[v.Looked : v.Looked+s.Sample] {
			if short(x, v.TolerableML) {
				v.Defective++
			}
		}
		v.Looked += s.Sample
		if v.Defective <= s.Accept || v.Defective >= s.Reject {
			v.ContentsOK = v.Defective <= s.Accept
			return nil
		}
	}
	return nil
}

func (v *Verdict) mean() {
	of := v.Check.ContentsML[:v.MeanOf]
	for _, x := range of {
		v.MeanML += x / float64(len(of))
	}
	if len(of) > 1 {
		sum := 0.0
		for _, x := range of {
			sum += (x - v.MeanML) * (x - v.MeanML)
		}
		v.SpreadML = math.Sqrt(sum / float64(len(of)-1))
	}
	v.LeastMeanML = 1000*v.Check.NominalL - v.FactorK*v.SpreadML
	v.MeanOK = v.MeanML >= v.LeastMeanML-1e-9
}
