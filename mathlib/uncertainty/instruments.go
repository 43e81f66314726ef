package uncertainty

import (
	"fmt"
	"math"
)

// Hydrometer is a reading of an alcoholometer with how wrong it may be. ToleranceABV is the largest error of the
// instrument that its class or its certificate allows, taken as rectangular (÷√3). DivisionABV is one division of the
// scale; a reading to the nearest division is within half of it, rectangular again. Leave it 0 if ToleranceABV covers
// the reading too.
//
// Source: JCGM 100:2008, 4.3.7 and F.2.2.1.
type Hydrometer struct {
	ReadingABV   float64 // % vol on the scale
	ToleranceABV float64 // either way, % vol; above 0
	DivisionABV  float64 // % vol; 0 or more
	Name         string  // "hydrometer" if empty
}

// Input returns the reading with its parts, in % vol.
func (h Hydrometer) Input() (Input, error) {
	return instrument{name(h.Name, "hydrometer"), h.ReadingABV, "% vol", h.ToleranceABV, h.DivisionABV, 0}.input()
}

// ProofHydrometer is a reading of a hydrometer marked in US proof. Its tolerance and division are taken as a
// Hydrometer's.
type ProofHydrometer struct {
	ReadingProof   float64 // US proof on the scale
	ToleranceProof float64 // either way, US proof; above 0
	DivisionProof  float64 // US proof; 0 or more
	Name           string  // "hydrometer" if empty
}

// Input returns the reading with its parts, in US proof.
func (h ProofHydrometer) Input() (Input, error) {
	return instrument{name(h.Name, "hydrometer"), h.ReadingProof, "proof", h.ToleranceProof, h.DivisionProof, 0}.input()
}

// Thermometer is a reading of a thermometer with how wrong it may be: its tolerance, rectangular, and its division or
// last digit, of which a reading is within half, rectangular too. How far the spirit is from being as warm everywhere
// belongs into ToleranceC.
//
// Source: JCGM 100:2008, 4.3.7 and F.2.2.1.
type Thermometer struct {
	ReadingC   float64 // °C
	ToleranceC float64 // either way, °C; above 0
	DivisionC  float64 // °C; 0 or more
	Name       string  // "thermometer" if empty
}

// Input returns the reading with its parts, in °C.
func (t Thermometer) Input() (Input, error) {
	return instrument{name(t.Name, "thermometer"), t.ReadingC, "°C", t.ToleranceC, t.DivisionC, 0}.input()
}

// DensityMeter is a reading of an oscillating U-tube with how wrong it may be: the maker's accuracy, rectangular; the last
// digit, rectangular over half of it; and the standard deviation of its readings of one sample, normal.
//
// Source: JCGM 100:2008, 4.3.7, F.2.2.1 and 4.2.
type DensityMeter struct {
	ReadingKgM3       float64 // kg/m³
	ToleranceKgM3     float64 // either way, kg/m³; above 0
	DivisionKgM3      float64 // the last digit, kg/m³; 0 or more
	RepeatabilityKgM3 float64 // standard deviation, kg/m³; 0 or more
	Name              string  // "density meter" if empty
}

// Input returns the reading with its parts, in kg/m³.
func (d DensityMeter) Input() (Input, error) {
	return instrument{name(d.Name, "density meter"), d.ReadingKgM3, "kg/m³", d.ToleranceKgM3, d.DivisionKgM3, d.RepeatabilityKgM3}.input()
}

// Balance is a reading of a balance with how wrong it may be: the largest error its class allows, rectangular; the last
// digit, rectangular over half of it; and the standard deviation of its readings of one load, normal. It shows weight in
// air.
//
// Source: JCGM 100:2008, 4.3.7, F.2.2.1 and 4.2.
type Balance struct {
	ReadingKg       float64 // kg as shown
	ToleranceKg     float64 // either way, kg; above 0
	DivisionKg      float64 // the last digit, kg; 0 or more
	RepeatabilityKg float64 // standard deviation, kg; 0 or more
	Name            string  // "balance" if empty
}

// Input returns the reading with its parts, in kg.
func (b Balance) Input() (Input, error) {
	return instrument{name(b.Name, "balance"), b.ReadingKg, "kg", b.ToleranceKg, b.DivisionKg, b.RepeatabilityKg}.input()
}

// instrument is what the instruments with a scale share.
type instrument struct {
	name                               string
	reading                            float64
	unit                               string
	tolerance, division, repeatability float64
}

func (i instrument) input() (Input, error) {
	for _, t := range []struct {
		what    string
		x       float64
		allowed bool
	}{
		{"tolerance", i.tolerance, i.tolerance > 0},
		{"division", i.division, i.division >= 0},
		{"repeatability", i.repeatability, i.repeatability >= 0},
	} {
		if !t.allowed || math.IsInf(t.x, 0) {
			return Input{}, fmt.Errorf("%s: the %s is %v %s; %s", i.name, t.what, t.x, i.unit, wanted(t.what))
		}
	}
	parts := []Part{Rectangular(i.tolerance).Called("instrument")}
	if i.division != 0 {
		parts = append(parts, Rectangular(i.division/2).Called("half a division"))
	}
	if i.repeatability != 0 {
		parts = append(parts, Normal(i.repeatability).Called("repeatability"))
	}
	return Input{Name: i.name, Value: i.reading, Unit: i.unit, Parts: parts}.Input()
}

func wanted(what string) string {
	if what == "tolerance" {
		return "no instrument is exact: give a number above 0"
	}
	return "give 0 or more"
}

// TankDip is the volume in a tank as its table gives it for a dip, with how wrong it may be: the dip itself, within
// StickMM either way, rectangular; and the table, within TablePct of the volume either way, rectangular.
//
// Source: JCGM 100:2008, 4.3.7.
type TankDip struct {
	VolumeL  float64 // as the tank's table gives it, L; above 0
	LPerMM   float64 // what a millimetre of the dip holds at that height, L; above 0
	StickMM  float64 // how far the dip may be off either way, in millimetres, the unit of the stick; above 0
	TablePct float64 // how far the tank's table may be off either way, per cent of the volume; 0 or more
	Name     string  // "tank dip" if empty
}

// Input returns the volume with its parts, in L.
func (d TankDip) Input() (Input, error) {
	n := name(d.Name, "tank dip")
	if !(d.VolumeL > 0) || math.IsInf(d.VolumeL, 0) {
		return Input{}, fmt.Errorf("%s: the volume is %v L; give one above 0 L", n, d.VolumeL)
	}
	if !(d.LPerMM > 0) || math.IsInf(d.LPerMM, 0) {
		return Input{}, fmt.Errorf("%s: a millimetre holds %v L; give what the tank's table says, above 0 L", n, d.LPerMM)
	}
	if !(d.StickMM > 0) || math.IsInf(d.StickMM, 0) {
		return Input{}, fmt.Errorf("%s: the dip's tolerance is %v mm; no dip is exact: give a number above 0", n, d.StickMM)
	}
	if !(d.TablePct >= 0) || d.TablePct > 100 {
		return Input{}, fmt.Errorf("%s: the table's tolerance is %v per cent; give 0 to 100", n, d.TablePct)
	}
	parts := []Part{Rectangular(d.StickMM * d.LPerMM).Called("dip")}
	if d.TablePct != 0 {
		parts = append(parts, Rectangular(d.TablePct/100*d.VolumeL).Called("tank table"))
	}
	return Input{Name: n, Value: d.VolumeL, Unit: "L", Parts: parts}.Input()
}

func name(given, usual string) string {
	if given == "" {
		return usual
	}
	return given
}
