package botanical_test

import (
	"math"
	"testing"

	"swanneck/mathlib/botanical"
)

func TestMoistureGolden(t *testing.T) {
	for _, r := range table(t, "moisture.golden.csv") {
		b := the(botanical.Herb("lemon balm", r.number("g_L")))
		b.MoisturePct, b.Oil.Basis = r.number("moisture_pct"), botanical.AsWeighed
		c, err := botanical.NewCharge(botanical.Recipe{Per: botanical.PerChargeL, Items: []botanical.Botanical{b}}, spirit(1, r.number("before_abv")))
		if err != nil {
			t.Error(err)
			continue
		}
		if got, want := c.Pot.Strength.ABV(), r.number("after_abv"); math.Abs(got-want) > 0.006 {
			t.Errorf("%s %% vol with %s g/L at %s %%: %.3f %% vol; golden %g", r.text("before_abv"), r.text("g_L"), r.text("moisture_pct"), got, want)
		}
		back, err := botanical.MoistureFromReadings(spirit(1, r.number("before_abv")), r.number("g_L"), c.Pot.Strength)
		if err != nil || math.Abs(back-b.MoisturePct) > 1e-6 {
			t.Errorf("moisture from readings: %v, %v; want %g", back, err, b.MoisturePct)
		}
	}
}

func TestFitsGolden(t *testing.T) {
	series := map[string]botanical.Series{
		"a": {Hours: []float64{1, 2, 4, 8, 12, 24}, Readings: []float64{1.75, 3.42, 5.39, 8.11, 8.98, 9.95}, Unit: "g/L"},
		"b": {Hours: []float64{1, 2, 3, 4}, Readings: []float64{1.8, 3.3, 4.6, 5.4}, Unit: "g/L"},
	}
	for _, r := range table(t, "fits.golden.csv") {
		f, err := botanical.FitSteep(series[r.text("series")], botanical.Model(r.text("law")))
		if err != nil {
			t.Error(err)
			continue
		}
		rate, end := f.RatePerH(), f.End()
		for _, c := range []struct {
			what string
			got  float64
			tol  float64
		}{
			{"rate", rate.Value, 0.005}, {"rate_low", rate.Low, 0.01}, {"rate_high", rate.High, 0.01}, {"end", end.Value, 0.005}, {"end_low", end.Low, 0.01},
			{"end_high", end.High, 0.01}, {"sd", f.SD, 0.005},
		} {
			if r.text(c.what) != "" && math.Abs(c.got/r.number(c.what)-1) > c.tol {
				t.Errorf("series %s, %s: %s %.5f; golden %s", r.text("series"), r.text("law"), c.what, c.got, r.text(c.what))
			}
		}
		if r.text("after_14") != "" {
			if got := f.After(14).Value; math.Abs(got-r.number("after_14")) > 0.001 {
				t.Errorf("after 14 h: %.4f; golden %s", got, r.text("after_14"))
			}
		}
	}
}

func TestUsualReachGolden(t *testing.T) {
	u, err := botanical.UsualReach(14, abv(50), celsius(20), 1)
	if err != nil {
		t.Fatal(err)
	}
	// 14 h at 0.05 to 0.3 1/h: own arithmetic. 95 % after 17.6 h or 11 min for R = 0.5 mm: computed by another program.
	if math.Abs(u.FirstOrderPct.Low-50.34) > 0.01 || math.Abs(u.FirstOrderPct.High-98.50) > 0.01 {
		t.Errorf("a night: %v %%; want 50.3 to 98.5", u.FirstOrderPct)
	}
	for _, c := range []struct{ hours, low, high float64 }{{17.58, 95, 100}, {10.55 / 60, 0, 95}} {
		u := the(botanical.UsualReach(c.hours, abv(50), celsius(20), 1))
		end := u.SpherePct.Low
		if c.low == 0 {
			end = u.SpherePct.High
		}
		if math.Abs(end-95) > 0.02 {
			t.Errorf("%g h in pieces of 1 mm: %v %%; one end is 95", c.hours, u.SpherePct)
		}
	}
}
