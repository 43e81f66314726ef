package botanical

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// Model is a law by which a liquid takes something out of a plant in time. With q the reading, q∞ its end and t the hours:
type Model string

// The models.
const (
	// FirstOrder is q = q∞ (1 - exp(-k t)).
	FirstOrder Model = "first order"
	// WashedFirst is q = q∞ (1 - (1 - f) exp(-k t)): the share f is washed off broken cells at once, the rest diffuses.
	WashedFirst Model = "washing at once, then diffusion"
	// WashingAndDiffusion is q = q∞ (1 - f exp(-kw t) - (1 - f) exp(-k t)), with a rate of its own for the washing.
	WashingAndDiffusion Model = "washing and diffusion"
	// Peleg is q = t/(K1 + K2 t), which is q∞ k t/(1 + k t) with q∞ = 1/K2 and k = K2/K1.
	Peleg Model = "Peleg"
	// FickSphere is diffusion out of a sphere of radius R: q = q∞ F(k t) with k = D/R².
	FickSphere Model = "diffusion out of a sphere"
)

// Uptake is a law with its numbers.
//
// Source: Milojević and others, Hem. Ind. 67 (2013) 843 (washing and diffusion, abstract); Peleg, J. Food Sci. 53 (1988) 1216
// (from memory); Crank, The Mathematics of Diffusion, 2nd edition (1975), 6.3 (from memory).
type Uptake struct {
	Model       Model
	End         float64 // q∞, in the unit of the readings
	RatePerH    float64 // k, 1/h: above 0
	WashedShare float64 // f, dimensionless, from 0 to 1; of the two models with washing
	WashPerH    float64 // kw, 1/h; of WashingAndDiffusion only
}

// FromPeleg returns the uptake of Peleg's two constants, K1 in hours to the unit of the readings and K2 in one over that
// unit. It fails unless both are above 0.
func FromPeleg(k1, k2 float64) (Uptake, error) {
	if !(k1 > 0 && k2 > 0) || math.IsInf(k1, 0) || math.IsInf(k2, 0) {
		return Uptake{}, inputf("botanical.FromPeleg", "K1 is %g and K2 %g; both must be above 0", k1, k2)
	}
	return Uptake{Model: Peleg, End: 1 / k2, RatePerH: k2 / k1}, nil
}

// At returns the reading after so many hours, in the unit of the readings. It panics with an *InputError for a law whose
// numbers make none, and with a *quantity.RangeError for hours below 0.
func (u Uptake) At(hours float64) float64 { return u.End * u.share("botanical.Uptake.At", hours) }

// ReachedPct returns what has come out after so many hours, per cent of the end. It panics as At does.
func (u Uptake) ReachedPct(hours float64) float64 {
	return 100 * u.share("botanical.Uptake.ReachedPct", hours)
}

// HalfH returns the hours to half of the end; 0 if half is washed out at once. It panics as At does.
func (u Uptake) HalfH() float64 { return u.hoursTo("botanical.Uptake.HalfH", 50) }

// HoursTo returns the hours until pct per cent of the end has come out, from 0 to 99.99. It panics as At does.
func (u Uptake) HoursTo(pct float64) float64 { return u.hoursTo("botanical.Uptake.HoursTo", pct) }

func (u Uptake) hoursTo(fn string, pct float64) float64 {
	if err := quantity.CheckRange(fn, "share", pct, 0, 99.99, "%", ""); err != nil {
		panic(err)
	}
	if 100*u.share(fn, 0) >= pct {
		return 0
	}
	low, high := 0.0, 1/u.RatePerH
	for 100*u.share(fn, high) < pct {
		low, high = high, 2*high
	}
	for range 200 {
		mid := (low + high) / 2
		if mid == low || mid == high {
			break
		}
		if 100*u.share(fn, mid) < pct {
			low = mid
		} else {
			high = mid
		}
	}
	return high
}

func (u Uptake) share(fn string, hours float64) float64 {
	if err := quantity.CheckRange(fn, "time", hours, 0, math.Inf(1), "h", ""); err != nil {
		panic(err)
	}
	if !(u.RatePerH > 0) || !(u.End >= 0) || !(u.WashedShare >= 0 && u.WashedShare <= 1) || u.Model == WashingAndDiffusion && !(u.WashPerH > 0) {
		panic(inputf(fn, "the law has an end of %g, a rate of %g 1/h, a washed share of %g and a rate of washing of %g 1/h; rates must be above 0 and the share from 0 to 1", u.End, u.RatePerH, u.WashedShare, u.WashPerH))
	}
	f, x := u.WashedShare, u.RatePerH*hours
	switch u.Model {
	case FirstOrder:
		return -math.Expm1(-x)
	case WashedFirst:
		return f - (1-f)*math.Expm1(-x)
	case WashingAndDiffusion:
		return -f*math.Expm1(-u.WashPerH*hours) - (1-f)*math.Expm1(-x)
	case Peleg:
		return x / (1 + x)
	case FickSphere:
		return sphereShare(x)
	}
	panic(inputf(fn, "there is no model %q; take FirstOrder, WashedFirst, WashingAndDiffusion, Peleg or FickSphere", u.Model))
}

// SphereShare returns the share F, dimensionless, that has left a sphere by diffusion into a liquid that takes it away, at
// tau = D t/R² (dimensionless, D in m²/s, t in s, R in m): 1 - (6/π²) Σ exp(-n²π² tau)/n². It fails with a
// *quantity.RangeError for tau below 0.
//
// Source: Crank, The Mathematics of Diffusion, 2nd edition (1975), equations 6.20 and 6.22 (from memory). Accuracy: 1e-10.
func SphereShare(tau float64) (float64, error) {
	if err := quantity.CheckRange("botanical.SphereShare", "D t/R²", tau, 0, math.Inf(1), "", ""); err != nil {
		return 0, err
	}
	return sphereShare(tau), nil
}

// sphereShare takes the form for short times, with its first image term, where the series would need many terms.
func sphereShare(tau float64) float64 {
	if tau == 0 {
		return 0
	}
	if tau <= 0.1 {
		x := 1 / math.Sqrt(tau)
		ierfc := math.Exp(-x*x)/math.Sqrt(math.Pi) - x*math.Erfc(x)
		return 6*math.Sqrt(tau/math.Pi) - 3*tau + 12*math.Sqrt(tau)*ierfc
	}
	sum := 0.0
	for n := 1.0; ; n++ {
		term := math.Exp(-n*n*math.Pi*math.Pi*tau) / (n * n)
		sum += term
		if term < 1e-13 {
			return 1 - 6/(math.Pi*math.Pi)*sum
		}
	}
}

// String gives the law in one line.
func (u Uptake) String() string {
	s := fmt.Sprintf("%s: end %s, rate %s 1/h", u.Model, threeDigits(u.End), threeDigits(u.RatePerH))
	if u.Model == WashedFirst || u.Model == WashingAndDiffusion {
		s += fmt.Sprintf(", %s %% washed off", threeDigits(100*u.WashedShare))
	}
	if u.Model == WashingAndDiffusion {
		s += fmt.Sprintf(" at %s 1/h", threeDigits(u.WashPerH))
	}
	return s
}
