package still_test

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
	"swanneck/mathlib/still"
)

// learnBatch is a bench still.
func learnBatch(plates, reflux float64) still.Batch {
	return still.Batch{Pot: alcoholometry.Spirit{VolumeL: 30, Strength: abv(28)}, Plates: plates, Reflux: reflux, Until: abv(20)}
}

// logOf keeps a log of a run in rows of even volume; noise is the standard deviation of its strengths, % vol.
func logOf(r still.Run, rows int, noise float64, chance *rand.Rand) still.RunLog {
	var log still.RunLog
	l := r.SeriesL()
	j := 0
	for i := range rows {
		for j < len(l)-1 && l[j] < r.Distillate.VolumeL*float64(i)/float64(rows-1) {
			j++
		}
		s := r.Steps[j]
		log.CollectedL = append(log.CollectedL, s.CollectedL)
		pct := s.Strength.ABV()
		if noise > 0 {
			pct += noise * chance.NormFloat64()
		}
		log.Running = append(log.Running, abv(pct))
		if s.Min > 0 {
			log.Min = append(log.Min, s.Min)
		}
	}
	return log
}

func TestLearnsWhatMadeTheLog(t *testing.T) {
	for _, c := range []struct{ plates, reflux float64 }{{1, 0.5}, {2.6, 1}, {6, 3}} {
		b := learnBatch(c.plates, c.reflux)
		b.Heat = still.Heating{PowerKW: 3, EfficiencyPct: 72}
		log := logOf(the(still.Distil(b)), 21, 0, nil)
		b.Plates, b.Reflux, b.Heat.EfficiencyPct = 0, 0, 0
		l := the(still.LearnFromRun(b, log, still.LearnOptions{}))
		near(t, "plates", l.Plates.Value/c.plates, 1, 1e-3)
		near(t, "reflux", l.Reflux.Value/c.reflux, 1, 1e-3)
		near(t, "heating efficiency", l.HeatEfficiencyPct.Value, 72, 0.05)
		near(t, "scatter", l.ScatterABV, 0, 0.01)
		if len(l.Residuals) != 21 || l.Residuals[20].FittedMin <= l.Residuals[1].FittedMin {
			t.Errorf("residuals: %+v", l.Residuals)
		}
	}
}

func TestLearnsFromTheHeadAlone(t *testing.T) {
	b := learnBatch(2, 1)
	r := the(still.Distil(b))
	log := logOf(r, 21, 0, nil)
	for _, v := range log.CollectedL {
		log.Head = append(log.Head, celsius(at(r, v, r.SeriesHeadC())))
	}
	log.Running, log.Min = nil, nil
	l := the(still.LearnFromRun(b, log, still.LearnOptions{}))
	near(t, "plates", l.Plates.Value, 2, 2e-3)
	near(t, "reflux", l.Reflux.Value, 1, 2e-3)
}

// The intervals of 95 % hold the truth in about that many of the logs: in 16 of them, fewer than 13 would be chance less than
// once in two hundred times. (In 100 of them it was 97 for the plates and 96 for the reflux.)
func TestIntervalsCover(t *testing.T) {
	b := learnBatch(2.5, 1)
	r := the(still.Distil(b))
	chance := rand.New(rand.NewPCG(6, 1512))
	const logs, least = 16, 13
	plates, reflux := 0, 0
	for range logs {
		l := the(still.LearnFromRun(b, logOf(r, 21, 0.3, chance), still.LearnOptions{}))
		if l.Plates.Low <= 2.5 && 2.5 <= l.Plates.High {
			plates++
		}
		if l.Reflux.Low <= 1 && 1 <= l.Reflux.High {
			reflux++
		}
		if l.ScatterABV < 0.1 || l.ScatterABV > 0.6 {
			t.Errorf("scatter %.2f %% vol; the readings scatter by 0.3", l.ScatterABV)
		}
	}
	if plates < least || reflux < least {
		t.Errorf("of %d intervals %d hold the plates and %d the reflux", logs, plates, reflux)
	}
}

func TestAPlainPotShowsNoPlate(t *testing.T) {
	b := learnBatch(0, 0)
	log := logOf(the(still.Distil(b)), 21, 0.3, rand.New(rand.NewPCG(2, 3)))
	l := the(still.LearnFromRun(b, log, still.LearnOptions{}))
	if l.Plates.Value > 0.2 || l.Plates.Low > 0 || l.Plates.High < l.Plates.Value || l.Plates.High > 1 {
		t.Errorf("plates %v", l.Plates)
	}
}

// A log that ends while the pot is still strong fits with few plates and much reflux as well as the other way round.
func TestALogThatDoesNotTell(t *testing.T) {
	b := learnBatch(3, 1)
	b.Until = alcoholometry.Strength{}
	b.Stop = still.AtVolume(1)
	log := logOf(the(still.Distil(b)), 12, 0.3, rand.New(rand.NewPCG(1, 2)))
	_, err := still.LearnFromRun(b, log, still.LearnOptions{})
	if err == nil || !strings.Contains(err.Error(), "KnownReflux") {
		t.Errorf("a short log: %v", err)
	}
	l := the(still.LearnFromRun(b, log, still.LearnOptions{KnownReflux: true}))
	if l.Reflux.Found || math.Abs(l.Plates.Value-3) > 0.5 || l.Plates.Low > 3 || l.Plates.High < 3 {
		t.Errorf("with the reflux known: %v", l)
	}
}

func TestLogsThatCannotBe(t *testing.T) {
	b := learnBatch(2, 1)
	b.Heat.PowerKW = 3
	good := func() still.RunLog { return logOf(the(still.Distil(b)), 15, 0, nil) }
	for name, c := range map[string]struct {
		spoil func(*still.RunLog)
		want  string
	}{
		"too few":            {func(l *still.RunLog) { *l = still.RunLog{CollectedL: l.CollectedL[:3], Running: l.Running[:3]} }, "3 rows"},
		"volumes go back":    {func(l *still.RunLog) { l.CollectedL[6] = 0.1 }, "row 7, column volume"},
		"millilitres":        {func(l *still.RunLog) { l.CollectedL[14] *= 1000 }, "row 15, column volume"},
		"a gap":              {func(l *still.RunLog) { cutRows(l, 4, 9) }, "row 5, column volume"},
		"starts late":        {func(l *still.RunLog) { cutRows(l, 0, 5) }, "row 1, column volume"},
		"proof":              {func(l *still.RunLog) { l.Running[3] = abv(99) }, "row 4, column strength"},
		"proof among weak":   {func(l *still.RunLog) { l.Running[13] = abv(90) }, "row 14, column strength"},
		"unset":              {func(l *still.RunLog) { l.Running[8] = alcoholometry.Strength{} }, "row 9, column strength"},
		"Fahrenheit":         {func(l *still.RunLog) { l.Head = heads(15); l.Head[2] = celsius(185) }, "row 3, column head temperature"},
		"not at the head":    {func(l *still.RunLog) { l.Head = heads(15); l.Head[2] = celsius(22) }, "row 3, column head temperature"},
		"clock":              {func(l *still.RunLog) { l.Min[9] = l.Min[8] }, "row 10, column time"},
		"no number":          {func(l *still.RunLog) { l.Min[9] = math.NaN() }, "row 10, column time"},
		"columns differ":     {func(l *still.RunLog) { l.Min = l.Min[:9] }, "9 entries in the column time"},
		"nothing but volume": {func(l *still.RunLog) { l.Running, l.Min = nil, nil }, "neither strengths nor head temperatures"},
	} {
		log := good()
		c.spoil(&log)
		_, err := still.LearnFromRun(b, log, still.LearnOptions{})
		if err == nil || !strings.Contains(err.Error(), c.want) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v; want one line with %q", name, err, c.want)
		}
	}
}

func cutRows(l *still.RunLog, from, to int) {
	l.CollectedL = append(l.CollectedL[:from:from], l.CollectedL[to:]...)
	l.Running = append(l.Running[:from:from], l.Running[to:]...)
	l.Min = append(l.Min[:from:from], l.Min[to:]...)
}

func TestCompareRuns(t *testing.T) {
	chance := rand.New(rand.NewPCG(5, 5))
	learn := func(plates, reflux float64) still.Learned {
		b := learnBatch(plates, reflux)
		return the(still.LearnFromRun(b, logOf(the(still.Distil(b)), 21, 0.2, chance), still.LearnOptions{}))
	}
	a, again, other := learn(3, 1), learn(3, 1), learn(1.5, 1)
	same := the(still.CompareRuns(a, again))
	if same.AsOnePct < 1 || math.Abs(same.FarthestABV) > 2 {
		t.Errorf("two logs of one still: %v", same)
	}
	differ := the(still.CompareRuns(a, other))
	if differ.AsOnePct > 0.1 || math.Abs(differ.FarthestABV) < 3 || !differ.Differences[0].Clear {
		t.Errorf("logs of two stills: %v, %+v", differ, differ.Differences)
	}
	if _, err := still.CompareRuns(a, still.Learned{}); err == nil {
		t.Error("a run is missing and nothing is said")
	}
}

func TestScaleRun(t *testing.T) {
	r := the(still.Distil(learnBatch(1, 0.5)))
	from, to := still.Apparatus{ChargeL: 30, PowerKW: 3, NeckMM: 40}, still.Apparatus{ChargeL: 240, PowerKW: 12, NeckMM: 100}
	s := the(still.ScaleRun(r, from, to))
	near(t, "power for the same time", s.SameTimeKW, 24, 1e-9)
	near(t, "power for the same speed", s.SameVapourKW, 3*6.25, 1e-9)
	near(t, "time", s.TimeRatio, 2, 1e-9)
	near(t, "wall per litre", s.SurfaceRatio, 0.5, 1e-9)
	near(t, "speed", s.ToSpeed/s.FromSpeed, 4/6.25, 1e-9)
	// By hand: 3 kW over 39.5 kJ/mol is 0.076 mol/s; at 83 °C a mole fills 29.2 L; the neck has 12.57 cm².
	near(t, "vapour in the smaller neck, m/s", s.FromSpeed, 0.076*0.0292/0.001257, 0.03)
	to.PowerKW = 200
	if s := the(still.ScaleRun(r, from, to)); !strings.Contains(strings.Join(s.Words, " "), "too fast") {
		t.Errorf("200 kW through a neck of 100 mm: %v", s.Words)
	}
	to.NeckMM = 0
	if _, err := still.ScaleRun(r, from, to); err == nil {
		t.Error("a neck of 0 mm")
	}
}

func heads(n int) (out []quantity.Temperature) {
	for i := range n {
		out = append(out, celsius(82+float64(i)))
	}
	return out
}
