package alcoholometry

import (
	"fmt"

	"swanneck/mathlib/quantity"
)

// Format implements fmt.Formatter: %v and %s give the text with its unit, %f, %e and %g the figure in % vol at 20 °C.
// The figure of an unset strength panics as ABV does.
func (s Strength) Format(f fmt.State, verb rune) {
	quantity.FormatFigure(f, verb, s.ABV, s.String, "Strength")
}
