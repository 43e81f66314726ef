package mixing_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

func TestUSRuleAgainstTheRegulation(t *testing.T) {
	for _, r := range tableIn(t, "mixing", "us_obscuration.csv") {
		u := mixing.USSolids{ApparentProof: r.number("apparent_proof"), ResidueG: r.optional("residue_g"), SampleML: r.optional("sample_mL")}
		if u.ResidueG == 0 {
			u.SolidsMg = r.number("solids_mg")
		}
		got := the(mixing.USObscured(u))
		if got.SolidsMg != r.number("solids_mg") || math.Abs(got.ObscurationProof-r.number("obscuration_proof")) > 1e-12 || got.Proof != r.number("proof") {
			t.Errorf("%+v; %s gives %s mg, %s, %s proof", got, r.text("source"), r.text("solids_mg"), r.text("obscuration_proof"), r.text("proof"))
		}
	}
}

func TestUSRuleHasEnds(t *testing.T) {
	for want, u := range map[string]mixing.USSolids{
		"must be distilled":            {ApparentProof: 90, SolidsMg: 600.1},
		"is for 80 to 100 proof":       {ApparentProof: 79.9, SolidsMg: 500},
		"100 proof and this is 100.1":  {ApparentProof: 100.1, SolidsMg: 401},
		"both the solids":              {ApparentProof: 90, SolidsMg: 500, ResidueG: 0.1},
		"apparent proof is 201":        {ApparentProof: 201},
		"the residue is -1 g":          {ApparentProof: 90, ResidueG: -1},
		"solids in 100 mL is NaN mg":   {ApparentProof: 90, SolidsMg: math.NaN()},
		"the sample is -25 mL; it mus": {ApparentProof: 90, ResidueG: 0.1, SampleML: -25},
	} {
		if got, err := mixing.USObscured(u); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v, %v; want %q", got, err, want)
		}
	}
}

// The rule of the United States is a round figure of what physics gives: 27 CFR 30.32(b) has 0.4 proof for 100 mg in 100 mL
// from 80 to 100 proof. Physics gives a tenth less to a fifth more, and less of it the stronger the spirit.
func TestPhysicsBesideTheRule(t *testing.T) {
	before := math.Inf(1)
	for _, proof := range []float64{80, 85, 90, 95, 100} {
		o := the(mixing.TrueStrengthWithExtract(mixing.Extracted{Apparent: the(alcoholometry.USProof(proof - 0.45)), Temp: the(quantity.Fahrenheit(60)), Extract: the(quantity.GL(1))}))
		if math.Abs(o.HiddenProof-0.4) > 0.09 || o.HiddenProof >= before {
			t.Errorf("1 g/L hides %.3f proof at %g; the rule says 0.4, and less than the %.3f before", o.HiddenProof, proof, before)
		}
		before = o.HiddenProof
	}
}

// Goldens: our own figures, and those of the formula c (1 - vρ)/|dρ/dp|, which gives the strength of ethanol and water
// by themselves above the reading.
func TestHiddenGolden(t *testing.T) {
	for _, c := range []struct{ pct, hidden, base float64 }{{60, 0.16, 0.20}, {43, 0.21, 0.24}} {
		o := the(mixing.TrueStrengthWithExtract(mixing.Extracted{Apparent: abv(c.pct), Extract: the(quantity.GL(1))}))
		if math.Abs(o.HiddenABV-c.hidden) > 0.005 || math.Abs(o.Base.ABV()-c.pct-c.base) > 0.005 {
			t.Errorf("1 g/L hides %.3f %% vol at %g, and the rest is %.3f above; golden %.2f and %.2f", o.HiddenABV, c.pct, o.Base.ABV()-c.pct, c.hidden, c.base)
		}
	}
	for proof, want := range map[float64]float64{80: 0.529, 90: 0.474, 100: 0.436} {
		o := the(mixing.TrueStrengthWithExtract(mixing.Extracted{Apparent: the(alcoholometry.USProof(proof)), Temp: the(quantity.Fahrenheit(60)), Extract: the(quantity.GL(1))}))
		if got := o.Base.USProof() - proof; math.Abs(got-want) > 0.005 {
			t.Errorf("1 g/L at %g proof: the rest is %.4f proof above; golden %.3f", proof, got, want)
		}
	}
}

func TestObscurationComesBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := mixing.Liqueur{Strength: abv(rapid.Float64Range(15, 75).Draw(t, "abv")), SugarGL: rapid.Float64Range(0, 100).Draw(t, "gL")}
		temp := celsius(rapid.Float64Range(5, 38).Draw(t, "tC"))
		read, err := mixing.ApparentStrength(l, temp)
		if err != nil {
			return // heavier than water
		}
		extract := the(quantity.GL(l.SugarGL))
		o := the(mixing.TrueStrengthWithExtract(mixing.Extracted{Apparent: read, Temp: temp, Extract: extract}))
		if math.Abs(o.True.ABV()-l.Strength.ABV()) > 1e-8 || o.HiddenABV < -1e-9 {
			t.Fatalf("%v with %g g/L reads %v at %v, and that comes back as %v", l.Strength, l.SugarGL, read, temp, o)
		}
		// Distilled back, the same extract is found.
		d := the(mixing.TrueStrengthByDistilling(mixing.DistilBack{Distillate: l.Strength, SampleML: 250, SampleTemp: temp, Apparent: read, ReadAt: temp}))
		if math.Abs(d.ExtractGL-l.SugarGL) > 1e-5 || d.True != l.Strength {
			t.Fatalf("%v: %g g/L were in it", d, l.SugarGL)
		}
	})
}

// Tabarié's formula, as OIV-MA-AS2-03B states it: the specific gravity of the residue is that of the sample, less that of
// the distillate, plus 1. For 25 g/L it is known to hold within about 3 % up to wine strength.
func TestExtractAgainstTabarie(t *testing.T) {
	water := the(alcoholometry.DensityKgM3(alcoholometry.Water, celsius(20)))
	for _, pct := range []float64{5, 8, 12} {
		l := mixing.Liqueur{Strength: abv(pct), SugarGL: 25}
		sample := the(mixing.LiqueurDensityKgM3(l, celsius(20))) / water
		distillate := the(alcoholometry.DensityKgM3(abv(pct), celsius(20))) / water
		residue := sample - distillate + 1
		// 25 g/L of sugar in water by the CRC's table: 2.48 % by mass, 1.0079 g/cm³.
		want := the(mixing.LiqueurDensityKgM3(mixing.Liqueur{Strength: alcoholometry.Water, SugarGL: 25}, celsius(20))) / water
		if math.Abs((residue-1)/(want-1)-1) > 0.03 {
			t.Errorf("%g %% vol: residue of %.5f; Tabarié has %.5f ± 3 %%", pct, residue, want)
		}
	}
}

func TestDistilBackByVolumes(t *testing.T) {
	d := mixing.DistilBack{Distillate: abv(20), SampleML: 100, MadeUpML: 200, MadeUpTemp: celsius(20)}
	if got := the(mixing.TrueStrengthByDistilling(d)); !near(got.True.ABV(), 40, 1e-12) || got.String() != "true 40.00 % vol (distilled)" || len(got.Rows()) != 2 {
		t.Errorf("%v; made up to twice the volume at 20 %% vol, the sample had 40", got.True)
	}
	// Warm made up cold: what counts is the volume at 20 °C.
	d.MadeUpTemp = celsius(10)
	want := 40 * the(alcoholometry.DensityKgM3(abv(20), celsius(10))) / the(alcoholometry.DensityKgM3(abv(20), celsius(20)))
	if got := the(mixing.TrueStrengthByDistilling(d)); !near(got.True.ABV(), want, 1e-10) {
		t.Errorf("%v; want %.4f", got.True, want)
	}
	for want, d := range map[string]mixing.DistilBack{
		"not set":           {SampleML: 100},
		"is 0 mL":           {Distillate: abv(40)},
		"alcohol was lost":  {Distillate: abv(40), SampleML: 100, Apparent: abv(40.2)},
		"made up to is -1 ": {Distillate: abv(40), SampleML: 100, MadeUpML: -1},
	} {
		if got, err := mixing.TrueStrengthByDistilling(d); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v, %v; want %q", got, err, want)
		}
	}
}

func TestExtractsThatAreNone(t *testing.T) {
	for want, e := range map[string]mixing.Extracted{
		"apparent strength is not set":  {Extract: the(quantity.GL(1))},
		"extract is not set":            {Apparent: abv(40)},
		"counted on pure alcohol":       {Apparent: abv(40), Extract: the(quantity.GHLPure(100))},
		"which no mixture has":          {Apparent: abv(97), Extract: the(quantity.GL(100))},
		"the extract is 900 g/L; it mu": {Apparent: abv(5), Extract: the(quantity.GL(900))},
	} {
		if got, err := mixing.TrueStrengthWithExtract(e); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v, %v; want %q", got, err, want)
		}
	}
	if got, err := mixing.ApparentStrength(mixing.Liqueur{Strength: abv(20), SugarGL: 300}, celsius(20)); err == nil || !strings.Contains(err.Error(), "distil a sample") {
		t.Errorf("%v, %v; a thick liqueur has no reading", got, err)
	}
	perKg := the(mixing.TrueStrengthWithExtract(mixing.Extracted{Apparent: abv(40), Extract: the(quantity.MgKg(5000))}))
	if want := 5 * the(alcoholometry.DensityKgM3(abv(40), celsius(20))) / 1000; !near(perKg.ExtractGL, want, 1e-12) {
		t.Errorf("5 g/kg are %.4f g/L; want %.4f", perKg.ExtractGL, want)
	}
}
