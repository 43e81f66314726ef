package colour_test

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/colour"
)

func series(k, start, browned float64, days ...float64) colour.Readings {
	r := colour.Readings{Strength: abv(65), Browned: browned}
	for _, d := range days {
		r.Readings = append(r.Readings, colour.Reading{Day: d + 3, Value: browned + start*math.Exp(-k*d)})
	}
	return r
}

func TestLossIsFoundAgain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := math.Exp(rapid.Float64Range(-5, 0).Draw(t, "lnK"))
		browned := rapid.Float64Range(0, 0.2).Draw(t, "browned")
		half := math.Ln2 / k
		got := the(colour.FitLoss(series(k, 0.8, browned, 0, half/2, half, 2*half)))
		if math.Abs(got.PerDay/k-1) > 1e-6 || got.HighOpen || math.Abs(got.HalfDays()/half-1) > 1e-6 {
			t.Fatalf("%v; made with %.9g per day", got, k)
		}
		two := series(k, 0.8, browned, 0, half)
		two.PlusMinus = 0.002
		got = the(colour.FitLoss(two))
		sd := math.Hypot(0.002/0.8, 0.002/0.4) / half
		if math.Abs(got.PerDay/k-1) > 1e-9 || math.Abs((got.HighPerDay-got.PerDay)/(1.96*sd)-1) > 1e-4 {
			t.Fatalf("%v from two readings; made with %.9g per day, standard deviation %.3g", got, k, sd)
		}
	})
}

// Of a hundred noisy series the range holds the true rate in at least ninety.
func TestLossRangeCovers(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 1512))
	const k = 0.02
	covered, open := 0, 0
	for range 100 {
		r := series(k, 0.8, 0, 0, 10, 20, 40, 60)
		for i := range r.Readings {
			r.Readings[i].Value += 0.01 * rng.NormFloat64()
		}
		l := the(colour.FitLoss(r))
		if l.LowPerDay <= k && k <= l.HighPerDay {
			covered++
		}
		if l.HighOpen {
			open++
		}
	}
	if covered < 90 || covered == 100 && open > 0 {
		t.Errorf("%d of 100 ranges hold the true rate (%d open)", covered, open)
	}
	t.Logf("%d of 100 ranges hold the true rate", covered)
}

func TestLossRefuses(t *testing.T) {
	fine := series(0.02, 0.8, 0, 0, 10, 30)
	at := func(change func(*colour.Readings)) error {
		r := fine
		r.Readings = append([]colour.Reading(nil), fine.Readings...)
		change(&r)
		_, err := colour.FitLoss(r)
		return err
	}
	for name, c := range map[string]struct {
		err  error
		says string
	}{
		"one reading":    {at(func(r *colour.Readings) { r.Readings = r.Readings[:1] }), "at least two"},
		"times go back":  {at(func(r *colour.Readings) { r.Readings[2].Day = 1 }), "give them in order"},
		"two without sd": {at(func(r *colour.Readings) { r.Readings = r.Readings[:2] }), "PlusMinus"},
		"tiny fall": {at(func(r *colour.Readings) {
			r.Readings = r.Readings[:2]
			r.Readings[1].Value = 0.799
			r.PlusMinus = 0.002
		}), "too small to tell"},
		"rising":          {at(func(r *colour.Readings) { r.Readings[1].Value, r.Readings[2].Value = 0.85, 0.9 }), "do not fall"},
		"flat":            {at(func(r *colour.Readings) { r.Readings[1].Value, r.Readings[2].Value = 0.81, 0.795 }), "too small to tell"},
		"below browned":   {at(func(r *colour.Readings) { r.Browned = 0.7 }), "browned end"},
		"unset strength":  {at(func(r *colour.Readings) { r.Strength = colour.Readings{}.Strength }), "not set"},
		"negative sd":     {at(func(r *colour.Readings) { r.PlusMinus = -1 }), "uncertainty"},
		"no number":       {at(func(r *colour.Readings) { r.Readings[1].Value = math.NaN() }), "NaN"},
		"negative finish": {at(func(r *colour.Readings) { r.Browned = -1 }), "browned"},
	} {
		if c.err == nil || !strings.Contains(c.err.Error(), c.says) || strings.Contains(c.err.Error(), "\n") {
			t.Errorf("%s: %v; want one line with %q", name, c.err, c.says)
		}
	}
}

func TestWarmthOfTwoJars(t *testing.T) {
	jar := func(c, k float64) colour.Loss {
		return colour.Loss{PerDay: k, LowPerDay: k * 0.9, HighPerDay: k * 1.1, Strength: abv(65), Temp: celsius(c)}
	}
	true71 := colour.Warmth{KJMol: 71, LowKJMol: 71, HighKJMol: 71}
	k30 := 0.01 * true71.Factor(celsius(10), celsius(30))
	for _, pair := range [][2]colour.Loss{{jar(10, 0.01), jar(30, k30)}, {jar(30, k30), jar(10, 0.01)}} {
		w := the(colour.WarmthOf(pair[0], pair[1]))
		if math.Abs(w.KJMol-71) > 1e-9 || w.LowKJMol >= 71 || w.HighKJMol <= 71 || !w.Seen || w.HighKJMol-w.LowKJMol > 20 {
			t.Errorf("%v; made with 71 kJ/mol", w)
		}
	}
	other := jar(30, k30)
	other.Strength = abv(45)
	openLoss := jar(30, k30)
	openLoss.HighOpen = true
	zero := jar(30, k30)
	zero.LowPerDay = 0
	for name, err := range map[string]error{
		"other strength": second(colour.WarmthOf(jar(10, 0.01), other)),
		"too close":      second(colour.WarmthOf(jar(18, 0.01), jar(20, 0.02))),
		"colder faster":  second(colour.WarmthOf(jar(10, 0.02), jar(30, 0.01))),
		"open":           second(colour.WarmthOf(jar(10, 0.01), openLoss)),
		"no lower end":   second(colour.WarmthOf(jar(10, 0.01), zero)),
		"no loss":        second(colour.WarmthOf(colour.Loss{}, jar(10, 1))),
	} {
		if err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

func TestInfusion(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u, k := math.Exp(rapid.Float64Range(-4, 2).Draw(t, "lnU")), math.Exp(rapid.Float64Range(-9, 2).Draw(t, "lnK"))
		f := colour.Infusion{UptakePerH: u, LossPerH: k, AllMgL: 8}
		h := f.GreenestH()
		top := f.AfterMgL(h)
		if f.AfterMgL(0) != 0 || top <= 0 || top > 8 {
			t.Fatalf("%v: %g at the start, %g at %g h", f, f.AfterMgL(0), top, h)
		}
		for _, x := range []float64{0.5, 0.9, 1.1, 2} {
			if f.AfterMgL(h*x) > top*(1+1e-12) {
				t.Fatalf("%v: %.12g at %g h, more than %.12g at the greenest", f, f.AfterMgL(h*x), h*x, top)
			}
		}
		// The rates balance there: what comes out of the herb is what is lost.
		if gain, loss := u*8*math.Exp(-u*h), k*top; math.Abs(gain/loss-1) > 1e-6 {
			t.Fatalf("%v: gains %.9g, loses %.9g an hour at the greenest", f, gain, loss)
		}
		// Equal rates are the limit of nearly equal ones.
		e := colour.Infusion{UptakePerH: k, LossPerH: k, AllMgL: 8}
		n := colour.Infusion{UptakePerH: k * (1 + 1e-9), LossPerH: k, AllMgL: 8}
		if math.Abs(e.AfterMgL(1/k)/n.AfterMgL(1/k)-1) > 1e-8 || math.Abs(e.AfterMgL(1/k)-8/math.E) > 1e-9 {
			t.Fatalf("equal rates give %.12g, nearly equal %.12g; want 8/e", e.AfterMgL(1/k), n.AfterMgL(1/k))
		}
	})
	hours := []float64{1, 2, 4, 8, 12, 24}
	var mgL []float64
	truth := colour.Infusion{UptakePerH: 0.2, LossPerH: 0.01, AllMgL: 10}
	for _, h := range hours {
		mgL = append(mgL, truth.AfterMgL(h))
	}
	fit := the(colour.FitUptake(hours, mgL, 0.01))
	if math.Abs(fit.Infusion.UptakePerH-0.2) > 1e-6 || math.Abs(fit.Infusion.AllMgL-10) > 1e-5 || fit.HighOpen || fit.LastPartPct < 99 {
		t.Errorf("%v; made with 0.2 per hour and 10 mg/L", fit)
	}
	// Golden, reckoned apart by another program: first order, 0.19999 per hour, 0.1829 to 0.2187, 9.999 in all.
	fit = the(colour.FitUptake(hours, []float64{1.75, 3.42, 5.39, 8.11, 8.98, 9.95}, 0))
	if math.Abs(fit.Infusion.UptakePerH-0.19999) > 2e-4 || math.Abs(fit.LowPerH-0.1829) > 2e-4 || math.Abs(fit.HighPerH-0.2187) > 2e-4 || math.Abs(fit.Infusion.AllMgL-9.999) > 2e-3 || math.Abs(fit.ScatterMgL-0.126) > 1e-3 {
		t.Errorf("%v, %g to %g, scatter %g; golden 0.19999 (0.1829 to 0.2187), 9.999, 0.126", fit, fit.LowPerH, fit.HighPerH, fit.ScatterMgL)
	}
	early := the(colour.FitUptake([]float64{1, 2, 3}, []float64{1, 1.95, 2.8}, 0))
	if !early.LowOpen && early.LastPartPct > 50 || !strings.Contains(early.String(), "extrapolation") {
		t.Errorf("a series that stopped early: %v", early)
	}
	for name, err := range map[string]error{
		"two readings": second(colour.FitUptake([]float64{1, 2}, []float64{1, 2}, 0)),
		"unequal":      second(colour.FitUptake([]float64{1, 2, 3}, []float64{1, 2}, 0)),
		"back in time": second(colour.FitUptake([]float64{1, 3, 2}, []float64{1, 2, 3}, 0)),
		"negative":     second(colour.FitUptake([]float64{1, 2, 3}, []float64{1, -2, 3}, 0)),
		"nothing":      second(colour.FitUptake([]float64{1, 2, 3}, []float64{0, 0, 0}, 0)),
		"loss":         second(colour.FitUptake([]float64{1, 2, 3}, []float64{1, 2, 3}, -1)),
	} {
		if err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

func TestLadder(t *testing.T) {
	one := the(colour.DilutionLadder(1.25, 3))
	if math.Abs(one.Low-math.Pow(1.25, 3)) > 1e-9 || math.Abs(one.High-math.Pow(1.25, 4)) > 1e-9 || one.People != 1 {
		t.Errorf("one look: %v; the bracket is 1.95 to 2.44", one)
	}
	// Half widths of the mean in per cent when everybody names the same rung (reckoned from ln 1.25/√12 and Student's t).
	for _, c := range []struct {
		n   int
		pct float64
	}{{3, 16.0}, {4, 10.2}, {6, 6.8}} {
		looks := make([]int, c.n)
		for i := range looks {
			looks[i] = 2
		}
		l := the(colour.DilutionLadder(0, looks...))
		if half := 100 * math.Log(l.High/l.Times); math.Abs(half-c.pct) > 0.6 || math.Abs(math.Log(l.Times)-2.5*math.Log(1.25)) > 1e-12 {
			t.Errorf("%d looks: %v, ± %.2f %%; want %.1f", c.n, l, half, c.pct)
		}
	}
	mixed := the(colour.DilutionLadder(1.25, 2, 3, 3, colour.HueDiffers))
	if mixed.NoMatch || mixed.People != 3 || mixed.HueDiffers != 1 {
		t.Errorf("%+v", mixed)
	}
	hue := the(colour.DilutionLadder(1.25, 2, colour.HueDiffers))
	if !hue.NoMatch || !strings.Contains(hue.String(), "hue differs") || len(hue.Rows()) != 1 {
		t.Errorf("%+v", hue)
	}
	if _, err := colour.LossByLadder(hue, 30, abv(65), celsius(20)); err == nil || !strings.Contains(err.Error(), "hue") {
		t.Errorf("a loss of another hue: %v", err)
	}
	three := the(colour.DilutionLadder(1.25, 3, 3, 4))
	l := the(colour.LossByLadder(three, 30, abv(65), celsius(20)))
	if math.Abs(l.PerDay*30-math.Log(three.Times)) > 1e-12 || l.LowPerDay <= 0 || !strings.Contains(l.From, "ladder") {
		t.Errorf("%v", l)
	}
	for name, err := range map[string]error{
		"nobody":      second(colour.DilutionLadder(1.25)),
		"rung below":  second(colour.DilutionLadder(1.25, -2)),
		"no step":     second(colour.DilutionLadder(1, 3)),
		"no loss yet": second(colour.LossByLadder(the(colour.DilutionLadder(1.25, 0, 0, 0)), 30, abv(65), celsius(20))),
		"no ladder":   second(colour.LossByLadder(colour.Ladder{}, 30, abv(65), celsius(20))),
		"no days":     second(colour.LossByLadder(three, 0, abv(65), celsius(20))),
		"no strength": second(colour.LossByLadder(three, 30, colour.Loss{}.Strength, celsius(20))),
	} {
		if err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

func TestPanelLadder(t *testing.T) {
	// All five change their minds between rungs 2 and 3: the mean is the middle of that bracket.
	l := the(colour.PanelLadder(1.25, colour.Rung{5, 5}, colour.Rung{5, 5}, colour.Rung{5, 5}, colour.Rung{5, 0}))
	if math.Abs(math.Log(l.Times)-2.5*math.Log(1.25)) > 1e-12 {
		t.Errorf("%v", l)
	}
	// By hand: shares 1, 0.8, 0.4, 0: ln D = ln r (0.2·0.5 + 0.4·1.5 + 0.4·2.5) = 1.7 ln r; var = ln²r (0.16/4 + 0.24/4) = 0.1 ln²r.
	l = the(colour.PanelLadder(1.25, colour.Rung{5, 5}, colour.Rung{5, 4}, colour.Rung{5, 2}, colour.Rung{5, 0}))
	d := math.Log(1.25)
	if math.Abs(math.Log(l.Times)-1.7*d) > 1e-12 || math.Abs(math.Log(l.High/l.Times)-1.959963984540054*math.Sqrt(0.1)*d) > 1e-12 {
		t.Errorf("%v", l)
	}
	// A rise on the way is pooled: 0.4 and 0.6 count as 0.5 and 0.5.
	p := the(colour.PanelLadder(1.25, colour.Rung{5, 5}, colour.Rung{5, 2}, colour.Rung{5, 3}, colour.Rung{5, 0}))
	if math.Abs(math.Log(p.Times)-1.5*d) > 1e-12 {
		t.Errorf("%v: pooled, ln D is 1.5 ln r", p)
	}
	for name, err := range map[string]error{
		"one rung":        second(colour.PanelLadder(1.25, colour.Rung{5, 5})),
		"starts too late": second(colour.PanelLadder(1.25, colour.Rung{5, 4}, colour.Rung{5, 0})),
		"ends too early":  second(colour.PanelLadder(1.25, colour.Rung{5, 5}, colour.Rung{5, 1})),
		"one person":      second(colour.PanelLadder(1.25, colour.Rung{1, 1}, colour.Rung{1, 0})),
		"more than asked": second(colour.PanelLadder(1.25, colour.Rung{5, 6}, colour.Rung{5, 0})),
		"step":            second(colour.PanelLadder(3, colour.Rung{5, 5}, colour.Rung{5, 0})),
	} {
		if err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
