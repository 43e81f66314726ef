package aroma_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/aroma"
	"swanneck/mathlib/compound"
	"swanneck/mathlib/louche"
	"swanneck/mathlib/quantity"
)

func second[T any](_ T, err error) error { return err }

// trace is a drink with so little of a compound that all of it is dissolved.
func trace(pct float64, name string) aroma.Drink {
	return aroma.Drink{Strength: abv(pct), Amounts: []aroma.Amount{{Compound: name, MgL: 1e-3}}}
}

func TestPartitionAgainstTheEquations(t *testing.T) {
	for _, r := range table(t, "headspace.csv") {
		name := r.text("compound")
		lnK := func(pct float64) float64 {
			return math.Log10(the(aroma.Headspace(trace(pct, name), name)).LiquidOverGas)
		}
		water := lnK(0)
		if math.Abs(water-r.number("logKw")) > 0.006 {
			t.Errorf("%s: log10 K in water %.4f; want %g ± 0.006", name, water, r.number("logKw"))
		}
		for _, c := range []struct {
			column string
			pct    float64
		}{{"P10", 10}, {"P20", 20}, {"P40", 40}, {"P60", 60}} {
			if got := lnK(c.pct) - water; math.Abs(got-r.number(c.column)) > 0.006 {
				t.Errorf("%s: log10 P at %g %% vol %.4f; want %g ± 0.006", name, c.pct, got, r.number(c.column))
			}
		}
		// 1 + 1: half the strength is exactly half the amount.
		p := the(aroma.ProfileOf(trace(40, name), abv(20)))
		if got := p.Lines[0].TimesBottle[0]; math.Abs(got/r.number("ratio40to20")-1) > 0.025 {
			t.Errorf("%s from 40 to 20 %% vol: %.3f times as much in the air; want %g ± 2.5 %%", name, got, r.number("ratio40to20"))
		}
	}
}

func TestPartitionAgainstHenry(t *testing.T) {
	for _, r := range table(t, "henry.csv") {
		w := the(aroma.WaterOverAir(r.text("compound")))
		if f := w.ByDescriptors / r.number("henry"); f > 2.3 || f < 1/2.3 {
			t.Errorf("%v; Henry's constant gives %g, a factor of %.2f", w, r.number("henry"), f)
		}
		if f := w.ByHenry / r.number("henry"); math.Abs(f-1) > 0.03 {
			t.Errorf("%v; Sander's constant makes %g", w, r.number("henry"))
		}
	}
}

func TestAnetholeGolden(t *testing.T) {
	d := aroma.Drink{Strength: abv(45), Amounts: []aroma.Amount{{Compound: "anethole", MgL: 2000}}}
	for _, r := range table(t, "anethole.golden.csv") {
		p := the(aroma.ProfileOf(d, abv(r.number("pct_vol"))))
		if got := p.Lines[0].TimesBottle[0]; math.Abs(got-r.number("times")) > 0.02 {
			t.Errorf("at %g %% vol %.3f times the bottle's; golden %g", r.number("pct_vol"), got, r.number("times"))
		}
	}
	g := the(aroma.Headspace(the(aroma.Dilute(d, abv(10))), "anethole"))
	if g.CappedBy != aroma.ByVapourPressure || math.Abs(g.GasUgL-588) > 2 || g.CapTimes < 1 {
		t.Errorf("%+v; golden 588 µg/L, the vapour of pure anethole", g)
	}
	if c := the(aroma.Headspace(the(aroma.Dilute(d, abv(20))), "anethole")); c.CappedBy != aroma.BySolubility || c.DissolvedMgL >= c.LiquidMgL {
		t.Errorf("%+v: clouded, so the solubility caps it", c)
	}
}

var described = []string{"limonene", "alpha-pinene", "linalool", "eucalyptol", "geraniol", "menthol", "p-cymene", "trans-anethole", "gamma-terpinene", "beta-pinene"}

func TestReleaseRisesOnDilution(t *testing.T) {
	for _, name := range described {
		before := math.Inf(1)
		for pct := 0.0; pct <= 60; pct++ {
			k := the(aroma.Headspace(trace(pct, name), name)).LiquidOverGas
			if pct > 0 && k <= before {
				t.Errorf("%s: from %g to %g %% vol the liquid holds it less, %.4g then %.4g", name, pct-1, pct, before, k)
			}
			before = k
		}
	}
}

func TestAirNeverHoldsMoreThanOverThePureCompound(t *testing.T) {
	capped, clouded := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		var amounts []aroma.Amount
		first := rapid.IntRange(0, len(described)-1).Draw(t, "first")
		for i := range rapid.IntRange(1, 4).Draw(t, "compounds") {
			amounts = append(amounts, aroma.Amount{Compound: described[(first+i)%len(described)], MgL: math.Exp(rapid.Float64Range(-5, 9).Draw(t, "lnMgL"))})
		}
		d := aroma.Drink{Strength: abv(rapid.Float64Range(0, 60).Draw(t, "pct")), Amounts: amounts}
		for _, a := range amounts {
			g := the(aroma.Headspace(d, a.Compound))
			c := the(compound.Find(a.Compound))
			ln, _ := c.Vapour.LnPa(298.15)
			pure := 1000 * math.Exp(ln) * c.MolarMassG / (8.314462618 * 298.15)
			if g.GasUgL > pure*(1+1e-12) || g.GasUgL < 0 || g.DissolvedMgL > g.LiquidMgL || g.CapTimes < 1 {
				t.Fatalf("%+v; over the pure compound there is %.6g µg/L", g, pure)
			}
			switch g.CappedBy {
			case aroma.ByVapourPressure:
				capped++
			case aroma.BySolubility:
				clouded++
			default:
				// Nothing capped: the air goes with the liquid.
				if math.Abs(g.GasUgL*g.LiquidOverGas/(1000*g.LiquidMgL)-1) > 1e-12 {
					t.Fatalf("%+v", g)
				}
			}
		}
	})
	if capped < 3 || clouded < 3 {
		t.Fatalf("%d capped by vapour pressure, %d by solubility; want some of each", capped, clouded)
	}
}

// Watering in small steps, the air over the glass moves in small steps, through the clouding too.
func TestProfileIsContinuous(t *testing.T) {
	d := aroma.Drink{Strength: abv(45), Amounts: []aroma.Amount{{"anethole", 1600}, {"fenchone", 300}, {"limonene", 100}, {"linalool", 20}}}
	var strengths []alcoholometry.Strength
	for pct := 45.0; pct > 3; pct -= 0.05 {
		strengths = append(strengths, abv(pct))
	}
	p := the(aroma.ProfileOf(d, strengths...))
	clouds := 0
	for i := range strengths {
		if p.Cloudy[i] {
			clouds++
		}
		for _, l := range p.Lines {
			if i > 0 && math.Abs(l.TimesBottle[i]/l.TimesBottle[i-1]-1) > 0.03 {
				t.Fatalf("%s jumps from %.4f to %.4f at %v", l.Compound, l.TimesBottle[i-1], l.TimesBottle[i], strengths[i])
			}
		}
	}
	if clouds == 0 || clouds == len(strengths) || len(p.Unplaced) != 1 || !strings.Contains(p.Unplaced[0], "fenchone") {
		t.Errorf("%d of %d strengths are cloudy; left out %q", clouds, len(strengths), p.Unplaced)
	}
	if p.StrengthsABV()[0] != strengths[0].ABV() {
		t.Error("the strengths for the chart are others")
	}
}

func TestACalibrationCarriesOver(t *testing.T) {
	o := the(louche.OilOf("anethole"))
	c := the(louche.Calibrate(o, louche.Dripped(louche.Drink{Strength: abv(45), OilGL: 2}, 4.5)))
	d := aroma.Drink{Strength: abv(25), Amounts: []aroma.Amount{{"anethole", 1100}}}
	before := the(aroma.Headspace(d, "anethole"))
	d.SolubleAs = c.Oil
	after := the(aroma.Headspace(d, "anethole"))
	// The calibration is at 20 °C and the glass at 25: the same heat in both, so the same factor.
	if math.Abs(after.DissolvedMgL/before.DissolvedMgL/c.Factor-1) > 1e-9 {
		t.Errorf("dissolved %.3f and %.3f mg/L; the factor is %.4f", before.DissolvedMgL, after.DissolvedMgL, c.Factor)
	}
}

func TestCompoundsWithoutDescriptors(t *testing.T) {
	if _, err := aroma.Headspace(trace(40, "camphor"), "camphor"); err == nil || !strings.Contains(err.Error(), "no descriptors of camphor") {
		t.Errorf("camphor at 40 %% vol: %v", err)
	}
	// In water Henry's constant will do; myrcene has one too, sabinene no solubility needed.
	if g := the(aroma.Headspace(trace(0, "camphor"), "camphor")); math.Abs(g.LiquidOverGas-0.68*8.314462618*298.15) > 1e-6 || len(g.Notes) == 0 {
		t.Errorf("camphor in water: %+v", g)
	}
	// By activity, fenchone follows the coefficients of distilling; camphor's vapour pressure reaches too little far down.
	if _, err := aroma.Headspace(aroma.Drink{Strength: abv(40), ByActivity: true, Amounts: []aroma.Amount{{Compound: "camphor", MgL: 1}}}, "camphor"); err == nil {
		t.Error("camphor at 25 °C by a vapour pressure that begins at 178 °C")
	}
	d := trace(40, "fenchone")
	d.ByActivity = true
	g := the(aroma.Headspace(d, "fenchone"))
	if len(g.Notes) == 0 || !strings.Contains(g.Notes[0], "guess") || g.LiquidOverGas < 500 || g.LiquidOverGas > 5e5 {
		t.Errorf("%+v", g)
	}
	// The same way in water agrees with Henry's constant within its factor, so the conversion is right.
	w := the(aroma.Headspace(aroma.Drink{Strength: abv(0.6), ByActivity: true, Amounts: []aroma.Amount{{"fenchone", 1e-3}}}, "fenchone"))
	f := the(aroma.Headspace(trace(0, "fenchone"), "fenchone"))
	if x := w.LiquidOverGas / f.LiquidOverGas; x > 3 || x < 1.0/3 {
		t.Errorf("fenchone in water: %.4g by activity, %.4g by solubility", w.LiquidOverGas, f.LiquidOverGas)
	}
	p := the(aroma.ProfileOf(aroma.Drink{Strength: abv(40), ByActivity: true, Amounts: []aroma.Amount{{"carvone", 5}, {"fenchone", 5}}}, abv(20)))
	for _, l := range p.Lines {
		if l.TimesBottle[0] <= 1 || len(l.Notes) == 0 {
			t.Errorf("%+v: opens on dilution, and says how it was guessed", l)
		}
	}
}

func TestNoProfileWithoutItsMatrix(t *testing.T) {
	d := aroma.Drink{Strength: abv(20), Amounts: []aroma.Amount{{"linalool", 1}, {"limonene", 2}}}
	for _, m := range []aroma.Matrix{aroma.Water, aroma.Ethanol40} {
		for name, err := range map[string]error{"OdourActivity": second(aroma.OdourActivity(d, "linalool", m)), "OrderOf": second(aroma.OrderOf(d, m))} {
			if err == nil || !strings.Contains(err.Error(), "not for a drink of 20.00 % vol") || !strings.HasPrefix(err.Error(), "aroma."+name) {
				t.Errorf("%s at 20 %% vol in %s: %v", name, m, err)
			}
		}
	}
	forty := d
	forty.Strength = abv(40)
	// Linalool and limonene have thresholds in water only: at 40 % vol there is no answer, and the error says where there is one.
	if _, err := aroma.OdourActivity(forty, "linalool", aroma.Ethanol40); err == nil || !strings.Contains(err.Error(), "water 6 µg/L") {
		t.Errorf("linalool at 40 %% vol: %v", err)
	}
	if _, err := aroma.OrderOf(forty, aroma.Ethanol40); err == nil || !strings.Contains(err.Error(), "for any of linalool, limonene") {
		t.Errorf("an order at 40 %% vol: %v", err)
	}
	if _, err := aroma.OrderOf(forty, aroma.Water); err == nil {
		t.Error("water's thresholds for 40 % vol")
	}
	if _, err := aroma.OrderOf(forty, "wine"); err == nil || !strings.Contains(err.Error(), "not known") {
		t.Errorf("thresholds in wine: %v", err)
	}
	esters := aroma.Drink{Strength: abv(40), Amounts: []aroma.Amount{{"ethyl hexanoate", 3}, {"limonene", 2}, {"vanillin", 0.1}}}
	o := the(aroma.OrderOf(esters, aroma.Ethanol40))
	if len(o.Activities) != 2 || len(o.Unplaced) != 1 || o.Leads != "ethyl hexanoate" || o.Activities[0].Compound != "ethyl hexanoate" {
		t.Errorf("%v; left out %q", o, o.Unplaced)
	}
	// 3 mg/L over 30 µg/L is 100 times, a decade wide.
	if a := o.Activities[0]; math.Abs(math.Sqrt(a.Low*a.High)-100) > 1e-9 || math.Abs(a.High/a.Low-10) > 1e-9 {
		t.Errorf("%v; want 100 times, from 32 to 316", a)
	}
	// The three air thresholds of limonene span 260 times, so nothing leads.
	air := the(aroma.OrderOf(d, aroma.Air))
	if air.Leads != "" || !strings.Contains(air.String(), "cannot tell") {
		t.Errorf("%v", air)
	}
	a := the(aroma.OdourActivity(d, "limonene", aroma.Air))
	if x := a.High / a.Low / 4000; math.Abs(x-55000.0/212) > 1e-6*x {
		t.Errorf("%v: the span is %g times that of one threshold", a, x)
	}
	none := aroma.Drink{Strength: abv(20), Amounts: []aroma.Amount{{"anethole", 10}}}
	if _, err := aroma.OrderOf(none, aroma.Air); err == nil {
		t.Error("anethole has no threshold in air, but an order")
	}
}

func TestCitralIsCountedTogether(t *testing.T) {
	d := aroma.Drink{Strength: abv(0.2), Amounts: []aroma.Amount{{"geranial", 0.06}, {"neral", 0.03}, {"linalool", 0.006}}}
	o := the(aroma.OrderOf(d, aroma.Water))
	a := the(aroma.OdourActivity(d, "citral", aroma.Water))
	if len(o.Activities) != 2 || math.Abs(math.Sqrt(a.Low*a.High)-3) > 1e-9 {
		t.Errorf("%v; citral %v: 90 over 30 µg/L is 3", o, a)
	}
	if _, err := aroma.OdourActivity(d, "geranial", aroma.Water); err == nil || !strings.Contains(err.Error(), "counted in citral") {
		t.Errorf("geranial alone: %v", err)
	}
	if _, err := aroma.OdourActivity(aroma.Drink{Strength: abv(0.2), Amounts: []aroma.Amount{{"linalool", 0.006}}}, "citral", aroma.Water); err == nil {
		t.Error("citral in a drink without any")
	}
}

func TestThresholdUnits(t *testing.T) {
	for _, r := range table(t, "thresholds.csv") {
		if got := r.number("ppm") * r.number("M") / 24.465 * 1000; math.Abs(got/r.number("ug_m3")-1) > 0.005 {
			t.Errorf("%s: %.1f µg/m³; printed %g", r.text("compound"), got, r.number("ug_m3"))
		}
		// And the table in use has it: at the printed threshold a compound is smelt once, within the span.
		d := aroma.Drink{Strength: abv(20), Amounts: []aroma.Amount{{r.text("compound"), 1}}}
		a := the(aroma.OdourActivity(d, r.text("compound"), aroma.Air))
		if once := a.Amount / r.number("ug_m3"); once < a.Low || once > a.High {
			t.Errorf("%v; by the printed threshold %.4g times", a, once)
		}
	}
}

func TestRefuses(t *testing.T) {
	fine := aroma.Drink{Strength: abv(40), Amounts: []aroma.Amount{{"limonene", 2}}}
	with := func(change func(*aroma.Drink)) aroma.Drink {
		d := fine
		d.Amounts = append([]aroma.Amount(nil), fine.Amounts...)
		change(&d)
		return d
	}
	for name, d := range map[string]aroma.Drink{
		"too strong": with(func(d *aroma.Drink) { d.Strength = abv(95) }),
		"negative":   with(func(d *aroma.Drink) { d.Amounts[0].MgL = -1 }),
		"a brick":    with(func(d *aroma.Drink) { d.Amounts[0].MgL = 1e6 }),
		"no number":  with(func(d *aroma.Drink) { d.Amounts[0].MgL = math.NaN() }),
	} {
		var r *quantity.RangeError
		if err := second(aroma.Headspace(d, "limonene")); !errors.As(err, &r) {
			t.Errorf("%s: %v; want a RangeError", name, err)
		}
	}
	var u *alcoholometry.UnsetError
	if err := second(aroma.Headspace(aroma.Drink{Amounts: fine.Amounts}, "limonene")); !errors.As(err, &u) {
		t.Errorf("unset strength: %v", err)
	}
	var n *compound.UnknownError
	if err := second(aroma.ProfileOf(with(func(d *aroma.Drink) { d.Amounts[0].Compound = "limonen" }), abv(20))); !errors.As(err, &n) || n.Func != "aroma.ProfileOf" {
		t.Errorf("misspelt: %v", err)
	}
	for name, err := range map[string]error{
		"not in it":      second(aroma.Headspace(fine, "linalool")),
		"nothing":        second(aroma.Headspace(aroma.Drink{Strength: abv(40)}, "limonene")),
		"twice":          second(aroma.Headspace(with(func(d *aroma.Drink) { d.Amounts = append(d.Amounts, aroma.Amount{"d-limonene", 1}) }), "limonene")),
		"no strengths":   second(aroma.ProfileOf(fine)),
		"upwards":        second(aroma.ProfileOf(fine, abv(41))),
		"none left":      second(aroma.ProfileOf(trace(40, "camphor"), abv(20))),
		"empty bottle":   second(aroma.ProfileOf(with(func(d *aroma.Drink) { d.Amounts[0].MgL = 0 }), abv(20))),
		"unset":          second(aroma.Dilute(fine, alcoholometry.Strength{})),
		"water of water": second(aroma.Dilute(trace(0, "limonene"), abv(0))),
		"nobody":         second(aroma.WaterOverAir("nobody")),
		"of nobody":      second(the(aroma.ProfileOf(fine, abv(20))).Of("linalool")),
	} {
		if err == nil || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v; want an error of one line", name, err)
		}
	}
	if w, err := aroma.WaterOverAir("propyl butyrate"); err != nil || w.ByDescriptors <= 0 || w.ByHenry != 0 {
		t.Errorf("a compound with descriptors only: %v, %v", w, err)
	}
	defer func() {
		if _, ok := recover().(*aroma.IndexError); !ok {
			t.Error("a strength that is not there: no IndexError")
		}
	}()
	the(aroma.ProfileOf(fine, abv(20))).Opens(1)
}

func TestOpens(t *testing.T) {
	one := the(aroma.ProfileOf(aroma.Drink{Strength: abv(40), Amounts: []aroma.Amount{{"limonene", 0.5}}}, abv(20)))
	if !strings.HasPrefix(one.Opens(0), "limonene") {
		t.Error(one.Opens(0))
	}
	two := the(aroma.ProfileOf(aroma.Drink{Strength: abv(60), Amounts: []aroma.Amount{{"limonene", 0.01}, {"methanol", 100}}}, abv(20)))
	if !strings.Contains(two.Opens(0), "limonene opens most") {
		t.Error(two.Opens(0))
	}
	near := the(aroma.ProfileOf(aroma.Drink{Strength: abv(40), Amounts: []aroma.Amount{{"limonene", 0.01}, {"alpha-pinene", 0.001}}}, abv(20)))
	if near.Opens(0) != "cannot tell which opens most" {
		t.Error(near.Opens(0))
	}
}
