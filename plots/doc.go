// Package plots draws the charts of the trade: lines, measured points, marked points, cuts and reference
// lines over two axes with units; triangular diagrams of three components; and rows of colours with words to
// each. Each comes out as SVG, as PNG and as text.
//
//	chart := plots.New("What the alcoholometer shows as the tank cools",
//		plots.Axis{Label: "tank temperature", Unit: "°C"}, plots.Axis{Label: "reading", Unit: "% vol"})
//	chart.Line("43 % vol", temperaturesC, readings)
//	chart.Mark("tomorrow", 12, 40.9)
//
// The package knows numbers and words only. Every number is in the unit of its axis; the package converts nothing.
//
// Lettering is drawn as outlines of the embedded font (Liberation Sans), so a chart looks the same where
// the font is absent. A chart holds no script, no style sheet, no reference to anything outside itself, no
// clock and no random number: the same calls give the same bytes.
//
// A mistake in a call panics with an *Error of one line. Six series can be told apart by colour, also with
// red-green colour blindness, and in grey print by dash and marker. Up to 36 differ in colour and dash together.
//
// Main source for the drawing: gonum.org/v1/plot (its vector canvas, fonts and raster canvas). No package
// of it that writes files takes part.
package plots
