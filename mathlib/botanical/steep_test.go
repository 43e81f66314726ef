package botanical_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/botanical"
	"swanneck/mathlib/internal/chance"
)

var laws = []botanical.Model{botanical.FirstOrder, botanical.Peleg, botanical.FickSphere, botanical.WashedFirst, botanical.WashingAndDiffusion}

func drawLaw(t *rapid.T) botanical.Uptake {
	u := botanical.Uptake{Model: rapid.SampledFrom(laws).Draw(t, "law"), End: rapid.Float64Range(0.1, 500).Draw(t, "end"), RatePerH: rapid.Float64Range(0.01, 2).Draw(t, "rate")}
	if u.Model == botanical.WashedFirst || u.Model == botanical.WashingAndDiffusion {
		u.WashedShare = rapid.Float64Range(0, 1).Draw(t, "washed")
		u.WashPerH = u.RatePerH * rapid.Float64Range(1.5, 50).Draw(t, "washing")
	}
	return u
}

// Every law begins at 0 (or at what is washed off at once), grows, and comes to its end.
func TestLawsGrow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := drawLaw(t)
		start := 0.0
		if u.Model == botanical.WashedFirst {
			start = u.WashedShare * u.End
		}
		if got := u.At(0); math.Abs(got-start) > 1e-12*u.End {
			t.Fatalf("%v: %g at the start; want %g", u, got, start)
		}
		a := rapid.Float64Range(0, 100).Draw(t, "a")
		b := a + rapid.Float64Range(0.001, 100).Draw(t, "more")
		if u.At(b) < u.At(a)-1e-12*u.End || u.At(b) > u.End*(1+1e-12) {
			t.Fatalf("%v: %g at %g h, %g at %g h", u, u.At(a), a, u.At(b), b)
		}
		late := 1e6 / u.RatePerH
		if got := u.ReachedPct(late); math.Abs(got-100) > 1e-3 {
			t.Fatalf("%v: %g %% after a million times 1/k", u, got)
		}
		pct := rapid.Float64Range(1, 99).Draw(t, "pct")
		if h := u.HoursTo(pct); h > 0 && math.Abs(u.ReachedPct(h)-pct) > 1e-6 {
			t.Fatalf("%v: %g %% at %g h; want %g", u, u.ReachedPct(h), h, pct)
		}
	})
}

func TestLimitsOfLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k, hours := rapid.Float64Range(0.01, 2).Draw(t, "k"), rapid.Float64Range(0.1, 50).Draw(t, "h")
		f := rapid.Float64Range(0, 0.99).Draw(t, "f")
		first := botanical.Uptake{Model: botanical.FirstOrder, End: 1, RatePerH: k}
		washed := botanical.Uptake{Model: botanical.WashedFirst, End: 1, RatePerH: k}
		if math.Abs(first.At(hours)-washed.At(hours)) > 1e-15 {
			t.Fatal("nothing washed off is not first order")
		}
		washed.WashedShare = f
		both := botanical.Uptake{Model: botanical.WashingAndDiffusion, End: 1, RatePerH: k, WashedShare: f, WashPerH: 1e5}
		if math.Abs(both.At(hours)-washed.At(hours)) > 1e-12 {
			t.Fatal("fast washing is not washing at once")
		}
		// Long times of the sphere: its first term is washing of 1 - 6/π² and diffusion with π² D/R².
		tau := rapid.Float64Range(0.3, 5).Draw(t, "tau")
		one := botanical.Uptake{Model: botanical.WashedFirst, End: 1, RatePerH: math.Pi * math.Pi, WashedShare: 1 - 6/(math.Pi*math.Pi)}
		if got := the(botanical.SphereShare(tau)); math.Abs(got-one.At(tau)) > 1.2e-6 {
			t.Fatalf("sphere at %g: %.8f; its first term %.8f", tau, got, one.At(tau))
		}
	})
	// The two forms of the sphere meet.
	a, b := the(botanical.SphereShare(0.1)), the(botanical.SphereShare(math.Nextafter(0.1, 1)))
	if math.Abs(a-b) > 1e-9 {
		t.Errorf("the sphere jumps by %g at 0.1", b-a)
	}
}

// Readings that a law meets exactly give its numbers back.
func TestFitFindsTheTruth(t *testing.T) {
	hours := []float64{0.25, 0.5, 1, 2, 3, 5, 8, 12, 18, 24, 36}
	rapid.Check(t, func(t *rapid.T) {
		u := drawLaw(t)
		u.RatePerH = rapid.Float64Range(0.06, 0.5).Draw(t, "rate")
		if u.Model == botanical.FickSphere {
			u.RatePerH /= 10
		}
		if u.WashedShare > 0 {
			u.WashedShare = rapid.Float64Range(0.15, 0.6).Draw(t, "washed")
			u.WashPerH = u.RatePerH * rapid.Float64Range(8, 15).Draw(t, "washing")
		}
		s := botanical.Series{Hours: hours, Unit: "g/L"}
		for _, h := range hours {
			s.Readings = append(s.Readings, u.At(h))
		}
		f, err := botanical.FitSteep(s, u.Model)
		if err != nil {
			t.Fatal(err)
		}
		tol := 1e-6
		if u.Model == botanical.WashingAndDiffusion {
			tol = 1e-3
		}
		if !near(f.Uptake.RatePerH, u.RatePerH, tol) || !near(f.Uptake.End, u.End, tol) || math.Abs(f.Uptake.WashedShare-u.WashedShare) > tol && u.Model != botanical.FirstOrder {
			t.Fatalf("from readings of %v: %v", u, f.Uptake)
		}
		if e := f.After(10); !near(e.Value, u.At(10), tol) {
			t.Fatalf("%v after 10 h; the law %g", e, u.At(10))
		}
	})
}

// Intervals hold the truth as often as they say.
func TestCoverage(t *testing.T) {
	noise := chance.New(7)
	for _, c := range []struct {
		u     botanical.Uptake
		hours []float64
	}{
		{botanical.Uptake{Model: botanical.FirstOrder, End: 10, RatePerH: 0.2}, []float64{1, 2, 4, 8, 12, 24}},
		{botanical.Uptake{Model: botanical.FirstOrder, End: 10, RatePerH: 0.2}, []float64{2, 12, 24}},
		{botanical.Uptake{Model: botanical.Peleg, End: 10, RatePerH: 0.2}, []float64{1, 2, 4, 8, 24, 48}},
		{botanical.Uptake{Model: botanical.FickSphere, End: 10, RatePerH: 0.02}, []float64{1, 2, 4, 8, 12, 24}},
		{botanical.Uptake{Model: botanical.WashedFirst, End: 10, RatePerH: 0.2, WashedShare: 0.3}, []float64{1, 2, 4, 8, 12, 24}},
	} {
		rate, end, night, reached, washed := 0, 0, 0, 0, 0
		const n = 100
		for range n {
			s := botanical.Series{Hours: c.hours, Unit: "g/L", PlusMinus: 0}
			for _, h := range c.hours {
				s.Readings = append(s.Readings, math.Max(c.u.At(h)+0.3*noise.Normal(), 0))
			}
			f, err := botanical.FitSteep(s, c.u.Model)
			if err != nil {
				t.Fatal(err)
			}
			holds := func(e botanical.Estimate, x float64) int {
				if (!e.HasLow || x >= e.Low) && (!e.HasHigh || x <= e.High) {
					return 1
				}
				return 0
			}
			rate += holds(f.RatePerH(), c.u.RatePerH)
			end += holds(f.End(), 10)
			night += holds(f.After(14), c.u.At(14))
			reached += holds(f.Reached(14), c.u.ReachedPct(14))
			if c.u.Model == botanical.WashedFirst {
				washed += holds(f.Washed(), 30)
			} else {
				washed++
			}
		}
		for what, got := range map[string]int{"rate": rate, "end": end, "after 14 h": night, "reached": reached, "washed": washed} {
			if got < 90 {
				t.Errorf("%s at %v h: the interval of %s holds the truth in %d of %d series; want 90 at least of 95", c.u.Model, c.hours, what, got, n)
			}
		}
	}
}

// A series that stops too early says so: an end that nothing bounds, and no number.
func TestStoppedTooEarly(t *testing.T) {
	noise := chance.New(3)
	open := 0
	for range 60 {
		s := botanical.Series{Hours: []float64{1, 2, 3, 4}, Unit: "g/L"}
		for _, h := range s.Hours {
			s.Readings = append(s.Readings, 10*(1-math.Exp(-0.2*h))+0.3*noise.Normal())
		}
		f, err := botanical.FitSteep(s, botanical.FirstOrder)
		if err != nil {
			continue // a reading that fell
		}
		if e := f.End(); !e.HasHigh {
			open++
			if e.High != 0 || !strings.Contains(e.String(), "at least") || len(e.Notes) == 0 {
				t.Errorf("an open end reads %v, %+v", e, e)
			}
			if p := panicked(func() { e.Range() }); p == nil {
				t.Error("an open end makes a range")
			}
		}
	}
	if open < 36 {
		t.Errorf("%d of 60 series that stop at 55 %% leave the end open; want most", open)
	}
}

func TestSteeps(t *testing.T) {
	s := botanical.Series{What: "anethole", Hours: []float64{0, 1, 2, 4, 8, 12, 24}, Readings: []float64{0, 1.75, 3.42, 5.39, 8.11, 8.98, 9.95}, Unit: "g/L"}
	f, err := botanical.FitSteeps(s)
	if err != nil {
		t.Fatal(err)
	}
	if f.Best().Model() != botanical.FirstOrder || len(f.Fits) != 4 || len(f.Refused) != 1 || f.Best().Readings != 6 {
		t.Errorf("%v; refused %q", f, f.Refused)
	}
	for i := range f.Fits[1:] {
		if f.Fits[i].HasAICc && f.Fits[i+1].HasAICc && f.Fits[i].AICc > f.Fits[i+1].AICc {
			t.Error("the laws are out of order")
		}
	}
	// With four early readings nothing tells first order from Peleg, and the answer holds both.
	s.Hours, s.Readings = []float64{1, 2, 3, 4}, []float64{1.8, 3.3, 4.6, 5.4}
	f = the(botanical.FitSteeps(s))
	e := f.After(8)
	for _, m := range []botanical.Model{botanical.FirstOrder, botanical.Peleg} {
		one := the(botanical.FitSteep(s, m)).After(8)
		if one.Low < e.Low || one.High > e.High {
			t.Errorf("%s says %v; together %v", m, one, e)
		}
	}
	if text := strings.Join(e.Notes, "; "); !strings.Contains(text, "beyond the last reading") || !strings.Contains(text, "do not tell apart") {
		t.Errorf("notes: %s", text)
	}
}

func TestConditions(t *testing.T) {
	s := botanical.Series{Hours: []float64{1, 2, 4, 8, 12, 24}, Readings: []float64{1.75, 3.42, 5.39, 8.11, 8.98, 9.95}, Unit: "g/L", Strength: abv(50), GrainMM: 2}
	f := the(botanical.FitSteep(s, botanical.FirstOrder))
	same := the(botanical.AfterAt(f, 10, botanical.Conditions{}))
	if here := f.After(10); same.Value != here.Value || same.Low != here.Low || same.High != here.High {
		t.Errorf("under the same conditions %v; the series %v", same, here)
	}
	warm := the(botanical.AfterAt(f, 10, botanical.Conditions{Temp: celsius(30)}))
	// exp(E/R (1/293.15 - 1/303.15)) for 27 kJ/mol is 1.441; own arithmetic. As if 14.41 h.
	if want := f.After(14.41).Value; math.Abs(warm.Value-want) > 0.002 || warm.Low > warm.Value || warm.High < warm.Value {
		t.Errorf("at 30 °C %v; want %g", warm, want)
	}
	// By 15 and 40 kJ/mol the 10 h count for 12.25 and 17.18 h: own arithmetic.
	if slow, fast := f.After(12.25), f.After(17.18); math.Abs(warm.Low-slow.Low) > 0.002 || math.Abs(warm.High-fast.High) > 0.002 {
		t.Errorf("at 30 °C %v; want from %g to %g", warm, slow.Low, fast.High)
	}
	fine := the(botanical.AfterAt(f, 5, botanical.Conditions{GrainMM: 1}))
	if want := f.After(20); !near(fine.Value, want.Value, 1e-12) {
		t.Errorf("pieces of half the size after 5 h %v; want that of 20 h, %v", fine, want)
	}
	if e := the(botanical.ReachedAt(f, 10, botanical.Conditions{Strength: abv(52)})); !near(e.Value, f.Reached(10).Value, 1e-12) {
		t.Errorf("at 52 %% vol %v", e)
	}
	stronger := s
	stronger.Strength, stronger.Readings = abv(70), []float64{3.5, 6.84, 10.78, 16.22, 17.96, 19.9}
	g := the(botanical.FitSteep(stronger, botanical.FirstOrder))
	if e := the(botanical.BetweenStrengths(f, g, 10, abv(60))); !near(e.Value, 1.5*f.After(10).Value, 1e-4) {
		t.Errorf("halfway to twice as much %v", e)
	}
	hot := s
	hot.Temp, hot.Hours = celsius(40), []float64{0.5, 1, 2, 4, 6, 12}
	h := the(botanical.FitSteep(hot, botanical.FirstOrder))
	// Twice as fast from 20 to 40 °C: R ln 2/(1/293.15 - 1/313.15) = 26.45 kJ/mol; own arithmetic.
	if e := the(botanical.ActivationEnergy(h, f)); math.Abs(e.Value-26.45) > 0.01 || !(e.Low < e.Value && e.Value < e.High) {
		t.Errorf("twice as fast: %v", e)
	}
	for name, err := range map[string]error{
		"strength too far":   second(botanical.AfterAt(f, 10, botanical.Conditions{Strength: abv(60)})),
		"too long when warm": second(botanical.AfterAt(f, 47, botanical.Conditions{Temp: celsius(30)})),
		"beyond two series":  second(botanical.BetweenStrengths(f, g, 10, abv(80))),
		"one temperature":    second(botanical.ActivationEnergy(f, g)),
		"no fit":             second(botanical.AfterAt(botanical.Steep{}, 10, botanical.Conditions{})),
	} {
		if err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

func second[T any](_ T, err error) error { return err }

func TestSeriesRefuses(t *testing.T) {
	nan := math.NaN()
	for name, c := range map[string]struct {
		s    botanical.Series
		m    botanical.Model
		want string
	}{
		"two readings":         {botanical.Series{Hours: []float64{1, 2}, Readings: []float64{1, 2}}, botanical.FirstOrder, "at least 3"},
		"three with the start": {botanical.Series{Hours: []float64{0, 1, 2}, Readings: []float64{0, 1, 2}}, botanical.FirstOrder, "at least 3"},
		"time going back":      {botanical.Series{Hours: []float64{1, 3, 2}, Readings: []float64{1, 2, 3}}, botanical.FirstOrder, "times must grow"},
		"time twice":           {botanical.Series{Hours: []float64{1, 2, 2}, Readings: []float64{1, 2, 3}}, botanical.FirstOrder, "times must grow"},
		"negative time":        {botanical.Series{Hours: []float64{-1, 2, 3}, Readings: []float64{1, 2, 3}}, botanical.FirstOrder, "time 1 is -1 h"},
		"negative reading":     {botanical.Series{Hours: []float64{1, 2, 3}, Readings: []float64{1, -2, 3}, Unit: "g/L"}, botanical.FirstOrder, "reading 2 is -2 g/L"},
		"no number":            {botanical.Series{Hours: []float64{1, 2, 3}, Readings: []float64{1, nan, 3}}, botanical.FirstOrder, "reading 2"},
		"falling":              {botanical.Series{Hours: []float64{1, 2, 3}, Readings: []float64{1, 3, 2}}, botanical.FirstOrder, "falls"},
		"lengths":              {botanical.Series{Hours: []float64{1, 2, 3}, Readings: []float64{1, 3}}, botanical.FirstOrder, "one reading for each time"},
		"blank":                {botanical.Series{Hours: []float64{0, 1, 2, 3}, Readings: []float64{1, 2, 3, 4}}, botanical.FirstOrder, "subtract"},
		"nothing":              {botanical.Series{Hours: []float64{1, 2, 3}, Readings: []float64{0, 0, 0}}, botanical.FirstOrder, "nothing came out"},
		"no model":             {botanical.Series{Hours: []float64{1, 2, 3}, Readings: []float64{1, 2, 3}}, "", "no model"},
		"washing":              {botanical.Series{Hours: []float64{1, 2, 3, 4}, Readings: []float64{1, 2, 3, 4}}, botanical.WashedFirst, "at least 5"},
		"two rates of one":     {botanical.Series{Hours: []float64{1, 2, 3, 4, 6, 8, 12}, Readings: []float64{1.81, 3.3, 4.51, 5.5, 6.99, 7.98, 9.09}}, botanical.WashingAndDiffusion, "fit"},
	} {
		_, err := botanical.FitSteep(c.s, c.m)
		if err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v; want an error with %q", name, err, c.want)
		}
	}
	f := the(botanical.FitSteep(botanical.Series{Hours: []float64{1, 2, 4}, Readings: []float64{1, 2, 3}}, botanical.FirstOrder))
	for name, p := range map[string]any{
		"too late":  panicked(func() { f.After(9) }),
		"before":    panicked(func() { f.After(-1) }),
		"no wash":   panicked(func() { f.Washed() }),
		"zero fit":  panicked(func() { botanical.Steep{}.RatePerH() }),
		"zero fits": panicked(func() { botanical.Steeps{}.Best() }),
		"zero law":  panicked(func() { botanical.Uptake{}.At(1) }),
	} {
		if _, ok := p.(interface{ StopsCell() }); !ok {
			t.Errorf("%s: panicked with %v; want an error that stops the cell", name, p)
		}
	}
	if text := strings.Join(f.RatePerH().Notes, "; "); !strings.Contains(text, "one reading more") {
		t.Errorf("three readings and two numbers: %q", text)
	}
}
