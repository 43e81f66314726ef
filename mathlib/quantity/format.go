package quantity

import (
	"fmt"
	"strconv"
)

// FormatFigure writes a value for fmt: its figure for the number verbs e, f, F and g, with the width and precision asked
// for, and text for v and s. Other verbs are answered as fmt answers a verb that does not fit. figure is dimensionless
// here: in the unit that the type says.
func FormatFigure(f fmt.State, verb rune, figure func() float64, text func() string, typeName string) {
	width, hasWidth := f.Width()
	out := ""
	switch verb {
	case 'v', 's':
		out = text()
	case 'e', 'f', 'F', 'g':
		precision, ok := f.Precision()
		if !ok {
			precision = 6
			if verb == 'g' {
				precision = -1
			}
		}
		if verb == 'F' {
			verb = 'f'
		}
		out = strconv.FormatFloat(figure(), byte(verb), precision, 64)
		if f.Flag('+') && out[0] != '-' {
			out = "+" + out
		}
	default:
		out = "%!" + string(verb) + "(" + typeName + "=" + text() + ")"
	}
	if hasWidth {
		pad := strconv.Itoa(width)
		if f.Flag('-') {
			pad = "-" + pad
		}
		out = fmt.Sprintf("%"+pad+"s", out)
	}
	_, _ = f.Write([]byte(out)) // fmt reports what its writer says
}

// Format implements fmt.Formatter: %v and %s give the text with its unit, %f, %e and %g the figure in °C.
func (t Temperature) Format(f fmt.State, verb rune) {
	FormatFigure(f, verb, t.C, t.String, "Temperature")
}

// Format implements fmt.Formatter: %v and %s give the text with its unit, %f, %e and %g the figure in kPa.
func (p Pressure) Format(f fmt.State, verb rune) {
	FormatFigure(f, verb, p.KPa, p.String, "Pressure")
}
