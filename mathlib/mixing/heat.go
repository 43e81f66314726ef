package mixing

import (
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// larkinK is the temperature at which the heat of mixing is taken, K: the lowest of Larkin's measurements (larkinC in °C).
const (
	larkinK = 298.15
	larkinC = 25.0
)

// larkin holds b, c, d of Larkin's coefficients a_i = b + c T + d T², J/mol, T in K.
//
// Source: J. A. Larkin, J. Chem. Thermodyn. 7 (1975) 137–148, doi 10.1016/0021-9614(75)90261-X. The coefficients are from
// memory and were confirmed digit by digit in one public transcription; the paper itself was not seen.
var larkin = [5][3]float64{
	{-363868, 1838.29, -2.32763},
	{925982, -4835.86, 6.37228},
	{-1404894, 7516.61, -10.1128},
	{1091318, -5894.98, 7.98868},
	{-279986, 1505.57, -2.03127},
}

// ExcessEnthalpyJMol returns the enthalpy of mixing at t, J per mole of mixture with the mole fraction x of ethanol, from
// 0 to 1: below 0 where mixing gives off heat. From 25 to 110 °C it is Larkin's formula; below 25 °C, down to -20 °C, it
// goes on straight with the slope it has at 25 °C, which is no longer measured. It fails with a *quantity.RangeError: the
// formula runs away above 110 °C.
//
// Source: J. A. Larkin, J. Chem. Thermodyn. 7 (1975) 137–148, doi 10.1016/0021-9614(75)90261-X, 298 to 383 K:
// x(1-x)(a0 + a1 x^0.5 + a2 x^1.5 + a3 x^2.5 + a4 x^4.5), coefficients from memory (see larkin). Published measurements
// differ from it by up to 8 %.
func ExcessEnthalpyJMol(x float64, t quantity.Temperature) (float64, error) {
	const fn = "mixing.ExcessEnthalpyJMol"
	if err := quantity.CheckRange(fn, "mole fraction", x, 0, 1, "", ""); err != nil {
		return 0, err
	}
	if err := quantity.CheckRange(fn, "temperature", t.C(), -20, 110, "°C", "Larkin (1975)"); err != nil {
		return 0, err
	}
	return excessEnthalpyJMol(x, t.K()), nil
}

// excessEnthalpyJMol returns the enthalpy of mixing, J/mol, of the mole fraction x at tempK.
func excessEnthalpyJMol(x, tempK float64) float64 {
	below := 0.0
	if tempK < larkinK {
		below, tempK = tempK-larkinK, larkinK
	}
	var a [5]float64
	for i, c := range larkin {
		a[i] = c[0] + tempK*(c[1]+tempK*c[2]) + below*(c[1]+2*tempK*c[2])
	}
	root := math.Sqrt(x)
	return x * (1 - x) * (a[0] + root*(a[1]+x*(a[2]+x*(a[3]+x*x*a[4]))))
}

// HeatOfMixingKJ returns the heat that kg kilograms of a mixture of strength s give off when they are made of ethanol
// and water at 25 °C and held there, in kilojoules: up to 37 kJ/kg, near 26 % by mass. It fails with an
// *alcoholometry.UnsetError, and with a *quantity.RangeError if kg is negative.
//
// Source: J. A. Larkin, J. Chem. Thermodyn. 7 (1975) 137–148, doi 10.1016/0021-9614(75)90261-X, at 298.15 K,
// coefficients from memory (see larkin). Published measurements differ from it by up to 8 %.
func HeatOfMixingKJ(kg float64, s alcoholometry.Strength) (float64, error) {
	const fn = "mixing.HeatOfMixingKJ"
	if err := alcoholometry.CheckSet(fn, "the strength", s); err != nil {
		return 0, err
	}
	if err := quantity.CheckRange(fn, "mass", kg, 0, math.Inf(1), "kg", ""); err != nil {
		return 0, err
	}
	return kg * heatGivenOffKJKg(s), nil
}

// heatGivenOffKJKg returns the heat of mixing of a kilogram of mixture, kJ/kg, counted positive as given off.
func heatGivenOffKJKg(s alcoholometry.Strength) float64 {
	x := s.MoleFraction()
	gMol := x*alcoholometry.MolarMassEthanolG + (1-x)*alcoholometry.MolarMassWaterG
	return -excessEnthalpyJMol(x, larkinK) / gMol
}

// warming returns by how much the heat of mixing warms the tank, and the temperature after mixing, without loss of heat.
func warming(r Reduction) (warmingC float64, mixedAt quantity.Temperature, err error) {
	return warmingOf([]part{{r.SpiritKg, r.Spirit.Strength, r.Spirit.Temp}, {r.WaterKg, alcoholometry.Water, r.WaterTemp}}, r.Result.Strength)
}

// part is what goes into a tank.
type part struct {
	kg       float64
	strength alcoholometry.Strength
	temp     quantity.Temperature
}

// warmingOf returns by how much the heat of mixing warms a tank into which the parts go, and the temperature after
// mixing, without loss of heat. All heat on the way from the starting temperatures to 25 °C and from 25 °C to the end is
// carried by heat capacities, and the mixing is done at 25 °C, so that Larkin's formula is not stretched below its range.
// (The shortcut of dividing the heat at 25 °C by the heat capacity of the mixture forgets that more heat comes off at
// 20 °C, and gives 5 to 10 % less from there.)
func warmingOf(parts []part, result alcoholometry.Strength) (warmingC float64, mixedAt quantity.Temperature, err error) {
	var inKJ, totalKg, bound float64
	first, several := parts[0], false
	for i, p := range parts {
		inKJ += p.kg * sensibleKJKg(p.strength, p.temp.C())
		totalKg += p.kg
		bound += p.kg * heatGivenOffKJKg(p.strength)
		several = several || i > 0 && p.kg > 0
	}
	if !several {
		return 0, first.temp, nil
	}
	plainC := settle(inKJ, func(tC float64) float64 {
		sum := 0.0
		for _, p := range parts {
			sum += p.kg * capacityKJKgK(p.strength.ABW()/100, tC)
		}
		return sum
	})
	freedKJ := totalKg*heatGivenOffKJKg(result) - bound
	mixedC := settle(inKJ+freedKJ, func(tC float64) float64 {
		return totalKg * capacityKJKgK(result.ABW()/100, tC)
	})
	mixedAt, err = quantity.Celsius(mixedC)
	return mixedC - plainC, mixedAt, err
}

// sensibleKJKg returns the heat that warms a kilogram from 25 °C to tC, kJ/kg.
func sensibleKJKg(s alcoholometry.Strength, tC float64) float64 {
	return capacityKJKgK(s.ABW()/100, (tC+larkinC)/2) * (tC - larkinC)
}

// settle returns the temperature, °C, at which something holds heatKJ more than at 25 °C. capacity returns its heat
// capacity, kJ/K, which hardly changes with temperature, so that each round gains two digits.
func settle(heatKJ float64, capacity func(tC float64) float64) float64 {
	tC := larkinC
	for range 20 {
		tC = larkinC + heatKJ/capacity((tC+larkinC)/2)
	}
	return tC
}
