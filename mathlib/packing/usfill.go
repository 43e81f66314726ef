package packing

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// USFillTolerancePct returns by how much the contents of a bottle of spirits may differ from the volume on its label
// nominalL (L), either way, per cent of it: 1.5 from 1 L, 2.0 above 375 mL, 3.0 above 100 mL, 4.5 up to 100 mL. It fails
// for a nominal volume not above 0.
//
// Source: 27 CFR 19.356(b) (as of October 2022): 999 to 376 mL, 375 to 101 mL. Between these whole millilitres the
// larger class is taken.
func USFillTolerancePct(nominalL float64) (float64, error) {
	return usTolerancePct("packing.USFillTolerancePct", nominalL)
}

func usTolerancePct(fn string, nominalL float64) (float64, error) {
	if err := above0(fn, "the nominal volume", nominalL, "L"); err != nil {
		return 0, err
	}
	switch ml := 1000 * nominalL * (1 + 1e-12); {
	case ml >= 1000:
		return 1.5, nil
	case ml > 375.0001:
		return 2, nil
	case ml > 100.0001:
		return 3, nil
	}
	return 4.5, nil
}

// USFill is how the bottles of a lot are filled, by the rules of the United States.
type USFill struct {
	NominalL     float64 // the volume on the label, L
	TolerancePct float64 // allowed either way, per cent of it
	Bottles      int     // measured
	Outside      int     // beyond the tolerance; none may be
	Over         int     // with more than the label says
	Under        int     // with less
	MeanPct      float64 // the mean deviation, per cent of the nominal volume
	WorstPct     float64 // the largest deviation either way, with its sign, per cent of the nominal volume
	EvenChance   float64 // the chance of a split at least as uneven if over and under were equally likely, dimensionless
	WithinAll    bool    // no bottle is beyond the tolerance
}

// CheckUSFill compares measured contents (mL) with the label's volume. The rule asks for approximately as many overfills
// as underfills for each lot but gives no figure; EvenChance, exact by the binomial distribution, says how odd the split
// is: below 0.05 the filler is off. It fails for a nominal volume not above 0, for no contents and for contents that are
// negative or no number.
//
// Source: 27 CFR 19.356(b) (as of October 2022).
func CheckUSFill(nominalL float64, contentsML []float64) (USFill, error) {
	const fn = "packing.CheckUSFill"
	pct, err := usTolerancePct(fn, nominalL)
	if err != nil {
		return USFill{}, err
	}
	if len(contentsML) == 0 {
		return USFill{}, fmt.Errorf("%s: there are no contents; give at least one", fn)
	}
	u := USFill{NominalL: nominalL, TolerancePct: pct, Bottles: len(contentsML)}
	for i, x := range contentsML {
		if err := quantity.CheckRange(fn, fmt.Sprintf("the contents of bottle %d", i+1), x, 0, math.Inf(1), "mL", ""); err != nil {
			return USFill{}, err
		}
		off := 100 * (x/(1000*nominalL) - 1)
		u.MeanPct += off / float64(len(contentsML))
		if math.Abs(off) > math.Abs(u.WorstPct) {
			u.WorstPct = off
		}
		switch {
		case off > 1e-9:
			u.Over++
		case off < -1e-9:
			u.Under++
		}
		if math.Abs(off) > pct+1e-9 {
			u.Outside++
		}
	}
	u.WithinAll = u.Outside == 0
	u.EvenChance = evenChance(u.Over, u.Under)
	return u, nil
}

// evenChance returns the chance that two equally likely outcomes split at least as unevenly as a to b, dimensionless.
func evenChance(a, b int) float64 {
	tail := 0.0
	for k, p := range binomial(a+b, 0.5) {
		if k <= min(a, b) || k >= max(a, b) {
			tail += p
		}
	}
	return math.Min(tail, 1)
}
