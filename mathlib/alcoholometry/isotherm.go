package alcoholometry

import "math"

const (
	minC = -20 // lowest temperature of the density formula, °C
	maxC = 40  // highest temperature of the density formula, °C

	sourceR22 = "OIML R 22 (1975)"

	usReferenceC = 28 / 1.8 // 60 °F, °C
)

// isotherm is the density formula at one temperature: the coefficients of a polynomial in the mass fraction, kg/m³.
// At every temperature from -20 to 40 °C it falls steadily from water to ethanol, so one density belongs to one
// strength; a test holds that.
type isotherm [12]float64

var (
	isotherm20    = makeIsotherm(20)
	isothermUS    = makeIsotherm(usReferenceC)
	ethanol20KgM3 = isotherm20.rho(1)
	ethanolUSKgM3 = isothermUS.rho(1)
)

func isothermAt(tC float64) isotherm {
	if tC == 20 {
		return isotherm20
	}
	return makeIsotherm(tC)
}

func makeIsotherm(tC float64) isotherm {
	x := tC - 20
	var a isotherm
	// Each power of the mass fraction has its own highest power of x, so the sums are written out by it.
	c := &r22[0]
	a[0] = c[0] + x*(c[1]+x*(c[2]+x*(c[3]+x*(c[4]+x*(c[5]+x*c[6])))))
	for k := 1; k <= 2; k++ {
		c := &r22[k]
		a[k] = c[0] + x*(c[1]+x*(c[2]+x*(c[3]+x*(c[4]+x*c[5]))))
	}
	for k := 3; k <= 4; k++ {
		c := &r22[k]
		a[k] = c[0] + x*(c[1]+x*(c[2]+x*(c[3]+x*c[4])))
	}
	for k := 5; k <= 9; k++ {
		c := &r22[k]
		a[k] = c[0] + x*(c[1]+x*(c[2]+x*c[3]))
	}
	a[10] = r22[10][0] + x*(r22[10][1]+x*r22[10][2])
	a[11] = r22[11][0] + x*r22[11][1]
	return a
}

// rho returns the density at the mass fraction w, kg/m³.
func (a *isotherm) rho(w float64) float64 {
	return a[0] + w*(a[1]+w*(a[2]+w*(a[3]+w*(a[4]+w*(a[5]+w*(a[6]+w*(a[7]+w*(a[8]+w*(a[9]+w*(a[10]+w*a[11]))))))))))
}

// rhoAndSlope returns the density at the mass fraction w and its derivative by w, both in kg/m³.
func (a *isotherm) rhoAndSlope(w float64) (rho, slope float64) {
	rho = a[11]
	for k := 10; k >= 0; k-- {
		slope = slope*w + rho
		rho = rho*w + a[k]
	}
	return rho, slope
}

// fractionOfDensity returns the mass fraction from low to 1 whose density is rho. The caller has made sure that rho
// lies between the densities at the two ends.
func (a *isotherm) fractionOfDensity(rho, low float64) float64 {
	first, last := a.rho(low), a.rho(1)
	guess := low + (1-low)*(first-rho)/(first-last)
	return solve(low, 1, guess, func(w float64) (float64, float64) {
		r, slope := a.rhoAndSlope(w)
		return rho - r, -slope
	})
}

// fractionOfVolumeShare returns the mass fraction of a mixture that holds the volume share q of ethanol, by
// q = w ρ(w)/ρ(1), the definition of strength by volume in OIML R 22.
func (a *isotherm) fractionOfVolumeShare(q, low float64) float64 {
	mass := q * a.rho(1)
	ideal := q * a.rho(1) / (q*a.rho(1) + (1-q)*a[0]) // if nothing contracted
	return solve(low, 1, ideal, func(w float64) (float64, float64) {
		r, slope := a.rhoAndSlope(w)
		return w*r - mass, r + w*slope
	})
}

// volumeShare returns the strength by volume, as a share, of the mass fraction w.
func (a *isotherm) volumeShare(w float64) float64 { return w * a.rho(w) / a.rho(1) }

// solve returns the root in [low, high] of a function that rises there. f gives the value and the slope. A Newton
// step that would leave the bracket is replaced by halving it, so it always ends.
func solve(low, high, guess float64, f func(float64) (value, slope float64)) float64 {
	x := math.Min(math.Max(guess, low), high)
	for range 200 {
		value, slope := f(x)
		switch {
		case value == 0:
			return x
		case value < 0:
			low = x
		default:
			high = x
		}
		next := x - value/slope
		if !(next >= low && next <= high) {
			next = low + (high-low)/2
		}
		if math.Abs(next-x) <= 1e-15 {
			return next
		}
		x = next
	}
	return x
}
