package colour

import (
	"fmt"
	"math"
)

// XYZ is a colour in the tristimulus values of the CIE 1931 observer, with Y 100 for the white.
type XYZ struct {
	X float64 // dimensionless
	Y float64 // dimensionless
	Z float64 // dimensionless
}

// Lab is a colour by how light it is, how red or green, and how yellow or blue.
type Lab struct {
	L float64 // lightness, dimensionless: 0 black to 100 the white
	A float64 // above 0 red, below 0 green, dimensionless
	B float64 // above 0 yellow, below 0 blue, dimensionless
}

// String gives the three in the order L*, a*, b*, with two decimals.
func (c Lab) String() string { return fmt.Sprintf("L* %.2f, a* %.2f, b* %.2f", c.L, c.A+0, c.B+0) }

// ToLab returns the colour as seen beside a white.
//
// Source: ISO/CIE 11664-4 (2019), with the exact fractions 216/24389 and 24389/27.
func ToLab(c, white XYZ) (Lab, error) {
	const fn = "colour.ToLab"
	for _, w := range []struct {
		name         string
		value, white float64
	}{{"X", c.X, white.X}, {"Y", c.Y, white.Y}, {"Z", c.Z, white.Z}} {
		if !(w.white > 0) || math.IsInf(w.white, 0) {
			return Lab{}, fmt.Errorf("%s: %s of the white is %g; it must be above 0", fn, w.name, w.white)
		}
		if !(w.value >= 0) || math.IsInf(w.value, 0) {
			return Lab{}, fmt.Errorf("%s: %s is %g; it must be 0 or more", fn, w.name, w.value)
		}
	}
	return lab(c, white), nil
}

func lab(c, white XYZ) Lab {
	x, y, z := cube(c.X/white.X), cube(c.Y/white.Y), cube(c.Z/white.Z)
	return Lab{116*y - 16, 500 * (x - y), 200 * (y - z)}
}

func cube(t float64) float64 {
	if t > 216.0/24389 {
		return math.Cbrt(t)
	}
	return (24389.0/27*t + 16) / 116
}

// Difference returns the distance between two colours as the eye takes it, CIEDE2000, dimensionless: about 1 is just seen
// side by side, 2 to 3 at a glance (common practice, no source).
//
// Source: ISO/CIE 11664-6 (2014) with kL = kC = kH = 1; Sharma, Wu and Dalal, Color Res. Appl. 30 (2005) 21. Reproduces their 34 pairs
// to 1e-4.
func Difference(a, b Lab) float64 {
	const degree = math.Pi / 180
	const c25 = 25.0 * 25 * 25 * 25 * 25 * 25 * 25
	grey := func(c float64) float64 { c7 := math.Pow(c, 7); return math.Sqrt(c7 / (c7 + c25)) }
	g := 1 + 0.5*(1-grey((math.Hypot(a.A, a.B)+math.Hypot(b.A, b.B))/2))
	a1, a2 := g*a.A, g*b.A
	c1, c2 := math.Hypot(a1, a.B), math.Hypot(a2, b.B)
	hue := func(x, y float64) float64 { // 0 to 360 degrees; 0 for grey
		if x == 0 && y == 0 {
			return 0
		}
		h := math.Atan2(y, x) / degree
		if h < 0 {
			h += 360
		}
		return h
	}
	h1, h2 := hue(a1, a.B), hue(a2, b.B)
	dh, mh := h2-h1, h1+h2
	switch {
	case c1*c2 == 0: // a grey has no hue: the other's counts
		dh = 0
	case math.Abs(dh) <= 180+1e-9: // opposite hues lie on the edge, and rounding must not choose the side
		mh /= 2
	default:
		dh -= math.Copysign(360, dh)
		if mh < 360 {
			mh = (mh + 360) / 2
		} else {
			mh = (mh - 360) / 2
		}
	}
	dL, dC, dH := b.L-a.L, c2-c1, 2*math.Sqrt(c1*c2)*math.Sin(dh/2*degree)
	mL, mC := (a.L+b.L)/2, (c1+c2)/2
	t := 1 - 0.17*math.Cos((mh-30)*degree) + 0.24*math.Cos(2*mh*degree) + 0.32*math.Cos((3*mh+6)*degree) - 0.20*math.Cos((4*mh-63)*degree)
	turn := 30 * math.Exp(-((mh-275)/25)*((mh-275)/25))
	sL := 1 + 0.015*(mL-50)*(mL-50)/math.Sqrt(20+(mL-50)*(mL-50))
	sC := 1 + 0.045*mC
	sH := 1 + 0.015*mC*t
	rT := -math.Sin(2*turn*degree) * 2 * grey(mC)
	l, c, h := dL/sL, dC/sC, dH/sH
	return math.Sqrt(math.Max(0, l*l+c*c+h*h+rT*c*h))
}

// PlainDistance returns the straight distance in L*, a*, b*, dimensionless (CIE 1976). For the same pair it is mostly larger than
// Difference, up to twice and more: a limit of the one is no limit of the other.
//
// Source: ISO/CIE 11664-4 (2019).
func PlainDistance(a, b Lab) float64 {
	return math.Hypot(math.Hypot(a.L-b.L, a.A-b.A), a.B-b.B)
}
