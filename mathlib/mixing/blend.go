package mixing

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
)

// Blend returns what comes of putting all the spirits together. Their masses and their ethanol add up; the volume
// follows from the density of the blend, so it is a little less, or now and then more, than the sum. If all spirits
// have one temperature, the volume of the blend is at that temperature; otherwise it is at 20 °C. The heat of mixing
// plays no part in it. Water may be one of the spirits.
//
// It fails for no spirits, with an *alcoholometry.UnsetError for one without strength, and with a
// *quantity.RangeError for a negative volume or a temperature out of range. A spirit of 0 L adds nothing, but not
// all may be 0 L.
func Blend(spirits ...alcoholometry.Spirit) (alcoholometry.Spirit, error) {
	const fn = "mixing.Blend"
	if len(spirits) == 0 {
		return alcoholometry.Spirit{}, fmt.Errorf("%s: there are no spirits to blend; give at least one", fn)
	}
	t := spirits[0].Temp
	var massKg, ethanolKg float64
	same := true
	for i, s := range spirits {
		if err := alcoholometry.CheckSet(fn, fmt.Sprintf("the strength of spirit %d", i+1), s.Strength); err != nil {
			return alcoholometry.Spirit{}, err
		}
		if err := alcoholometry.CheckSpirit(fn, s); err != nil {
			return alcoholometry.Spirit{}, err
		}
		kg := s.MassKg()
		massKg += kg
		ethanolKg += kg * s.Strength.ABW() / 100
		same = same && s.Temp == t && s.Strength == spirits[0].Strength
		if s.Temp != spirits[0].Temp {
			t = alcoholometry.Spirit{}.Temp
		}
	}
	if massKg == 0 {
		return alcoholometry.Spirit{}, fmt.Errorf("%s: all spirits have 0 L; give at least one a volume above 0 L", fn)
	}
	strength := spirits[0].Strength
	if !same {
		var err error
		if strength, err = alcoholometry.ABW(100 * min(ethanolKg/massKg, 1)); err != nil {
			return alcoholometry.Spirit{}, as(fn, err)
		}
	}
	return amount(fn, massKg, strength, t)
}
