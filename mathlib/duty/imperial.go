package duty

import (
	"sync"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// proofSpirit is Imperial proof spirit.
type proofSpirit struct {
	strength    alcoholometry.Strength
	ethanolKgL  float64 // ethanol in a litre of it at 50 °F, kg
	gallonPureL float64 // pure alcohol at 20 °C in an Imperial gallon of it measured at 20 °C, L
	scale       quantity.Temperature
}

// imperialProof reckons proof spirit from its definition.
var imperialProof = sync.OnceValues(func() (proofSpirit, error) {
	t51, err := quantity.Fahrenheit(51)
	if err != nil {
		return proofSpirit{}, err
	}
	t50, err := quantity.Fahrenheit(50)
	if err != nil {
		return proofSpirit{}, err
	}
	water, err := alcoholometry.DensityKgM3(alcoholometry.Water, t51)
	if err != nil {
		return proofSpirit{}, err
	}
	rho := (water-alcoholometry.AirKgM3)*12/13 + alcoholometry.AirKgM3 // weighed in air
	s, err := alcoholometry.StrengthFromDensity(rho, t51)
	if err != nil {
		return proofSpirit{}, err
	}
	p := proofSpirit{strength: s, scale: t50}
	if p.ethanolKgL, err = ethanolKgL(s, t50); err != nil {
		return proofSpirit{}, err
	}
	p.gallonPureL = alcoholometry.Spirit{VolumeL: quantity.ImperialGallonsToL(1), Strength: s}.PureL()
	return p, nil
})

// ethanolKgL returns the ethanol in a litre of spirit at t, kg.
func ethanolKgL(s alcoholometry.Strength, t quantity.Temperature) (float64, error) {
	rho, err := alcoholometry.DensityKgM3(s, t)
	return rho / 1000 * s.ABW() / 100, err
}

// ImperialProof returns a strength in degrees of the Imperial proof scale, in use in the United Kingdom until 1979 and in
// its former dominions: 100 degrees is proof spirit, of 57.1 % vol; 0 is water and 175.5 ethanol; 110 is 10 over proof. It
// fails with an *alcoholometry.UnsetError.
//
// Proof spirit weighs twelve thirteenths of as much water, both at 51 °F; the degrees are the volume of proof spirit that
// 100 volumes make, or are made of, measured at 50 °F. The weights are taken in air (AirKgM3), which agrees with the
// tables of the time. The Act leaves open at what temperature a bulk gallon is measured: ImperialProofGallon is one at 20
// °C, 2.5959 L of pure alcohol at 20 °C. The change-over of the duty in 1980 reckoned with 2.595 L (£27.09 a proof gallon
// to £10.44 a litre, from memory); one measured at 60 °F would have 2.606 L.
//
// Source: Alcoholic Liquor Duties Act 1979 (UK), section 2 as enacted; OIML R 22 (1975).
func ImperialProof(s alcoholometry.Strength) (float64, error) {
	const fn = "duty.ImperialProof"
	if err := alcoholometry.CheckSet(fn, "the strength", s); err != nil {
		return 0, err
	}
	p, err := imperialProof()
	if err != nil {
		return 0, as(fn, err)
	}
	kg, err := ethanolKgL(s, p.scale)
	if err != nil {
		return 0, as(fn, err)
	}
	return 100 * kg / p.ethanolKgL, nil
}

// FromImperialProof returns the strength of so many degrees of the Imperial proof scale (degrees, in proof), from 0 to
// that of ethanol, 175.5: the way back from ImperialProof, solved to 1e-9 degrees. It fails with a *quantity.RangeError.
//
// Source: as for ImperialProof.
func FromImperialProof(degrees float64) (alcoholometry.Strength, error) {
	const fn = "duty.FromImperialProof"
	ethanol, err := alcoholometry.ABW(100)
	if err != nil {
		return alcoholometry.Strength{}, as(fn, err)
	}
	top, err := ImperialProof(ethanol)
	if err != nil {
		return alcoholometry.Strength{}, as(fn, err)
	}
	if err := quantity.CheckRange(fn, "the strength", degrees, 0, top, "degrees of Imperial proof", ""); err != nil {
		return alcoholometry.Strength{}, err
	}
	low, high := 0.0, 100.0 // per cent by mass
	for range 60 {
		mid, err := alcoholometry.ABW((low + high) / 2)
		if err != nil {
			return alcoholometry.Strength{}, as(fn, err)
		}
		at, err := ImperialProof(mid)
		if err != nil {
			return alcoholometry.Strength{}, as(fn, err)
		}
		if at < degrees {
			low = (low + high) / 2
		} else {
			high = (low + high) / 2
		}
	}
	return alcoholometry.ABW(high)
}
