package drills

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/worksheets/drills/walltable"
)

// A reading and its temperature.

func drawTrueStrength(c chance) draft {
	at := c.place()
	reading, t := c.tenths(36, 78), c.warmOrCold()
	answer := trueABV(reading, t)
	return draft{
		text: from(c,
			fmt.Sprintf("A sample is drawn from the %s at %s. The alcoholometer, marked in %% vol at 20 °C, shows %v in the %s; the thermometer in the same jar shows %v °C.", at.vessel, at.house, reading, at.spirit, t),
			fmt.Sprintf("%s, in the morning: the %s in the %s stands at %v °C, and the alcoholometer (marked at 20 °C) shows %v %% vol.", at.house, at.spirit, at.vessel, t, reading)),
		question: "What is its true strength at 20 °C, in per cent by volume?",
		unit:     "% vol", decimals: 1, answer: answer, least: 0.1,
		solve: func(s *slate) float64 {
			return s.look("Correct the reading", walltable.Strength, reading, t).x
		},
		wrong: []Mistake{
			mistake(notCorrected, reading),
			mistake(wrongDirection, 2*reading-answer),
			spare(wrongDirection, trueABV(reading, 40-t)),
			spare(massForVolume, abv(answer).ABW()),
		},
	}
}

func drawReading(c chance) draft {
	at := c.place()
	strength := from(c, c.bottling(), c.between(40, 70, 5), c.between(40, 72, 1))
	t := c.warmOrCold()
	answer := must(alcoholometry.Reading(abv(strength), celsius(t)))
	return draft{
		text: from(c,
			fmt.Sprintf("The %s in the %s at %s is to have %v %% vol at 20 °C. The tank stands at %v °C when it is read.", at.spirit, at.vessel, at.house, strength, t),
			fmt.Sprintf("Yesterday the %s at %s was brought to %v %% vol (at 20 °C). Today the %s is at %v °C.", at.spirit, at.house, strength, at.vessel, t)),
		question: "What does the alcoholometer, marked in % vol at 20 °C, show if the strength is right?",
		unit:     "% vol", decimals: 1, answer: answer, least: 0.1,
		solve: func(s *slate) float64 {
			return s.lookBack("Find the true strength in the column and read the row", walltable.Strength, given(strength), t, answer, "% vol", 1).x
		},
		wrong: []Mistake{
			mistake(notCorrected, strength),
			mistake(wrongDirection, 2*strength-answer),
			spare(wrongDirection, trueABV(strength, t)),
		},
	}
}

func drawTrueProof(c chance) draft {
	at := c.place()
	reading, t := c.tenths(82, 148), c.warmOrColdF()
	answer := trueProofOf(reading, t)
	return draft{
		text:     fmt.Sprintf("At %s the hydrometer, marked in US proof at 60 °F, shows %v in the %s from the %s. The thermometer in the same jar shows %v °F.", at.house, reading, at.spirit, at.vessel, t),
		question: "What is the true proof at 60 °F?",
		unit:     "proof", decimals: 1, answer: answer, least: 0.2,
		solve: func(s *slate) float64 {
			return s.look("Correct the reading", walltable.Proof, reading, t).x
		},
		wrong: []Mistake{
			mistake(notCorrected, reading),
			mistake(wrongDirection, 2*reading-answer),
			spare(halfProof, answer/2),
		},
	}
}
