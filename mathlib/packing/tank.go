package packing

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Run is a filling run from one tank.
type Run struct {
	Tank    alcoholometry.Spirit // what the tank holds, at its temperature
	LeftL   float64              // what stays behind in tank, pump, hose and filter, L at the tank's temperature
	LossPct float64              // what is spilt or drawn as samples of the rest, per cent; 0 to 100
	Bottle  Bottle               // its strength may be left unset: it is the tank's
	PerCase int                  // bottles in a case; 0 if there are no cases
}

// Bottles is what a tank fills.
type Bottles struct {
	Run        Run
	Bottles    int     // full bottles
	Cases      int     // full cases, if PerCase is given
	Loose      int     // bottles beyond the full cases
	LeftOverL  float64 // what does not fill a bottle, L at the tank's temperature
	GivenAwayL float64 // filled beyond the nominal volume in all bottles, L at Bottle.MarkedAt
	PureL      float64 // pure alcohol in the bottles, L at 20 °C
}

// sameABV is how far two strengths may differ and still be of one spirit, % vol: less than any label shows.
const sameABV = 0.05

// BottlesFrom returns how many full bottles a tank fills at its temperature: what the bottles must hold is brought to
// that temperature, not the litres of the dip taken for litres at 20 °C. It fails with an *alcoholometry.UnsetError,
// with a *quantity.RangeError, and if more stays behind than the tank holds or the bottle's strength is not the tank's.
//
// Source: as for FillBottle.
func BottlesFrom(r Run) (Bottles, error) {
	const fn = "packing.BottlesFrom"
	if err := alcoholometry.CheckSpirit(fn, r.Tank); err != nil {
		return Bottles{}, err
	}
	if err := above0(fn, "the tank's volume", r.Tank.VolumeL, "L"); err != nil {
		return Bottles{}, err
	}
	if err := quantity.CheckRange(fn, "what stays behind", r.LeftL, 0, r.Tank.VolumeL, "L", "the tank's volume"); err != nil {
		return Bottles{}, err
	}
	if err := quantity.CheckRange(fn, "the loss", r.LossPct, 0, 100, "per cent", ""); err != nil {
		return Bottles{}, err
	}
	if r.PerCase < 0 {
		return Bottles{}, fmt.Errorf("%s: a case of %d bottles; give 1 or more, or 0 for no cases", fn, r.PerCase)
	}
	if !r.Bottle.Strength.IsSet() {
		r.Bottle.Strength = r.Tank.Strength
	} else if math.Abs(r.Bottle.Strength.ABV()-r.Tank.Strength.ABV()) > sameABV {
		return Bottles{}, fmt.Errorf("%s: the tank is at %v and the bottle at %v; bring the tank to the strength first", fn, r.Tank.Strength, r.Bottle.Strength)
	}
	b := r.Bottle
	b.Temp = r.Tank.Temp
	one, err := fill(fn, b)
	if err != nil {
		return Bottles{}, err
	}
	netL := (r.Tank.VolumeL - r.LeftL) * (1 - r.LossPct/100)
	fills := netL / one.VolumeL
	if fills > math.MaxInt32 {
		return Bottles{}, fmt.Errorf("%s: %.4g bottles; check the tank's and the bottle's volume", fn, fills)
	}
	n := math.Floor(fills + 1e-9) // 700 L make 1000 bottles of 0.7 L
	out := Bottles{Run: r, Bottles: int(n), Loose: int(n), LeftOverL: math.Max(netL-n*one.VolumeL, 0), GivenAwayL: n * b.OverL}
	if r.PerCase > 0 {
		out.Cases, out.Loose = out.Bottles/r.PerCase, out.Bottles%r.PerCase
	}
	marked := alcoholometry.Spirit{VolumeL: one.ContentsL, Strength: b.Strength, Temp: b.MarkedAt}
	out.PureL = n * marked.PureL()
	return out, nil
}
