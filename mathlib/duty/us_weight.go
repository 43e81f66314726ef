package duty

import (
	"fmt"
	"strconv"
	"strings"

	"swanneck/mathlib/alcoholometry"
)

// USWeight is spirit gauged by weight in the United States.
type USWeight struct {
	WeightLb      float64 // net, pounds
	Proof         float64 // true proof; it is rounded to a tenth
	ApparentProof float64 // by the hydrometer, of spirit with dissolved solids, proof; 0 if there are none
	WineGalPerLb  float64 // table 4, gallons per pound at the apparent proof; reckoned if 0
	ProofGalPerLb float64 // table 4, proof gallons per pound; reckoned if 0; not used with an apparent proof
}

// USGaugeByWeight returns the wine and proof gallons of spirit gauged by weight, each rounded to a tenth, five hundredths
// up. Without solids both come of table 4. With solids the wine gallons come of table 4 at the apparent proof, and are
// multiplied by the true proof. It fails for a weight not above 0 and for a proof outside 0.1 to 200.
//
// Source: 27 CFR 30.41, 30.64 and its examples.
func USGaugeByWeight(w USWeight) (USGauge, error) {
	const fn = "duty.USGaugeByWeight"
	if err := above0(fn, "the weight", w.WeightLb, "lb"); err != nil {
		return USGauge{}, err
	}
	proof, s, err := proofStrength(fn, "the proof", w.Proof)
	if err != nil {
		return USGauge{}, err
	}
	solids := w.ApparentProof != 0
	reading := s
	if solids {
		if _, reading, err = proofStrength(fn, "the apparent proof", w.ApparentProof); err != nil {
			return USGauge{}, err
		}
	}
	wine, wineFrom, err := factorFrom(fn, "the wine gallons per pound", w.WineGalPerLb, 5, func() (float64, error) { return alcoholometry.USWineGallonsPerPound(reading) })
	if err != nil {
		return USGauge{}, err
	}
	var g USGauge
	g.WineGal = roundTo(w.WeightLb*wine, 1)
	g.step("%s lb × %.5f (table 4, %s) = %s wine gallons", plain(w.WeightLb), wine, wineFrom, plain(g.WineGal))
	if solids {
		g.ProofGal = roundTo(g.WineGal*proof/100, 1)
		g.step("%s wine gallons × %s proof / 100 = %s proof gallons", plain(g.WineGal), plain(proof), plain(g.ProofGal))
		return g, nil
	}
	pg, from, err := factorFrom(fn, "the proof gallons per pound", w.ProofGalPerLb, 5, func() (float64, error) { return alcoholometry.USProofGallonsPerPound(s) })
	if err != nil {
		return USGauge{}, err
	}
	g.ProofGal = roundTo(w.WeightLb*pg, 1)
	g.step("%s lb × %.5f (table 4, %s) = %s proof gallons", plain(w.WeightLb), pg, from, plain(g.ProofGal))
	return g, nil
}

// USGaugeByTable3 returns the proof gallons of spirit gauged by weight in the manner of table 3: the weight is taken
// apart into its figures (60 378 lb into 60 000, 300, 70 and 8), each part gives proof gallons rounded to a tenth, and
// these add up; so it may differ by tenths from USGaugeByWeight. Wine gallons are not in that table: WineGal is 0. It
// fails as USGaugeByWeight does, and for a weight with more than two decimals.
//
// Source: 27 CFR 30.63 and its examples.
func USGaugeByTable3(w USWeight) (USGauge, error) {
	const fn = "duty.USGaugeByTable3"
	if err := above0(fn, "the weight", w.WeightLb, "lb"); err != nil {
		return USGauge{}, err
	}
	_, s, err := proofStrength(fn, "the proof", w.Proof)
	if err != nil {
		return USGauge{}, err
	}
	pg, _, err := factorFrom(fn, "the proof gallons per pound", w.ProofGalPerLb, 5, func() (float64, error) { return alcoholometry.USProofGallonsPerPound(s) })
	if err != nil {
		return USGauge{}, err
	}
	digits := plain(w.WeightLb)
	whole, decimals, _ := strings.Cut(digits, ".")
	if len(decimals) > 2 || len(whole) > 9 {
		return USGauge{}, fmt.Errorf("%s: the weight is %s lb; give up to nine figures and two decimals, as the regulation records it", fn, digits)
	}
	var g USGauge
	for i, r := range whole + decimals {
		part, err := strconv.ParseFloat(string(r)+"e"+strconv.Itoa(len(whole)-1-i), 64)
		if err != nil {
			return USGauge{}, as(fn, err)
		}
		if part == 0 {
			continue
		}
		x := roundTo(part*pg, 1)
		g.ProofGal = roundTo(g.ProofGal+x, 1)
		g.step("%s lb: %s proof gallons", plain(part), plain(x))
	}
	return g, nil
}
