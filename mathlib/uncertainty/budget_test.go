package uncertainty_test

import (
	"math"
	"testing"

	"swanneck/mathlib/uncertainty"
)

// Source: JCGM 100:2008, H.1.4 to H.1.6 and table H.1, in nm: from memory, but for u(d), its degrees of freedom and those of
// the result, which were read as quoted in the tests of a public metrology package.
func TestEndGaugeLineByLine(t *testing.T) {
	b := the(uncertainty.FirstOrder(endGauge(t, false)))
	byInput := map[string]float64{}
	for _, l := range b.Lines {
		byInput[l.Input] = math.Hypot(byInput[l.Input], l.Contribution)
	}
	for name, want := range map[string]float64{"l_s": 25, "d": 9.7, "alpha_s": 0, "theta": 0, "delta_alpha": 2.9, "delta_theta": 16.6} {
		if got, ok := byInput[name]; !ok || math.Abs(got-want) > 0.1 { // the inputs are printed to two digits
			t.Errorf("contribution of %s = %.3f nm; JCGM 100 table H.1 gives %.1f ± 0.1", name, got, want)
		}
	}
	for _, c := range []struct {
		what           string
		got, want, tol float64
	}{
		{"degrees of freedom", math.Floor(b.Degrees), 16, 0},
		{"k", b.Factor, 2.92, 0.005},
		{"expanded uncertainty", b.Expanded, 93, 0.5},
	} {
		if math.Abs(c.got-c.want) > c.tol {
			t.Errorf("%s = %.4g; JCGM 100 H.1.6 gives %.4g ± %g", c.what, c.got, c.want, c.tol)
		}
	}
	for _, in := range endGauge(t, false).Inputs {
		if in := the(in.Input()); in.Name == "d" && math.Abs(in.Degrees()-25.6) > 0.2 {
			t.Errorf("degrees of freedom of d = %.3f; JCGM 100 H.1.3.2 gives 25.6 (from u(d) rounded to 9.7 nm) ± 0.2", in.Degrees())
		}
	}
	if b.LimitedBy != "l_s" || math.Abs(b.LimitedPct-100*625/(b.Standard*b.Standard)) > 1e-6 {
		t.Errorf("limited by %s with %.1f %%; l_s makes 25² nm² of it", b.LimitedBy, b.LimitedPct)
	}
	if want := b.Factor * math.Sqrt(b.Standard*b.Standard-0.75*625); math.Abs(b.ExpandedIfHalved-want) > 1e-6 {
		t.Errorf("expanded uncertainty with half of u(l_s) = %.6f; want %.6f", b.ExpandedIfHalved, want)
	}
}

func TestRepeatedReadings(t *testing.T) {
	var readings []float64
	for _, r := range table(t, "temperature_readings.csv") {
		readings = append(readings, r.number("reading_C"))
	}
	in := the(uncertainty.Repeated{Name: "t", Unit: "°C", Readings: readings}.Input())
	if math.Abs(in.Value-100.145) > 0.0005 || math.Abs(in.Standard()-0.333) > 0.0005 || in.Degrees() != 19 {
		t.Errorf("mean %.4f °C, standard uncertainty %.4f °C, %g degrees of freedom; JCGM 100 4.4.3 gives 100.145, 0.333, 19", in.Value, in.Standard(), in.Degrees())
	}
}

// Source: JCGM 101:2008, table 6 (ends differ by 0.0451 and 0.0430, not validated), from memory; 9.2.2 is linear and normal.
func TestCompare(t *testing.T) {
	m := example(t, "9.3")
	b, d := the(uncertainty.FirstOrder(m)), the(uncertainty.MonteCarlo(m, 1_000_000, 2))
	a := the(uncertainty.Compare(b, d, 1))
	if math.Abs(a.LowOff-0.0451) > 0.004 || math.Abs(a.HighOff-0.0430) > 0.004 || math.Abs(a.LowOff+a.HighOff-0.0881) > 0.001 || a.Delta != 0.005 || a.Agrees {
		t.Errorf("%+v; JCGM 101 table 6 gives 0.0451 and 0.0430 for a tolerance of 0.005, not validated", a)
	}
	m = example(t, "9.2.2")
	if a := the(uncertainty.Compare(the(uncertainty.FirstOrder(m)), the(uncertainty.MonteCarlo(m, 1_000_000, 2)), 1)); !a.Agrees || math.Abs(a.Delta-0.5) > 1e-12 {
		t.Errorf("%+v; JCGM 101 9.2.2 is validated", a)
	}
	if a := the(uncertainty.Compare(b, d, 2)); a.Delta != 0.0005 {
		t.Errorf("tolerance of two digits of %.4g is %g; JCGM 101 7.9.2 gives 0.0005", b.Standard, a.Delta)
	}
}

// Where the range of the model ends at the reading, the slope is taken on the side that is left.
func TestAtTheEndOfTheRange(t *testing.T) {
	p := proofing()
	p.Hydrometer.ReadingABV, p.Thermometer.ReadingC = 100, 20
	b, err := uncertainty.FirstOrder(the(uncertainty.ProofedStrength(p)))
	if err != nil || math.Abs(b.Lines[0].Sensitivity-1) > 1e-3 {
		t.Errorf("FirstOrder at 100 %% vol: %v, %v; a reading at 20 °C moves the strength one for one", b, err)
	}
}

func TestTellsWhenFirstOrderSeesNothing(t *testing.T) {
	b := the(uncertainty.FirstOrder(loss(0, 0)))
	if b.Standard != 0 || len(b.Notes) != 1 || b.LimitedBy != "" {
		t.Errorf("%v; want a note that only draws can tell", b)
	}
	m := example(t, "H.1")
	m.Correlations = []uncertainty.Correlation{{First: "l_s", Second: "d", R: 0.5}}
	if b := the(uncertainty.FirstOrder(m)); len(b.Notes) != 1 || !math.IsInf(b.Degrees, 1) || math.Abs(b.Factor-2.5758) > 1e-3 {
		t.Errorf("%v; want the normal k and a note on degrees of freedom of correlated inputs", b)
	}
}
