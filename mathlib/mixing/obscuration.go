package mixing

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// What is dissolved in a spirit (sugar, extract of wood or herbs) makes it denser, so that any instrument that rests on
// density shows too little. The functions of this file find the true strength by physics; the rule of the United States
// stands apart, in USObscured.

// Extracted is a spirit with something dissolved in it, as an instrument reads it.
type Extracted struct {
	Apparent alcoholometry.Strength // as read, corrected for the temperature: TrueStrength or StrengthFromDensity
	Temp     quantity.Temperature   // at which it was read; 20 °C if unset
	Extract  quantity.Concentration // the dry extract: what is left of a litre at 20 °C, or of a kilogram, when it has dried
}

// Obscuration is how much strength what is dissolved hides.
type Obscuration struct {
	Apparent    alcoholometry.Strength // as read
	True        alcoholometry.Strength // of the whole, extract included, by volume at 20 °C: what a label and a duty go by
	Base        alcoholometry.Strength // of the ethanol and water by themselves, without the room that the extract takes up
	HiddenABV   float64                // true less apparent, % vol
	HiddenProof float64                // the same in degrees of proof of the United States
	ExtractGL   float64                // dissolved, g/L at 20 °C
	PlusMinus   float64                // how far HiddenABV may be off because what is dissolved takes up 0.60 to 0.64 mL/g, % vol
	Method      string                 // how the true strength was found
	Estimate    bool                   // whether the true strength rests on the volume model, not on a measurement
}

// TrueStrengthWithExtract returns the true strength of a spirit whose dry extract is known. What is dissolved is taken to
// fill 0.62 mL/g, as sucrose does. It is an estimate: the volume of other extracts is not known better than 0.60 to
// 0.64 mL/g, which moves what is hidden by 5 %; glycerol and acids are further off. It fails with an
// *alcoholometry.UnsetError, with a *quantity.RangeError for more than 800 g/L, for an extract counted on pure alcohol, and
// where the extract cannot make up such a density.
//
// Source: OIML R 22 (1975) and the volume of dissolved sucrose after the CRC Handbook (102nd edition). One gram in a litre
// hides 0.16 % vol at 60 % vol and 0.21 at 43. (The ethanol and water by themselves are 0.20 and 0.24 above the reading;
// that forgets the room that the extract takes up, which a distilled and made-up sample does not.)
func TrueStrengthWithExtract(e Extracted) (Obscuration, error) {
	const fn = "mixing.TrueStrengthWithExtract"
	if err := alcoholometry.CheckSet(fn, "the apparent strength", e.Apparent); err != nil {
		return Obscuration{}, err
	}
	rho, err := alcoholometry.DensityKgM3(e.Apparent, e.Temp)
	if err != nil {
		return Obscuration{}, as(fn, err)
	}
	gL, err := extractGL(fn, e, rho)
	if err != nil {
		return Obscuration{}, err
	}
	o, err := without(fn, e, rho, gL, sugarLKg)
	if err != nil {
		return Obscuration{}, err
	}
	o.PlusMinus, err = volumeDoubt(fn, e, rho, gL)
	return o, err
}

// volumeDoubt returns by how much what is hidden changes with the volume of what is dissolved, % vol.
func volumeDoubt(function string, e Extracted, rho, gL float64) (float64, error) {
	thin, err := without(function, e, rho, gL, sugarLKg-sugarOffLKg)
	if err != nil {
		return 0, err
	}
	thick, err := without(function, e, rho, gL, sugarLKg+sugarOffLKg)
	if err != nil {
		return 0, err
	}
	return math.Abs(thin.HiddenABV-thick.HiddenABV) / 2, nil
}

// extractGL returns the extract in g/L at 20 °C. A kilogram takes up what its density says; the density at 20 °C is close
// enough to that at the temperature of the reading once both are taken from the same apparent strength.
func extractGL(function string, e Extracted, rho float64) (float64, error) {
	var gL float64
	switch e.Extract.Per() {
	case quantity.PerLitre:
		gL = e.Extract.Value() / 1000
	case quantity.PerKilogram:
		rho20, err := alcoholometry.DensityKgM3(e.Apparent, quantity.Temperature{})
		if err != nil {
			return 0, as(function, err)
		}
		gL = e.Extract.Value() / 1e6 * rho20
	case quantity.PerPureAlcohol:
		return 0, fmt.Errorf("%s: the extract is counted on pure alcohol; give it for a litre, such as GL(4), or a kilogram", function)
	default:
		return 0, fmt.Errorf("%s: the extract is not set; give it, such as GL(4)", function)
	}
	return gL, quantity.CheckRange(function, "the extract", gL, 0, mostSugarGL, "g/L", "")
}

// without takes gL grams of extract, which fill lKg litres a kilogram, out of a spirit of density rho, and returns what the
// rest is.
func without(function string, e Extracted, rho, gL, lKg float64) (Obscuration, error) {
	hereGL := gL // in a litre at the temperature of the reading
	var base alcoholometry.Strength
	for range 30 {
		share := 1 - hereGL/1000*lKg
		var err error
		if base, err = alcoholometry.StrengthFromDensity((rho-hereGL)/share, e.Temp); err != nil {
			return Obscuration{}, fmt.Errorf("%s: %s g/L of extract cannot be in a spirit that reads %v at %v: ethanol and water would be left at %.2f kg/m³, which no mixture has",
				function, quantity.Figure(gL), e.Apparent, e.Temp, (rho-hereGL)/share)
		}
		rho20, err := alcoholometry.DensityKgM3(base, quantity.Temperature{})
		if err != nil {
			return Obscuration{}, as(function, err)
		}
		// What is a litre here is at20L litres at 20 °C.
		at20L := (rho-hereGL)/rho20 + hereGL/1000*lKg
		next := gL * at20L
		if math.Abs(next-hereGL) < 1e-13*gL {
			break
		}
		hereGL = next
	}
	whole, err := alcoholometry.ABV(base.ABV() * (1 - gL/1000*lKg))
	if err != nil {
		return Obscuration{}, as(function, err)
	}
	o := hidden(e.Apparent, whole, gL, "dry extract, volume model (estimate)", true)
	o.Base = base
	return o, nil
}

func hidden(apparent, whole alcoholometry.Strength, gL float64, method string, estimate bool) Obscuration {
	return Obscuration{Apparent: apparent, True: whole, HiddenABV: whole.ABV() - apparent.ABV(), HiddenProof: whole.USProof() - apparent.USProof(),
		ExtractGL: gL, Method: method, Estimate: estimate}
}

// ApparentStrength returns what a liqueur or an infused spirit looks like to an instrument at t, once its reading is
// corrected for temperature: the strength of the ethanol and water of the same density. An estimate (see Liqueur). Its
// VolumeL and Temp play no part. It fails where the liqueur is denser than water, which no alcoholometer can read, and as
// LiqueurDensityKgM3 does.
//
// Source: as for LiqueurDensityKgM3.
func ApparentStrength(l Liqueur, t quantity.Temperature) (alcoholometry.Strength, error) {
	return apparent("mixing.ApparentStrength", l, t)
}

func apparent(function string, l Liqueur, t quantity.Temperature) (alcoholometry.Strength, error) {
	if l.SugarGL == 0 && l.Strength.IsSet() {
		return l.Strength, nil
	}
	rho, err := LiqueurDensityKgM3(l, t)
	if err != nil {
		return alcoholometry.Strength{}, as(function, err)
	}
	s, err := alcoholometry.StrengthFromDensity(rho, t)
	if err != nil {
		return alcoholometry.Strength{}, fmt.Errorf("%s: with %s g/L of sugar at %v the density is %.1f kg/m³ at %v, which no alcoholometer reads; distil a sample to measure it",
			function, quantity.Figure(l.SugarGL), l.Strength, rho, t)
	}
	return s, nil
}

// String gives the obscuration in one line.
func (o Obscuration) String() string {
	if !o.Apparent.IsSet() {
		return fmt.Sprintf("true %v (%s)", o.True, o.Method)
	}
	about := ""
	if o.Estimate {
		about = fmt.Sprintf(" ± %.2f (estimate)", o.PlusMinus)
	}
	return fmt.Sprintf("true %v, %v as read: %s g/L of extract hide %.2f %% vol%s", o.True, o.Apparent, quantity.Figure(o.ExtractGL), o.HiddenABV, about)
}

// Rows gives the obscuration as a table, each row a label, a figure and a unit. What is not known is left out.
func (o Obscuration) Rows() [][]string {
	var rows [][]string
	strength := func(label string, s alcoholometry.Strength) {
		if s.IsSet() {
			rows = append(rows, []string{label, fmt.Sprintf("%.2f", s.ABV()), "% vol"})
		}
	}
	strength("as read, corrected for temperature", o.Apparent)
	strength("true strength", o.True)
	if o.Apparent.IsSet() {
		rows = append(rows,
			[]string{"hidden", fmt.Sprintf("%.2f", o.HiddenABV), "% vol"},
			[]string{"hidden", fmt.Sprintf("%.2f", o.HiddenProof), "US proof"},
			[]string{"extract", quantity.Figure(o.ExtractGL), "g/L"})
	}
	strength("ethanol and water by themselves", o.Base)
	if o.PlusMinus > 0 {
		rows = append(rows, []string{"± of what is hidden, for 0.60 to 0.64 mL/g", fmt.Sprintf("%.2f", o.PlusMinus), "% vol"})
	}
	return append(rows, []string{"method: " + o.Method, "", ""})
}
