package still

import (
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// machine is a batch made ready: everything in moles, kelvin and joules.
type machine struct {
	function   string
	batch      Batch
	pot, head  *line // under the pressures of the pot and of the head
	plates     plates
	phases     []phase
	stop       *event // nil: the run ends where the last phase can hold its strength no longer
	mostT      float64
	passive    float64 // share of the vapour that the head's loss condenses, dimensionless
	burden     burden
	potLayer   layer
	thumpLayer layer
	powerW     float64 // that reaches what is in the still; 0: not known
	vesselJK   float64
	steamJMol  float64 // enthalpy of the live steam
	charge     alcoholometry.Spirit
	start      vessels
	thumping   bool
	lenient    bool // end where the alcohol is over
}

// vessels are the moles of ethanol and of everything (traces apart) in pot and thumper.
type vessels struct{ e, n, thumpE, thumpN float64 }

// phase is a phase made ready.
type phase struct {
	t     float64 // reflux over vapour, R/(R+1), the head's own reflux included
	holdX float64 // mole fraction to hold, or 0
	until *event
}

// prepare checks a batch and makes it ready.
func prepare(function string, b Batch) (*machine, error) {
	m := &machine{function: function, batch: b, charge: b.Pot}
	if err := m.checkFigures(); err != nil {
		return nil, err
	}
	if err := m.checkCharges(); err != nil {
		return nil, err
	}
	var err error
	if m.burden, err = newBurden(function, b.Congeners, b.Pot); err != nil {
		return nil, err
	}
	if m.head, err = newLine(function, b.P, b.Model, b.Equilibrium, m.burden.names); err != nil {
		return nil, err
	}
	if m.pot = m.head; b.PotDropKPa > 0 {
		p, err := quantity.KPa(b.P.KPa() + b.PotDropKPa)
		if err != nil {
			return nil, as(function, err)
		}
		if m.pot, err = newLine(function, p, b.Model, b.Equilibrium, m.burden.names); err != nil {
			return nil, err
		}
	}
	if err := m.pot.checkCharge(function, "the pot", b.Pot.Strength); err != nil {
		return nil, err
	}
	m.start.e, m.start.n = moles(b.Pot)
	if m.thumping = b.Thumper.Charge.Strength.IsSet(); m.thumping {
		if s := b.Thumper.Charge.Strength; s.MoleFraction() >= m.head.most {
			return nil, m.head.checkCharge(function, "the thumper", s)
		}
		m.start.thumpE, m.start.thumpN = moles(b.Thumper.Charge)
	}
	if err := m.heating(); err != nil {
		return nil, err
	}
	m.plates = newPlates(m.head, b.Plates, percent(b.PlateEfficiencyPct), b.Condenser)
	m.potLayer = newLayer(m.pot, len(m.burden.names), m.pot.TempK(m.start.e/m.start.n))
	m.thumpLayer = newLayer(m.head, len(m.burden.names), m.head.TempK(m.head.most))
	return m, m.course()
}

// percent returns a percentage as a share, and 1 for the unset one.
func percent(pct float64) float64 {
	if pct == 0 {
		return 1
	}
	return pct / 100
}

// moles returns the moles of ethanol and of ethanol and water in a spirit that has been checked.
func moles(s alcoholometry.Spirit) (ethanol, all float64) {
	g := s.MassKg() * 1000
	w := s.Strength.ABW() / 100
	ethanol = g * w / alcoholometry.MolarMassEthanolG
	return ethanol, ethanol + g*(1-w)/alcoholometry.MolarMassWaterG
}

func (m *machine) checkFigures() error {
	b := &m.batch
	if b.Steps == 0 {
		b.Steps = 1000
	}
	if b.MostReflux == 0 {
		b.MostReflux = 50
	}
	if b.Steam.PerVapour == 0 {
		b.Steam.PerVapour = 1
	}
	if b.Heat.VesselKJKgK == 0 {
		b.Heat.VesselKJKgK = copperKJKgK
	}
	inf := math.Inf(1)
	for _, c := range []struct {
		what      string
		value     float64
		low, high float64
		unit      string
	}{
		{"number of plates", b.Plates, 0, 200, ""},
		{"efficiency of the plates", b.PlateEfficiencyPct, 0, 100, "%"},
		{"reflux", b.Reflux, 0, 1e4, ""},
		{"most reflux", b.MostReflux, 0, 1e4, ""},
		{"drop of pressure to the head", b.PotDropKPa, 0, highestKPa, "kPa"},
		{"number of steps", float64(b.Steps), 20, 1e5, ""},
		{"loss of the thumper", b.Thumper.LossPct, 0, 90, "%"},
		{"steam for each vapour", b.Steam.PerVapour, 0, 2, ""},
		{"heating power", b.Heat.PowerKW, 0, inf, "kW"},
		{"efficiency of the heating", b.Heat.EfficiencyPct, 0, 100, "%"},
		{"loss of the pot", b.Heat.PotLossKW, 0, inf, "kW"},
		{"loss of the head", b.Heat.HeadLossKW, 0, inf, "kW"},
		{"mass of the vessel", b.Heat.VesselKg, 0, inf, "kg"},
		{"specific heat of the vessel", b.Heat.VesselKJKgK, 0, 10, "kJ/(kg K)"},
		{"temperature of the charge", b.Heat.Charge.C(), -20, 110, "°C"},
		{"temperature of the distillate", b.Heat.Distillate.C(), -20, 78, "°C"},
		{"temperature of the charge of the thumper", b.Thumper.Temp.C(), -20, 110, "°C"},
		{"hold-up of the parrot", b.Parrot.HoldUpL, 0, inf, "L"},
		{"temperature of the parrot", b.Parrot.Temp.C(), -20, 40, "°C"},
	} {
		if err := quantity.CheckRange(m.function, c.what, c.value, c.low, c.high, c.unit, ""); err != nil {
			return err
		}
	}
	switch b.Condenser {
	case "", InEquilibrium, Differential:
	default:
		return inputf(m.function, "the condenser is %q; it must be %q, %q or nothing", b.Condenser, InEquilibrium, Differential)
	}
	return nil
}

func (m *machine) checkCharges() error {
	b := &m.batch
	if err := alcoholometry.CheckSet(m.function, "the strength of the pot", b.Pot.Strength); err != nil {
		return err
	}
	if err := alcoholometry.CheckSpirit(m.function, b.Pot); err != nil {
		return err
	}
	if b.Pot.VolumeL == 0 {
		return inputf(m.function, "the pot holds 0 L; give a charge above 0 L")
	}
	t := b.Thumper
	switch {
	case t.Charge.Strength.IsSet():
		if err := alcoholometry.CheckSpirit(m.function, t.Charge); err != nil {
			return err
		}
		if t.Charge.VolumeL == 0 {
			return inputf(m.function, "the thumper holds 0 L; give a charge above 0 L, or no strength for no thumper")
		}
	case t.Charge.VolumeL != 0 || t.LossPct != 0:
		return alcoholometry.CheckSet(m.function, "the strength of the thumper's charge", t.Charge.Strength)
	}
	return nil
}

// course makes the phases and the end ready.
func (m *machine) course() error {
	b := &m.batch
	m.mostT = m.share(b.MostReflux)
	for i, p := range append(append([]Phase(nil), b.Plan...), Phase{Reflux: b.Reflux, Hold: b.Hold}) {
		if err := quantity.CheckRange(m.function, "reflux", p.Reflux, 0, 1e4, "", ""); err != nil {
			return err
		}
		ready := phase{t: m.share(p.Reflux)}
		if p.Hold.IsSet() {
			if p.Reflux != 0 {
				return inputf(m.function, "a phase has a Reflux of %g and holds %v; give one of the two", p.Reflux, p.Hold)
			}
			if ready.holdX = p.Hold.MoleFraction(); ready.holdX >= m.head.most {
				return &TooStrongError{Func: m.function, Charge: p.Hold, Azeotrope: strengthOf(m.head.most), P: m.head.P()}
			}
			if len(m.plates.share) == 0 && !m.plates.differential {
				return inputf(m.function, "without plates no reflux holds a strength of %v; give Plates", p.Hold)
			}
		}
		if i < len(b.Plan) {
			if !p.Until.IsSet() {
				return inputf(m.function, "phase %d of the plan does not say where it ends; give its Until", i+1)
			}
			var err error
			if ready.until, err = m.newEvent(p.Until); err != nil {
				return err
			}
		}
		m.phases = append(m.phases, ready)
	}
	stop, err := m.stopMark()
	if err != nil {
		return err
	}
	if !stop.IsSet() {
		return nil
	}
	m.stop, err = m.newEvent(stop)
	return err
}

// stopMark returns the one place at which the batch is to end, or none if it ends where a strength can be held no longer.
func (m *machine) stopMark() (Mark, error) {
	b := &m.batch
	var stops []Mark
	if b.Until.IsSet() {
		stops = append(stops, AtStrength(b.Until))
	}
	if b.UntilPot.IsSet() {
		stops = append(stops, AtPotStrength(b.UntilPot))
	}
	if b.Stop.IsSet() {
		stops = append(stops, b.Stop)
	}
	switch {
	case len(stops) > 1:
		return Mark{}, inputf(m.function, "there are %d places to end: %v and %v; give one of Until, UntilPot and Stop", len(stops), stops[0], stops[1])
	case len(stops) == 1:
		if k := stops[0].kind; k == startMark || k == endMark {
			return Mark{}, inputf(m.function, "the run is to end at %v; give a strength, a volume, a temperature or a limit", stops[0])
		}
		return stops[0], nil
	case b.Hold.IsSet():
		return Mark{}, nil
	}
	return Mark{}, inputf(m.function, "it is not said where the run ends; give Until, the strength running, or UntilPot, the strength in the pot")
}

// share returns the reflux over the vapour, R/(R+1), with what the head condenses by its own loss.
func (m *machine) share(reflux float64) float64 { return 1 - (1-m.passive)/(reflux+1) }

func strengthOf(x float64) alcoholometry.Strength {
	s, err := alcoholometry.MoleFraction(math.Min(math.Max(x, 0), 1))
	if err != nil {
		panic(err) // a fraction that is no number
	}
	return s
}
