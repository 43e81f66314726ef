package sheet

import (
	"swanneck/mathlib/uncertainty"
)

// Hydrometer is a reading of an alcoholometer with its tolerance and its division, both rectangular.
type Hydrometer = uncertainty.Hydrometer

// ProofHydrometer is a reading of a hydrometer marked in US proof with its tolerance and its division, both rectangular.
type ProofHydrometer = uncertainty.ProofHydrometer

// Thermometer is a reading of a thermometer with its tolerance and its division, both rectangular.
type Thermometer = uncertainty.Thermometer

// DensityMeter is a reading of an oscillating U-tube with its tolerance, its last digit and its repeatability.
type DensityMeter = uncertainty.DensityMeter

// Balance is a reading of a balance with its tolerance, its last digit and its repeatability.
type Balance = uncertainty.Balance

// TankDip is the volume that a tank's table gives for a dip, with the tolerances of the dip and of the table.
type TankDip = uncertainty.TankDip

// RepeatedReadings is a quantity that was read several times: the mean, as sure as the spread of the readings says.
type RepeatedReadings = uncertainty.Repeated

// Certificate is a value with the expanded uncertainty that a certificate gives for it.
type Certificate = uncertainty.Certificate

// MeasuredInput is any other reading with what may be wrong with it.
type MeasuredInput = uncertainty.Input

// ErrorPart is one thing that may be wrong with a reading; NormalError, RectangularError, TriangularError, StudentTError and
// CyclingError make one.
type ErrorPart = uncertainty.Part

// Measured is anything that stands for a reading with what may be wrong with it: an instrument or a MeasuredInput.
type Measured = uncertainty.Measured

// Measurement is a result with the readings it comes from and the function that works it out: x[0] is the first reading.
type Measurement = uncertainty.Measurement

// ErrorCorrelation says that the errors of two readings go together.
type ErrorCorrelation = uncertainty.Correlation

// ErrorBudget is how far a result may be off, cause by cause, and which instrument limits it.
type ErrorBudget = uncertainty.Budget

// RandomDraws is where a result lies if chance varies all readings as their tolerances allow.
type RandomDraws = uncertainty.Draws

// WaysAgree says whether the error budget is as good as the draws.
type WaysAgree = uncertainty.Agreement

// Proofing is a spirit measured with alcoholometer, thermometer, and dip or balance.
type Proofing = uncertainty.Proofing

// HowSure works out how far the result of a measurement may be off, taking the function as straight within the
// tolerances.
func HowSure(m Measurement) ErrorBudget {
	v, err := uncertainty.FirstOrder(m)
	return must("HowSure", v, err)
}

// HowSureSecondOrder returns the standard uncertainty of the result, in its unit, with the next terms of the series: much
// more than HowSure's means that the function is curved, and MonteCarlo tells better.
func HowSureSecondOrder(m Measurement) float64 {
	v, err := uncertainty.SecondOrderStandard(m)
	return must("HowSureSecondOrder", v, err)
}

// MonteCarlo lets chance vary all readings, as often as draws says, from 1000 to 10 000 000, and says where the results
// lie. The same seed gives the same draws.
func MonteCarlo(m Measurement, draws int, seed uint64) RandomDraws {
	v, err := uncertainty.MonteCarlo(m, draws, seed)
	return must("MonteCarlo", v, err)
}

// CompareWays tells whether an error budget agrees with the draws to 1 or 2 significant digits of the uncertainty.
func CompareWays(b ErrorBudget, d RandomDraws, digits int) WaysAgree {
	v, err := uncertainty.Compare(b, d, digits)
	return must("CompareWays", v, err)
}

// NormalError is an error spread normally, of the given standard uncertainty, in the unit of the reading.
func NormalError(standard float64) ErrorPart { return uncertainty.Normal(standard) }

// RectangularError is an error anywhere within half either way, in the unit of the reading: half/√3.
func RectangularError(half float64) ErrorPart { return uncertainty.Rectangular(half) }

// TriangularError is an error within half either way and likelier small, in the unit of the reading: half/√6.
func TriangularError(half float64) ErrorPart { return uncertainty.Triangular(half) }

// StudentTError is an error whose standard uncertainty, in the unit of the reading, was estimated with so many degrees of
// freedom, one less than there were readings.
func StudentTError(standard float64, degrees int) ErrorPart {
	return uncertainty.StudentT(standard, degrees)
}

// CyclingError is an error that swings half either way, in the unit of the reading, as under a thermostat: half/√2.
func CyclingError(half float64) ErrorPart { return uncertainty.Cycling(half) }

// ProofedStrength is the measurement of a spirit's true strength, % vol.
func ProofedStrength(p Proofing) Measurement {
	v, err := uncertainty.ProofedStrength(p)
	return must("ProofedStrength", v, err)
}

// ProofedAlcohol is the measurement of the pure alcohol in a spirit, L at 20 °C.
func ProofedAlcohol(p Proofing) Measurement {
	v, err := uncertainty.ProofedAlcohol(p)
	return must("ProofedAlcohol", v, err)
}

// ProofedWater is the measurement of the water that brings a spirit down to the strength To, kg.
func ProofedWater(p Proofing) Measurement {
	v, err := uncertainty.ProofedWater(p)
	return must("ProofedWater", v, err)
}

// ReducedStrength is the measurement of the strength that a spirit has after the weighed Water was added, % vol.
func ReducedStrength(p Proofing) Measurement {
	v, err := uncertainty.ReducedStrength(p)
	return must("ReducedStrength", v, err)
}
