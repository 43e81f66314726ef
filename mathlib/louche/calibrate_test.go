package louche_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/louche"
)

func TestCalibrationGivesBackWhatWasSeen(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := randomOil(t)
		d := louche.Drink{Strength: abv(rapid.Float64Range(30, 55).Draw(t, "pct")), OilGL: rapid.Float64Range(0.2, 4).Draw(t, "GL"), Temp: celsius(rapid.Float64Range(5, 30).Draw(t, "C"))}
		s := louche.Dripped(d, rapid.Float64Range(1, 15).Draw(t, "mL"))
		c := the(louche.Calibrate(o, s))
		k := c.Checks[0]
		if !k.AfterKnown || !k.Fits {
			t.Fatalf("%v", k)
		}
		// The calibrated oil is just clear where it was seen to cloud; another crossing on the way may come first for a drink with
		// little oil, so the load is checked, not the onset.
		p := the(louche.Pour(d, c.Oil, louche.Pouring{StepML: s.WaterML, WaterML: s.WaterML}))
		if last := p.Steps[len(p.Steps)-1]; math.Abs(last.Load-1) > 1e-9 {
			t.Fatalf("%v: Σ c/S is %.12g where it was seen to cloud", c, last.Load)
		}
		// Calibrating again begins with the published numbers.
		again := the(louche.Calibrate(c.Oil, s))
		if !near(again.Factor, c.Factor, 1e-12) || again.Checks[0].Before != k.Before {
			t.Fatalf("%v; again %v", c, again)
		}
	})
}

// Drips made up from a changed oil are found again: factor, change with temperature and slope.
func TestCalibrationFindsTheOil(t *testing.T) {
	d := func(pct, gl, c float64) louche.Drink {
		return louche.Drink{Strength: abv(pct), OilGL: gl, Temp: celsius(c)}
	}
	truth := the(louche.Calibrate(anethole(), louche.Dripped(d(45, 2, 20), 4.5), louche.Dripped(d(45, 2, 8), 1.5), louche.Dripped(d(58, 8, 20), 3)))
	if !truth.HeatSeen || truth.SlopeChange == 0 || truth.ResidualFactor != 1 {
		t.Fatalf("three drips fix three unknowns: %+v", truth)
	}
	drip := func(pct, gl, c float64) louche.Seen {
		p := the(louche.Pour(d(pct, gl, c), truth.Oil, louche.Pouring{}))
		return louche.Dripped(d(pct, gl, c), p.Onset.WaterML)
	}
	got := the(louche.Calibrate(anethole(), drip(45, 2, 20), drip(45, 1.5, 10), drip(60, 8, 20), drip(52, 2, 14), drip(47, 2, 25)))
	if !near(got.HeatKJMol, truth.HeatKJMol, 1e-6) || math.Abs(got.SlopeChange-truth.SlopeChange) > 1e-6 || got.ResidualFactor > 1+1e-6 {
		t.Errorf("found %v; made from %v", got, truth)
	}
	for _, c := range got.Checks {
		if !c.Fits || math.Abs(c.After-c.Seen.WaterML) > 1e-5 {
			t.Errorf("%v", c)
		}
	}
	if got.HeatLowKJMol > got.HeatKJMol || got.HeatHighKJMol < got.HeatKJMol {
		t.Errorf("%v", got)
	}
}

// The demonstration: one observed point moves the prediction, and its factor is told. Figures reckoned apart (golden).
func TestBeforeAndAfter(t *testing.T) {
	d := louche.Drink{Strength: abv(45), OilGL: 2}
	for _, c := range []struct{ ml, factor, cloudC, lowC, highC float64 }{{4.5, 0.885, 7.4, -0.5, 10.9}, {8, 1.124, 1.3, -10.0, 6.4}} {
		cal := the(louche.Calibrate(anethole(), louche.Dripped(d, c.ml)))
		before, after, err := cal.CloudPoints(d)
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(cal.Factor-c.factor) > 1e-3 || math.Abs(after.TempC-c.cloudC) > 0.06 || math.Abs(after.LowC-c.lowC) > 0.1 || math.Abs(after.HighC-c.highC) > 0.1 {
			t.Errorf("%g mL: %v; %v; golden factor %g, %g °C (%g to %g)", c.ml, cal, after, c.factor, c.cloudC, c.lowC, c.highC)
		}
		if math.Abs(before.TempC-4.2) > 0.05 || before.HighC-before.LowC < 2*(after.HighC-after.LowC) {
			t.Errorf("before %v, after %v: the drip must narrow the range", before, after)
		}
	}
}

// Golden: a drip at 20 °C and bottles of 42 % vol that are cloudy at 8 and clear at 12 °C bound the heat of solution.
func TestBottlesBoundTheHeat(t *testing.T) {
	bottle := func(c float64) louche.Drink { return louche.Drink{Strength: abv(42), OilGL: 2, Temp: celsius(c)} }
	drip := louche.Dripped(louche.Drink{Strength: abv(45), OilGL: 2}, 6.137)
	c := the(louche.Calibrate(anethole(), drip, louche.SeenClear(bottle(12)), louche.SeenCloudy(bottle(8))))
	if math.Abs(c.HeatLowKJMol-19.4) > 0.1 || math.Abs(c.HeatHighKJMol-29.5) > 0.1 || !c.HeatSeen {
		t.Errorf("%v; golden 19.4 to 29.5 kJ/mol", c)
	}
	p := the(louche.CloudPointOf(bottle(20), c.Oil))
	if p.LowC < 8-0.7 || p.HighC > 12+0.7 || p.TempC < 8 || p.TempC > 12 {
		t.Errorf("%v; the bottles said between 8 and 12 °C", p)
	}
	if p.At(celsius(16)) != louche.StaysClear || p.At(celsius(4)) != louche.TurnsCloudy || p.At(celsius(10)) != louche.Undecided {
		t.Errorf("%v: %v at 16, %v at 4, %v at 10 °C", p, p.At(celsius(16)), p.At(celsius(4)), p.At(celsius(10)))
	}
	if m := p.MarginC(celsius(16)); math.Abs(m-(16-p.TempC)) > 1e-12 {
		t.Errorf("margin at 16 °C is %g", m)
	}
	one := the(louche.Calibrate(anethole(), drip, louche.SeenClear(bottle(12))))
	if one.HeatSeen || math.Abs(one.HeatHighKJMol-29.5) > 0.1 || one.HeatLowKJMol != 15 || len(one.Notes) == 0 {
		t.Errorf("a clear bottle bounds the heat from above only: %+v", one)
	}
	other := the(louche.Calibrate(anethole(), drip, louche.SeenCloudy(bottle(8))))
	if other.HeatSeen || math.Abs(other.HeatLowKJMol-19.4) > 0.1 || other.HeatHighKJMol != 35 {
		t.Errorf("a cloudy bottle bounds the heat from below only: %+v", other)
	}
	near20 := the(louche.Calibrate(anethole(), drip, louche.SeenCloudy(louche.Drink{Strength: abv(60), OilGL: 0.1, Temp: celsius(18)})))
	if len(near20.Notes) != 1 || !strings.Contains(near20.Notes[0], "does not fit") || near20.Checks[1].Fits {
		t.Errorf("a bottle that cannot be cloudy by oil: %v, %v", near20.Notes, near20.Checks)
	}
}

func TestBottlesAlone(t *testing.T) {
	at4 := func(pct float64) louche.Drink { return louche.Drink{Strength: abv(pct), OilGL: 2, Temp: celsius(4)} }
	c := the(louche.Calibrate(anethole(), louche.SeenClear(at4(48)), louche.SeenCloudy(at4(45))))
	s := the(louche.ClearAt(c.Oil, 2, celsius(4)))
	if s.Strength.ABV() < 45 || s.Strength.ABV() > 48 || s.Low.ABV() < 45-1e-6 || s.High.ABV() > 48+1e-6 {
		t.Errorf("%v: %v; the bottles said from 45 to 48 %% vol", c, s)
	}
	if c.HeatSeen {
		t.Errorf("bottles at one temperature say nothing of another: %v", c)
	}
	one := the(louche.Calibrate(anethole(), louche.SeenClear(at4(45))))
	if len(one.Notes) != 1 || one.Spread < 1.3 {
		t.Errorf("one clear bottle: %v %v", one, one.Notes)
	}
}

// What nobody has weighed still has its cloud temperature.
func TestOilCountedInParts(t *testing.T) {
	weighed := the(louche.Calibrate(anethole(), louche.Dripped(louche.Drink{Strength: abv(45), OilGL: 2}, 5.2)))
	parts := the(louche.Calibrate(anethole().InParts(), louche.Dripped(louche.Drink{Strength: abv(45), OilGL: 1}, 5.2)))
	a := the(louche.CloudPointOf(louche.Drink{Strength: abv(45), OilGL: 2}, weighed.Oil))
	b := the(louche.CloudPointOf(louche.Drink{Strength: abv(45), OilGL: 1}, parts.Oil))
	if !near(a.TempC, b.TempC, 1e-12) {
		t.Errorf("weighed %v; in parts %v", a, b)
	}
	p := the(louche.Pour(louche.Drink{Strength: abv(45), OilGL: 1}, parts.Oil, louche.Pouring{}))
	if p.Thickest.Turbidity.Known || strings.Contains(p.String(), "g/L") || strings.Contains(parts.String(), "published") {
		t.Errorf("in parts: %v; %v", p, parts)
	}
	if _, _, err := parts.CloudPoints(louche.Drink{Strength: abv(45), OilGL: 1}); err == nil {
		t.Error("a prediction before the calibration of oil in parts")
	}
	for name, err := range map[string]error{
		"cloud":    second(louche.CloudPointOf(louche.Drink{Strength: abv(45), OilGL: 1}, anethole().InParts())),
		"triangle": second(louche.TriangleOf(parts.Oil, celsius(20))),
		"line":     second(louche.DilutionLine(louche.Drink{Strength: abv(45), OilGL: 1}, parts.Oil)),
		"bottle":   second(louche.Calibrate(anethole().InParts(), louche.SeenClear(louche.Drink{Strength: abv(45), OilGL: 1}))),
		"like":     second(anethole().Like(parts.Oil)),
	} {
		if err == nil {
			t.Errorf("%s of oil in parts: no error", name)
		}
	}
}

func TestLikeCarriesTheCalibration(t *testing.T) {
	c := the(louche.Calibrate(anethole(), louche.Dripped(louche.Drink{Strength: abv(45), OilGL: 2}, 4.5)))
	o := the(louche.OilFromAmounts(louche.Amount{Compound: "anethole", GL: 2}))
	like := the(o.Like(c.Oil))
	a, b := the(louche.CloudPointOf(louche.Drink{Strength: abv(45), OilGL: 2}, like)), the(louche.CloudPointOf(louche.Drink{Strength: abv(45), OilGL: 2}, c.Oil))
	if a.TempC != b.TempC || like.TotalGL() != 2 || !like.Calibrated() {
		t.Errorf("%v; %v", a, b)
	}
}

func TestCalibrateRefuses(t *testing.T) {
	d := louche.Drink{Strength: abv(45), OilGL: 2}
	cold := func(pct, c float64) louche.Drink { return louche.Drink{Strength: abv(pct), OilGL: 2, Temp: celsius(c)} }
	for name, c := range map[string]struct {
		err  error
		says string
	}{
		"nothing seen":       {second(louche.Calibrate(anethole())), "nothing was seen"},
		"no oil":             {second(louche.Calibrate(louche.Oil{}, louche.Dripped(d, 5))), "no oil"},
		"no water":           {second(louche.Calibrate(anethole(), louche.Dripped(d, 0))), "SeenCloudy"},
		"negative water":     {second(louche.Calibrate(anethole(), louche.Dripped(d, -1))), "-1 mL"},
		"a lake":             {second(louche.Calibrate(anethole(), louche.Dripped(d, 1e5))), "the water"},
		"unset strength":     {second(louche.Calibrate(anethole(), louche.Dripped(louche.Drink{OilGL: 2}, 5))), "not set"},
		"no oil in it":       {second(louche.Calibrate(anethole(), louche.Dripped(louche.Drink{Strength: abv(45)}, 5))), "0 g/L"},
		"neither":            {second(louche.Calibrate(anethole(), louche.Seen{Drink: d})), "Dripped"},
		"watered bottle":     {second(louche.Calibrate(anethole(), louche.Seen{Drink: d, As: louche.WasClear, WaterML: 3})), "takes no water"},
		"bottles far apart":  {second(louche.Calibrate(anethole(), louche.SeenClear(cold(45, 15)), louche.SeenCloudy(cold(45, 4)))), "drip water"},
		"bottles contradict": {second(louche.Calibrate(anethole(), louche.SeenClear(cold(42, 4)), louche.SeenCloudy(cold(48, 4)))), "one oil"},
		"far off":            {second(louche.Calibrate(anethole(), louche.SeenClear(cold(20, 20)))), "factor of 2"},
		"wax":                {second(louche.Calibrate(anethole(), louche.Dripped(d, 6.1), louche.SeenCloudy(cold(60, 8)))), "wax"},
		"hot and cold":       {second(louche.Calibrate(anethole(), louche.Dripped(d, 6.1), louche.SeenClear(cold(42, 8)), louche.SeenCloudy(cold(42, 12)))), "wax"},
	} {
		if c.err == nil || !strings.Contains(c.err.Error(), c.says) || !strings.HasPrefix(c.err.Error(), "louche.Calibrate: ") || strings.Contains(c.err.Error(), "\n") {
			t.Errorf("%s: %v; want one line that says %q", name, c.err, c.says)
		}
	}
	var _ alcoholometry.Strength
}

func second[T any](_ T, err error) error { return err }
