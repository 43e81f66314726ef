package quantity

import (
	"math"
	"strconv"
)

// Figure prints an amount with as many decimals as mean something in a distillery: three below 1, two below 1000 and
// one from there on (so to the millilitre, to 10 mL and to 0.1 L, if the amount is in litres). The value is
// dimensionless here; the caller writes the unit behind it.
func Figure(value float64) string {
	decimals := 1
	switch a := math.Abs(value); {
	case a < 0.9995:
		decimals = 3
	case a < 999.995:
		decimals = 2
	}
	s := strconv.FormatFloat(value, 'f', decimals, 64)
	if value < 0 && value > -0.0005 {
		return s[1:] // no "-0.000"
	}
	return s
}
