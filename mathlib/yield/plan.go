package yield

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

// BotanicalAmount is what is needed of a botanical.
type BotanicalAmount struct {
	Name   string
	Kg     float64
	GBatch float64 // in each batch; the unit is g
}

// StagePlan is one stage of a plan. All volumes are at 20 °C.
type StagePlan struct {
	Stage      Stage
	ComesL     float64 // what the stage before gives on, L of pure alcohol
	ReturnedL  float64 // what comes back from what was set aside, L of pure alcohol
	InPureL    float64 // both together: what goes in, L of pure alcohol
	InL        float64 // the same as it goes in, L
	WaterKg    float64 // to bring down what comes, and in a reduction what is given on, kg
	LossL      float64 // L of pure alcohol
	AsideL     float64 // set aside, L of pure alcohol
	OutPureL   float64 // given on, L of pure alcohol
	OutL       float64 // the same, L
	Batches    int
	BatchL     float64 // in each batch, L as it goes in
	Days       float64 // batches and rest, days (the unit is the day)
	Botanicals []BotanicalAmount
}

// CostShare is a part of the cost.
type CostShare struct {
	What      string
	Money     float64 // in the unit of the currency
	PerBottle float64 // for a bottle, in the unit of the currency
	SharePct  float64 // of the whole cost, per cent
}

// Plan is a process with amounts: from so much of a base to so many bottles.
type Plan struct {
	Process   Process
	BaseL     float64 // of the base, L at 20 °C
	BasePureL float64 // in it, L of pure alcohol
	Stages    []StagePlan
	Bottles   int     // full bottles
	Exact     float64 // the same with the part of a bottle that is left over, dimensionless
	PureL     float64 // in the full bottles, L of pure alcohol
	AsideL    float64 // set aside in all stages and not gone back, L of pure alcohol
	LossL     float64 // lost in all stages, L of pure alcohol
	YieldPct  float64 // pure alcohol given on by the last stage over that of the base, per cent
	Days      float64 // one stage after the other, days (the unit is the day)
	Costs     []CostShare
	Cost      float64 // in the unit of the currency
	PerBottle float64 // for a full bottle, in the unit of the currency
}

// mostBottles keeps the count of bottles and batches a number that a computer counts exactly.
const mostBottles = 1e9

// FromBase returns the plan forward from so many litres of the base at 20 °C (baseL): what goes through each stage, the
// batches and days, the full bottles, and what they cost. What is set aside and comes back is reckoned as in steady work,
// where each batch gets back as much as it sets aside for the next. It fails for a process that cannot be: no strength,
// shares that leave nothing, a strength that rises without distilling, an end that is not the bottle's strength, costs
// without a currency; and for a baseL not above 0.
//
// Source: none; pure alcohol adds up. Water and volumes by mixing.Reduce and OIML R 22 (1975).
func FromBase(p Process, baseL float64) (Plan, error) {
	const fn = "yield.FromBase"
	if err := p.check(fn); err != nil {
		return Plan{}, err
	}
	if err := quantity.CheckRange(fn, "the volume of the "+p.BaseName, baseL, 0, math.Inf(1), "L", ""); err != nil {
		return Plan{}, err
	}
	if baseL == 0 {
		return Plan{}, fmt.Errorf("%s: the volume of the %s is 0 L; give one above 0 L", fn, p.BaseName)
	}
	return p.forward(fn, baseL)
}

// ForBottles returns the plan back from so many full bottles: how much of the base they take, and all the rest as FromBase
// gives it. It fails as FromBase does, and for no bottles.
//
// Source: as for FromBase.
func ForBottles(p Process, bottles int) (Plan, error) {
	const fn = "yield.ForBottles"
	if bottles < 1 || bottles > mostBottles {
		return Plan{}, fmt.Errorf("%s: %d bottles; give 1 or more, up to a thousand million", fn, bottles)
	}
	if err := p.check(fn); err != nil {
		return Plan{}, err
	}
	one, err := p.forward(fn, 1)
	if err != nil {
		return Plan{}, err
	}
	return p.forward(fn, float64(bottles)/one.Exact)
}

// forward works the plan out; everything but the count of batches and bottles is proportional to baseL.
func (p Process) forward(function string, baseL float64) (Plan, error) {
	base := alcoholometry.Spirit{VolumeL: baseL, Strength: p.Base}
	plan := Plan{Process: p, BaseL: baseL, BasePureL: base.PureL()}
	pureL, at := plan.BasePureL, p.Base
	for _, s := range p.Stages {
		sp, err := s.plan(function, pureL, at)
		if err != nil {
			return Plan{}, err
		}
		plan.Stages = append(plan.Stages, sp)
		plan.AsideL += sp.AsideL - sp.ReturnedL
		plan.LossL += sp.LossL
		plan.Days += sp.Days
		pureL, at = sp.OutPureL, s.Out
	}
	plan.YieldPct = 100 * pureL / plan.BasePureL
	last := plan.Stages[len(plan.Stages)-1]
	plan.Exact = last.OutL / p.BottleL
	if plan.Exact > mostBottles {
		return Plan{}, fmt.Errorf("%s: %.4g bottles; check the volumes of the %s and of a bottle", function, plan.Exact, p.BaseName)
	}
	plan.Bottles = int(math.Floor(plan.Exact * (1 + 1e-12))) // what was planned back from whole bottles gives them again
	plan.PureL = float64(plan.Bottles) * p.BottleL / last.OutL * pureL
	plan.cost(false)
	return plan, nil
}

// plan works out a stage to which so much pure alcohol comes at a strength.
func (s Stage) plan(function string, comesL float64, at alcoholometry.Strength) (StagePlan, error) {
	sp := StagePlan{Stage: s, ComesL: comesL}
	sp.InPureL = comesL / (1 - s.returned())
	sp.ReturnedL = sp.InPureL - comesL
	comes, err := holding(function, comesL, at)
	if err != nil {
		return StagePlan{}, err
	}
	if s.In.ABW() < at.ABW() {
		r, err := mixing.Reduce(comes, s.In)
		if err != nil {
			return StagePlan{}, as(function, err)
		}
		sp.WaterKg = r.WaterKg
	}
	in, err := holding(function, sp.InPureL, s.In)
	if err != nil {
		return StagePlan{}, err
	}
	sp.InL = in.VolumeL
	if s.Out.ABW() < s.In.ABW() && !s.Kind.distils() {
		r, err := mixing.Reduce(in, s.Out)
		if err != nil {
			return StagePlan{}, as(function, err)
		}
		sp.WaterKg += r.WaterKg
	}
	sp.LossL = sp.InPureL * s.lostShare()
	sp.AsideL = sp.InPureL * s.AsidePct / 100
	sp.OutPureL = sp.InPureL * s.outShare()
	out, err := holding(function, sp.OutPureL, s.Out)
	if err != nil {
		return StagePlan{}, err
	}
	sp.OutL = out.VolumeL
	n := 1.0
	if s.BatchL > 0 {
		n = math.Max(math.Ceil(sp.InL/s.BatchL-1e-9), 1)
	}
	if n > mostBottles {
		return StagePlan{}, fmt.Errorf("%s: %.4g batches of %s; check BatchL", function, n, s.Name)
	}
	sp.Batches, sp.BatchL = int(n), sp.InL/n
	sp.Days = math.Ceil(n/float64(s.AtOnce))*s.DaysPerBatch + s.RestDays
	for _, b := range s.Botanicals {
		sp.Botanicals = append(sp.Botanicals, BotanicalAmount{Name: b.Name, Kg: b.GPerL * sp.InL / 1000, GBatch: b.GPerL * sp.BatchL})
	}
	return sp, nil
}

// holding returns the spirit of a strength that holds so much pure alcohol.
func holding(function string, pureL float64, s alcoholometry.Strength) (alcoholometry.Spirit, error) {
	one := alcoholometry.Spirit{VolumeL: 1, Strength: s}
	if err := alcoholometry.CheckSpirit(function, one); err != nil {
		return alcoholometry.Spirit{}, err
	}
	one.VolumeL = pureL / one.PureL()
	return one, nil
}
