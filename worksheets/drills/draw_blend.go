package drills

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/worksheets/drills/walltable"
)

// drawBlend asks for the strength of a blend, or for its volume.
func drawBlend(c chance) draft {
	at := c.place()
	strong, weak := c.between(62, 84, from(c, 1, 0.5)), c.between(18, 46, from(c, 1, 0.5))
	strongL, weakL := c.between(60, 600, 10), c.between(60, 600, 10)
	both := must(mixing.Blend(
		alcoholometry.Spirit{VolumeL: strongL, Strength: abv(strong)},
		alcoholometry.Spirit{VolumeL: weakL, Strength: abv(weak)}))
	totalKg := both.MassKg()
	text := from(c,
		fmt.Sprintf("At %s %v L of %s of %v %% vol and %v L of the after-run of %v %% vol go into the %s together. Both are at 20 °C.", at.house, strongL, at.spirit, strong, weakL, weak, at.vessel),
		fmt.Sprintf("The %s at %s holds %v L of %s of %v %% vol. A second lot is pumped to it: %v L of %v %% vol. Strengths and volumes are at 20 °C.", at.vessel, at.house, weakL, at.spirit, weak, strongL, strong))
	// byMass is what both questions begin with.
	byMass := func(s *slate) (kg, pct written) {
		weight1 := s.look("What 1000 L of the strong lot weigh", walltable.Weight, strong, 0)
		weight2 := s.look("What 1000 L of the weak lot weigh", walltable.Weight, weak, 0)
		kg1 := s.reckon("Mass of the strong lot", "kg", 1, strongL*weight1.x/1000, "%v × %v ÷ 1000", given(strongL), weight1)
		kg2 := s.reckon("Mass of the weak lot", "kg", 1, weakL*weight2.x/1000, "%v × %v ÷ 1000", given(weakL), weight2)
		pct1 := s.look("Per cent by mass of the strong lot", walltable.Mass, strong, 0)
		pct2 := s.look("Per cent by mass of the weak lot", walltable.Mass, weak, 0)
		kg = s.reckon("Mass of the blend", "kg", 1, kg1.x+kg2.x, "%v + %v", kg1, kg2)
		pct = s.reckon("Per cent by mass of the blend", "% mass", 2, (kg1.x*pct1.x+kg2.x*pct2.x)/kg.x, "(%v × %v + %v × %v) ÷ %v", kg1, pct1, kg2, pct2, kg)
		return kg, pct
	}
	strength := both.Strength.ABV()
	back := func(s *slate, pct written, decimals int) written {
		return s.lookBack("Find the strength by volume that has it", walltable.Mass, pct, 0, strength, "% vol", decimals)
	}
	if from(c, true, false) {
		return draft{
			text: text, question: "What is the strength of the blend at 20 °C, in per cent by volume?",
			unit: "% vol", decimals: 1, answer: strength, least: 0.1,
			solve: func(s *slate) float64 {
				_, pct := byMass(s)
				return back(s, pct, 2).x
			},
			wrong: []Mistake{
				mistake(averaged, (strong+weak)/2),
				mistake(massForVolume, both.Strength.ABW()),
				mistake(volumesAdded, (strongL*strong+weakL*weak)/(strongL+weakL)),
			},
		}
	}
	return draft{
		text: text, question: "How many litres of blend are there, at 20 °C?",
		unit: "L", decimals: 1, answer: both.VolumeL, least: 0.001 * both.VolumeL,
		solve: func(s *slate) float64 {
			kg, pct := byMass(s)
			blend := back(s, pct, 1)
			weight := s.look("What 1000 L of the blend weigh", walltable.Weight, blend.x, 0)
			return s.reckon("Litres of the blend", "L", 1, kg.x/weight.x*1000, "%v ÷ %v × 1000", kg, weight).x
		},
		wrong: []Mistake{
			mistake(contraction, strongL+weakL),
			mistake(kgForLitres, totalKg),
		},
	}
}
