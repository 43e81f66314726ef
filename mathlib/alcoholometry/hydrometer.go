package alcoholometry

import (
	"math"

	"swanneck/mathlib/quantity"
)

// glassPerC is the cubic expansion of soda-lime glass, 1/°C. Source: ISO 1768:1975, conventional value for the
// preparation of hydrometer tables.
const glassPerC = 25e-6

// Option changes how a glass instrument is taken to be marked. The zero value changes nothing.
type Option struct {
	reference quantity.Temperature
	set       bool
}

// MarkedAt says that an alcoholometer shows per cent by volume at the temperature t printed on its paper, from 0 to
// 40 °C, with spirit and ethanol both measured at t: 15 °C on many old French and German ones, 60 °F on others.
// Without it 20 °C is assumed.
func MarkedAt(t quantity.Temperature) Option { return Option{t, true} }

// instrument is a glass hydrometer: the temperature at which its marks are true, and the density of the air around it.
// Its weight is carried by the liquid, whose buoyancy acts on the part below the surface, and by the air, whose
// buoyancy acts on the rest; with glass that grows by glassPerC this gives, for the same mark at t and at the
// reference temperature r, (ρ_t - a)(1 + glassPerC (t - r)) = ρ_r - a.
type instrument struct {
	scale   isotherm
	refC    float64 // °C
	airKgM3 float64 // kg/m³
	full    float64 // the reading of pure ethanol at the reference temperature: 100 or 200
	unit    string
	ethanol float64 // density of ethanol at the reference temperature, kg/m³
}

func alcoholometer(function string, opts []Option) (instrument, error) {
	in := instrument{scale: isotherm20, refC: 20, full: 100, unit: "% vol", ethanol: ethanol20KgM3}
	for _, o := range opts {
		if !o.set {
			continue
		}
		c := o.reference.C()
		if err := quantity.CheckRange(function, "MarkedAt temperature", c, 0, maxC, "°C", sourceR22); err != nil {
			return instrument{}, err
		}
		in.scale, in.refC = isothermAt(c), c
		in.ethanol = in.scale.rho(1)
	}
	return in, nil
}

func proofHydrometer() instrument {
	return instrument{scale: isothermUS, refC: usReferenceC, airKgM3: AirKgM3, full: 200, unit: "US proof", ethanol: ethanolUSKgM3}
}

// TrueStrength returns the strength of a spirit in which a glass alcoholometer, marked in per cent by volume at 20 °C,
// shows readingABV (0 to 100) when the spirit and the instrument are at t, from -20 to 40 °C. MarkedAt takes an
// instrument marked at another temperature. It fails with a *quantity.RangeError, also where the instrument
// would show less than it does in water, or more than in ethanol, at t.
//
// Source: OIML R 22 (1975), general formula; glass expansion 25e-6 per °C, ISO 1768:1975. Agrees with Table 1 of 27
// CFR part 30 within 0.05 proof. The instrument's own error is not in it: see StrengthPlusMinus.
func TrueStrength(readingABV float64, t quantity.Temperature, opts ...Option) (Strength, error) {
	const fn = "alcoholometry.TrueStrength"
	in, err := alcoholometer(fn, opts)
	if err != nil {
		return Strength{}, err
	}
	return in.strength(fn, readingABV, t)
}

// TrueProof returns the strength of a spirit in which a glass hydrometer, marked in US proof at 60 °F, shows
// readingProof (0 to 200) when the spirit and the instrument are at t, from -20 to 40 °C. It fails with a
// *quantity.RangeError, also where the instrument would show less than it does in water, or more than in ethanol.
//
// Source: OIML R 22 (1975), general formula; glass expansion 25e-6 per °C, ISO 1768:1975; air of 1.2 kg/m³. Agrees
// with Table 1 of 27 CFR part 30 within 0.05 proof; for duty use the printed table with its rounding.
func TrueProof(readingProof float64, t quantity.Temperature) (Strength, error) {
	return proofHydrometer().strength("alcoholometry.TrueProof", readingProof, t)
}

// Reading returns what a glass alcoholometer, marked in per cent by volume at 20 °C (or as MarkedAt says), shows in a
// spirit of strength s at t, from -20 to 40 °C, in per cent by volume as printed on its scale. It fails with an
// *UnsetError or a *quantity.RangeError, also where the instrument would float above 0 or sink below 100.
//
// Source: as for TrueStrength, of which it is the way back.
func Reading(s Strength, t quantity.Temperature, opts ...Option) (float64, error) {
	const fn = "alcoholometry.Reading"
	in, err := alcoholometer(fn, opts)
	if err != nil {
		return 0, err
	}
	return in.reading(fn, s, t)
}

// ProofReading returns what a glass hydrometer marked in US proof at 60 °F shows in a spirit of strength s at t, from
// -20 to 40 °C, in degrees of proof. It fails as Reading does.
//
// Source: as for TrueProof, of which it is the way back.
func ProofReading(s Strength, t quantity.Temperature) (float64, error) {
	return proofHydrometer().reading("alcoholometry.ProofReading", s, t)
}

func (in *instrument) growth(t quantity.Temperature) float64 { return 1 + glassPerC*(t.C()-in.refC) }

func (in instrument) strength(function string, reading float64, t quantity.Temperature) (Strength, error) {
	if err := quantity.CheckRange(function, "reading", reading, 0, in.full, in.unit, ""); err != nil {
		return Strength{}, err
	}
	if err := checkTemperature(function, t); err != nil {
		return Strength{}, err
	}
	w := in.scale.fractionOfVolumeShare(reading/in.full, 0)
	rho := (in.scale.rho(w)-in.airKgM3)/in.growth(t) + in.airKgM3
	a := isothermAt(t.C())
	low := weakestLiquid(t.C())
	light, heavy := a.rho(1), a.rho(low)
	if rho > heavy+densitySlack || rho < light-densitySlack {
		return Strength{}, &quantity.RangeError{Func: function, Param: "reading at " + t.String(), Value: reading,
			Min: in.show(heavy, t), Max: in.show(light, t), Unit: in.unit,
			Source: "as " + heavyEnd(low) + " and ethanol read there"}
	}
	return Strength{a.fractionOfDensity(rho, low), true}, nil
}

// show returns the reading in a liquid of density rho at t, held to the ends of the scale; it only words an error.
func (in *instrument) show(rho float64, t quantity.Temperature) float64 {
	rho = in.onScale(rho, t)
	rho = math.Min(math.Max(rho, in.ethanol), in.scale[0])
	return in.full * in.scale.volumeShare(in.scale.fractionOfDensity(rho, 0))
}

// onScale returns the density whose mark a liquid of density rho at t reaches, kg/m³.
func (in *instrument) onScale(rho float64, t quantity.Temperature) float64 {
	return (rho-in.airKgM3)*in.growth(t) + in.airKgM3
}

func (in instrument) reading(function string, s Strength, t quantity.Temperature) (float64, error) {
	if !s.set {
		return 0, &UnsetError{Func: function, Param: "the strength"}
	}
	if err := checkState(function, s.w, t); err != nil {
		return 0, err
	}
	a := isothermAt(t.C())
	mark := in.onScale(a.rho(s.w), t)
	if mark > in.scale[0]+densitySlack || mark < in.ethanol-densitySlack {
		return 0, &quantity.RangeError{Func: function, Param: "density at the surface, as marked", Value: mark,
			Min: in.ethanol, Max: in.scale[0], Unit: "kg/m³", Source: "the ends of the instrument's scale"}
	}
	return in.full * in.scale.volumeShare(in.scale.fractionOfDensity(mark, 0)), nil
}
