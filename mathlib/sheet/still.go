package sheet

import (
	"swanneck/mathlib/quantity"
	"swanneck/mathlib/still"
)

// Batch is a charge and the still it goes into. Give Pot and where it ends (Until, UntilPot or Stop); all else unset is a
// plain pot still under one atmosphere.
type Batch = still.Batch

// Congener is a compound that comes along in traces: its Name, and its Amount in the charge or its MassG.
type Congener = still.Congener

// Phase is a part of a run with a reflux of its own, for the Plan of a Batch.
type Phase = still.Phase

// Thumper is a second vessel that the pot's vapour bubbles through.
type Thumper = still.Thumper

// LiveSteam is steam blown into the pot.
type LiveSteam = still.LiveSteam

// Heating is how a still is heated and cooled: with PowerKW there are times.
type Heating = still.Heating

// Parrot is the vessel in which the running spirit is read.
type Parrot = still.Parrot

// PartialCondenser says how a partial condenser gives back what it condenses: InEquilibrium or Differential.
type PartialCondenser = still.Returns

// The ways of a partial condenser: vapour and liquid leave together, or each drop falls back as it forms.
const (
	InEquilibrium = still.InEquilibrium
	Differential  = still.Differential
)

// Run is a batch as it was distilled: Distillate, Pot, Steps, Heat, Congeners; its methods make cuts and series for charts.
type Run = still.Run

// RunStep is a moment of a run.
type RunStep = still.Step

// HeatBalance says where the heat of a run went.
type HeatBalance = still.HeatBalance

// CongenerFate says where a congener of a run went.
type CongenerFate = still.Fate

// OwnEquilibrium is an equilibrium curve of one's own, in place of the model's.
type OwnEquilibrium = still.Equilibrium

// Distil reckons a batch from the cold charge to its end.
func Distil(b Batch) Run {
	v, err := still.Distil(b)
	return must("Distil", v, err)
}

// SmoothEquilibrium returns the smooth curve through the points with the mole fractions x in the liquid and y in the vapour.
func SmoothEquilibrium(x, y []float64) *OwnEquilibrium {
	v, err := still.SmoothEquilibrium(x, y)
	return must("SmoothEquilibrium", v, err)
}

// StraightEquilibrium returns the straight lines through the points with the mole fractions x in the liquid and y in the
// vapour.
func StraightEquilibrium(x, y []float64) *OwnEquilibrium {
	v, err := still.StraightEquilibrium(x, y)
	return must("StraightEquilibrium", v, err)
}

// Mark is a place in a run: where it ends, where the reflux changes, where a cut is made.
type Mark = still.Mark

// AtStart is where a run begins.
func AtStart() Mark { return still.AtStart() }

// AtEnd is where a run ends.
func AtEnd() Mark { return still.AtEnd() }

// AtStrength is where what runs falls to the strength s.
func AtStrength(s Strength) Mark { return still.AtStrength(s) }

// AtPotStrength is where the pot falls to the strength s.
func AtPotStrength(s Strength) Mark { return still.AtPotStrength(s) }

// AtVolume is where volumeL litres have been collected, at 20 °C in one vessel.
func AtVolume(volumeL float64) Mark { return still.AtVolume(volumeL) }

// AtHead is where the head rises to the temperature t.
func AtHead(t quantity.Temperature) Mark { return still.AtHead(t) }

// UnderLimit is where a compound in what runs falls under a limit.
func UnderLimit(name string, limit Concentration) Mark { return still.UnderLimit(name, limit) }

// OverLimit is where a compound in what runs rises over a limit.
func OverLimit(name string, limit Concentration) Mark { return still.OverLimit(name, limit) }
