package sheet

import (
	"swanneck/mathlib/mixing"
)

// StepOrder says how a spirit is to be brought down slowly: in steps, with days of rest between.
type StepOrder = mixing.StepOrder

// WaterStep is one addition of water of a slow reduction.
type WaterStep = mixing.WaterStep

// StepPlan is a slow reduction, day by day.
type StepPlan = mixing.StepPlan

// TankReading is what was found in the tank after a rest.
type TankReading = mixing.TankReading

// Strengthening is a tank that was brought down too far and is raised again.
type Strengthening = mixing.Strengthening

// DipTable is the table of a tank: so many litres at such a dip.
type DipTable = mixing.DipTable

// Cylinder is a standing or lying tank with flat ends.
type Cylinder = mixing.Cylinder

// PlanSteps returns the dated steps of a slow reduction, with the water for each as weighed and as measured, and what the
// alcoholometer will show.
func PlanSteps(o StepOrder) StepPlan {
	v, err := mixing.PlanSteps(o)
	return must("PlanSteps", v, err)
}

// ReplanSteps returns the steps that are left from what was read in the tank.
func ReplanSteps(p StepPlan, r TankReading) StepPlan {
	v, err := mixing.ReplanSteps(p, r)
	return must("ReplanSteps", v, err)
}

// Strengthen returns how much of the spirits at hand brings a tank up to the strength to; they are used in the order given.
func Strengthen(tank Spirit, to Strength, with ...Spirit) Strengthening {
	v, err := mixing.Strengthen(tank, to, with...)
	return must("Strengthen", v, err)
}

// OnScales returns the spirit of strength s at t for which scales show scaleKg.
func OnScales(scaleKg float64, s Strength, t Temperature) Spirit {
	v, err := mixing.OnScales(scaleKg, s, t)
	return must("OnScales", v, err)
}

// DipL returns the litres in a tank at t whose dip is dipMM millimetres.
func DipL(table DipTable, dipMM float64, t Temperature) float64 {
	v, err := mixing.DipL(table, dipMM, t)
	return must("DipL", v, err)
}

// DipForMM returns the dip in millimetres (a length; the unit is mm) at which a tank at t holds volumeL litres.
func DipForMM(table DipTable, volumeL float64, t Temperature) float64 {
	v, err := mixing.DipForMM(table, volumeL, t)
	return must("DipForMM", v, err)
}

// DipSpirit returns the spirit of strength s in a tank at t whose dip is dipMM millimetres.
func DipSpirit(table DipTable, dipMM float64, s Strength, t Temperature) Spirit {
	v, err := mixing.DipSpirit(table, dipMM, s, t)
	return must("DipSpirit", v, err)
}

// CylinderL returns the litres in a cylinder when the liquid stands dipMM millimetres high.
func CylinderL(c Cylinder, dipMM float64) float64 {
	v, err := mixing.CylinderL(c, dipMM)
	return must("CylinderL", v, err)
}

// CylinderTable returns the dip table of a cylinder with a row for each stepMM millimetres.
func CylinderTable(c Cylinder, stepMM float64) DipTable {
	v, err := mixing.CylinderTable(c, stepMM)
	return must("CylinderTable", v, err)
}
