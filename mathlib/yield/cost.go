package yield

import "swanneck/mathlib/quantity"

// waterKgL is the mass of a litre of water at 20 °C, kg: close enough for its price. Source: OIML R 22 (1975), 998.201 kg/m³.
const waterKgL = 0.998201

// cost adds up what the plan costs. With parts, batches, days and bottles count by their parts, so that the cost changes
// smoothly with the amounts; else they count whole.
func (p *Plan) cost(parts bool) {
	o := p.Process
	p.Costs, p.Cost = nil, 0
	add := func(what string, money float64) {
		if money != 0 {
			p.Costs = append(p.Costs, CostShare{What: what, Money: money})
			p.Cost += money
		}
	}
	bottles, days, pureL := float64(p.Bottles), p.Days, p.PureL
	if parts {
		bottles = p.Exact
		pureL = p.Stages[len(p.Stages)-1].OutPureL
		days = 0
	}
	add(o.BaseName, p.BaseL*o.BasePerL)
	waterKg := 0.0
	for _, s := range p.Stages {
		waterKg += s.WaterKg
		for i, b := range s.Stage.Botanicals {
			add(b.Name, s.Botanicals[i].Kg*b.CostPerKg)
		}
		batches := float64(s.Batches)
		if parts {
			if s.Stage.BatchL > 0 {
				batches = s.InL / s.Stage.BatchL
			}
			days += batches/float64(s.Stage.AtOnce)*s.Stage.DaysPerBatch + s.Stage.RestDays
		}
		add(s.Stage.Name, batches*s.Stage.CostPerBatch+s.InL*s.Stage.CostPerL)
	}
	add("water", waterKg/waterKgL*o.WaterPerL)
	add("bottles and what goes on them", bottles*o.GoodsPerBottle)
	add("days", days*o.CostPerDay)
	add("duty, as you state it", pureL*o.DutyPerPureL)
	for i := range p.Costs {
		c := &p.Costs[i]
		c.SharePct = 100 * c.Money / p.Cost
		if bottles > 0 {
			c.PerBottle = c.Money / bottles
		}
	}
	p.PerBottle = 0
	if bottles > 0 {
		p.PerBottle = p.Cost / bottles
	}
}

// Gain is what less loss at one stage is worth.
type Gain struct {
	Stage       string
	Points      float64 // by how much less of the pure alcohol going in is lost, per cent: 1, or the whole loss if it is less
	MoreBottles float64 // from the same base, bottles (the unit; a part of one counts)
	SavedBaseL  float64 // for the same bottles, L of the base at 20 °C
	SavedMoney  float64 // for the same bottles, in the unit of the currency; batches and days counted by their parts
}

// Gains is what less loss is worth at every stage of a plan.
type Gains struct {
	Plan   Plan
	Stages []Gain
}

// OneMorePerCent returns what it is worth, at each stage of a plan, if one per cent of the pure alcohol going in is kept
// that is lost now: in bottles from the same base, or in base and money for the same bottles. The later it is lost, the more
// has been spent on it. Where a loss is less than 1 %, all of it is kept; what herbs hold back is not touched. It fails for a plan that FromBase or ForBottles did not make.
//
// Source: none; it reckons the plan again.
func OneMorePerCent(p Plan) (Gains, error) {
	const fn = "yield.OneMorePerCent"
	process := p.Process
	if err := process.check(fn); err != nil {
		return Gains{}, err
	}
	if err := quantity.CheckRange(fn, "the volume of the "+process.BaseName, p.BaseL, 1e-9, mostBottles, "L", ""); err != nil {
		return Gains{}, err
	}
	now, err := process.forward(fn, p.BaseL)
	if err != nil {
		return Gains{}, err
	}
	now.cost(true)
	g := Gains{Plan: p}
	for i, s := range process.Stages {
		better := process
		better.Stages = append([]Stage(nil), process.Stages...)
		points := min(1, s.LossPct)
		better.Stages[i].LossPct -= points
		more, err := better.forward(fn, p.BaseL)
		if err != nil {
			return Gains{}, err
		}
		baseL := p.BaseL * now.Exact / more.Exact
		same, err := better.forward(fn, baseL)
		if err != nil {
			return Gains{}, err
		}
		same.cost(true)
		g.Stages = append(g.Stages, Gain{Stage: s.Name, Points: points, MoreBottles: more.Exact - now.Exact, SavedBaseL: p.BaseL - baseL, SavedMoney: now.Cost - same.Cost})
	}
	return g, nil
}
