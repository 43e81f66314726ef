package sheet_test

import (
	"fmt"
	"strings"
	"testing"

	. "swanneck/mathlib/sheet"
)

func lots() BlendOrder {
	return BlendOrder{
		VolumeL: 300, Strength: ABV(43), Currency: "XTS",
		Lots: []BlendLot{
			{Name: "cask 7", Spirit: Spirit{VolumeL: 190, Strength: ABV(61)}, CostPerL: 11, Holds: map[string]Concentration{"esters": GHLPure(210)}},
			{Name: "cask 9", Spirit: Spirit{VolumeL: 175, Strength: ABV(58)}, CostPerL: 8, Holds: map[string]Concentration{"esters": GHLPure(80)}},
			{Name: "water", Spirit: Spirit{VolumeL: 500, Strength: Water}},
		},
		Limits: []BlendLimit{{Name: "esters", Least: GHLPure(120)}},
	}
}

func ExampleBlendLots() {
	fmt.Println(BlendLots(lots()))
	// Output: 65.07 L of cask 7 + 153.98 L of cask 9 + 83.39 L of water = 300.00 L at 43.00 % vol (20.0 °C); 1947.59 XTS
}

func ExampleWhatBlocks() {
	o := lots()
	o.Limits[0].Least = GHLPure(250)
	fmt.Println(WhatBlocks(o))
	// Output: no blend of these lots keeps all limits; this would do: esters at least 196.79 instead of 250.00 g/hL of pure alcohol
}

func bottling() Process {
	return Process{
		BaseName: "pear wine", Base: ABV(6.5), BasePerL: 0.6, BottleL: 0.5, Strength: ABV(42), Currency: "XTS", GoodsPerBottle: 1.5,
		Stages: []ProcessStage{
			{Kind: StrippingStage, Out: ABV(26), LossPct: 3, BatchL: 500, DaysPerBatch: 1, CostPerBatch: 60},
			{Kind: SpiritStage, Out: ABV(70), LossPct: 2, AsidePct: 18, ReturnPct: 75, BatchL: 400, DaysPerBatch: 1, CostPerBatch: 80},
			{Kind: ReductionStage, Out: ABV(42), LossPct: 0.3, RestDays: 14},
			{Kind: FillingStage, LossPct: 1.5, DaysPerBatch: 1},
		},
	}
}

func ExampleYieldOf() {
	fmt.Println(YieldOf(
		YieldPassage{Kind: StrippingStage, In: []Spirit{{VolumeL: 1500, Strength: ABV(6.5)}}, Out: []Spirit{{VolumeL: 362, Strength: ABV(26)}}},
		YieldPassage{Kind: SpiritStage, In: []Spirit{{VolumeL: 362, Strength: ABV(26)}}, Out: []Spirit{{VolumeL: 106, Strength: ABV(70)}}, Kept: []Spirit{{VolumeL: 40, Strength: ABV(42)}}},
	))
	// Output: 74.20 of 97.50 L of pure alcohol (76.10 %); kept 16.80, thrown away 0.000, lost 6.50, between stages 0.000 L; 1 findings
}

func ExampleUsualLoss() {
	fmt.Println(UsualLoss(ReductionStage))
	// Output: reduction: 0.1 to 0.5 % of the pure alcohol (common practice, no source): what stays in hoses and tanks
}

func ExamplePlanForBottles() {
	fmt.Println(PlanForBottles(bottling(), 600))
	// Output: 2200.3 L of pear wine at 6.50 % vol make 600 bottles of 0.5 L at 42.00 % vol; yield 88.10 %, 22 days; 4.47 XTS a bottle
}

func ExamplePlanFromBase() {
	fmt.Println(PlanFromBase(bottling(), 2000))
	// Output: 2000.0 L of pear wine at 6.50 % vol make 545 bottles of 0.5 L at 42.00 % vol; yield 88.10 %, 21 days; 4.44 XTS a bottle
}

func ExampleOneMorePerCent() {
	fmt.Println(OneMorePerCent(PlanForBottles(bottling(), 600)))
	// Output: worth most at spirit run: 1 % less lost makes 7.50 bottles more, or saves 27.16 L of base
}

func TestMixingAndYieldStopTheCell(t *testing.T) {
	for name, f := range map[string]func(){
		"PlanSteps":                func() { PlanSteps(StepOrder{}) },
		"ReplanSteps":              func() { ReplanSteps(StepPlan{}, TankReading{}) },
		"Strengthen":               func() { Strengthen(Spirit{}, ABV(40)) },
		"OnScales":                 func() { OnScales(-1, ABV(40), Temperature{}) },
		"DipL":                     func() { DipL(dips(), 601, Temperature{}) },
		"DipForMM":                 func() { DipForMM(dips(), 1, Temperature{}) },
		"DipSpirit":                func() { DipSpirit(dips(), 100, Strength{}, Temperature{}) },
		"CylinderL":                func() { CylinderL(Cylinder{}, 1) },
		"CylinderTable":            func() { CylinderTable(Cylinder{}, 1) },
		"MakeLiqueur":              func() { MakeLiqueur(Liqueur{}, LiqueurFrom{}) },
		"BlendLiqueurs":            func() { BlendLiqueurs() },
		"Sweeten":                  func() { Sweeten(Liqueur{}, 1) },
		"ReduceLiqueur":            func() { ReduceLiqueur(Liqueur{}, ABV(40)) },
		"LiqueurDensityKgM3":       func() { LiqueurDensityKgM3(Liqueur{}, Temperature{}) },
		"TrueStrengthWithExtract":  func() { TrueStrengthWithExtract(ExtractedSpirit{}) },
		"TrueStrengthByDistilling": func() { TrueStrengthByDistilling(DistilBack{}) },
		"ApparentStrength":         func() { ApparentStrength(Liqueur{}, Temperature{}) },
		"USObscured":               func() { USObscured(USSolids{ApparentProof: 300}) },
		"BlendLots":                func() { BlendLots(BlendOrder{}) },
		"WhatBlocks":               func() { WhatBlocks(BlendOrder{}) },
		"YieldOf":                  func() { YieldOf() },
		"UsualLoss":                func() { UsualLoss("magic") },
		"PlanForBottles":           func() { PlanForBottles(Process{}, 1) },
		"PlanFromBase":             func() { PlanFromBase(Process{}, 1) },
		"OneMorePerCent":           func() { OneMorePerCent(ProcessPlan{}) },
	} {
		func() {
			defer func() {
				s, ok := recover().(*Stop)
				if !ok || !strings.HasPrefix(s.Msg, name+": ") || strings.Contains(s.Msg, "mixing.") || strings.Contains(s.Msg, "yield.") || strings.Contains(s.Msg, "\n") {
					t.Errorf("%s stops with %v", name, s)
				}
			}()
			f()
		}()
	}
}
