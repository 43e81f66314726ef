package sheet

import (
	"swanneck/mathlib/sensory"
)

// TastingMethod is a way to ask tasters for a difference: Triangle, DuoTrio, Tetrad or Paired.
type TastingMethod = sensory.Method

// The ways to ask for a difference.
const (
	Triangle = sensory.Triangle // three glasses, two of one sample: which is the odd one?
	DuoTrio  = sensory.DuoTrio  // a reference and two glasses: which one is like the reference?
	Tetrad   = sensory.Tetrad   // four glasses, two of each sample: which two belong together?
	Paired   = sensory.Paired   // two glasses: which one has more of a named property?
)

// TastingAnswers are the right and the wrong answers of a panel; they must add up to the tasters.
type TastingAnswers = sensory.Answers

// DifferenceTest is what a test of difference tells, with d′ and its limits.
type DifferenceTest = sensory.DifferenceTest

// SimilarityTest is what a test of likeness tells.
type SimilarityTest = sensory.SimilarityTest

// TastingVotes are a panel's votes for one of two samples.
type TastingVotes = sensory.Votes

// PreferenceTest is what votes for one of two samples tell.
type PreferenceTest = sensory.PreferenceTest

// PanelFor says what a panel is to find: a DPrime, or a share of tellers.
type PanelFor = sensory.PanelFor

// TastingPanel is how many tasters a difference takes.
type TastingPanel = sensory.Panel

// TastingRanking is how a panel put samples in order.
type TastingRanking = sensory.Ranking

// RankingTest is what a ranking tells.
type RankingTest = sensory.RankingTest

// TastingSample is a spirit to be tasted: its name and its strength as served.
type TastingSample = sensory.Sample

// ServingFor says what is to be served to whom.
type ServingFor = sensory.ServingFor

// ServingPlan is who gets what, in which order and under which code, with the dose of alcohol.
type ServingPlan = sensory.ServingPlan

// MixtureDesign is which blends to make for a mixture trial.
type MixtureDesign = sensory.MixtureDesign

// ShareLimits says within which limits the share of an ingredient may lie, as parts of 1.
type ShareLimits = sensory.ShareLimits

// MixtureModel is how much bending a fitted surface is allowed.
type MixtureModel = sensory.MixtureModel

// The models of a mixture trial.
const (
	MixtureLinear       = sensory.MixtureLinear       // each ingredient adds its own
	MixtureQuadratic    = sensory.MixtureQuadratic    // and each pair something of its own
	MixtureSpecialCubic = sensory.MixtureSpecialCubic // and each three
)

// MixtureTrial is what a panel said of the blends of a trial.
type MixtureTrial = sensory.MixtureTrial

// MixtureFit is a surface fitted to a mixture trial.
type MixtureFit = sensory.MixtureFit

// BlendPrediction is the score that a fitted surface gives a blend.
type BlendPrediction = sensory.Prediction

// BestBlend is the blend with the highest score on a fitted surface, and how much that means.
type BestBlend = sensory.BestBlend

// TrianglePoint is a blend of three ingredients on the triangle, with its score.
type TrianglePoint = sensory.TrianglePoint

// TrianglePlace is where a blend of three ingredients lies on the triangle.
type TrianglePlace = sensory.TrianglePlace

// ContourLine is a line along which a fitted surface has one score.
type ContourLine = sensory.ContourLine

// JudgeDifference tells whether a panel's answers show a difference between two samples, and how large it is.
func JudgeDifference(a TastingAnswers) DifferenceTest {
	v, err := sensory.Difference(a)
	return must("JudgeDifference", v, err)
}

// JudgeSimilarity tells whether a panel's answers show that no more than TellerPct of people tell two samples apart.
func JudgeSimilarity(a TastingAnswers) SimilarityTest {
	v, err := sensory.Similar(a)
	return must("JudgeSimilarity", v, err)
}

// JudgePreference tells whether a panel prefers one of two samples.
func JudgePreference(votes TastingVotes) PreferenceTest {
	v, err := sensory.Preference(votes)
	return must("JudgePreference", v, err)
}

// JudgeRanking tells whether a panel's rankings show differences among the samples, and between which.
func JudgeRanking(r TastingRanking) RankingTest {
	v, err := sensory.RankTest(r)
	return must("JudgeRanking", v, err)
}

// RightAnswersNeeded returns the fewest right answers with which a panel shows a difference, if a false alarm may come with
// the chance levelPct, in per cent.
func RightAnswersNeeded(m TastingMethod, tasters int, levelPct float64) int {
	v, err := sensory.RightNeeded(m, tasters, levelPct)
	return must("RightAnswersNeeded", v, err)
}

// DPrimeOf returns the d′ at which sharePct per cent of the answers are expected to be right, dimensionless.
func DPrimeOf(m TastingMethod, sharePct float64) float64 {
	v, err := sensory.DPrimeOf(m, sharePct)
	return must("DPrimeOf", v, err)
}

// RightAnswersPct returns how many of the answers are expected to be right at a d′, in per cent.
func RightAnswersPct(m TastingMethod, dPrime float64) float64 {
	v, err := sensory.RightPct(m, dPrime)
	return must("RightAnswersPct", v, err)
}

// PanelSize returns how many tasters it takes to find a difference with the wanted power.
func PanelSize(f PanelFor) TastingPanel {
	v, err := sensory.PanelSize(f)
	return must("PanelSize", v, err)
}

// PanelPowerPct returns the chance, in per cent, that a panel of so many tasters finds a difference.
func PanelPowerPct(f PanelFor, tasters int) float64 {
	v, err := sensory.Power(f, tasters)
	return must("PanelPowerPct", v, err)
}

// PlanDifference plans the serving of a test of difference between two samples, coded and balanced.
func PlanDifference(m TastingMethod, f ServingFor) ServingPlan {
	v, err := sensory.PlanDifference(m, f)
	return must("PlanDifference", v, err)
}

// PlanRanking plans the serving of a ranking of two to twelve samples, coded and balanced.
func PlanRanking(f ServingFor) ServingPlan {
	v, err := sensory.PlanRanking(f)
	return must("PlanRanking", v, err)
}

// MarkAnswers compares the tasters' answers, each a code, with a plan's key.
func MarkAnswers(p ServingPlan, answers []string) TastingAnswers {
	v, err := sensory.Mark(p, answers)
	return must("MarkAnswers", v, err)
}

// CountVotes counts which sample of a paired comparison each taster chose; "-" is undecided.
func CountVotes(p ServingPlan, answers []string) TastingVotes {
	v, err := sensory.CountVotes(p, answers)
	return must("CountVotes", v, err)
}

// RanksFrom turns the answers of a ranking, all codes in order with = between level ones, into ranks.
func RanksFrom(p ServingPlan, answers []string) TastingRanking {
	v, err := sensory.RanksFrom(p, answers)
	return must("RanksFrom", v, err)
}

// SimplexLattice returns all blends of the ingredients in whole multiples of 1/degree.
func SimplexLattice(ingredients []string, degree int) MixtureDesign {
	v, err := sensory.SimplexLattice(ingredients, degree)
	return must("SimplexLattice", v, err)
}

// SimplexCentroid returns the blends of equal shares of every choice of the ingredients.
func SimplexCentroid(ingredients []string) MixtureDesign {
	v, err := sensory.SimplexCentroid(ingredients)
	return must("SimplexCentroid", v, err)
}

// ExtremeVertices returns the blends for a trial within limits: corners, edges, faces and the middle.
func ExtremeVertices(limits ...ShareLimits) MixtureDesign {
	v, err := sensory.ExtremeVertices(limits)
	return must("ExtremeVertices", v, err)
}

// InRandomOrder returns a design with every blend times times over, in random order.
func InRandomOrder(d MixtureDesign, times int, seed uint64) MixtureDesign {
	v, err := sensory.InRandomOrder(d, times, seed)
	return must("InRandomOrder", v, err)
}

// FitMixture fits a surface to the scores of a mixture trial.
func FitMixture(trial MixtureTrial) MixtureFit {
	v, err := sensory.FitMixture(trial)
	return must("FitMixture", v, err)
}

// PredictBlend returns the mean score that a fitted surface gives a blend, with its interval.
func PredictBlend(f MixtureFit, shares ...float64) BlendPrediction {
	v, err := sensory.Predict(f, shares)
	return must("PredictBlend", v, err)
}

// FindBestBlend returns the blend with the highest score on a fitted surface, among all or within limits.
func FindBestBlend(f MixtureFit, limits ...ShareLimits) BestBlend {
	v, err := sensory.FindBestBlend(f, limits...)
	return must("FindBestBlend", v, err)
}

// BetterThanPct returns how sure the tasting is that the best blend scores higher than another, in per cent.
func BetterThanPct(b BestBlend, shares ...float64) float64 {
	v, err := sensory.BetterThanPct(b, shares)
	return must("BetterThanPct", v, err)
}

// TriangleGrid returns the scores of a fitted surface of three ingredients on a lattice with steps spaces on each side.
func TriangleGrid(f MixtureFit, steps int) []TrianglePoint {
	v, err := sensory.TriangleGrid(f, steps)
	return must("TriangleGrid", v, err)
}

// TriangleContours returns the lines along which a fitted surface of three ingredients has the scores given.
func TriangleContours(f MixtureFit, scores []float64, steps int) []ContourLine {
	v, err := sensory.TriangleContours(f, scores, steps)
	return must("TriangleContours", v, err)
}

// PlaceOnTriangle returns where a blend of three ingredients lies on the triangle of a contour picture.
func PlaceOnTriangle(shares ...float64) TrianglePlace {
	v, err := sensory.PlaceOnTriangle(shares)
	return must("PlaceOnTriangle", v, err)
}
