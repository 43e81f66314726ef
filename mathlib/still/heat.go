package still

import (
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// copperKJKgK is the specific heat of copper, kJ/(kg K). Source: from memory; steel has 0.50.
const copperKJKgK = 0.385

// waterKJKgK is the specific heat of cooling water, kJ/(kg K), within 0.3 % from 10 to 80 °C. Source: CRC Handbook of
// Chemistry and Physics (from memory).
const waterKJKgK = 4.18

// ledger is what has gone in and out since the heat was put on, J.
type ledger struct {
	heatUp     float64 // into charge and vessel before anything boils
	warmUp     float64 // into the pot while the thumper warms up
	boil       float64 // into the still since
	steam      float64 // with the live steam, from water of 25 °C
	headLoss   float64 // given off by the head
	vesselLoss float64 // given off by the thumper
	condenser  float64 // into the cooling water
	distillate float64 // enthalpy of the distillate
	held       float64 // enthalpy of what is in the still now
	seconds    float64
}

// heating works out the net power and the head's own reflux.
func (m *machine) heating() error {
	h := m.batch.Heat
	if h.PowerKW == 0 {
		if h.PotLossKW > 0 || h.HeadLossKW > 0 {
			return inputf(m.function, "losses are given (pot %g kW, head %g kW) but no power; give the PowerKW of the heater", h.PotLossKW, h.HeadLossKW)
		}
	} else {
		m.powerW = 1000 * (h.PowerKW*percent(h.EfficiencyPct) - h.PotLossKW)
		if m.powerW <= 0 {
			return inputf(m.function, "the pot loses %g kW, which is all that its heater of %g kW brings in; nothing boils", h.PotLossKW, h.PowerKW)
		}
		if m.passive = 1000 * h.HeadLossKW / m.powerW; m.passive >= 1 {
			return inputf(m.function, "the head loses %g kW, which is all that reaches it; nothing comes over", h.HeadLossKW)
		}
	}
	m.vesselJK = 1000 * h.VesselKg * h.VesselKJKgK
	if m.batch.Steam.Live {
		m.steamJMol = heats().vapour(0, m.pot.TempK(0))
	}
	return nil
}

// heatUp brings the charge to the boil, with live steam by condensing some of it.
func (m *machine) heatUp(v vessels, book *ledger) (vessels, error) {
	h := heats()
	coldK := m.batch.Heat.Charge.K()
	if hotK := m.pot.TempK(v.e / v.n); coldK > hotK {
		t, err := quantity.Kelvin(hotK)
		if err != nil {
			return v, err
		}
		return v, inputf(m.function, "the charge is at %v, above its boiling point of %v; give it a lower temperature", m.batch.Heat.Charge, t)
	}
	before := v.n*h.liquid(v.e/v.n, coldK) + m.vesselJK*(coldK-zeroK)
	need := func(n float64) float64 { return m.potJ(v.e, n) - before }
	if !m.batch.Steam.Live {
		book.heatUp = need(v.n)
		return v, nil
	}
	short := func(steam float64) float64 { return steam*m.steamJMol - need(v.n+steam) }
	high := v.n
	for short(high) < 0 { // a heavy vessel
		if high *= 2; high > 100*v.n {
			return v, inputf(m.function, "live steam does not bring the vessel of %g kg to the boil with this charge; give a smaller VesselKg", m.batch.Heat.VesselKg)
		}
	}
	steam := root(short, 0, high, short(0), short(high), 1e-13*v.n)
	v.n += steam
	book.steam = steam * m.steamJMol
	book.heatUp = need(v.n) - book.steam // to rounding 0
	return v, nil
}

// potJ returns the enthalpy of pot and vessel with e moles of ethanol and n moles in all, boiling.
func (m *machine) potJ(e, n float64) float64 {
	x := e / n
	tempK := m.pot.TempK(x)
	return n*heats().liquid(x, tempK) + m.vesselJK*(tempK-zeroK)
}

// thumperJ returns the enthalpy of what is in the thumper, boiling.
func (m *machine) thumperJ(e, n float64) float64 {
	x := e / n
	return n * heats().liquid(x, m.head.TempK(x))
}

// heldJ returns the enthalpy of everything in the still.
func (m *machine) heldJ(v vessels) float64 {
	j := m.potJ(v.e, v.n)
	if m.thumping {
		j += m.thumperJ(v.thumpE, v.thumpN)
	}
	return j
}

// overhead is the enthalpy that goes up from the plates and comes back for one mole of distillate.
type overhead struct{ up, back, headLoss, condenser, distillate float64 }

// overhead works it out for the distillate z. The reflux comes back boiling.
func (m *machine) overhead(z, t float64) overhead {
	h := heats()
	x, _ := m.head.liquid(z)
	dewK := m.head.TempK(x)
	up, back, backK := z, z, 0.0
	switch {
	case m.plates.differential && t > 0:
		up, _ = m.plates.condense(z, t)
		back = math.Min(math.Max((up-(1-t)*z)/t, 0), 1)
		xUp, _ := m.head.liquid(up)
		dewK = m.head.TempK(xUp)
	case m.batch.Condenser == InEquilibrium && t > 0:
		back = x
		up = t*x + (1-t)*z
		xUp, _ := m.head.liquid(up)
		dewK = m.head.TempK(xUp)
	}
	backK = m.head.TempK(back)
	v := 1 / (1 - t) // vapour for each mole of distillate
	var o overhead
	hUp, hBack := h.vapour(up, dewK), h.liquid(back, backK)
	o.up, o.back = v*hUp, (v-1)*hBack
	o.headLoss = m.passive * v * (hUp - hBack)
	o.distillate = h.liquid(z, m.batch.Heat.Distillate.K())
	o.condenser = o.up - o.back - o.headLoss - o.distillate
	return o
}

// HeatBalance says where the heat of a run went, kJ. Enthalpies count from liquid water and liquid ethanol, each by itself,
// at 25 °C; spirit has a negative one there, its heat of mixing. What the pot's wall loses and what does not come into the
// still is in none of them; it is in the time.
type HeatBalance struct {
	HeatUpKJ      float64 // into charge and vessel until the pot boils
	BoilUpKJ      float64 // into the still from there to the end, through its wall
	SteamKJ       float64 // with live steam, from water of 25 °C; 0 without
	SteamKg       float64 // live steam
	CondenserKJ   float64 // into the cooling water
	HeadLossKJ    float64 // given off by head and neck
	ThumperLossKJ float64 // given off by the thumper
	ChargeKJ      float64 // enthalpy of charge and vessels at the start
	LeftKJ        float64 // enthalpy of what is left in the still, hot
	DistillateKJ  float64 // enthalpy of the distillate as it leaves the condenser
	// CondenserMostKW is the most that the condenser takes up, kW, 0 without a power; the unit is kW.
	CondenserMostKW float64
	Min             float64 // minutes from putting on the heat to the end; 0 if the power is not given
	HeatUpMin       float64 // of them until the first drop
	CoolingL        float64 // cooling water, L; 0 if its temperatures are not given
	CoolingMostLH   float64 // its greatest flow, L/h; 0 without a power
}

// ClosureKJ returns by how much the balance does not close, kJ: a rounding.
func (h HeatBalance) ClosureKJ() float64 {
	return h.ChargeKJ + h.HeatUpKJ + h.BoilUpKJ + h.SteamKJ - h.CondenserKJ - h.HeadLossKJ - h.ThumperLossKJ - h.LeftKJ - h.DistillateKJ
}

// Rows gives the balance as a table, each row a label, a figure and a unit.
func (h HeatBalance) Rows() [][]string {
	rows := [][]string{
		{"heat until the pot boils", quantity.Figure(h.HeatUpKJ / 1000), "MJ"},
		{"heat from there to the end", quantity.Figure(h.BoilUpKJ / 1000), "MJ"},
	}
	if h.SteamKg > 0 {
		rows = append(rows, []string{"live steam", quantity.Figure(h.SteamKg), "kg"})
	}
	rows = append(rows, []string{"heat into the condenser", quantity.Figure(h.CondenserKJ / 1000), "MJ"})
	if h.HeadLossKJ > 0 {
		rows = append(rows, []string{"heat lost by the head", quantity.Figure(h.HeadLossKJ / 1000), "MJ"})
	}
	if h.ThumperLossKJ > 0 {
		rows = append(rows, []string{"heat lost by the thumper", quantity.Figure(h.ThumperLossKJ / 1000), "MJ"})
	}
	if h.Min > 0 {
		rows = append(rows, []string{"time until the first drop", quantity.Figure(h.HeatUpMin), "min"}, []string{"time to the end", quantity.Figure(h.Min), "min"})
	}
	if h.CondenserMostKW > 0 {
		rows = append(rows, []string{"the most that the condenser takes up", quantity.Figure(h.CondenserMostKW), "kW"})
	}
	if h.CoolingL > 0 {
		rows = append(rows, []string{"cooling water", quantity.Figure(h.CoolingL), "L"})
	}
	if h.CoolingMostLH > 0 {
		rows = append(rows, []string{"its greatest flow", quantity.Figure(h.CoolingMostLH), "L/h"})
	}
	return rows
}

// coolingL returns the cooling water that takes up joules, L, or 0 if its temperatures are not given.
func (m *machine) coolingL(joules float64) float64 {
	rise := m.batch.Heat.WaterOut.C() - m.batch.Heat.WaterIn.C()
	if rise <= 0 {
		return 0
	}
	return joules / 1000 / (waterKJKgK * rise) // a kilogram is a litre, to 0.5 %
}

// gramsOf returns the mass of moles of ethanol and water, g.
func gramsOf(ethanol, all float64) float64 {
	return ethanol*alcoholometry.MolarMassEthanolG + (all-ethanol)*alcoholometry.MolarMassWaterG
}
