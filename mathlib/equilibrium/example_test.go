package equilibrium_test

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/equilibrium"
	"swanneck/mathlib/quantity"
)

func ExampleBubble() {
	wash, _ := alcoholometry.ABV(10)
	b, err := equilibrium.Bubble(wash, quantity.Pressure{})
	fmt.Println(b, err)
	// Output: 10.00 % vol boils at 92.3 °C (101.33 kPa), vapour 55.92 % vol <nil>
}

func ExampleBubblePressure() {
	wash, _ := alcoholometry.ABV(10)
	warm, _ := quantity.Celsius(50)
	b, _ := equilibrium.BubblePressure(wash, warm)
	fmt.Println(b.P, b.Vapour)
	// Output: 16.12 kPa 54.75 % vol
}

func ExampleDew() {
	vapour, _ := alcoholometry.ABV(60)
	b, _ := equilibrium.Dew(vapour, quantity.Pressure{})
	fmt.Println(b.Temp, b.Liquid)
	// Output: 91.3 °C 12.04 % vol
}

func ExampleDewPressure() {
	vapour, _ := alcoholometry.ABV(60)
	warm, _ := quantity.Celsius(60)
	b, _ := equilibrium.DewPressure(vapour, warm)
	fmt.Println(b.P)
	// Output: 27.38 kPa
}

func ExampleAzeotrope() {
	b, _ := equilibrium.Azeotrope(quantity.Pressure{})
	fmt.Printf("%.2f %% mass at %.2f °C\n", b.Liquid.ABW(), b.Temp.C())
	vacuum, _ := quantity.KPa(5)
	_, err := equilibrium.Azeotrope(vacuum)
	fmt.Println(err)
	// Output:
	// 95.86 % mass at 78.14 °C
	// equilibrium.Azeotrope: pressure is 5 kPa; it must be from 12 to 250 kPa (Wade and Merriman (1911): none below 11 kPa, measured to 193 kPa)
}

func ExampleUseModel() {
	wash, _ := alcoholometry.ABV(10)
	b, _ := equilibrium.Bubble(wash, quantity.Pressure{}, equilibrium.UseModel("UNIFAC Dortmund"))
	fmt.Println(b.Model, b.Vapour)
	// Output: UNIFAC Dortmund 55.58 % vol
}

func ExampleUseActivity() {
	wash, _ := alcoholometry.ABV(10)
	mine := equilibrium.NRTL{B12K: -60, B21K: 670, Alpha: 0.3}
	b, _ := equilibrium.Bubble(wash, quantity.Pressure{}, equilibrium.UseActivity(mine))
	fmt.Println(b.Temp)
	// Output: 93.0 °C
}

func ExampleModels() {
	for _, m := range equilibrium.Models()[:3] {
		fmt.Println(m.Name+":", m.From.Status.Words())
	}
	// Output:
	// NRTL: fitted here
	// NRTL 2012: published
	// NRTL DECHEMA: from memory
}

func ExampleFlash() {
	feed, _ := alcoholometry.ABV(40)
	s, _ := equilibrium.Flash(feed, quantity.Pressure{}, 0.2)
	fmt.Println(s)
	// Output: 40.00 % vol parts into 20.00 % of its moles as vapour of 73.88 % vol and liquid of 25.86 % vol at 86.5 °C (101.33 kPa)
}

func ExampleFlashAt() {
	feed, _ := alcoholometry.ABV(40)
	warm, _ := quantity.Celsius(60)
	s, _ := equilibrium.FlashAt(feed, warm, 0.2)
	fmt.Println(s.P)
	// Output: 33.00 kPa
}

func ExampleFlashTP() {
	feed, _ := alcoholometry.ABV(40)
	hot, _ := quantity.Celsius(88)
	s, _ := equilibrium.FlashTP(feed, hot, quantity.Pressure{})
	fmt.Printf("%.1f %% of the moles are vapour\n", 100*s.VapourShare)
	cool, _ := quantity.Celsius(70)
	s, _ = equilibrium.FlashTP(feed, cool, quantity.Pressure{})
	fmt.Println(s)
	// Output:
	// 28.2 % of the moles are vapour
	// 40.00 % vol stays liquid at 70.0 °C (101.33 kPa)
}

func ExampleTxy() {
	line, _ := equilibrium.Txy(quantity.Pressure{}, 5)
	for _, b := range line {
		fmt.Printf("x %.2f, y %.3f, %.1f °C\n", b.Liquid.MoleFraction(), b.Vapour.MoleFraction(), b.Temp.C())
	}
	// Output:
	// x 0.00, y 0.000, 100.0 °C
	// x 0.25, y 0.561, 82.2 °C
	// x 0.50, y 0.657, 79.8 °C
	// x 0.75, y 0.786, 78.4 °C
	// x 1.00, y 1.000, 78.3 °C
}

func ExamplePxy() {
	warm, _ := quantity.Celsius(60)
	line, _ := equilibrium.Pxy(warm, 3)
	for _, b := range line {
		fmt.Println(b.Liquid, b.P)
	}
	// Output:
	// 0.00 % vol 19.95 kPa
	// 78.62 % vol 44.03 kPa
	// 100.00 % vol 46.93 kPa
}

func ExampleXY() {
	x, y, _ := equilibrium.XY(quantity.Pressure{}, 3)
	fmt.Printf("%.3f %.3f\n", x, y)
	// Output: [0.000 0.500 1.000] [0.000 0.657 1.000]
}

func ExampleRelativeVolatility() {
	for _, pct := range []float64{10, 40, 60} {
		s, _ := alcoholometry.ABV(pct)
		a, _ := equilibrium.RelativeVolatility("isoamyl alcohol", s, quantity.Pressure{})
		fmt.Printf("%v: %.2f\n", s, a)
	}
	// Output:
	// 10.00 % vol: 2.26
	// 40.00 % vol: 0.93
	// 60.00 % vol: 0.50
}

func ExampleVolatilityOf() {
	s, _ := alcoholometry.ABV(40)
	v, _ := equilibrium.VolatilityOf("2-phenylethanol", s, quantity.Pressure{})
	fmt.Println(v)
	_, err := equilibrium.VolatilityOf("phenylethanal", s, quantity.Pressure{})
	fmt.Println(err)
	// Output:
	// 2-phenylethanol over boiling 40.00 % vol (101.33 kPa): 0.032 times as volatile as ethanol, K = 0.1 (vapour pressure extrapolated below 132.9 °C; in water the group method is off by a factor of 6 from the measurement it is pulled to)
	// equilibrium.VolatilityOf: no compound "phenylethanal" is known; the nearest names are 2-phenylethanol, acetaldehyde, menthol
}

func ExampleWithoutAnchor() {
	s, _ := alcoholometry.ABV(10)
	with, _ := equilibrium.VolatilityOf("ethyl acetate", s, quantity.Pressure{})
	without, _ := equilibrium.VolatilityOf("ethyl acetate", s, quantity.Pressure{}, equilibrium.WithoutAnchor())
	fmt.Printf("%.1f %.1f\n", with.ToEthanol, without.ToEthanol)
	// Output: 12.0 9.8
}

func ExampleNewPair() {
	p, _ := equilibrium.NewPair()
	s, _ := p.Bubble(0.1, 101.325)
	fmt.Printf("y %.4f at %.2f K\n", s.Y, s.TempK)
	// Output: y 0.4462 at 359.34 K
}

func ExampleNewCurve() {
	c, _ := equilibrium.NewCurve(quantity.Pressure{}, []string{"methanol", "isoamyl alcohol"})
	y, _ := c.Vapour(0.1)
	x, _ := c.Liquid(y)
	lnK := make([]float64, 2)
	c.LnK(0.1, lnK)
	fmt.Printf("y %.4f, x %.4f, %.2f K, ln K %.2f\n", y, x, c.TempK(0.1), lnK)
	// Output: y 0.4462, x 0.1000, 359.34 K, ln K [1.38 1.80]
}

func ExampleNewMixture() {
	m, _ := equilibrium.NewMixture(compound.Dortmund, "ethanol", "water", "methanol")
	y := make([]float64, 3)
	tempK, _ := m.Bubble([]float64{0.10, 0.85, 0.05}, 101.325, y)
	fmt.Printf("%.2f K, %.3f\n", tempK, y)
	// Output: 356.81 K, [0.357 0.482 0.162]
}
