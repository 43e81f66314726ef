package louche

import (
	"fmt"

	"swanneck/mathlib/quantity"
)

// SeenAs says what was seen of a spirit.
type SeenAs string

// What can be seen.
const (
	CloudedByWater SeenAs = "clouded by water" // water was dripped in until it stayed cloudy
	WasClear       SeenAs = "clear"            // a bottle was clear after a night at its temperature
	WasCloudy      SeenAs = "cloudy"           // a bottle was hazy after a night at its temperature
)

// Seen is something a house has seen of its own spirit; Dripped, SeenClear and SeenCloudy make one.
type Seen struct {
	Drink     Drink // before any water
	As        SeenAs
	WaterML   float64 // dripped in until it stayed cloudy, mL; of a drip only
	SpiritML  float64 // into so much of the spirit, mL; 20 if 0
	ReadingML float64 // how far WaterML may be wrong, mL; 0.2 if 0
}

// Dripped says that waterML millilitres of water made 20 mL of the spirit stay cloudy, at its Temp. For another amount of
// spirit set SpiritML.
func Dripped(d Drink, waterML float64) Seen {
	return Seen{Drink: d, As: CloudedByWater, WaterML: waterML}
}

// SeenClear says that a bottle was clear after a night at its Temp.
func SeenClear(d Drink) Seen { return Seen{Drink: d, As: WasClear} }

// SeenCloudy says that a bottle was hazy after a night at its Temp, and cleared when warmed.
func SeenCloudy(d Drink) Seen { return Seen{Drink: d, As: WasCloudy} }

// String gives what was seen in one line.
func (s Seen) String() string { return s.text(Oil{}) }

func (s Seen) text(o Oil) string {
	head := s.Drink.text(o)
	if s.As == CloudedByWater {
		return fmt.Sprintf("%s: %.4g mL of water in %.4g mL", head, s.WaterML, s.spiritML())
	}
	return fmt.Sprintf("%s: %s", head, s.As)
}

func (s Seen) spiritML() float64 {
	if s.SpiritML == 0 {
		return 20
	}
	return s.SpiritML
}

func (s Seen) readingML() float64 {
	if s.ReadingML == 0 {
		return 0.2
	}
	return s.ReadingML
}

func checkSeen(function string, i int, s Seen, o Oil) error {
	if err := checkDrink(function, s.Drink, o); err != nil {
		return err
	}
	what := fmt.Sprintf("observation %d: ", i+1)
	switch s.As {
	case CloudedByWater:
		if err := quantity.CheckRange(function, what+"the spirit", s.spiritML(), 0.1, 1e5, "mL", ""); err != nil {
			return err
		}
		if err := quantity.CheckRange(function, what+"the water", s.WaterML, 0, mostRatio*s.spiritML(), "mL", ""); err != nil {
			return err
		}
		if s.WaterML == 0 {
			return fmt.Errorf("%s: %sthe water is 0 mL; a spirit that is cloudy before any water goes in as SeenCloudy", function, what)
		}
		return quantity.CheckRange(function, what+"the uncertainty of the water", s.readingML(), 1e-6, s.spiritML(), "mL", "")
	case WasClear, WasCloudy:
		if s.WaterML != 0 {
			return fmt.Errorf("%s: %sa bottle takes no water, and %g mL is given; make it with Dripped", function, what, s.WaterML)
		}
		return nil
	}
	return fmt.Errorf("%s: %snothing was seen; make it with Dripped, SeenClear or SeenCloudy", function, what)
}
