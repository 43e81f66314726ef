package still

import "math"

// state is where a run stands: what is in the vessels, what has come over, and the books.
type state struct {
	v            vessels
	outE, outN   float64 // moles of ethanol and of ethanol and water that have come over
	steamN       float64 // moles of live steam condensed
	potK, thumpK []float64
	outK         []float64
	book         ledger
}

func (s *state) copyFrom(o *state) {
	p, t, u := s.potK, s.thumpK, s.outK
	*s = *o
	s.potK, s.thumpK, s.outK = p, t, u
	copy(p, o.potK)
	copy(t, o.thumpK)
	copy(u, o.outK)
}

func newState(n int) *state {
	return &state{potK: make([]float64, n), thumpK: make([]float64, n), outK: make([]float64, n)}
}

// moment is what happens just now, with room for the traces.
type moment struct {
	z, t  float64   // the distillate, and the reflux over the vapour
	spare float64   // where a strength is held: how much reflux is left to hold it with; below 0: none
	rate  vessels   // what pot and thumper lose or gain for one mole of distillate
	rise  []float64 // traces: distillate over the vessel below the plates
	potK  []float64 // traces: vapour over liquid of the pot, where a thumper is above it
	oil   float64   // moles of oil on the vessel below the plates
	heavy float64   // share of the traces in the vapour of the vessel below the plates
	over  float64   // moles of traces that run for each mole of distillate
}

func newMoment(n int) *moment { return &moment{rise: make([]float64, n), potK: make([]float64, n)} }

// marcher carries a run on from moment to moment.
type marcher struct {
	*machine
	traced     bool
	enrich     enrichment
	now, next  *state
	mo, moNext *moment
	past       [3]vessels // the last three rates, the latest first
	pasts      int
	phase      phase
	guess      float64
	record     func(s *state, mo *moment)
}

// newMarcher returns a marcher at the start of the run. record, if not nil, is called at each moment.
func (m *machine) newMarcher(traced bool, record func(*state, *moment)) *marcher {
	n := 0
	if traced {
		n = len(m.burden.names)
	}
	r := &marcher{machine: m, traced: traced && n > 0, enrich: newEnrichment(n), now: newState(n), next: newState(n), mo: newMoment(n), moNext: newMoment(n), record: record}
	r.now.v = m.start
	copy(r.now.potK, m.burden.mol)
	return r
}

// distillate returns z and t for what is in the vessels in the present phase.
func (r *marcher) distillate(v vessels, guess, tGuess float64) (z, t, spare float64) {
	var y float64
	if r.thumping {
		y, _ = r.head.vapour(fraction(v.thumpE, v.thumpN))
	} else {
		y, _ = r.pot.vapour(fraction(v.e, v.n))
	}
	if r.phase.holdX == 0 {
		return r.plates.solve(y, r.phase.t, guess), r.phase.t, 1
	}
	z = r.phase.holdX
	bottom, _ := r.plates.bottom(z, r.mostT)
	spare = y - bottom
	t, _ = r.plates.hold(z, y, r.mostT, tGuess)
	if t <= r.passive { // what the head gives back by itself already makes it stronger
		return r.plates.solve(y, r.passive, guess), r.passive, spare
	}
	return z, t, spare
}

// fraction keeps the rounding of the last drops inside 0 to 1.
func fraction(e, n float64) float64 { return math.Min(math.Max(e/n, 0), 1) }

// rate returns what a mole of distillate changes in the vessels.
func (r *marcher) rate(v vessels, guess, tGuess float64) (d vessels, z, t, spare float64) {
	z, t, spare = r.distillate(v, guess, tGuess)
	steam := 0.0
	if r.batch.Steam.Live {
		steam = r.batch.Steam.PerVapour
	}
	up := 1 / (1 - t) // vapour under the plates
	if !r.thumping {
		return vessels{e: -z, n: steam*up - 1}, z, t, spare
	}
	fromPot := up / (1 - r.batch.Thumper.LossPct/100)
	y, _ := r.pot.vapour(fraction(v.e, v.n))
	return vessels{e: -y * fromPot, n: (steam - 1) * fromPot, thumpE: y*fromPot - z, thumpN: fromPot - 1}, z, t, spare
}

func (v vessels) plus(h float64, d vessels) vessels {
	return vessels{v.e + h*d.e, v.n + h*d.n, v.thumpE + h*d.thumpE, v.thumpN + h*d.thumpN}
}

// look fills a moment: what runs from the vessels of s, and where the traces go.
func (r *marcher) look(s *state, mo *moment, guess, tGuess float64) {
	mo.rate, mo.z, mo.t, mo.spare = r.rate(s.v, guess, tGuess)
	if !r.traced {
		return
	}
	l, x, n, held, layer := r.pot, fraction(s.v.e, s.v.n), s.v.n, s.potK, &r.potLayer
	if r.thumping {
		copy(mo.potK, r.enrich.volatilities(l, x))
		r.potLayer.cap(mo.potK, held, n, l.TempK(x))
		l, x, n, held, layer = r.head, fraction(s.v.thumpE, s.v.thumpN), s.v.thumpN, s.thumpK, &r.thumpLayer
	}
	k := r.enrich.volatilities(l, x)
	mo.oil = layer.cap(k, held, n, l.TempK(x))
	mo.heavy = 0
	for i, moles := range held {
		mo.heavy += k[i] * moles / n
	}
	r.enrich.over(&r.plates, mo.t, k, mo.rise)
	mo.over = 0
	for i, moles := range held {
		mo.over += mo.rise[i] * moles / n
	}
}

// rungeKutta returns the vessels after h moles of distillate, starting with the rates of the moment.
func (r *marcher) rungeKutta(v vessels, mo *moment, h float64) vessels {
	k1 := mo.rate
	k2, z, t, _ := r.rate(v.plus(h/2, k1), mo.z, mo.t)
	k3, z, t, _ := r.rate(v.plus(h/2, k2), z, t)
	k4, _, _, _ := r.rate(v.plus(h, k3), z, t)
	return v.plus(h/6, vessels{
		k1.e + 2*k2.e + 2*k3.e + k4.e, k1.n + 2*k2.n + 2*k3.n + k4.n,
		k1.thumpE + 2*k2.thumpE + 2*k3.thumpE + k4.thumpE, k1.thumpN + 2*k2.thumpN + 2*k3.thumpN + k4.thumpN})
}

// adams returns the vessels after h moles of distillate by the rates of four moments (Adams and Bashforth), which must lie
// h apart.
func (r *marcher) adams(v vessels, mo *moment, h float64) vessels {
	a, b, c, d := mo.rate, r.past[0], r.past[1], r.past[2]
	f := func(a, b, c, d float64) float64 { return h / 24 * (55*a - 59*b + 37*c - 9*d) }
	return vessels{v.e + f(a.e, b.e, c.e, d.e), v.n + f(a.n, b.n, c.n, d.n), v.thumpE + f(a.thumpE, b.thumpE, c.thumpE, d.thumpE), v.thumpN + f(a.thumpN, b.thumpN, c.thumpN, d.thumpN)}
}

// move fills next and moNext with what is there after h moles of distillate.
func (r *marcher) move(h float64, smooth bool) {
	from, to := r.now, r.next
	to.copyFrom(from)
	if smooth && r.pasts == len(r.past) {
		to.v = r.adams(from.v, r.mo, h)
	} else {
		to.v = r.rungeKutta(from.v, r.mo, h)
	}
	// What the vessels lose, the distillate gains; what they do not lose although it has come over is steam.
	to.outE += from.v.e + from.v.thumpE - to.v.e - to.v.thumpE
	lost := from.v.n + from.v.thumpN - to.v.n - to.v.thumpN
	if r.batch.Steam.Live {
		to.steamN += h - lost
		lost = h
	}
	to.outN += lost
	guess, tGuess := r.mo.z, r.mo.t
	if smooth && r.pasts > 0 {
		guess = 2*r.mo.z - r.guess
	}
	r.look(to, r.moNext, guess, tGuess)
	if !r.traced {
		return
	}
	r.moveTraces(h, r.mo, r.moNext)
	if r.mo.oil > 0 || r.moNext.oil > 0 { // how fast an oil layer goes depends on how much there is at the end of the step
		r.look(to, r.moNext, r.moNext.z, r.moNext.t)
		r.moveTraces(h, r.mo, r.moNext)
	}
}

// moveTraces fills the traces of next, for h moles of distillate between two moments. Each decays by the mean of its rates
// at both ends, which stays above 0 however fast it goes, and what one vessel loses the next one gains.
func (r *marcher) moveTraces(h float64, a, b *moment) {
	from, to := r.now, r.next
	if !r.thumping {
		for k, n := range from.potK {
			i := h / 2 * (a.rise[k]/from.v.n + b.rise[k]/to.v.n)
			lost := -n * math.Expm1(-i)
			to.potK[k] = n - lost
			to.outK[k] = from.outK[k] + lost
		}
		return
	}
	loss := 1 - r.batch.Thumper.LossPct/100
	upA, upB := 1/(1-a.t)/loss, 1/(1-b.t)/loss
	for k, n := range from.potK {
		i := h / 2 * (upA*a.potK[k]/from.v.n + upB*b.potK[k]/to.v.n)
		over := -n * math.Expm1(-i)
		to.potK[k] = n - over
		j := h / 2 * (a.rise[k]/from.v.thumpN + b.rise[k]/to.v.thumpN)
		held := from.thumpK[k]
		stays := held*math.Exp(-j) + over*meanDecay(j)
		to.thumpK[k] = stays
		to.outK[k] = from.outK[k] + (held + over - stays)
	}
}

// meanDecay returns (1 - e^-j)/j: what stays of something that flows in evenly while it decays.
func meanDecay(j float64) float64 {
	if j < 1e-8 {
		return 1 - j/2
	}
	return -math.Expm1(-j) / j
}

// keepBooks adds the heats of the step from now to next.
func (r *marcher) keepBooks(h float64) {
	from, to := r.now, r.next
	z := r.mo.z
	if h > 0 {
		z = fraction(to.outE-from.outE, h)
	}
	t := (r.mo.t + r.moNext.t) / 2
	o := r.overhead(z, t)
	steam := (to.steamN - from.steamN) * r.steamJMol
	loss := 0.0
	if pct := r.batch.Thumper.LossPct; r.thumping && pct > 0 {
		x := fraction(from.v.e, from.v.n)
		y, _ := r.pot.vapour(x)
		loss = h / (1 - t) / (1 - pct/100) * pct / 100 * heats().latent(y, r.pot.TempK(x))
	}
	b := &to.book
	b.held = r.heldJ(to.v)
	in := b.held - from.book.held + h*(o.up-o.back) + loss - steam
	b.boil += in
	b.steam += steam
	b.headLoss += h * o.headLoss
	b.vesselLoss += loss
	b.condenser += h * o.condenser
	b.distillate += h * o.distillate
	if r.powerW > 0 {
		b.seconds += (in + steam) / r.powerW
	}
}

// stepOf returns the step to take: h, halved as often as it takes for no vessel to lose more than a twentieth of its alcohol
// or of its filling.
func (r *marcher) stepOf(h float64) float64 {
	v, d := r.now.v, r.mo.rate
	for range 60 {
		if -h*d.e <= 0.05*v.e && -h*d.n <= 0.05*v.n && -h*d.thumpE <= 0.05*v.thumpE {
			break
		}
		h /= 2
	}
	return h
}

// accept makes next the present.
func (r *marcher) accept() {
	copy(r.past[1:], r.past[:2])
	r.past[0] = r.mo.rate
	r.pasts = min(r.pasts+1, len(r.past))
	r.guess = r.mo.z
	r.now, r.next = r.next, r.now
	r.mo, r.moNext = r.moNext, r.mo
	if r.record != nil {
		r.record(r.now, r.mo)
	}
}
