package louche_test

import (
	"math"
	"math/cmplx"
	"testing"

	"swanneck/mathlib/louche"
)

// exact returns the extinction efficiency of a sphere, the oracle for the approximation. Source: Bohren and Huffman, Absorption and
// Scattering of Light by Small Particles (1983), appendix A.
func exact(x, m float64) float64 {
	nmax := int(x+4*math.Cbrt(x)+2) + 1
	mx := m * x
	down := int(math.Max(float64(nmax), mx)) + 16
	d := make([]float64, down+1)
	for n := down; n > 0; n-- {
		d[n-1] = float64(n)/mx - 1/(d[n]+float64(n)/mx)
	}
	p0, p1, c0, c1 := math.Cos(x), math.Sin(x), -math.Sin(x), math.Cos(x)
	q := 0.0
	for n := 1; n <= nmax; n++ {
		fn := float64(n)
		psi, chi := (2*fn-1)*p1/x-p0, (2*fn-1)*c1/x-c0
		xi1, xi := complex(p1, -c1), complex(psi, -chi)
		a := complex((d[n]/m+fn/x)*psi-p1, 0) / (complex(d[n]/m+fn/x, 0)*xi - xi1)
		b := complex((d[n]*m+fn/x)*psi-p1, 0) / (complex(d[n]*m+fn/x, 0)*xi - xi1)
		q += (2*fn + 1) * (real(a) + real(b))
		p0, p1, c0, c1 = p1, psi, c1, chi
	}
	if cmplx.IsNaN(complex(q, 0)) {
		panic("the oracle broke down")
	}
	return 2 * q / x / x
}

func TestTheOracleAgainstPrint(t *testing.T) {
	for _, r := range table(t, "scattering.csv") {
		if got, want := exact(r.number("x"), r.number("m")), r.number("Q"); math.Abs(got-want) > 1e-3 {
			t.Errorf("exact(%g, %g) = %.5f; Bohren and Huffman give %.5f ± 0.001", r.number("x"), r.number("m"), got, want)
		}
	}
}

// The approximation keeps to 16 % of exact scattering over its whole range.
func TestTurbidityAgainstExactScattering(t *testing.T) {
	worst := 0.0
	for _, m := range []float64{1.05, 1.0952, 1.161, 1.2} {
		for _, d := range []float64{0.4, 0.5, 0.7, 1, 1.5, 2, 3, 5, 8, 10} {
			const n, lambda, rho = 1.345, 0.55, 988.0
			tau := the(louche.TurbidityPerM(louche.Droplets{OutGL: 0.162, DiameterUM: d, OilIndex: n * m * (1 - 1e-15)}))
			x := math.Pi * d * n / lambda
			want := 1.5 * 0.162 / rho * exact(x, m) / (d * 1e-6)
			off := tau/want - 1
			if math.Abs(off) > 0.165 {
				t.Errorf("droplets of %g µm, m %g: %.1f 1/m; exact scattering gives %.1f, %+.1f %%", d, m, tau, want, 100*off)
			}
			worst = math.Max(worst, math.Abs(off))
		}
	}
	if worst < 0.05 {
		t.Errorf("the largest difference is %.3f: an approximation is never that good", worst)
	}
}

// Van de Hulst's extinction has its first maximum, 3.173, at p = 4.086 (computed from his formula; his figure 32 shows it).
func TestFirstMaximumOfExtinction(t *testing.T) {
	const n, lambda, rho, d = 1.345, 0.55, 988.0, 1.0
	at := func(p float64) float64 {
		m := 1 + p/(2*math.Pi*d*n/lambda)
		return the(louche.TurbidityPerM(louche.Droplets{OutGL: 1, DiameterUM: d, OilIndex: n * m})) * d * 1e-6 * rho / 1.5
	}
	best, bestQ := 0.0, 0.0
	for um := 1.0; um < 4; um += 0.001 {
		x := math.Pi * um * n / lambda
		shift := 2 * x * (1.161 - 1)
		q := the(louche.TurbidityPerM(louche.Droplets{OutGL: 1, DiameterUM: um, OilIndex: n * 1.161})) * um * 1e-6 * rho / 1.5
		if q > bestQ {
			best, bestQ = shift, q
		}
	}
	if math.Abs(best-4.086) > 0.01 || math.Abs(bestQ-3.173) > 1e-3 {
		t.Errorf("largest Q %.4f at p %.3f; van de Hulst's formula has 3.173 at 4.086", bestQ, best)
	}
	if got := at(0.04); math.Abs(got-0.04*0.04/2) > 1e-6 {
		t.Errorf("Q of a small shift is %.3g; p²/2 is %.3g", got, 0.04*0.04/2)
	}
}

// Golden, reckoned apart: 0.162 g/L in droplets of 1.5 µm give 510 1/m; 0.6 % of a beam is left after 1 cm.
func TestTurbidityGolden(t *testing.T) {
	tau := the(louche.TurbidityPerM(louche.Droplets{OutGL: 0.162}))
	if math.Abs(tau-510.9) > 0.5 || math.Abs(math.Exp(-tau*0.01)-0.0060) > 1e-4 {
		t.Errorf("0.162 g/L: %.2f 1/m, %.5f left after 1 cm; golden 510.9, 0.0060", tau, math.Exp(-tau*0.01))
	}
}

func TestTurbidityRefuses(t *testing.T) {
	for name, p := range map[string]louche.Droplets{
		"fine droplets":    {OutGL: 0.1, DiameterUM: 0.3},
		"coarse droplets":  {OutGL: 0.1, DiameterUM: 11},
		"negative oil":     {OutGL: -0.1},
		"no number":        {OutGL: math.NaN()},
		"infrared":         {OutGL: 0.1, WaveUM: 1.2},
		"glass in water":   {OutGL: 0.1, OilIndex: 1.7},
		"lighter than air": {OutGL: 0.1, OilKgM3: 1},
		"thinner oil":      {OutGL: 0.1, OilIndex: 1.2},
		"odd liquid":       {OutGL: 0.1, LiquidIndex: 1.1, OilIndex: 1.2},
	} {
		if tau, err := louche.TurbidityPerM(p); err == nil {
			t.Errorf("%s: %.3g 1/m; want an error", name, tau)
		}
	}
}
