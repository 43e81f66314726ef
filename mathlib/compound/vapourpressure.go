package compound

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

type form int

const (
	antoine form = iota + 1
	wagner25
	iapws
)

var formNames = map[string]form{"antoine": antoine, "wagner25": wagner25, "iapws": iapws}

// VapourPressure is the equation of a compound's vapour pressure.
type VapourPressure struct {
	MinC, MaxC float64 // the range of the equation, °C
	From       Provenance

	form form
	a    [6]float64 // dimensionless; Antoine's B and C in K
	tcK  float64
	lnPc float64 // natural logarithm of the critical pressure in Pa
}

// LnPa returns the natural logarithm of the vapour pressure in Pa at tempK, and how much it grows per kelvin, both
// dimensionless but for the 1/K of the second. It checks nothing: outside the range it extrapolates, and at or above
// the critical temperature it is no number.
//
// Sources of the forms: Antoine; Wagner (2.5, 5): Poling, Prausnitz and O'Connell, The Properties of Gases and Liquids,
// 5th edition (2001), appendix A; water: Wagner and Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783, equation 1.
func (v *VapourPressure) LnPa(tempK float64) (lnPa, perK float64) {
	a := &v.a
	if v.form == antoine {
		d := 1 / (tempK + a[2])
		return a[0] - a[1]*d, a[1] * d * d
	}
	// n is the bracket of the formula and dn its derivative by t; one square root, no powers.
	t := 1 - tempK/v.tcK
	s, t2 := math.Sqrt(t), t*t
	var n, dn float64
	if v.form == wagner25 {
		n = t * (a[0] + s*(a[1]+t*a[2]) + a[3]*t2*t2)
		dn = a[0] + s*(1.5*a[1]+2.5*t*a[2]) + 5*a[3]*t2*t2
	} else {
		t3 := t2 * t
		n = t * (a[0] + s*a[1] + t2*(a[2]+s*a[3]+t*a[4]+t3*t*s*a[5]))
		dn = a[0] + 1.5*s*a[1] + t2*(3*a[2]+3.5*s*a[3]+4*t*a[4]+7.5*t3*t*s*a[5])
	}
	u := 1 / tempK
	return v.lnPc + n*v.tcK*u, -(dn + n*v.tcK*u) * u
}

// VapourPressureKPa returns the vapour pressure of the liquid compound at t, kPa. It fails with a *quantity.RangeError
// outside the range of the compound's equation, which can begin well above room temperature: nothing is extrapolated.
func (c *Compound) VapourPressureKPa(t quantity.Temperature) (float64, error) {
	const fn = "compound.VapourPressureKPa"
	if !c.Vapour.From.Known() {
		return 0, fmt.Errorf("%s: %s has no vapour pressure here", fn, c.Name)
	}
	if err := quantity.CheckRange(fn, "temperature", t.C(), c.Vapour.MinC, c.Vapour.MaxC, "°C", c.Name+", "+c.Vapour.From.Source); err != nil {
		return 0, err
	}
	ln, _ := c.Vapour.LnPa(t.K())
	return math.Exp(ln) / 1000, nil
}

// BoilingPoint returns the temperature at which the pure liquid boils at the pressure p. It fails with a
// *quantity.RangeError if that lies outside the range of the compound's equation by more than a kelvin; equations often
// end at the normal boiling point.
func (c *Compound) BoilingPoint(p quantity.Pressure) (quantity.Temperature, error) {
	const fn, slack = "compound.BoilingPoint", 1.0
	if !c.Vapour.From.Known() {
		return quantity.Temperature{}, fmt.Errorf("%s: %s has no vapour pressure here", fn, c.Name)
	}
	low, high := c.Vapour.MinC+273.15, c.Vapour.MaxC+273.15+slack
	if c.Vapour.tcK > 0 {
		high = math.Min(high, c.Vapour.tcK)
	}
	lowest, _ := c.Vapour.LnPa(low)
	highest, _ := c.Vapour.LnPa(high)
	if err := quantity.CheckRange(fn, "pressure", p.KPa(), math.Exp(lowest)/1000, math.Exp(highest)/1000, "kPa", c.Name+", "+c.Vapour.From.Source); err != nil {
		return quantity.Temperature{}, err
	}
	// Newton in 1/T, in which ln p is nearly straight, kept inside the bracket.
	target, u := math.Log(p.KPa()*1000), 2/(low+high)
	uLow, uHigh := 1/high, 1/low
	for range 100 {
		ln, perK := c.Vapour.LnPa(1 / u)
		if ln > target {
			uLow = u
		} else {
			uHigh = u
		}
		next := u + (ln-target)*u*u/perK
		if !(next > uLow && next < uHigh) {
			next = (uLow + uHigh) / 2
		}
		if math.Abs(next-u) <= 1e-15*u {
			u = next
			break
		}
		u = next
	}
	return quantity.Kelvin(1 / u)
}
