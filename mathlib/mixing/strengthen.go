package mixing

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Strengthening is a tank that was brought down too far and is raised again with stronger spirits.
type Strengthening struct {
	Tank     alcoholometry.Spirit
	Added    []alcoholometry.Spirit // what to take of each spirit at hand, in the order given; 0 L of those not needed
	AddedL   float64                // the sum of their volumes as measured, L
	AddedKg  float64                // their true mass, kg
	Result   alcoholometry.Spirit   // at the tank's temperature
	WarmingC float64                // by how much the heat of mixing alone warms the tank, °C (an estimate, ±10 %); below 0 if it cools
	MixedAt  quantity.Temperature   // of the tank just after mixing, if no heat gets out
}

// Strengthen returns how much of the spirits at hand brings a tank up to the strength to. They are used in the order in
// which they are given, each as far as it goes. Each must hold something and be stronger than wanted. It fails if all of
// them together are not enough, and says how far they reach; if the tank is at the strength already or above; and as Blend
// does.
//
// Mass and pure alcohol are kept to the last digits; volumes are as good as OIML R 22 (1975).
func Strengthen(tank alcoholometry.Spirit, to alcoholometry.Strength, with ...alcoholometry.Spirit) (Strengthening, error) {
	const fn = "mixing.Strengthen"
	if err := checkSpirit(fn, "the tank", tank); err != nil {
		return Strengthening{}, err
	}
	if err := alcoholometry.CheckSet(fn, "the strength to reach", to); err != nil {
		return Strengthening{}, err
	}
	if tank.Strength.ABW() > to.ABW() || !differ(tank.Strength, to) {
		return Strengthening{}, fmt.Errorf("%s: the tank is at %v already, and %v is wanted; Reduce tells how much water brings a spirit down", fn, tank.Strength, to)
	}
	if len(with) == 0 {
		return Strengthening{}, fmt.Errorf("%s: no stronger spirit is given; give what is at hand, with its volume", fn)
	}
	s := Strengthening{Tank: tank}
	massKg := tank.MassKg()
	ethanolKg := massKg * tank.Strength.ABW() / 100
	target := to.ABW() / 100
	parts := []part{{massKg, tank.Strength, tank.Temp}}
	for i, w := range with {
		what := fmt.Sprintf("spirit %d at hand", i+1)
		if err := checkSpirit(fn, what, w); err != nil {
			return Strengthening{}, err
		}
		if w.Strength.ABW() <= to.ABW() {
			return Strengthening{}, fmt.Errorf("%s: %s is at %v, no stronger than the %v wanted; leave it out", fn, what, w.Strength, to)
		}
		lacking := target*massKg - ethanolKg // kg of ethanol
		if lacking < 1e-13*massKg {
			lacking = 0 // what rounding left
		}
		share := w.Strength.ABW() / 100
		kg := math.Min(math.Max(lacking/(share-target), 0), w.MassKg())
		used := w
		used.VolumeL = w.VolumeL * kg / w.MassKg()
		massKg += kg
		ethanolKg += kg * share
		s.Added = append(s.Added, used)
		s.AddedL += used.VolumeL
		s.AddedKg += kg
		parts = append(parts, part{kg, w.Strength, w.Temp})
	}
	if short := target*massKg - ethanolKg; short > 1e-12*massKg {
		return Strengthening{}, shortOf(fn, massKg, ethanolKg, to, with[len(with)-1])
	}
	var err error
	if s.Result, err = amount(fn, massKg, to, tank.Temp); err != nil {
		return Strengthening{}, err
	}
	if s.WarmingC, s.MixedAt, err = warmingOf(parts, to); err != nil {
		return Strengthening{}, as(fn, err)
	}
	return s, nil
}

// shortOf says how far the spirits at hand reach, and how much more of the last one would do.
func shortOf(function string, massKg, ethanolKg float64, to alcoholometry.Strength, last alcoholometry.Spirit) error {
	reached, err := alcoholometry.ABW(100 * ethanolKg / massKg)
	if err != nil {
		return as(function, err)
	}
	moreKg := (to.ABW()/100*massKg - ethanolKg) / (last.Strength.ABW()/100 - to.ABW()/100)
	more, err := amount(function, moreKg, last.Strength, last.Temp)
	if err != nil {
		return err
	}
	return fmt.Errorf("%s: all the spirits at hand bring the tank to %.3f %% vol, and %v is wanted; %s L more at %v would do", function, reached.ABV(), to, quantity.Figure(more.VolumeL), last.Strength)
}

// String gives the strengthening in one line.
func (s Strengthening) String() string {
	out := s.Tank.String()
	for _, a := range s.Added {
		if a.VolumeL > 0 {
			out += fmt.Sprintf(" + %s L at %v", quantity.Figure(a.VolumeL), a.Strength)
		}
	}
	return out + " = " + s.Result.String()
}

// Rows gives the strengthening as a table, each row a label, a figure and a unit.
func (s Strengthening) Rows() [][]string {
	rows := [][]string{{fmt.Sprintf("tank at %v, %v", s.Tank.Strength, s.Tank.Temp), quantity.Figure(s.Tank.VolumeL), "L"}}
	for _, a := range s.Added {
		rows = append(rows, []string{fmt.Sprintf("add of the spirit at %v, %v", a.Strength, a.Temp), quantity.Figure(a.VolumeL), "L"})
	}
	return append(rows,
		[]string{fmt.Sprintf("result at %v, %v", s.Result.Strength, s.Result.Temp), quantity.Figure(s.Result.VolumeL), "L"},
		[]string{"tank just after mixing (estimate)", fmt.Sprintf("%.1f", s.MixedAt.C()), "°C"})
}
