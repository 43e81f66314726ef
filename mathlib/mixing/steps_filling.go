package mixing

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// fill works out the steps that bring what is in the tank, of strength from, to the strength wanted.
func (p *StepPlan) fill(function string, s sweet, from alcoholometry.Strength, t quantity.Temperature) error {
	o := p.Order
	p.contents = []sweet{s}
	var to []alcoholometry.Strength
	if differ(from, o.To) {
		var err error
		if to, err = o.strengths(function, from); err != nil {
			return err
		}
	}
	for i, strength := range to {
		step, after, err := o.step(function, s, from, strength, t)
		if err != nil {
			return err
		}
		step.Number, step.Day = p.number+i+1, p.day+i*o.RestDays
		step.Date = o.date(step.Day)
		if o.TankL > 0 {
			if err := o.room(function, step, after); err != nil {
				return err
			}
		}
		p.WaterKg += step.WaterKg
		p.ScaleKg += step.ScaleKg
		p.WaterL += step.WaterL
		p.Steps, p.contents = append(p.Steps, step), append(p.contents, after)
		s, from, t = after, strength, o.TankTemp
	}
	p.ReadyDay = p.day + len(p.Steps)*o.RestDays
	p.ReadyDate = o.date(p.ReadyDay)
	var err error
	if p.Result, err = s.close(function, o.TankTemp); err != nil {
		return err
	}
	p.Result.Strength = from // as it was asked for, to the last digit
	return nil
}

// step works out one addition of water to what is in a tank at t.
func (o StepOrder) step(function string, s sweet, from, to alcoholometry.Strength, t quantity.Temperature) (WaterStep, sweet, error) {
	waterKg, after, err := s.reduce(function, from, to)
	if err != nil {
		return WaterStep{}, sweet{}, err
	}
	step := WaterStep{From: from, To: to, WaterKg: waterKg}
	if err := quantity.CheckRange(function, "temperature of the water", o.WaterTemp.C(), 0, 40, "°C", "liquid water, OIML R 22 (1975)"); err != nil {
		return WaterStep{}, sweet{}, err
	}
	water, err := amount(function, waterKg, alcoholometry.Water, o.WaterTemp)
	if err != nil {
		return WaterStep{}, sweet{}, err
	}
	step.WaterL = water.VolumeL
	if step.ScaleKg, err = alcoholometry.BalanceFromMassKg(waterKg, alcoholometry.Water, o.WaterTemp); err != nil {
		return WaterStep{}, sweet{}, as(function, err)
	}
	if step.TankL, err = after.volumeL(function, o.TankTemp); err != nil {
		return WaterStep{}, sweet{}, err
	}
	parts := []part{{s.baseKg, s.strength, t}, {waterKg, alcoholometry.Water, o.WaterTemp}}
	if step.WarmingC, step.MixedAt, err = warmingOf(parts, after.strength); err != nil {
		return WaterStep{}, sweet{}, as(function, err)
	}
	seen := to
	if after.sugarKg > 0 {
		l, err := after.close(function, o.TankTemp)
		if err != nil {
			return WaterStep{}, sweet{}, err
		}
		if seen, err = apparent(function, l, o.TankTemp); err != nil {
			return step, after, nil // too heavy for an alcoholometer: Readable stays false
		}
	}
	if step.ReadingABV, err = alcoholometry.Reading(seen, o.TankTemp, alcoholometry.MarkedAt(o.MarkedAt)); err != nil {
		return WaterStep{}, sweet{}, as(function, err)
	}
	step.Readable = true
	return step, after, nil
}

// room returns an error if the tank cannot hold a step, warm as it is just after mixing.
func (o StepOrder) room(function string, step WaterStep, after sweet) error {
	most := step.TankL
	if step.MixedAt.C() > o.TankTemp.C() {
		warm := step.MixedAt
		if warm.C() > 40 { // the density formula ends there
			var err error
			if warm, err = quantity.Celsius(40); err != nil {
				return err
			}
		}
		v, err := after.volumeL(function, warm)
		if err != nil {
			return err
		}
		most = math.Max(most, v)
	}
	if most > o.TankL {
		return fmt.Errorf("%s: step %d fills %s L when it has just been mixed and the tank holds %s L; take a larger tank or %s L less spirit",
			function, step.Number, quantity.Figure(most), quantity.Figure(o.TankL), quantity.Figure(o.Spirit.VolumeL*(1-o.TankL/most)))
	}
	return nil
}

// TankReading is what was found in the tank after a rest.
type TankReading struct {
	AfterStep  int                  // the number of the last step that was done; 0 for none
	ReadingABV float64              // what the alcoholometer shows, per cent by volume on its scale
	Temp       quantity.Temperature // of the tank when it was read; 20 °C if unset
	VolumeL    float64              // what the dip gives, L at Temp; 0 if it was not measured
	Day        int                  // days after the first day of the plan; 0 for the day on which the next step is due
}

// ReplanSteps returns the steps that are left from what was read in the tank. Its strength is what the reading says, with
// what the sugar hides added back; the amount is that of the dip or, without one, the mass that the plan has there,
// because the water was weighed. It fails for a step that the plan has not, for a reading below the strength wanted
// (Strengthen tells how to mend that), and as PlanSteps does.
//
// Source: as for PlanSteps and TrueStrengthWithExtract.
func ReplanSteps(p StepPlan, r TankReading) (StepPlan, error) {
	const fn = "mixing.ReplanSteps"
	index := r.AfterStep - p.number
	if len(p.contents) == 0 {
		return StepPlan{}, fmt.Errorf("%s: the plan is empty; make one with PlanSteps", fn)
	}
	if index < 0 || index >= len(p.contents) {
		return StepPlan{}, fmt.Errorf("%s: after step %d; the plan has steps %d to %d", fn, r.AfterStep, p.number, p.number+len(p.Steps))
	}
	read, err := alcoholometry.TrueStrength(r.ReadingABV, r.Temp, alcoholometry.MarkedAt(p.Order.MarkedAt))
	if err != nil {
		return StepPlan{}, as(fn, err)
	}
	found, strength, err := p.contents[index].found(fn, read, r)
	if err != nil {
		return StepPlan{}, err
	}
	o := p.Order
	if strength.ABW() < o.To.ABW() && differ(strength, o.To) {
		return StepPlan{}, fmt.Errorf("%s: the tank is at %.3f %% vol, below the %v wanted; water cannot raise it, but Strengthen tells how much stronger spirit does", fn, strength.ABV(), o.To)
	}
	planned := o.Spirit.Strength
	if index > 0 {
		planned = p.Steps[index-1].To
	}
	next := StepPlan{Order: o, number: r.AfterStep, day: r.Day, OffABV: strength.ABV() - planned.ABV()}
	if r.Day < 0 {
		return StepPlan{}, fmt.Errorf("%s: day %d; give a day of 0 or more", fn, r.Day)
	}
	if r.Day == 0 {
		next.day = p.day + index*o.RestDays
	}
	l, err := found.close(fn, r.Temp)
	if err != nil {
		return StepPlan{}, err
	}
	next.Order.Spirit = alcoholometry.Spirit{VolumeL: l.VolumeL, Strength: strength, Temp: r.Temp}
	next.Order.SugarGL = l.SugarGL
	if err := next.fill(fn, found, strength, r.Temp); err != nil {
		return StepPlan{}, err
	}
	return next, nil
}

// found returns what is in the tank by its reading, and the strength of the whole. The sugar is the plan's.
func (s sweet) found(function string, read alcoholometry.Strength, r TankReading) (sweet, alcoholometry.Strength, error) {
	if err := quantity.CheckRange(function, "the volume", r.VolumeL, 0, math.Inf(1), "L", ""); err != nil {
		return sweet{}, alcoholometry.Strength{}, err
	}
	rho, err := alcoholometry.DensityKgM3(read, r.Temp)
	if err != nil {
		return sweet{}, alcoholometry.Strength{}, as(function, err)
	}
	kg := s.baseKg + s.sugarKg
	if r.VolumeL > 0 {
		kg = r.VolumeL / 1000 * rho
	}
	if s.sugarKg == 0 {
		return sweet{baseKg: kg, strength: read}, read, nil
	}
	// The density of the whole is read; the sugar in it is known, so the rest has a density of its own.
	restL := kg/rho*1000 - s.sugarKg*sugarLKg
	if kg <= s.sugarKg || restL <= 0 {
		return sweet{}, alcoholometry.Strength{}, fmt.Errorf("%s: %s kg with %s kg of sugar in it leave nothing for the spirit; check the dip", function, quantity.Figure(kg), quantity.Figure(s.sugarKg))
	}
	base, err := alcoholometry.StrengthFromDensity((kg-s.sugarKg)/restL*1000, r.Temp)
	if err != nil {
		return sweet{}, alcoholometry.Strength{}, fmt.Errorf("%s: a reading of %g with the plan's sugar is of no mixture of ethanol and water; check the reading and the dip", function, r.ReadingABV)
	}
	out := sweet{sugarKg: s.sugarKg, baseKg: kg - s.sugarKg, strength: base}
	l, err := out.close(function, r.Temp)
	return out, l.Strength, err
}
