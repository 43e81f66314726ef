package figure

import (
	"fmt"
	"strings"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// A name is compared without spaces, full stops and case.
func plainUnit(u string) string {
	return strings.ToLower(strings.NewReplacer(".", "", " ", "", "\u00a0", "").Replace(u))
}

// Strength reads a strength: per cent by volume at 20 °C ("45 %vol"), per cent by mass ("33.3 % mass"), degrees of United
// States proof ("90 proof").
func Strength(text string) (alcoholometry.Strength, error) {
	x, unit, err := Split(text)
	if err != nil {
		return alcoholometry.Strength{}, err
	}
	return StrengthIn(x, unit)
}

// StrengthIn is Strength for a number (dimensionless here) and its unit apart.
func StrengthIn(x float64, unit string) (alcoholometry.Strength, error) {
	var s alcoholometry.Strength
	var err error
	switch plainUnit(unit) {
	case "%vol", "vol%", "%abv", "abv", "%v/v", "%byvolume", "%vol(20°c)", "%volat20°c":
		s, err = alcoholometry.ABV(x)
	case "%mass", "mass%", "%w/w", "%bymass", "%byweight", "%m/m", "abw", "%abw":
		s, err = alcoholometry.ABW(x)
	case "proof", "usproof", "°proof", "proof(us)":
		s, err = alcoholometry.USProof(x)
	case "":
		return s, fmt.Errorf("a strength of %v has no unit; want it as \"%v %%vol\", \"… %% mass\" or \"… proof\"", x, x)
	case "%":
		return s, fmt.Errorf("%v %% may be by volume or by mass; want it as \"%v %%vol\" or \"%v %% mass\"", x, x, x)
	case "ukproof", "imperialproof", "proof(uk)", "proof(imperial)", "up", "op":
		return s, fmt.Errorf("%q is of the old Imperial scale, which is not read here; want %%vol, %% mass or (United States) proof", unit)
	default:
		return s, fmt.Errorf("%q is no unit of strength; want %%vol, %% mass or proof", unit)
	}
	return s, err
}

// Temperature reads a temperature: "20 °C", "68 °F", "293.15 K".
func Temperature(text string) (quantity.Temperature, error) {
	x, unit, err := Split(text)
	if err != nil {
		return quantity.Temperature{}, err
	}
	return TemperatureIn(x, unit)
}

// TemperatureIn is Temperature for a number (dimensionless here) and its unit apart.
func TemperatureIn(x float64, unit string) (quantity.Temperature, error) {
	switch plainUnit(unit) {
	case "°c", "c", "℃", "degc", "ºc":
		return quantity.Celsius(x)
	case "°f", "f", "℉", "degf", "ºf":
		return quantity.Fahrenheit(x)
	case "k":
		return quantity.Kelvin(x)
	case "", "°":
		return quantity.Temperature{}, fmt.Errorf("a temperature of %v has no scale; want it as \"%v °C\" or \"%v °F\"", x, x, x)
	}
	return quantity.Temperature{}, fmt.Errorf("%q is no unit of temperature; want °C, °F or K", unit)
}

// Pressure reads an absolute pressure: "101.3 kPa", "1013 mbar", "760 mmHg".
func Pressure(text string) (quantity.Pressure, error) {
	kPa, err := In(text, "kPa")
	if err != nil {
		return quantity.Pressure{}, err
	}
	return quantity.KPa(kPa)
}
