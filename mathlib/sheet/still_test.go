package sheet_test

import (
	"math"
	"strings"
	"testing"

	. "swanneck/mathlib/sheet"
)

func TestAMistakeAtTheStillStopsTheCell(t *testing.T) {
	nan := math.NaN()
	spirit := Spirit{VolumeL: 100, Strength: ABV(28)}
	none := Run{}
	for name, f := range map[string]func(){
		"MgL":                 func() { MgL(-1) },
		"GL":                  func() { GL(nan) },
		"MgKg":                func() { MgKg(2e6) },
		"PartsPerMillion":     func() { PartsPerMillion(-1) },
		"GHLPure":             func() { GHLPure(-1) },
		"InMgL":               func() { InMgL(Concentration{}, ABV(40)) },
		"InMgKg":              func() { InMgKg(MgL(1), Strength{}) },
		"InGHLPure":           func() { InGHLPure(MgL(1), Water) },
		"MassG":               func() { MassG(MgL(1), Spirit{VolumeL: 1}) },
		"Distil":              func() { Distil(Batch{Pot: spirit}) },
		"SmoothEquilibrium":   func() { SmoothEquilibrium(nil, nil) },
		"StraightEquilibrium": func() { StraightEquilibrium([]float64{1}, nil) },
		"SuggestCuts":         func() { SuggestCuts(none, CutLimits{}) },
		"SteadyFeints":        func() { SteadyFeints(Batch{Pot: spirit, Until: ABV(5)}, FeintsPlan{TailsBackPct: -1}) },
		"CombineJars":         func() { CombineJars() },
		"BottleStrength":      func() { BottleStrength(DensityBottle{}) },
		"ColumnStages":        func() { ColumnStages(Column{Distillate: ABV(90), RecoveryPct: 98}) },
		"MinimumReflux":       func() { MinimumReflux(Column{Distillate: ABV(90), RecoveryPct: 98}) },
		"FeedVapourShare":     func() { FeedVapourShare(ABV(9), Celsius(105), KPa(101)) },
		"LearnFromRun":        func() { LearnFromRun(Batch{Pot: spirit}, RunLog{}, LearnOptions{}) },
		"CompareRuns":         func() { CompareRuns(LearnedStill{}, LearnedStill{}) },
		"ScaleRun":            func() { ScaleRun(none, Apparatus{}, Apparatus{}) },
		"VentilationFor":      func() { VentilationFor(VapourLeak{LH: 1}) },
		"CheckMethanol":       func() { CheckMethanol(MgL(1), ABV(40), "eu-plum", true) },
		"BlockedOutlet":       func() { BlockedOutlet(spirit, KPa(101), -1, 1) },
		"ClosedHotPot":        func() { ClosedHotPot(Strength{}, KPa(101), Celsius(20)) },
		"RoomForBoiling":      func() { RoomForBoiling(spirit, -1, true) },
		"HeaterCover":         func() { HeaterCover(none, 5) },
	} {
		line := stopped(t, f)
		if !strings.HasPrefix(line, name+": ") || strings.ContainsAny(line, "\n") {
			t.Errorf("%s stops with %q; want one line that begins with its name", name, line)
		}
		if rest := strings.TrimPrefix(line, name+": "); strings.Contains(rest, "still.") || strings.Contains(rest, "alcoholometry.") {
			t.Errorf("%s stops with %q, which names a package", name, line)
		}
	}
}

// Methods of a run stop a cell too, with an error of one line.
func TestMethodsOfARunStopCells(t *testing.T) {
	run := Distil(Batch{Pot: Spirit{VolumeL: 100, Strength: ABV(28)}, Until: ABV(30), Steps: 50, Parrot: Parrot{HoldUpL: 1}})
	for name, f := range map[string]func(){
		"a cut that is not there": func() { run.Cut(AtStart(), AtStrength(ABV(5))) },
		"a mark that is not set":  func() { run.Cut(AtStart(), Mark{}) },
		"jars too small":          func() { run.Jars(1e-6) },
		"not carried":             func() { run.Congener("methanol") },
		"not known":               func() { run.SeriesMgL("metanol") },
		"the parrot fills":        func() { _ = run.Steps[0].ReadingABV() },
	} {
		func() {
			defer func() {
				r, ok := recover().(interface {
					error
					StopsCell()
				})
				if !ok || strings.Contains(r.Error(), "\n") {
					t.Errorf("%s: panics with %v; want an error of one line with StopsCell", name, r)
				}
			}()
			f()
		}()
	}
}

// Each function reaches the one it names; the numbers are checked in the package behind.
func TestTheSheetHandsTheStillThrough(t *testing.T) {
	run := Distil(Batch{Pot: Spirit{VolumeL: 100, Strength: ABV(28)}, Plates: 1, Reflux: 0.5, Until: ABV(30), Steps: 100,
		Congeners: []Congener{{Name: "furfural", Amount: MgL(5)}}})
	for name, c := range map[string]struct{ got, want float64 }{
		"MgL":             {InMgL(MgL(3), ABV(40)), 3},
		"GL":              {InMgL(GL(3), ABV(40)), 3000},
		"MgKg":            {InMgKg(MgKg(3), ABV(40)), 3},
		"PartsPerMillion": {InMgKg(PartsPerMillion(3), ABV(40)), 3},
		"GHLPure":         {InGHLPure(GHLPure(3), ABV(40)), 3},
		"MassG":           {MassG(GL(3), Spirit{VolumeL: 2, Strength: ABV(40)}), 6},
		"AtVolume":        {run.Cut(AtStart(), AtVolume(2)).Spirit.VolumeL, 2},
		"AtStrength":      {run.Cut(AtStrength(ABV(60)), AtEnd()).ToL, run.Distillate.VolumeL},
		"AtPotStrength":   {run.Cut(AtStart(), AtPotStrength(ABV(20))).FromL, 0},
		"AtHead":          {run.Cut(AtHead(Celsius(85)), AtEnd()).ToL, run.Distillate.VolumeL},
		"UnderLimit":      {math.Round(run.Cut(AtStart(), OverLimit("furfural", MgL(4))).FromL), 0},
		"BottleStrength":  {math.Round(BottleStrength(DensityBottle{EmptyG: 10, WaterG: 60, SpiritG: 60}).ABV()), 0},
		"CombineJars":     {CombineJars(Jar{VolumeML: 500, Strength: ABV(60)}).Spirit.PureL(), 0.3},
	} {
		if math.Abs(c.got-c.want) > 1e-6*math.Max(1, math.Abs(c.want)) {
			t.Errorf("%s: %.12g; want %.12g", name, c.got, c.want)
		}
	}
	if m := UnderLimit("furfural", MgL(1)); m.String() != "furfural under 1.00 mg/L" {
		t.Errorf("UnderLimit is %v", m)
	}
	if p := MinimumReflux(Column{Feeds: []ColumnFeed{{LH: 100, Strength: ABV(9)}}, Distillate: ABV(92), RecoveryPct: 98}); p.Reflux <= 0 {
		t.Errorf("MinimumReflux is %v", p)
	}
	if len(FlammableLimits()) == 0 || len(MethanolLimits()) == 0 {
		t.Error("no limits")
	}
	for _, lines := range [][]string{VentilationFor(VapourLeak{LH: 1, Strength: ABV(60)}).Cautions(), run.Cautions(), CheckMethanol(MgL(1), ABV(40), "eu-fruit", true).Cautions(),
		BlockedOutlet(Spirit{VolumeL: 10, Strength: ABV(10)}, KPa(101), 1, 2).Cautions(), ClosedHotPot(ABV(10), KPa(101), Celsius(20)).Cautions(),
		RoomForBoiling(Spirit{VolumeL: 10, Strength: ABV(10)}, 20, false).Cautions(), HeaterCover(run, 5).Cautions()} {
		if lines[len(lines)-1] != "local codes and licensed practice come first" {
			t.Errorf("cautions end with %q", lines[len(lines)-1])
		}
	}
}
