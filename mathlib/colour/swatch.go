package colour

import (
	"fmt"
	"math"
)

// Swatch is a colour as a screen shows it.
type Swatch struct {
	R, G, B uint8
	Beyond  bool // the true colour is beyond what screens show; this is the nearest by clipping
}

// Hex gives the colour as pages and charts take it, such as "#dfe8c4".
func (s Swatch) Hex() string { return fmt.Sprintf("#%02x%02x%02x", s.R, s.G, s.B) }

// Note says that the colour is beyond the screen's colours, or nothing.
func (s Swatch) Note() string {
	if s.Beyond {
		return "beyond the screen's colours"
	}
	return ""
}

// String gives the hexadecimal colour, and that it is clipped.
func (s Swatch) String() string {
	if s.Beyond {
		return s.Hex() + " (" + s.Note() + ")"
	}
	return s.Hex()
}

// srgbWhite is the white of screens. Source: IEC 61966-2-1 (1999).
var srgbWhite = XYZ{95.047, 100, 108.883}

// ToSwatch returns a colour as a screen shows it; the white of the liquid becomes the white of the screen. What is beyond the
// screen's colours (deep green in a bottle) is clipped and marked.
//
// Source: IEC 61966-2-1 (1999).
func ToSwatch(c XYZ) Swatch {
	// The liquid's white differs from the screen's in the last digit only; scaling takes it there exactly.
	x, y, z := c.X/white().X*srgbWhite.X/100, c.Y/100, c.Z/white().Z*srgbWhite.Z/100
	var s Swatch
	channel := func(v float64) uint8 {
		if v < -1e-3 || v > 1+1e-3 || math.IsNaN(v) {
			s.Beyond = true
		}
		if v = math.Max(0, math.Min(1, v)); v <= 0.0031308 {
			v *= 12.92
		} else {
			v = 1.055*math.Pow(v, 1/2.4) - 0.055
		}
		return uint8(math.Round(255 * v))
	}
	s.R = channel(3.2406*x - 1.5372*y - 0.4986*z)
	s.G = channel(-0.9689*x + 1.8758*y + 0.0415*z)
	s.B = channel(0.0557*x - 0.2040*y + 1.0570*z)
	return s
}
