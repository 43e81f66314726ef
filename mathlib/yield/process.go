package yield

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Botanical goes into a charge.
type Botanical struct {
	Name      string
	GPerL     float64 // for each litre that goes in, as it goes in, g
	CostPerKg float64 // money for a kilogram, in the unit of the currency
}

// Stage is one stage of a process as it is planned. What goes in is counted with what comes back from the batch before.
type Stage struct {
	Kind Kind
	Name string // its own, if there are several of a kind; the kind if empty

	LossPct   float64 // lost, per cent of the pure alcohol that goes in
	AsidePct  float64 // set aside as heads and tails, per cent of the pure alcohol that goes in
	ReturnPct float64 // of what is set aside, the part that goes into the next batch of this stage, per cent

	In  alcoholometry.Strength // what comes is first brought down to this with water; unset for as it comes
	Out alcoholometry.Strength // of what is given on; unset for as it goes in. Only distilling makes it stronger

	Botanicals []Botanical
	HeldLPerKg float64 // what a kilogram of them keeps back, L as it goes in; lost beside LossPct

	BatchL       float64 // the most that goes in at once, L at 20 °C; 0 for all in one batch
	AtOnce       int     // batches at the same time, in as many stills or tanks; 1 if 0
	DaysPerBatch float64 // days that a batch takes (the unit is the day)
	RestDays     float64 // days of rest after the last batch (the unit is the day)
	CostPerBatch float64 // money for heat, wages and the like, in the unit of the currency
	CostPerL     float64 // money for each litre that goes in, in the unit of the currency
}

// Process is the way from a base to bottles.
type Process struct {
	BaseName string                 // such as "wine" or "neutral spirit"; "base" if empty
	Base     alcoholometry.Strength // of the base
	BasePerL float64                // money for a litre of it at 20 °C, in the unit of the currency
	Stages   []Stage                // in their order

	BottleL        float64                // the nominal volume of a bottle, L at 20 °C
	Strength       alcoholometry.Strength // of what is bottled
	GoodsPerBottle float64                // money for glass, closure, label and box of a bottle, in the unit of the currency
	WaterPerL      float64                // money for a litre of water, in the unit of the currency
	DutyPerPureL   float64                // the duty that you state for a litre of pure alcohol, in the unit of the currency; 0 for none
	CostPerDay     float64                // money for each day that it takes, in the unit of the currency
	Currency       string                 // three letters of ISO 4217, such as "EUR"; needed with costs
}

// sameABV is how far the last stage may be from the strength of the bottle, % vol: less than any label shows.
const sameABV = 0.05

// check returns an error for a process that cannot be, and puts in the names and strengths that are left out.
func (p *Process) check(function string) error {
	if p.BaseName == "" {
		p.BaseName = "base"
	}
	if err := alcoholometry.CheckSet(function, "the strength of the "+p.BaseName, p.Base); err != nil {
		return err
	}
	if err := alcoholometry.CheckSet(function, "the strength of the bottle", p.Strength); err != nil {
		return err
	}
	if p.Base.ABW() == 0 || p.Strength.ABW() == 0 {
		return fmt.Errorf("%s: the %s is at %v and the bottle at %v; give both above 0 %% vol", function, p.BaseName, p.Base, p.Strength)
	}
	if err := notBelow0(function, "the volume of a bottle", p.BottleL, "L"); err != nil {
		return err
	}
	if p.BottleL == 0 {
		return fmt.Errorf("%s: the volume of a bottle is 0 L; give one above 0 L, such as 0.7", function)
	}
	if len(p.Stages) == 0 {
		return fmt.Errorf("%s: there are no stages from the %s to the bottle; give at least the filling", function, p.BaseName)
	}
	p.Stages = append([]Stage(nil), p.Stages...)
	names := map[string]bool{}
	at := p.Base
	for i := range p.Stages {
		s := &p.Stages[i]
		if err := s.check(function, at); err != nil {
			return err
		}
		if names[s.Name] {
			return fmt.Errorf("%s: two stages are named %s; give each its own name", function, s.Name)
		}
		names[s.Name] = true
		at = s.Out
	}
	if math.Abs(at.ABV()-p.Strength.ABV()) > sameABV {
		return fmt.Errorf("%s: the last stage gives %v and the bottle is to be at %v; add a reduction, or set Out of a stage", function, at, p.Strength)
	}
	return p.checkMoney(function)
}

func (s *Stage) check(function string, comes alcoholometry.Strength) error {
	if _, err := UsualLoss(s.Kind); err != nil {
		return unknown(function, s.Kind)
	}
	if s.Name == "" {
		s.Name = string(s.Kind)
	}
	for _, c := range []struct {
		what string
		x    float64
	}{{"the loss of ", s.LossPct}, {"what is set aside of ", s.AsidePct}, {"what comes back of ", s.ReturnPct}} {
		if err := pct(function, c.what+s.Name, c.x); err != nil {
			return err
		}
	}
	for _, c := range []struct {
		what, unit string
		x          float64
	}{{"the batch of ", "L", s.BatchL}, {"the time of a batch of ", "days", s.DaysPerBatch}, {"the rest after ", "days", s.RestDays}, {"what is held back in ", "L/kg", s.HeldLPerKg}} {
		if err := notBelow0(function, c.what+s.Name, c.x, c.unit); err != nil {
			return err
		}
	}
	if s.AtOnce < 0 {
		return fmt.Errorf("%s: %d batches of %s at once; give 1 or more, or 0 for one", function, s.AtOnce, s.Name)
	}
	s.AtOnce = max(s.AtOnce, 1)
	for _, b := range s.Botanicals {
		if err := notBelow0(function, b.Name+" in "+s.Name, b.GPerL, "g/L"); err != nil {
			return err
		}
	}
	if out := s.outShare(); out <= 0 {
		return fmt.Errorf("%s: %s loses %.4g %% and sets aside %.4g %% of what goes in, which leaves nothing; give less", function, s.Name, 100*s.lostShare(), s.AsidePct)
	}
	if !s.In.IsSet() {
		s.In = comes
	}
	if s.In.ABW() > comes.ABW() {
		return fmt.Errorf("%s: %v comes to %s, which is to take in %v; water only brings it down", function, comes, s.Name, s.In)
	}
	if s.In.ABW() == 0 {
		return fmt.Errorf("%s: %s is to take in %v; give a strength above 0", function, s.Name, s.In)
	}
	if !s.Out.IsSet() {
		s.Out = s.In
	}
	if s.Out.ABW() == 0 {
		return fmt.Errorf("%s: %s is to give on %v; give a strength above 0", function, s.Name, s.Out)
	}
	if s.Out.ABW() > s.In.ABW() && !s.Kind.distils() {
		return fmt.Errorf("%s: %s takes in %v and cannot give on %v; only distilling makes it stronger", function, s.Name, s.In, s.Out)
	}
	return nil
}

// lostShare returns the part of the pure alcohol going in that is lost, dimensionless.
func (s *Stage) lostShare() float64 {
	g := 0.0
	for _, b := range s.Botanicals {
		g += b.GPerL
	}
	return s.LossPct/100 + g/1000*s.HeldLPerKg
}

// outShare returns the part of the pure alcohol going in that is given on, dimensionless.
func (s *Stage) outShare() float64 { return 1 - s.lostShare() - s.AsidePct/100 }

// returned returns what comes back into the stage for each litre of pure alcohol in a batch, L.
func (s *Stage) returned() float64 { return s.AsidePct / 100 * s.ReturnPct / 100 }

func (p *Process) checkMoney(function string) error {
	money := []struct {
		what string
		x    float64
	}{{"the cost of the " + p.BaseName, p.BasePerL}, {"the cost of a bottle's goods", p.GoodsPerBottle}, {"the cost of water", p.WaterPerL}, {"the duty", p.DutyPerPureL}, {"the cost of a day", p.CostPerDay}}
	for _, s := range p.Stages {
		money = append(money, struct {
			what string
			x    float64
		}{"the cost of a batch of " + s.Name, s.CostPerBatch}, struct {
			what string
			x    float64
		}{"the cost of a litre in " + s.Name, s.CostPerL})
		for _, b := range s.Botanicals {
			money = append(money, struct {
				what string
				x    float64
			}{"the cost of " + b.Name, b.CostPerKg})
		}
	}
	any := false
	for _, m := range money {
		if err := quantity.CheckRange(function, m.what, m.x, 0, math.Inf(1), p.Currency, ""); err != nil {
			return err
		}
		any = any || m.x > 0
	}
	if any && !currency(p.Currency) {
		return fmt.Errorf("%s: there are costs and the currency is %q; give its three letters, such as \"EUR\"", function, p.Currency)
	}
	return nil
}

// currency reports whether c is three capital letters.
func currency(c string) bool {
	if len(c) != 3 {
		return false
	}
	for _, r := range c {
		if r < 'A' || r > 'Z' {
			return false
		}
	}
	return true
}
