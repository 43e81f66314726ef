package equilibrium

import (
	"fmt"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

// How far beyond the range of a vapour pressure equation a compound is still followed. The equations of many aroma
// compounds begin above the boiling point of spirit (camphor's at 178 °C); stretched so far, camphor's is good to a
// factor of two. Own choice: 120 K serves a still at 4000 m.
const stretchBelowK, stretchAboveK = 120.0, 5.0

// stretch returns what there is to say of a vapour pressure taken from lowC to highC, °C: nothing inside the range of
// its equation, a *quantity.RangeError too far outside.
func stretch(function, name string, v *compound.VapourPressure, lowC, highC float64) (note string, err error) {
	for _, t := range []float64{lowC, highC} {
		if err := quantity.CheckRange(function, "temperature", t, v.MinC-stretchBelowK, v.MaxC+stretchAboveK, "°C",
			name+", with the widest stretch of its vapour pressure equation"); err != nil {
			return "", err
		}
	}
	switch {
	case lowC < v.MinC && highC > v.MaxC:
		return fmt.Sprintf("vapour pressure extrapolated below %.1f and above %.1f °C", v.MinC, v.MaxC), nil
	case lowC < v.MinC:
		return fmt.Sprintf("vapour pressure extrapolated below %.1f °C", v.MinC), nil
	case highC > v.MaxC:
		return fmt.Sprintf("vapour pressure extrapolated above %.1f °C", v.MaxC), nil
	}
	return "", nil
}
