package mixing

import (
	"fmt"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// when returns the day of a step as it is written.
func when(date string, day int) string {
	if date != "" {
		return date
	}
	return fmt.Sprintf("day %d", day)
}

// pctVol gives the figure of a strength.
func pctVol(s alcoholometry.Strength) string {
	if !s.IsSet() {
		return "unset"
	}
	return fmt.Sprintf("%.2f", s.ABV())
}

// String gives the step in one line.
func (s WaterStep) String() string {
	reading := "no alcoholometer reads it"
	if s.Readable {
		reading = fmt.Sprintf("then shows %.2f", s.ReadingABV)
	}
	return fmt.Sprintf("step %d, %s: %v to %v with %s kg of water on the scales (%s L); %s L, %s", s.Number, when(s.Date, s.Day), s.From, s.To,
		quantity.Figure(s.ScaleKg), quantity.Figure(s.WaterL), quantity.Figure(s.TankL), reading)
}

// String gives the plan in one line.
func (p StepPlan) String() string {
	return fmt.Sprintf("%d steps, %s kg of water on the scales in all, ready %s: %s L at %v", len(p.Steps), quantity.Figure(p.ScaleKg),
		when(p.ReadyDate, p.ReadyDay), quantity.Figure(p.Result.VolumeL), p.Result.Strength)
}

// Rows gives the plan as a table: a row a step, then the sum.
func (p StepPlan) Rows() [][]string {
	t := p.Order.TankTemp.String()
	rows := [][]string{{"step", "day", "from % vol", "to % vol", "water on the scales, kg", "water, L", "just mixed (estimate), °C", "tank at " + t + ", L", "alcoholometer at " + t}}
	for _, s := range p.Steps {
		reading := "too heavy"
		if s.Readable {
			reading = fmt.Sprintf("%.2f", s.ReadingABV)
		}
		rows = append(rows, []string{fmt.Sprint(s.Number), when(s.Date, s.Day), pctVol(s.From), pctVol(s.To),
			quantity.Figure(s.ScaleKg), quantity.Figure(s.WaterL), fmt.Sprintf("%.1f", s.MixedAt.C()), quantity.Figure(s.TankL), reading})
	}
	return append(rows, []string{"ready", when(p.ReadyDate, p.ReadyDay), "", pctVol(p.Result.Strength), quantity.Figure(p.ScaleKg), quantity.Figure(p.WaterL), "", quantity.Figure(p.Result.VolumeL), ""})
}
