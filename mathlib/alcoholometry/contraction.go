package alcoholometry

import "swanneck/mathlib/quantity"

// ContractionPct returns how much smaller a mixture of strength s is than the ethanol and the water it was made of,
// all at t from 0 to 40 °C, in per cent of their volume before mixing. It is largest, 3.5 %, near 54 % vol.
// It fails with an *UnsetError or a *quantity.RangeError.
//
// Source: OIML R 22 (1975), general formula.
func ContractionPct(s Strength, t quantity.Temperature) (float64, error) {
	const fn = "alcoholometry.ContractionPct"
	if err := CheckSet(fn, "the strength", s); err != nil {
		return 0, err
	}
	if err := quantity.CheckRange(fn, "temperature", t.C(), 0, maxC, "°C", sourceR22+", water liquid"); err != nil {
		return 0, err
	}
	a := isothermAt(t.C())
	apart := s.w/a.rho(1) + (1-s.w)/a.rho(0)
	return 100 * (1 - 1/(a.rho(s.w)*apart)), nil
}
