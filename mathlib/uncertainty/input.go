package uncertainty

import (
	"fmt"
	"math"
)

// Measured is anything that stands for a reading with what may be wrong with it: an Input, or one of the instruments.
type Measured interface {
	// Input returns the reading with its parts, or why there is none.
	Input() (Input, error)
}

// Input is a quantity that went into a result, with everything that may be wrong with it.
type Input struct {
	Name  string  // such as "thermometer"; no two inputs of a measurement may share one
	Value float64 // the reading, in the unit named
	Unit  string  // such as "°C"
	Parts []Part  // what may be wrong with it; at least one, and they are taken as independent
}

// Input returns the input itself if it can be reckoned with.
func (in Input) Input() (Input, error) {
	if in.Name == "" {
		return Input{}, fmt.Errorf("an input of %v %s has no name; give it one", in.Value, in.Unit)
	}
	if math.IsNaN(in.Value) || math.IsInf(in.Value, 0) {
		return Input{}, fmt.Errorf("%s: the reading is %v %s; give a finite number", in.Name, in.Value, in.Unit)
	}
	if len(in.Parts) == 0 {
		return Input{}, fmt.Errorf("%s: there is no tolerance; say what may be wrong, or put the number into the model as a constant", in.Name)
	}
	for _, p := range in.Parts {
		if err := p.check(in.Name, in.Unit); err != nil {
			return Input{}, err
		}
	}
	return in, nil
}

// Standard returns the standard uncertainty of the input, in its unit: the root of the sum of the squares of its parts.
func (in Input) Standard() float64 {
	var sum float64
	for _, p := range in.Parts {
		sum += p.Standard * p.Standard
	}
	return math.Sqrt(sum)
}

// Degrees returns the effective degrees of freedom of the input's standard uncertainty, dimensionless; +Inf if nothing
// limits them.
//
// Source: JCGM 100:2008, G.4.1, equation (G.2b), the formula of Welch and Satterthwaite.
func (in Input) Degrees() float64 {
	var sum float64
	for _, p := range in.Parts {
		sum += math.Pow(p.Standard, 4) / p.degrees()
	}
	return math.Pow(in.Standard(), 4) / sum
}

// normal tells whether all errors of the input are spread normally.
func (in Input) normal() bool {
	for _, p := range in.Parts {
		if p.Shape != ShapeNormal {
			return false
		}
	}
	return true
}

// String gives the input in one line, such as "thermometer 26.0 ± 0.1 °C (standard uncertainty)".
func (in Input) String() string {
	value, u := figures(in.Value, in.Standard())
	return fmt.Sprintf("%s %s ± %s %s (standard uncertainty)", in.Name, value, u, in.Unit)
}
