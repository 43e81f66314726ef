package yield_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
	"swanneck/mathlib/yield"
)

// gin is a process with everything in it.
func gin() yield.Process {
	return yield.Process{
		BaseName: "neutral spirit", Base: abv(96), BasePerL: 2.4, BottleL: 0.5, Strength: abv(44), Currency: "XTS",
		GoodsPerBottle: 1.9, WaterPerL: 0.01, DutyPerPureL: 12, CostPerDay: 150,
		Stages: []yield.Stage{
			{Kind: yield.Maceration, In: abv(55), LossPct: 0.5, HeldLPerKg: 1.2, BatchL: 200, AtOnce: 2, DaysPerBatch: 1, Botanicals: []yield.Botanical{{Name: "juniper", GPerL: 18, CostPerKg: 14}, {Name: "coriander", GPerL: 9, CostPerKg: 8}}},
			{Kind: yield.BotanicalRun, In: abv(45), Out: abv(78), LossPct: 2, AsidePct: 6, ReturnPct: 80, BatchL: 250, DaysPerBatch: 1, CostPerBatch: 40},
			{Kind: yield.Reduction, Out: abv(44), LossPct: 0.3, RestDays: 7},
			{Kind: yield.Filtration, LossPct: 0.8, CostPerL: 0.05, DaysPerBatch: 1},
			{Kind: yield.Filling, LossPct: 1.2, BatchL: 400, DaysPerBatch: 1},
		},
	}
}

func TestForwardAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := gin()
		for i := range p.Stages {
			p.Stages[i].LossPct = rapid.Float64Range(0, 9).Draw(t, "loss")
		}
		p.Stages[1].AsidePct, p.Stages[1].ReturnPct = rapid.Float64Range(0, 30).Draw(t, "aside"), rapid.Float64Range(0, 100).Draw(t, "returned")
		n := rapid.IntRange(1, 20000).Draw(t, "bottles")
		back := the(yield.ForBottles(p, n))
		if back.Bottles != n || !near(back.Exact, float64(n), 1e-11) {
			t.Fatalf("%v; %d bottles were wanted", back, n)
		}
		ahead := the(yield.FromBase(p, back.BaseL))
		if ahead.Bottles != n || ahead.Cost != back.Cost {
			t.Fatalf("%v\nback: %v", ahead, back)
		}
		// Pure alcohol: what the base brings is in bottles, lost, or set aside for good.
		if got := back.Stages[4].OutPureL + back.LossL + back.AsideL; !near(got, back.BasePureL, 1e-10) {
			t.Fatalf("%v: %.9g L of pure alcohol are accounted for, %.9g came", back, got, back.BasePureL)
		}
		if !near(back.PureL, float64(n)*0.5*0.44, 1e-9) {
			t.Fatalf("%v: %.9g L of pure alcohol in the bottles", back, back.PureL)
		}
		pure := back.BasePureL
		for _, s := range back.Stages {
			if !near(s.ComesL, pure, 1e-12) || !near(s.InPureL, s.ComesL+s.ReturnedL, 1e-12) || !near(s.InPureL, s.OutPureL+s.LossL+s.AsideL, 1e-12) {
				t.Fatalf("%+v; %.9g comes", s, pure)
			}
			if in := (alcoholometry.Spirit{VolumeL: s.InL, Strength: s.Stage.In}); !near(in.PureL(), s.InPureL, 1e-12) {
				t.Fatalf("%+v", s)
			}
			if !near(float64(s.Batches)*s.BatchL, s.InL, 1e-12) || s.Stage.BatchL > 0 && (s.BatchL > s.Stage.BatchL*(1+1e-9) || float64(s.Batches-1)*s.Stage.BatchL > s.InL) {
				t.Fatalf("%+v", s)
			}
			pure = s.OutPureL
		}
		sum, shares := 0.0, 0.0
		for _, c := range back.Costs {
			sum += c.Money
			shares += c.SharePct
			if !near(c.PerBottle*float64(n), c.Money, 1e-12) {
				t.Fatalf("%+v", c)
			}
		}
		if !near(sum, back.Cost, 1e-12) || !near(shares, 100, 1e-12) || !near(back.PerBottle*float64(n), sum, 1e-12) {
			t.Fatalf("costs add up to %.9g and %.9g %%; the plan says %.9g", sum, shares, back.Cost)
		}
	})
}

// One plan step by step, by the functions that the plan rests on.
func TestPlanByHand(t *testing.T) {
	p := gin()
	plan := the(yield.FromBase(p, 100))
	m := plan.Stages[0]
	r := the(mixing.Reduce(alcoholometry.Spirit{VolumeL: 100, Strength: abv(96)}, abv(55)))
	if !near(m.InL, r.Result.VolumeL, 1e-12) || !near(m.WaterKg, r.WaterKg, 1e-12) || m.Batches != 1 || m.Days != 1 {
		t.Errorf("%+v; reduced %v", m, r)
	}
	// 27 g/L of herbs that keep 1.2 L/kg hold 3.24 % back.
	if want := 96 * (0.005 + 0.0324); !near(m.LossL, want, 1e-9) || !near(m.Botanicals[0].Kg, 0.018*m.InL, 1e-12) {
		t.Errorf("%+v; want a loss of %.6f L", m, want)
	}
	run := plan.Stages[1]
	// 6 % aside, of which 80 % comes back: each batch holds 1/(1-0.048) of what comes.
	if !near(run.InPureL, m.OutPureL/0.952, 1e-12) || !near(run.OutPureL, run.InPureL*0.92, 1e-12) || run.WaterKg <= 0 {
		t.Errorf("%+v", run)
	}
	red := plan.Stages[2]
	down := the(mixing.Reduce(alcoholometry.Spirit{VolumeL: run.OutL, Strength: abv(78)}, abv(44)))
	if !near(red.WaterKg, down.WaterKg, 1e-11) || red.Days != 7 {
		t.Errorf("%+v; reduced %v", red, down)
	}
	if plan.Days != 1+1+7+1+1 {
		t.Errorf("%g days", plan.Days)
	}
	// Twice the charge: three batches, two at a time, take two days.
	if m := the(yield.FromBase(p, 310)).Stages[0]; m.Batches != 3 || m.Days != 2 {
		t.Errorf("%+v", m)
	}
}

func TestOneMorePerCent(t *testing.T) {
	p := the(yield.ForBottles(gin(), 1000))
	g := the(yield.OneMorePerCent(p))
	for i, s := range g.Stages {
		loss := p.Process.Stages[i].LossPct
		if s.Points != math.Min(1, loss) {
			t.Errorf("%v", s)
		}
		// A stage passes on a share of what comes; a point more of it, over that share, is more bottles.
		st := p.Stages[i]
		want := 1000 * s.Points / 100 * st.InPureL / st.OutPureL
		if !near(s.MoreBottles, want, 1e-9) {
			t.Errorf("%v; want %.6f bottles", s, want)
		}
		if want := p.BaseL * (1 - 1/(1+s.MoreBottles/1000)); !near(s.SavedBaseL, want, 1e-9) {
			t.Errorf("%v; want %.6f L", s, want)
		}
	}
	// Spent on at every stage before: a litre saved at the end saves more money than one saved at the start.
	run, filling := g.Stages[1], g.Stages[4]
	if filling.SavedMoney/filling.SavedBaseL <= run.SavedMoney/run.SavedBaseL || run.SavedMoney < run.SavedBaseL*2.4 {
		t.Errorf("%+v, %+v", run, filling)
	}
}

func TestProcessesThatAreNone(t *testing.T) {
	for want, spoil := range map[string]func(p *yield.Process){
		"strength of the neutral spirit is not set": func(p *yield.Process) { p.Base = alcoholometry.Strength{} },
		"strength of the bottle is not set":         func(p *yield.Process) { p.Strength = alcoholometry.Strength{} },
		"give both above 0 % vol":                   func(p *yield.Process) { p.Base = alcoholometry.Water },
		"volume of a bottle is 0 L":                 func(p *yield.Process) { p.BottleL = 0 },
		"there are no stages":                       func(p *yield.Process) { p.Stages = nil },
		"there is no stage \"magic\"":               func(p *yield.Process) { p.Stages[0].Kind = "magic" },
		"two stages are named filling":              func(p *yield.Process) { p.Stages[3].Name = "filling" },
		"the last stage gives 45.00 % vol and the":  func(p *yield.Process) { p.Stages[2].Out = abv(45) },
		"water only brings it down":                 func(p *yield.Process) { p.Stages[1].In = abv(60) },
		"only distilling makes it stronger":         func(p *yield.Process) { p.Stages[3].Out = abv(50) },
		"which leaves nothing":                      func(p *yield.Process) { p.Stages[1].LossPct, p.Stages[1].AsidePct = 60, 40 },
		"the loss of filling is -1 per cent":        func(p *yield.Process) { p.Stages[4].LossPct = -1 },
		"the batch of filling is -1 L":              func(p *yield.Process) { p.Stages[4].BatchL = -1 },
		"-2 batches of filling at once":             func(p *yield.Process) { p.Stages[4].AtOnce = -2 },
		"the currency is \"\"":                      func(p *yield.Process) { p.Currency = "" },
		"the cost of juniper is -1 XTS":             func(p *yield.Process) { p.Stages[0].Botanicals[0].CostPerKg = -1 },
		"the duty is NaN XTS":                       func(p *yield.Process) { p.DutyPerPureL = math.NaN() },
		"juniper in maceration is -1 g/L":           func(p *yield.Process) { p.Stages[0].Botanicals[0].GPerL = -1 },
		"is to take in 0.00 % vol":                  func(p *yield.Process) { p.Stages[1].In = alcoholometry.Water },
		"is to give on 0.00 % vol":                  func(p *yield.Process) { p.Stages[2].Out = alcoholometry.Water },
	} {
		p := gin()
		spoil(&p)
		if plan, err := yield.ForBottles(p, 100); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v, %v; want %q", plan, err, want)
		}
		if _, err := yield.FromBase(p, 100); err == nil {
			t.Errorf("%s: FromBase made a plan", want)
		}
	}
	if _, err := yield.ForBottles(gin(), 0); err == nil {
		t.Error("a plan for no bottles")
	}
	for _, litres := range []float64{0, -1, math.Inf(1), math.NaN(), 1e300} {
		if p, err := yield.FromBase(gin(), litres); err == nil {
			t.Errorf("%v from %g L", p, litres)
		}
	}
	if _, err := yield.OneMorePerCent(yield.Plan{}); err == nil {
		t.Error("gains of an empty plan")
	}
}
