package still_test

import (
	"math"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/equilibrium"
	"swanneck/mathlib/still"
)

func TestPlanSteps(t *testing.T) {
	plan := []still.Phase{{Reflux: 6, Until: still.AtVolume(1)}, {Reflux: 0.5, Until: still.AtStrength(abv(70))}}
	b := still.Batch{Pot: litres(100, 0.1), Plates: 3, Plan: plan, Reflux: 3, Until: abv(40)}
	r := the(still.Distil(b))
	refluxes := map[float64]int{}
	for i, s := range r.Steps {
		refluxes[math.Round(100*s.Reflux)/100]++
		if i > 0 && s.CollectedL < r.Steps[i-1].CollectedL {
			t.Fatalf("step %d: %g L after %g L", i, s.CollectedL, r.Steps[i-1].CollectedL)
		}
	}
	if len(refluxes) != 3 || refluxes[6] == 0 || refluxes[0.5] == 0 || refluxes[3] == 0 {
		t.Errorf("refluxes of the run: %v", refluxes)
	}
	near(t, "what runs just before a litre", at(r, 0.999, r.SeriesABV()), firstABV(b, 6, 1), 0.02)
	// Where the reflux rises again, so does the strength.
	for i := 1; i < len(r.Steps); i++ {
		if r.Steps[i-1].Reflux == 0.5 && r.Steps[i].Reflux > 2 {
			near(t, "the end of the second phase", r.Steps[i-1].Strength.ABV(), 70, 1e-6)
			if r.Steps[i].Strength.ABV() < 75 {
				t.Errorf("with more reflux %v runs after %v", r.Steps[i].Strength, r.Steps[i-1].Strength)
			}
		}
	}
	// A phase of its own gives the same as a plan of it.
	one := the(still.Distil(still.Batch{Pot: litres(100, 0.1), Plates: 3, Reflux: 6, Stop: still.AtVolume(1)}))
	near(t, "pot after the first phase", r.Cut(still.AtStart(), still.AtVolume(1)).Spirit.Strength.ABV(), one.Distillate.Strength.ABV(), 1e-4)
	// A new reflux may end the run at once.
	b.Plan, b.Reflux, b.Until = plan[:1], 0, abv(75)
	if r = the(still.Distil(b)); math.Abs(r.Distillate.VolumeL-1) > 1e-6 {
		t.Errorf("without reflux what runs is below 75 %% vol at once, and %v came over", r.Distillate)
	}
}

// firstABV returns what runs when volumeL have come over at a reflux.
func firstABV(b still.Batch, reflux, volumeL float64) float64 {
	b.Plan, b.Reflux, b.Until, b.Stop = nil, reflux, alcoholometry.Strength{}, still.AtVolume(volumeL)
	r := the(still.Distil(b))
	return r.Steps[len(r.Steps)-1].Strength.ABV()
}

func TestStopsAreWhereTheyAre(t *testing.T) {
	b := wine()
	b.Until = alcoholometry.Strength{}
	end := func(m still.Mark) (still.Run, still.Step) {
		b.Stop = m
		r := the(still.Distil(b))
		return r, r.Steps[len(r.Steps)-1]
	}
	_, s := end(still.AtStrength(abv(33)))
	near(t, "strength", s.Strength.ABV(), 33, 1e-8)
	_, s = end(still.AtPotStrength(abv(3)))
	near(t, "pot", s.PotStrength.ABV(), 3, 1e-8)
	_, s = end(still.AtVolume(7.5))
	near(t, "volume", s.CollectedL, 7.5, 1e-8)
	_, s = end(still.AtHead(celsius(92)))
	near(t, "head", s.Head.C(), 92, 1e-7)
	for _, m := range []still.Mark{still.OverLimit("acetic acid", mgL(500)), still.UnderLimit("ethyl acetate", mgL(80)), still.UnderLimit("ethyl acetate", the(ghlPure(20)))} {
		r, s := end(m)
		near(t, m.String()+": the cut there is all", r.Cut(still.AtStart(), m).ToL, s.CollectedL, 1e-3*s.CollectedL)
	}
}

// The head's loss is a reflux: the share of the heat that it loses comes back.
func TestHeadLossIsReflux(t *testing.T) {
	b := still.Batch{Pot: litres(50, 0.06), Plates: 2, Reflux: 1, Until: abv(30), Heat: still.Heating{PowerKW: 4, HeadLossKW: 0.8}}
	r := the(still.Distil(b))
	// A fifth of the vapour, of which half of the rest is taken: R + 1 = 2/0.8.
	near(t, "reflux", r.Steps[0].Reflux, 1.5, 1e-9)
	b.Heat.HeadLossKW, b.Reflux = 0, 1.5
	near(t, "strength", r.Distillate.Strength.ABV(), the(still.Distil(b)).Distillate.Strength.ABV(), 1e-9)
	near(t, "heat lost over the heat of the vapour", r.Heat.HeadLossKJ/(r.Heat.BoilUpKJ), 0.2, 0.02)
}

// By hand and by tables: 100 kg of 8 % by mass from 20 °C to the boil take about 310 kJ/kg by tables of specific heats (4.33
// kJ/(kg K), Melinder, 72.3 K), 318 with Larkin's heat of mixing; the vapour of a plain pot takes 40.8 kJ to the mole at the
// beginning (Perry's heats of vaporisation).
func TestHeats(t *testing.T) {
	s := the(alcoholometry.ABW(8.01))
	b := still.Batch{Pot: the(alcoholometry.Weighed(100, s)), Until: abv(10), Heat: still.Heating{PowerKW: 10, WaterIn: celsius(12), WaterOut: celsius(52), Distillate: celsius(20)}}
	r := the(still.Distil(b))
	near(t, "heat to the boil, kJ/kg", r.Heat.HeatUpKJ/100, 314, 8)
	near(t, "minutes to the boil", r.Heat.HeatUpMin, r.Heat.HeatUpKJ/10/60, 1e-9)
	near(t, "minutes in all", r.Heat.Min, (r.Heat.HeatUpKJ+r.Heat.BoilUpKJ)/10/60, 1e-9)
	near(t, "cooling water", r.Heat.CoolingL, r.Heat.CondenserKJ/(4.18*40), 1e-9)
	perMol := 1000 * (r.Steps[20].HeatKJ - r.Steps[0].HeatKJ) / moles(alcoholometry.Spirit{VolumeL: r.Steps[20].CollectedL, Strength: r.Steps[20].Collected})
	near(t, "heat for a mole of distillate, J", perMol, 43300, 1500)
	b.Heat.PowerKW, b.Heat.EfficiencyPct = 40, 50
	near(t, "twice the heat takes half the time", the(still.Distil(b)).Heat.Min, r.Heat.Min/2, 1e-9)
	b.Heat.PotLossKW = 5
	near(t, "a loss of 5 of 20 kW", the(still.Distil(b)).Heat.Min, r.Heat.Min*10/15, 1e-9)
	b.Heat = still.Heating{VesselKg: 50, VesselKJKgK: 0.5}
	near(t, "50 kg of steel, kJ", the(still.Distil(b)).Heat.HeatUpKJ-r.Heat.HeatUpKJ, 50*0.5*(r.Steps[0].Pot.C()-20), 1e-6)
	if none := the(still.Distil(b)); none.Heat.Min != 0 || none.Heat.CoolingMostLH != 0 {
		t.Errorf("without a power there are %g min", none.Heat.Min)
	}
}

func TestPressureInThePot(t *testing.T) {
	b := still.Batch{Pot: litres(50, 0.06), UntilPot: mole(0.02), PotDropKPa: 4}
	r := the(still.Distil(b))
	near(t, "the pot boils at", r.Steps[0].Pot.C(), the(equilibrium.Bubble(b.Pot.Strength, kPa(105.325))).Temp.C(), 1e-4)
	b.P, b.PotDropKPa = the(kPaAt(2000)), 0
	high := the(still.Distil(b))
	near(t, "at 2000 m it boils at", high.Steps[0].Pot.C(), the(equilibrium.Bubble(b.Pot.Strength, b.P)).Temp.C(), 1e-4)
}

// The same batch gives the same run, whatever was distilled before it.
func TestRunsRepeat(t *testing.T) {
	a := the(still.Distil(wine()))
	for p := 90.0; p < 100; p++ { // throws the tables at hand out
		b := wine()
		b.P, b.Steps = kPa(p), 20
		the(still.Distil(b))
	}
	c := the(still.Distil(wine()))
	for i := range a.Steps {
		if a.Steps[i] != c.Steps[i] {
			t.Fatalf("step %d: %+v and %+v", i, a.Steps[i], c.Steps[i])
		}
	}
	if a.String() != c.String() {
		t.Errorf("%v and %v", a, c)
	}
}
