package quantity

import (
	"fmt"
	"math"
)

// absoluteZeroC is the temperature of absolute zero, °C. Source: BIPM, SI Brochure, 9th edition (2019), 2.3.1: 0 °C
// is exactly 273.15 K.
const absoluteZeroC = -273.15

// usualC is what an unset temperature means, °C: the reference temperature of alcoholometry in most of the world.
const usualC = 20

// Temperature is a temperature as a thermometer of today shows it (the International Temperature Scale of 1990).
// The zero value is 20 °C. Make one with Celsius, Fahrenheit or Kelvin; two temperatures compare with ==.
type Temperature struct {
	c   float64 // °C; meaningless unless set
	set bool
}

// Celsius returns the temperature of c degrees Celsius. It fails below -273.15 °C and for a value that is no finite
// number.
func Celsius(c float64) (Temperature, error) {
	if err := CheckRange("quantity.Celsius", "temperature", c, absoluteZeroC, math.Inf(1), "°C", "absolute zero"); err != nil {
		return Temperature{}, err
	}
	return fromC(c), nil
}

// Fahrenheit returns the temperature of f degrees Fahrenheit. It fails below -459.67 °F and for a value that is no
// finite number.
//
// Source: NIST Special Publication 811 (2008), appendix B.8: t/°C = (t/°F - 32)/1.8, exact.
func Fahrenheit(f float64) (Temperature, error) {
	if err := CheckRange("quantity.Fahrenheit", "temperature", f, -459.67, math.Inf(1), "°F", "absolute zero"); err != nil {
		return Temperature{}, err
	}
	return fromC(math.Max((f-32)/1.8, absoluteZeroC)), nil // -459.67 °F must not round to below absolute zero
}

// Kelvin returns the temperature of k kelvin. It fails below 0 K and for a value that is no finite number.
func Kelvin(k float64) (Temperature, error) {
	if err := CheckRange("quantity.Kelvin", "temperature", k, 0, math.Inf(1), "K", "absolute zero"); err != nil {
		return Temperature{}, err
	}
	return fromC(k + absoluteZeroC), nil
}

func fromC(c float64) Temperature {
	if c == usualC {
		return Temperature{} // so that a stated 20 °C equals an unstated one
	}
	return Temperature{c: c, set: true}
}

// C returns the temperature in degrees Celsius.
func (t Temperature) C() float64 {
	if !t.set {
		return usualC
	}
	return t.c
}

// F returns the temperature in degrees Fahrenheit.
func (t Temperature) F() float64 { return t.C()*1.8 + 32 }

// K returns the temperature in kelvin.
func (t Temperature) K() float64 { return t.C() - absoluteZeroC }

// String gives the temperature in degrees Celsius with one decimal, such as "20.0 °C".
func (t Temperature) String() string { return fmt.Sprintf("%.1f °C", t.C()+0) }
