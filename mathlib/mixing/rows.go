package mixing

import (
	"fmt"

	"swanneck/mathlib/quantity"
)

// String gives the reduction in one line: what to put together, what comes of it, what is lost and how it warms.
func (r Reduction) String() string {
	return fmt.Sprintf("%s L at %v + %s L (%s kg) of water = %s L at %v; contraction %s L, warms by about %.1f °C",
		quantity.Figure(r.SpiritL), r.Spirit.Strength, quantity.Figure(r.WaterL), quantity.Figure(r.WaterKg),
		quantity.Figure(r.Result.VolumeL), r.Result.Strength, quantity.Figure(r.ContractionL), r.WarmingC)
}

// Rows gives the reduction as a table, each row a label, a figure and a unit.
func (r Reduction) Rows() [][]string {
	return [][]string{
		{fmt.Sprintf("spirit at %v, %v", r.Spirit.Strength, r.Spirit.Temp), quantity.Figure(r.SpiritL), "L"},
		{"spirit, mass", quantity.Figure(r.SpiritKg), "kg"},
		{fmt.Sprintf("water to add, %v", r.WaterTemp), quantity.Figure(r.WaterL), "L"},
		{"water to add, mass", quantity.Figure(r.WaterKg), "kg"},
		{fmt.Sprintf("result at %v, %v", r.Result.Strength, r.Result.Temp), quantity.Figure(r.Result.VolumeL), "L"},
		{"contraction", quantity.Figure(r.ContractionL), "L"},
		{"warming by mixing (estimate, ±10 %)", fmt.Sprintf("%.1f", r.WarmingC), "°C"},
		{"tank just after mixing (estimate)", fmt.Sprintf("%.1f", r.MixedAt.C()), "°C"},
	}
}
