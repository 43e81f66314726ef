package mixing

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// sugarLKg is the volume that dissolved sugar takes up, L/kg, at any temperature. Source: the CRC Handbook's density of
// sucrose solutions at 20 °C (102nd edition) gives 0.616 at 6 %, 0.622 at 40 %, 0.628 at 60 % and 0.635 at 80 % by mass. In
// spirit no table is at hand: there it is an estimate, with which a density is good to about 0.3 %.
const (
	sugarLKg = 0.62
	// sugarOffLKg is how far the volume of what is dissolved in spirit may differ from that of sucrose, L/kg: an estimate.
	sugarOffLKg = 0.02
	mostSugarGL = 800 // g/L: beyond it there is hardly a liquid left
)

// Liqueur is an amount of a sweetened spirit; without sugar it is a spirit. Its strength is that of the whole, sugar
// included, as a label states it: per cent of pure alcohol in the volume at 20 °C. The ethanol and water in it, taken by
// themselves, are stronger (see Base). Sugar is counted as sucrose; what dissolves is not looked at, and strong spirit
// dissolves little.
//
// The volume is an estimate: that of the ethanol and water by OIML R 22, and 0.62 L for each kilogram of sugar.
type Liqueur struct {
	VolumeL  float64                // as measured at Temp, L
	Strength alcoholometry.Strength // of the whole, by volume at 20 °C
	SugarGL  float64                // sugar in a litre at 20 °C, g/L; from 0 to 800
	Temp     quantity.Temperature   // of the measurement; 20 °C if unset
}

// sweet is what is in a liqueur: masses, which add up.
type sweet struct {
	sugarKg  float64
	baseKg   float64                // ethanol and water
	strength alcoholometry.Strength // of the ethanol and water by themselves
}

// open returns what is in the liqueur.
func (l Liqueur) open(function, what string) (sweet, error) {
	if err := alcoholometry.CheckSet(function, "the strength of "+what, l.Strength); err != nil {
		return sweet{}, err
	}
	if err := quantity.CheckRange(function, "the sugar of "+what, l.SugarGL, 0, mostSugarGL, "g/L", ""); err != nil {
		return sweet{}, err
	}
	if err := quantity.CheckRange(function, "the volume of "+what, l.VolumeL, 0, math.Inf(1), "L", ""); err != nil {
		return sweet{}, err
	}
	share := 1 - l.SugarGL/1000*sugarLKg // of the volume, taken by ethanol and water
	pct := l.Strength.ABV() / share
	if pct > 100+1e-9 {
		return sweet{}, fmt.Errorf("%s: %s is to hold %v and %s g/L of sugar, which leaves no room for the alcohol; at that sugar the strength is at most %.2f %% vol",
			function, what, l.Strength, quantity.Figure(l.SugarGL), 100*share)
	}
	s := sweet{strength: l.Strength}
	if l.SugarGL > 0 {
		var err error
		if s.strength, err = alcoholometry.ABV(math.Min(pct, 100)); err != nil {
			return sweet{}, as(function, err)
		}
	}
	rho20, err := alcoholometry.DensityKgM3(s.strength, quantity.Temperature{})
	if err != nil {
		return sweet{}, as(function, err)
	}
	rho, err := alcoholometry.DensityKgM3(s.strength, l.Temp)
	if err != nil {
		return sweet{}, as(function, err)
	}
	// A litre at 20 °C is litreL at the temperature of the measurement.
	litreL := share*rho20/rho + l.SugarGL/1000*sugarLKg
	at20L := l.VolumeL / litreL
	s.sugarKg, s.baseKg = at20L*l.SugarGL/1000, at20L*share*rho20/1000
	return s, nil
}

// volumeL returns the volume at t, L.
func (s sweet) volumeL(function string, t quantity.Temperature) (float64, error) {
	rho, err := alcoholometry.DensityKgM3(s.strength, t)
	if err != nil {
		return 0, as(function, err)
	}
	return s.baseKg/rho*1000 + s.sugarKg*sugarLKg, nil
}

// close returns the liqueur that holds so much, measured at t.
func (s sweet) close(function string, t quantity.Temperature) (Liqueur, error) {
	at20L, err := s.volumeL(function, quantity.Temperature{})
	if err != nil {
		return Liqueur{}, err
	}
	l := Liqueur{Strength: s.strength, Temp: t}
	if s.sugarKg > 0 {
		l.SugarGL = 1000 * s.sugarKg / at20L
		if l.Strength, err = alcoholometry.ABV(s.strength.ABV() * (1 - l.SugarGL/1000*sugarLKg)); err != nil {
			return Liqueur{}, as(function, err)
		}
	}
	l.VolumeL, err = s.volumeL(function, t)
	return l, err
}

func (l Liqueur) must(function string) sweet {
	s, err := l.open(function, "the liqueur")
	if err != nil {
		panic(err)
	}
	return s
}

// PureL returns the ethanol in the liqueur as litres of pure alcohol at 20 °C. It panics with the error that DensityOf
// gives for the liqueur.
func (l Liqueur) PureL() float64 {
	s := l.must("mixing.Liqueur.PureL")
	base, err := alcoholometry.Weighed(s.baseKg, s.strength)
	if err != nil {
		panic(err)
	}
	return base.PureL()
}

// MassKg returns the true mass of the liqueur in kilograms, an estimate. It panics as PureL does.
func (l Liqueur) MassKg() float64 {
	s := l.must("mixing.Liqueur.MassKg")
	return s.sugarKg + s.baseKg
}

// SugarKg returns the sugar in the liqueur in kilograms. It panics as PureL does.
func (l Liqueur) SugarKg() float64 { return l.must("mixing.Liqueur.SugarKg").sugarKg }

// Base returns the ethanol and water of the liqueur by themselves, as a spirit at the same temperature. It panics as
// PureL does.
func (l Liqueur) Base() alcoholometry.Spirit {
	const fn = "mixing.Liqueur.Base"
	s := l.must(fn)
	base, err := amount(fn, s.baseKg, s.strength, l.Temp)
	if err != nil {
		panic(err)
	}
	return base
}

// LiqueurDensityKgM3 returns the density in vacuum of a liqueur at t, from -20 to 40 °C, kg/m³: an estimate. Its VolumeL and Temp play no part. It fails with an *alcoholometry.UnsetError, with a *quantity.RangeError, and
// for sugar that leaves no room for the alcohol.
//
// Source: OIML R 22 (1975) for ethanol and water; 0.62 L for each kilogram of sugar after the CRC Handbook's sucrose
// solutions at 20 °C: within 0.12 % of its table up to 40 % of sugar by mass, 0.6 % too dense at 60 %. Sugar in spirit was
// not compared with print; take 0.3 %.
func LiqueurDensityKgM3(l Liqueur, t quantity.Temperature) (float64, error) {
	const fn = "mixing.LiqueurDensityKgM3"
	l.VolumeL, l.Temp = 1, quantity.Temperature{}
	s, err := l.open(fn, "the liqueur")
	if err != nil {
		return 0, err
	}
	v, err := s.volumeL(fn, t)
	if err != nil {
		return 0, err
	}
	return (s.baseKg + s.sugarKg) / v * 1000, nil
}
