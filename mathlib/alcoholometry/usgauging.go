package alcoholometry

import (
	"math"

	"swanneck/mathlib/quantity"
)

// waterLbPerGallon is the weight in air of a United States gallon of water at 60 °F, lb. Source: 27 CFR 21.161.
const waterLbPerGallon = 8.32823

// The functions in this file give by physics what the tables of 27 CFR part 30 print. Weights agree within 0.012 %,
// because the tables rest on older densities: ethanol of 0.79389 at 60/60 °F, where it is 0.79382 here. For a return
// use the printed tables and the rounding rules that go with them, which round at every step.

// ProofGallons returns the United States proof gallons in a spirit: gallons at 60 °F times US proof over 100. It fails
// with an *UnsetError, or with a *quantity.RangeError for a negative volume or a temperature out of range.
//
// Source: 27 CFR 19.1, "proof gallon".
func ProofGallons(spirit Spirit) (float64, error) {
	if err := CheckSpirit("alcoholometry.ProofGallons", spirit); err != nil {
		return 0, err
	}
	kg := spirit.MassKg()
	w := spirit.Strength.w
	rho := isothermUS.rho(w)
	return quantity.LToUSGallons(kg/rho*1000) * (200 * w * rho / ethanolUSKgM3) / 100, nil
}

// USGravityInAir returns the specific gravity in air at 60 °F over water at 60 °F, dimensionless, as in Table 6 of 27
// CFR part 30, with air of 1.2 kg/m³. It fails with an *UnsetError.
func USGravityInAir(s Strength) (float64, error) {
	if err := CheckSet("alcoholometry.USGravityInAir", "the strength", s); err != nil {
		return 0, err
	}
	return gravityInAir(s.w), nil
}

func gravityInAir(w float64) float64 {
	return (isothermUS.rho(w) - AirKgM3) / (isothermUS[0] - AirKgM3)
}

// USGravityInVacuum returns the specific gravity in vacuum at 60 °F over water at 60 °F, dimensionless, as in Table 6
// of 27 CFR part 30. It fails with an *UnsetError.
func USGravityInVacuum(s Strength) (float64, error) {
	if err := CheckSet("alcoholometry.USGravityInVacuum", "the strength", s); err != nil {
		return 0, err
	}
	return isothermUS.rho(s.w) / isothermUS[0], nil
}

// USPoundsPerWineGallon returns the weight in air of a United States gallon of spirit at 60 °F, in pounds, as in Table
// 5 of 27 CFR part 30. It fails with an *UnsetError.
//
// Source: 27 CFR 30.66: 8.32823 lb times the specific gravity in air.
func USPoundsPerWineGallon(s Strength) (float64, error) {
	if err := CheckSet("alcoholometry.USPoundsPerWineGallon", "the strength", s); err != nil {
		return 0, err
	}
	return waterLbPerGallon * gravityInAir(s.w), nil
}

// USWineGallonsPerPound returns the United States gallons at 60 °F in a pound of spirit weighed in air, as in Table 4
// of 27 CFR part 30. It fails with an *UnsetError.
//
// Source: as for USPoundsPerWineGallon.
func USWineGallonsPerPound(s Strength) (float64, error) {
	if err := CheckSet("alcoholometry.USWineGallonsPerPound", "the strength", s); err != nil {
		return 0, err
	}
	return 1 / (waterLbPerGallon * gravityInAir(s.w)), nil
}

// USProofGallonsPerPound returns the United States proof gallons in a pound of spirit weighed in air, as in Table 4 of
// 27 CFR part 30. It fails with an *UnsetError.
//
// Source: as for USPoundsPerWineGallon.
func USProofGallonsPerPound(s Strength) (float64, error) {
	if err := CheckSet("alcoholometry.USProofGallonsPerPound", "the strength", s); err != nil {
		return 0, err
	}
	return s.USProof() / 100 / (waterLbPerGallon * gravityInAir(s.w)), nil
}

// USPoundsPerProofGallon returns the weight in air of a United States proof gallon of spirit, in pounds, as in Table 5
// of 27 CFR part 30. It fails with an *UnsetError, and with a *quantity.RangeError below 0.1 proof, where a proof
// gallon would weigh more than the tables reach.
//
// Source: as for USPoundsPerWineGallon.
func USPoundsPerProofGallon(s Strength) (float64, error) {
	const fn = "alcoholometry.USPoundsPerProofGallon"
	if err := CheckSet(fn, "the strength", s); err != nil {
		return 0, err
	}
	proof := s.USProof()
	if err := quantity.CheckRange(fn, "strength", proof, 0.1, math.Inf(1), "US proof", ""); err != nil {
		return 0, err
	}
	return waterLbPerGallon * gravityInAir(s.w) / (proof / 100), nil
}

// USWaterParts returns the gallons of water that were needed with US proof/2 gallons of ethanol to make 100 gallons
// of spirit at 60 °F, as in Table 6 of 27 CFR part 30: 53.73 at 100 proof, because the mixture contracts. It fails
// with an *UnsetError.
//
// Source: OIML R 22 (1975), general formula at 60 °F. Agrees with Table 6 within 0.02 gal.
func USWaterParts(s Strength) (float64, error) {
	if err := CheckSet("alcoholometry.USWaterParts", "the strength", s); err != nil {
		return 0, err
	}
	return 100 * isothermUS.rho(s.w) * (1 - s.w) / isothermUS[0], nil
}

// USVolumeFactor returns what a volume of spirit measured at t, from -20 to 40 °C, is multiplied by to give its volume
// at 60 °F, dimensionless, as in Table 7 of 27 CFR part 30. It fails as DensityKgM3 does.
//
// Source: OIML R 22 (1975), general formula. Agrees with Table 7 within 0.0006.
func USVolumeFactor(s Strength, t quantity.Temperature) (float64, error) {
	rho, err := densityFor("alcoholometry.USVolumeFactor", s, t)
	if err != nil {
		return 0, err
	}
	return rho / isothermUS.rho(s.w), nil
}

// USRoundTenth rounds degrees of proof or gallons as the gauging rules of the United States do: to the nearest tenth,
// with a half going up. The value and the result are in the same unit, or dimensionless.
//
// Source: 27 CFR part 30, its directions for the use of the tables.
func USRoundTenth(value float64) float64 {
	// Twelve digits first, so that 0.25, 76.65 and the like count as a half although no float64 is exactly that.
	return math.Floor(math.Round(value*1e9)/1e8+0.5) / 10
}
