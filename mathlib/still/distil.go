package still

import (
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// coarseSteps are those of the first pass, which only finds out how much comes over.
const coarseSteps = 100

// Distil reckons a batch from the cold charge to its end. The steps are equal in moles of distillate, so that they are
// nearly equal in litres.
//
// It fails with a *TooStrongError for a charge no weaker than the azeotrope, with a *NeverError if the run does not come to
// its end before the pot is dry or water, with a *compound.UnknownError, which offers the nearest names, for a congener
// that is not known, with an *alcoholometry.UnsetError or a *quantity.RangeError for what is not set or out of range, and
// with an *InputError for what does not go together.
//
// Accuracy: for a plain pot that of the equilibrium, 0.006 in the mole fraction of the vapour; with plates 0.006 more where
// there is little reflux, and the model's own deviation on every plate. Of congeners see equilibrium.VolatilityOf. The
// reckoning itself is good to 1e-8.
func Distil(b Batch) (Run, error) {
	return distil("still.Distil", b, false)
}

// distil is Distil under another function's name. A lenient run that does not come to its end before the pot is dry or water
// ends there.
func distil(function string, b Batch, lenient bool) (Run, error) {
	b, herbs, err := b.withHerbs(function)
	if err != nil {
		return Run{}, err
	}
	m, err := prepare(function, b)
	if err != nil {
		return Run{}, err
	}
	m.lenient = lenient
	end, err := m.newMarcher(m.needsTraces(), nil).run(m.start.n / coarseSteps)
	if err != nil {
		return Run{}, err
	}
	w := newWriter(m)
	r := m.newMarcher(true, w.record)
	done, err := r.run(end.mol / float64(m.batch.Steps))
	if err != nil {
		return Run{}, err
	}
	out, err := w.finish(r, done)
	out.Herbs = herbs
	if err == nil && len(herbs.Items) > 0 {
		out.notes = append(out.notes, "plants: all of their oil counts as free in the pot; out of whole seed it comes later than this (an upper bound)")
	}
	return out, err
}

// needsTraces reports whether the end of the run, or of a phase, depends on a trace.
func (m *machine) needsTraces() bool {
	if m.stop.traced() {
		return true
	}
	for _, p := range m.phases {
		if p.until.traced() {
			return true
		}
	}
	return false
}

// writer makes the table of a run while it goes on.
type writer struct {
	m       *machine
	run     Run
	e, g    []float64 // moles of ethanol and grams of spirit that have come over, at each step
	traceG  []float64 // grams of the traces that have come over, step by step
	heavy   float64   // the greatest share of the traces in the vapour
	over    float64   // the most moles of traces that run for each mole of distillate
	oil     bool
	coolJ   float64 // condenser's heat at the last step
	seconds float64
}

func newWriter(m *machine) *writer {
	w := &writer{m: m}
	room := m.batch.Steps + 64
	w.run.Steps = make([]Step, 0, room)
	w.e, w.g = make([]float64, 0, room), make([]float64, 0, room)
	w.traceG = make([]float64, 0, room*len(m.burden.names))
	return w
}

func (w *writer) record(s *state, mo *moment) {
	m := w.m
	g := gramsOf(s.outE, s.outN)
	w.e, w.g = append(w.e, s.outE), append(w.g, g)
	for k, n := range s.outK {
		w.traceG = append(w.traceG, n*m.burden.molarG[k])
	}
	w.heavy = math.Max(w.heavy, mo.heavy)
	w.over = math.Max(w.over, mo.over)
	w.oil = w.oil || mo.oil > 0
	x := fraction(s.v.e, s.v.n)
	potG := gramsOf(s.v.e, s.v.n)
	step := Step{
		Strength:    strengthOf(mo.z),
		Reflux:      mo.t / (1 - mo.t),
		Head:        kelvin(m.headK(mo.z)),
		Pot:         kelvin(m.pot.TempK(x)),
		PotStrength: byGrams(s.v.e, potG),
		PotKg:       potG / 1000,
		Min:         s.book.seconds / 60,
		HeatKJ:      (s.book.heatUp + s.book.warmUp + s.book.boil + s.book.steam) / 1000,
		CondenserKJ: s.book.condenser / 1000,
	}
	step.Collected = step.Strength
	if g > 0 {
		step.Collected = byGrams(s.outE, g)
		step.CollectedL = litres(s.outE, s.outN)
	}
	if n := len(w.run.Steps); n > 0 {
		w.duty(&step, s.book.condenser-w.coolJ, s.book.seconds-w.seconds)
	}
	w.coolJ, w.seconds = s.book.condenser, s.book.seconds
	w.run.Steps = append(w.run.Steps, step)
}

// duty fills how much cooling water flows, from the joules that went into it in some seconds since the last step.
func (w *writer) duty(step *Step, joules, seconds float64) {
	before := &w.run.Steps[len(w.run.Steps)-1]
	if seconds <= 0 {
		step.CoolingLH = before.CoolingLH // no time has passed, or none is known
		return
	}
	h := &w.run.Heat
	step.CoolingLH = w.m.coolingL(joules) / seconds * 3600
	h.CoolingMostLH = math.Max(h.CoolingMostLH, step.CoolingLH)
	h.CondenserMostKW = math.Max(h.CondenserMostKW, joules/1000/seconds)
	if len(w.run.Steps) == 1 {
		before.CoolingLH = step.CoolingLH
	}
}

func kelvin(k float64) quantity.Temperature {
	t, err := quantity.Kelvin(k)
	if err != nil {
		panic(err) // no number at all
	}
	return t
}

// finish makes the run of what was recorded.
func (w *writer) finish(r *marcher, done distilled) (Run, error) {
	m, s := w.m, r.now
	run := &w.run
	run.Charge, run.Ended, run.P = m.charge, done.why, m.batch.P
	run.Model = m.head.Pair().Name()
	if m.head.own != nil {
		run.Model = m.head.own.String()
	}
	var err error
	if run.Distillate, err = weighed(s.outE, s.outN); err != nil {
		return Run{}, as(m.function, err)
	}
	if run.Pot, err = weighed(s.v.e, s.v.n); err != nil {
		return Run{}, as(m.function, err)
	}
	if m.thumping {
		if run.Thumper, err = weighed(s.v.thumpE, s.v.thumpN); err != nil {
			return Run{}, as(m.function, err)
		}
	}
	for k, name := range m.burden.names {
		g := m.burden.molarG[k]
		run.Congeners = append(run.Congeners, Fate{Name: name, ChargeG: m.burden.mol[k] * g, DistillateG: s.outK[k] * g,
			PotG: s.potK[k] * g, ThumperG: s.thumpK[k] * g, Notes: m.head.Notes(k)})
	}
	w.heat(s)
	run.batch = m.batch
	if run.notes, err = w.notes(s); err != nil {
		return Run{}, err
	}
	run.out, err = w.parrot()
	return *run, err
}

// weighed returns moles of ethanol and water as a spirit at 20 °C.
func weighed(ethanol, all float64) (alcoholometry.Spirit, error) {
	g := gramsOf(ethanol, all)
	return alcoholometry.Weighed(g/1000, byGrams(ethanol, g))
}

// heat fills the balance of the run.
func (w *writer) heat(s *state) {
	m, h, b := w.m, &w.run.Heat, s.book
	coldK := m.batch.Heat.Charge.K()
	charge := m.start.n*heats().liquid(m.start.e/m.start.n, coldK) + m.vesselJK*(coldK-zeroK)
	if m.thumping {
		charge += m.start.thumpN * heats().liquid(m.start.thumpE/m.start.thumpN, m.batch.Thumper.Temp.K())
	}
	h.HeatUpKJ = (b.heatUp + b.warmUp) / 1000
	h.BoilUpKJ = b.boil / 1000
	h.SteamKJ = b.steam / 1000
	h.SteamKg = s.steamN * alcoholometry.MolarMassWaterG / 1000
	h.CondenserKJ = b.condenser / 1000
	h.HeadLossKJ = b.headLoss / 1000
	h.ThumperLossKJ = b.vesselLoss / 1000
	h.ChargeKJ = charge / 1000
	h.LeftKJ = m.heldJ(s.v) / 1000
	h.DistillateKJ = b.distillate / 1000
	h.Min = b.seconds / 60
	h.HeatUpMin = w.run.Steps[0].Min
	h.CoolingL = m.coolingL(b.condenser)
}
