package drills

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/worksheets/drills/walltable"
)

// Bringing spirit down with water.

func drawReduction(c chance) draft {
	at := c.place()
	volumeL, strong, weak := c.tankL(), c.between(55, 85, from(c, 1, 1, 0.5)), c.bottling()
	r := must(mixing.Reduce(alcoholometry.Spirit{VolumeL: volumeL, Strength: abv(strong)}, abv(weak)))
	return draft{
		text: from(c,
			fmt.Sprintf("%v L of %s of %v %% vol are in the %s at %s. They are to come down to %v %% vol. Strengths and volumes are at 20 °C.", volumeL, at.spirit, strong, at.vessel, at.house, weak),
			fmt.Sprintf("At %s the scales are away for verification, so the water is measured by the litre. The %s holds %v L of %s of %v %% vol, wanted are %v %% vol; everything is at 20 °C.", at.house, at.vessel, volumeL, at.spirit, strong, weak)),
		question: "How many litres of water go in?",
		unit:     "L", decimals: 1, answer: r.WaterL, least: 0.003 * r.WaterL,
		solve: func(s *slate) float64 {
			hundred := s.look("Water to 100 L", walltable.Water, strong, weak)
			return s.reckon("Water to the lot", "L", 1, volumeL/100*hundred.x, "%v × %v ÷ 100", given(volumeL), hundred).x
		},
		wrong: []Mistake{
			mistake(volumesAdded, volumeL*(strong/weak-1)),
			mistake(massForVolume, volumeL*(abv(strong).ABW()/abv(weak).ABW()-1)),
			spare(finishedNotWater, r.Result.VolumeL),
			spare(perHundred, 100*r.WaterL/volumeL),
		},
	}
}

func drawWater(c chance) draft {
	at := c.place()
	volumeL, strong, weak, t := c.tankL(), c.between(55, 85, from(c, 1, 1, 0.5)), c.bottling(), c.warmOrCold()
	r := must(mixing.Reduce(alcoholometry.Spirit{VolumeL: volumeL, Strength: abv(strong), Temp: celsius(t)}, abv(weak)))
	strongABW, weakABW := abv(strong).ABW(), abv(weak).ABW()
	at20 := volumeL * toLitres20(strong, t)
	return draft{
		text: from(c,
			fmt.Sprintf("The %s at %s holds %v L of %s at %v °C. Its true strength is %v %% vol (at 20 °C). It is to come down to %v %% vol, and the water stands on the scales.", at.vessel, at.house, volumeL, at.spirit, t, strong, weak),
			fmt.Sprintf("%v L of %s, measured at %v °C, lie in the %s at %s at a true strength of %v %% vol. Tomorrow they are to be %v %% vol.", volumeL, at.spirit, t, at.vessel, at.house, strong, weak)),
		question: "How many kilograms of water go in?",
		unit:     "kg", decimals: 1, answer: r.WaterKg, least: 0.002 * r.WaterKg,
		solve: func(s *slate) float64 {
			factor := s.look("Factor to 20 °C", walltable.Litres, strong, t)
			litres := s.reckon("Litres at 20 °C", "L", 1, volumeL*factor.x, "%v × %v", given(volumeL), factor)
			weight := s.look("What 1000 L weigh", walltable.Weight, strong, 0)
			kg := s.reckon("Mass of the spirit", "kg", 1, litres.x*weight.x/1000, "%v × %v ÷ 1000", litres, weight)
			before := s.look("Per cent by mass before", walltable.Mass, strong, 0)
			after := s.look("Per cent by mass after", walltable.Mass, weak, 0)
			return s.reckon("Water", "kg", 1, kg.x*(before.x-after.x)/after.x, "%v × (%v − %v) ÷ %v", kg, before, after, after).x
		},
		wrong: []Mistake{
			mistake(volumesAdded, at20*(strong/weak-1)*kgOf1000L(0)/1000),
			mistake(volumeForMass, r.SpiritKg*(strong/weak-1)),
			mistake(litresForKg, at20*(strongABW/weakABW-1)),
			spare(notCorrected, r.WaterKg*volumeL/at20),
			spare(wrongDirection, r.WaterKg*(volumeL/at20)*(volumeL/at20)),
		},
	}
}

func drawMake(c chance) draft {
	at := c.place()
	wantedL, strong, weak := c.between(100, 1200, 50), c.between(60, 92, from(c, 1, 0.5)), c.bottling()
	if from(c, true, false) {
		return makeWater(at, wantedL, strong, weak)
	}
	return makeSpirit(at, wantedL, strong, weak, c.warmOrCold())
}

// makeWater asks for the water in a wanted volume.
func makeWater(at place, wantedL, strong, weak float64) draft {
	r := must(mixing.Make(alcoholometry.Spirit{VolumeL: wantedL, Strength: abv(weak)}, abv(strong)))
	strongABW, weakABW := abv(strong).ABW(), abv(weak).ABW()
	totalKg := r.SpiritKg + r.WaterKg
	return draft{
		text:     fmt.Sprintf("%s wants %v L of %s of %v %% vol at 20 °C. It is made of spirit of %v %% vol, and both spirit and water are weighed in.", at.house, wantedL, at.spirit, weak, strong),
		question: "How many kilograms of water go in?",
		unit:     "kg", decimals: 1, answer: r.WaterKg, least: 0.002 * r.WaterKg,
		solve: func(s *slate) float64 {
			weight := s.look("What 1000 L of the finished spirit weigh", walltable.Weight, weak, 0)
			kg := s.reckon("Mass of the finished spirit", "kg", 1, wantedL*weight.x/1000, "%v × %v ÷ 1000", given(wantedL), weight)
			before := s.look("Per cent by mass of the strong spirit", walltable.Mass, strong, 0)
			after := s.look("Per cent by mass of the finished one", walltable.Mass, weak, 0)
			spirit := s.reckon("Strong spirit to weigh in", "kg", 1, kg.x*after.x/before.x, "%v × %v ÷ %v", kg, after, before)
			return s.reckon("Water", "kg", 1, kg.x-spirit.x, "%v − %v", kg, spirit).x
		},
		wrong: []Mistake{
			mistake(volumesAdded, wantedL*(1-weak/strong)*kgOf1000L(0)/1000),
			mistake(volumeForMass, totalKg*(1-weak/strong)),
			spare(litresForKg, wantedL*(1-weakABW/strongABW)),
		},
	}
}

// makeSpirit asks for the spirit in a wanted volume, at the temperature at which it stands.
func makeSpirit(at place, wantedL, strong, weak, t float64) draft {
	r := must(mixing.Make(alcoholometry.Spirit{VolumeL: wantedL, Strength: abv(weak)}, abv(strong), mixing.SpiritAt(celsius(t))))
	at20 := wantedL * weak / strong
	factor := toLitres20(strong, t)
	return draft{
		text:     fmt.Sprintf("%s wants %v L of %s of %v %% vol at 20 °C. It is made of spirit with a true strength of %v %% vol, which stands at %v °C and is pumped over through a meter.", at.house, wantedL, at.spirit, weak, strong, t),
		question: "How many litres must the meter show, at the spirit's own temperature?",
		unit:     "L", decimals: 1, answer: r.SpiritL, least: 0.002 * r.SpiritL,
		solve: func(s *slate) float64 {
			pure := s.reckon("Pure alcohol wanted", "L", 2, wantedL*weak/100, "%v × %v ÷ 100", given(wantedL), given(weak))
			cool := s.reckon("Strong spirit at 20 °C", "L", 1, pure.x/strong*100, "%v ÷ %v × 100", pure, given(strong))
			f := s.look("Factor to 20 °C", walltable.Litres, strong, t)
			return s.reckon("Strong spirit as it stands", "L", 1, cool.x/f.x, "%v ÷ %v", cool, f).x
		},
		wrong: []Mistake{
			mistake(notCorrected, at20),
			mistake(wrongDirection, at20*factor),
			mistake(massForVolume, wantedL*abv(weak).ABW()/abv(strong).ABW()/factor),
			spare(wrongWayRound, wantedL*strong/weak/factor),
		},
	}
}
