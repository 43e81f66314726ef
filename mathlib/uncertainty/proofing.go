package uncertainty

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Proofing is a spirit whose strength was found with a glass alcoholometer and a thermometer, and whose amount with a
// dip or on a balance. From it ProofedStrength, ProofedAlcohol, ProofedWater and ReducedStrength make measurements whose
// models are compiled, so that a million draws take less than a second.
//
// The spirit is taken as ethanol and water only, and as one with the thermometer: the tank's volume is the volume at the
// temperature that it reads.
type Proofing struct {
	Hydrometer  Hydrometer
	MarkedAt    quantity.Temperature // at which the alcoholometer's marks are true; 20 °C if unset
	Thermometer Thermometer

	Tank    TankDip // the amount by volume, or
	Balance Balance // by weight in air

	To    alcoholometry.Strength // the strength to come down to, for ProofedWater
	Water Balance                // the water added by weight, for ReducedStrength
}

// ProofedStrength returns the measurement of the true strength of the spirit, in % vol at 20 °C. It fails for readings
// that cannot be reckoned with.
//
// Source: alcoholometry.TrueStrength.
func ProofedStrength(p Proofing) (Measurement, error) {
	const fn = "uncertainty.ProofedStrength"
	m := Measurement{Name: "strength", Unit: "% vol", Inputs: []Measured{p.Hydrometer, p.Thermometer}}
	opt := alcoholometry.MarkedAt(p.MarkedAt)
	m.Model = func(x []float64) float64 { return trueStrength(x[0], temperature(x[1]), opt).ABV() }
	return m, m.check(fn)
}

// ProofedAlcohol returns the measurement of the pure alcohol in the spirit, in L at 20 °C. It fails for readings that
// cannot be reckoned with, and unless the amount is given either by dip or by weight.
//
// Source: alcoholometry.TrueStrength and Spirit.PureL.
func ProofedAlcohol(p Proofing) (Measurement, error) {
	ethanolKgM3 := density(strengthByMass(100), quantity.Temperature{})
	return p.withAmount("uncertainty.ProofedAlcohol", Measurement{Name: "pure alcohol", Unit: "L"},
		func(_ []float64, s alcoholometry.Strength, kg float64) float64 {
			return kg * s.ABW() / 100 / ethanolKgM3 * 1000
		})
}

// ProofedWater returns the measurement of the water that brings the spirit down to the strength To, in kg of true mass.
// It fails as ProofedAlcohol does, and if To is unset. The model has no answer for draws of a strength below To.
//
// Source: alcoholometry.TrueStrength; the water follows from the mass and the ethanol, which both add up.
func ProofedWater(p Proofing) (Measurement, error) {
	const fn = "uncertainty.ProofedWater"
	if err := alcoholometry.CheckSet(fn, "the strength to come down to (To)", p.To); err != nil {
		return Measurement{}, err
	}
	to := p.To.ABW()
	if to == 0 {
		return Measurement{}, fmt.Errorf("%s: no amount of water brings a spirit down to %v; give a strength above 0", fn, p.To)
	}
	return p.withAmount(fn, Measurement{Name: "water to add", Unit: "kg"},
		func(_ []float64, s alcoholometry.Strength, kg float64) float64 {
			if s.ABW() < to {
				panic(&quantity.RangeError{Func: fn, Param: "the spirit's strength", Value: s.ABV(), Min: p.To.ABV(), Max: 100, Unit: "% vol", Source: "water only brings it down"})
			}
			return kg * (s.ABW()/to - 1)
		})
}

// ReducedStrength returns the measurement of the strength that the spirit has after the water that Water shows was added,
// in % vol at 20 °C. It fails as ProofedAlcohol does.
//
// Source: alcoholometry.TrueStrength; the masses and the ethanol add up.
func ReducedStrength(p Proofing) (Measurement, error) {
	p.Water.Name = name(p.Water.Name, "water balance")
	m := Measurement{Name: "strength after reduction", Unit: "% vol", Inputs: []Measured{p.Water}}
	return p.withAmount("uncertainty.ReducedStrength", m,
		func(x []float64, s alcoholometry.Strength, kg float64) float64 {
			added := massInAir(x[3], alcoholometry.Water, quantity.Temperature{})
			return strengthByMass(kg * s.ABW() / (kg + added)).ABV()
		})
}

// withAmount puts hydrometer, thermometer and amount in front of the inputs of m and builds the model from what follows
// of strength and mass (true, kg).
func (p Proofing) withAmount(fn string, m Measurement, of func(x []float64, s alcoholometry.Strength, kg float64) float64) (Measurement, error) {
	dip, weight := p.Tank != (TankDip{}), p.Balance != (Balance{})
	if dip == weight {
		return Measurement{}, fmt.Errorf("%s: the amount must be given by the Tank's dip or by the Balance, one of the two", fn)
	}
	var amount Measured = p.Tank
	if weight {
		amount = p.Balance
	}
	m.Inputs = append([]Measured{p.Hydrometer, p.Thermometer, amount}, m.Inputs...)
	opt := alcoholometry.MarkedAt(p.MarkedAt)
	m.Model = func(x []float64) float64 {
		t := temperature(x[1])
		s := trueStrength(x[0], t, opt)
		if weight {
			return of(x, s, massInAir(x[2], s, t))
		}
		return of(x, s, x[2]/1000*density(s, t))
	}
	return m, m.check(fn)
}

// check returns what is wrong with the inputs, under the name of the function given.
func (m Measurement) check(function string) error {
	_, err := m.resolve(function)
	return err
}

// The math of the trade refuses by returning an error; inside a model it must be a panic with that error.

func must[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

func temperature(c float64) quantity.Temperature { return must(quantity.Celsius(c)) }

func trueStrength(readingABV float64, t quantity.Temperature, opt alcoholometry.Option) alcoholometry.Strength {
	return must(alcoholometry.TrueStrength(readingABV, t, opt))
}

func strengthByMass(pct float64) alcoholometry.Strength { return must(alcoholometry.ABW(pct)) }

func density(s alcoholometry.Strength, t quantity.Temperature) float64 {
	return must(alcoholometry.DensityKgM3(s, t))
}

func massInAir(shownKg float64, s alcoholometry.Strength, t quantity.Temperature) float64 {
	return must(alcoholometry.MassFromBalanceKg(shownKg, s, t))
}
