package botanical

import (
	"math"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Series is what somebody read while a plant was steeped: how much was in the liquid after how many hours. Readings may be
// anything that goes in proportion to it: g/L, an absorbance, millilitres of oil.
type Series struct {
	What      string    // such as "oil in the macerate"; empty: "reading"
	Hours     []float64 // since the plant went in, growing, h
	Readings  []float64 // in the unit that Unit names
	Unit      string
	PlusMinus float64 // standard deviation of a reading, in the unit of the readings; 0 if nobody knows

	// What was steeped, and how: needed where the answer is wanted for other conditions.
	Strength alcoholometry.Strength
	Temp     quantity.Temperature
	GrainMM  float64 // size across of a piece of plant; the unit is mm
}

// leastReadings are those without which no law is fitted.
const leastReadings = 3

// points returns the readings that count: not the one at the start, which is 0 by every law.
func (s Series) points(fn string) (t, q []float64, err error) {
	if len(s.Hours) != len(s.Readings) {
		return nil, nil, inputf(fn, "the series has %d times and %d readings; give one reading for each time", len(s.Hours), len(s.Readings))
	}
	if err := quantity.CheckRange(fn, "standard deviation of a reading", s.PlusMinus, 0, math.Inf(1), s.Unit, ""); err != nil {
		return nil, nil, err
	}
	if err := quantity.CheckRange(fn, "size of a piece of plant", s.GrainMM, 0, 1000, "mm", ""); err != nil {
		return nil, nil, err
	}
	most := 0.0
	for i, h := range s.Hours {
		x := s.Readings[i]
		if err := quantity.CheckRange(fn, sprintf("time %d", i+1), h, 0, 1e5, "h", ""); err != nil {
			return nil, nil, err
		}
		if err := quantity.CheckRange(fn, sprintf("reading %d", i+1), x, 0, math.Inf(1), s.Unit, ""); err != nil {
			return nil, nil, err
		}
		if i > 0 && h <= s.Hours[i-1] {
			return nil, nil, inputf(fn, "time %d is %g h after %g h; times must grow", i+1, h, s.Hours[i-1])
		}
		// Readings scatter, but what came out does not go back.
		if fall := most - x; s.PlusMinus > 0 && fall > 3*s.PlusMinus || s.PlusMinus == 0 && fall > 0.1*most {
			return nil, nil, inputf(fn, "reading %d falls from %g to %g %s, more than readings scatter; something is lost on the way, which these laws do not know", i+1, most, x, s.Unit)
		}
		most = math.Max(most, x)
		if h == 0 {
			if x > 3*s.PlusMinus {
				return nil, nil, inputf(fn, "the reading at 0 h is %g %s; subtract what the spirit showed before the plant went in", x, s.Unit)
			}
			continue
		}
		t, q = append(t, h), append(q, x)
	}
	if len(t) < leastReadings {
		return nil, nil, inputf(fn, "the series has %d readings after the start; a law needs at least %d", len(t), leastReadings)
	}
	if most == 0 {
		return nil, nil, inputf(fn, "all readings are 0 %s; nothing came out", s.Unit)
	}
	return t, q, nil
}

func (s Series) what() string { return nameOr(s.What, "reading") }
