package botanical

import (
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// OilLayer is the oil that stood on a spirit after it was diluted and salted, or on the water of an assay.
type OilLayer struct {
	LayerML    float64 // of oil
	OfML       float64 // of the spirit that it came out of, before anything was added
	DensityKgL Range   // of the oil, kg/L; unset: 0.82 to 0.98 (estimate)
}

// SaltedOut returns the oil in a litre of the spirit, g/L, at least: what stays dissolved is not in the layer. It fails for
// a layer below 0 mL, for a sample not above 0 mL or smaller than its layer, and for a density beyond 0.6 to 1.3 kg/L.
func SaltedOut(o OilLayer) (Estimate, error) {
	const fn = "botanical.SaltedOut"
	g, err := layerG(fn, o.LayerML, o.DensityKgL)
	if err != nil {
		return Estimate{}, err
	}
	if !(o.OfML > 0) || math.IsInf(o.OfML, 0) || o.LayerML > o.OfML {
		return Estimate{}, inputf(fn, "the layer of %g mL came out of %g mL of spirit; the spirit must be more", o.LayerML, o.OfML)
	}
	perL := 1000 / o.OfML
	return Estimate{What: "oil in the spirit", Unit: "g/L", Value: g.middle() * perL, Low: g.Low * perL, HasLow: true, Notes: []string{"a lower bound: what stays dissolved is not in the layer"}}, nil
}

func layerG(fn string, ml float64, density Range) (Range, error) {
	if err := quantity.CheckRange(fn, "oil layer", ml, 0, math.Inf(1), "mL", ""); err != nil {
		return Range{}, err
	}
	if !density.IsSet() {
		density = figureOf("oil density").Range
	}
	if err := density.check(fn, "density of the oil", 0.6, 1.3, "kg/L"); err != nil {
		return Range{}, err
	}
	return density.scaled(ml), nil
}

// AssayedOil returns the oil content of a lot of which herbG grams, as weighed into the charge too, gave layerML millilitres
// of oil when distilled with water to the end. plusMinusML is how well the layer is read, mL; it may be 0. It fails for
// amounts that are not above 0, and for more oil than plant.
//
// Source: European Pharmacopoeia 2.8.12, essential oils in herbal drugs (from memory).
func AssayedOil(layerML, plusMinusML, herbG float64) (OilContent, error) {
	const fn = "botanical.AssayedOil"
	for _, c := range []struct {
		what string
		x    float64
		unit string
	}{{"oil layer", layerML, "mL"}, {"reading error", plusMinusML, "mL"}, {"mass of the plant", herbG, "g"}} {
		if err := quantity.CheckRange(fn, c.what, c.x, 0, math.Inf(1), c.unit, ""); err != nil {
			return OilContent{}, err
		}
	}
	if herbG == 0 || layerML == 0 || layerML+plusMinusML > herbG {
		return OilContent{}, inputf(fn, "%g mL of oil from %g g of plant; both must be above 0, and the plant holds no more than itself", layerML, herbG)
	}
	return OilContent{
		Amount: Between(1000*math.Max(layerML-plusMinusML, 0)/herbG, 1000*(layerML+plusMinusML)/herbG),
		Unit:   OilMLPerKg, Basis: AsWeighed, Analysed: true,
	}, nil
}

// DryExtract returns what is dissolved in a liquid of which ofML millilitres (50 is usual) left weighedG grams when dried: the
// Extract of mixing.TrueStrengthWithExtract, which says what strength it hides. It fails for a mass below 0 g, a volume not
// above 0 mL, and for more than 700 g/L.
func DryExtract(weighedG, ofML float64) (quantity.Concentration, error) {
	const fn = "botanical.DryExtract"
	if err := quantity.CheckRange(fn, "dried extract", weighedG, 0, math.Inf(1), "g", ""); err != nil {
		return quantity.Concentration{}, err
	}
	if !(ofML > 0) || math.IsInf(ofML, 0) {
		return quantity.Concentration{}, inputf(fn, "the dried sample was %g mL; it must be above 0 mL", ofML)
	}
	gl := 1000 * weighedG / ofML
	if err := quantity.CheckRange(fn, "dried extract", gl, 0, 700, "g/L", "no liquid dissolves more"); err != nil {
		return quantity.Concentration{}, err
	}
	c, err := quantity.GL(gl)
	return c, as(fn, err)
}

// MoistureFromReadings returns the water in a plant, per cent of its mass as weighed, from the strength of the liquid before
// and after herbG grams of it were steeped. It is the check on MoisturePct: both readings must be true strengths, and what
// the liquid dissolves besides hides strength, which counts as water unless it is taken off first (see DryExtract). It fails if the strength rose, or
// fell by more than the plant weighs.
func MoistureFromReadings(before alcoholometry.Spirit, herbG float64, after alcoholometry.Strength) (float64, error) {
	const fn = "botanical.MoistureFromReadings"
	if err := alcoholometry.CheckSpirit(fn, before); err != nil {
		return 0, err
	}
	if err := alcoholometry.CheckSet(fn, "the strength after steeping", after); err != nil {
		return 0, err
	}
	if !(herbG > 0) || math.IsInf(herbG, 0) {
		return 0, inputf(fn, "the plant weighed %g g; it must be above 0 g", herbG)
	}
	if after.ABW() <= 0 {
		return 0, inputf(fn, "the strength after steeping is 0 %% vol; no plant brings so much water")
	}
	waterKg := before.MassKg() * (before.Strength.ABW()/after.ABW() - 1)
	if waterKg < -1e-9*before.MassKg() {
		return 0, inputf(fn, "the strength rose from %v to %v; a plant only brings water: read again", before.Strength, after)
	}
	pct := 100 * math.Max(waterKg, 0) / (herbG / 1000)
	if pct > 100 {
		return 0, inputf(fn, "the fall from %v to %v takes %.0f g of water and the plant weighed %g g; take off what dissolved solids hide (DryExtract), or read again", before.Strength, after, 1000*waterKg, herbG)
	}
	return pct, nil
}
