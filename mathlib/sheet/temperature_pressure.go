package sheet

import (
	"swanneck/mathlib/quantity"
)

// Temperature is a temperature; unset, it is 20 °C. It is read with C, F and K.
type Temperature = quantity.Temperature

// Pressure is an absolute pressure; unset, it is one standard atmosphere. It is read with KPa, MmHg, Bar, Atm and PSI.
type Pressure = quantity.Pressure

// Celsius returns the temperature of c degrees Celsius.
func Celsius(c float64) Temperature {
	v, err := quantity.Celsius(c)
	return must("Celsius", v, err)
}

// Fahrenheit returns the temperature of f degrees Fahrenheit.
func Fahrenheit(f float64) Temperature {
	v, err := quantity.Fahrenheit(f)
	return must("Fahrenheit", v, err)
}

// Kelvin returns the temperature of k kelvin.
func Kelvin(k float64) Temperature {
	v, err := quantity.Kelvin(k)
	return must("Kelvin", v, err)
}

// KPa returns the absolute pressure of p kilopascal.
func KPa(p float64) Pressure {
	v, err := quantity.KPa(p)
	return must("KPa", v, err)
}

// MmHg returns the absolute pressure of p millimetres of mercury.
func MmHg(p float64) Pressure {
	v, err := quantity.MmHg(p)
	return must("MmHg", v, err)
}

// Bar returns the absolute pressure of p bar.
func Bar(p float64) Pressure {
	v, err := quantity.Bar(p)
	return must("Bar", v, err)
}

// Atm returns the absolute pressure of p standard atmospheres.
func Atm(p float64) Pressure {
	v, err := quantity.Atm(p)
	return must("Atm", v, err)
}

// PSI returns the absolute pressure of p pounds-force per square inch, counted from vacuum.
func PSI(p float64) Pressure {
	v, err := quantity.PSI(p)
	return must("PSI", v, err)
}

// AtAltitude returns the usual air pressure at a height of altitudeM metres above the sea, from -1000 to 11000 m.
func AtAltitude(altitudeM float64) Pressure {
	v, err := quantity.AtAltitude(altitudeM)
	return must("AtAltitude", v, err)
}

// Altitude returns the usual air pressure at a height of m metres above the sea, from -1000 to 11000 m, as AtAltitude does.
func Altitude(m float64) Pressure {
	v, err := quantity.AtAltitude(m)
	return must("Altitude", v, err)
}
