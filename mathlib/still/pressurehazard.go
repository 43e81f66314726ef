package still

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/equilibrium"
	"swanneck/mathlib/quantity"
)

// Hazard is a danger in figures, with what to do about it.
type Hazard struct {
	What     string
	Figures  [][]string // each row a label, a figure and a unit
	cautions []string
}

// String gives the danger and its figures in one line.
func (h Hazard) String() string {
	s := h.What + ": "
	for i, r := range h.Figures {
		if i > 0 {
			s += ", "
		}
		s += r[0] + " " + r[1]
		if r[2] != "" {
			s += " " + r[2]
		}
	}
	return s
}

// Rows gives the figures and the cautions as a table, each row a label, a figure and a unit.
func (h Hazard) Rows() [][]string {
	rows := append([][]string(nil), h.Figures...)
	for _, c := range h.cautions {
		rows = append(rows, []string{"caution", c, ""})
	}
	return rows
}

// Cautions lists what to mind, a line each.
func (h Hazard) Cautions() []string { return append([]string(nil), h.cautions...) }

// BlockedOutlet returns how the pressure rises in a boiling still whose way out is blocked while powerKW goes on heating it for minutes:
// the charge warms along its boiling line. It fails with a *quantity.RangeError, also once the pressure would pass 1100 kPa.
//
// Source: the equilibrium of package equilibrium and the heat capacities of package compound; vessel and losses take up
// nothing, so that the figure is the fastest rise.
func BlockedOutlet(pot alcoholometry.Spirit, p quantity.Pressure, powerKW, minutes float64) (Hazard, error) {
	const fn = "still.BlockedOutlet"
	if err := alcoholometry.CheckSpirit(fn, pot); err != nil {
		return Hazard{}, err
	}
	for _, c := range []struct {
		what string
		v    float64
		unit string
	}{{"charge", pot.VolumeL, "L"}, {"power", powerKW, "kW"}, {"time", minutes, "min"}} {
		if err := quantity.CheckRange(fn, c.what, c.v, math.SmallestNonzeroFloat64, math.Inf(1), c.unit, ""); err != nil {
			return Hazard{}, err
		}
	}
	pair, err := equilibrium.NewPair()
	if err != nil {
		return Hazard{}, as(fn, err)
	}
	e, n := moles(pot)
	x := e / n
	from, err := pair.Bubble(x, p.KPa())
	if err != nil {
		return Hazard{}, as(fn, err)
	}
	h := heats()
	warm := func(tempK float64) float64 {
		return n * (x*h.ethanol.Heat.WarmingJMol(from.TempK, tempK) + (1-x)*h.water.Heat.WarmingJMol(from.TempK, tempK))
	}
	joules := 60000 * powerKW * minutes
	const hottestK = 458 // the end of the equilibrium, 185 °C
	hotK := float64(hottestK)
	if most := warm(hottestK) - joules; most > 0 {
		hotK = root(func(k float64) float64 { return warm(k) - joules }, from.TempK, hottestK, -joules, most, 1e-9)
	}
	to, err := pair.BubbleAt(x, hotK)
	if err != nil || hotK == hottestK {
		return Hazard{}, inputf(fn, "after %g min the pressure is beyond 1100 kPa, where a still has long burst; give a shorter time", minutes)
	}
	over := to.PKPa - p.KPa()
	return Hazard{
		What: "blocked outlet",
		Figures: [][]string{
			{"pressure above the air", fmt.Sprintf("%.0f", over), "kPa"},
			{"reached in", quantity.Figure(minutes), "min"},
			{"charge at", fmt.Sprintf("%.0f", to.TempK-273.15), "°C"},
			{"pull on each square decimetre of lid and seam", fmt.Sprintf("%.0f", over*1000*0.01/9.80665), "kg"},
		},
		cautions: []string{
			"a still is no pressure vessel: never close its outlet, never let condenser, hose or parrot freeze, clog or kink; packed herbs and oils that set (anethole, near 21 °C) block too",
			"fit an opening that gives way by itself, and put the heat where it can be cut off from outside the room",
			"never open a hot pot: the vapour flashes and burns",
			localRules,
		},
	}, nil
}

// ClosedHotPot returns the suction in a pot that is closed while vapour has driven the air out, once it has cooled to the
// temperature to. It fails with a *quantity.RangeError.
//
// Source: the vapour pressure of the charge by package equilibrium; no air gets in.
func ClosedHotPot(charge alcoholometry.Strength, p quantity.Pressure, to quantity.Temperature) (Hazard, error) {
	const fn = "still.ClosedHotPot"
	if err := alcoholometry.CheckSet(fn, "the strength of the charge", charge); err != nil {
		return Hazard{}, err
	}
	pair, err := equilibrium.NewPair()
	if err != nil {
		return Hazard{}, as(fn, err)
	}
	x := charge.MoleFraction()
	if err := quantity.CheckRange(fn, "temperature", to.C(), 5, 80, "°C", ""); err != nil {
		return Hazard{}, err
	}
	suction := p.KPa() - vapourKPa(pair, x, to.K())
	if suction <= 0 {
		return Hazard{}, inputf(fn, "at %v the charge still boils under %v; give a lower temperature", to, p)
	}
	return Hazard{
		What: "pot closed while hot",
		Figures: [][]string{
			{"suction", fmt.Sprintf("%.0f", suction), "kPa"},
			{"cooled to", fmt.Sprintf("%.0f", to), "°C"},
			{"weight on each square decimetre", fmt.Sprintf("%.0f", suction*1000*0.01/9.80665), "kg"},
		},
		cautions: []string{
			"open a vent before the heat goes off and before any valve is closed: thin copper falls in under such a weight",
			"cold water on a closed hot pot, or an outlet that dips under a liquid, does the same and sucks back",
			localRules,
		},
	}, nil
}

// vapourKPa returns the pressure of the vapour over a liquid with the mole fraction x at tempK, kPa, also below the
// pressures under which a still works.
func vapourKPa(pair *equilibrium.Pair, x, tempK float64) float64 {
	g1, g2, _, _ := pair.LnGamma(x, tempK)
	h := heats()
	e, _ := h.ethanol.Vapour.LnPa(tempK)
	w, _ := h.water.Vapour.LnPa(tempK)
	return (x*math.Exp(g1+e) + (1-x)*math.Exp(g2+w)) / 1000
}
