package drills

import (
	"hash/fnv"
	"math/rand/v2"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
	"swanneck/worksheets/drills/walltable"
)

// chance draws from a seed: the same seed and the same purpose give the same draws.
type chance struct{ r *rand.Rand }

func newChance(seed int64, purpose string) chance {
	h := fnv.New64a()
	_, _ = h.Write([]byte(purpose)) // a hash takes everything
	return chance{rand.New(rand.NewPCG(uint64(seed), h.Sum64()))}
}

// from draws one of xs.
func from[T any](c chance, xs ...T) T { return xs[c.r.IntN(len(xs))] }

// between draws one of low, low+step … high.
func (c chance) between(low, high, step float64) float64 {
	n := int((high-low)/step + 0.5)
	return walltable.Round(low+float64(c.r.IntN(n+1))*step, 3)
}

// tenths draws a figure as it is read from an instrument: whole, halves or tenths.
func (c chance) tenths(low, high float64) float64 {
	return c.between(low, high, from(c, 1, 1, 0.5, 0.5, 0.1))
}

// warmOrCold draws a temperature that needs a correction, °C, of those that have a column on the wall.
func (c chance) warmOrCold() float64 { return from(c, 10.0, 12, 14, 26, 28, 30) }

// warmOrColdF is warmOrCold in °F.
func (c chance) warmOrColdF() float64 { return from(c, 44.0, 48, 52, 72, 76, 80, 84) }

// tankL draws the contents of a vat, L.
func (c chance) tankL() float64 {
	return from(c, c.between(120, 400, 5), c.between(300, 900, 10), c.between(800, 2400, 20))
}

// bottling draws a strength at which spirit goes into bottles, % vol.
func (c chance) bottling() float64 { return from(c, 37.5, 38.0, 40, 42, 43, 45, 46) }

// place is an invented still house with what stands there.
type place struct{ house, spirit, vessel string }

func (c chance) place() place {
	return place{
		from(c, "Quellgrund", "Sallow Quay", "Teasel Lock", "Marl Hatch", "Ferrin Holm", "Dunlin Staithe"),
		from(c, "herb spirit", "grain spirit", "juniper spirit", "caraway spirit", "rye spirit", "pear spirit"),
		from(c, "receiver", "steel vat", "mixing tank", "oval cask", "store tank"),
	}
}

// The functions below take figures that were drawn here, so that what they refuse would be a mistake of this package.

func must[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

func abv(pct float64) alcoholometry.Strength { return must(alcoholometry.ABV(pct)) }
func celsius(c float64) quantity.Temperature { return must(quantity.Celsius(c)) }
func inF(f float64) quantity.Temperature     { return must(quantity.Fahrenheit(f)) }
func kgOf1000L(strengthABV float64) float64 {
	return must(alcoholometry.DensityKgM3(abv(strengthABV), quantity.Temperature{}))
}
func trueABV(readingABV, c float64) float64 {
	return must(alcoholometry.TrueStrength(readingABV, celsius(c))).ABV()
}
func trueProofOf(reading, f float64) float64 {
	return must(alcoholometry.TrueProof(reading, inF(f))).USProof()
}
func toLitres20(strengthABV, c float64) float64 {
	return must(walltable.Litres.Exact(strengthABV, c))
}
