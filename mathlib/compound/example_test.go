package compound_test

import (
	"fmt"
	"strings"

	"swanneck/mathlib/compound"
	"swanneck/mathlib/quantity"
)

func ExampleFind() {
	c, err := compound.Find("3-methyl-1-butanol")
	fmt.Println(c, err)
	_, err = compound.Find("limonine")
	fmt.Println(err)
	// Output:
	// isoamyl alcohol, C5H12O, 88.150 g/mol <nil>
	// compound.Find: no compound "limonine" is known; the nearest names are limonene, alpha-pinene, beta-pinene
}

func ExampleAll() {
	n := 0
	for _, c := range compound.All() {
		if c.Vapour.From.Status == compound.Estimated {
			n++
		}
	}
	fmt.Println(n, "of", len(compound.All()), "vapour pressures are estimated")
	// Output: 7 of 46 vapour pressures are estimated
}

func ExampleNames() {
	fmt.Println(compound.Names()[:3])
	// Output: [1-butanol 1-propanol 2-methyl-1-butanol]
}

func ExampleCompound_Cautions() {
	c, _ := compound.Find("citronellal")
	for _, line := range c.Cautions() {
		fmt.Println(line)
	}
	// Output: vapour pressure estimated: here from normal boiling point + P(25 °C) = 34 Pa (0.25 mmHg, memory), C = 18 - 0.19 Tb (Thomson)
}

func ExampleCompound_Rows() {
	c, _ := compound.Find("linalool")
	for _, r := range c.Rows() {
		fmt.Println(strings.TrimSpace(r[0] + ": " + r[1] + " " + r[2]))
	}
	// Output:
	// name: linalool
	// registry number: 78-70-6
	// formula: C10H18O
	// molar mass: 154.253 g/mol
	// boiling point at 101.33 kPa (estimated): 197.9 °C
	// density at 20 °C (from memory): 861.0 kg/m³
	// octanol over water, log10: 2.97
	// solubility in water at 25 °C: 1.59 g/L
	// activity coefficient in water at 25 °C: 6990
}

func ExampleCompound_VapourPressureKPa() {
	c, _ := compound.Find("ethanol")
	warm, _ := quantity.Celsius(60)
	p, err := c.VapourPressureKPa(warm)
	fmt.Printf("%.1f kPa %v\n", p, err)
	c, _ = compound.Find("camphor")
	_, err = c.VapourPressureKPa(warm)
	fmt.Println(err)
	// Output:
	// 46.9 kPa <nil>
	// compound.VapourPressureKPa: temperature is 60 °C; it must be from 177.85 to 231.85 °C (camphor, Antoine equation of Landolt-Börnstein IV/20 for D-Camphor, 464-49-3)
}

func ExampleCompound_BoilingPoint() {
	c, _ := compound.Find("methanol")
	hill, _ := quantity.AtAltitude(1500)
	sea, _ := c.BoilingPoint(quantity.Pressure{})
	up, _ := c.BoilingPoint(hill)
	fmt.Println(sea, up)
	// Output: 64.5 °C 60.0 °C
}

func ExampleCompound_VaporisationKJMol() {
	c, _ := compound.Find("ethanol")
	boiling, _ := quantity.Celsius(78.3)
	h, _ := c.VaporisationKJMol(boiling)
	fmt.Printf("%.1f kJ/mol\n", h)
	// Output: 38.9 kJ/mol
}

func ExampleCompound_LiquidHeatCapacityJMolK() {
	c, _ := compound.Find("water")
	cp, _ := c.LiquidHeatCapacityJMolK(quantity.Temperature{})
	fmt.Printf("%.1f J/(mol K)\n", cp)
	// Output: 75.5 J/(mol K)
}

func ExampleProvenance() {
	c, _ := compound.Find("neral")
	fmt.Println(c.Vapour.From.Status.Words(), c.Vapour.From.Sure())
	// Output: of another isomer false
}
