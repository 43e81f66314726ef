package sheet

import (
	"swanneck/mathlib/packing"
)

// Bottle is a bottle to be filled: its nominal volume, what is filled beyond it, the spirit's strength and temperature, and
// the weight of the empty bottle.
type Bottle = packing.Bottle

// BottleFilling is what goes into a bottle, by volume at the temperature of filling and by weight.
type BottleFilling = packing.Filling

// BottleWeighing is a filled bottle on the balance.
type BottleWeighing = packing.Weighing

// ClosedBottle is a filled bottle that will be closed and stored warm.
type ClosedBottle = packing.Closed

// HeadSpace is the room above the spirit in a closed bottle.
type HeadSpace = packing.HeadSpace

// FillingRun is a filling run from one tank.
type FillingRun = packing.Run

// FilledBottles is what a tank fills.
type FilledBottles = packing.Bottles

// FillTarget is the average at which a filler must be set.
type FillTarget = packing.FillTarget

// SamplingPlan says how many bottles are drawn and how many defective ones decide.
type SamplingPlan = packing.Plan

// SamplingStage is a sample of a plan.
type SamplingStage = packing.Stage

// SamplingOutcome is how a plan decides on the average.
type SamplingOutcome = packing.Outcome

// BatchCheck is the reference test of a batch of bottles.
type BatchCheck = packing.Check

// BatchVerdict is what the reference test says of a batch.
type BatchVerdict = packing.Verdict

// USFill is how bottles are filled, by the rules of the United States.
type USFill = packing.USFill

// BottleSizes is a list of nominal volumes that a law allows for spirits.
type BottleSizes = packing.Sizes

// BottleSize says whether a nominal volume is one of a list.
type BottleSize = packing.Size

// LabelRule is how far the strength may be from the one on the label.
type LabelRule = packing.LabelRule

// StrengthLabel is a measured strength against the one on the label.
type StrengthLabel = packing.Label

// LabelChance is the chance that the strength is within the tolerance of the label.
type LabelChance = packing.LabelChance

// FillBottle returns what has to go into a bottle, by volume and by weight.
func FillBottle(b Bottle) BottleFilling {
	v, err := packing.FillBottle(b)
	return must("FillBottle", v, err)
}

// BottleContentsL returns the contents of a weighed bottle in litres, at 20 °C unless it says otherwise.
func BottleContentsL(w BottleWeighing) float64 {
	v, err := packing.ContentsL(w)
	return must("BottleContentsL", v, err)
}

// HeadSpaceOf returns the room above the spirit when the bottle is closed and when it is warm.
func HeadSpaceOf(c ClosedBottle) HeadSpace {
	v, err := packing.HeadSpaceOf(c)
	return must("HeadSpaceOf", v, err)
}

// BottlesFrom returns how many bottles a tank fills at its temperature.
func BottlesFrom(r FillingRun) FilledBottles {
	v, err := packing.BottlesFrom(r)
	return must("BottlesFrom", v, err)
}

// TolerableErrorML returns the tolerable negative error of a nominal volume nominalL, in millilitres (Directive 76/211/EEC).
func TolerableErrorML(nominalL float64) float64 {
	v, err := packing.TolerableErrorML(nominalL)
	return must("TolerableErrorML", v, err)
}

// FillTargetFor returns the least average fill for a filler with the standard deviation spreadML.
func FillTargetFor(nominalL, spreadML float64) FillTarget {
	v, err := packing.FillTargetFor(nominalL, spreadML)
	return must("FillTargetFor", v, err)
}

// SinglePlan returns the single sampling plan for a batch of so many bottles, which are not opened.
func SinglePlan(batch int) SamplingPlan {
	v, err := packing.SinglePlan(batch)
	return must("SinglePlan", v, err)
}

// DoublePlan returns the double sampling plan for a batch of so many bottles, which are not opened.
func DoublePlan(batch int) SamplingPlan {
	v, err := packing.DoublePlan(batch)
	return must("DoublePlan", v, err)
}

// DestructivePlan returns the plan for a check that opens the bottles.
func DestructivePlan(batch int) SamplingPlan {
	v, err := packing.DestructivePlan(batch)
	return must("DestructivePlan", v, err)
}

// AQLPlan returns the single plan for a lot and an acceptable quality level in per cent defective (normal inspection, level
// II).
func AQLPlan(lot int, levelPct float64) SamplingPlan {
	v, err := packing.AQLPlan(lot, levelPct)
	return must("AQLPlan", v, err)
}

// AcceptChance returns the chance, dimensionless, that a plan accepts what comes of a process with this share defective.
func AcceptChance(p SamplingPlan, defective float64) float64 {
	v, err := packing.AcceptChance(p, defective)
	return must("AcceptChance", v, err)
}

// AcceptChanceOfBatch returns the chance, dimensionless, that a plan accepts a batch with so many defective bottles.
func AcceptChanceOfBatch(p SamplingPlan, batch, defective int) float64 {
	v, err := packing.AcceptChanceOfBatch(p, batch, defective)
	return must("AcceptChanceOfBatch", v, err)
}

// PlanOutcome returns the chance of acceptance and the bottles drawn on the average.
func PlanOutcome(p SamplingPlan, defective float64) SamplingOutcome {
	v, err := packing.PlanOutcome(p, defective)
	return must("PlanOutcome", v, err)
}

// QualityAt returns the share defective, dimensionless, that a plan accepts with the chance given.
func QualityAt(p SamplingPlan, chance float64) float64 {
	v, err := packing.QualityAt(p, chance)
	return must("QualityAt", v, err)
}

// MeanFactor returns the factor k of the test of the mean of n contents, dimensionless.
func MeanFactor(n int) float64 {
	v, err := packing.MeanFactor(n)
	return must("MeanFactor", v, err)
}

// CheckBatch runs the reference test of the directive on measured contents.
func CheckBatch(c BatchCheck) BatchVerdict {
	v, err := packing.CheckBatch(c)
	return must("CheckBatch", v, err)
}

// USFillTolerancePct returns by how much the contents may differ from the label's volume in the United States, per cent of
// it.
func USFillTolerancePct(nominalL float64) float64 {
	v, err := packing.USFillTolerancePct(nominalL)
	return must("USFillTolerancePct", v, err)
}

// CheckUSFill compares measured contents with the label's volume by the rules of the United States.
func CheckUSFill(nominalL float64, contentsML []float64) USFill {
	v, err := packing.CheckUSFill(nominalL, contentsML)
	return must("CheckUSFill", v, err)
}

// EUSizes returns the nominal volumes for spirits in the European Union.
func EUSizes() BottleSizes { return packing.EUSizes() }

// USSizes returns the standards of fill for spirits in the United States.
func USSizes() BottleSizes { return packing.USSizes() }

// CheckBottleSize says whether a nominal volume is allowed by a list; one that is not gets a warning.
func CheckBottleSize(nominalL float64, list BottleSizes) BottleSize {
	v, err := packing.CheckSize(nominalL, list)
	return must("CheckBottleSize", v, err)
}

// EULabel returns the tolerance of the strength of spirits in the European Union.
func EULabel() LabelRule { return packing.EULabel() }

// EUMaceratedLabel returns the tolerance for drinks with macerated fruit or parts of plants in them.
func EUMaceratedLabel() LabelRule { return packing.EUMaceratedLabel() }

// USLabel returns the tolerance of the strength of spirits in the United States.
func USLabel() LabelRule {
	v, err := packing.USLabel()
	return must("USLabel", v, err)
}

// LabelChanceOf returns the chance that the true strength is within the tolerance of the label.
func LabelChanceOf(l StrengthLabel) LabelChance {
	v, err := packing.LabelChanceOf(l)
	return must("LabelChanceOf", v, err)
}
