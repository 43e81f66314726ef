package aroma_test

import (
	"fmt"
	"strings"

	"swanneck/mathlib/aroma"
)

// show prints rows without blanks at the end of a line.
func show(rows [][]string) {
	for _, r := range rows {
		fmt.Println(strings.TrimSpace(strings.Join(r, " | ")))
	}
}

func bottle() aroma.Drink {
	return aroma.Drink{Strength: abv(45), Amounts: []aroma.Amount{{Compound: "anethole", MgL: 1600}, {Compound: "limonene", MgL: 40}, {Compound: "linalool", MgL: 12}, {Compound: "fenchone", MgL: 300}}}
}

func ExampleHeadspace() {
	g, err := aroma.Headspace(bottle(), "linalool")
	fmt.Println(g, err)
	show(g.Rows())
	_, err = aroma.Headspace(bottle(), "fenchone")
	fmt.Println(err)
	// Output:
	// linalool over 45.00 % vol: 0.134 µg/L of air from 12.00 mg/L (estimate) <nil>
	// linalool in the drink | 12.00 | mg/L
	// dissolved (estimate) | 12.00 | mg/L
	// in the air over it (estimate, factor of 2) | 0.134 | µg/L
	// note | vapour pressure estimated |
	// aroma.Headspace: no descriptors of fenchone are known, so nobody knows how it leaves 45.00 % vol; set ByActivity for a guess, or leave it out
}

func ExampleDilute() {
	d, err := aroma.Dilute(bottle(), abv(15))
	fmt.Println(d, err)
	// Output: 15.00 % vol with 533.33 mg/L of anethole, 13.33 mg/L of limonene, 4.00 mg/L of linalool, 100.00 mg/L of fenchone <nil>
}

func ExampleDrink_String() {
	fmt.Println(bottle())
	// Output: 45.00 % vol with 1600.0 mg/L of anethole, 40.00 mg/L of limonene, 12.00 mg/L of linalool, 300.00 mg/L of fenchone
}

func ExampleProfileOf() {
	p, err := aroma.ProfileOf(bottle(), abv(40), abv(30), abv(20), abv(10))
	fmt.Println(p, err)
	show(p.Rows())
	fmt.Println(p.Opens(2))
	for _, n := range p.Notes {
		fmt.Println(n)
	}
	// Output:
	// air over the glass (estimate) at 40.0 % vol: 1.53 to 1.79 times the bottle's; 30.0 % vol: 3.35 to 5.43 times the bottle's; 20.0 % vol: 4.97 to 5.52 times the bottle's, cloudy; 10.0 % vol: 4.62 to 5.80 times the bottle's, cloudy <nil>
	// times the bottle's air (estimate) | 40.0 % vol | 30.0 % vol | 20.0 % vol, cloudy | 10.0 % vol, cloudy
	// trans-anethole | ×1.53 | ×3.62 | ×5.19 (capped) | ×5.70 (capped)
	// limonene | ×1.79 | ×5.43 | ×4.97 (capped) | ×4.62 (capped)
	// linalool | ×1.54 | ×3.35 | ×5.52 (capped) | ×5.80 (capped)
	// left out: fenchone: no descriptors of fenchone are known, so nobody knows how it leaves 45.00 % vol; set ByActivity for a guess, or leave it out |  |  |  |
	// cannot tell which opens most
	// closed glass at 25 °C, estimate: that the aroma opens is sure, by how much is good to a factor of 2
	// ethanol also masks smells: not counted in
}

func ExampleProfile_Of() {
	p, _ := aroma.ProfileOf(bottle(), abv(40), abv(30), abv(20), abv(10))
	l, err := p.Of("limonene")
	fmt.Printf("%.1f at %.0f %% vol, %v\n", l.TimesBottle, p.StrengthsABV(), err)
	_, err = p.Of("fenchone")
	fmt.Println(err)
	// Output:
	// [1.8 5.4 5.0 4.6] at [40 30 20 10] % vol, <nil>
	// aroma.Profile.Of: "fenchone" is not in the profile; it has trans-anethole, limonene, linalool
}

func ExampleProfile_Opens() {
	p, _ := aroma.ProfileOf(bottle(), abv(20))
	fmt.Println(p.Opens(0))
	// Output: cannot tell which opens most
}

func ExampleOdourActivity() {
	d := aroma.Drink{Strength: abv(40), Amounts: []aroma.Amount{{Compound: "ethyl hexanoate", MgL: 3}, {Compound: "linalool", MgL: 1}}}
	a, err := aroma.OdourActivity(d, "ethyl hexanoate", aroma.Ethanol40)
	fmt.Println(a, err)
	_, err = aroma.OdourActivity(d, "linalool", aroma.Ethanol40)
	fmt.Println(err)
	// Output:
	// ethyl hexanoate in ethanol of 40 % vol: 3000 µg/L, 31.6 to 316 times its threshold (from memory: Poisson and Schieberle, J. Agric. Food Chem. 56 (2008) 5813) <nil>
	// aroma.OdourActivity: no threshold in ethanol of 40 % vol is known for linalool; there is one elsewhere, which does not count here: water 6 µg/L, air 6000 µg/m³
}

func ExampleOrderOf() {
	d := aroma.Drink{Strength: abv(40), Amounts: []aroma.Amount{{Compound: "ethyl hexanoate", MgL: 3}, {Compound: "vanillin", MgL: 0.1}, {Compound: "linalool", MgL: 1}}}
	o, err := aroma.OrderOf(d, aroma.Ethanol40)
	fmt.Println(o, err)
	show(o.Rows())
	_, err = aroma.OrderOf(bottle(), aroma.Ethanol40)
	fmt.Println(err)
	// Output:
	// 40.00 % vol in ethanol of 40 % vol: ethyl hexanoate leads; times the threshold: ethyl hexanoate 31.6 to 316, vanillin 1.44 to 14.4 <nil>
	// compound | times its threshold in ethanol of 40 % vol (one to three decades unsure) | threshold
	// ethyl hexanoate | 31.6 to 316 | from memory: Poisson and Schieberle, J. Agric. Food Chem. 56 (2008) 5813
	// vanillin | 1.44 to 14.4 | from memory: Poisson and Schieberle, J. Agric. Food Chem. 56 (2008) 5813
	// left out | linalool: no threshold in ethanol of 40 % vol is known for linalool; there is one elsewhere, which does not count here: water 6 µg/L, air 6000 µg/m³ |
	// leads | ethyl hexanoate |
	// aroma.OrderOf: thresholds in ethanol of 40 % vol are not for a drink of 45.00 % vol; there are none for its strength; take "air", or the air relative to the bottle, which needs none
}

func ExampleWaterOverAir() {
	w, _ := aroma.WaterOverAir("limonene")
	fmt.Println(w)
	// Output: limonene, water over air at 25 °C: 0.738 by descriptors, 1.03 by Henry's constant, 1.30 by solubility
}

func ExampleIndexError() {
	fmt.Println(&aroma.IndexError{Func: "aroma.Profile.Opens", Index: 4, Len: 4})
	// Output: aroma.Profile.Opens: there is no strength 4; they count from 0 to 3
}
