package duty

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// USVolume is spirit gauged by volume in the United States.
type USVolume struct {
	ObservedGal float64              // gallons as measured at Temp
	Temp        quantity.Temperature // of the spirit; 20 °C if unset
	Proof       float64              // true proof; it is rounded to a tenth
	Factor      float64              // table 7, what brings the volume to 60 °F, dimensionless; reckoned to three decimals if 0
}

// USGaugeByVolume returns the wine gallons at 60 °F, to two decimals, and from these the proof gallons, rounded to a
// tenth. It fails for a volume not above 0, a proof outside 0.1 to 200 and a temperature outside -20 to 40 °C.
//
// Source: 27 CFR 30.51 and its example; 30.67.
func USGaugeByVolume(v USVolume) (USGauge, error) {
	const fn = "duty.USGaugeByVolume"
	if err := above0(fn, "the volume", v.ObservedGal, "gal"); err != nil {
		return USGauge{}, err
	}
	proof, factor, from, err := v.factor(fn)
	if err != nil {
		return USGauge{}, err
	}
	var g USGauge
	g.WineGal = roundTo(v.ObservedGal*factor, 2)
	g.step("%s gal × %s (table 7, %s) = %s wine gallons at 60 °F", plain(v.ObservedGal), plain(factor), from, plain(g.WineGal))
	g.ProofGal = roundTo(g.WineGal*proof/100, 1)
	g.step("%s wine gallons × %s proof / 100 = %s proof gallons", plain(g.WineGal), plain(proof), plain(g.ProofGal))
	return g, nil
}

// factor returns the rounded proof and the factor of table 7.
func (v USVolume) factor(fn string) (proof, factor float64, from string, err error) {
	proof, s, err := proofStrength(fn, "the proof", v.Proof)
	if err != nil {
		return 0, 0, "", err
	}
	factor, from, err = factorFrom(fn, "the factor", v.Factor, 3, func() (float64, error) { return alcoholometry.USVolumeFactor(s, v.Temp) })
	return proof, factor, from, err
}

// USGallonsToDraw returns the gallons to measure out at v.Temp so that so many gallons at 60 °F (wineGal) are drawn,
// rounded to a tenth; v.ObservedGal is not used. It fails as USGaugeByVolume does.
//
// Source: 27 CFR 30.67 and its example (55.1 gallons of 190 proof at 76 °F are 55.6).
func USGallonsToDraw(wineGal float64, v USVolume) (float64, error) {
	const fn = "duty.USGallonsToDraw"
	if err := above0(fn, "the volume", wineGal, "gal"); err != nil {
		return 0, err
	}
	_, factor, _, err := v.factor(fn)
	if err != nil {
		return 0, err
	}
	return roundTo(wineGal/factor, 1), nil
}

// literGal is the factor that the authority of the United States prescribes, gallons for a litre. Source: TTB, conversion
// tables (1 liter = 0.264172 U.S. gallon).
const literGal = 0.264172

// USGaugeCases returns the wine and proof gallons in so many cases of bottled spirits of so many litres each: litres by
// 0.264172 are gallons, and the proof gallons are rounded to a tenth; the temperature plays no part. It fails for no
// cases, litres not above 0 and a proof outside 0.1 to 200.
//
// Source: TTB, conversion tables, for the factor and the way; that the sum is rounded to a tenth (27 CFR 30.52) is from
// memory.
func USGaugeCases(cases int, litresPerCaseL, proof float64) (USGauge, error) {
	const fn = "duty.USGaugeCases"
	if cases < 1 {
		return USGauge{}, fmt.Errorf("%s: %d cases; give 1 or more", fn, cases)
	}
	if err := above0(fn, "a case", litresPerCaseL, "L"); err != nil {
		return USGauge{}, err
	}
	p, _, err := proofStrength(fn, "the proof", proof)
	if err != nil {
		return USGauge{}, err
	}
	var g USGauge
	g.WineGal = roundTo(float64(cases)*litresPerCaseL*literGal, 6)
	g.step("%d cases × %s L × %s = %s wine gallons", cases, plain(litresPerCaseL), plain(literGal), plain(g.WineGal))
	g.ProofGal = roundTo(g.WineGal*p/100, 1)
	g.step("%s wine gallons × %s proof / 100 = %s proof gallons", plain(g.WineGal), plain(p), plain(g.ProofGal))
	return g, nil
}
