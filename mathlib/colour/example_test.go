package colour_test

import (
	"fmt"
	"strings"

	"swanneck/mathlib/colour"
)

// show prints rows without blanks at the end of a line.
func show(rows [][]string) {
	for _, r := range rows {
		fmt.Println(strings.TrimSpace(strings.Join(r, " | ")))
	}
}

func readings() colour.Readings {
	return colour.Readings{Strength: abv(65), Temp: celsius(20), Browned: 0.05,
		Readings: []colour.Reading{{Day: 0, Value: 0.842}, {Day: 10, Value: 0.741}, {Day: 24, Value: 0.620}, {Day: 41, Value: 0.507}}}
}

func ExamplePigmentsOf() {
	p, err := colour.PigmentsOf(colour.Absorbances{A664: 0.90977, A649: 0.41514, Strength: abv(95)})
	fmt.Println(p, err)
	show(p.Rows())
	_, err = colour.PigmentsOf(colour.Absorbances{A664: 0.9, A649: 0.2, Strength: abv(95)})
	fmt.Println(err)
	// Output:
	// chlorophyll a 10.00 ± 0.03, b 4.00 ± 0.06 mg/L <nil>
	// chlorophyll a | 10.00 ± 0.03 | mg/L
	// chlorophyll b | 4.00 ± 0.06 | mg/L
	// colour.PigmentsOf: chlorophyll b comes out as -1.82 mg/L, below 0; the extract is browned or not in 95 % ethanol, or the two readings were swapped
}

func ExampleNewSpectrum() {
	var nm, absorbance []float64
	for w := 380.0; w <= 780; w += 20 {
		nm, absorbance = append(nm, w), append(absorbance, 0.1)
	}
	s, err := colour.NewSpectrum(nm, absorbance, 1)
	fmt.Println(s, err)
	fmt.Printf("%.2f at 555 nm, set %v, estimate %q\n", s.PerCM(555), s.IsSet(), s.Estimate())
	// Output:
	// absorbance of 1 cm: 0.100 at 430, 0.100 at 550, 0.100 at 665 nm <nil>
	// 0.10 at 555 nm, set true, estimate ""
}

func ExampleSpectrum_Through() {
	s, _ := colour.Demonstration(colour.Pigments{ChlorophyllAMgL: 3, ChlorophyllBMgL: 1.2})
	fmt.Println(s.Through(1))
	show(s.Through(7).Rows())
	// Output:
	// L* 97.79, a* -11.85, b* 15.66 through 1 cm, #eeffda (estimate: spectra of the pigments in ether, moved and scaled)
	// path | 7 | cm
	// lightness L* (estimate) | 86.87 |
	// green (-) to red, a* (estimate) | -43.56 |
	// blue (-) to yellow, b* (estimate) | 52.07 |
	// on a screen (estimate) | #a4ed72 |
}

func ExampleDemonstration() {
	s, _ := colour.Demonstration(colour.Pigments{ChlorophyllAMgL: 3, ChlorophyllBMgL: 1.2, CarotenoidsMgL: 1})
	fmt.Println(s)
	// Output: absorbance of 1 cm: 0.573 at 430, 0.015 at 550, 0.258 at 665 nm; estimate: spectra of the pigments in ether, moved and scaled
}

func ExampleBrowned() {
	s, _ := colour.Browned(colour.Pigments{ChlorophyllAMgL: 3, ChlorophyllBMgL: 1.2, CarotenoidsMgL: 1})
	fmt.Println(s.Through(7))
	// Output: L* 83.77, a* -9.67, b* 98.21 through 7 cm, #ead300 (beyond the screen's colours) (estimate: bands of the brown pigments from memory)
}

func ExampleMixSpectra() {
	green, _ := colour.Demonstration(colour.Pigments{ChlorophyllAMgL: 9, ChlorophyllBMgL: 4})
	third, _ := colour.MixSpectra(colour.Lot{VolumeL: 20, Spectrum: green}, colour.Lot{VolumeL: 40, Spectrum: colour.ClearLiquid()})
	fmt.Println(third.Through(7))
	// Output: L* 86.46, a* -44.41, b* 54.14 through 7 cm, #a2ec6c (estimate: spectra of the pigments in ether, moved and scaled)
}

func ExampleClearLiquid() {
	fmt.Println(colour.ClearLiquid().Through(7))
	// Output: L* 100.00, a* 0.00, b* 0.00 through 7 cm, #ffffff
}

func ExampleWhite() {
	w := colour.White()
	fmt.Printf("%.3f %.0f %.3f\n", w.X, w.Y, w.Z)
	// Output: 95.043 100 108.880
}

func ExampleToLab() {
	c, _ := colour.ToLab(colour.XYZ{X: 20.654008, Y: 12.197225, Z: 5.136952}, colour.XYZ{X: 95.0456, Y: 100, Z: 108.9058})
	fmt.Println(c)
	// Output: L* 41.53, a* 52.64, b* 26.92
}

func ExampleToSwatch() {
	s := colour.ToSwatch(colour.XYZ{X: 41.24, Y: 21.26, Z: 1.93})
	fmt.Println(s, s.Hex(), s.Note())
	// Output: #ff0000 #ff0000
}

func ExampleDifference() {
	fmt.Printf("%.4f\n", colour.Difference(colour.Lab{L: 50, A: 2.6772, B: -79.7751}, colour.Lab{L: 50, B: -82.7485}))
	// Output: 2.0425
}

func ExamplePlainDistance() {
	fmt.Printf("%.2f\n", colour.PlainDistance(colour.Lab{L: 50, A: 3, B: 4}, colour.Lab{L: 50}))
	// Output: 5.00
}

func ExampleFitLoss() {
	l, err := colour.FitLoss(readings())
	fmt.Println(l, err)
	show(l.Rows())
	fmt.Printf("half gone in %.0f days\n", l.HalfDays())
	// Output:
	// 0.0135 per day (0.0129 to 0.014) at 65.00 % vol and 20.0 °C, by 4 readings <nil>
	// loss of green at 65.00 % vol, 20.0 °C (4 readings) | 0.0135 | 1/day
	// its range (95 %) | 0.0129 to 0.014 | 1/day
	// half of it gone in | 51.41 | days
	// half gone in 51 days
}

func ExampleChlorophyllWarmth() {
	w := colour.ChlorophyllWarmth()
	low, high := w.FactorRange(celsius(20), celsius(30))
	fmt.Printf("20 to 30 °C: %.2f times (%.2f to %.2f)\n", w.Factor(celsius(20), celsius(30)), low, high)
	fmt.Println(w)
	// Output:
	// 20 to 30 °C: 2.62 times (1.28 to 3.16)
	// 71.0 kJ/mol (18.4 to 85.1), Weemaes and others, J. Agric. Food Chem. 47 (1999) 2404, range Shen, Hsu, Huang and Wu, J. Agric. Food Chem. 58 (2010) 8056 (abstract); estimate for spirit
}

func ExampleWarmthOf() {
	cool := colour.Loss{PerDay: 0.006, LowPerDay: 0.0055, HighPerDay: 0.0065, Strength: abv(65), Temp: celsius(12)}
	warm := colour.Loss{PerDay: 0.025, LowPerDay: 0.023, HighPerDay: 0.027, Strength: abv(65), Temp: celsius(28)}
	w, err := colour.WarmthOf(cool, warm)
	fmt.Println(w, err)
	// Output: 63.7 kJ/mol (58.5 to 68.9), own jars at 12.0 °C and 28.0 °C <nil>
}

func cellar() colour.Kept {
	p := colour.Pigments{ChlorophyllAMgL: 3, ChlorophyllBMgL: 1.2, CarotenoidsMgL: 1}
	fresh, _ := colour.Demonstration(p)
	browned, _ := colour.Browned(p)
	loss, _ := colour.FitLoss(readings())
	k, err := colour.KeepColour(colour.Keeping{Fresh: fresh, Browned: browned, Loss: loss, Strength: abv(64), PathCM: 7, Store: celsius(12)})
	if err != nil {
		panic(err)
	}
	return k
}

func ExampleKeepColour() {
	k := cellar()
	fmt.Printf("%.4f per day (%.4f to %.4f; with the warmth %.4f to %.4f)\n", k.PerDay, k.LowPerDay, k.HighPerDay, k.SpanLowPerDay, k.SpanHighPerDay)
	_, err := colour.KeepColour(colour.Keeping{Fresh: k.Keeping.Fresh, Browned: k.Keeping.Browned, Loss: k.Keeping.Loss, Strength: abv(43), PathCM: 7})
	fmt.Println(err)
	// Output:
	// 0.0060 per day (0.0057 to 0.0062; with the warmth 0.0049 to 0.0114)
	// colour.KeepColour: a rate from 65.00 % vol is not carried to 43.00 % vol: the loss of green changes many times over with the strength, and is fastest near 40 % vol; read two jars at that strength
}

func ExampleKept_After() {
	k := cellar()
	fmt.Println(k.After(30))
	fmt.Printf("%.2f of the green left\n", k.Left(30))
	fmt.Println(k.SpectrumAt(0.5).Through(1).Lab)
	// Output:
	// L* 84.12, a* -36.02, b* 95.07 through 7 cm, #bce100 (beyond the screen's colours) (estimate: spectra of the pigments in ether, moved and scaled; bands of the brown pigments from memory)
	// 0.84 of the green left
	// L* 96.98, a* -14.96, b* 36.52
}

func ExampleKept_AfterStays() {
	left := cellar().AfterStays(colour.Stay{Days: 60, Temp: celsius(8)}, colour.Stay{Days: 14, Temp: celsius(24)})
	fmt.Printf("%.2f of the green left\n", left)
	// Output: 0.60 of the green left
}

func ExampleKept_On() {
	s := cellar().On(0, 30, 90)
	show(s.Rows())
	fmt.Println(s.Labels, s.Hex, s.Notes)
	// Output:
	// day | L* | a* | b* | difference (CIEDE2000, estimate) | through 7 cm
	// 0 | 84.5 | -41.3 | 94.5 | 0.0 | #b3e400
	// 30 | 84.1 | -36.0 | 95.1 | 2.1 | #bce100
	// 90 | 83.8 | -28.0 | 96.0 | 5.6 | #cadc00
	// [day 0 day 30 day 90] [#b3e400 #bce100 #cadc00] [differs by 0.0; beyond the screen's colours differs by 2.1; beyond the screen's colours differs by 5.6; beyond the screen's colours]
}

func ExampleKept_ShelfLife() {
	s := cellar().ShelfLife(2)
	fmt.Println(s)
	show(s.Rows())
	// Output:
	// difference of 2 through 7 cm: 28 days (27 to 29); with what is not known of the warmth 15 to 34 (estimate: spectra of the pigments in ether, moved and scaled; bands of the brown pigments from memory)
	// colour moves by 2 (CIEDE2000, 7 cm) in (estimate) | 28 | days
	// range by the readings | 27 to 29 | days
	// range with the warmth | 15 to 34 | days
	// green left then | 85 | %
}

func ExampleInfusion_GreenestH() {
	f := colour.Infusion{UptakePerH: 0.2, LossPerH: 0.02 / 24, AllMgL: 9}
	fmt.Println(f)
	fmt.Printf("%.1f mg/L after 12 hours; greenest after %.0f\n", f.AfterMgL(12), f.GreenestH())
	// Output:
	// greenest after 27.52 hours, 8.80 of 9.00 mg/L
	// 8.1 mg/L after 12 hours; greenest after 28
}

func ExampleFitUptake() {
	f, err := colour.FitUptake([]float64{1, 2, 4, 8, 12, 24}, []float64{1.75, 3.42, 5.39, 8.11, 8.98, 9.95}, 0)
	fmt.Println(f, err)
	// Output: uptake 0.2 per hour (at least 0.183, at most 0.219); the herb gives 10.00 mg/L in all <nil>
}

func ExampleDilutionLadder() {
	l, _ := colour.DilutionLadder(1.25, 3, 3, 4)
	fmt.Println(l)
	show(l.Rows())
	l, _ = colour.DilutionLadder(1.25, colour.HueDiffers, colour.HueDiffers, 4)
	fmt.Println(l)
	// Output:
	// 2.35 times as strong (1.71 to 3.24, 3 looks, by eye)
	// times as strong, by eye | 2.35 |
	// its range | 1.71 to 3.24 |
	// looks | 3 |
	// no rung matches: the hue differs (browned); the concentrations cannot be compared
}

func ExamplePanelLadder() {
	l, _ := colour.PanelLadder(1.25, colour.Rung{Asked: 5, Deeper: 5}, colour.Rung{Asked: 5, Deeper: 4}, colour.Rung{Asked: 5, Deeper: 2}, colour.Rung{Asked: 5, Deeper: 0})
	fmt.Println(l)
	// Output: 1.46 times as strong (1.27 to 1.68, 5 looks, by eye)
}

func ExampleLossByLadder() {
	l, _ := colour.DilutionLadder(1.25, 3, 3, 4)
	loss, err := colour.LossByLadder(l, 45, abv(65), celsius(18))
	fmt.Println(loss, err)
	// Output: 0.019 per day (0.0119 to 0.0261) at 65.00 % vol and 18.0 °C, by a dilution ladder, 3 looks <nil>
}

func ExampleSpectrumError() {
	_, err := colour.MixSpectra(colour.Lot{VolumeL: 5})
	fmt.Println(err)
	// Output: colour.MixSpectra: the spectrum of lot 1 is not set; make one from readings, or from pigments for a picture
}
