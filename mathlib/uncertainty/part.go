package uncertainty

import (
	"fmt"
	"math"

	"swanneck/mathlib/internal/chance"
)

// Shape says how the errors that one cause makes are spread.
type Shape int

// The shapes. The zero value is ShapeNormal.
const (
	ShapeNormal      Shape = iota // small errors likelier than large ones, no sharp limit
	ShapeRectangular              // anywhere between two limits, each value as likely
	ShapeTriangular               // between two limits, the middle likeliest
	ShapeStudentT                 // as estimated from a few readings
	ShapeCycling                  // swinging between two limits as a sine, as under a thermostat
	ShapeLoose                    // rectangular, with limits that are not known exactly
)

// String names the shape.
func (s Shape) String() string {
	switch s {
	case ShapeNormal:
		return "normal"
	case ShapeRectangular:
		return "rectangular"
	case ShapeTriangular:
		return "triangular"
	case ShapeStudentT:
		return "Student t"
	case ShapeCycling:
		return "cycling"
	case ShapeLoose:
		return "rectangular, limits not exact"
	}
	return fmt.Sprintf("Shape(%d)", int(s))
}

// Part is one thing that may be wrong with an input, such as the instrument's own error or the reading of its scale.
// Normal, Rectangular, Triangular, StudentT and Cycling make one; Called names it.
type Part struct {
	What     string  // such as "instrument"; may be empty
	Shape    Shape   // of its errors
	Standard float64 // the standard uncertainty it makes, in the unit of the input; above 0
	Degrees  int     // degrees of freedom: how well Standard itself is known; 0 if nothing limits it

	loose float64 // how far the limits of ShapeLoose may be off, as a share of their distance from the middle
}

// Normal returns an error that is spread normally with the given standard uncertainty, in the unit of the input. A
// certificate that gives an expanded uncertainty U with a coverage factor k means U/k.
//
// Source: JCGM 100:2008, 4.3.3.
func Normal(standard float64) Part { return Part{Shape: ShapeNormal, Standard: standard} }

// Rectangular returns an error that lies anywhere within half either way, in the unit of the input: what a maximum
// permissible error or a resolution says if nothing more is known. Its standard uncertainty is half/√3.
//
// Source: JCGM 100:2008, 4.3.7.
func Rectangular(half float64) Part {
	return Part{Shape: ShapeRectangular, Standard: half / math.Sqrt(3)}
}

// Triangular returns an error that lies within half either way and is likelier small, in the unit of the input: a scale
// read by eye between its marks. Its standard uncertainty is half/√6.
//
// Source: JCGM 100:2008, 4.3.9.
func Triangular(half float64) Part {
	return Part{Shape: ShapeTriangular, Standard: half / math.Sqrt(6)}
}

// StudentT returns an error whose standard uncertainty, in the unit of the input, was estimated from a few readings:
// degrees is one less than their number. See Repeated, which works both out.
//
// Source: JCGM 100:2008, 4.2; JCGM 101:2008, 6.4.9.
func StudentT(standard float64, degrees int) Part {
	return Part{Shape: ShapeStudentT, Standard: standard, Degrees: degrees}
}

// Cycling returns an error that swings as a sine, half either way, in the unit of the input: a cellar or a bath under a
// thermostat, read at no particular moment. Its standard uncertainty is half/√2.
//
// Source: JCGM 100:2008, H.1.3.4; JCGM 101:2008, 6.4.6.
func Cycling(half float64) Part {
	return Part{Shape: ShapeCycling, Standard: half / math.Sqrt2}
}

// Loose returns a rectangular part with limits that may themselves be off by up to by, in the unit of the input. Its
// standard uncertainty grows to √(half²/3 + by²/9). Parts of other shapes are returned unchanged.
//
// Source: JCGM 101:2008, 6.4.3.
func (p Part) Loose(by float64) Part {
	if p.Shape != ShapeRectangular || p.Standard == 0 {
		return p
	}
	half := p.Standard * math.Sqrt(3)
	p.Shape, p.loose, p.Standard = ShapeLoose, by/half, math.Sqrt(half*half/3+by*by/9)
	return p
}

// Called returns the part with a name, such as "reading the scale".
func (p Part) Called(what string) Part {
	p.What = what
	return p
}

// check returns an error, which begins with the input's name, unless the part can be reckoned with.
func (p Part) check(input, unit string) error {
	what := input
	if p.What != "" {
		what += ", " + p.What
	}
	switch {
	case math.IsNaN(p.Standard) || math.IsInf(p.Standard, 0) || p.Standard <= 0:
		return fmt.Errorf("%s: the standard uncertainty is %v %s; nothing is read exactly: give a number above 0", what, plain(p.Standard), unit)
	case p.Degrees < 0, p.Shape == ShapeStudentT && p.Degrees < 1:
		return fmt.Errorf("%s: %d degrees of freedom; give 1 or more (one less than the number of readings)", what, p.Degrees)
	case p.Shape < ShapeNormal || p.Shape > ShapeLoose:
		return fmt.Errorf("%s: there is no shape %d; make the part with Normal, Rectangular, Triangular, StudentT or Cycling", what, int(p.Shape))
	case p.Shape == ShapeLoose && !(p.loose > 0 && p.loose <= 1):
		return fmt.Errorf("%s: the limits may be off by %.4g of their distance from the middle; give more than 0 and at most 1", what, p.loose)
	}
	return nil
}

// degrees returns the degrees of freedom as a number, +Inf where nothing limits them.
func (p Part) degrees() float64 {
	if p.Degrees == 0 {
		return math.Inf(1)
	}
	return float64(p.Degrees)
}

// sampler draws errors of one part, in the unit of its input.
type sampler struct {
	input   int
	shape   Shape
	scale   float64 // half the width for a shape with limits, otherwise the standard uncertainty
	loose   float64
	degrees float64
}

func (p Part) sampler(input int) sampler {
	s := sampler{input: input, shape: p.Shape, scale: p.Standard, degrees: float64(p.Degrees)}
	switch p.Shape {
	case ShapeRectangular:
		s.scale *= math.Sqrt(3)
	case ShapeTriangular:
		s.scale *= math.Sqrt(6)
	case ShapeCycling:
		s.scale *= math.Sqrt2
	case ShapeLoose:
		s.scale /= math.Sqrt(1.0/3 + p.loose*p.loose/9)
		s.loose = p.loose
	}
	return s
}

// draw returns one error, in the unit of the input.
//
// Source: JCGM 101:2008, 6.4 for the shapes with limits; R. W. Bailey, Mathematics of Computation 62 (1994) 779–781, for
// Student's t.
func (s *sampler) draw(c *chance.Source) float64 {
	switch s.shape {
	case ShapeNormal:
		return s.scale * c.Normal()
	case ShapeRectangular:
		return s.scale * (2*c.Unit() - 1)
	case ShapeTriangular:
		return s.scale * (c.Unit() + c.Unit() - 1)
	case ShapeCycling:
		return s.scale * math.Cos(math.Pi*c.Unit())
	case ShapeLoose:
		limit := 1 + s.loose*(2*c.Unit()-1)
		return s.scale * limit * (2*c.Unit() - 1)
	default: // Student t
		for {
			u, v := 2*c.Unit()-1, 2*c.Unit()-1
			if w := u*u + v*v; w <= 1 {
				return s.scale * u * math.Sqrt(s.degrees*(math.Pow(w, -2/s.degrees)-1)/w)
			}
		}
	}
}
