package packing

import (
	"fmt"
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// glassPerC is the cubic expansion of soda-lime glass, 1/°C. Source: ISO 4787:2010, the correction for soda-lime glass,
// from memory. It moves the head space of a 700 mL bottle by 0.02 mL for 1 °C, the spirit by 0.6 mL.
const glassPerC = 27e-6

// warmestC is the highest temperature of the density formula, °C. Source: OIML R 22 (1975).
const warmestC = 40

// Closed is a filled bottle that will be closed and stored warm.
type Closed struct {
	BrimL    float64                // what the bottle holds to the brim or the closure at 20 °C, L
	FillL    float64                // its contents at 20 °C, L
	Strength alcoholometry.Strength // of the spirit in it
	Temp     quantity.Temperature   // of spirit and bottle when it is closed; 20 °C if unset
	Warmest  quantity.Temperature   // the warmest it will be stored, up to 40 °C; 20 °C if unset
	LeastPct float64                // the head space wanted at Warmest, per cent of what the bottle holds; 0 to 50
}

// HeadSpace is the room above the spirit in a closed bottle. A head space below 0 is the volume for which there is no
// room.
type HeadSpace struct {
	Closed       Closed
	ClosedL      float64              // when it is closed, L
	ClosedPct    float64              // the same, per cent of what the bottle holds
	WarmL        float64              // at Warmest, L
	WarmPct      float64              // the same, per cent of what the bottle holds
	Enough       bool                 // WarmPct is at least LeastPct, and above 0
	BrimNeededL  float64              // what a bottle must hold at 20 °C, L, to have LeastPct at Warmest
	FullAt       quantity.Temperature // the temperature at which spirit fills the bottle, if FillsUp
	FillsUp      bool                 // the bottle is full at or below 40 °C
	MisleadingUS bool                 // more than 8 per cent when closed, of a bottle of 200 mL or more: see USHeadSpacePct
}

// USHeadSpacePct is the head space beyond which a container of USHeadSpaceFromML or more is held to mislead, per cent of
// its capacity after closure. Source: 27 CFR 5.202(b) (as of June 2026).
const USHeadSpacePct = 8.0

// USHeadSpaceFromML is the capacity, mL, from which USHeadSpacePct holds. Source: 27 CFR 5.202(b) (as of June 2026).
const USHeadSpaceFromML = 200.0

// HeadSpaceOf returns the room that is left above the spirit when the bottle is closed and when it is warm, and the
// temperature at which the spirit fills it; a closure is then pushed out or the bottle breaks. A litre of
// spirit of 40 to 60 % vol grows by 0.7 to 0.9 mL for 1 °C. Evaporation and the pressure of the enclosed air are left out. It fails with
// an *alcoholometry.UnsetError, with a *quantity.RangeError, and if the bottle is full already when it is closed.
//
// Source: OIML R 22 (1975) for the spirit; ISO 4787:2010 (from memory) for the glass.
func HeadSpaceOf(c Closed) (HeadSpace, error) {
	const fn = "packing.HeadSpaceOf"
	if err := above0(fn, "what the bottle holds", c.BrimL, "L"); err != nil {
		return HeadSpace{}, err
	}
	if err := above0(fn, "the contents", c.FillL, "L"); err != nil {
		return HeadSpace{}, err
	}
	if err := quantity.CheckRange(fn, "the head space wanted", c.LeastPct, 0, 50, "per cent", ""); err != nil {
		return HeadSpace{}, err
	}
	spirit := alcoholometry.Spirit{VolumeL: c.FillL, Strength: c.Strength}
	for _, t := range []quantity.Temperature{c.Temp, c.Warmest} {
		if err := alcoholometry.CheckSpirit(fn, alcoholometry.Spirit{VolumeL: c.FillL, Strength: c.Strength, Temp: t}); err != nil {
			return HeadSpace{}, err
		}
	}
	if c.Warmest.C() < c.Temp.C() {
		return HeadSpace{}, fmt.Errorf("%s: the warmest storage is %v and the bottle is closed at %v; give a warmest temperature of at least that", fn, c.Warmest, c.Temp)
	}
	room := func(t quantity.Temperature) float64 { return c.BrimL*glassGrowth(t) - spirit.VolumeAt(t) }
	h := HeadSpace{Closed: c, ClosedL: room(c.Temp), WarmL: room(c.Warmest)}
	if h.ClosedL < 0 {
		return HeadSpace{}, fmt.Errorf("%s: at %v the spirit takes up %.1f mL and the bottle holds %.1f mL; give a larger bottle or less spirit",
			fn, c.Temp, 1000*spirit.VolumeAt(c.Temp), 1000*c.BrimL*glassGrowth(c.Temp))
	}
	h.ClosedPct = 100 * h.ClosedL / (c.BrimL * glassGrowth(c.Temp))
	h.WarmPct = 100 * h.WarmL / (c.BrimL * glassGrowth(c.Warmest))
	h.Enough = h.WarmPct >= c.LeastPct && h.WarmL > 0
	h.BrimNeededL = spirit.VolumeAt(c.Warmest) / (1 - c.LeastPct/100) / glassGrowth(c.Warmest)
	h.MisleadingUS = 1000*c.BrimL >= USHeadSpaceFromML && h.ClosedPct > USHeadSpacePct
	var err error
	h.FullAt, h.FillsUp, err = fullAt(c.Temp, room)
	return h, err
}

// glassGrowth returns the capacity of a glass bottle at t over the one at 20 °C, dimensionless.
func glassGrowth(t quantity.Temperature) float64 { return 1 + glassPerC*(t.C()-20) }

// fullAt returns the temperature from that of closing up to 40 °C at which no room is left, if there is one.
func fullAt(from quantity.Temperature, room func(quantity.Temperature) float64) (quantity.Temperature, bool, error) {
	low, high := from.C(), float64(warmestC)
	top, err := quantity.Celsius(high)
	if err != nil || room(top) > 0 {
		return quantity.Temperature{}, false, err
	}
	for range 60 {
		mid := (low + high) / 2
		t, err := quantity.Celsius(mid)
		if err != nil {
			return quantity.Temperature{}, false, err
		}
		if room(t) > 0 {
			low = mid
		} else {
			high = mid
		}
	}
	t, err := quantity.Celsius(math.Min(high, warmestC))
	return t, true, err
}
