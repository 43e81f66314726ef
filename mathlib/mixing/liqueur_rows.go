package mixing

import (
	"fmt"

	"swanneck/mathlib/quantity"
)

// String gives the liqueur in one line.
func (l Liqueur) String() string {
	return fmt.Sprintf("%s L at %v with %s g/L of sugar (%v)", quantity.Figure(l.VolumeL), l.Strength, quantity.Figure(l.SugarGL), l.Temp)
}

// Rows gives the liqueur as a table, each row a label, a figure and a unit. What cannot be told is left out.
func (l Liqueur) Rows() [][]string {
	rows := [][]string{{"volume at " + l.Temp.String(), quantity.Figure(l.VolumeL), "L"}}
	s, err := l.open("mixing.Liqueur.Rows", "the liqueur")
	if err != nil {
		return rows
	}
	return append(rows,
		[]string{"strength of the whole", fmt.Sprintf("%.2f", l.Strength.ABV()), "% vol"},
		[]string{"sugar in a litre", quantity.Figure(l.SugarGL), "g/L"},
		[]string{"sugar", quantity.Figure(s.sugarKg), "kg"},
		[]string{"ethanol and water by themselves", fmt.Sprintf("%.2f", s.strength.ABV()), "% vol"},
		[]string{"pure alcohol at 20 °C", quantity.Figure(l.PureL()), "L"},
		[]string{"mass (estimate)", quantity.Figure(s.sugarKg + s.baseKg), "kg"})
}

// String gives the recipe in one line.
func (r LiqueurRecipe) String() string {
	sugar := quantity.Figure(r.SugarKg) + " kg of sugar"
	if r.SyrupKg > 0 {
		sugar = fmt.Sprintf("%s kg of syrup of %g %%", quantity.Figure(r.SyrupKg), r.From.SyrupPct)
	}
	return fmt.Sprintf("%s L at %v + %s + %s L (%s kg) of water = %v (volume an estimate)",
		quantity.Figure(r.SpiritL), r.From.Spirit, sugar, quantity.Figure(r.WaterL), quantity.Figure(r.WaterKg), r.Wanted)
}

// Rows gives the recipe as a table, each row a label, a figure and a unit.
func (r LiqueurRecipe) Rows() [][]string {
	rows := [][]string{
		{fmt.Sprintf("spirit at %v, %v", r.From.Spirit, r.From.SpiritTemp), quantity.Figure(r.SpiritL), "L"},
		{"spirit, mass", quantity.Figure(r.SpiritKg), "kg"},
		{"sugar", quantity.Figure(r.SugarKg), "kg"},
	}
	if r.SyrupKg > 0 {
		rows = append(rows,
			[]string{fmt.Sprintf("syrup of %g %% by mass that brings it", r.From.SyrupPct), quantity.Figure(r.SyrupKg), "kg"},
			[]string{"syrup at 20 °C (estimate)", quantity.Figure(r.SyrupL), "L"})
	}
	return append(rows,
		[]string{fmt.Sprintf("water to add, %v", r.From.WaterTemp), quantity.Figure(r.WaterL), "L"},
		[]string{"water to add, mass", quantity.Figure(r.WaterKg), "kg"},
		[]string{fmt.Sprintf("liqueur at %v, %v (estimate, ±0.3 %%)", r.Wanted.Strength, r.Wanted.Temp), quantity.Figure(r.Wanted.VolumeL), "L"})
}

// String gives the reduction in one line.
func (r LiqueurReduction) String() string {
	return fmt.Sprintf("%v + %s L (%s kg) of water = %v (volumes are estimates)", r.Liqueur, quantity.Figure(r.WaterL), quantity.Figure(r.WaterKg), r.Result)
}

// Rows gives the reduction as a table, each row a label, a figure and a unit.
func (r LiqueurReduction) Rows() [][]string {
	return [][]string{
		{fmt.Sprintf("liqueur at %v, %v", r.Liqueur.Strength, r.Liqueur.Temp), quantity.Figure(r.Liqueur.VolumeL), "L"},
		{fmt.Sprintf("water to add, %v", r.Water), quantity.Figure(r.WaterL), "L"},
		{"water to add, mass", quantity.Figure(r.WaterKg), "kg"},
		{fmt.Sprintf("result at %v, %v (estimate, ±0.3 %%)", r.Result.Strength, r.Result.Temp), quantity.Figure(r.Result.VolumeL), "L"},
		{"sugar in a litre then", quantity.Figure(r.Result.SugarGL), "g/L"},
	}
}
