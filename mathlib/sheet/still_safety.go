package sheet

import (
	"swanneck/mathlib/still"
)

// VapourLeak is spirit that gets into the air of a room as vapour.
type VapourLeak = still.Leak

// Ventilation is the air that a leak needs.
type Ventilation = still.Ventilation

// VentilationFor returns the air that keeps the vapour of a leak under a share of its lower flammable limit.
func VentilationFor(l VapourLeak) Ventilation {
	v, err := still.VentilationFor(l)
	return must("VentilationFor", v, err)
}

// FlammableVapour says between which shares of the air a vapour burns.
type FlammableVapour = still.Flammable

// FlammableLimits returns the published limits of ethanol's and methanol's vapour.
func FlammableLimits() []FlammableVapour { return still.FlammableLimits() }

// MethanolLimit is the most methanol that a published rule allows in a kind of spirit.
type MethanolLimit = still.MethanolLimit

// MethanolVerdict says how methanol in a spirit stands to a published limit.
type MethanolVerdict = still.MethanolVerdict

// MethanolLimits returns the published limits for methanol that are known here.
func MethanolLimits() []MethanolLimit { return still.MethanolLimits() }

// CheckMethanol holds methanol in a spirit of strength s against a limit by its name; measured says that the concentration is
// an analysis and no reckoning.
func CheckMethanol(c Concentration, s Strength, limit string, measured bool) MethanolVerdict {
	v, err := still.CheckMethanol(c, s, limit, measured)
	return must("CheckMethanol", v, err)
}

// StillHazard is a danger in figures, with what to do about it.
type StillHazard = still.Hazard

// BlockedOutlet returns how the pressure rises in a boiling still whose way out is blocked while powerKW goes on heating it
// for so many minutes.
func BlockedOutlet(pot Spirit, p Pressure, powerKW, minutes float64) StillHazard {
	v, err := still.BlockedOutlet(pot, p, powerKW, minutes)
	return must("BlockedOutlet", v, err)
}

// ClosedHotPot returns the suction in a pot that is closed while hot, once it has cooled to the temperature to.
func ClosedHotPot(charge Strength, p Pressure, to Temperature) StillHazard {
	v, err := still.ClosedHotPot(charge, p, to)
	return must("ClosedHotPot", v, err)
}

// RoomForBoiling returns how much room a charge leaves in a pot of potL litres once it is hot; foams says that it foams.
func RoomForBoiling(charge Spirit, potL float64, foams bool) StillHazard {
	v, err := still.RoomForBoiling(charge, potL, foams)
	return must("RoomForBoiling", v, err)
}

// HeaterCover returns whether a heater that coverL litres cover stays covered to the end of a run.
func HeaterCover(r Run, coverL float64) StillHazard {
	v, err := still.HeaterCover(r, coverL)
	return must("HeaterCover", v, err)
}
