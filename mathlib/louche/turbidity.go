package louche

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// Droplets are oil out of a drink. What is 0 stands for the usual figure.
type Droplets struct {
	OutGL       float64 // oil out, g/L
	DiameterUM  float64 // unit: micrometre, from 0.4 to 10; 1.5 if 0
	WaveUM      float64 // wavelength of the light in vacuum; unit: micrometre; 0.55 if 0
	OilIndex    float64 // refractive index of the oil, dimensionless; anethole's 1.5615 if 0
	LiquidIndex float64 // of the liquid around, dimensionless; 1.345 (about 20 % vol) if 0
	OilKgM3     float64 // density of the oil, kg/m³; 988 if 0
}

// TurbidityPerM returns how strongly droplets of one size take light out of a straight beam; the unit is 1/m, so that exp(-τ x) of
// it is left after x metres. A glass scatters the light many times, so this is no brightness.
//
// Model: τ = 1.5 φ Q/d, φ the share of the oil in the volume, Q = 2 - 4/p sin p + 4/p² (1 - cos p) with p = 2 x (m - 1), x = π d n/λ and m the
// ratio of the refractive indices. Range: 0.4 to 10 µm, m up to 1.2.
//
// Source: van de Hulst, Light Scattering by Small Particles (1957), 11.22. Accuracy: 16 % of exact scattering by spheres in
// this range; below 0.4 µm it is refused, since it is 20 % and more too high there.
func TurbidityPerM(p Droplets) (float64, error) {
	const fn = "louche.TurbidityPerM"
	usual := func(x *float64, value float64) {
		if *x == 0 {
			*x = value
		}
	}
	usual(&p.DiameterUM, usualUM)
	usual(&p.WaveUM, 0.55)
	usual(&p.OilIndex, 1.5615)
	usual(&p.LiquidIndex, 1.345)
	usual(&p.OilKgM3, 988)
	for _, c := range []struct {
		what      string
		value     float64
		low, high float64
		unit      string
	}{
		{"the oil out", p.OutGL, 0, mostOilGL, "g/L"},
		{"the diameter of the droplets", p.DiameterUM, 0.4, 10, "µm"},
		{"the wavelength", p.WaveUM, 0.38, 0.78, "µm"},
		{"the refractive index of the liquid", p.LiquidIndex, 1.3, 1.5, ""},
		{"the ratio of the refractive indices", p.OilIndex / p.LiquidIndex, 1, 1.2, ""},
		{"the density of the oil", p.OilKgM3, 500, 1500, "kg/m³"},
	} {
		if err := quantity.CheckRange(fn, c.what, c.value, c.low, c.high, c.unit, "droplets, van de Hulst 11.22"); err != nil {
			return 0, err
		}
	}
	x := math.Pi * p.DiameterUM * p.LiquidIndex / p.WaveUM
	return 1.5 * p.OutGL / p.OilKgM3 * extinction(2*x*(p.OilIndex/p.LiquidIndex-1)) / (p.DiameterUM * 1e-6), nil
}

// extinction returns Q of the shift of phase p, both dimensionless.
func extinction(p float64) float64 {
	if p < 0.05 { // the terms cancel
		return p * p / 2 * (1 - p*p/18)
	}
	return 2 - 4/p*math.Sin(p) + 4/(p*p)*(1-math.Cos(p))
}

const usualUM = 1.5

// Diameters between which fresh and older droplets lie, µm: order of 1 µm, growing to about 3 without running
// together. Source: Grillo, Colloids Surf. A 225 (2003) 153; Sitnikova and others, Langmuir 21 (2005) 7083 (as quoted).
var someUM = [...]float64{0.7, usualUM, 3}

// Turbidity is how cloudy a drink looks, for droplets of 0.7, 1.5 and 3 µm: nobody knows their size without a microscope.
type Turbidity struct {
	Known    bool    // false for oil counted in parts, of which nobody knows the grams
	LowPerM  float64 // the least; the unit is 1/m
	MidPerM  float64 // for droplets of 1.5 µm; the unit is 1/m
	HighPerM float64 // the most; the unit is 1/m
}

// turbidityOf works out the cloudiness of a parted drink.
func turbidityOf(s Separated) (Turbidity, error) {
	if s.Oil.inParts {
		return Turbidity{}, nil
	}
	if s.OutGL == 0 {
		return Turbidity{Known: true}, nil
	}
	// The droplets have the composition of what is out, not of the oil as it was.
	var litres, index float64
	for k, c := range s.Compounds {
		v := c.OutGL / s.Oil.parts[k].densityKgM3
		n := usualIndex
		if f, ok := embedded().refraction[c.Compound]; ok {
			n = f.value
		}
		litres += v
		index += v * n
	}
	if litres <= 0 {
		return Turbidity{Known: true}, nil
	}
	p := Droplets{OutGL: s.OutGL, OilIndex: index / litres, LiquidIndex: spiritRefraction(s.Drink.Strength.ABW()), OilKgM3: s.OutGL / litres}
	t := Turbidity{Known: true, LowPerM: math.Inf(1)}
	for _, d := range someUM {
		p.DiameterUM = d
		tau, err := TurbidityPerM(p)
		if err != nil {
			return Turbidity{}, err
		}
		t.LowPerM, t.HighPerM = math.Min(t.LowPerM, tau), math.Max(t.HighPerM, tau)
		if d == usualUM {
			t.MidPerM = tau
		}
	}
	return t, nil
}

// usualIndex is the refractive index of an oil that has no row, dimensionless: an estimate, as most terpenes have.
const usualIndex = 1.47

// spiritRefraction returns the refractive index of a spirit at 20 °C, by straight lines between the rows of the table.
func spiritRefraction(massPct float64) float64 {
	rows := embedded().spirit
	massPct = math.Max(0, math.Min(100, massPct)) // rounding only: a strength is never outside
	for i := 1; i < len(rows); i++ {
		if a, b := rows[i-1], rows[i]; massPct <= b.massPct {
			return a.n + (b.n-a.n)*(massPct-a.massPct)/(b.massPct-a.massPct)
		}
	}
	return rows[len(rows)-1].n
}

// Look says in a word how a glass 6 cm across looks: clear, opalescent, hazy or milky; two words if the size of the droplets
// decides. The limits are our own.
func (t Turbidity) Look() string {
	if !t.Known {
		return "not known: the oil was not weighed"
	}
	low, high := look(t.LowPerM), look(t.HighPerM)
	if low == high {
		return low
	}
	return low + " to " + high
}

func look(perM float64) string {
	const glassM = 0.06
	switch x := perM * glassM; {
	case x < 0.1:
		return "clear"
	case x < 1:
		return "opalescent"
	case x < 5:
		return "hazy"
	}
	return "milky"
}

// String gives the look and the span of the turbidity in one line.
func (t Turbidity) String() string {
	if !t.Known {
		return t.Look()
	}
	return fmt.Sprintf("%s (turbidity %.0f to %.0f 1/m, estimate)", t.Look(), t.LowPerM, t.HighPerM)
}
