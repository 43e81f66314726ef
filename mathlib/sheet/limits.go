package sheet

import "swanneck/mathlib/limits"

// LimitCase is a product to be held against the rules of a jurisdiction.
type LimitCase = limits.Case

// LimitReport is a product held against every rule there is for it, with cautions.
type LimitReport = limits.Report

// LimitLine is one rule held against the product.
type LimitLine = limits.Line

// LimitFinding is how much of a substance a product holds, and what that rests on.
type LimitFinding = limits.Finding

// LimitAnswer is under, within, over, or cannot tell: measure.
type LimitAnswer = limits.Answer

// PublishedLimit is one published limit with its source.
type PublishedLimit = limits.Limit

// PlantCaution is a word of warning for a plant.
type PlantCaution = limits.Caution

// The four answers.
const (
	AnswerUnder      = limits.Under
	AnswerWithin     = limits.Within
	AnswerOver       = limits.Over
	AnswerCannotTell = limits.CannotTell
)

// CheckLimits holds a product against the published limits of a jurisdiction. No legal advice: check the current text; the local
// authority decides.
func CheckLimits(c LimitCase) LimitReport {
	v, err := limits.Check(c)
	return must("CheckLimits", v, err)
}

// FoundByAnalysis is the result of an analysis of this product.
func FoundByAnalysis(substance string, c Concentration) LimitFinding {
	return limits.Measured(substance, c)
}

// FoundBetween is the result of an analysis of this product with its uncertainty, from low to high.
func FoundBetween(substance string, low, high Concentration) LimitFinding {
	return limits.MeasuredBetween(substance, low, high)
}

// NotDetected is an analysis of this product that found nothing down to its limit of detection.
func NotDetected(substance string, detection Concentration) LimitFinding {
	return limits.NotDetected(substance, detection)
}

// FoundAtMost is an upper bound from an analysed oil or plant and a mass balance: all of it comes over.
func FoundAtMost(substance string, most Concentration) LimitFinding {
	return limits.Analysed(substance, most)
}

// FoundInPrint is a range reckoned from figures of books: it can show that a product is over, never that it is within.
func FoundInPrint(substance string, low, high Concentration) LimitFinding {
	return limits.Printed(substance, low, high)
}

// NotMeasured says that a substance is to be expected and nobody has measured it.
func NotMeasured(substance string) LimitFinding { return limits.Unknown(substance) }

// PublishedLimits returns the published limits of a jurisdiction.
func PublishedLimits(jurisdiction string) []PublishedLimit {
	v, err := limits.Limits(jurisdiction)
	return must("PublishedLimits", v, err)
}

// LimitScopes returns what a LimitCase may name as a scope in a jurisdiction.
func LimitScopes(jurisdiction string) []string {
	v, err := limits.Scopes(jurisdiction)
	return must("LimitScopes", v, err)
}

// LimitJurisdictions returns the jurisdictions that are known.
func LimitJurisdictions() []string { return limits.Jurisdictions() }

// SpiritCategories returns the categories of the European Union that are known here.
func SpiritCategories() []string { return limits.Categories() }

// PlantCautions returns a caution for each plant; the list is short and from memory.
func PlantCautions(plants ...string) []PlantCaution {
	v, err := limits.Cautions(plants...)
	return must("PlantCautions", v, err)
}
