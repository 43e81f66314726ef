package mixing

import (
	"fmt"

	"swanneck/mathlib/quantity"
)

type optionKind int

const (
	noOption optionKind = iota
	waterAt
	resultAt
	spiritAt
)

// Option states a temperature other than 20 °C. The zero value states nothing.
type Option struct {
	kind optionKind
	temp quantity.Temperature
}

// WaterAt says that the water to be added is at t, from 0 to 40 °C, and that its volume is wanted at t.
func WaterAt(t quantity.Temperature) Option { return Option{waterAt, t} }

// ResultAt says that the volume of the result, and the contraction, are wanted at t, from -20 to 40 °C.
func ResultAt(t quantity.Temperature) Option { return Option{resultAt, t} }

// SpiritAt says, for Make, that the spirit to start from is at t, from -20 to 40 °C, and that its volume is wanted at
// t. Reduce refuses it: there the spirit brings its own temperature.
func SpiritAt(t quantity.Temperature) Option { return Option{spiritAt, t} }

// temperatures are those of the spirit, of the water and of the result.
type temperatures struct {
	spirit, water, result quantity.Temperature
}

func (ts *temperatures) apply(function string, opts []Option, allowSpirit bool) error {
	for _, o := range opts {
		switch o.kind {
		case waterAt:
			if err := quantity.CheckRange(function, "temperature of the water", o.temp.C(), 0, 40, "°C", "liquid water, OIML R 22 (1975)"); err != nil {
				return err
			}
			ts.water = o.temp
		case resultAt:
			ts.result = o.temp
		case spiritAt:
			if !allowSpirit {
				return fmt.Errorf("%s: SpiritAt(%v) has no meaning here; give the spirit its Temp", function, o.temp)
			}
			ts.spirit = o.temp
		}
	}
	return nil
}
