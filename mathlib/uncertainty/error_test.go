package uncertainty_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
	"swanneck/mathlib/uncertainty"
)

func TestMistakes(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	of := func(in uncertainty.Measured) error {
		_, err := uncertainty.FirstOrder(uncertainty.Measurement{Model: sum, Inputs: []uncertainty.Measured{in}})
		return err
	}
	first := func(change func(*uncertainty.Measurement)) error {
		m := four(uncertainty.Normal(1), uncertainty.Rectangular(1), uncertainty.StudentT(1, 2))
		change(&m)
		_, err := uncertainty.FirstOrder(m)
		return err
	}
	draw := func(draws int, change func(*uncertainty.Measurement)) error {
		m := four(uncertainty.Normal(1), uncertainty.Rectangular(1), uncertainty.StudentT(1, 5))
		change(&m)
		_, err := uncertainty.MonteCarlo(m, draws, 1)
		return err
	}
	proof := func(change func(*uncertainty.Proofing)) error {
		p := proofing()
		change(&p)
		_, err := uncertainty.ProofedWater(p)
		return err
	}
	_, secondErr := uncertainty.SecondOrderStandard(loss(0, 0.5))
	b, d := the(uncertainty.FirstOrder(loss(1, 0))), the(uncertainty.MonteCarlo(loss(1, 0), 1000, 1))
	_, digitsErr := uncertainty.Compare(b, d, 3)
	d.Unit = "L"
	_, unitErr := uncertainty.Compare(b, d, 1)
	go1 := uncertainty.Correlation{First: "a", Second: "b", R: 1}
	for _, c := range []struct {
		err  error
		want string
	}{
		{of(uncertainty.Hydrometer{ReadingABV: 40}), "hydrometer: the tolerance is 0 % vol; no instrument is exact"},
		{of(uncertainty.Hydrometer{ReadingABV: 40, ToleranceABV: 0.1, DivisionABV: -1}), "hydrometer: the division is -1 % vol; give 0 or more"},
		{of(uncertainty.ProofHydrometer{ReadingProof: 80, ToleranceProof: nan}), "hydrometer: the tolerance is NaN proof"},
		{of(uncertainty.Thermometer{ReadingC: nan, ToleranceC: 0.1}), "thermometer: the reading is NaN °C"},
		{of(uncertainty.DensityMeter{ReadingKgM3: 950, ToleranceKgM3: 0.1, RepeatabilityKgM3: inf}), "density meter: the repeatability is +Inf kg/m³"},
		{of(uncertainty.Balance{ReadingKg: 10, ToleranceKg: -0.1}), "balance: the tolerance is -0.1 kg"},
		{of(uncertainty.TankDip{VolumeL: 0, LPerMM: 1, StickMM: 1}), "tank dip: the volume is 0 L"},
		{of(uncertainty.TankDip{VolumeL: 10, StickMM: 1}), "tank dip: a millimetre holds 0 L"},
		{of(uncertainty.TankDip{VolumeL: 10, LPerMM: 1}), "tank dip: the dip's tolerance is 0 mm"},
		{of(uncertainty.TankDip{VolumeL: 10, LPerMM: 1, StickMM: 1, TablePct: -1}), "tank dip: the table's tolerance is -1 per cent"},
		{of(uncertainty.Repeated{Name: "t", Readings: []float64{1}}), "t: 1 readings; give two or more"},
		{of(uncertainty.Repeated{Name: "t", Unit: "°C", Readings: []float64{1, nan}}), "t: reading 2 is NaN °C"},
		{of(uncertainty.Repeated{Name: "t", Unit: "°C", Readings: []float64{7, 7, 7}}), "t: all 3 readings are 7 °C, so their spread says nothing"},
		{of(uncertainty.Certificate{Name: "c", Value: 1}), "c, certificate: the standard uncertainty is 0"},
		{of(uncertainty.Certificate{Name: "c", Value: 1, Expanded: 1, Factor: -2}), "c: the coverage factor is -2"},
		{of(uncertainty.Input{Value: 3, Unit: "L"}), "an input of 3 L has no name"},
		{of(uncertainty.Input{Name: "v", Value: 3}), "v: there is no tolerance"},
		{of(input("v", 3, uncertainty.StudentT(1, 0))), "v: 0 degrees of freedom"},
		{of(input("v", 3, uncertainty.Part{Standard: 1, Shape: 9})), "v: there is no shape 9"},
		{of(input("v", 3, uncertainty.Rectangular(1).Loose(2))), "v: the limits may be off by 2 of their distance"},
		{first(func(m *uncertainty.Measurement) { m.Model = nil }), "the result has no model"},
		{first(func(m *uncertainty.Measurement) { m.Inputs = nil }), "the result has no inputs"},
		{first(func(m *uncertainty.Measurement) { m.Inputs[1] = nil }), "input 2 is nil"},
		{first(func(m *uncertainty.Measurement) { m.Inputs[1] = m.Inputs[0] }), "two inputs are called a"},
		{first(func(m *uncertainty.Measurement) { m.CoveragePct = 100 }), "the coverage is 100 per cent"},
		{first(func(m *uncertainty.Measurement) { m.Model = func([]float64) float64 { return nan } }), "the result cannot be worked out from the readings: the model gives NaN"},
		{first(func(m *uncertainty.Measurement) {
			m.Correlations = []uncertainty.Correlation{{First: "a", Second: "x", R: 1}}
		}), `there is no input "x"`},
		{first(func(m *uncertainty.Measurement) {
			m.Correlations = []uncertainty.Correlation{{First: "y", Second: "a", R: 1}}
		}), `there is no input "y"`},
		{first(func(m *uncertainty.Measurement) {
			m.Correlations = []uncertainty.Correlation{{First: "a", Second: "a", R: 1}}
		}), "a cannot be correlated with itself"},
		{first(func(m *uncertainty.Measurement) {
			m.Correlations = []uncertainty.Correlation{{First: "a", Second: "b", R: 2}}
		}), "the correlation of a and b is 2"},
		{first(func(m *uncertainty.Measurement) {
			m.Correlations = []uncertainty.Correlation{go1, {First: "b", Second: "c", R: 1}, {First: "a", Second: "c", R: -1}}
		}), "the correlations contradict each other at c"},
		{draw(999, func(*uncertainty.Measurement) {}), "the number of draws is 999"},
		{draw(1000, func(m *uncertainty.Measurement) { m.CoveragePct = 99.9 }), "1000 draws leave 1.0 outside an interval of 99.9 %"},
		{draw(1000, func(m *uncertainty.Measurement) { m.Correlations = []uncertainty.Correlation{go1} }), "b is correlated and not spread normally"},
		{draw(1000, func(m *uncertainty.Measurement) { m.Inputs[2] = input("c", 0, uncertainty.StudentT(1, 2)) }), "c rests on 2 degrees of freedom"},
		{draw(1000, func(m *uncertainty.Measurement) { m.Model = func(x []float64) float64 { return math.Log(x[0] + 0.1) } }), "too many for an interval of 95 %; the first: the model gives NaN"},
		{secondErr, "the terms of second order are known for inputs without correlations only"},
		{digitsErr, "the number of digits is 3"},
		{unitErr, `the budget is in "" at 95 %, the draws in "L" at 95 %`},
		{proof(func(p *uncertainty.Proofing) { p.To = alcoholometry.Strength{} }), "the strength to come down to (To) is not set"},
		{proof(func(p *uncertainty.Proofing) { p.To = alcoholometry.Water }), "no amount of water brings a spirit down to 0.00 % vol"},
		{proof(func(p *uncertainty.Proofing) { p.Tank = uncertainty.TankDip{} }), "the amount must be given by the Tank's dip or by the Balance, one of the two"},
		{proof(func(p *uncertainty.Proofing) { p.Thermometer.ToleranceC = 0 }), "thermometer: the tolerance is 0 °C"},
	} {
		if c.err == nil || !strings.Contains(c.err.Error(), c.want) || !strings.HasPrefix(c.err.Error(), "uncertainty.") || strings.Contains(c.err.Error(), "\n") {
			t.Errorf("error %q; want one line with %q under the function's name", c.err, c.want)
		}
	}
}

// A draw for which the model refuses is counted and told of; a handful does not spoil the interval.
func TestDrawsWithoutAnAnswerAreReported(t *testing.T) {
	m := uncertainty.Measurement{Name: "strength", Unit: "% vol", Inputs: []uncertainty.Measured{input("reading", 99.5, uncertainty.Normal(0.18))},
		Model: func(x []float64) float64 { return the(alcoholometry.TrueStrength(x[0], quantity.Temperature{})).ABV() }}
	d := the(uncertainty.MonteCarlo(m, 50_000, 1))
	if d.Stopped < 50 || d.Stopped > 250 || d.Draws != 50_000 || !strings.Contains(d.FirstStop, "reading") ||
		!strings.Contains(d.String(), "without an answer are left out, the first: alcoholometry.TrueStrength") || len(d.Rows()) != 6 {
		t.Errorf("%v; want about 137 of 50 000 draws above 100 %% vol counted and told of", d)
	}
	m.Inputs[0] = input("reading", 99.5, uncertainty.Normal(0.4))
	if d, err := uncertainty.MonteCarlo(m, 50_000, 1); err == nil || !strings.Contains(err.Error(), "strength has no answer in 251 of the first") {
		t.Errorf("MonteCarlo with a tenth of the draws above 100 %% vol: %v, %v; want an error", d, err)
	}
	// NaN counts as no answer as well.
	m.Model = func(x []float64) float64 { return math.Sqrt(99.9 - x[0]) }
	m.Inputs[0] = input("reading", 99.5, uncertainty.Normal(0.15))
	if d := the(uncertainty.MonteCarlo(m, 50_000, 1)); d.Stopped < 50 || d.FirstStop != "the model gives NaN" {
		t.Errorf("%v; want about 190 draws without an answer", d)
	}
}

// What is no refusal of the trade's math is a fault of the model, and is not swallowed.
func TestOtherPanicsPassThrough(t *testing.T) {
	for name, call := range map[string]func(uncertainty.Measurement) error{
		"FirstOrder": func(m uncertainty.Measurement) error { _, err := uncertainty.FirstOrder(m); return err },
		"MonteCarlo": func(m uncertainty.Measurement) error { _, err := uncertainty.MonteCarlo(m, 1000, 1); return err },
	} {
		fault := errors.New("a fault")
		calls := 0
		m := four(uncertainty.Normal(1))
		m.Model = func(x []float64) float64 {
			if calls++; calls == 3 {
				panic(fault)
			}
			return x[0]
		}
		func() {
			defer func() {
				if r := recover(); r != fault {
					t.Errorf("%s: recovered %v; want the fault of the model", name, r)
				}
			}()
			err := call(m)
			t.Errorf("%s went on with %v", name, err)
		}()
	}
}

func TestReadingValuesOutOfRange(t *testing.T) {
	d := the(uncertainty.MonteCarlo(loss(1, 0), 1000, 1))
	for name, f := range map[string]func(){
		"Below":            func() { d.Below(101) },
		"ShareBelowPct":    func() { d.ShareBelowPct(math.NaN()) },
		"Outline":          func() { d.Outline(2) },
		"Below of nothing": func() { uncertainty.Draws{}.Below(50) },
	} {
		func() {
			defer func() {
				var r *quantity.RangeError
				if err, ok := recover().(error); !ok || !errors.As(err, &r) {
					t.Errorf("%s: no *quantity.RangeError", name)
				}
			}()
			f()
		}()
	}
}
