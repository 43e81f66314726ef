package sheet

import (
	"swanneck/mathlib/mixing"
)

// Reduction is a spirit brought down with water: what to put together, what comes of it, and how warm it gets.
type Reduction = mixing.Reduction

// MixingOption states a temperature other than 20 °C; WaterAt, ResultAt and SpiritAt make one.
type MixingOption = mixing.Option

// Reduce returns how much water brings a spirit down to the strength to, and what comes of it.
func Reduce(spirit Spirit, to Strength, opts ...MixingOption) Reduction {
	v, err := mixing.Reduce(spirit, to, opts...)
	return must("Reduce", v, err)
}

// Make returns how much spirit of strength from, and how much water, make the wanted spirit.
func Make(wanted Spirit, from Strength, opts ...MixingOption) Reduction {
	v, err := mixing.Make(wanted, from, opts...)
	return must("Make", v, err)
}

// Blend returns what comes of putting all the spirits together.
func Blend(spirits ...Spirit) Spirit {
	v, err := mixing.Blend(spirits...)
	return must("Blend", v, err)
}

// WaterAt says that the water to be added is at t, from 0 to 40 °C.
func WaterAt(t Temperature) MixingOption { return mixing.WaterAt(t) }

// ResultAt says that the volume of the result is wanted at t, from -20 to 40 °C.
func ResultAt(t Temperature) MixingOption { return mixing.ResultAt(t) }

// SpiritAt says, for Make, that the spirit to start from is at t, from -20 to 40 °C.
func SpiritAt(t Temperature) MixingOption { return mixing.SpiritAt(t) }
