package colour_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/colour"
)

func demo() (fresh, browned colour.Spectrum) {
	p := colour.Pigments{ChlorophyllAMgL: 3, ChlorophyllBMgL: 1.2, CarotenoidsMgL: 1}
	return the(colour.Demonstration(p)), the(colour.Browned(p))
}

func kept(pathCM, perDay float64) colour.Kept {
	fresh, browned := demo()
	return the(colour.KeepColour(colour.Keeping{Fresh: fresh, Browned: browned, Strength: abv(65), PathCM: pathCM,
		Loss: colour.Loss{PerDay: perDay, LowPerDay: perDay / 2, HighPerDay: perDay * 2, Strength: abv(65)}}))
}

func TestShelfLifeGolden(t *testing.T) {
	for _, r := range table(t, "shelflife.golden.csv") {
		s := kept(r.number("path_cm"), 0.01).ShelfLife(r.number("limit"))
		if r.text("kt") == "never" {
			if !s.Never || math.Abs(s.Farthest-3.4) > 0.05 || !strings.Contains(s.String(), "never") {
				t.Errorf("%v; golden never, 3.4 away when browned", s)
			}
			continue
		}
		if want := r.number("kt") / 0.01; s.Never || math.Abs(s.Days/want-1) > 0.005 {
			t.Errorf("path %g cm: %v; golden %.4g days", r.number("path_cm"), s, want)
		}
	}
}

func TestFadingIsContinuousAndOneWay(t *testing.T) {
	for _, path := range []float64{1, 7} {
		k := kept(path, 1)
		fresh := k.SpectrumAt(1).Through(path).Lab
		before, worst := 0.0, 0.0
		for i := 1; i <= 2000; i++ {
			d := colour.Difference(fresh, k.SpectrumAt(1-float64(i)/2000).Through(path).Lab)
			if d <= before {
				t.Fatalf("path %g cm: the difference falls from %.6f to %.6f with %g of the green left", path, before, d, 1-float64(i)/2000)
			}
			worst = math.Max(worst, d-before)
			before = d
		}
		if worst > 0.03 {
			t.Errorf("path %g cm: the colour jumps by %.3f", path, worst)
		}
	}
}

func TestKeepingLaws(t *testing.T) {
	fresh, browned := demo()
	rapid.Check(t, func(t *rapid.T) {
		rate := math.Exp(rapid.Float64Range(-7, 1).Draw(t, "lnRate"))
		store := celsius(rapid.Float64Range(0, 40).Draw(t, "storeC"))
		read := celsius(rapid.Float64Range(0, 40).Draw(t, "readC"))
		keep := colour.Keeping{Fresh: fresh, Browned: browned, Strength: abv(64), PathCM: rapid.Float64Range(0.5, 10).Draw(t, "path"), Store: store,
			Loss: colour.Loss{PerDay: rate, LowPerDay: rate * 0.6, HighPerDay: rate * 1.7, Strength: abv(65), Temp: read}}
		k := the(colour.KeepColour(keep))
		limit := rapid.Float64Range(0.2, 3).Draw(t, "limit")
		s := k.ShelfLife(limit)
		// Time enters only as rate times days.
		twice := keep
		twice.Light = 2
		if s2 := the(colour.KeepColour(twice)).ShelfLife(limit); s.Never != s2.Never || !s.Never && math.Abs(s2.Days*2/s.Days-1) > 1e-12 {
			t.Fatalf("twice the light: %v; once %v", s2, s)
		}
		if s.Never {
			return
		}
		if s.LowDays > s.Days || s.HighDays < s.Days || s.SpanLowDays > s.LowDays*(1+1e-12) || s.SpanHighDays < s.HighDays*(1-1e-12) {
			t.Fatalf("%v: spans %g to %g", s, s.SpanLowDays, s.SpanHighDays)
		}
		// The colour on that day is the limit away.
		if d := colour.Difference(k.After(0).Lab, k.After(s.Days).Lab); math.Abs(d-limit) > 1e-6 {
			t.Fatalf("%v: the difference then is %.9f", s, d)
		}
		// A stay in the same store is that many days; two stays follow each other.
		a := k.AfterStays(colour.Stay{Days: s.Days / 3, Temp: store}, colour.Stay{Days: s.Days * 2 / 3, Temp: store})
		if math.Abs(a/k.Left(s.Days)-1) > 1e-12 {
			t.Fatalf("two stays leave %.12g; one %.12g", a, k.Left(s.Days))
		}
	})
}

func TestColourOfLotsPutTogether(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		fresh, browned := demo()
		a, b := rapid.Float64Range(0.1, 100).Draw(t, "a"), rapid.Float64Range(0, 100).Draw(t, "b")
		m := the(colour.MixSpectra(colour.Lot{VolumeL: a, Spectrum: fresh}, colour.Lot{VolumeL: b, Spectrum: browned}, colour.Lot{VolumeL: 1, Spectrum: colour.ClearLiquid()}))
		for _, nm := range []float64{380, 431.2, 550, 664, 780} {
			want := (a*fresh.PerCM(nm) + b*browned.PerCM(nm)) / (a + b + 1)
			if math.Abs(m.PerCM(nm)-want) > 1e-12 {
				t.Fatalf("at %g nm %.12g; by Beer's law %.12g", nm, m.PerCM(nm), want)
			}
		}
		// Halving by clear spirit and doubling the path is the same colour.
		half := the(colour.MixSpectra(colour.Lot{VolumeL: a, Spectrum: fresh}, colour.Lot{VolumeL: a, Spectrum: colour.ClearLiquid()}))
		if d := colour.Difference(half.Through(2).Lab, fresh.Through(1).Lab); d > 1e-9 {
			t.Fatalf("half as strong through twice the path differs by %g", d)
		}
	})
	if c := colour.ClearLiquid().Through(7).Lab; colour.PlainDistance(c, colour.Lab{L: 100}) > 1e-9 {
		t.Errorf("clear liquid is %v; want 100, 0, 0", c)
	}
}

func TestDifferenceLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string) colour.Lab {
			return colour.Lab{L: rapid.Float64Range(0, 100).Draw(t, name+"L"), A: rapid.Float64Range(-80, 80).Draw(t, name+"a"), B: rapid.Float64Range(-80, 80).Draw(t, name+"b")}
		}
		a, b := draw("first"), draw("second")
		if d, e := colour.Difference(a, b), colour.Difference(b, a); math.Abs(d-e) > 1e-10 || d < 0 || math.IsNaN(d) {
			t.Fatalf("Difference(%v, %v) = %g; turned round %g", a, b, d, e)
		}
		if d := colour.Difference(a, a); d != 0 {
			t.Fatalf("%v differs from itself by %g", a, d)
		}
		if p := colour.PlainDistance(a, b); p > 1e-6 && colour.Difference(a, b) == 0 {
			t.Fatalf("%v and %v differ by nothing", a, b)
		}
	})
}

// Daylight through a filter that lets one wavelength through has the chromaticity of that wavelength in the observer's table.
func TestNarrowLight(t *testing.T) {
	var nm, abs []float64
	for w := 380.0; w <= 780; w += 5 {
		nm, abs = append(nm, w), append(abs, 4)
		if w == 520 {
			abs[len(abs)-1] = 0
		}
	}
	c := the(colour.NewSpectrum(nm, abs, 1)).Through(5).XYZ
	x, y := c.X/(c.X+c.Y+c.Z), c.Y/(c.X+c.Y+c.Z)
	// CIE 15: x 0.0743, y 0.8338 at 520 nm (from memory; also the observer's 0.06327, 0.71, 0.07825).
	if math.Abs(x-0.0743) > 1e-3 || math.Abs(y-0.8338) > 1e-3 {
		t.Errorf("520 nm has x %.4f, y %.4f; the CIE gives 0.0743, 0.8338", x, y)
	}
}

func TestSpectrumOfReadings(t *testing.T) {
	nm := []float64{400, 500, 520, 540, 560, 580, 600, 620, 640, 660, 680, 700}
	if _, err := colour.NewSpectrum(nm, make([]float64, 12), 1); err == nil || !strings.Contains(err.Error(), "between 400 and 500") {
		t.Errorf("a gap of 100 nm: %v", err)
	}
	var ws, as []float64
	for w := 400.0; w <= 700; w += 20 {
		ws, as = append(ws, w), append(as, w/1000)
	}
	s := the(colour.NewSpectrum(ws, as, 2))
	if math.Abs(s.PerCM(550)-0.275) > 1e-12 || math.Abs(s.PerCM(380)-0.2) > 1e-12 || math.Abs(s.PerCM(780)-0.35) > 1e-12 || s.Estimate() != "" {
		t.Errorf("%v: %g at 550, %g at 380, %g at 780 nm", s, s.PerCM(550), s.PerCM(380), s.PerCM(780))
	}
	if !strings.Contains(s.String(), "held below 400 nm and above 700 nm") {
		t.Errorf("%v does not say what is held", s)
	}
	last := len(ws) - 1
	for name, err := range map[string]error{
		"too short":        second(colour.NewSpectrum(ws[2:], as[2:], 1)),
		"ends early":       second(colour.NewSpectrum(ws[:last], as[:last], 1)),
		"unequal":          second(colour.NewSpectrum(ws, as[1:], 1)),
		"one":              second(colour.NewSpectrum(ws[:1], as[:1], 1)),
		"backwards":        second(colour.NewSpectrum([]float64{400, 390}, []float64{1, 1}, 1)),
		"negative":         second(colour.NewSpectrum([]float64{400, 700}, []float64{-0.5, 1}, 1)),
		"path":             second(colour.NewSpectrum(ws, as, -1)),
		"X-rays":           second(colour.NewSpectrum([]float64{1, 700}, []float64{1, 1}, 1)),
		"no lots":          second(colour.MixSpectra()),
		"empty lots":       second(colour.MixSpectra(colour.Lot{Spectrum: s})),
		"unset lot":        second(colour.MixSpectra(colour.Lot{VolumeL: 1})),
		"negative lot":     second(colour.MixSpectra(colour.Lot{VolumeL: -1, Spectrum: s})),
		"no pigment":       second(colour.Demonstration(colour.Pigments{})),
		"negative pigment": second(colour.Browned(colour.Pigments{ChlorophyllAMgL: -1})),
		"black white":      second(colour.ToLab(colour.XYZ{}, colour.XYZ{})),
		"negative XYZ":     second(colour.ToLab(colour.XYZ{X: -1}, colour.White())),
		"sludge":           second(colour.Demonstration(colour.Pigments{ChlorophyllAMgL: 1e6})),
	} {
		if err == nil {
			t.Errorf("%s: no error", name)
		}
	}
	for name, f := range map[string]func(){
		"path":      func() { s.Through(0) },
		"unset":     func() { colour.Spectrum{}.Through(1) },
		"ultra":     func() { s.PerCM(300) },
		"share":     func() { kept(1, 1).SpectrumAt(2) },
		"yesterday": func() { kept(1, 1).After(-1) },
		"stays":     func() { kept(1, 1).AfterStays(colour.Stay{Days: -1}) },
		"limit":     func() { kept(1, 1).ShelfLife(0) },
		"no kept":   func() { colour.Kept{}.After(1) },
		"no loss":   func() { colour.Loss{}.HalfDays() },
		"hot":       func() { colour.ChlorophyllWarmth().Factor(celsius(20), celsius(90)) },
		"infusion":  func() { colour.Infusion{}.AfterMgL(1) },
		"hours":     func() { colour.Infusion{UptakePerH: 1, LossPerH: 1, AllMgL: 1}.AfterMgL(-1) },
		"greenest":  func() { colour.Infusion{}.GreenestH() },
	} {
		func() {
			defer func() {
				if e, ok := recover().(interface{ StopsCell() }); !ok {
					t.Errorf("%s: panics with %v; want an error with StopsCell", name, e)
				}
			}()
			f()
		}()
	}
}

func TestKeepingRefuses(t *testing.T) {
	fresh, browned := demo()
	fine := colour.Keeping{Fresh: fresh, Browned: browned, Strength: abv(65), PathCM: 7, Loss: colour.Loss{PerDay: 0.01, LowPerDay: 0.005, HighPerDay: 0.02, Strength: abv(65)}}
	if _, err := colour.KeepColour(fine); err != nil {
		t.Fatal(err)
	}
	for name, c := range map[string]struct {
		change func(*colour.Keeping)
		says   string
	}{
		"no fresh":        {func(k *colour.Keeping) { k.Fresh = colour.Spectrum{} }, "fresh spectrum"},
		"no browned":      {func(k *colour.Keeping) { k.Browned = colour.Spectrum{} }, "browned spectrum"},
		"no loss":         {func(k *colour.Keeping) { k.Loss = colour.Loss{} }, "the loss"},
		"no path":         {func(k *colour.Keeping) { k.PathCM = 0 }, "7 cm"},
		"no strength":     {func(k *colour.Keeping) { k.Strength = fine.Loss.Strength; k.Strength = colour.Keeping{}.Strength }, "not set"},
		"other strength":  {func(k *colour.Keeping) { k.Strength = abv(43) }, "is not carried to"},
		"negative light":  {func(k *colour.Keeping) { k.Light = -1 }, "light"},
		"boiling":         {func(k *colour.Keeping) { k.Store = celsius(80) }, "store"},
		"range without k": {func(k *colour.Keeping) { k.Loss.LowPerDay = 1 }, "range"},
	} {
		k := fine
		c.change(&k)
		if _, err := colour.KeepColour(k); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %v; want %q", name, err, c.says)
		}
	}
	weak := fine
	weak.Strength, weak.Loss.Strength = abv(40), abv(41)
	if k := the(colour.KeepColour(weak)); len(k.Notes) != 2 || !strings.Contains(k.Notes[1], "fastest near 40") {
		t.Errorf("at 40 %% vol: %q", k.Notes)
	}
	open := fine
	open.Loss.LowPerDay = 0
	if s := the(colour.KeepColour(open)).ShelfLife(1); !s.NoUpperEnd || !strings.Contains(s.String(), "no end") {
		t.Errorf("a loss that may be 0: %v", s)
	}
}

func TestOnGivesChartsTheirColumns(t *testing.T) {
	k := kept(7, 0.01)
	s := k.On(0, 30, 90)
	if len(s.Days) != 3 || len(s.Hex) != 3 || s.Difference[0] != 0 || s.Difference[2] <= s.Difference[1] || s.Labels[1] != "day 30" || len(s.Rows()) != 4 {
		t.Errorf("%+v", s)
	}
	if s.Hex[1] != k.After(30).Swatch.Hex() || s.Estimate == "" || !strings.Contains(s.Rows()[0][4], "estimate") {
		t.Errorf("%+v", s)
	}
}
