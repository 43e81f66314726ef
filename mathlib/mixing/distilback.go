package mixing

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// DistilBack is a measured sample that was distilled to leave behind what is dissolved in it; the distillate was made up
// with water and measured.
type DistilBack struct {
	Distillate alcoholometry.Strength // the true strength of the distillate as made up
	SampleML   float64                // distilled, mL at SampleTemp
	SampleTemp quantity.Temperature   // 20 °C if unset
	MadeUpML   float64                // what the distillate was made up to, mL; 0 for the sample's volume at the sample's temperature
	MadeUpTemp quantity.Temperature   // for MadeUpML above 0; 20 °C if unset
	Apparent   alcoholometry.Strength // what the sample itself read, corrected for temperature; unset if it was not read
	ReadAt     quantity.Temperature   // the temperature of that reading; 20 °C if unset
}

// TrueStrengthByDistilling returns the true strength of a sample from that of its distillate: the alcohol is the same, and
// only the volumes count. If the sample itself was read as well, it gives what is hidden and, from the density of both, the
// dry extract (an estimate, for matter of 0.62 mL/g). The sample is taken to expand like its distillate; what is lost in
// distilling is missing in the answer. It fails with an *alcoholometry.UnsetError, with a *quantity.RangeError for volumes
// that are not above 0, and for a distillate weaker than the sample reads, which means lost alcohol.
//
// Source: 27 CFR 30.31 and 30.32(c); OIV-MA-AS312-01 (volume to volume). The extract after P. Tabarié (1830), as in
// OIV-MA-AS2-03B, with the density of ethanol and water by OIML R 22 in place of adding densities.
func TrueStrengthByDistilling(d DistilBack) (Obscuration, error) {
	const fn = "mixing.TrueStrengthByDistilling"
	if err := alcoholometry.CheckSet(fn, "the strength of the distillate", d.Distillate); err != nil {
		return Obscuration{}, err
	}
	sample, err := millilitresAt20(fn, "the sample", d.SampleML, d.Distillate, d.SampleTemp)
	if err != nil {
		return Obscuration{}, err
	}
	madeUp := sample
	if d.MadeUpML != 0 {
		if madeUp, err = millilitresAt20(fn, "what the distillate was made up to", d.MadeUpML, d.Distillate, d.MadeUpTemp); err != nil {
			return Obscuration{}, err
		}
	}
	whole := d.Distillate
	if madeUp != sample {
		if whole, err = alcoholometry.ABV(d.Distillate.ABV() * madeUp / sample); err != nil {
			return Obscuration{}, as(fn, err)
		}
	}
	if !d.Apparent.IsSet() {
		return Obscuration{True: whole, Method: "distilled"}, nil // what it hides is not known
	}
	gL, err := extractFrom(fn, d.Apparent, whole, d.ReadAt)
	if err != nil {
		return Obscuration{}, err
	}
	o := hidden(d.Apparent, whole, gL, "distilled; extract from the two densities (estimate)", false)
	o.Base, err = alcoholometry.ABV(math.Min(whole.ABV()/(1-gL/1000*sugarLKg), 100))
	if err != nil {
		return Obscuration{}, as(fn, err)
	}
	return o, nil
}

func millilitresAt20(function, what string, ml float64, s alcoholometry.Strength, t quantity.Temperature) (float64, error) {
	if err := quantity.CheckRange(function, what, ml, 0, math.Inf(1), "mL", ""); err != nil {
		return 0, err
	}
	if ml == 0 {
		return 0, fmt.Errorf("%s: %s is 0 mL; give it above 0 mL", function, what)
	}
	warm, err := alcoholometry.DensityKgM3(s, t)
	if err != nil {
		return 0, as(function, err)
	}
	at20, err := alcoholometry.DensityKgM3(s, quantity.Temperature{})
	if err != nil {
		return 0, as(function, err)
	}
	return ml * warm / at20, nil
}

// sameReading is how far a sample may read above its distillate, % vol, before alcohol must have been lost: less than any
// instrument shows.
const sameReading = 0.005

// extractFrom returns the extract, g/L at 20 °C, with which a spirit of the true strength given reads as it does.
func extractFrom(function string, read, whole alcoholometry.Strength, t quantity.Temperature) (float64, error) {
	rho, err := alcoholometry.DensityKgM3(read, t)
	if err != nil {
		return 0, as(function, err)
	}
	without, err := alcoholometry.DensityKgM3(whole, t)
	if err != nil {
		return 0, as(function, err)
	}
	if whole.ABV() < read.ABV()-sameReading {
		return 0, fmt.Errorf("%s: the sample reads %v and its alcohol gives only %v; alcohol was lost in distilling, or a reading is wrong", function, read, whole)
	}
	if rho <= without {
		return 0, nil
	}
	// More sugar in a spirit of one strength makes it denser, so one amount fits.
	low, high := 0.0, math.Min(mostSugarGL, (1-whole.ABV()/100)/sugarLKg*1000)
	for range 100 {
		mid := (low + high) / 2
		got, err := LiqueurDensityKgM3(Liqueur{Strength: whole, SugarGL: mid}, t)
		if err != nil {
			return 0, as(function, err)
		}
		if got < rho {
			low = mid
		} else {
			high = mid
		}
	}
	return (low + high) / 2, nil
}
