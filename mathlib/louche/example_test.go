package louche_test

import (
	"fmt"
	"strings"

	"swanneck/mathlib/louche"
)

// show prints rows without blanks at the end of a line.
func show(rows [][]string) {
	for _, r := range rows {
		fmt.Println(strings.TrimSpace(strings.Join(r, " | ")))
	}
}

func pastis() louche.Drink { return louche.Drink{Strength: abv(45), OilGL: 2} }

func ExampleOilOf() {
	o, err := louche.OilOf("anethole")
	fmt.Println(o, err)
	_, err = louche.OilOf("anetole")
	fmt.Println(err)
	// Output:
	// trans-anethole; solubility not calibrated (estimate, factor of about 2) <nil>
	// louche.OilOf: no compound "anetole" is known; the nearest names are trans-anethole, acetal, eucalyptol
}

func ExampleOilFrom() {
	o, _ := louche.OilFrom(louche.Part{Compound: "anethole", SharePct: 85}, louche.Part{Compound: "fenchone", SharePct: 8})
	fmt.Println(o)
	_, err := louche.OilFrom(louche.Part{Compound: "anethole", SharePct: 85}, louche.Part{Compound: "fenchone", SharePct: 18})
	fmt.Println(err)
	// Output:
	// trans-anethole 85 %, fenchone 8 %; solubility not calibrated (estimate, factor of about 2)
	// louche.OilFrom: sum of the shares is 103 %; it must be from 50 to 100 % (an oil is known when at least half of it is named)
}

func ExampleOilFromAmounts() {
	o, _ := louche.OilFromAmounts(louche.Amount{Compound: "anethole", GL: 1.6}, louche.Amount{Compound: "limonene", GL: 0.1})
	fmt.Printf("%.1f g/L: %v\n", o.TotalGL(), o.Compounds())
	// Output: 1.7 g/L: [trans-anethole limonene]
}

func ExampleOil_InParts() {
	o, _ := louche.OilOf("anethole")
	spirit := louche.Drink{Strength: abv(45), OilGL: 1} // 1 part: nobody has weighed the oil
	c, _ := louche.Calibrate(o.InParts(), louche.Dripped(spirit, 5.2))
	p, _ := louche.CloudPointOf(spirit, c.Oil)
	fmt.Println(p)
	// Output: 45.00 % vol with 1 parts of oil: clouds below 6.0 °C (-2.7 to 9.8 °C; calibrated at one temperature); crystals of trans-anethole can grow below 12 °C (estimate)
}

func ExampleOil_Like() {
	o, _ := louche.OilOf("anethole")
	c, _ := louche.Calibrate(o, louche.Dripped(pastis(), 5.2))
	next, _ := louche.OilFromAmounts(louche.Amount{Compound: "anethole", GL: 2.1})
	next, _ = next.Like(c.Oil)
	fmt.Println(next)
	// Output: trans-anethole; calibrated by 1 drip at 20.0 °C: 0.934 times the published solubility
}

func ExampleOil_Cautions() {
	o, _ := louche.OilOf("anethole")
	for _, c := range o.Cautions() {
		fmt.Println(c)
	}
	fmt.Println(o.Calibrated(), o.TotalGL())
	// Output:
	// solubility good to a factor of about 2: drip water into 20 mL and calibrate
	// change with temperature is an estimate (25 kJ/mol, 15 to 35): calibrate at a second temperature
	// false 0
}

func ExampleOil_Rows() {
	o, _ := louche.OilOf("anethole")
	show(o.Rows())
	// Output:
	// trans-anethole, share of the oil | 100 | %
	// trans-anethole, solubility in water at 25 °C (published) | 0.111 | g/L
	// trans-anethole, slope against strength (from memory) | 3.52 |
	// change with temperature (estimate) | 25.0 (15.0 to 35.0) | kJ/mol
}

func ExampleSolubilityOf() {
	o, _ := louche.OilOf("anethole")
	s, _ := louche.SolubilityOf(o, abv(45), celsius(20))
	fmt.Println(s)
	// Output: 45.00 % vol at 20.0 °C holds 3.59 g/L of oil clear (1.79 to 7.17, estimate)
}

func ExampleAnetholeByDescriptorsGL() {
	gl, _ := louche.AnetholeByDescriptorsGL(abv(40))
	fmt.Printf("%.1f g/L\n", gl)
	// Output: 4.6 g/L
}

func ExampleSeparate() {
	o, _ := louche.OilOf("anethole")
	s, _ := louche.Separate(louche.Drink{Strength: abv(20), OilGL: 0.9}, o)
	fmt.Println(s)
	show(s.Rows())
	// Output:
	// 20.00 % vol with 0.900 g/L of oil, 20.0 °C: cloudy, 0.427 g/L of oil out, 0.473 dissolved (estimate)
	// share of what the liquid holds (cloudy above 1) | 1.9 |
	// oil dissolved | 0.473 | g/L
	// oil out as droplets | 0.427 | g/L
	// trans-anethole, dissolved of 0.900 | 0.473 | g/L
}

func ExampleDrink_String() {
	fmt.Println(pastis())
	// Output: 45.00 % vol with 2.00 g/L of oil, 20.0 °C
}

func ExampleCloudPointOf() {
	o, _ := louche.OilOf("anethole")
	p, _ := louche.CloudPointOf(pastis(), o)
	fmt.Println(p)
	fmt.Println("at 4 °C:", p.At(celsius(4)))
	show(p.Rows())
	// Output:
	// 45.00 % vol with 2.00 g/L of oil: clouds below 4.2 °C (-12.5 to 23.2 °C; estimate, not calibrated); crystals of trans-anethole can grow below 11 °C (estimate)
	// at 4 °C: cannot tell: put a bottle there overnight
	// cloud temperature (estimate) | 4.2 | °C
	// its range | -12.5 to 23.2 °C |
	// crystals of trans-anethole can grow below (estimate) | 11 | °C
}

func ExampleCloudPoint_MarginC() {
	o, _ := louche.OilOf("anethole")
	p, _ := louche.CloudPointOf(pastis(), o)
	fmt.Printf("%.1f °C\n", p.MarginC(celsius(12)))
	// Output: 7.8 °C
}

func ExampleClearAt() {
	o, _ := louche.OilOf("anethole")
	c, _ := louche.ClearAt(o, 2, celsius(4))
	fmt.Println(c)
	// Output: clear from 45.1 % vol upwards at 4.0 °C with 2.00 g/L of oil (36.5 to 53.7; estimate, not calibrated)
}

func ExampleClearReduced() {
	o, _ := louche.OilOf("anethole")
	c, _ := louche.Calibrate(o, louche.Dripped(pastis(), 5.2))
	r, _ := louche.ClearReduced(pastis(), c.Oil)
	show(r.Rows())
	// Output:
	// clear at 20.0 °C from (calibrated) | 35.8 | % vol
	// its range | 35.5 to 36.1 | % vol
	// clears again below | 2.4 | % vol
}

func ExamplePour() {
	o, _ := louche.OilOf("anethole")
	p, _ := louche.Pour(pastis(), o, louche.Pouring{StepML: 20})
	fmt.Println(p)
	show(p.Rows())
	fmt.Printf("at the onset %.2f parts of water; %d steps, the last at %.1f %% vol and %.3f g/L, %.3f of it dissolved, %.3f out\n",
		p.WaterToSpirit(p.Onset), len(p.WatersML()), p.StrengthsABV()[5], p.OilsGL()[5], p.DissolvedGL()[5], p.OutGL()[5])
	// Output:
	// 45.00 % vol with 2.00 g/L of oil, 20.0 °C: clouds at 1 + 0.31 (6.1 mL in 20 mL; 34.5 % vol); most oil out, 0.422 g/L, at 1 + 1.07 (21.8 % vol), milky; clears again at 1 + 16.3 (2.6 % vol) (estimate, not calibrated)
	// water in 20 mL (mL) | strength (% vol) | oil (g/L) | oil out (g/L, estimate) | looks
	// 0.0 | 45.0 | 2.00 | 0.000 | clear
	// 20.0 | 22.5 | 1.00 | 0.421 | milky
	// 40.0 | 15.0 | 0.667 | 0.352 | milky
	// 60.0 | 11.2 | 0.500 | 0.267 | milky
	// 80.0 | 9.0 | 0.400 | 0.206 | milky
	// 100.0 | 7.5 | 0.333 | 0.162 | milky
	// at the onset 0.31 parts of water; 6 steps, the last at 7.5 % vol and 0.333 g/L, 0.172 of it dissolved, 0.162 out
}

func ExampleTurbidityPerM() {
	tau, _ := louche.TurbidityPerM(louche.Droplets{OutGL: 0.162})
	fmt.Printf("%.0f 1/m\n", tau)
	_, err := louche.TurbidityPerM(louche.Droplets{OutGL: 0.162, DiameterUM: 0.1})
	fmt.Println(err)
	// Output:
	// 511 1/m
	// louche.TurbidityPerM: the diameter of the droplets is 0.1 µm; it must be from 0.4 to 10 µm (droplets, van de Hulst 11.22)
}

func ExampleTurbidity_Look() {
	o, _ := louche.OilOf("limonene")
	p, _ := louche.Pour(louche.Drink{Strength: abv(45), OilGL: 0.5}, o, louche.Pouring{StepML: 20, WaterML: 20})
	fmt.Println(p.Steps[1])
	fmt.Println(p.Steps[1].Turbidity)
	// Output:
	// 20.0 mL of water: 22.54 % vol, 0.121 of oil out of 0.250, milky
	// milky (turbidity 151 to 262 1/m, estimate)
}

func ExampleDripped() {
	fmt.Println(louche.Dripped(pastis(), 5.8))
	// Output: 45.00 % vol with 2.00 g/L of oil, 20.0 °C: 5.8 mL of water in 20 mL
}

func ExampleSeenClear() {
	fmt.Println(louche.SeenClear(louche.Drink{Strength: abv(42), OilGL: 2, Temp: celsius(4)}))
	// Output: 42.00 % vol with 2.00 g/L of oil, 4.0 °C: clear
}

func ExampleSeenCloudy() {
	fmt.Println(louche.SeenCloudy(louche.Drink{Strength: abv(42), OilGL: 2, Temp: celsius(4)}))
	// Output: 42.00 % vol with 2.00 g/L of oil, 4.0 °C: cloudy
}

func ExampleCalibrate() {
	o, _ := louche.OilOf("anethole")
	bottle := func(c float64) louche.Drink { return louche.Drink{Strength: abv(42), OilGL: 2, Temp: celsius(c)} }
	c, _ := louche.Calibrate(o, louche.Dripped(pastis(), 5.2), louche.SeenClear(bottle(14)), louche.SeenCloudy(bottle(10)))
	fmt.Println(c)
	for _, k := range c.Checks {
		fmt.Println(k)
	}
	// Output:
	// 0.934 times the published solubility, by 1 drip at 20.0 °C, good to a factor of 1.02 there; heat of solution 25.3 kJ/mol (18.8 to 31.8, seen)
	// 45.00 % vol with 2.00 g/L of oil, 20.0 °C: 5.2 mL of water in 20 mL; predicted before 6.1 mL, after 5.2 mL
	// 42.00 % vol with 2.00 g/L of oil, 14.0 °C: clear; predicted before clouds below 10.6 °C, after clouds below 12.5 °C
	// 42.00 % vol with 2.00 g/L of oil, 10.0 °C: cloudy; predicted before clouds below 10.6 °C, after clouds below 12.5 °C
}

func ExampleCalibration_CloudPoints() {
	o, _ := louche.OilOf("anethole")
	c, _ := louche.Calibrate(o, louche.Dripped(pastis(), 4.5))
	before, after, _ := c.CloudPoints(pastis())
	fmt.Printf("factor %.2f: before %.1f °C (%.1f to %.1f), after %.1f °C (%.1f to %.1f)\n", c.Factor, before.TempC, before.LowC, before.HighC, after.TempC, after.LowC, after.HighC)
	// Output: factor 0.88: before 4.2 °C (-12.5 to 23.2), after 7.4 °C (-0.5 to 10.9)
}

func ExampleCalibration_Rows() {
	o, _ := louche.OilOf("anethole")
	c, _ := louche.Calibrate(o, louche.Dripped(pastis(), 4.5))
	show(c.Rows())
	// Output:
	// observed over published solubility, by 1 drip at 20.0 °C | 0.885 |
	// good to a factor of, there, by the readings alone | 1.02 |
	// heat of solution (estimate) | 25.0 (15.0 to 35.0) | kJ/mol
	// 45.00 % vol with 2.00 g/L of oil, 20.0 °C: 4.5 mL of water in 20 mL | before 6.1 mL, after 4.5 mL |
}

func ExampleWhichHaze() {
	h, _ := louche.WhichHaze(louche.HazeSigns{ClearsWarm: "no", ClearsWithAcid: "yes"})
	fmt.Println(h)
	h, _ = louche.WhichHaze(louche.HazeSigns{ClearsWarm: "yes"})
	fmt.Println(h)
	show(h.Rows())
	// Output:
	// hard water (carbonate): reduce with soft or demineralised water
	// cannot tell yet (oil haze, fatty esters, anethole crystals): are there flocs or threads rather than an even veil?
	// haze | cannot tell |
	// still possible | oil haze, fatty esters, anethole crystals |
	// to ask next | are there flocs or threads rather than an even veil? |
}

func ExampleTriangleOf() {
	o, _ := louche.OilOf("limonene")
	tri, _ := louche.TriangleOf(o, celsius(30))
	fmt.Println(tri)
	fmt.Printf("at 60 %% vol the watery side holds %.3f of oil by mass\n", tri.Watery.Oil[60])
	// Output:
	// ethanol, water and limonene; solubility not calibrated (estimate, factor of about 2) at 30.0 °C, 8 tie-lines; qualitative: watery side by the model (factor of about 2), side rich in oil by the shape of limonene's; tie-lines measured at 30 °C (Chafer and others, Fluid Phase Equilib. 224 (2004) 251, as transcribed in a public program for phase diagrams)
	// at 60 % vol the watery side holds 0.011 of oil by mass
}

func ExampleDilutionLine() {
	o, _ := louche.OilOf("anethole")
	c, _ := louche.DilutionLine(pastis(), o)
	fmt.Printf("from %.3f of ethanol and %.4f of oil to %.0f of water\n", c.Ethanol[0], c.Oil[0], c.Water[1])
	// Output: from 0.377 of ethanol and 0.0021 of oil to 1 of water
}
