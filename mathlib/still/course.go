package still

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// distilled is how a run came to its end.
type distilled struct {
	mol float64 // that have come over
	why string  // why it ended
}

// ending is what ends with a step.
type ending int

const (
	goesOn ending = iota
	phaseEnds
	runEnds
)

// run carries the batch to its end in steps of about h moles of distillate.
func (r *marcher) run(h float64) (distilled, error) {
	if err := r.begin(); err != nil {
		return distilled{}, err
	}
	for i, p := range r.phases {
		r.phase = p
		r.look(r.now, r.mo, r.mo.z, r.mo.t)
		if i == 0 {
			if err := r.checkStart(); err != nil {
				return distilled{}, err
			}
		}
		if r.record != nil {
			r.record(r.now, r.mo)
		}
		end, err := r.runPhase(h)
		if err != nil {
			return distilled{}, err
		}
		if end == runEnds {
			return distilled{r.now.outN, "it came to " + r.stop.mark.String()}, nil
		}
	}
	if r.now.outN == 0 {
		y, _ := r.pot.vapour(fraction(r.now.v.e, r.now.v.n))
		most := r.plates.solve(y, r.mostT, 0)
		return distilled{}, inputf(r.function, "%v cannot be held: with a reflux of %g the run begins at %v; give more plates or less strength", strengthOf(r.phase.holdX), r.batch.MostReflux, strengthOf(most))
	}
	return distilled{r.now.outN, fmt.Sprintf("%v could be held no longer, even with a reflux of %g", strengthOf(r.phase.holdX), r.batch.MostReflux)}, nil
}

// runPhase goes on until the phase is over, or the run.
func (r *marcher) runPhase(h float64) (ending, error) {
	r.pasts = 0
	last := 0.0
	for _, e := range []ending{runEnds, phaseEnds} { // a new reflux may bring about the end at once
		if r.remaining(e, r.now, r.mo) <= 0 {
			return e, nil
		}
	}
	for n := 0; ; n++ {
		step := r.stepOf(h)
		if step != last {
			r.pasts = 0
			last = step
		}
		r.move(step, true)
		end := goesOn
		if r.remaining(runEnds, r.next, r.moNext) <= 0 || r.remaining(phaseEnds, r.next, r.moNext) <= 0 {
			step, end = r.shorten(step)
		}
		if r.record != nil {
			r.keepBooks(step)
		}
		r.accept()
		if end != goesOn {
			return end, nil
		}
		if err := r.checkGoing(n); err != nil {
			if r.lenient {
				return runEnds, nil
			}
			return goesOn, err
		}
	}
}

// remaining returns how far it is to an ending: above 0 before it. The unit is that of the mark.
func (r *marcher) remaining(e ending, s *state, mo *moment) float64 {
	left := math.Inf(1)
	switch {
	case e == runEnds && r.stop != nil:
		left = r.stop.left(r.machine, s, mo)
	case e == phaseEnds:
		if r.phase.until != nil {
			left = r.phase.until.left(r.machine, s, mo)
		}
		if r.phase.holdX > 0 {
			left = math.Min(left, mo.spare)
		}
	}
	return left
}

// shorten finds how far of a step it is to the first ending in it, moves that far, and says which one it is.
func (r *marcher) shorten(step float64) (float64, ending) {
	run0, phase0 := r.remaining(runEnds, r.now, r.mo), r.remaining(phaseEnds, r.now, r.mo)
	of := func(left, at0 float64) float64 {
		if math.IsInf(left, 1) {
			return 1
		}
		return left / at0
	}
	share := func() (run, phase float64) {
		return of(r.remaining(runEnds, r.next, r.moNext), run0), of(r.remaining(phaseEnds, r.next, r.moNext), phase0)
	}
	f := func(h float64) float64 {
		r.move(h, false)
		return math.Min(share())
	}
	if at1 := f(step); at1 < 0 {
		step = root(f, 0, step, 1, at1, 1e-12*step)
		r.move(step, false)
	}
	if run, phase := share(); run <= phase {
		return step, runEnds
	}
	return step, phaseEnds
}

// The run is given up when this share of the pot is left, or the pot is water.
const dryShare = 0.02

// checkGoing returns an error if the end will not come.
func (r *marcher) checkGoing(n int) error {
	v := r.now.v
	weak := v.e <= leastFraction*v.n || r.thumping && v.thumpE <= leastFraction*v.thumpN
	why := ""
	switch {
	case v.n <= dryShare*r.start.n:
		why = "98 % of the pot is over"
	case weak:
		why = "the alcohol is over"
	case n > 200*r.batch.Steps:
		why = "the reckoning needs more steps than are sensible"
	default:
		return nil
	}
	end := r.phase.until
	if r.stop != nil {
		end = r.stop
	}
	if end == nil {
		return &NeverError{Func: r.function, What: "its end", Why: why}
	}
	return &NeverError{Func: r.function, What: end.mark.String(), Why: why + " and " + r.standing(end)}
}

// standing says where a run stands in respect of an event.
func (r *marcher) standing(e *event) string {
	switch e.mark.kind {
	case potMark:
		return fmt.Sprintf("the pot is at %v", strengthOf(fraction(r.now.v.e, r.now.v.n)))
	case volumeMark:
		return fmt.Sprintf("%s L have been collected", quantity.Figure(r.outL(r.now)))
	case headMark:
		return fmt.Sprintf("the head is at %.1f °C", r.headK(r.mo.z)-273.15)
	case underMark, overMark:
		return fmt.Sprintf("what runs holds %s mg/kg of %s", grams(r.runningMgKg(e.k, r.now, r.mo)), e.mark.name)
	}
	return fmt.Sprintf("what runs is %v", strengthOf(r.mo.z))
}

// checkStart returns an error if the run is over before it begins.
func (r *marcher) checkStart() error {
	if r.stop == nil || r.stop.left(r.machine, r.now, r.mo) > 0 {
		return nil
	}
	return inputf(r.function, "the run is to end at %v, and it begins beyond that: %s", r.stop.mark, r.standing(r.stop))
}

// begin brings the pot to the boil, and with a thumper that too.
func (r *marcher) begin() error {
	v, err := r.heatUp(r.now.v, &r.now.book)
	if err != nil {
		return err
	}
	r.now.steamN += v.n - r.now.v.n
	r.now.v = v
	if r.powerW > 0 {
		r.now.book.seconds = (r.now.book.heatUp + r.now.book.steam) / r.powerW
	}
	if r.thumping {
		if err := r.warmThumper(); err != nil {
			return err
		}
	}
	r.now.book.held = r.heldJ(r.now.v)
	return nil
}
