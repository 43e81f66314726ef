package packing

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Bottle is a bottle to be filled. Only NominalL and Strength must be given.
type Bottle struct {
	NominalL float64                // the volume on the label, L, at MarkedAt; above 0
	OverL    float64                // filled beyond it on purpose, L at MarkedAt; below 0 for less
	Strength alcoholometry.Strength // of the spirit
	Temp     quantity.Temperature   // of the spirit when it is filled; 20 °C if unset
	TareKg   float64                // what the balance shows for the empty bottle, kg; 0 if it is tared away
	MarkedAt quantity.Temperature   // the temperature of the nominal volume; 20 °C if unset
}

// Filling is what goes into a bottle.
type Filling struct {
	Bottle    Bottle
	ContentsL float64 // the contents at Bottle.MarkedAt, L
	VolumeL   float64 // the contents at Bottle.Temp, L: what a filler set by volume must give
	MassKg    float64 // their true mass, kg
	NetKg     float64 // their weight as the balance shows it in air, kg
	GrossKg   float64 // NetKg and the tare, kg
}

// FillBottle returns what has to go into the bottle so that it holds its nominal volume (and what is filled beyond it)
// at the temperature for which that is marked: by volume at the temperature of filling, and by weight. The air that the
// spirit displaces lifts it on the balance; the tare is subtracted as shown, because the glass is lifted alike empty and
// full. It fails with an *alcoholometry.UnsetError, and with a *quantity.RangeError for a nominal volume not above 0,
// contents not above 0, a negative tare or a temperature outside -20 to 40 °C.
//
// Source: Directive 76/211/EEC, annex I, 2.2 and annex II, 1 (contents at 20 °C, whatever the temperature of filling);
// OIML R 22 (1975) for the density; OIML D 28 (2004) for the weight in air.
func FillBottle(b Bottle) (Filling, error) {
	return fill("packing.FillBottle", b)
}

func fill(fn string, b Bottle) (Filling, error) {
	f := Filling{Bottle: b, ContentsL: b.NominalL + b.OverL}
	if err := above0(fn, "the nominal volume", b.NominalL, "L"); err != nil {
		return Filling{}, err
	}
	if err := above0(fn, "the nominal volume with what is filled beyond it", f.ContentsL, "L"); err != nil {
		return Filling{}, err
	}
	if err := quantity.CheckRange(fn, "the tare", b.TareKg, 0, math.Inf(1), "kg", ""); err != nil {
		return Filling{}, err
	}
	marked := alcoholometry.Spirit{VolumeL: f.ContentsL, Strength: b.Strength, Temp: b.MarkedAt}
	if err := alcoholometry.CheckSpirit(fn, marked); err != nil {
		return Filling{}, err
	}
	rho, err := alcoholometry.DensityKgM3(b.Strength, b.Temp)
	if err != nil {
		return Filling{}, as(fn, err)
	}
	f.MassKg = marked.MassKg()
	f.VolumeL = f.MassKg / rho * 1000
	if f.NetKg, err = alcoholometry.BalanceFromMassKg(f.MassKg, b.Strength, b.Temp); err != nil {
		return Filling{}, as(fn, err)
	}
	f.GrossKg = f.NetKg + b.TareKg
	return f, nil
}

// Weighing is a filled bottle on the balance.
type Weighing struct {
	GrossKg  float64                // what the balance shows for the full bottle, kg
	TareKg   float64                // what it shows for the empty one, kg; 0 if it is tared away
	Strength alcoholometry.Strength // of the spirit in it
	Temp     quantity.Temperature   // of the spirit; 20 °C if unset. It matters to the lift of the air only
	MarkedAt quantity.Temperature   // the temperature at which the contents are wanted; 20 °C if unset
}

// ContentsL returns the contents of a weighed bottle in litres at w.MarkedAt: the way back from FillBottle. It fails
// with an *alcoholometry.UnsetError, and with a *quantity.RangeError for negative weights or temperatures outside -20 to
// 40 °C; and if the tare is more than the gross weight.
//
// Source: Directive 76/211/EEC, annex II, 1.1 (indirectly, by weight and density); otherwise as for FillBottle.
func ContentsL(w Weighing) (float64, error) {
	const fn = "packing.ContentsL"
	for _, c := range []struct {
		what string
		kg   float64
	}{{"the gross weight", w.GrossKg}, {"the tare", w.TareKg}} {
		if err := quantity.CheckRange(fn, c.what, c.kg, 0, math.Inf(1), "kg", ""); err != nil {
			return 0, err
		}
	}
	if w.TareKg > w.GrossKg {
		return 0, fmt.Errorf("%s: the empty bottle weighs %s kg and the full one %s kg; the full one must weigh more", fn, plain(w.TareKg), plain(w.GrossKg))
	}
	kg, err := alcoholometry.MassFromBalanceKg(w.GrossKg-w.TareKg, w.Strength, w.Temp)
	if err != nil {
		return 0, as(fn, err)
	}
	rho, err := alcoholometry.DensityKgM3(w.Strength, w.MarkedAt)
	if err != nil {
		return 0, as(fn, err)
	}
	return kg / rho * 1000, nil
}
