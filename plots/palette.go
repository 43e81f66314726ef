package plots

import (
	"image/color"

	"gonum.org/v1/plot/vg"
)

// seriesColours were searched for in CIE Lab: lightness 24 to 60, chroma 24 to 58, so that the least distance
// between any two is as large as possible as seen normally and under simulated protanopia, deuteranopia and
// tritanopia, with a gap of lightness between any two for grey print. The test measures all of these.
var seriesColours = [...]color.NRGBA{
	{0x37, 0x52, 0xb0, 0xff}, // blue
	{0x9a, 0x64, 0x02, 0xff}, // amber
	{0x6b, 0x1e, 0x0c, 0xff}, // dark copper
	{0x3b, 0x9b, 0xc2, 0xff}, // light blue
	{0x5f, 0x3d, 0x61, 0xff}, // plum
	{0x74, 0x86, 0x5e, 0xff}, // sage
}

// dashes are the dash patterns of the line series, in units of the drawing.
var dashes = [...][]vg.Length{
	nil,
	{10, 4.5},
	{2.5, 3.5},
	{12, 4, 2.5, 4},
	{19, 5},
	{9, 3.5, 2.5, 3.5, 2.5, 3.5},
}

// turn returns which of n forms comes at that place in the order. After each round it shifts by one, so that
// colours, which come round with the same period, meet other forms.
func turn(order, n int) int { return (order + order/n) % n }

func dashOf(order int) []vg.Length { return dashes[turn(order, len(dashes))] }

var (
	paper     = color.NRGBA{0xff, 0xff, 0xff, 0xff}
	ink       = color.NRGBA{0x1f, 0x26, 0x2c, 0xff}
	softInk   = color.NRGBA{0x50, 0x59, 0x61, 0xff}
	gridInk   = color.NRGBA{0xe4, 0xe7, 0xe9, 0xff}
	axisInk   = color.NRGBA{0x8b, 0x93, 0x99, 0xff}
	bandShade = color.NRGBA{0xee, 0xec, 0xe4, 0xff}
	bandEdge  = color.NRGBA{0xc3, 0xbf, 0xb0, 0xff}
)

const (
	lineWidth      = 2.2
	referenceWidth = 1.3
	thin           = 1
	markerRadius   = 3.8
	markRadius     = 5.5
)

// markerPath adds the outline of the marker of that order, centred at (x, y), to path.
// There are six shapes, told apart without colour.
func markerPath(path *vg.Path, order int, x, y, r vg.Length) {
	polygon := func(corners ...vg.Length) {
		path.Move(vg.Point{X: x + corners[0]*r, Y: y + corners[1]*r})
		for i := 2; i < len(corners); i += 2 {
			path.Line(vg.Point{X: x + corners[i]*r, Y: y + corners[i+1]*r})
		}
		path.Close()
	}
	switch turn(order, 6) {
	case 0:
		circlePath(path, x, y, r)
	case 1:
		polygon(-0.9, -0.9, 0.9, -0.9, 0.9, 0.9, -0.9, 0.9)
	case 2:
		polygon(-1.1, -0.8, 1.1, -0.8, 0, 1.2)
	case 3:
		polygon(0, -1.3, 1.3, 0, 0, 1.3, -1.3, 0)
	case 4: // cross
		polygon(-1.2, -0.7, -0.7, -1.2, 0, -0.5, 0.7, -1.2, 1.2, -0.7, 0.5, 0, 1.2, 0.7, 0.7, 1.2, 0, 0.5, -0.7, 1.2, -1.2, 0.7, -0.5, 0)
	case 5: // standing bar
		polygon(-0.45, -1.4, 0.45, -1.4, 0.45, 1.4, -0.45, 1.4)
	}
}

func circlePath(path *vg.Path, x, y, r vg.Length) {
	path.Move(vg.Point{X: x + r, Y: y})
	path.Arc(vg.Point{X: x, Y: y}, r, 0, fullTurn)
	path.Close()
}
