package mixing

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// USSolids is a spirit whose solids were dried and weighed as the regulation of the United States says.
type USSolids struct {
	ApparentProof float64 // what the hydrometer shows, corrected to 60 °F, degrees of proof
	SolidsMg      float64 // solids in 100 mL, milligrams; or leave it 0 and give the residue
	ResidueG      float64 // what is left of the dried sample, g
	SampleML      float64 // the dried sample, mL; 25 if 0
}

// USObscuration is the proof with what its solids hide added by the rule.
type USObscuration struct {
	Solids           USSolids
	SolidsMg         float64 // in 100 mL, milligrams
	ObscurationProof float64 // added, degrees of proof
	Proof            float64 // the apparent proof with it, to the nearest tenth, degrees of proof
	Rule             string  // which paragraph says so
}

// The limits of the rule. Source: 27 CFR 30.31 and 30.32.
const (
	usClearMg     = 400 // solids in 100 mL up to which none is added, mg
	usDistilMg    = 600 // solids in 100 mL beyond which a sample must be distilled, mg
	usProofPerMg  = 0.4 / 100
	usLowestProof = 80  // of the evaporation method, gauge proof
	usMostProof   = 100 // likewise
)

// USObscured returns the proof of a spirit with solids by the evaporation method of the United States: 0.4 proof for each
// 100 mg in 100 mL. Up to 400 mg nothing is added; from there to 600 mg the rule holds for 80 to 100 proof; beyond, the
// spirit must be distilled to be measured, and it fails, as it does above 400 mg for any other proof. The rule is a round
// figure: by physics (TrueStrengthWithExtract) 100 mg of sugar hide 0.48 proof at 80 and 0.38 at 100.
//
// Source: 27 CFR 30.31, 30.32(a) and (b). Its example: 0.125 g left of 25 mL are 0.50 g in 100 mL and hide 2.0.
func USObscured(u USSolids) (USObscuration, error) {
	const fn = "mixing.USObscured"
	if err := quantity.CheckRange(fn, "the apparent proof", u.ApparentProof, 0, 200, "US proof", ""); err != nil {
		return USObscuration{}, err
	}
	for _, c := range []struct {
		what, unit string
		x          float64
	}{{"the solids in 100 mL", "mg", u.SolidsMg}, {"the residue", "g", u.ResidueG}, {"the sample", "mL", u.SampleML}} {
		if err := quantity.CheckRange(fn, c.what, c.x, 0, math.Inf(1), c.unit, ""); err != nil {
			return USObscuration{}, err
		}
	}
	if u.SolidsMg > 0 && u.ResidueG > 0 {
		return USObscuration{}, fmt.Errorf("%s: both the solids (%g mg in 100 mL) and the residue (%g g) are given; give one", fn, u.SolidsMg, u.ResidueG)
	}
	sampleML := u.SampleML
	if sampleML == 0 {
		sampleML = 25
	}
	o := USObscuration{Solids: u, SolidsMg: u.SolidsMg}
	if u.ResidueG > 0 {
		o.SolidsMg = math.Round(u.ResidueG*1e5/sampleML*1e9) / 1e9 // 0.1 g of 25 mL are 400 mg, not a digit more
	}
	switch {
	case o.SolidsMg > usDistilMg:
		return USObscuration{}, fmt.Errorf("%s: %s mg of solids in 100 mL; above %d mg a sample must be distilled and made up, and its proof taken (27 CFR 30.31)", fn, quantity.Figure(o.SolidsMg), usDistilMg)
	case o.SolidsMg <= usClearMg:
		o.Rule = "27 CFR 30.31: up to 400 mg in 100 mL nothing is added"
	case u.ApparentProof < usLowestProof || u.ApparentProof > usMostProof:
		return USObscuration{}, fmt.Errorf("%s: the evaporation method is for 80 to 100 proof and this is %g; distil a sample (27 CFR 30.32(a), (c))", fn, u.ApparentProof)
	default:
		o.ObscurationProof = o.SolidsMg * usProofPerMg
		o.Rule = "27 CFR 30.32(b): 0.4 proof for 100 mg in 100 mL"
	}
	o.Proof = alcoholometry.USRoundTenth(u.ApparentProof + o.ObscurationProof)
	return o, nil
}

// String gives the proof in one line.
func (o USObscuration) String() string {
	return fmt.Sprintf("%.1f proof: %g as read + %.2f for %s mg of solids in 100 mL", o.Proof, o.Solids.ApparentProof, o.ObscurationProof, quantity.Figure(o.SolidsMg))
}

// Rows gives the proof as a table, each row a label, a figure and a unit.
func (o USObscuration) Rows() [][]string {
	return [][]string{
		{"as read, corrected to 60 °F", fmt.Sprintf("%g", o.Solids.ApparentProof), "US proof"},
		{"solids in 100 mL", quantity.Figure(o.SolidsMg), "mg"},
		{"obscuration", fmt.Sprintf("%.2f", o.ObscurationProof), "US proof"},
		{"true proof by the rule", fmt.Sprintf("%.1f", o.Proof), "US proof"},
		{o.Rule, "", ""},
	}
}
