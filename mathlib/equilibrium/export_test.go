package equilibrium

import "swanneck/mathlib/compound"

// LnGammaInWater returns ln γ of a trace in water at tempK: by a method, by the compound's own base for "", and by that
// with the anchor for "anchored".
func LnGammaInWater(name string, base compound.Base, tempK float64) float64 {
	c, err := compound.Find(name)
	if err != nil {
		panic(err)
	}
	anchored := base == "anchored"
	if base == "" || anchored {
		base = c.InWater.Base
	}
	t, err := newTraceOf(c, base, anchored)
	if err != nil {
		panic(err)
	}
	s := solvent{pair: solventPair(base)}
	s.set(0, tempK)
	return t.lnGamma(&s)
}
