package mixing

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/internal/simplex"
	"swanneck/mathlib/quantity"
)

// A blend is a set of masses, and everything that is limited is a sum over them: pure alcohol, congeners, costs, shares.
// Only volume is not, because spirits contract. But at one strength a kilogram of ethanol and a kilogram of water fill a
// fixed volume each (their partial volumes), whatever they come from; so at a given strength the volume is such a sum too,
// exactly. Where the strength may vary, the sums are made anew at the strength found until it stays.

// lotFacts is what a kilogram of a lot brings.
type lotFacts struct {
	w       float64 // ethanol, kg
	pureL   float64 // pure alcohol at 20 °C, L
	litres  float64 // as the lot was measured, L
	cost    float64
	thereKg float64 // what there is of the lot, kg
}

// blendModel is an order as sums over masses.
type blendModel struct {
	o         BlendOrder
	lots      []lotFacts
	low, high float64              // the strengths allowed, mass fractions
	refKg     float64              // masses are counted in units of this, kg
	limits    []*sideLimit         // in the order in which they are explained
	holds     map[string][]float64 // mg/kg in each lot, by name
}

// what a limit is about, in the order in which they are explained
type limitKind int

const (
	limitAmount limitKind = iota
	limitStrength
	limitContent
	limitGroup
	limitShare
	limitLeast
	limitThere
)

// sideLimit is one side of a limit: a figure, which is Σ num × mass over Σ den × mass (or over 1 kg of refKg, if den is
// nil), is to be at least or at most value.
type sideLimit struct {
	kind  limitKind
	high  bool
	value float64
	name  string // such as "methanol"
	unit  string // such as "mg/L"
	lot   int    // for limitLeast, limitThere
	per   quantity.Per
	num   []float64                              // for each kilogram of a lot; made anew for what depends on the volume
	den   []float64                              // likewise
	sums  func(vol volumes) (num, den []float64) // makes them
	show  func(x float64) float64                // the figure as the trade states it; nil if it is that already
	row   int                                    // in the problem; -1 for the bound of a lot
}

// volumes are the partial volumes of ethanol and water at a strength, L/kg, at the order's temperature and at 20 °C.
type volumes struct {
	ethanol, water     float64
	ethanol20, water20 float64
}

func newBlendModel(function string, o BlendOrder) (*blendModel, error) {
	m := &blendModel{o: o, low: o.Strength.ABW() / 100, high: o.StrengthTo.ABW() / 100, holds: map[string][]float64{}}
	totalKg := 0.0
	for _, l := range o.Lots {
		kg := l.Spirit.MassKg()
		m.lots = append(m.lots, lotFacts{w: l.Spirit.Strength.ABW() / 100, pureL: l.Spirit.PureL() / kg, litres: l.Spirit.VolumeL / kg,
			cost: l.CostPerL * l.Spirit.VolumeL / kg, thereKg: kg})
		totalKg += kg
	}
	m.refKg = totalKg
	if !o.AsMuch {
		rho, err := alcoholometry.DensityKgM3(o.Strength, o.Temp)
		if err != nil {
			return nil, as(function, err)
		}
		m.refKg = o.VolumeL / 1000 * rho
	}
	var names []string
	for _, l := range o.Limits {
		names = append(names, l.Name)
	}
	for _, p := range o.Profile {
		names = append(names, p.Name)
	}
	for _, name := range names {
		if err := m.content(function, name); err != nil {
			return nil, err
		}
	}
	m.amounts()
	m.strengths()
	m.contents()
	m.shares()
	m.stocks()
	return m, nil
}

// content notes how much of something each lot holds, mg/kg.
func (m *blendModel) content(function, name string) error {
	if m.holds[name] != nil {
		return nil
	}
	out := make([]float64, len(m.lots))
	for i, l := range m.o.Lots {
		c, known := l.Holds[name]
		if !known || !c.IsSet() {
			if m.lots[i].w > 0 {
				return fmt.Errorf("%s: lot %s has no figure for %s; give one in Holds, 0 if it has none", function, l.Name, name)
			}
			continue
		}
		x, err := alcoholometry.ConcentrationMgKg(c, l.Spirit.Strength)
		if err != nil {
			return fmt.Errorf("%s: lot %s, %s: %w", function, l.Name, name, err)
		}
		out[i] = x
	}
	m.holds[name] = out
	return nil
}

func (m *blendModel) add(l sideLimit) { m.limits = append(m.limits, &l) }

// each returns f of every lot.
func (m *blendModel) each(f func(i int) float64) []float64 {
	out := make([]float64, len(m.lots))
	for i := range out {
		out[i] = f(i)
	}
	return out
}

func (m *blendModel) amounts() {
	volume := func(v volumes) ([]float64, []float64) {
		return m.each(func(i int) float64 { return m.litresAt(i, v.ethanol, v.water) }), nil
	}
	l := sideLimit{kind: limitAmount, value: m.o.VolumeL, name: "the volume", unit: "L", sums: volume}
	if m.o.AsMuch {
		l.high, l.value, l.name = true, m.o.TankL, "the tank"
		if m.o.TankL > 0 {
			m.add(l)
		}
		return
	}
	m.add(l)
	l.high = true
	m.add(l)
}

// litresAt returns the volume that a kilogram of a lot takes up in the blend, L.
func (m *blendModel) litresAt(i int, ethanol, water float64) float64 {
	return m.lots[i].w*ethanol + (1-m.lots[i].w)*water
}

func (m *blendModel) strengths() {
	share := func(volumes) ([]float64, []float64) {
		return m.each(func(i int) float64 { return m.lots[i].w }), m.each(func(int) float64 { return 1 })
	}
	l := sideLimit{kind: limitStrength, value: m.low, name: "the strength", unit: "% vol", sums: share, show: func(w float64) float64 {
		s, err := alcoholometry.ABW(100 * math.Min(math.Max(w, 0), 1))
		if err != nil {
			return w
		}
		return s.ABV()
	}}
	m.add(l)
	l.high, l.value = true, m.high
	m.add(l)
}

// counted returns the sums of a content of the blend, in the unit of per.
func (m *blendModel) counted(name string, per quantity.Per) func(volumes) ([]float64, []float64) {
	held := m.holds[name]
	return func(v volumes) ([]float64, []float64) {
		switch per {
		case quantity.PerLitre:
			return held, m.each(func(i int) float64 { return m.litresAt(i, v.ethanol20, v.water20) })
		case quantity.PerPureAlcohol:
			return m.each(func(i int) float64 { return held[i] / 10 }), m.each(func(i int) float64 { return m.lots[i].pureL })
		}
		return held, m.each(func(int) float64 { return 1 })
	}
}

func (m *blendModel) contents() {
	for _, l := range m.o.Limits {
		for _, side := range []struct {
			c    quantity.Concentration
			high bool
		}{{l.Least, false}, {l.Most, true}} {
			if side.c.IsSet() {
				m.add(sideLimit{kind: limitContent, high: side.high, value: side.c.Value(), name: l.Name, unit: string(side.c.Per()), per: side.c.Per(), sums: m.counted(l.Name, side.c.Per())})
			}
		}
	}
}

// counts returns what a kilogram of each lot counts for in shares.
func (m *blendModel) counts() []float64 {
	if m.o.SharesOf == SharesOfPureAlcohol {
		return m.each(func(i int) float64 { return m.lots[i].pureL })
	}
	return m.each(func(int) float64 { return 1 })
}

func (m *blendModel) shares() {
	counts := m.counts()
	both := func(kind limitKind, name string, in []bool, leastPct, mostPct float64) {
		sums := func(volumes) ([]float64, []float64) {
			return m.each(func(i int) float64 {
				if in[i] {
					return 100 * counts[i]
				}
				return 0
			}), counts
		}
		unit := "% of the " + string(m.o.SharesOf)
		if leastPct > 0 {
			m.add(sideLimit{kind: kind, value: leastPct, name: "the share of " + name, unit: unit, sums: sums})
		}
		if mostPct > 0 && mostPct < 100 {
			m.add(sideLimit{kind: kind, high: true, value: mostPct, name: "the share of " + name, unit: unit, sums: sums})
		}
	}
	for _, g := range m.o.Groups {
		in := make([]bool, len(m.lots))
		for i, l := range m.o.Lots {
			for _, n := range g.Lots {
				in[i] = in[i] || n == l.Name
			}
		}
		both(limitGroup, "group "+g.Name, in, g.LeastPct, g.MostPct)
	}
	for i, l := range m.o.Lots {
		in := make([]bool, len(m.lots))
		in[i] = true
		both(limitShare, l.Name, in, l.LeastPct, l.MostPct)
	}
}

func (m *blendModel) stocks() {
	of := func(i int) func(volumes) ([]float64, []float64) {
		return func(volumes) ([]float64, []float64) {
			return m.each(func(j int) float64 {
				if i == j {
					return m.lots[i].litres
				}
				return 0
			}), nil
		}
	}
	for i, l := range m.o.Lots {
		if l.LeastL > 0 {
			m.add(sideLimit{kind: limitLeast, value: l.LeastL, name: "what must go in of " + l.Name, unit: "L", lot: i, sums: of(i)})
		}
	}
	for i, l := range m.o.Lots {
		m.add(sideLimit{kind: limitThere, high: true, value: l.Spirit.VolumeL, name: "what there is of " + l.Name, unit: "L", lot: i, sums: of(i)})
	}
}

// volumesAt returns the partial volumes at a strength: the tangent of the specific volume over the mass fraction, taken
// at its two ends. At the strength itself they give the volume exactly, whatever the slope.
func (m *blendModel) volumesAt(function string, w float64) (volumes, error) {
	var v volumes
	for _, at := range []struct {
		t              quantity.Temperature
		ethanol, water *float64
	}{{m.o.Temp, &v.ethanol, &v.water}, {quantity.Temperature{}, &v.ethanol20, &v.water20}} {
		specific := func(w float64) (float64, error) {
			s, err := alcoholometry.ABW(100 * w)
			if err != nil {
				return 0, as(function, err)
			}
			rho, err := alcoholometry.DensityKgM3(s, at.t)
			if err != nil {
				return 0, as(function, err)
			}
			return 1000 / rho, nil
		}
		here, err := specific(w)
		if err != nil {
			return volumes{}, err
		}
		const h = 1e-4
		a, b := math.Max(w-h, 0), math.Min(w+h, 1)
		va, err := specific(a)
		if err != nil {
			return volumes{}, err
		}
		vb, err := specific(b)
		if err != nil {
			return volumes{}, err
		}
		slope := (vb - va) / (b - a)
		*at.ethanol, *at.water = here+(1-w)*slope, here-w*slope
	}
	return v, nil
}

// problem returns the limits as rows over the lots, at a strength. Masses are in units of refKg.
func (m *blendModel) problem(function string, w float64) (*simplex.Problem, error) {
	v, err := m.volumesAt(function, w)
	if err != nil {
		return nil, err
	}
	p := &simplex.Problem{}
	for _, l := range m.lots {
		p.Low, p.High = append(p.Low, 0), append(p.High, l.thereKg/m.refKg)
	}
	for k, l := range m.limits {
		l.num, l.den = l.sums(v)
		l.row = -1
		if l.kind == limitThere {
			continue
		}
		value := l.value / m.refKg
		row := l.num
		if l.den != nil {
			value = 0
			row = m.each(func(i int) float64 { return l.num[i] - l.value*l.den[i] })
		}
		if k > 0 && m.twin(l, m.limits[k-1]) { // the two sides of one figure, at one value
			l.row = m.limits[k-1].row
			p.RowHigh[l.row] = value
			continue
		}
		l.row = len(p.Rows)
		low, high := value, math.Inf(1)
		if l.high {
			low, high = math.Inf(-1), value
		}
		p.Rows, p.RowLow, p.RowHigh = append(p.Rows, row), append(p.RowLow, low), append(p.RowHigh, high)
	}
	return p, nil
}

func (m *blendModel) twin(l, before *sideLimit) bool {
	return l.kind == before.kind && l.name == before.name && l.unit == before.unit && l.value == before.value && l.high && !before.high
}

// figure returns what a limit is about, of the masses x.
func (m *blendModel) figure(l *sideLimit, x []float64) float64 {
	num, den := 0.0, 1.0
	for i := range m.lots {
		num += l.num[i] * x[i]
	}
	if l.den == nil {
		return num * m.refKg
	}
	den = 0
	for i := range m.lots {
		den += l.den[i] * x[i]
	}
	return num / den
}

// strength returns the mass fraction of ethanol in the masses x.
func (m *blendModel) strength(x []float64) float64 {
	kg, ethanol := 0.0, 0.0
	for i, l := range m.lots {
		kg += x[i]
		ethanol += x[i] * l.w
	}
	if kg == 0 {
		return m.low
	}
	return ethanol / kg
}
