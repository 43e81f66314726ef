package still_test

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/still"
)

// Three jars of 200 mL at 76, 72 and 65 % vol make 599.8 mL of 71.02 % vol: reckoned independently from the coefficients of
// OIML R 22 (1975).
func TestThreeJars(t *testing.T) {
	b := the(still.CombineJars(
		still.Jar{VolumeML: 200, Strength: abv(76)}, still.Jar{VolumeML: 200, Strength: abv(72)}, still.Jar{VolumeML: 200, Strength: abv(65)}))
	near(t, "strength", b.Spirit.Strength.ABV(), 71.02, 0.005)
	near(t, "volume", b.Spirit.VolumeL, 0.5998, 0.00005)
	near(t, "pure alcohol", b.Spirit.PureL(), 0.2*(0.76+0.72+0.65), 1e-9)
}

// However a jar is measured, it is the same jar.
func TestWaysToMeasureAJar(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, c := abv(rapid.Float64Range(5, 90).Draw(t, "% vol")), celsius(rapid.Float64Range(10, 30).Draw(t, "°C"))
		volume := rapid.Float64Range(20, 2000).Draw(t, "mL")
		spirit := alcoholometry.Spirit{VolumeL: volume / 1000, Strength: s, Temp: c}
		rho := the(alcoholometry.DensityKgM3(s, c))
		water := the(alcoholometry.DensityKgM3(alcoholometry.Water, c))
		inAir := func(rho float64) float64 { return 25 * (rho - 1.2) / (1 - 1.2/8000) / 1000 } // 25 mL on a balance, g
		balanceG := 1000 * the(alcoholometry.BalanceFromMassKg(spirit.MassKg(), s, c))
		for _, j := range []still.Jar{
			{VolumeML: volume, Strength: s, Temp: c},
			{VolumeML: volume, ReadingABV: the(alcoholometry.Reading(s, c)), Temp: c},
			{VolumeML: volume, Temp: c, Bottle: still.DensityBottle{EmptyG: 20, WaterG: 20 + inAir(water), SpiritG: 20 + inAir(rho), Temp: c}},
			{MassG: balanceG, Strength: s, Temp: c},
		} {
			b := the(still.CombineJars(j))
			if d := b.Spirit.Strength.ABV() - s.ABV(); d > 1e-6 || d < -1e-6 {
				t.Fatalf("%+v holds %.9g %% vol; want %.9g", j, b.Spirit.Strength.ABV(), s.ABV())
			}
			if d := b.Spirit.VolumeAt(c)*1000 - volume; d > 1e-6*volume || d < -1e-6*volume {
				t.Fatalf("%+v holds %.9g mL; want %.9g", j, b.Spirit.VolumeAt(c)*1000, volume)
			}
		}
	})
}

func TestJarsThatCannotBe(t *testing.T) {
	good := still.Jar{Name: "a", VolumeML: 200, Strength: abv(70)}
	for _, c := range []struct {
		jars []still.Jar
		want string
	}{
		{nil, "no jars"},
		{[]still.Jar{good, good}, "there twice"},
		{[]still.Jar{good, {VolumeML: 200}}, "jar 2 has 0 of ReadingABV, Strength and Bottle"},
		{[]still.Jar{{VolumeML: 200, Strength: abv(70), ReadingABV: 70}}, "has 2 of"},
		{[]still.Jar{{Strength: abv(70)}}, "0 g and 0 mL"},
		{[]still.Jar{{Strength: abv(70), MassG: 10, VolumeML: 10}}, "give one of the two"},
		{[]still.Jar{{Strength: abv(70), VolumeML: -5}}, "volume of jar 1 is -5 mL"},
		{[]still.Jar{{ReadingABV: 140, VolumeML: 5}}, "jar 1: reading"},
		{[]still.Jar{{Bottle: still.DensityBottle{EmptyG: 20, WaterG: 10, SpiritG: 30}, VolumeML: 5}}, "must weigh more than the empty bottle"},
		{[]still.Jar{{Bottle: still.DensityBottle{EmptyG: 20, WaterG: 45, SpiritG: 60}, VolumeML: 5}}, "density"},
	} {
		_, err := still.CombineJars(c.jars...)
		if err == nil || !strings.Contains(err.Error(), c.want) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%+v: %v; want one line with %q", c.jars, err, c.want)
		}
	}
}
