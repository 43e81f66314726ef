package mixing

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// LiqueurFrom says what a liqueur is made of: spirit, sugar and water.
type LiqueurFrom struct {
	Spirit     alcoholometry.Strength // of the spirit, without sugar
	SpiritTemp quantity.Temperature   // of the spirit as it is measured; 20 °C if unset
	WaterTemp  quantity.Temperature   // of the water as it is measured; 20 °C if unset
	SyrupPct   float64                // the sugar comes as a syrup with so many per cent of it by mass; 0 for dry sugar
}

// LiqueurRecipe is what goes into a liqueur.
type LiqueurRecipe struct {
	Wanted   Liqueur
	SpiritL  float64 // at the spirit's temperature, L
	SpiritKg float64 // true mass, kg
	SugarKg  float64 // dry sugar, in the syrup or by itself, kg
	SyrupKg  float64 // the syrup that brings it, kg; 0 for dry sugar
	SyrupL   float64 // the same at 20 °C, L: an estimate that is 1 % too small for a thick syrup, so weigh it; 0 for dry sugar
	WaterL   float64 // water beside that of the syrup, at its temperature, L
	WaterKg  float64 // true mass, kg
	From     LiqueurFrom
}

// MakeLiqueur returns how much spirit, sugar (or syrup) and water make the wanted liqueur. Masses and pure alcohol add up;
// the volume of the liqueur is an estimate (see Liqueur). It fails if the spirit is too weak, if the syrup brings more water
// than the liqueur takes, and as LiqueurDensityKgM3 does.
//
// Source: as for LiqueurDensityKgM3.
func MakeLiqueur(wanted Liqueur, from LiqueurFrom) (LiqueurRecipe, error) {
	const fn = "mixing.MakeLiqueur"
	if err := alcoholometry.CheckSet(fn, "the strength of the spirit", from.Spirit); err != nil {
		return LiqueurRecipe{}, err
	}
	if err := quantity.CheckRange(fn, "the syrup's sugar", from.SyrupPct, 0, 100, "% mass", ""); err != nil {
		return LiqueurRecipe{}, err
	}
	s, err := wanted.open(fn, "the liqueur")
	if err != nil {
		return LiqueurRecipe{}, err
	}
	if s.baseKg == 0 {
		return LiqueurRecipe{}, fmt.Errorf("%s: the volume of the liqueur is 0 L; give one above 0 L", fn)
	}
	if s.strength.ABW() > from.Spirit.ABW() && differ(s.strength, from.Spirit) {
		return LiqueurRecipe{}, fmt.Errorf("%s: the ethanol and water of the liqueur alone are at %v; spirit of %v is too weak", fn, s.strength, from.Spirit)
	}
	r := LiqueurRecipe{Wanted: wanted, SugarKg: s.sugarKg, From: from}
	if from.Spirit.ABW() > 0 {
		r.SpiritKg = s.baseKg * math.Min(s.strength.ABW()/from.Spirit.ABW(), 1)
	}
	r.WaterKg = s.baseKg - r.SpiritKg
	if from.SyrupPct > 0 && r.SugarKg > 0 {
		r.SyrupKg = r.SugarKg / (from.SyrupPct / 100)
		syrup := sweet{sugarKg: r.SugarKg, baseKg: r.SyrupKg - r.SugarKg, strength: alcoholometry.Water}
		r.WaterKg -= syrup.baseKg
		if r.WaterKg < -1e-9*s.baseKg {
			return LiqueurRecipe{}, fmt.Errorf("%s: the syrup of %g %% brings %s kg more water than the liqueur takes; give a thicker syrup, dry sugar (0) or a stronger spirit", fn, from.SyrupPct, quantity.Figure(-r.WaterKg))
		}
		r.WaterKg = math.Max(r.WaterKg, 0)
		if r.SyrupL, err = syrup.volumeL(fn, quantity.Temperature{}); err != nil {
			return LiqueurRecipe{}, err
		}
	}
	spirit, err := amount(fn, r.SpiritKg, from.Spirit, from.SpiritTemp)
	if err != nil {
		return LiqueurRecipe{}, err
	}
	water, err := amount(fn, r.WaterKg, alcoholometry.Water, from.WaterTemp)
	if err != nil {
		return LiqueurRecipe{}, err
	}
	r.SpiritL, r.WaterL = spirit.VolumeL, water.VolumeL
	return r, nil
}

// BlendLiqueurs returns what comes of putting liqueurs, spirits and water together; a spirit is a liqueur with no sugar.
// Their masses, their ethanol and their sugar add up; the volume is an estimate (see Liqueur). It is stated at the common
// temperature, or at 20 °C if there is none. It fails as Blend does.
//
// Source: as for LiqueurDensityKgM3.
func BlendLiqueurs(parts ...Liqueur) (Liqueur, error) {
	const fn = "mixing.BlendLiqueurs"
	if len(parts) == 0 {
		return Liqueur{}, fmt.Errorf("%s: there is nothing to blend; give at least one liqueur", fn)
	}
	t := parts[0].Temp
	var sum sweet
	ethanolKg := 0.0
	for i, l := range parts {
		s, err := l.open(fn, fmt.Sprintf("liqueur %d", i+1))
		if err != nil {
			return Liqueur{}, err
		}
		sum.sugarKg += s.sugarKg
		sum.baseKg += s.baseKg
		ethanolKg += s.baseKg * s.strength.ABW() / 100
		if l.Temp != parts[0].Temp {
			t = quantity.Temperature{}
		}
	}
	if sum.baseKg == 0 {
		return Liqueur{}, fmt.Errorf("%s: all liqueurs have 0 L; give at least one a volume above 0 L", fn)
	}
	var err error
	if sum.strength, err = alcoholometry.ABW(100 * math.Min(ethanolKg/sum.baseKg, 1)); err != nil {
		return Liqueur{}, as(fn, err)
	}
	return sum.close(fn, t)
}

// Sweeten returns what comes of dissolving so many kilograms of dry sugar in a liqueur or spirit: the volume grows, and
// the strength falls with it. It fails for a negative sugarKg, for more than 800 g/L, and as LiqueurDensityKgM3 does.
//
// Source: as for LiqueurDensityKgM3.
func Sweeten(l Liqueur, sugarKg float64) (Liqueur, error) {
	const fn = "mixing.Sweeten"
	if err := quantity.CheckRange(fn, "the sugar", sugarKg, 0, math.Inf(1), "kg", ""); err != nil {
		return Liqueur{}, err
	}
	s, err := l.open(fn, "the liqueur")
	if err != nil {
		return Liqueur{}, err
	}
	if s.baseKg == 0 {
		return Liqueur{}, fmt.Errorf("%s: the volume of the liqueur is 0 L; give one above 0 L", fn)
	}
	s.sugarKg += sugarKg
	out, err := s.close(fn, l.Temp)
	if err != nil {
		return Liqueur{}, err
	}
	if err := quantity.CheckRange(fn, "the sugar then", out.SugarGL, 0, mostSugarGL, "g/L", ""); err != nil {
		return Liqueur{}, err
	}
	return out, nil
}

// LiqueurReduction is a liqueur brought down with water.
type LiqueurReduction struct {
	Liqueur Liqueur
	WaterL  float64 // at WaterTemp, L
	WaterKg float64 // true mass, kg
	Water   quantity.Temperature
	Result  Liqueur // at 20 °C unless ResultAt was given
}

// ReduceLiqueur returns how much water brings a liqueur down to the strength to, of the whole, and what comes of it: the
// sugar in a litre falls with it. WaterAt and ResultAt are understood as for Reduce. It fails as Reduce does, and as
// LiqueurDensityKgM3 does.
//
// Source: as for LiqueurDensityKgM3.
func ReduceLiqueur(l Liqueur, to alcoholometry.Strength, opts ...Option) (LiqueurReduction, error) {
	const fn = "mixing.ReduceLiqueur"
	s, err := l.open(fn, "the liqueur")
	if err != nil {
		return LiqueurReduction{}, err
	}
	if err := checkStrengths(fn, l.Strength, to); err != nil {
		return LiqueurReduction{}, err
	}
	if s.baseKg == 0 {
		return LiqueurReduction{}, fmt.Errorf("%s: the volume of the liqueur is 0 L; give one above 0 L", fn)
	}
	var ts temperatures
	if err := ts.apply(fn, opts, false); err != nil {
		return LiqueurReduction{}, err
	}
	waterKg, after, err := s.reduce(fn, l.Strength, to)
	if err != nil {
		return LiqueurReduction{}, err
	}
	r := LiqueurReduction{Liqueur: l, WaterKg: waterKg, Water: ts.water}
	water, err := amount(fn, waterKg, alcoholometry.Water, ts.water)
	if err != nil {
		return LiqueurReduction{}, err
	}
	r.WaterL = water.VolumeL
	r.Result, err = after.close(fn, ts.result)
	return r, err
}

// reduce returns the water that brings what is in a liqueur from one strength of the whole to another, kg, and what is in
// it then: the pure alcohol over the strength wanted is the new volume, and what of it is not sugar is ethanol and water.
func (s sweet) reduce(function string, from, to alcoholometry.Strength) (waterKg float64, after sweet, err error) {
	if !differ(from, to) {
		return 0, s, nil
	}
	if s.sugarKg == 0 {
		waterKg = s.baseKg * (from.ABW() - to.ABW()) / to.ABW()
		return waterKg, sweet{baseKg: s.baseKg + waterKg, strength: to}, nil
	}
	base, err := alcoholometry.Weighed(s.baseKg, s.strength)
	if err != nil {
		return 0, sweet{}, as(function, err)
	}
	pureL := base.PureL()
	baseL := 100*pureL/to.ABV() - s.sugarKg*sugarLKg
	weaker, err := alcoholometry.ABV(100 * pureL / baseL)
	if err != nil {
		return 0, sweet{}, as(function, err)
	}
	rho, err := alcoholometry.DensityKgM3(weaker, quantity.Temperature{})
	if err != nil {
		return 0, sweet{}, as(function, err)
	}
	after = sweet{sugarKg: s.sugarKg, baseKg: baseL * rho / 1000, strength: weaker}
	return math.Max(after.baseKg-s.baseKg, 0), after, nil
}
