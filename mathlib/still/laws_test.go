package still_test

import (
	"errors"
	"fmt"
	"math"
	"testing"
	"time"

	"gonum.org/v1/gonum/integrate/quad"
	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/equilibrium"
	"swanneck/mathlib/still"
)

var traceNames = []string{"acetaldehyde", "ethyl acetate", "methanol", "1-propanol", "isobutanol", "isoamyl alcohol", "acetic acid", "furfural",
	"limonene", "alpha-pinene", "trans-anethole", "eugenol"}

// batch draws a batch of any kind. Not every one can be distilled.
func batch(t *rapid.T) still.Batch {
	b := still.Batch{
		Pot:        alcoholometry.Spirit{VolumeL: rapid.Float64Range(0.5, 2000).Draw(t, "L"), Strength: abv(rapid.Float64Range(1, 90).Draw(t, "% vol"))},
		PotDropKPa: rapid.SampledFrom([]float64{0, 0, 3}).Draw(t, "drop"),
		Steps:      rapid.IntRange(20, 120).Draw(t, "steps"),
		P:          kPa(rapid.SampledFrom([]float64{101.325, 101.325, 20, 85, 130}).Draw(t, "kPa")),
	}
	if rapid.Bool().Draw(t, "plates") {
		b.Plates = rapid.SampledFrom([]float64{0.4, 1, 2.5, 4, 12}).Draw(t, "number of plates")
		b.PlateEfficiencyPct = rapid.SampledFrom([]float64{0, 60, 100}).Draw(t, "efficiency")
	}
	b.Condenser = rapid.SampledFrom([]still.Returns{"", "", still.InEquilibrium, still.Differential}).Draw(t, "condenser")
	switch {
	case b.Plates >= 1 && rapid.IntRange(0, 3).Draw(t, "hold") == 0:
		b.Hold = abv(rapid.Float64Range(60, 94).Draw(t, "held"))
	default:
		b.Reflux = rapid.SampledFrom([]float64{0, 0.3, 1, 4}).Draw(t, "reflux")
	}
	if rapid.IntRange(0, 3).Draw(t, "plan") == 0 {
		b.Plan = []still.Phase{{Reflux: rapid.Float64Range(0, 8).Draw(t, "first reflux"), Until: still.AtVolume(b.Pot.VolumeL / 100)}}
	}
	switch rapid.IntRange(0, 4).Draw(t, "vessel") {
	case 0:
		b.Steam.Live = true
	case 1:
		b.Thumper = still.Thumper{Charge: alcoholometry.Spirit{VolumeL: b.Pot.VolumeL * rapid.Float64Range(0.05, 0.3).Draw(t, "thumper"), Strength: abv(rapid.Float64Range(0, 50).Draw(t, "thumper's strength"))},
			LossPct: rapid.SampledFrom([]float64{0, 8}).Draw(t, "loss"), Temp: celsius(30)}
	}
	if rapid.Bool().Draw(t, "powered") {
		b.Heat = still.Heating{PowerKW: rapid.Float64Range(1, 20).Draw(t, "kW"), EfficiencyPct: 85, VesselKg: 12, WaterIn: celsius(12), WaterOut: celsius(50), HeadLossKW: rapid.SampledFrom([]float64{0, 0.1}).Draw(t, "head")}
	}
	if rapid.Bool().Draw(t, "parrot") {
		b.Parrot = still.Parrot{HoldUpL: b.Pot.VolumeL / 300, Temp: celsius(18)}
	}
	for i, n := 0, rapid.IntRange(0, 4).Draw(t, "traces"); i < n; i++ {
		b.Congeners = append(b.Congeners, still.Congener{Name: rapid.SampledFrom(traceNames).Draw(t, "trace"),
			MassG: b.Pot.VolumeL * math.Pow(10, rapid.Float64Range(-5, 0.5).Draw(t, "log g/L"))})
	}
	switch rapid.IntRange(0, 2).Draw(t, "stop") {
	case 0:
		b.UntilPot = abv(b.Pot.Strength.ABV() * rapid.Float64Range(0.05, 0.9).Draw(t, "pot at the end"))
	case 1:
		b.Stop = still.AtVolume(b.Pot.VolumeL * rapid.Float64Range(0.01, 0.4).Draw(t, "litres at the end"))
	default:
		b.Until = abv(rapid.Float64Range(1, 80).Draw(t, "strength at the end"))
	}
	return b
}

// grams returns the ethanol and the water of spirits, g; those without a strength hold none.
func grams(spirits ...alcoholometry.Spirit) (ethanol, water float64) {
	for _, s := range spirits {
		if s.Strength.IsSet() {
			g := 1000 * s.MassKg()
			ethanol += g * s.Strength.ABW() / 100
			water += g * (1 - s.Strength.ABW()/100)
		}
	}
	return ethanol, water
}

// Whatever the still: ethanol, water, every trace and the heat are all there at the end, nothing is below 0, and the cuts and
// jars together are the distillate.
func TestNothingIsLost(t *testing.T) {
	made := 0
	rapid.Check(t, func(t *rapid.T) {
		b := batch(t)
		r, err := still.Distil(b)
		if err != nil {
			var never *still.NeverError
			var strong *still.TooStrongError
			var input *still.InputError
			if !errors.As(err, &never) && !errors.As(err, &strong) && !errors.As(err, &input) {
				t.Fatalf("Distil(%+v): %v", b, err)
			}
			return
		}
		made++
		inE, inW := grams(b.Pot, b.Thumper.Charge)
		inW += 1000 * r.Heat.SteamKg
		outE, outW := grams(r.Distillate, r.Pot, r.Thumper)
		if math.Abs(outE-inE) > 1e-9*inE || math.Abs(outW-inW) > 1e-9*inW {
			t.Fatalf("in: %.12g g of ethanol, %.12g g of water; out: %.12g, %.12g", inE, inW, outE, outW)
		}
		h := r.Heat
		size := math.Abs(h.ChargeKJ) + math.Abs(h.HeatUpKJ) + math.Abs(h.BoilUpKJ) + math.Abs(h.SteamKJ) + math.Abs(h.CondenserKJ) + math.Abs(h.LeftKJ)
		if math.Abs(h.ClosureKJ()) > 1e-9*size {
			t.Fatalf("the heats do not close by %g of %g kJ: %+v", h.ClosureKJ(), size, h)
		}
		for _, f := range r.Congeners {
			if math.Abs(f.DistillateG+f.PotG+f.ThumperG-f.ChargeG) > 1e-9*f.ChargeG || f.DistillateG < 0 || f.PotG < 0 || f.ThumperG < 0 {
				t.Fatalf("%+v does not close", f)
			}
		}
		for _, s := range r.Steps {
			for _, x := range []float64{s.CollectedL, s.Strength.ABV(), s.Collected.ABV(), s.Head.C(), s.Pot.C(), s.PotKg, s.Reflux, s.Min, s.HeatKJ, s.CondenserKJ} {
				if math.IsNaN(x) || math.IsInf(x, 0) {
					t.Fatalf("a step holds %v: %+v", x, s)
				}
			}
		}
		mid := still.AtVolume(r.Distillate.VolumeL * 0.4)
		a, c := r.Cut(still.AtStart(), mid), r.Cut(mid, still.AtEnd())
		cutE, cutW := grams(a.Spirit, c.Spirit)
		allE, allW := grams(r.Distillate)
		if math.Abs(cutE-allE) > 1e-9*allE || math.Abs(cutW-allW) > 1e-9*(allE+allW) {
			t.Fatalf("the cuts hold %.12g g of ethanol and %.12g g of water, the distillate %.12g and %.12g", cutE, cutW, allE, allW)
		}
		for k, f := range r.Congeners {
			if got := a.Contents[k].MassG + c.Contents[k].MassG; math.Abs(got-f.DistillateG) > 1e-9*f.DistillateG {
				t.Fatalf("the cuts hold %.12g g of %s, the distillate %.12g", got, f.Name, f.DistillateG)
			}
		}
		var jars []alcoholometry.Spirit
		for _, j := range r.Jars(r.Distillate.VolumeL / 3.5) {
			jars = append(jars, j.Spirit)
		}
		if jarE, _ := grams(jars...); len(jars) != 4 || math.Abs(jarE-allE) > 1e-9*allE {
			t.Fatalf("%d jars hold %.12g g of ethanol, the distillate %.12g", len(jars), jarE, allE)
		}
	})
	if made < 30 {
		t.Fatalf("only %d batches could be distilled: the test tests nothing", made)
	}
}

// A plain pot is Rayleigh's integral, here over the equilibrium itself and by Gauss's points.
func TestPlainPotIsRayleighsIntegral(t *testing.T) {
	for _, model := range []string{"NRTL", "Wilson", "UNIFAC Dortmund"} {
		pair := the(equilibrium.NewPair(equilibrium.UseModel(model)))
		for _, c := range []struct{ from, to, p float64 }{{0.18, 0.06, 101.325}, {0.4, 0.001, 101.325}, {0.05, 0.02, 40}} {
			integral := quad.Fixed(func(ln float64) float64 {
				x := math.Exp(ln)
				return x / (the(pair.Bubble(x, c.p)).Y - x)
			}, math.Log(c.to), math.Log(c.from), 60, nil, 0)
			r := the(still.Distil(still.Batch{Pot: litres(50, c.from), UntilPot: mole(c.to), P: kPa(c.p), Model: model}))
			near(t, fmt.Sprintf("%s, %g to %g under %g kPa: ln(charged/left)", model, c.from, c.to, c.p), math.Log(moles(r.Charge)/moles(r.Pot)), integral, 2e-7)
		}
	}
}

// A trace in a plain pot decays by the integral of its volatility over the pot.
func TestTraceInAPlainPot(t *testing.T) {
	names := []string{"methanol", "isoamyl alcohol", "ethyl acetate", "furfural"}
	line := the(equilibrium.NewCurve(kPa(101.325), names))
	pair := the(equilibrium.NewPair())
	const from, to = 0.12, 0.02
	b := still.Batch{Pot: litres(50, from), UntilPot: mole(to)}
	for _, n := range names {
		b.Congeners = append(b.Congeners, still.Congener{Name: n, Amount: mgL(1)})
	}
	r := the(still.Distil(b))
	for k, f := range r.Congeners {
		// d ln n = K d ln W = K dx/(y - x)
		integral := quad.Fixed(func(ln float64) float64 {
			x := math.Exp(ln)
			lnK := make([]float64, len(names))
			line.LnK(x, lnK)
			return math.Exp(lnK[k]) * x / (the(pair.Bubble(x, 101.325)).Y - x)
		}, math.Log(to), math.Log(from), 60, nil, 0)
		near(t, f.Name+": ln(charged/left)", math.Log(f.ChargeG/f.PotG), integral, 3e-6*integral)
	}
}

func TestMorePlatesAndMoreRefluxStrengthen(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := still.Batch{Pot: litres(10, rapid.Float64Range(0.005, 0.7).Draw(t, "x")), Plates: rapid.Float64Range(0.1, 15).Draw(t, "plates"),
			Reflux: rapid.Float64Range(0.05, 20).Draw(t, "reflux"), Stop: still.AtVolume(0.01), Steps: 20}
		first := func(b still.Batch) float64 { return the(still.Distil(b)).Steps[0].Strength.MoleFraction() }
		z := first(b)
		more := b
		more.Plates += rapid.Float64Range(0.05, 3).Draw(t, "more plates")
		if y := first(more); y < z-1e-9 {
			t.Fatalf("%g plates give %.9g and %g give %.9g", b.Plates, z, more.Plates, y)
		}
		more = b
		more.Reflux *= 1.3
		if y := first(more); y < z-1e-9 {
			t.Fatalf("a reflux of %g gives %.9g and %g gives %.9g", b.Reflux, z, more.Reflux, y)
		}
		none := b
		none.Reflux = 0
		plain := b
		plain.Plates = 0
		if first(none) != first(plain) {
			t.Fatalf("plates without reflux give %.9g, a plain pot %.9g", first(none), first(plain))
		}
	})
}

func TestManyPlatesReachTheAzeotrope(t *testing.T) {
	r := the(still.Distil(still.Batch{Pot: litres(10, 0.1), Plates: 150, Reflux: 1000, Stop: still.AtVolume(0.01), Steps: 20}))
	az := the(equilibrium.Azeotrope(kPa(101.325))).Liquid.MoleFraction()
	near(t, "150 plates, reflux 1000", r.Steps[0].Strength.MoleFraction(), az, 1e-3)
}

// A partial condenser in equilibrium is one more plate; a differential one does more.
func TestPartialCondenser(t *testing.T) {
	b := still.Batch{Pot: litres(10, 0.08), Plates: 2, Reflux: 0.8, Condenser: still.InEquilibrium, UntilPot: mole(0.02)}
	a := the(still.Distil(b))
	b.Condenser, b.Plates = "", 3
	c := the(still.Distil(b))
	near(t, "strength of the distillate", a.Distillate.Strength.MoleFraction(), c.Distillate.Strength.MoleFraction(), 1e-12)
	b.Condenser, b.Plates = still.Differential, 2
	if d := the(still.Distil(b)); d.Steps[0].Strength.MoleFraction() <= c.Steps[0].Strength.MoleFraction() {
		t.Errorf("a differential condenser gives %v, one in equilibrium %v", d.Steps[0].Strength, c.Steps[0].Strength)
	}
}

func TestFinerStepsChangeNothing(t *testing.T) {
	for _, b := range []still.Batch{
		{Pot: litres(100, 0.1), UntilPot: mole(0.01)},
		{Pot: litres(100, 0.1), Plates: 4, Reflux: 2, UntilPot: mole(0.01)},
		{Pot: litres(100, 0.3), Plates: 10, Reflux: 5, UntilPot: mole(0.05)},
		{Pot: litres(100, 0.1), Thumper: still.Thumper{Charge: litres(10, 0.1)}, UntilPot: mole(0.03)},
		{Pot: litres(100, 0.1), Steam: still.LiveSteam{Live: true}, UntilPot: mole(0.01)},
	} {
		a := the(still.Distil(b))
		b.Steps = 2000
		c := the(still.Distil(b))
		near(t, fmt.Sprintf("%g plates, thumper %v, steam %v: mean distillate", b.Plates, b.Thumper.Charge.Strength.IsSet(), b.Steam.Live),
			a.Distillate.Strength.MoleFraction(), c.Distillate.Strength.MoleFraction(), 1e-7)
	}
}

// The time for a run grows with its steps and its traces and no faster. The least of several is taken, since the machine has
// other things to do.
func TestTimeIsLinear(t *testing.T) {
	least := func(steps, traces int) time.Duration {
		b := still.Batch{Pot: litres(100, 0.1), Plates: 4, Reflux: 2, UntilPot: mole(0.01), Steps: steps}
		for i := range traces {
			b.Congeners = append(b.Congeners, still.Congener{Name: traceNames[i], MassG: 1})
		}
		best := time.Hour
		for range 9 {
			start := time.Now()
			the(still.Distil(b))
			best = min(best, time.Since(start))
		}
		return best
	}
	if a, b := least(2000, 3), least(16000, 3); b > 14*a {
		t.Errorf("2000 steps take %v, 16000 take %v", a, b)
	}
	if a, b := least(2000, 2), least(2000, 12); b > 9*a {
		t.Errorf("2 traces take %v, 12 take %v", a, b)
	}
}
