package louche

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// The range of the model. Above 60 % vol, or 30 g/L of dissolved oil, an answer is an order of magnitude; above 90 % vol
// there is none. Source: Yalkowsky's log-linear model is used for the lower half of the range; the temperatures are an own
// choice: below -25 °C no figures were found.
const (
	surePctVol, mostPctVol = 60.0, 90.0
	sureGL                 = 30.0
	mostOilGL              = 400.0
	coldestC, warmestC     = -25.0, 40.0
	sourceRange            = "range of the log-linear model"
)

// Drink is a spirit with essential oil in it.
type Drink struct {
	Strength alcoholometry.Strength // must be set; up to 90 % vol
	OilGL    float64                // all its oil, dissolved or not, g/L of drink at 20 °C; in parts if the oil is counted so
	Temp     quantity.Temperature   // from -25 to 40 °C; 20 °C if unset
}

// String gives the drink in one line, such as "45.00 % vol with 2.00 g/L of oil, 20.0 °C".
func (d Drink) String() string {
	return fmt.Sprintf("%v with %s g/L of oil, %v", d.Strength, quantity.Figure(d.OilGL), d.Temp)
}

// text is String for an oil that may be counted in parts.
func (d Drink) text(o Oil) string {
	if o.inParts {
		return fmt.Sprintf("%v with %.3g parts of oil, %v", d.Strength, d.OilGL, d.Temp)
	}
	return d.String()
}

func checkDrink(function string, d Drink, o Oil) error {
	if err := checkPlace(function, d.Strength, d.Temp); err != nil {
		return err
	}
	unit := "g/L"
	if o.inParts {
		unit = "parts"
	}
	if err := quantity.CheckRange(function, "the drink's oil", d.OilGL, 0, mostOilGL, unit, ""); err != nil {
		return err
	}
	if d.OilGL == 0 {
		return fmt.Errorf("%s: the drink's oil is 0 %s; give what it holds, above 0 %s", function, unit, unit)
	}
	return nil
}

// checkPlace refuses a strength or a temperature that the model does not reach.
func checkPlace(function string, s alcoholometry.Strength, t quantity.Temperature) error {
	if err := alcoholometry.CheckSet(function, "the drink's strength", s); err != nil {
		return err
	}
	if err := quantity.CheckRange(function, "strength", s.ABV(), 0, mostPctVol*(1+1e-12), "% vol", sourceRange); err != nil {
		return err
	}
	return quantity.CheckRange(function, "temperature", t.C(), coldestC, warmestC, "°C", sourceRange)
}

// share returns f, the strength in % vol at 20 °C over 100.
func share(s alcoholometry.Strength) float64 { return math.Max(s.ABV(), 0) / 100 }

// watered is a drink with water added: what the way from the bottle to the glass is made of.
type watered struct {
	strength alcoholometry.Strength
	oilGL    float64
	volume   float64 // of the mixture at 20 °C, over the volume of the drink before
}

// waterDown adds ratio volumes of water to a volume of the drink, both at 20 °C. Masses add up exactly; the volume follows
// from the density.
func waterDown(function string, d Drink, ratio float64) (watered, error) {
	var t20 quantity.Temperature
	rho, err := alcoholometry.DensityKgM3(d.Strength, t20)
	if err != nil {
		return watered{}, as(function, err)
	}
	rhoWater, err := alcoholometry.DensityKgM3(alcoholometry.Water, t20)
	if err != nil {
		return watered{}, as(function, err)
	}
	kg := rho + ratio*rhoWater
	s, err := alcoholometry.ABW(d.Strength.ABW() * rho / kg)
	if err != nil {
		return watered{}, as(function, err)
	}
	rhoMixed, err := alcoholometry.DensityKgM3(s, t20)
	if err != nil {
		return watered{}, as(function, err)
	}
	volume := kg / rhoMixed
	return watered{s, d.OilGL / volume, volume}, nil
}
