package duty

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
)

// USReduction is spirit to be brought down with water by table 6.
type USReduction struct {
	FromProof float64 // of the spirit; rounded to a tenth
	ToProof   float64 // wanted, lower, proof; rounded to a tenth
	FromWater float64 // table 6, parts of water at FromProof, gallons in 100; reckoned to two decimals if 0
	ToWater   float64 // table 6, parts of water at ToProof, gallons in 100; reckoned to two decimals if 0
}

// USWater is the water for a reduction.
type USWater struct {
	CutGal   float64  // as the regulation reckons, cut off at every step, gallons for 100 gallons at 60 °F
	UncutGal float64  // from the same parts, not cut off, gallons for 100 gallons at 60 °F
	Steps    []string // the arithmetic of the regulation, line by line
}

// USReduceByTable6 returns the gallons of water to add to 100 gallons of spirit at 60 °F: the alcohol of the given
// strength over that of the wanted one, times the water of the wanted one, less the water of the given one. The section
// states no rounding, but both of its examples cut the quotient and the product off after two decimals (95.5/94 = 1.01,
// and 12.42 where rounding would give 12.43); CutGal does so too. UncutGal is what physics has to agree with. It fails
// for a wanted proof that is not below the given one, and for a proof outside 0.1 to 200.
//
// Source: 27 CFR 30.66 and its examples. That cutting off is a rule is inferred from these two.
func USReduceByTable6(r USReduction) (USWater, error) {
	const fn = "duty.USReduceByTable6"
	from, strong, err := proofStrength(fn, "the given proof", r.FromProof)
	if err != nil {
		return USWater{}, err
	}
	to, weak, err := proofStrength(fn, "the wanted proof", r.ToProof)
	if err != nil {
		return USWater{}, err
	}
	if to >= from {
		return USWater{}, fmt.Errorf("%s: cannot bring %s proof to %s proof with water; give a lower one", fn, plain(from), plain(to))
	}
	has, _, err := factorFrom(fn, "the water of the given proof", r.FromWater, 2, func() (float64, error) { return alcoholometry.USWaterParts(strong) })
	if err != nil {
		return USWater{}, err
	}
	wants, _, err := factorFrom(fn, "the water of the wanted proof", r.ToWater, 2, func() (float64, error) { return alcoholometry.USWaterParts(weak) })
	if err != nil {
		return USWater{}, err
	}
	ratio := (from / 2) / (to / 2)
	product := cutTo(wants*cutTo(ratio, 2), 2)
	w := USWater{CutGal: roundTo(product-has, 2), UncutGal: wants*ratio - has}
	w.Steps = []string{
		fmt.Sprintf("%s / %s = %.2f", plain(from/2), plain(to/2), cutTo(ratio, 2)),
		fmt.Sprintf("%.2f × %.2f = %.2f", wants, cutTo(ratio, 2), product),
		fmt.Sprintf("%.2f - %.2f = %.2f gallons of water for 100 gallons", product, has, w.CutGal),
	}
	return w, nil
}

// String gives the water in one line.
func (w USWater) String() string {
	return fmt.Sprintf("%.2f gal of water for 100 gal by the regulation's arithmetic, %.3f gal without cutting off", w.CutGal, w.UncutGal)
}

// Rows gives the water and the arithmetic as a table.
func (w USWater) Rows() [][]string {
	rows := [][]string{
		{"water for 100 gallons, by the regulation's arithmetic", fmt.Sprintf("%.2f", w.CutGal), "gal"},
		{"the same without cutting off", fmt.Sprintf("%.3f", w.UncutGal), "gal"},
	}
	for _, s := range w.Steps {
		rows = append(rows, []string{s, "", ""})
	}
	return rows
}

// USReductionByWeight is spirit to be brought down with water by table 4.
type USReductionByWeight struct {
	WeightLb     float64 // of the spirit, net, pounds
	FromProof    float64 // of the spirit; rounded to a tenth
	ToProof      float64 // wanted, lower, proof; rounded to a tenth
	FromGalPerLb float64 // table 4, proof gallons per pound at FromProof; reckoned to five decimals if 0
	ToGalPerLb   float64 // table 4, proof gallons per pound at ToProof; reckoned to five decimals if 0
}

// USReduceByTable4 returns the pounds of water that bring a weight of spirit to a lower proof: its proof gallons over the
// proof gallons in a pound of the wanted proof are the weight after, each to two decimals. It fails as USReduceByTable6
// does, and for a weight not above 0.
//
// Source: 27 CFR 30.64 and its example.
func USReduceByTable4(r USReductionByWeight) (float64, error) {
	const fn = "duty.USReduceByTable4"
	if err := above0(fn, "the weight", r.WeightLb, "lb"); err != nil {
		return 0, err
	}
	from, strong, err := proofStrength(fn, "the given proof", r.FromProof)
	if err != nil {
		return 0, err
	}
	to, weak, err := proofStrength(fn, "the wanted proof", r.ToProof)
	if err != nil {
		return 0, err
	}
	if to >= from {
		return 0, fmt.Errorf("%s: cannot bring %s proof to %s proof with water; give a lower one", fn, plain(from), plain(to))
	}
	has, _, err := factorFrom(fn, "the proof gallons per pound", r.FromGalPerLb, 5, func() (float64, error) { return alcoholometry.USProofGallonsPerPound(strong) })
	if err != nil {
		return 0, err
	}
	gets, _, err := factorFrom(fn, "the proof gallons per pound", r.ToGalPerLb, 5, func() (float64, error) { return alcoholometry.USProofGallonsPerPound(weak) })
	if err != nil {
		return 0, err
	}
	return roundTo(roundTo(roundTo(r.WeightLb*has, 2)/gets, 2)-r.WeightLb, 2), nil
}

// USContainer is the weight to which a small container is filled.
type USContainer struct {
	WeightLb float64 // the weight, pounds to two decimals
	Lb       int     // the same in whole pounds
	Ounces   int     // and ounces
}

// String gives the weight in one line.
func (c USContainer) String() string {
	return fmt.Sprintf("%d lb %d oz (%.2f lb)", c.Lb, c.Ounces, c.WeightLb)
}

// USContainerFor returns the weight to which a container of 10 gallons or less is filled so that it holds so many gallons
// at 60 °F (gallons) of a proof: gallons over gallons per pound (galPerLb, table 4; reckoned if 0), to two decimals, and
// a fraction of an ounce counts as a whole one. It fails for gallons not above 0 or more than 10 and for a proof outside
// 0.1 to 200.
//
// Source: 27 CFR 30.44(c) and the table of 30.44(b), all of whose weights it gives. The hundredths of a pound are rounded
// with a half going up, as 13.63 for 13 lb 10 oz there; the same table has 66.12 for 66 lb 2 oz, which is not.
func USContainerFor(gallons, proof, galPerLb float64) (USContainer, error) {
	const fn = "duty.USContainerFor"
	if err := above0(fn, "the volume", gallons, "gal"); err != nil {
		return USContainer{}, err
	}
	if gallons > 10 {
		return USContainer{}, fmt.Errorf("%s: the volume is %s gal; the rule is for 10 gal or less", fn, plain(gallons))
	}
	_, s, err := proofStrength(fn, "the proof", proof)
	if err != nil {
		return USContainer{}, err
	}
	per, _, err := factorFrom(fn, "the gallons per pound", galPerLb, 5, func() (float64, error) { return alcoholometry.USWineGallonsPerPound(s) })
	if err != nil {
		return USContainer{}, err
	}
	lb := roundTo(gallons/per, 2)
	whole := math.Floor(lb + 1e-9)
	ounces := math.Ceil((lb-whole)*16 - 1e-9)
	if ounces == 16 {
		whole, ounces = whole+1, 0
	}
	return USContainer{WeightLb: roundTo(whole+ounces/16, 2), Lb: int(whole), Ounces: int(ounces)}, nil
}
