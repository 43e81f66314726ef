package packing

import (
	"math"

	"swanneck/mathlib/quantity"
)

// tolerableStep is a row of the directive's table: up to a nominal quantity, the tolerable negative error is a share of
// it or an amount.
type tolerableStep struct {
	uptoML float64 // nominal quantity, mL
	pct    float64 // per cent of it, or
	amount float64 // mL
}

// tolerable is the table of the directive. Source: Directive 76/211/EEC, annex I, 2.4, as in force in 2020 (read in
// its transpositions BGBl. I 2020, 2504, § 9(3), and the Austrian FPVO 1993, § 9(1)).
var tolerable = []tolerableStep{
	{50, 9, 0}, {100, 0, 4.5}, {200, 4.5, 0}, {300, 0, 9}, {500, 3, 0}, {1000, 0, 15}, {10000, 1.5, 0},
}

// TolerableErrorML returns the tolerable negative error of a prepackage with the nominal volume nominalL (L), in
// millilitres, for 5 mL to 10 L. A bottle that holds less than its nominal volume by more than that is defective; one
// that holds less by more than twice that may not carry the mark of conformity and may not be sold. It fails with a
// *quantity.RangeError.
//
// Source: Directive 76/211/EEC, annex I, 1.2, 1.3 and 2.4. What is a per cent there is rounded up to 0.1 mL, as the
// directive says: 26.3 mL for 1750 mL.
func TolerableErrorML(nominalL float64) (float64, error) {
	return tolerableML("packing.TolerableErrorML", nominalL)
}

func tolerableML(fn string, nominalL float64) (float64, error) {
	if err := quantity.CheckRange(fn, "the nominal volume", nominalL, 0.005, 10, "L", "Directive 76/211/EEC"); err != nil {
		return 0, err
	}
	ml := nominalL * 1000
	for _, s := range tolerable {
		if ml <= s.uptoML*(1+1e-12) {
			if s.pct == 0 {
				return s.amount, nil
			}
			return math.Ceil(ml*s.pct/100*10-1e-9) / 10, nil
		}
	}
	last := tolerable[len(tolerable)-1]
	return last.uptoML * last.pct / 100, nil
}

// FillTarget is the average at which a filler must be set.
type FillTarget struct {
	NominalL    float64 // the nominal volume, L
	SpreadML    float64 // the standard deviation of the filler, mL
	TolerableML float64 // the tolerable negative error, mL
	TargetML    float64 // the least average, mL at 20 °C: the largest of the three below
	ByMeanML    float64 // for the average not to be below the nominal volume, mL
	ByErrorML   float64 // for 1 bottle in 40 beyond the tolerable error, mL
	ByTwiceML   float64 // for 1 bottle in 10 000 beyond twice the tolerable error, mL
}

// FillTargetFor returns the least average fill, for contents that scatter normally with the standard deviation spreadML
// (mL, above 0), that keeps the three rules for packers: the average is not below the nominal volume; at most 1 bottle
// in 40 falls short by more than the tolerable negative error; at most 1 in 10 000 by more than twice that. How well the
// average itself is known comes on top. It fails as TolerableErrorML does, and for a spread not above 0.
//
// Source: Directive 76/211/EEC, annex I, 1. The figures of 1 in 40 and 1 in 10 000 are those of the guidance to packers
// in the United Kingdom, from memory; the German transposition (BGBl. I 2020, 2504, § 9(3)) allows 1 in 50.
func FillTargetFor(nominalL, spreadML float64) (FillTarget, error) {
	const fn = "packing.FillTargetFor"
	tne, err := tolerableML(fn, nominalL)
	if err != nil {
		return FillTarget{}, err
	}
	if err := above0(fn, "the spread", spreadML, "mL"); err != nil {
		return FillTarget{}, err
	}
	f := FillTarget{NominalL: nominalL, SpreadML: spreadML, TolerableML: tne, ByMeanML: 1000 * nominalL}
	f.ByErrorML = 1000*nominalL - tne + spreadML*normalQuantile(1-1.0/40)
	f.ByTwiceML = 1000*nominalL - 2*tne + spreadML*normalQuantile(1-1.0/10000)
	f.TargetML = max(f.ByMeanML, f.ByErrorML, f.ByTwiceML)
	return f, nil
}
