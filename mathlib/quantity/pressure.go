package quantity

import (
	"fmt"
	"math"
)

const (
	// atmKPa is one standard atmosphere, kPa, exact. Source: 10th CGPM (1954), resolution 4.
	atmKPa = 101.325
	// mmHgKPa is one conventional millimetre of mercury, kPa: 13 595.1 kg/m³ × 9.806 65 m/s² × 1 mm. Source: ISO
	// 80000-4:2019 and NIST Special Publication 811 (2008), appendix B.8, which gives 133.3224 Pa.
	mmHgKPa = 0.133322387415
	// barKPa is one bar, kPa, exact. Source: BIPM, SI Brochure, 8th edition (2006), table 8.
	barKPa = 100
	// psiKPa is one pound-force per square inch, kPa: 0.453 592 37 kg × 9.806 65 m/s² over (25.4 mm)². Source: NIST
	// Special Publication 811 (2008), appendix B.8, which gives 6.894 757.
	psiKPa = 0.45359237 * 9.80665 / (0.0254 * 0.0254) / 1000
)

// Pressure is an absolute pressure. The zero value is one standard atmosphere, 101.325 kPa. Make one with KPa, MmHg,
// Bar, Atm, PSI or AtAltitude; two pressures compare with ==.
type Pressure struct {
	kPa float64 // meaningless unless set
	set bool
}

// KPa returns the absolute pressure of p kilopascal. It fails below 0 kPa and for a value that is no finite number.
func KPa(p float64) (Pressure, error) { return pressure("quantity.KPa", p, "kPa", 1) }

// MmHg returns the absolute pressure of p millimetres of mercury. It fails below 0 mmHg and for a value that is no
// finite number.
func MmHg(p float64) (Pressure, error) { return pressure("quantity.MmHg", p, "mmHg", mmHgKPa) }

// Bar returns the absolute pressure of p bar. It fails below 0 bar and for a value that is no finite number.
func Bar(p float64) (Pressure, error) { return pressure("quantity.Bar", p, "bar", barKPa) }

// Atm returns the absolute pressure of p standard atmospheres. It fails below 0 atm and for a value that is no finite
// number.
func Atm(p float64) (Pressure, error) { return pressure("quantity.Atm", p, "atm", atmKPa) }

// PSI returns the absolute pressure of p pounds-force per square inch, counted from vacuum and not from the
// atmosphere. It fails below 0 psi and for a value that is no finite number.
func PSI(p float64) (Pressure, error) { return pressure("quantity.PSI", p, "psi", psiKPa) }

func pressure(function string, p float64, unit string, unitKPa float64) (Pressure, error) {
	if err := CheckRange(function, "pressure", p, 0, math.MaxFloat64/unitKPa, unit, ""); err != nil {
		return Pressure{}, &RangeError{Func: function, Param: "pressure", Value: p, Min: 0, Max: math.Inf(1), Unit: unit}
	}
	return fromKPa(p * unitKPa), nil
}

// AtAltitude returns the usual pressure of the air at a height of altitudeM metres above the sea, from -1000 to
// 11000 m. The weather moves the true pressure by up to 3 % either way.
//
// Source: ISO 2533:1975, standard atmosphere, troposphere: p = 101.325 kPa × (1 - 0.0065 H/288.15)^5.25588, with the
// geopotential height H = 6356766 h/(6356766 + h), both in metres.
func AtAltitude(altitudeM float64) (Pressure, error) {
	if err := CheckRange("quantity.AtAltitude", "altitude", altitudeM, -1000, 11000, "m", "ISO 2533:1975"); err != nil {
		return Pressure{}, err
	}
	const earthRadiusM = 6356766
	h := earthRadiusM * altitudeM / (earthRadiusM + altitudeM)
	return fromKPa(atmKPa * math.Pow(1-0.0065*h/288.15, 5.25588)), nil
}

func fromKPa(p float64) Pressure {
	if p == atmKPa {
		return Pressure{}
	}
	return Pressure{kPa: p, set: true}
}

// KPa returns the pressure in kilopascal.
func (p Pressure) KPa() float64 {
	if !p.set {
		return atmKPa
	}
	return p.kPa
}

// MmHg returns the pressure in millimetres of mercury.
func (p Pressure) MmHg() float64 { return p.KPa() / mmHgKPa }

// Bar returns the pressure in bar.
func (p Pressure) Bar() float64 { return p.KPa() / barKPa }

// Atm returns the pressure in standard atmospheres.
func (p Pressure) Atm() float64 { return p.KPa() / atmKPa }

// PSI returns the absolute pressure in pounds-force per square inch.
func (p Pressure) PSI() float64 { return p.KPa() / psiKPa }

// String gives the pressure in kilopascal with two decimals, such as "101.33 kPa".
func (p Pressure) String() string { return fmt.Sprintf("%.2f kPa", p.KPa()) }
