package mixing

import (
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Reduction is a spirit brought down to a lower strength with water.
type Reduction struct {
	Spirit    alcoholometry.Spirit // what is reduced
	SpiritL   float64              // its volume at its own temperature, L
	SpiritKg  float64              // its true mass, kg
	WaterL    float64              // water to add, L at WaterTemp
	WaterKg   float64              // water to add, true mass, kg
	WaterTemp quantity.Temperature // of the water; 20 °C unless WaterAt was given

	Result       alcoholometry.Spirit // what comes of it; at 20 °C unless ResultAt was given
	ContractionL float64              // volume lost: spirit and water less result, L, all three at Result.Temp (at 0 °C if that is colder)

	// WarmingC is by how much the heat of mixing alone warms the tank, °C, beyond what putting together a warm and a cold
	// liquid gives, if no heat gets out. An estimate, good to about 10 %: see HeatOfMixingKJ.
	WarmingC float64
	// MixedAt is the temperature of the tank just after mixing, if no heat gets out. Read the alcoholometer there and
	// correct it: the strength does not change, the reading does.
	MixedAt quantity.Temperature
}

// sameStrength is the difference of mass fractions, dimensionless, below which two strengths are one: it covers
// the rounding of a strength that was itself computed.
const sameStrength = 1e-12

// Reduce returns how much water brings a spirit down to the strength to, and what comes of it. Water and result are at
// 20 °C unless WaterAt or ResultAt is given; the spirit is at its own Temp. The same strength needs no water.
//
// It fails with a *StrengthError if to is above the spirit's strength or is 0, with an *alcoholometry.UnsetError for an
// unset strength, and with a *quantity.RangeError for a volume that is not above 0 or a temperature out of range.
//
// Mass and ethanol are kept to the last digits; volumes are as good as OIML R 22 (1975).
func Reduce(spirit alcoholometry.Spirit, to alcoholometry.Strength, opts ...Option) (Reduction, error) {
	const fn = "mixing.Reduce"
	if err := checkSpirit(fn, "the spirit", spirit); err != nil {
		return Reduction{}, err
	}
	if err := checkStrengths(fn, spirit.Strength, to); err != nil {
		return Reduction{}, err
	}
	ts := temperatures{spirit: spirit.Temp}
	if err := ts.apply(fn, opts, false); err != nil {
		return Reduction{}, err
	}
	return reduction(fn, spirit.MassKg(), spirit.Strength, to, ts, func(r *Reduction) { r.Spirit, r.SpiritL = spirit, spirit.VolumeL })
}

// Make returns how much spirit of strength from, and how much water, make the wanted spirit: its VolumeL at its Temp,
// at its Strength. Spirit and water are at 20 °C unless SpiritAt or WaterAt is given. It fails as Reduce does.
func Make(wanted alcoholometry.Spirit, from alcoholometry.Strength, opts ...Option) (Reduction, error) {
	const fn = "mixing.Make"
	if err := checkSpirit(fn, "the wanted spirit", wanted); err != nil {
		return Reduction{}, err
	}
	if err := alcoholometry.CheckSet(fn, "the strength to start from", from); err != nil {
		return Reduction{}, err
	}
	if err := checkStrengths(fn, from, wanted.Strength); err != nil {
		return Reduction{}, err
	}
	ts := temperatures{result: wanted.Temp}
	if err := ts.apply(fn, opts, true); err != nil {
		return Reduction{}, err
	}
	spiritKg := wanted.MassKg()
	if differ(from, wanted.Strength) {
		spiritKg *= wanted.Strength.ABW() / from.ABW()
	}
	return reduction(fn, spiritKg, from, wanted.Strength, ts, func(r *Reduction) {
		if ts.result == wanted.Temp {
			r.Result.VolumeL = wanted.VolumeL
		}
	})
}

// reduction works out everything from the mass of the spirit; finish puts back what the caller stated, so that it
// does not return changed in its last digit.
func reduction(function string, spiritKg float64, from, to alcoholometry.Strength, ts temperatures, finish func(*Reduction)) (Reduction, error) {
	r := Reduction{SpiritKg: spiritKg, WaterTemp: ts.water}
	if differ(from, to) {
		r.WaterKg = spiritKg * (from.ABW() - to.ABW()) / to.ABW()
	}
	totalKg := r.SpiritKg + r.WaterKg
	var err error
	if r.Spirit, err = amount(function, spiritKg, from, ts.spirit); err != nil {
		return Reduction{}, err
	}
	if r.Result, err = amount(function, totalKg, to, ts.result); err != nil {
		return Reduction{}, err
	}
	water, err := amount(function, r.WaterKg, alcoholometry.Water, ts.water)
	if err != nil {
		return Reduction{}, err
	}
	r.SpiritL, r.WaterL = r.Spirit.VolumeL, water.VolumeL
	finish(&r)
	if r.WaterKg > 0 {
		if r.ContractionL, err = contractionL(function, r, to, ts.result); err != nil {
			return Reduction{}, err
		}
	}
	if r.WarmingC, r.MixedAt, err = warming(r); err != nil {
		return Reduction{}, err
	}
	return r, nil
}

// contractionL returns spirit plus water less result, L, all at t. Below 0 °C, where there is no liquid water, the
// three are compared at 0 °C.
func contractionL(function string, r Reduction, to alcoholometry.Strength, t quantity.Temperature) (float64, error) {
	if t.C() < 0 {
		var err error
		if t, err = quantity.Celsius(0); err != nil {
			return 0, err
		}
	}
	spirit, err := amount(function, r.SpiritKg, r.Spirit.Strength, t)
	if err != nil {
		return 0, err
	}
	water, err := amount(function, r.WaterKg, alcoholometry.Water, t)
	if err != nil {
		return 0, err
	}
	result, err := amount(function, r.SpiritKg+r.WaterKg, to, t)
	if err != nil {
		return 0, err
	}
	return spirit.VolumeL + water.VolumeL - result.VolumeL, nil
}

// amount returns kg kilograms of strength s as a spirit measured at t.
func amount(function string, kg float64, s alcoholometry.Strength, t quantity.Temperature) (alcoholometry.Spirit, error) {
	rho, err := alcoholometry.DensityKgM3(s, t)
	if err != nil {
		return alcoholometry.Spirit{}, as(function, err)
	}
	return alcoholometry.Spirit{VolumeL: kg / rho * 1000, Strength: s, Temp: t}, nil
}

func differ(a, b alcoholometry.Strength) bool { return math.Abs(a.ABW()-b.ABW()) > 100*sameStrength }
