package alcoholometry

import (
	"math"

	"swanneck/mathlib/quantity"
)

// Conventional values for weighing in air, kg/m³. Source: OIML D 28 (2004), conventional value of the result of
// weighing in air: air of 1.2 kg/m³, weights of 8000 kg/m³.
const (
	AirKgM3     = 1.2  // density of the air
	WeightsKgM3 = 8000 // density of the weights with which a balance is adjusted
)

// DensityInAirKgM3 returns what a litre weighs on a balance, as kg/m³, at t from -20 to 40 °C: the density in vacuum
// less the lift of the air. Some authorities ask for this figure. It fails as DensityKgM3 does.
//
// Source: OIML D 28 (2004): (ρ - 1.2)/(1 - 1.2/8000). At 20 °C the air is 1.2 kg/m³ within 5 % up to 300 m above the
// sea; a tenth less air moves the figure by 0.1 kg/m³.
func DensityInAirKgM3(s Strength, t quantity.Temperature) (float64, error) {
	const fn = "alcoholometry.DensityInAirKgM3"
	rho, err := densityFor(fn, s, t)
	if err != nil {
		return 0, err
	}
	return (rho - AirKgM3) / (1 - AirKgM3/WeightsKgM3), nil
}

// MassFromBalanceKg returns the true mass in kilograms of spirit of strength s at t for which a balance shows
// balanceKg: about 0.11 % more than shown. It fails as DensityKgM3 does, and for a negative balanceKg.
//
// Source: OIML D 28 (2004), air of 1.2 kg/m³ and weights of 8000 kg/m³.
func MassFromBalanceKg(balanceKg float64, s Strength, t quantity.Temperature) (float64, error) {
	lift, err := airLift("alcoholometry.MassFromBalanceKg", balanceKg, s, t)
	if err != nil {
		return 0, err
	}
	return balanceKg / lift, nil
}

// BalanceFromMassKg returns in kilograms what a balance shows for spirit of strength s at t whose true mass is massKg:
// about 0.11 % less. It fails as DensityKgM3 does, and for a negative massKg.
//
// Source: as for MassFromBalanceKg, of which it is the way back.
func BalanceFromMassKg(massKg float64, s Strength, t quantity.Temperature) (float64, error) {
	lift, err := airLift("alcoholometry.BalanceFromMassKg", massKg, s, t)
	if err != nil {
		return 0, err
	}
	return massKg * lift, nil
}

// airLift returns what a balance shows over the true mass, dimensionless.
func airLift(function string, kg float64, s Strength, t quantity.Temperature) (float64, error) {
	if err := quantity.CheckRange(function, "mass", kg, 0, math.Inf(1), "kg", ""); err != nil {
		return 0, err
	}
	rho, err := densityFor(function, s, t)
	if err != nil {
		return 0, err
	}
	return (1 - AirKgM3/rho) / (1 - AirKgM3/WeightsKgM3), nil
}
