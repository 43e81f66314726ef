package results

import (
	"fmt"
	"html"
	"math"
	"strconv"
	"strings"

	"swanneck/kernel/display"
)

// Figure writes a number for people: to the second digit of its ± if there is one, else to the tolerance's first
// digit, else to four digits or so. The arguments are dimensionless here: in one unit.
func Figure(x, plusMinus, within float64) string {
	decimals := 0
	switch {
	case plusMinus > 0:
		decimals = 1 - int(math.Floor(math.Log10(plusMinus)))
	case within > 0:
		decimals = -int(math.Floor(math.Log10(within)))
	case x == 0 || math.Abs(x) >= 1000:
		decimals = 1
		if x == math.Trunc(x) {
			decimals = 0
		}
	default:
		decimals = 3 - int(math.Floor(math.Log10(math.Abs(x))))
		if x == math.Trunc(x) {
			decimals = 0
		}
	}
	if size := math.Abs(x); decimals > 9 || size >= 1e12 {
		return strconv.FormatFloat(x, 'g', 4, 64) // too small or too large to be read in full
	}
	decimals = max(0, decimals)
	s := strconv.FormatFloat(x, 'f', decimals, 64)
	if s == "-"+strconv.FormatFloat(0, 'f', decimals, 64) {
		s = s[1:]
	}
	return s
}

// PlusMinus writes the ± of a result for people, without the sign; empty if it has none.
func PlusMinus(r display.ResultData) string {
	if r.PlusMinus <= 0 {
		return ""
	}
	return Figure(r.PlusMinus, r.PlusMinus, 0)
}

// WithPlusMinus writes the figure of a result and its ±, if it has one: "43.03 ± 0.13".
func WithPlusMinus(r display.ResultData) string {
	if pm := PlusMinus(r); pm != "" {
		return r.Figure + " ± " + pm
	}
	return r.Figure
}

// Unit is a result's unit as it is printed: nothing for a bare number.
func Unit(r display.ResultData) string {
	if r.Unit == "1" {
		return ""
	}
	return r.Unit
}

// Bundle is what a cell shows of a result.
func Bundle(r display.ResultData) display.Bundle {
	plain := strings.TrimRight(r.Name+": "+WithPlusMinus(r)+" "+Unit(r), " ")
	row := fmt.Sprintf(`<tr><th align="left">%s</th><td>%s</td><td align="left">%s</td></tr>`, html.EscapeString(r.Name), html.EscapeString(WithPlusMinus(r)), html.EscapeString(Unit(r)))
	if r.Note != "" {
		plain += " (" + r.Note + ")"
		row += fmt.Sprintf(`<tr><td colspan="3" align="left">%s</td></tr>`, html.EscapeString(r.Note))
	}
	return display.Bundle{
		display.Plain:  plain,
		display.HTML:   "<table>" + row + "</table>",
		display.Result: r,
	}
}
