package drills

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
	"swanneck/worksheets/drills/walltable"
)

// What duty rests on, and what a tank fills.

func drawPureAlcohol(c chance) draft {
	at := c.place()
	volumeL, reading, t := c.tankL(), c.tenths(38, 74), c.warmOrCold()
	strength := must(alcoholometry.TrueStrength(reading, celsius(t)))
	spirit := alcoholometry.Spirit{VolumeL: volumeL, Strength: strength, Temp: celsius(t)}
	factor := toLitres20(strength.ABV(), t)
	return draft{
		text: from(c,
			fmt.Sprintf("For the return at %s the %s is gauged: %v L of %s at %v °C. The alcoholometer, marked in %% vol at 20 °C, shows %v at that temperature.", at.house, at.vessel, volumeL, at.spirit, t, reading),
			fmt.Sprintf("The dip of the %s at %s says %v L. The %s in it is at %v °C, where the alcoholometer (marked at 20 °C) shows %v %% vol.", at.vessel, at.house, volumeL, at.spirit, t, reading)),
		question: "How many litres of pure alcohol, at 20 °C, are in it?",
		unit:     pureUnit, decimals: 1, answer: spirit.PureL(), least: 0.002 * spirit.PureL(),
		solve: func(s *slate) float64 {
			abv := s.look("Correct the reading", walltable.Strength, reading, t)
			f := s.look("Factor to 20 °C", walltable.Litres, abv.x, t)
			litres := s.reckon("Litres at 20 °C", "L", 1, volumeL*f.x, "%v × %v", given(volumeL), f)
			return s.reckon("Pure alcohol", pureUnit, 1, litres.x*abv.x/100, "%v × %v ÷ 100", litres, abv).x
		},
		wrong: []Mistake{
			mistake(notCorrected, volumeL*reading/100),
			mistake(strengthOnly, volumeL*strength.ABV()/100),
			mistake(volumeOnly, volumeL*factor*reading/100),
			mistake(wrongDirection, volumeL*factor*(2*reading-strength.ABV())/100),
			spare(wrongDirection, volumeL/factor*(2*reading-strength.ABV())/100),
			spare(massForVolume, volumeL*factor*strength.ABW()/100),
		},
	}
}

func drawProofGallons(c chance) draft {
	at := c.place()
	gallons := from(c, c.between(60, 300, 5), c.between(300, 900, 10))
	reading, t := c.tenths(84, 146), c.warmOrColdF()
	strength := must(alcoholometry.TrueProof(reading, inF(t)))
	spirit := alcoholometry.Spirit{VolumeL: quantity.USGallonsToL(gallons), Strength: strength, Temp: inF(t)}
	answer := must(alcoholometry.ProofGallons(spirit))
	truth := strength.USProof()
	factor := must(walltable.Gallons.Exact(truth, t))
	return draft{
		text:     fmt.Sprintf("The %s at %s holds %v US gallons of %s at %v °F. The hydrometer, marked in US proof at 60 °F, shows %v at that temperature.", at.vessel, at.house, gallons, at.spirit, t, reading),
		question: "How many proof gallons are in it?",
		unit:     proofGallonUnit, decimals: 1, answer: answer, least: 0.002 * answer,
		solve: func(s *slate) float64 {
			p := s.look("Correct the reading", walltable.Proof, reading, t)
			f := s.look("Factor to 60 °F", walltable.Gallons, p.x, t)
			cool := s.reckon("Gallons at 60 °F", "gal", 2, gallons*f.x, "%v × %v", given(gallons), f)
			return s.reckon("Proof gallons", proofGallonUnit, 1, cool.x*p.x/100, "%v × %v ÷ 100", cool, p).x
		},
		wrong: []Mistake{
			mistake(notCorrected, gallons*reading/100),
			mistake(strengthOnly, gallons*truth/100),
			mistake(volumeOnly, gallons*factor*reading/100),
			mistake(wrongDirection, gallons*factor*(2*reading-truth)/100),
			spare(wrongDirection, gallons/factor*(2*reading-truth)/100),
			spare(halfProof, gallons*factor*truth/200),
		},
	}
}

func drawBottles(c chance) draft {
	at := c.place()
	volumeL, strength, t := c.between(150, 900, 5), c.bottling(), c.warmOrCold()
	bottleML := from(c, 350.0, 500, 700, 700, 750, 1000)
	backL := from(c, 0.0, 4, 5, 6, 8, 10, 12)
	factor := toLitres20(strength, t)
	text := fmt.Sprintf("%v L of %s of %v %% vol (true strength) stand in the %s at %s, at %v °C. They go into bottles of %v mL, which hold that at 20 °C.", volumeL, at.spirit, strength, at.vessel, at.house, t, bottleML)
	if backL > 0 {
		text += fmt.Sprintf(" Of what is in the tank, %v L stay behind in filter and hoses.", backL)
	}
	fills := func(litres float64) float64 { return litres / (bottleML / 1000) }
	d := draft{
		text: text, question: "How many full bottles does that make?",
		unit: "bottles", answer: fills((volumeL - backL) * factor),
		solve: func(s *slate) float64 {
			net := given(volumeL)
			if backL > 0 {
				net = s.reckon("What reaches the filler", "L", 0, volumeL-backL, "%v − %v", given(volumeL), given(backL))
			}
			f := s.look("Factor to 20 °C", walltable.Litres, strength, t)
			cool := s.reckon("Litres at 20 °C", "L", 2, net.x*f.x, "%v × %v", net, f)
			return s.reckon("Bottles; only full ones count", "bottles", 2, fills(cool.x), "%v ÷ %v", cool, given(bottleML/1000)).x
		},
		wrong: []Mistake{
			mistake(notCorrected, fills(volumeL-backL)),
			mistake(wrongDirection, fills((volumeL-backL)/factor)),
			spare(roundedUp, fills((volumeL-backL)*factor)+1),
		},
	}
	if backL > 0 {
		d.wrong = append(d.wrong, mistake(nothingStaysBack, fills(volumeL*factor)))
	}
	return d
}
