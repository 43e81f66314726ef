package equilibrium_test

import (
	"math"
	"testing"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/equilibrium"
)

var sink float64

// walk gives mole fractions from water to ethanol, so that no branch is always taken.
func walk(x float64) float64 {
	if x += 0.00713; x > 0.999 {
		x -= 0.998
	}
	return x
}

func benchmarkBubble(b *testing.B, model string) {
	p := the(equilibrium.NewPair(equilibrium.UseModel(model)))
	b.ReportAllocs()
	x := 0.001
	for b.Loop() {
		x = walk(x)
		sink += the(p.Bubble(x, 101.325)).Y
	}
	b.ReportMetric(the(p.Bubble(0.1, 101.325)).TempK, "K") // for comparison with other programs
}

func BenchmarkBubbleNRTL(b *testing.B)     { benchmarkBubble(b, "NRTL") }
func BenchmarkBubbleWilson(b *testing.B)   { benchmarkBubble(b, "Wilson") }
func BenchmarkBubbleUNIQUAC(b *testing.B)  { benchmarkBubble(b, "UNIQUAC") }
func BenchmarkBubbleUNIFAC(b *testing.B)   { benchmarkBubble(b, "UNIFAC") }
func BenchmarkBubbleDortmund(b *testing.B) { benchmarkBubble(b, "UNIFAC Dortmund") }

func BenchmarkDew(b *testing.B) {
	p := the(equilibrium.NewPair())
	x := 0.001
	for b.Loop() {
		x = walk(x)
		sink += the(p.Dew(x, 101.325)).X
	}
}

func BenchmarkAzeotrope(b *testing.B) {
	p := the(equilibrium.NewPair())
	for b.Loop() {
		sink += the(p.Azeotrope(101.325)).X
	}
}

func benchmarkMixture(b *testing.B, base compound.Base) {
	m := the(equilibrium.NewMixture(base, "ethanol", "water", "methanol", "acetaldehyde", "ethyl acetate", "1-propanol", "isobutanol",
		"isoamyl alcohol", "isoamyl acetate", "acetic acid"))
	x, y := []float64{0.1, 0.8935, 0.001, 0.001, 0.001, 0.001, 0.001, 0.001, 0.0001, 0.0004}, make([]float64, 10)
	b.ReportAllocs()
	for b.Loop() {
		sink += the(m.Bubble(x, 101.325, y))
	}
	b.ReportMetric(the(m.Bubble(x, 101.325, y)), "K") // for comparison with other programs
}

func BenchmarkBubbleTenUNIFAC(b *testing.B)   { benchmarkMixture(b, compound.Original) }
func BenchmarkBubbleTenDortmund(b *testing.B) { benchmarkMixture(b, compound.Dortmund) }

func BenchmarkCurve(b *testing.B) {
	for b.Loop() {
		sink += the(equilibrium.NewCurve(kPa(101.3), nil)).TempK(0.1)
	}
}

func BenchmarkCurveTwelveTraces(b *testing.B) {
	for b.Loop() {
		sink += the(equilibrium.NewCurve(kPa(101.3), twelve)).TempK(0.1)
	}
}

func BenchmarkCurveVapour(b *testing.B) {
	c := the(equilibrium.NewCurve(kPa(101.3), nil))
	x := 0.001
	for b.Loop() {
		x = walk(x)
		y, _ := c.Vapour(x)
		sink += y
	}
}

func BenchmarkCurveLnKOfTwelve(b *testing.B) {
	c := the(equilibrium.NewCurve(kPa(101.3), twelve))
	out := make([]float64, 12)
	x := 0.001
	for b.Loop() {
		x = walk(x)
		c.LnK(x, out)
		sink += out[3]
	}
}

func BenchmarkVolatilityOf(b *testing.B) {
	s := abv(40)
	for b.Loop() {
		sink += the(equilibrium.VolatilityOf("isoamyl alcohol", s, kPa(101.3))).K
	}
}

// BenchmarkExp is the yardstick of the machine: a bubble point is about ten of these.
func BenchmarkExp(b *testing.B) {
	x := 0.001
	for b.Loop() {
		x = walk(x)
		sink += math.Exp(-x)
	}
}
