package colour

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Absorbances are readings of a green extract at a few wavelengths.
type Absorbances struct {
	A664     float64 // at 664 nm (664.2), dimensionless
	A649     float64 // at 649 nm (648.6), dimensionless
	A470     float64 // at 470 nm for the carotenoids, dimensionless; not measured if 0
	A750     float64 // at 750 nm, where only haze is left, dimensionless; taken off the others
	PathCM   float64 // of the cell; the unit is cm; 1 if 0
	Reading  float64 // how far a reading may be wrong, dimensionless; 0.002 if 0
	Strength alcoholometry.Strength
}

// Pigments are the pigments of an extract in 95 % ethanol.
type Pigments struct {
	ChlorophyllAMgL float64
	ChlorophyllBMgL float64
	PlusMinusAMgL   float64 // from the readings alone
	PlusMinusBMgL   float64 // from the readings alone
	HasCarotenoids  bool    // whether A470 was given
	CarotenoidsMgL  float64 // with the xanthophylls; the equation is from memory
	Dark            bool    // an absorbance above 1: dilute and read again for a better figure
}

// PigmentsOf returns the chlorophylls of an extract from two absorbances, in 93 to 97 % vol of ethanol. At the strength of spirit, 60 to
// 70 % vol, the bands lie elsewhere and there is no equation: make a dilution ladder.
//
// Source: Lichtenthaler and Buschmann, Current Protocols in Food Analytical Chemistry (2001) F4.3, table F4.3.1, 95 % ethanol:
// Ca = 13.36 A664.2 - 5.19 A648.6, Cb = 27.43 A648.6 - 8.12 A664.2, Cx+c = (1000 A470 - 2.13 Ca - 97.64 Cb)/209 (the last from memory), mg/L
// through 1 cm. Accuracy: some per cent in a clean extract; browned pigment reads as chlorophyll.
func PigmentsOf(a Absorbances) (Pigments, error) {
	const fn = "colour.PigmentsOf"
	if err := alcoholometry.CheckSet(fn, "the strength of the extract", a.Strength); err != nil {
		return Pigments{}, err
	}
	if v := a.Strength.ABV(); v < 93 || v > 97 {
		return Pigments{}, fmt.Errorf("%s: the extract has %.1f %% vol, and the equations hold from 93 to 97 %% vol; at the strength of spirit compare with another jar by a dilution ladder", fn, v)
	}
	if a.PathCM == 0 {
		a.PathCM = 1
	}
	if a.Reading == 0 {
		a.Reading = 0.002
	}
	if err := quantity.CheckRange(fn, "path", a.PathCM, 0.1, 10, "cm", ""); err != nil {
		return Pigments{}, err
	}
	if err := quantity.CheckRange(fn, "uncertainty of a reading", a.Reading, 1e-6, 0.5, "", ""); err != nil {
		return Pigments{}, err
	}
	p := Pigments{HasCarotenoids: a.A470 != 0}
	for _, r := range []struct {
		nm    string
		value *float64
	}{{"664", &a.A664}, {"649", &a.A649}, {"470", &a.A470}, {"750", &a.A750}} {
		if err := quantity.CheckRange(fn, "absorbance at "+r.nm+" nm", *r.value, 0, 2, "", "dilute if higher"); err != nil {
			return Pigments{}, err
		}
		p.Dark = p.Dark || *r.value > 1
	}
	for _, v := range []*float64{&a.A664, &a.A649, &a.A470} {
		*v = (*v - a.A750) / a.PathCM
	}
	p.ChlorophyllAMgL = 13.36*a.A664 - 5.19*a.A649
	p.ChlorophyllBMgL = 27.43*a.A649 - 8.12*a.A664
	for _, c := range []struct {
		name string
		mgL  float64
	}{{"chlorophyll a", p.ChlorophyllAMgL}, {"chlorophyll b", p.ChlorophyllBMgL}} {
		if c.mgL < 0 {
			return Pigments{}, fmt.Errorf("%s: %s comes out as %.2f mg/L, below 0; the extract is browned or not in 95 %% ethanol, or the two readings were swapped", fn, c.name, c.mgL)
		}
	}
	p.PlusMinusAMgL = math.Hypot(13.36, 5.19) * a.Reading / a.PathCM
	p.PlusMinusBMgL = math.Hypot(27.43, 8.12) * a.Reading / a.PathCM
	if p.HasCarotenoids {
		if p.CarotenoidsMgL = (1000*a.A470 - 2.13*p.ChlorophyllAMgL - 97.64*p.ChlorophyllBMgL) / 209; p.CarotenoidsMgL < 0 {
			return Pigments{}, fmt.Errorf("%s: the carotenoids come out as %.2f mg/L, below 0; read at 470 nm again, or leave A470 out", fn, p.CarotenoidsMgL)
		}
	}
	return p, nil
}

// String gives the pigments in one line with what the readings leave open.
func (p Pigments) String() string {
	s := fmt.Sprintf("chlorophyll a %.2f ± %.2f, b %.2f ± %.2f mg/L", p.ChlorophyllAMgL, p.PlusMinusAMgL, p.ChlorophyllBMgL, p.PlusMinusBMgL)
	if p.HasCarotenoids {
		s += fmt.Sprintf(", carotenoids %.2f mg/L", p.CarotenoidsMgL)
	}
	if p.Dark {
		s += "; an absorbance is above 1: dilute and read again"
	}
	return s
}

// Rows gives the pigments, each row a label, a figure and a unit.
func (p Pigments) Rows() [][]string {
	rows := [][]string{
		{"chlorophyll a", fmt.Sprintf("%.2f ± %.2f", p.ChlorophyllAMgL, p.PlusMinusAMgL), "mg/L"},
		{"chlorophyll b", fmt.Sprintf("%.2f ± %.2f", p.ChlorophyllBMgL, p.PlusMinusBMgL), "mg/L"},
	}
	if p.HasCarotenoids {
		rows = append(rows, []string{"carotenoids (equation from memory)", fmt.Sprintf("%.2f", p.CarotenoidsMgL), "mg/L"})
	}
	return rows
}
