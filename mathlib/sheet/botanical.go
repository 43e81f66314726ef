package sheet

import (
	"swanneck/mathlib/botanical"
)

// Recipe is a list of plants with their amounts to a litre of pure alcohol or of charge.
type Recipe = botanical.Recipe

// Botanical is a plant of a recipe; Herb makes one with the printed figures filled in.
type Botanical = botanical.Botanical

// Plant is what is printed of a plant, or recalled.
type Plant = botanical.Plant

// OilContent is how much essential oil a plant holds; its Unit and Basis must be stated.
type OilContent = botanical.OilContent

// OilMarker is a compound of an essential oil and its share.
type OilMarker = botanical.Marker

// Range is what a figure lies in; Exactly and Between make one.
type Range = botanical.Range

// Estimated is a figure with what is known of its range, one-sided where that is all.
type Estimated = botanical.Estimate

// HerbCharge is a recipe in a spirit: masses, oil, markers, and what the plants do to the liquid.
type HerbCharge = botanical.Charge

// ScaledRecipe is a recipe carried from one charge to another.
type ScaledRecipe = botanical.Scaled

// MarkerTrace is a compound that a charge brings into the pot.
type MarkerTrace = botanical.Trace

// HerbCut is a cut of a run for CarryMarkers.
type HerbCut = botanical.Cut

// MarkerPassage says what a run does with a compound.
type MarkerPassage = botanical.Passage

// MarkerMoment is a moment of a run for one compound.
type MarkerMoment = botanical.Moment

// MarkerCarryOver is where the markers of a charge went in a run.
type MarkerCarryOver = botanical.CarryOver

// CutProfile is the predicted aroma composition of a cut.
type CutProfile = botanical.CutProfile

// MeasuredMarker is what an analysis found of a compound in a cut.
type MeasuredMarker = botanical.Measured

// TrialComparison is two trials side by side.
type TrialComparison = botanical.Comparison

// MarkerProfile is what a spirit holds of its markers.
type MarkerProfile = botanical.Profile

// MarkerAmount is how much of a compound a spirit holds.
type MarkerAmount = botanical.Amount

// TargetBlend is a blend of several distillates that comes near a target.
type TargetBlend = botanical.Blend

// SteepSeries is what somebody read while a plant was steeped.
type SteepSeries = botanical.Series

// SteepModel is a law of extraction: FirstOrder, WashedFirst, WashingAndDiffusion, Peleg or FickSphere.
type SteepModel = botanical.Model

// SteepFit is a law fitted to a series.
type SteepFit = botanical.Steep

// SteepFits is every law that goes through a series, the best first.
type SteepFits = botanical.Steeps

// SteepConditions are those under which an answer is wanted, where they are not the ones of the series.
type SteepConditions = botanical.Conditions

// SteepLaw is a law of extraction with its numbers.
type SteepLaw = botanical.Uptake

// UsualSteep is what a maceration reaches where nobody has read a series: spans and no figures.
type UsualSteep = botanical.Usual

// SpentHerb is a plant as it was weighed wet after steeping or after a run.
type SpentHerb = botanical.Spent

// HeldBack is what a spent plant holds back.
type HeldBack = botanical.Held

// PotRoomUsed is how much of a pot or another vessel a charge takes up.
type PotRoomUsed = botanical.Room

// OilLayer is the oil that stood on a spirit after it was diluted and salted.
type OilLayer = botanical.OilLayer

// What the grams of a recipe are counted on.
const (
	PerPureL   = botanical.PerPureL   // a litre of pure alcohol in the charge; the usual case
	PerChargeL = botanical.PerChargeL // a litre of charge at 20 °C
)

// What is done with a plant.
const (
	OnTheHerb = botanical.OnTheHerb // it lies in the pot during the run; the usual case
	Strained  = botanical.Strained  // it is steeped and taken out; what drips off is distilled
	Infused   = botanical.Infused   // it is steeped and taken out, and nothing is distilled after that
	Basket    = botanical.Basket    // it hangs in the vapour
)

// How a wet plant is freed of liquid.
const (
	WrungByHand = botanical.WrungByHand // the usual case
	Drained     = botanical.Drained
	Pressed     = botanical.Pressed
)

// The units of oil contents.
const (
	OilMLPerKg = botanical.OilMLPerKg
	OilPctVW   = botanical.OilPctVW   // millilitres in 100 g
	OilPctMass = botanical.OilPctMass // grams in 100 g
	OilGPerKg  = botanical.OilGPerKg
)

// What an oil content is counted on.
const (
	Anhydrous = botanical.Anhydrous // the plant without any water
	Dried     = botanical.Dried     // the dried drug as it is weighed
	AsWeighed = botanical.AsWeighed // the plant as it was weighed, fresh or dried
)

// The laws of extraction.
const (
	FirstOrder          = botanical.FirstOrder
	WashedFirst         = botanical.WashedFirst
	WashingAndDiffusion = botanical.WashingAndDiffusion
	Peleg               = botanical.Peleg
	FickSphere          = botanical.FickSphere
)

// Exactly returns the range of a figure that is known, in the unit of what it stands for.
func Exactly(x float64) Range { return botanical.Exactly(x) }

// RangeOf returns the range from low to high, both in the unit of what it stands for.
func RangeOf(low, high float64) Range { return botanical.Between(low, high) }

// Herb returns gPerL grams of a plant to each litre as the recipe counts them, with the printed figures filled in.
func Herb(plant string, gPerL float64) Botanical {
	v, err := botanical.Herb(plant, gPerL)
	return must("Herb", v, err)
}

// FindPlant returns what is printed of the plant of a name or of one of its usual synonyms.
func FindPlant(name string) Plant {
	v, err := botanical.Find(name)
	return must("FindPlant", v, err)
}

// PlantNames returns the names of the plants there are, sorted.
func PlantNames() []string { return botanical.PlantNames() }

// OilPerKg returns the grams of oil in a kilogram of a plant as weighed, with moisturePct per cent of water in it (0 if
// nobody knows).
func OilPerKg(o OilContent, moisturePct float64) Range {
	v, err := o.GPerKg(moisturePct)
	return must("OilPerKg", v, err)
}

// GPerPureL returns the grams to a litre of pure alcohol that massG grams in a charge are.
func GPerPureL(massG float64, charge Spirit) float64 {
	v, err := botanical.GPerPureL(massG, charge)
	return must("GPerPureL", v, err)
}

// GPerChargeL returns the grams to a litre of charge that massG grams in it are.
func GPerChargeL(massG float64, charge Spirit) float64 {
	v, err := botanical.GPerChargeL(massG, charge)
	return must("GPerChargeL", v, err)
}

// ChargeHerbs puts a recipe into a spirit.
func ChargeHerbs(r Recipe, spirit Spirit) HerbCharge {
	v, err := botanical.NewCharge(r, spirit)
	return must("ChargeHerbs", v, err)
}

// ScaleRecipe carries a recipe from a charge to another, say from the bench to the still.
func ScaleRecipe(r Recipe, from, to Spirit) ScaledRecipe {
	v, err := botanical.Scale(r, from, to)
	return must("ScaleRecipe", v, err)
}

// PotRoom returns how high a charge stands in a pot of potL litres.
func PotRoom(c HerbCharge, potL float64) PotRoomUsed {
	v, err := botanical.RoomFor(c, potL)
	return must("PotRoom", v, err)
}

// SteepRoom returns how high plants and liquid stand in a vessel of vesselL litres while they are steeped.
func SteepRoom(c HerbCharge, vesselL float64) PotRoomUsed {
	v, err := botanical.RoomToSteep(c, vesselL)
	return must("SteepRoom", v, err)
}

// SpentHerbs returns the liquid that a spent plant holds back and the alcohol in it, by weighing.
func SpentHerbs(s SpentHerb) HeldBack {
	v, err := botanical.SpentHerbs(s)
	return must("SpentHerbs", v, err)
}

// SaltedOut returns the oil in a litre of spirit, g/L, at least.
func SaltedOut(o OilLayer) Estimated {
	v, err := botanical.SaltedOut(o)
	return must("SaltedOut", v, err)
}

// AssayedOil returns the oil content of a lot of which herbG grams gave layerML millilitres of oil, read to plusMinusML.
func AssayedOil(layerML, plusMinusML, herbG float64) OilContent {
	v, err := botanical.AssayedOil(layerML, plusMinusML, herbG)
	return must("AssayedOil", v, err)
}

// DryExtract returns what is dissolved in a liquid of which ofML millilitres left weighedG grams when dried.
func DryExtract(weighedG, ofML float64) Concentration {
	v, err := botanical.DryExtract(weighedG, ofML)
	return must("DryExtract", v, err)
}

// MoistureFromReadings returns the water in a plant, per cent, from the strength before and after herbG grams were steeped.
func MoistureFromReadings(before Spirit, herbG float64, after Strength) float64 {
	v, err := botanical.MoistureFromReadings(before, herbG, after)
	return must("MoistureFromReadings", v, err)
}

// CarryMarkers spreads the markers of a charge over the cuts of a run.
func CarryMarkers(c HerbCharge, cuts []HerbCut, passages []MarkerPassage) MarkerCarryOver {
	v, err := botanical.Carry(c, cuts, passages)
	return must("CarryMarkers", v, err)
}

// CarryMarkersBetween is CarryMarkers for a run reckoned with the least and with the most that the charge may hold.
func CarryMarkersBetween(c HerbCharge, cuts []HerbCut, least, most []MarkerPassage) MarkerCarryOver {
	v, err := botanical.CarryBetween(c, cuts, least, most)
	return must("CarryMarkersBetween", v, err)
}

// CalibrateMarkers returns the carry-over with each measured compound as measured.
func CalibrateMarkers(o MarkerCarryOver, measured ...MeasuredMarker) MarkerCarryOver {
	v, err := botanical.Calibrate(o, measured...)
	return must("CalibrateMarkers", v, err)
}

// CompareTrials sets a trial beside an older one.
func CompareTrials(older, newer MarkerCarryOver) TrialComparison {
	v, err := botanical.Compare(older, newer)
	return must("CompareTrials", v, err)
}

// BlendToTarget blends spirits to volumeL litres that come as near as can be to a target.
func BlendToTarget(target MarkerProfile, volumeL float64, spirits ...MarkerProfile) TargetBlend {
	v, err := botanical.MatchTarget(target, volumeL, spirits...)
	return must("BlendToTarget", v, err)
}

// FitSteep fits a law to a series.
func FitSteep(s SteepSeries, m SteepModel) SteepFit {
	v, err := botanical.FitSteep(s, m)
	return must("FitSteep", v, err)
}

// FitSteeps fits every law to a series.
func FitSteeps(s SteepSeries) SteepFits {
	v, err := botanical.FitSteeps(s)
	return must("FitSteeps", v, err)
}

// SteepAfter returns the reading after so many hours under other conditions than those of the series.
func SteepAfter(f SteepFit, hours float64, c SteepConditions) Estimated {
	v, err := botanical.AfterAt(f, hours, c)
	return must("SteepAfter", v, err)
}

// SteepReached returns what has come out after so many hours under other conditions, per cent of the end.
func SteepReached(f SteepFit, hours float64, c SteepConditions) Estimated {
	v, err := botanical.ReachedAt(f, hours, c)
	return must("SteepReached", v, err)
}

// SteepBetween returns the reading after so many hours at a strength between those of two fitted series.
func SteepBetween(a, b SteepFit, hours float64, s Strength) Estimated {
	v, err := botanical.BetweenStrengths(a, b, hours, s)
	return must("SteepBetween", v, err)
}

// SteepActivation returns the activation energy, kJ/mol, of two fits at two temperatures.
func SteepActivation(a, b SteepFit) Estimated {
	v, err := botanical.ActivationEnergy(a, b)
	return must("SteepActivation", v, err)
}

// UsualReach returns between what a maceration of whole herb is thought to reach in so many hours; grainMM is the size across
// of a piece of plant in mm, or 0.
func UsualReach(hours float64, s Strength, t Temperature, grainMM float64) UsualSteep {
	v, err := botanical.UsualReach(hours, s, t, grainMM)
	return must("UsualReach", v, err)
}

// PelegLaw returns the law of Peleg's two constants, K1 in hours to the unit of the readings and K2 in one over that unit.
func PelegLaw(k1, k2 float64) SteepLaw {
	v, err := botanical.FromPeleg(k1, k2)
	return must("PelegLaw", v, err)
}

// SphereShare returns the share, dimensionless, that has left a sphere by diffusion at tau = D t/R², dimensionless.
func SphereShare(tau float64) float64 {
	v, err := botanical.SphereShare(tau)
	return must("SphereShare", v, err)
}
