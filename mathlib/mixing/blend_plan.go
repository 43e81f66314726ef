package mixing

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// plan works out the blend of the masses x.
func (m *blendModel) plan(function string, x []float64) (BlendPlan, error) {
	p := BlendPlan{Order: m.o}
	var ethanolKg, counted float64
	counts := m.counts()
	var parts []part
	for i, l := range m.o.Lots {
		kg := math.Min(x[i]*m.refKg, m.lots[i].thereKg)
		if kg == 0 {
			continue
		}
		b := BlendPart{Lot: l.Name, MassKg: kg, VolumeL: kg * m.lots[i].litres, PureL: kg * m.lots[i].pureL, Cost: kg * m.lots[i].cost, SharePct: kg * counts[i]}
		if kg == m.lots[i].thereKg {
			b.VolumeL = l.Spirit.VolumeL
		}
		b.LeftL = math.Max(l.Spirit.VolumeL-b.VolumeL, 0)
		var err error
		if b.ScaleKg, err = alcoholometry.BalanceFromMassKg(kg, l.Spirit.Strength, l.Spirit.Temp); err != nil {
			return BlendPlan{}, as(function, err)
		}
		p.MassKg += kg
		p.PureL += b.PureL
		p.Cost += b.Cost
		ethanolKg += kg * m.lots[i].w
		counted += b.SharePct
		p.Parts = append(p.Parts, b)
		parts = append(parts, part{kg, l.Spirit.Strength, l.Spirit.Temp})
	}
	if p.MassKg == 0 {
		return BlendPlan{}, fmt.Errorf("%s: the limits leave room for nothing at all; give some of them more", function)
	}
	for i := range p.Parts {
		p.Parts[i].SharePct *= 100 / counted
	}
	if err := m.result(function, &p, ethanolKg); err != nil {
		return BlendPlan{}, err
	}
	p.CostPerL = p.Cost / p.Result.VolumeL
	if err := m.figures(function, &p, x); err != nil {
		return BlendPlan{}, err
	}
	var err error
	if p.WarmingC, p.MixedAt, err = warmingOf(parts, p.Result.Strength); err != nil {
		return BlendPlan{}, as(function, err)
	}
	return p, nil
}

// result states what the blend is; what was asked for stays as it was asked for if it is met to the last digits.
func (m *blendModel) result(function string, p *BlendPlan, ethanolKg float64) error {
	strength, err := alcoholometry.ABW(100 * math.Min(ethanolKg/p.MassKg, 1))
	if err != nil {
		return as(function, err)
	}
	for _, asked := range []alcoholometry.Strength{m.o.Strength, m.o.StrengthTo} {
		if math.Abs(asked.ABW()-strength.ABW()) < 1e-9 {
			strength = asked
		}
	}
	if p.Result, err = amount(function, p.MassKg, strength, m.o.Temp); err != nil {
		return err
	}
	if math.Abs(p.Result.VolumeL-m.o.VolumeL) < 1e-10*m.o.VolumeL {
		p.Result.VolumeL = m.o.VolumeL
	}
	return nil
}

// figures states what the blend holds of all that the order names, and on which limits it stands.
func (m *blendModel) figures(function string, p *BlendPlan, x []float64) error {
	v, err := m.volumesAt(function, p.Result.Strength.ABW()/100)
	if err != nil {
		return err
	}
	value := func(name string, per quantity.Per) (quantity.Concentration, error) {
		l := &sideLimit{}
		l.num, l.den = m.counted(name, per)(v)
		f := math.Max(m.figure(l, x), 0)
		switch per {
		case quantity.PerLitre:
			return quantity.MgL(f)
		case quantity.PerPureAlcohol:
			return quantity.GHLPure(f)
		}
		return quantity.MgKg(f)
	}
	wanted := map[string]BlendMarker{}
	for _, k := range m.o.Profile {
		wanted[k.Name] = k
	}
	limited := map[string]bool{}
	for _, l := range m.o.Limits {
		per := l.Most.Per()
		if !l.Most.IsSet() {
			per = l.Least.Per()
		}
		c, err := value(l.Name, per)
		if err != nil {
			return as(function, err)
		}
		p.Figures = append(p.Figures, BlendFigure{Name: l.Name, Amount: c, Limit: l, Wanted: wanted[l.Name].Wanted})
		limited[l.Name] = true
	}
	weights := 0.0
	for _, k := range m.o.Profile {
		c, err := value(k.Name, k.Wanted.Per())
		if err != nil {
			return as(function, err)
		}
		p.DeviationPct += weight(k) * 100 * math.Abs(c.Value()/k.Wanted.Value()-1)
		weights += weight(k)
		if !limited[k.Name] {
			p.Figures = append(p.Figures, BlendFigure{Name: k.Name, Amount: c, Wanted: k.Wanted})
		}
	}
	if weights > 0 {
		p.DeviationPct /= weights
	}
	for _, l := range m.limits {
		l.num, l.den = l.sums(v)
		exact := l.kind == limitAmount && !m.o.AsMuch || l.kind == limitStrength && m.low == m.high
		if f := m.figure(l, x); !exact && math.Abs(f-l.value) <= 1e-8*math.Abs(l.value) {
			p.AtLimit = append(p.AtLimit, l.label())
		}
	}
	return nil
}

// label names the limit with its figure.
func (l *sideLimit) label() string {
	b := l.block(l.value)
	if l.kind == limitThere {
		return fmt.Sprintf("%s (%s L)", l.name, quantity.Figure(l.value))
	}
	side := "at least"
	if l.high {
		side = "at most"
	}
	return fmt.Sprintf("%s %s %s %s", l.name, side, quantity.Figure(b.Given), l.unit)
}

// String gives the blend in one line.
func (p BlendPlan) String() string {
	out := ""
	for i, b := range p.Parts {
		if i > 0 {
			out += " + "
		}
		out += fmt.Sprintf("%s L of %s", quantity.Figure(b.VolumeL), b.Lot)
	}
	out += " = " + p.Result.String()
	if p.Cost > 0 {
		out += fmt.Sprintf("; %.2f %s", p.Cost, p.Order.Currency)
	}
	if len(p.Order.Profile) > 0 {
		out += fmt.Sprintf("; %.1f %% from the profile", p.DeviationPct)
	}
	return out
}

// Rows gives the blend as a table: a row a lot, then the sum, what the blend holds, and the limits on which it stands.
func (p BlendPlan) Rows() [][]string {
	cost := "cost"
	if p.Order.Currency != "" {
		cost += ", " + p.Order.Currency
	}
	rows := [][]string{{"lot", "L", "kg on the scales", "L of pure alcohol", "% of the " + string(p.Order.SharesOf), cost, "left, L"}}
	scaleKg := 0.0
	for _, b := range p.Parts {
		scaleKg += b.ScaleKg
		rows = append(rows, []string{b.Lot, quantity.Figure(b.VolumeL), quantity.Figure(b.ScaleKg), quantity.Figure(b.PureL), fmt.Sprintf("%.2f", b.SharePct), fmt.Sprintf("%.2f", b.Cost), quantity.Figure(b.LeftL)})
	}
	rows = append(rows, []string{"blend at " + p.Result.Strength.String(), quantity.Figure(p.Result.VolumeL), quantity.Figure(scaleKg), quantity.Figure(p.PureL), "100.00", fmt.Sprintf("%.2f", p.Cost), ""})
	for _, f := range p.Figures {
		text := ""
		if f.Limit.Least.IsSet() {
			text += "at least " + f.Limit.Least.String() + " "
		}
		if f.Limit.Most.IsSet() {
			text += "at most " + f.Limit.Most.String() + " "
		}
		if f.Wanted.IsSet() {
			text += "wanted " + f.Wanted.String()
		}
		rows = append(rows, []string{f.Name, f.Amount.String(), text})
	}
	for _, l := range p.AtLimit {
		rows = append(rows, []string{"at its limit: " + l})
	}
	return rows
}
