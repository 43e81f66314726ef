package colour

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// The absorbance of 1 g/L in 1 cm at the red bands in 95 % ethanol, L/(g cm): the inverse of the equations of PigmentsOf.
const absorbsA, absorbsB = 84.58, 41.19

// How far the bands lie further to the red in spirit than in ether, nm: from the red bands alone (660 to 664, 642 to 648).
const shiftA, shiftB = 4.0, 6.0

// luteinAbsorbs is the absorbance of 1 g/L of lutein in 1 cm at its highest band, L/(g cm). From memory, as for carotenoids.
const luteinAbsorbs = 250.0

// pheophytinMass is the mass that a gram of chlorophyll leaves as pheophytin: magnesium goes, two hydrogens come.
const pheophytinMass = 0.975

const mostPigmentMgL = 1000.0

// Demonstration returns a spectrum of the pigments (carotenoids as lutein), for pictures where a house has no spectrum of its own. It
// is an estimate: spectra in ether, moved to the red and brought to the height of the red bands in ethanol. Do not read
// pigments from it; between the bands it is off by a fifth to two thirds.
//
// Source: the PhotochemCAD spectra; heights by Lichtenthaler and Buschmann (2001); lutein from memory.
func Demonstration(p Pigments) (Spectrum, error) {
	if err := checkPigments("colour.Demonstration", p); err != nil {
		return Spectrum{}, err
	}
	s := Spectrum{set: true, estimate: "spectra of the pigments in ether, moved and scaled"}
	t := embedded()
	ka, kb := absorbsA/t.at("chlorophyll_a", 664.2-shiftA), absorbsB/t.at("chlorophyll_b", 648.6-shiftB)
	for i := range s.perCM {
		nm := float64(firstNM + i*stepNM)
		s.perCM[i] = (p.ChlorophyllAMgL*ka*t.at("chlorophyll_a", nm-shiftA) + p.ChlorophyllBMgL*kb*t.at("chlorophyll_b", nm-shiftB) +
			p.CarotenoidsMgL*luteinAbsorbs*t.at("lutein", nm)) / 1000
	}
	return s, nil
}

// Browned returns the spectrum of the same liquid when all its green has turned to the brown-green pheophytins; the lutein is
// left. It is an estimate, with bands from memory. A house that has a fully browned jar takes its spectrum instead.
func Browned(p Pigments) (Spectrum, error) {
	if err := checkPigments("colour.Browned", p); err != nil {
		return Spectrum{}, err
	}
	s := Spectrum{set: true, estimate: "bands of the brown pigments from memory"}
	t := embedded()
	for i := range s.perCM {
		nm := float64(firstNM + i*stepNM)
		for _, green := range []struct {
			name string
			mgL  float64
		}{{"a", p.ChlorophyllAMgL}, {"b", p.ChlorophyllBMgL}} {
			sum := 0.0
			for _, b := range t.pheophytin[green.name] {
				sum += b.absorbs * b.height * math.Exp(-(nm-b.middleNM)*(nm-b.middleNM)/(2*b.widthNM*b.widthNM))
			}
			s.perCM[i] += green.mgL * pheophytinMass * sum / 1000
		}
		s.perCM[i] += p.CarotenoidsMgL * luteinAbsorbs * t.at("lutein", nm) / 1000
	}
	return s, nil
}

func checkPigments(function string, p Pigments) error {
	for _, c := range []struct {
		name string
		mgL  float64
	}{{"chlorophyll a", p.ChlorophyllAMgL}, {"chlorophyll b", p.ChlorophyllBMgL}, {"carotenoids", p.CarotenoidsMgL}} {
		if err := quantity.CheckRange(function, c.name, c.mgL, 0, mostPigmentMgL, "mg/L", ""); err != nil {
			return err
		}
	}
	if p.ChlorophyllAMgL+p.ChlorophyllBMgL+p.CarotenoidsMgL == 0 {
		return fmt.Errorf("%s: there is no pigment, 0 mg/L; give at least one above 0 mg/L", function)
	}
	return nil
}

// at returns the relative absorbance of a pigment, straight between the points at 1 nm and held at the ends.
func (t *tables) at(pigment string, nm float64) float64 {
	v := t.pigment[pigment]
	x := math.Max(0, math.Min(float64(len(v)-1), nm-float64(t.firstNM)))
	i := min(int(x), len(v)-2)
	f := x - float64(i)
	return v[i]*(1-f) + v[i+1]*f
}
