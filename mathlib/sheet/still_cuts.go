package sheet

import (
	"swanneck/mathlib/still"
)

// Cut is what came over between two places of a run.
type Cut = still.Cut

// CutContent is how much of a compound a cut holds.
type CutContent = still.Content

// CutLimits says what the hearts are to keep to.
type CutLimits = still.CutLimits

// CongenerLimit is how much of a compound there may be in what runs.
type CongenerLimit = still.CongenerLimit

// CutSuggestion is a run parted by limits: a starting point for the nose, not a rule.
type CutSuggestion = still.Suggestion

// CutHelp says whether cutting a run can lower a compound.
type CutHelp = still.Parting

// SuggestCuts parts a run by limits: a starting point for the nose, not a rule.
func SuggestCuts(r Run, limits CutLimits) CutSuggestion {
	v, err := still.SuggestCuts(r, limits)
	return must("SuggestCuts", v, err)
}

// FeintsPlan says where the cuts are made and how much of heads and tails goes into the next run.
type FeintsPlan = still.FeintsPlan

// FeintsCycle is the run that repeats itself when feints go back from run to run.
type FeintsCycle = still.Cycle

// SteadyFeints returns the run that repeats itself when a share of heads and tails goes back on top of the same fresh charge.
func SteadyFeints(b Batch, plan FeintsPlan) FeintsCycle {
	v, err := still.SteadyFeints(b, plan)
	return must("SteadyFeints", v, err)
}

// Jar is one of the vessels in which a small run was collected, as it was measured.
type Jar = still.Jar

// DensityBottle is a small bottle weighed empty, with water and with spirit.
type DensityBottle = still.DensityBottle

// JarBlend is what several jars come to together.
type JarBlend = still.Blended

// CombineJars returns what comes of putting jars together, by mass.
func CombineJars(jars ...Jar) JarBlend {
	v, err := still.CombineJars(jars...)
	return must("CombineJars", v, err)
}

// BottleStrength returns the strength of the spirit in a density bottle.
func BottleStrength(b DensityBottle) Strength {
	v, err := b.Strength()
	return must("BottleStrength", v, err)
}
