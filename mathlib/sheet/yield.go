package sheet

import (
	"swanneck/mathlib/yield"
)

// StageKind says what a stage does: StrippingStage, SpiritStage, BotanicalStage, MacerationStage, StorageStage,
// ReductionStage, FiltrationStage or FillingStage.
type StageKind = yield.Kind

// LossRange is what a stage may be expected to lose.
type LossRange = yield.LossRange

// YieldPassage is one stage as it was measured: what went in and what came of it.
type YieldPassage = yield.Passage

// YieldStage is the pure alcohol of a stage.
type YieldStage = yield.StageAccount

// YieldAccount is the pure alcohol of all stages, with what is out of the ordinary.
type YieldAccount = yield.Account

// Process is the way from a base to bottles.
type Process = yield.Process

// ProcessStage is one stage of a process as it is planned.
type ProcessStage = yield.Stage

// ProcessBotanical goes into a charge.
type ProcessBotanical = yield.Botanical

// ProcessPlan is a process with amounts: from so much of a base to so many bottles.
type ProcessPlan = yield.Plan

// PlannedStage is one stage of a plan.
type PlannedStage = yield.StagePlan

// CostShare is a part of the cost.
type CostShare = yield.CostShare

// YieldGain is what less loss at one stage is worth.
type YieldGain = yield.Gain

// YieldGains is what less loss is worth at every stage of a plan.
type YieldGains = yield.Gains

// The stages from the wash to the bottle.
const (
	StrippingStage  = yield.StrippingRun
	SpiritStage     = yield.SpiritRun
	BotanicalStage  = yield.BotanicalRun // distilling over herbs, berries, fruit
	MacerationStage = yield.Maceration
	StorageStage    = yield.Storage
	ReductionStage  = yield.Reduction
	FiltrationStage = yield.Filtration
	FillingStage    = yield.Filling
)

// YieldOf adds up the pure alcohol of the stages in their order and names what is out of the ordinary.
func YieldOf(passages ...YieldPassage) YieldAccount {
	v, err := yield.AccountOf(passages...)
	return must("YieldOf", v, err)
}

// UsualLoss returns what a stage may be expected to lose: common practice, without a source.
func UsualLoss(kind StageKind) LossRange {
	v, err := yield.UsualLoss(kind)
	return must("UsualLoss", v, err)
}

// PlanForBottles returns the plan back from so many bottles to the base, with botanicals, batches, days and costs.
func PlanForBottles(p Process, bottles int) ProcessPlan {
	v, err := yield.ForBottles(p, bottles)
	return must("PlanForBottles", v, err)
}

// PlanFromBase returns the plan forward from baseL litres of the base to bottles.
func PlanFromBase(p Process, baseL float64) ProcessPlan {
	v, err := yield.FromBase(p, baseL)
	return must("PlanFromBase", v, err)
}

// OneMorePerCent returns what one more per cent of the alcohol is worth at each stage of a plan.
func OneMorePerCent(p ProcessPlan) YieldGains {
	v, err := yield.OneMorePerCent(p)
	return must("OneMorePerCent", v, err)
}
