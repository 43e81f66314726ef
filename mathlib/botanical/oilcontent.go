package botanical

import (
	"fmt"

	"swanneck/mathlib/compound"
)

// OilUnit is a unit in which the oil content of a plant is stated. It reads as the unit.
type OilUnit string

// The units of oil contents. One per cent v/w is 10 mL/kg; by mass it is 10 g/kg, which for most oils is about a tenth
// more oil than 1 % v/w: mind which one a paper means.
const (
	OilMLPerKg OilUnit = "mL/kg"
	OilPctVW   OilUnit = "% v/w" // millilitres in 100 g
	OilPctMass OilUnit = "% m/m" // grams in 100 g
	OilGPerKg  OilUnit = "g/kg"
)

// Basis says what an oil content is counted on.
type Basis string

// What an oil content is counted on.
const (
	Anhydrous Basis = "anhydrous"  // the plant without any water: MoisturePct is needed
	Dried     Basis = "dried"      // the dried drug as it is weighed, with the water it still has
	AsWeighed Basis = "as weighed" // the plant as it was weighed into the charge, fresh or dried
)

// OilContent is how much essential oil a plant holds. Unit and Basis must be stated.
type OilContent struct {
	Amount     Range // in Unit
	Unit       OilUnit
	Basis      Basis
	DensityKgL Range               // of the oil, kg/L, from 0.6 to 1.3; for contents by volume. Unset: 0.82 to 0.98 (estimate)
	Analysed   bool                // measured on the lot at hand
	From       compound.Provenance // of printed figures
}

// mostOilPct is the most oil, per cent by mass, that is taken for a plant's; more is a slip of units. Own choice: cloves,
// the richest, hold about 20.
const mostOilPct = 25

// mostDriedMoisture is the most water, per cent, that a dried drug has; with more the plant is fresh. Own choice:
// pharmacopoeias allow about 12.
const mostDriedMoisture = 20

// GPerKg returns the grams of oil in a kilogram of the plant as weighed, with moisturePct per cent of water in it (0 if
// nobody knows). It fails without unit, basis or amount, with a *quantity.RangeError, for more oil than a plant holds (25 %
// by mass), without the moisture where the basis is Anhydrous, and for a fresh plant where the basis is Dried.
//
// Source: European Pharmacopoeia, general notices (from memory): contents on the anhydrous or on the dried drug.
func (o OilContent) GPerKg(moisturePct float64) (Range, error) {
	return o.gPerKg("botanical.OilContent.GPerKg", "the plant", moisturePct)
}

func (o OilContent) gPerKg(fn, plant string, moisturePct float64) (Range, error) {
	if err := checkMoisture(fn, plant, moisturePct); err != nil {
		return Range{}, err
	}
	if !o.Amount.IsSet() {
		return Range{}, inputf(fn, "the oil content of %s is not given; give an Amount, such as Exactly(20), with its Unit and Basis", plant)
	}
	times := 0.0
	byVolume := false
	switch o.Unit {
	case OilMLPerKg:
		times, byVolume = 1, true
	case OilPctVW:
		times, byVolume = 10, true
	case OilPctMass:
		times = 10
	case OilGPerKg:
		times = 1
	case "":
		return Range{}, inputf(fn, "the oil content of %s, %v, has no unit; give OilMLPerKg, OilPctVW, OilPctMass or OilGPerKg", plant, o.Amount)
	default:
		return Range{}, inputf(fn, "the unit of the oil content of %s is %q; it must be mL/kg, %% v/w, %% m/m or g/kg", plant, o.Unit)
	}
	if err := o.Amount.check(fn, "oil content of "+plant, 0, 1000, string(o.Unit)); err != nil {
		return Range{}, err
	}
	out := o.Amount.scaled(times)
	if byVolume {
		density := o.DensityKgL
		if !density.IsSet() {
			density = figureOf("oil density").Range
		}
		if err := density.check(fn, "density of the oil of "+plant, 0.6, 1.3, "kg/L"); err != nil {
			return Range{}, err
		}
		out = out.times(density)
	}
	switch o.Basis {
	case Anhydrous:
		if moisturePct == 0 {
			return Range{}, inputf(fn, "the oil content of %s is on the anhydrous plant and its moisture is not given; give MoisturePct, such as 10", plant)
		}
		out = out.scaled(1 - moisturePct/100)
	case Dried:
		if moisturePct > mostDriedMoisture {
			return Range{}, inputf(fn, "the oil content of %s is on the dried drug and the plant holds %g %% of water; give the content of the fresh plant (AsWeighed) or on the Anhydrous one", plant, moisturePct)
		}
	case AsWeighed:
	case "":
		return Range{}, inputf(fn, "the oil content of %s, %v %s, has no basis; give Anhydrous, Dried or AsWeighed", plant, o.Amount, o.Unit)
	default:
		return Range{}, inputf(fn, "the basis of the oil content of %s is %q; it must be anhydrous, dried or as weighed", plant, o.Basis)
	}
	if out.High > 10*mostOilPct {
		return Range{}, inputf(fn, "the oil content of %s comes to %.0f g/kg, more than any plant holds (%d g/kg); check the unit", plant, out.High, 10*mostOilPct)
	}
	return out, nil
}

// String gives the content in one line, with its basis and where it comes from.
func (o OilContent) String() string {
	if !o.Amount.IsSet() {
		return "oil content not known"
	}
	s := fmt.Sprintf("%v %s of oil, %s", o.Amount, o.Unit, o.Basis)
	switch {
	case o.Analysed:
		s += ", analysed"
	case o.From.Known():
		s += ", " + o.From.Status.Words()
	default:
		s += ", as stated"
	}
	return s
}

func (o OilContent) byVolume() bool { return o.Unit == OilMLPerKg || o.Unit == OilPctVW }
