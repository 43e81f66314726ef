package colour

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// Infusion is a herb giving its green to a spirit while the spirit loses it: the herb holds a fixed amount and gives it off in
// first order (own choice).
type Infusion struct {
	UptakePerH float64 // share of the herb's green that comes out in an hour, dimensionless; above 0
	LossPerH   float64 // share of the dissolved green that goes in an hour, dimensionless; a daily rate over 24; above 0
	AllMgL     float64 // what the herb would give in all, mg/L of spirit, or in any unit that goes with the green
}

func (f Infusion) check(function string) error {
	for _, c := range []struct {
		what  string
		value float64
		unit  string
	}{{"the uptake", f.UptakePerH, "per hour"}, {"the loss", f.LossPerH, "per hour"}, {"what the herb gives", f.AllMgL, "mg/L"}} {
		if err := quantity.CheckRange(function, c.what, c.value, 1e-9, 1e9, c.unit, ""); err != nil {
			return err
		}
	}
	return nil
}

// AfterMgL returns the green in the spirit after some hours on the herb, in mg/L or in the unit of AllMgL:
// q = q∞ k_u/(k_u - k) (e^(-k t) - e^(-k_u t)). It panics with a *quantity.RangeError for a rate or time that makes no sense.
func (f Infusion) AfterMgL(hours float64) float64 {
	const fn = "colour.Infusion.AfterMgL"
	if err := f.check(fn); err != nil {
		panic(err)
	}
	if err := quantity.CheckRange(fn, "time", hours, 0, 1e9, "hours", ""); err != nil {
		panic(err)
	}
	return f.AllMgL * uptake(f.UptakePerH, f.LossPerH, hours)
}

// uptake returns the share of the herb's green in the spirit. With equal rates the formula is 0/0; in this form it is smooth.
func uptake(u, k, t float64) float64 {
	d := math.Abs(u-k) * t
	phi := 1.0 // (1 - e^-d)/d
	if d > 0 {
		phi = -math.Expm1(-d) / d
	}
	return u * t * math.Exp(-math.Min(u, k)*t) * phi
}

// GreenestH returns after how many hours the spirit is greenest: when to take the herb out. It panics as AfterMgL does.
func (f Infusion) GreenestH() float64 {
	if err := f.check("colour.Infusion.GreenestH"); err != nil {
		panic(err)
	}
	x := f.UptakePerH/f.LossPerH - 1
	if math.Abs(x) < 1e-8 {
		return 1 / f.LossPerH
	}
	return math.Log1p(x) / x / f.LossPerH
}

// String gives the infusion and its greenest hour in one line.
func (f Infusion) String() string {
	if err := f.check("colour.Infusion.String"); err != nil {
		return "no infusion"
	}
	h := f.GreenestH()
	return fmt.Sprintf("greenest after %s hours, %s of %s mg/L", quantity.Figure(h), quantity.Figure(f.AfterMgL(h)), quantity.Figure(f.AllMgL))
}

// UptakeFit is how fast a herb gave its green, fitted to readings.
type UptakeFit struct {
	Infusion    Infusion
	LowPerH     float64 // range of the uptake (95 per cent), share in an hour, dimensionless
	HighPerH    float64 // range of the uptake, share in an hour, dimensionless; without meaning if HighOpen
	HighOpen    bool    // the readings do not bound it above: read earlier
	LowOpen     bool    // the readings do not bound it below: read later
	ScatterMgL  float64 // standard deviation of the readings around the fit, mg/L or the readings' unit
	LastPartPct float64 // how far the last reading had come, per cent of all that the herb gives
}

// FitUptake fits an infusion to readings of its green, hours in rising order, with the loss known (in a share per hour,
// dimensionless; 0 stands for a loss too slow to matter). Three readings are the least.
func FitUptake(hours, mgL []float64, lossPerH float64) (UptakeFit, error) {
	const fn = "colour.FitUptake"
	if len(hours) != len(mgL) {
		return UptakeFit{}, fmt.Errorf("%s: %d times and %d readings; give one reading for each time", fn, len(hours), len(mgL))
	}
	if len(hours) < 3 {
		return UptakeFit{}, fmt.Errorf("%s: %d readings fit any infusion; give at least three", fn, len(hours))
	}
	if err := quantity.CheckRange(fn, "the loss", lossPerH, 0, 1e6, "per hour", ""); err != nil {
		return UptakeFit{}, err
	}
	for i, h := range hours {
		if err := quantity.CheckRange(fn, fmt.Sprintf("time %d", i+1), h, 1e-6, 1e6, "hours", ""); err != nil {
			return UptakeFit{}, err
		}
		if i > 0 && h <= hours[i-1] {
			return UptakeFit{}, fmt.Errorf("%s: %g hours stands after %g; times must not go back", fn, h, hours[i-1])
		}
		if err := quantity.CheckRange(fn, fmt.Sprintf("reading %d", i+1), mgL[i], 0, 1e9, "mg/L", ""); err != nil {
			return UptakeFit{}, err
		}
	}
	last := hours[len(hours)-1]
	f := fitProfile(hours, mgL, func(u, t float64) float64 { return uptake(u, lossPerH, t) }, 0.01/last, 50/hours[0], 0)
	if !(f.a > 0) {
		return UptakeFit{}, fmt.Errorf("%s: the readings are all 0 mg/L; there is nothing to fit", fn)
	}
	r := UptakeFit{Infusion: Infusion{f.p, math.Max(lossPerH, 1e-9), f.a}, LowPerH: f.low, HighPerH: f.high, HighOpen: f.highOpen, LowOpen: f.lowOpen, ScatterMgL: f.sd}
	r.LastPartPct = -100 * math.Expm1(-f.p*last)
	return r, nil
}

// String gives the fit with its range in one line.
func (f UptakeFit) String() string {
	low, high := fmt.Sprintf("at least %.3g", f.LowPerH), fmt.Sprintf("at most %.3g", f.HighPerH)
	if f.LowOpen {
		low = "not bounded below"
	}
	if f.HighOpen {
		high = "not bounded above"
	}
	s := fmt.Sprintf("uptake %.3g per hour (%s, %s); the herb gives %s mg/L in all", f.Infusion.UptakePerH, low, high, quantity.Figure(f.Infusion.AllMgL))
	if f.LastPartPct < 90 {
		s += fmt.Sprintf(", by extrapolation: the last reading had %.0f %% of it out", f.LastPartPct)
	}
	return s
}
