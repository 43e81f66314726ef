package uncertainty_test

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat"

	"swanneck/mathlib/uncertainty"
)

// endGauge is the calibration of JCGM 100 H.1 and JCGM 101 9.5. With asInJCGM101 the parts are spread as there, otherwise
// only their standard uncertainties and degrees of freedom count.
func endGauge(t testing.TB, asInJCGM101 bool) uncertainty.Measurement {
	var inputs []uncertainty.Input
	for _, r := range table(t, "end_gauge_inputs.csv") {
		p := uncertainty.Normal(r.number("standard"))
		if asInJCGM101 {
			switch half, _ := r.optional("half"); r.text("shape") {
			case "student":
				p = uncertainty.StudentT(r.number("standard"), int(r.number("degrees")))
			case "rectangular":
				p = uncertainty.Rectangular(half)
			case "loose":
				p = uncertainty.Rectangular(half).Loose(r.number("loose_by"))
			case "cycling":
				p = uncertainty.Cycling(half)
			case "normal":
			default:
				t.Fatalf("no shape %q", r.text("shape"))
			}
		} else if nu, ok := r.optional("degrees"); ok {
			p.Degrees = int(nu)
		}
		p = p.Called(r.text("part"))
		if n := len(inputs); n > 0 && inputs[n-1].Name == r.text("quantity") {
			inputs[n-1].Parts = append(inputs[n-1].Parts, p)
			continue
		}
		inputs = append(inputs, uncertainty.Input{Name: r.text("quantity"), Value: r.number("value"), Parts: []uncertainty.Part{p}})
	}
	const nominal = 50e6 // nm
	m := uncertainty.Measurement{Name: "deviation", Unit: "nm", CoveragePct: 99, Model: func(x []float64) float64 {
		lS, d, alphaS, theta, deltaAlpha, deltaTheta := x[0], x[1], x[2], x[3], x[4], x[5]
		return lS + d - lS*(deltaAlpha*theta+alphaS*deltaTheta) - nominal
	}}
	for _, in := range inputs {
		m.Inputs = append(m.Inputs, in)
	}
	return m
}

func sum(x []float64) float64 {
	var y float64
	for _, v := range x {
		y += v
	}
	return y
}

func four(parts ...uncertainty.Part) uncertainty.Measurement {
	m := uncertainty.Measurement{Model: sum}
	for i, p := range parts {
		m.Inputs = append(m.Inputs, uncertainty.Input{Name: string(rune('a' + i)), Parts: []uncertainty.Part{p}})
	}
	return m
}

func input(name string, value float64, p uncertainty.Part) uncertainty.Input {
	return uncertainty.Input{Name: name, Value: value, Parts: []uncertainty.Part{p}}
}

func loss(x1, r float64) uncertainty.Measurement {
	m := uncertainty.Measurement{Inputs: []uncertainty.Measured{input("x1", x1, uncertainty.Normal(0.005)), input("x2", 0, uncertainty.Normal(0.005))},
		Model: func(x []float64) float64 { return x[0]*x[0] + x[1]*x[1] }}
	if r != 0 {
		m.Correlations = []uncertainty.Correlation{{First: "x1", Second: "x2", R: r}}
	}
	return m
}

// impedance is the measurement of JCGM 100 H.2, with what its readings say.
func impedance(t testing.TB, of func(v, i, phi float64) float64) uncertainty.Measurement {
	names := []string{"V", "I_mA", "phi"}
	columns := make([][]float64, len(names))
	for _, r := range table(t, "impedance_readings.csv") {
		for k, n := range names {
			columns[k] = append(columns[k], r.number(n))
		}
	}
	m := uncertainty.Measurement{Model: func(x []float64) float64 { return of(x[0], x[1]/1000, x[2]) }}
	for k, n := range names {
		mean, std := stat.MeanStdDev(columns[k], nil)
		m.Inputs = append(m.Inputs, input(n, mean, uncertainty.Normal(std/math.Sqrt(float64(len(columns[k]))))))
		for j := range k {
			m.Correlations = append(m.Correlations, uncertainty.Correlation{First: names[j], Second: n, R: stat.Correlation(columns[j], columns[k], nil)})
		}
	}
	return m
}

// example returns the measurement of a worked example. Sources: as for published_results.csv; inputs from memory.
func example(t *testing.T, name string) uncertainty.Measurement {
	unit, wide := uncertainty.Rectangular(math.Sqrt(3)), uncertainty.Rectangular(10*math.Sqrt(3))
	switch name {
	case "9.2.2":
		n := uncertainty.Normal(1)
		return four(n, n, n, n)
	case "9.2.3":
		return four(unit, unit, unit, unit)
	case "9.2.4":
		return four(unit, unit, unit, wide)
	case "9.3": // masses in mg
		return uncertainty.Measurement{
			Model: func(x []float64) float64 {
				mRc, dmRc, rhoA, rhoW, rhoR := x[0], x[1], x[2], x[3], x[4]
				return (mRc+dmRc)*(1+(rhoA-1.2)*(1/rhoW-1/rhoR)) - 100_000
			},
			Inputs: []uncertainty.Measured{input("m_Rc", 100_000, uncertainty.Normal(0.050)), input("dm_Rc", 1.234, uncertainty.Normal(0.020)),
				input("rho_a", 1.20, uncertainty.Rectangular(0.10)), input("rho_W", 8000, uncertainty.Rectangular(1000)), input("rho_R", 8000, uncertainty.Rectangular(50))},
		}
	case "9.4 x1=0.000 r=0":
		return loss(0, 0)
	case "9.4 x1=0.010 r=0":
		return loss(0.010, 0)
	case "9.4 x1=0.050 r=0":
		return loss(0.050, 0)
	case "9.4 x1=0.000 r=0.9":
		return loss(0, 0.9)
	case "9.4 x1=0.010 r=0.9":
		return loss(0.010, 0.9)
	case "9.4 x1=0.050 r=0.9":
		return loss(0.050, 0.9)
	case "9.5":
		return endGauge(t, true)
	case "H.1":
		return endGauge(t, false)
	case "H.2 R":
		return impedance(t, func(v, i, phi float64) float64 { return v / i * math.Cos(phi) })
	case "H.2 X":
		return impedance(t, func(v, i, phi float64) float64 { return v / i * math.Sin(phi) })
	case "H.2 Z":
		return impedance(t, func(v, i, phi float64) float64 { return v / i })
	case "NPL ln":
		return uncertainty.Measurement{Model: func(x []float64) float64 { return math.Log(x[0]) }, Inputs: []uncertainty.Measured{input("x", 0.6, uncertainty.Rectangular(0.5))}}
	case "E13":
		return uncertainty.Measurement{Model: func(x []float64) float64 { return (x[2] - x[0]) / (x[0] * (x[3] - x[1])) },
			Inputs: []uncertainty.Measured{input("L0", 1.4999, uncertainty.StudentT(0.0001, 3)), input("T0", 288.15, uncertainty.StudentT(0.02, 3)),
				input("L1", 1.5021, uncertainty.StudentT(0.0002, 3)), input("T1", 373.10, uncertainty.StudentT(0.05, 3))}}
	}
	t.Fatalf("no example %q", name)
	return uncertainty.Measurement{}
}

func TestWorkedExamples(t *testing.T) {
	seen := map[string]int{}
	for _, r := range table(t, "published_results.csv") {
		name, method := r.text("example"), r.text("method")
		m := example(t, name)
		m.CoveragePct = r.number("coverage_pct")
		place := r.number("place") * (1 + 1e-9)
		var value, standard, low, high, u float64
		scatter := 0.0 // of a Monte Carlo result, in standard uncertainties
		switch method {
		case "first":
			b, err := uncertainty.FirstOrder(m)
			if err != nil {
				t.Errorf("FirstOrder(%s): %v", name, err)
				continue
			}
			value, standard, low, high = b.Value, b.Standard, b.Value-b.Expanded, b.Value+b.Expanded
		case "second":
			b := the(uncertainty.FirstOrder(m))
			u2, err := uncertainty.SecondOrderStandard(m)
			if err != nil {
				t.Errorf("SecondOrderStandard(%s): %v", name, err)
				continue
			}
			value, standard = b.Value, u2
			low, high = value-b.Factor*u2, value+b.Factor*u2
		case "mc":
			d, err := uncertainty.MonteCarlo(m, 1_000_000, 1)
			if err != nil {
				t.Errorf("MonteCarlo(%s): %v", name, err)
				continue
			}
			value, standard, low, high = d.Mean, d.Standard, d.EvenLow, d.EvenHigh
			if r.text("interval") == "shortest" {
				low, high = d.Low, d.High
			}
			scatter, u = 1, d.Standard
		default:
			t.Fatalf("no method %q", method)
		}
		// Four standard deviations of a mean, and about as much of a standard deviation, of a million draws. The shortest
		// interval may slide by some per cent of the standard uncertainty where the density is flat, at hardly any cost of
		// length: its ends are loose and its length is not. The print has a scatter of its own.
		ends := 0.01
		if r.text("interval") == "shortest" {
			ends = 0.05
		}
		for _, c := range []struct {
			what     string
			got, off float64
		}{{"value", value, 0.004}, {"standard", standard, 0.006}, {"low", low, ends}, {"high", high, ends}, {"length", high - low, 0.012}} {
			want, ok := r.printed(c.what)
			if !ok {
				continue
			}
			place := place
			if c.what == "length" {
				place *= 2
			}
			seen[method]++
			if tol := place + scatter*c.off*u; !(math.Abs(c.got-want) <= tol) {
				t.Errorf("%s %s: %s = %.8g; the print gives %.8g ± %.2g", name, method, c.what, c.got, want, tol)
			}
		}
	}
	if seen["first"] < 30 || seen["second"] < 5 || seen["mc"] < 30 {
		t.Errorf("only %v figures were checked", seen)
	}
}
