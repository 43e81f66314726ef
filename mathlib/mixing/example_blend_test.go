package mixing_test

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/quantity"
)

// casks is an order over invented casks.
func casks() mixing.BlendOrder {
	cask := func(name string, litres, pct, costPerL, methanol float64) mixing.Lot {
		s, _ := alcoholometry.ABV(pct)
		c, _ := quantity.GHLPure(methanol)
		return mixing.Lot{Name: name, Spirit: alcoholometry.Spirit{VolumeL: litres, Strength: s}, CostPerL: costPerL, Holds: map[string]quantity.Concentration{"methanol": c}}
	}
	strength, _ := alcoholometry.ABV(42)
	most, _ := quantity.GHLPure(600)
	return mixing.BlendOrder{
		VolumeL: 500, Strength: strength, Currency: "XTS",
		Lots: []mixing.Lot{
			cask("Moosgrund plum", 220, 68, 9, 720), cask("Moosgrund pear", 180, 64, 12, 480), cask("Hasel 2", 120, 70, 14, 350),
			{Name: "water", Spirit: alcoholometry.Spirit{VolumeL: 1000, Strength: alcoholometry.Water}, CostPerL: 0.01},
		},
		Limits: []mixing.BlendLimit{{Name: "methanol", Most: most}},
	}
}

func ExampleBlendLots() {
	p, err := mixing.BlendLots(casks())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p)
	fmt.Println(p.Figures[0].Name, p.Figures[0].Amount)
	fmt.Println(p.AtLimit)
	// Output:
	// 208.66 L of Moosgrund plum + 97.30 L of Hasel 2 + 200.77 L of water = 500.00 L at 42.00 % vol (20.0 °C); 3242.15 XTS
	// methanol 600.00 g/hL of pure alcohol
	// [methanol at most 600.00 g/hL of pure alcohol]
}

func ExampleBlendError() {
	o := casks()
	o.Limits[0].Most, _ = quantity.GHLPure(400)
	_, err := mixing.BlendLots(o)
	fmt.Println(err)
	// Output: mixing.BlendLots: no blend of these lots keeps all limits; any one of these would do: the volume at least 325.00 instead of 500.00 L; the strength at least 27.300 instead of 42.000 % vol; methanol at most 440.35 instead of 400.00 g/hL of pure alcohol; what there is of Hasel 2 at most 184.62 instead of 120.00 L
}

func ExampleWhatBlocks() {
	o := casks()
	o.Limits[0].Most, _ = quantity.GHLPure(400)
	b, _ := mixing.WhatBlocks(o)
	for _, row := range b.Rows() {
		fmt.Println(row)
	}
	// Output:
	// [limit side given would have to be unit]
	// [the volume at least 500.00 325.00 L]
	// [the strength at least 42.000 27.300 % vol]
	// [methanol at most 400.00 440.35 g/hL of pure alcohol]
	// [what there is of Hasel 2 at most 120.00 184.62 L]
}
