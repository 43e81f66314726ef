package quantity

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// RangeError says that a value lies outside the range for which a function has an answer. Every package of mathlib
// returns it, and the methods that only read a value panic with it.
type RangeError struct {
	Func   string  // the function, such as "alcoholometry.DensityKgM3"
	Param  string  // what the value is, such as "t" or "strength"
	Value  float64 // the value, in Unit; dimensionless if Unit is empty
	Min    float64 // the smallest value allowed, in Unit; dimensionless if Unit is empty; -Inf for no limit
	Max    float64 // the largest value allowed, in Unit; dimensionless if Unit is empty; +Inf for no limit
	Unit   string  // the unit of Value, Min and Max, such as "°C"
	Source string  // where the limits come from; may be empty
}

// Error gives the function, the value, the range and its source in one line.
func (e *RangeError) Error() string {
	var b strings.Builder
	value, low, high := figures(e.Value, e.Min, e.Max)
	fmt.Fprintf(&b, "%s: %s is %s", e.Func, e.Param, withUnit(value, e.Unit))
	switch noMin, noMax := math.IsInf(e.Min, -1), math.IsInf(e.Max, 1); {
	case noMin && noMax:
		b.WriteString("; it must be a finite number")
	case noMin:
		fmt.Fprintf(&b, "; it must be at most %s", withUnit(high, e.Unit))
	case noMax:
		fmt.Fprintf(&b, "; it must be at least %s", withUnit(low, e.Unit))
	default:
		fmt.Fprintf(&b, "; it must be from %s to %s", low, withUnit(high, e.Unit))
	}
	if e.Source != "" {
		fmt.Fprintf(&b, " (%s)", e.Source)
	}
	return b.String()
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *RangeError) StopsCell() {}

// figures prints the value and its limits with six significant digits, and with all digits where six would make the
// value look the same as the limit it breaks.
func figures(value, low, high float64) (v, l, h string) {
	v, l, h = short(value), short(low), short(high)
	if (v == l && value < low) || (v == h && value > high) {
		return full(value), full(low), full(high)
	}
	return v, l, h
}

func short(x float64) string {
	x, _ = strconv.ParseFloat(strconv.FormatFloat(x, 'g', 6, 64), 64)
	return full(x)
}

func full(x float64) string {
	if a := math.Abs(x); a != 0 && (a < 1e-6 || a >= 1e15) {
		return strconv.FormatFloat(x, 'g', -1, 64)
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}

func withUnit(figure, unit string) string {
	if unit == "" {
		return figure
	}
	return figure + " " + unit
}

// CheckRange returns a *RangeError unless value is a finite number from low to high, all three in the unit named, or
// dimensionless if unit is empty. An infinite low or high sets no limit.
func CheckRange(function, param string, value, low, high float64, unit, source string) error {
	if value >= low && value <= high && !math.IsInf(value, 0) {
		return nil
	}
	return &RangeError{Func: function, Param: param, Value: value, Min: low, Max: high, Unit: unit, Source: source}
}
