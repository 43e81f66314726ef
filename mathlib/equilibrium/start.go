package equilibrium

import "math"

// startTable holds where boil begins: 1/T at knots of √x, as a cubic in ln p through four pressures. It is good to about
// a hundredth of a kelvin, which saves Newton's method two of its four rounds and costs a tenth of one.
type startTable [startKnots][4]float64

const startKnots = 65

// startLn are the logarithms of the pressures, Pa, that the cubic goes through: Chebyshev's nodes from 2 to 1100 kPa.
var startLn = func() (ln [4]float64) {
	low, high := math.Log(lowestKPa*1000), math.Log(highestKPa*1000)
	for i := range ln {
		ln[i] = (low+high)/2 - (high-low)/2*math.Cos(math.Pi*(2*float64(i)+1)/8)
	}
	return
}()

func (t *startTable) fill(p *Pair) {
	for i := range t {
		s := float64(i) / (startKnots - 1)
		x := s * s
		var u [4]float64
		for j, ln := range startLn {
			tempK, _, _, rounds := p.boilFrom(x, ln, roughStart(x, ln))
			if u[j] = 1 / tempK; rounds == 0 {
				u[j] = roughStart(x, ln)
			}
		}
		t[i] = newton4(startLn, u)
	}
}

// roughStart returns 1/T, 1/K, from the boiling points of ethanol and water at one atmosphere and a shape between.
func roughStart(x, lnP float64) float64 {
	d := math.Log(101325) - lnP
	e, w := 1/351.44+d/4760, 1/373.124+d/4990
	v := (1 - x) * (1 - x)
	return e + (w-e)*v*v*v
}

// newton4 returns the coefficients of the cubic through four points in Newton's form.
func newton4(x, y [4]float64) [4]float64 {
	for k := 1; k < 4; k++ {
		for i := 3; i >= k; i-- {
			y[i] = (y[i] - y[i-1]) / (x[i] - x[i-k])
		}
	}
	return y
}

// at returns 1/T to begin with, 1/K.
func (t *startTable) at(x, lnP float64) float64 {
	f := math.Sqrt(x) * (startKnots - 1)
	i := min(int(f), startKnots-2)
	f -= float64(i)
	d0, d1, d2 := lnP-startLn[0], lnP-startLn[1], lnP-startLn[2]
	a, b := &t[i], &t[i+1]
	ua := a[0] + d0*(a[1]+d1*(a[2]+d2*a[3]))
	ub := b[0] + d0*(b[1]+d1*(b[2]+d2*b[3]))
	return ua + f*(ub-ua)
}
