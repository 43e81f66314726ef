package yield

import (
	"fmt"

	"swanneck/mathlib/quantity"
)

// String gives the plan in one line.
func (p Plan) String() string {
	out := fmt.Sprintf("%s L of %s at %v make %d bottles of %g L at %v; yield %.2f %%, %.4g days", quantity.Figure(p.BaseL), p.Process.BaseName, p.Process.Base,
		p.Bottles, p.Process.BottleL, p.Process.Strength, p.YieldPct, p.Days)
	if p.Cost > 0 {
		out += fmt.Sprintf("; %.2f %s a bottle", p.PerBottle, p.Process.Currency)
	}
	return out
}

// Rows gives the plan as a table: a row a stage, then the botanicals, the whole and the costs.
func (p Plan) Rows() [][]string {
	rows := [][]string{{"stage", "in, L", "at % vol", "batches", "L each", "days", "water, kg", "lost, L pure", "set aside, L pure", "out, L", "at % vol"}}
	for _, s := range p.Stages {
		rows = append(rows, []string{s.Stage.Name, quantity.Figure(s.InL), fmt.Sprintf("%.2f", s.Stage.In.ABV()), fmt.Sprint(s.Batches), quantity.Figure(s.BatchL), fmt.Sprintf("%.4g", s.Days),
			quantity.Figure(s.WaterKg), quantity.Figure(s.LossL), quantity.Figure(s.AsideL), quantity.Figure(s.OutL), fmt.Sprintf("%.2f", s.Stage.Out.ABV())})
	}
	for _, s := range p.Stages {
		for _, b := range s.Botanicals {
			rows = append(rows, []string{b.Name, quantity.Figure(b.Kg) + " kg", quantity.Figure(b.GBatch) + " g in each batch"})
		}
	}
	rows = append(rows,
		[]string{p.Process.BaseName, quantity.Figure(p.BaseL) + " L", quantity.Figure(p.BasePureL) + " L of pure alcohol"},
		[]string{"full bottles", fmt.Sprint(p.Bottles), quantity.Figure(p.PureL) + " L of pure alcohol"},
		[]string{"lost, set aside for good", quantity.Figure(p.LossL) + " L", quantity.Figure(p.AsideL) + " L of pure alcohol"},
		[]string{"days, one stage after the other", fmt.Sprintf("%.4g", p.Days), ""})
	for _, c := range p.Costs {
		rows = append(rows, []string{"cost: " + c.What, fmt.Sprintf("%.2f %s", c.Money, p.Process.Currency), fmt.Sprintf("%.3f a bottle", c.PerBottle), fmt.Sprintf("%.1f %%", c.SharePct)})
	}
	if p.Cost > 0 {
		rows = append(rows, []string{"cost", fmt.Sprintf("%.2f %s", p.Cost, p.Process.Currency), fmt.Sprintf("%.3f a bottle", p.PerBottle), "100.0 %"})
	}
	return rows
}

// String gives the gain in one line.
func (g Gain) String() string {
	return fmt.Sprintf("%s: %g %% less lost makes %.2f bottles more, or saves %s L of base", g.Stage, g.Points, g.MoreBottles, quantity.Figure(g.SavedBaseL))
}

// String gives the gains in one line: the stage where one more per cent is worth most.
func (g Gains) String() string {
	if len(g.Stages) == 0 {
		return "no stages"
	}
	best := g.Stages[0]
	for _, s := range g.Stages[1:] {
		if s.SavedMoney > best.SavedMoney || s.SavedMoney == best.SavedMoney && s.MoreBottles > best.MoreBottles {
			best = s
		}
	}
	return "worth most at " + best.String()
}

// Rows gives the gains as a table, a row a stage.
func (g Gains) Rows() [][]string {
	rows := [][]string{{"stage", "% less lost", "more bottles", "or base saved, L", "or saved, " + g.Plan.Process.Currency}}
	for _, s := range g.Stages {
		rows = append(rows, []string{s.Stage, fmt.Sprintf("%g", s.Points), fmt.Sprintf("%.2f", s.MoreBottles), quantity.Figure(s.SavedBaseL), fmt.Sprintf("%.2f", s.SavedMoney)})
	}
	return rows
}
