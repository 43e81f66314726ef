package sheet

import (
	"swanneck/mathlib/alcoholometry"
)

// TrueStrength returns the strength of a spirit at t in which a glass alcoholometer shows readingABV, in per cent by volume.
// Without MarkedAt the instrument is one marked at 20 °C.
func TrueStrength(readingABV float64, t Temperature, opts ...ReadingOption) Strength {
	v, err := alcoholometry.TrueStrength(readingABV, t, opts...)
	return must("TrueStrength", v, err)
}

// TrueProof returns the strength of a spirit at t in which a glass hydrometer marked at 60 °F shows readingProof, in US proof.
func TrueProof(readingProof float64, t Temperature) Strength {
	v, err := alcoholometry.TrueProof(readingProof, t)
	return must("TrueProof", v, err)
}

// Reading returns what a glass alcoholometer shows in a spirit of strength s at t, in per cent by volume on its scale.
func Reading(s Strength, t Temperature, opts ...ReadingOption) float64 {
	v, err := alcoholometry.Reading(s, t, opts...)
	return must("Reading", v, err)
}

// ProofReading returns what a glass hydrometer marked at 60 °F shows in a spirit of strength s at t, in US proof.
func ProofReading(s Strength, t Temperature) float64 {
	v, err := alcoholometry.ProofReading(s, t)
	return must("ProofReading", v, err)
}

// MarkedAt says that an alcoholometer is marked in per cent by volume at t, from 0 to 40 °C, such as 15 °C or 60 °F.
func MarkedAt(t Temperature) ReadingOption { return alcoholometry.MarkedAt(t) }

// StrengthPlusMinus returns how far TrueStrength may be wrong either way, in per cent by volume, if the two instruments may be
// wrong by tol.
func StrengthPlusMinus(readingABV float64, t Temperature, tol Tolerances, opts ...ReadingOption) float64 {
	v, err := alcoholometry.StrengthPlusMinus(readingABV, t, tol, opts...)
	return must("StrengthPlusMinus", v, err)
}
