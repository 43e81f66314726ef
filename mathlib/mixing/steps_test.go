package mixing_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/mixing"
)

func TestStepsAddUpToOneReduction(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := rapid.Float64Range(45, 90).Draw(t, "from")
		o := mixing.StepOrder{
			Spirit:  alcoholometry.Spirit{VolumeL: rapid.Float64Range(1, 5000).Draw(t, "litres"), Strength: abv(from), Temp: celsius(rapid.Float64Range(5, 35).Draw(t, "tC"))},
			To:      abv(rapid.Float64Range(37, 44).Draw(t, "to")),
			DropABV: rapid.Float64Range(0.5, 20).Draw(t, "drop"), RestDays: rapid.IntRange(0, 9).Draw(t, "rest"),
			WaterTemp: celsius(12), TankTemp: celsius(rapid.Float64Range(8, 30).Draw(t, "tankC")), MarkedAt: celsius(15),
			SugarGL: rapid.SampledFrom([]float64{0, 0, 3, 20}).Draw(t, "sugar"),
		}
		if rapid.Bool().Draw(t, "haze") {
			o.HazeBelow = abv(rapid.Float64Range(30, 60).Draw(t, "border"))
		}
		p := the(mixing.PlanSteps(o))
		one := the(mixing.ReduceLiqueur(mixing.Liqueur{VolumeL: o.Spirit.VolumeL, Strength: o.Spirit.Strength, SugarGL: o.SugarGL, Temp: o.Spirit.Temp}, o.To, mixing.WaterAt(o.WaterTemp), mixing.ResultAt(o.TankTemp)))
		if !near(p.WaterKg, one.WaterKg, 1e-9) || !near(p.Result.VolumeL, one.Result.VolumeL, 1e-9) || !near(p.Result.MassKg(), one.Result.MassKg(), 1e-9) || !near(p.Result.PureL(), one.Result.PureL(), 1e-9) {
			t.Fatalf("%v; in one go %v", p, one)
		}
		before := from
		waterKg := 0.0
		for i, s := range p.Steps {
			drop := before - s.To.ABV()
			most := o.DropABV
			if o.HazeBelow.IsSet() && s.From.ABV() <= o.HazeBelow.ABV()+1e-9 {
				most = 2
			}
			if drop <= 0 || drop > most+1e-9 || math.Abs(s.From.ABV()-before) > 1e-9 {
				t.Fatalf("step %d goes from %.6f to %.6f; at most %g", i+1, before, s.To.ABV(), most)
			}
			before = s.To.ABV()
			waterKg += s.WaterKg
			days := max(o.RestDays, 1)
			if s.Number != i+1 || s.Day != i*days || p.ReadyDay != len(p.Steps)*days {
				t.Fatalf("step %+v; ready on day %d", s, p.ReadyDay)
			}
			if !s.Readable || !near(s.ScaleKg/s.WaterKg, 1-0.00105, 1e-5) {
				t.Fatalf("step %+v", s)
			}
			// The reading comes back as the strength, once corrected.
			read := the(alcoholometry.TrueStrength(s.ReadingABV, o.TankTemp, alcoholometry.MarkedAt(o.MarkedAt)))
			if o.SugarGL == 0 && math.Abs(read.ABV()-s.To.ABV()) > 1e-6 || o.SugarGL > 0 && read.ABV() >= s.To.ABV() {
				t.Fatalf("a reading of %.6f is %.6f %% vol; the step goes to %.6f", s.ReadingABV, read.ABV(), s.To.ABV())
			}
		}
		if math.Abs(before-o.To.ABV()) > 1e-9 {
			t.Fatalf("the last step ends at %.9f", before)
		}
		if len(p.Steps) < 2 {
			return
		}
		// What was read is what was planned: the rest of the plan stays.
		k := rapid.IntRange(0, len(p.Steps)-1).Draw(t, "read")
		r := mixing.TankReading{AfterStep: k, Temp: o.TankTemp}
		if k == 0 {
			r.Temp = o.Spirit.Temp
			seen := the(mixing.ApparentStrength(mixing.Liqueur{Strength: o.Spirit.Strength, SugarGL: o.SugarGL}, r.Temp))
			r.ReadingABV = the(alcoholometry.Reading(seen, r.Temp, alcoholometry.MarkedAt(o.MarkedAt)))
		} else {
			r.ReadingABV = p.Steps[k-1].ReadingABV
		}
		again := the(mixing.ReplanSteps(p, r))
		last := again.Steps[len(again.Steps)-1]
		if math.Abs(again.OffABV) > 1e-6 || last.To != o.To || !near(again.Result.PureL(), p.Result.PureL(), 1e-6) || !near(again.Result.VolumeL, p.Result.VolumeL, 1e-6) {
			t.Fatalf("read as planned after step %d: %v; the plan was %v", k, again, p)
		}
		if first := again.Steps[0]; first.Number != k+1 || first.Day != k*max(o.RestDays, 1) {
			t.Fatalf("the next step is %+v", first)
		}
	})
}

func TestDatedSteps(t *testing.T) {
	o := mixing.StepOrder{Spirit: alcoholometry.Spirit{VolumeL: 356, Strength: abv(72.4)}, To: abv(43), Start: "2026-02-26", RestDays: 2,
		Strengths: []alcoholometry.Strength{abv(60), abv(50), abv(46)}}
	p := the(mixing.PlanSteps(o))
	want := []string{"2026-02-26", "2026-02-28", "2026-03-02", "2026-03-04"}
	for i, s := range p.Steps {
		if s.Date != want[i] {
			t.Errorf("step %d on %s; want %s", s.Number, s.Date, want[i])
		}
	}
	if len(p.Steps) != 4 || p.ReadyDate != "2026-03-06" {
		t.Errorf("%v", p)
	}
	// The tank is found stronger than planned after two steps, a day late: the step to 50 is not made again.
	after := the(mixing.ReplanSteps(p, mixing.TankReading{AfterStep: 2, ReadingABV: 50.6, VolumeL: 515, Day: 5}))
	if len(after.Steps) != 3 || after.Steps[0].To != abv(50) || after.Steps[0].Number != 3 || after.Steps[0].Date != "2026-03-03" || math.Abs(after.OffABV-0.6) > 1e-9 {
		t.Errorf("%v, %v", after, after.Steps)
	}
	if kg := (alcoholometry.Spirit{VolumeL: 515, Strength: abv(50.6)}).MassKg(); !near(after.Result.MassKg(), kg+after.WaterKg, 1e-12) {
		t.Errorf("%v: %.3f kg; the dip gives %.3f kg and %.3f kg of water", after, after.Result.MassKg(), kg, after.WaterKg)
	}
	// And once more.
	last := the(mixing.ReplanSteps(after, mixing.TankReading{AfterStep: 4, ReadingABV: 45.9}))
	if len(last.Steps) != 1 || last.Steps[0].Number != 5 || last.Steps[0].Day != 9 {
		t.Errorf("%v", last.Steps)
	}
	// Read at the strength wanted, nothing is left to do.
	if done := the(mixing.ReplanSteps(after, mixing.TankReading{AfterStep: 5, ReadingABV: 43})); len(done.Steps) != 0 || done.ReadyDay != 11 {
		t.Errorf("%v, ready on day %d", done, done.ReadyDay)
	}
}

func TestStepsThatAreRefused(t *testing.T) {
	fine := mixing.StepOrder{Spirit: alcoholometry.Spirit{VolumeL: 100, Strength: abv(70)}, To: abv(40)}
	for want, spoil := range map[string]func(o *mixing.StepOrder){
		"volume of the spirit is 0 L":    func(o *mixing.StepOrder) { o.Spirit.VolumeL = 0 },
		"cannot raise":                   func(o *mixing.StepOrder) { o.To = abv(71) },
		"to reach is not set":            func(o *mixing.StepOrder) { o.To = alcoholometry.Strength{} },
		"is no day":                      func(o *mixing.StepOrder) { o.Start = "31.03.2026" },
		"-1 days of rest":                func(o *mixing.StepOrder) { o.RestDays = -1 },
		"drop of a step is 0.01 % vol":   func(o *mixing.StepOrder) { o.DropABV = 0.01 },
		"drop of a step is -1 % vol":     func(o *mixing.StepOrder) { o.DropABV = -1 },
		"must fall and stay above":       func(o *mixing.StepOrder) { o.Strengths = []alcoholometry.Strength{abv(50), abv(55)} },
		"step 1 goes to 30.00":           func(o *mixing.StepOrder) { o.Strengths = []alcoholometry.Strength{abv(30)} },
		"strength after step 1 is not":   func(o *mixing.StepOrder) { o.Strengths = make([]alcoholometry.Strength, 1) },
		"just been mixed and the tank h": func(o *mixing.StepOrder) { o.TankL = 150 },
		"of the water is 41 °C":          func(o *mixing.StepOrder) { o.WaterTemp = celsius(41) },
		"temperature is 50 °C":           func(o *mixing.StepOrder) { o.TankTemp = celsius(50) },
	} {
		o := fine
		spoil(&o)
		if p, err := mixing.PlanSteps(o); err == nil || !strings.Contains(err.Error(), want) || !strings.HasPrefix(err.Error(), "mixing.PlanSteps: ") {
			t.Errorf("%v, %v; want %q", p, err, want)
		}
	}
	p := the(mixing.PlanSteps(fine))
	for want, r := range map[string]mixing.TankReading{
		"the plan has steps 0 to 6": {AfterStep: 7, ReadingABV: 50},
		"but Strengthen tells":      {AfterStep: 6, ReadingABV: 39.9},
		"reading is 120 % vol":      {AfterStep: 1, ReadingABV: 120},
		"day -1":                    {AfterStep: 1, ReadingABV: 65, Day: -1},
		"the volume is -5 L":        {AfterStep: 1, ReadingABV: 65, VolumeL: -5},
	} {
		if p, err := mixing.ReplanSteps(p, r); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v, %v; want %q", p, err, want)
		}
	}
	if _, err := mixing.ReplanSteps(mixing.StepPlan{}, mixing.TankReading{}); err == nil {
		t.Error("an empty plan was made anew")
	}
}

func TestStepsTooSweetToRead(t *testing.T) {
	p := the(mixing.PlanSteps(mixing.StepOrder{Spirit: alcoholometry.Spirit{VolumeL: 50, Strength: abv(25)}, SugarGL: 350, To: abv(20)}))
	if len(p.Steps) != 1 || p.Steps[0].Readable || !strings.Contains(p.Steps[0].String(), "no alcoholometer reads it") {
		t.Errorf("%v", p.Steps)
	}
}
