package colour

import (
	"fmt"
	"math"
	"strings"
	"sync"

	"swanneck/mathlib/quantity"
)

// Spectrum is how strongly a liquid takes light out at each wavelength. NewSpectrum makes one from readings, Demonstration and
// Browned draw one from pigments, MixSpectra puts lots together. The zero value is no spectrum and is refused.
type Spectrum struct {
	perCM    [gridPoints]float64 // decadic absorbance of 1 cm
	set      bool
	estimate string // what is estimated in it; empty for readings
	notes    string
}

// ClearLiquid is the spectrum of water and spirit without colour.
func ClearLiquid() Spectrum { return Spectrum{set: true} }

// IsSet reports whether s is a spectrum. It is false for the zero value only.
func (s Spectrum) IsSet() bool { return s.set }

// Estimate says what of the spectrum is estimated; it is empty for readings.
func (s Spectrum) Estimate() string { return s.estimate }

// NewSpectrum returns the spectrum of readings: wavelengths in nm, rising, from 400 or below to 700 or above, at most 20 nm
// apart, and decadic absorbances through a cell of pathCM centimetres (1 if 0). Between readings it is straight; beyond the
// first and last, to 380 and 780 nm, it is held, and String says so. Baseline noise down to -0.02 is taken as it is.
func NewSpectrum(nm, absorbance []float64, pathCM float64) (Spectrum, error) {
	const fn = "colour.NewSpectrum"
	if pathCM == 0 {
		pathCM = 1
	}
	if err := quantity.CheckRange(fn, "path", pathCM, 0.01, mostPathCM, "cm", ""); err != nil {
		return Spectrum{}, err
	}
	if len(nm) != len(absorbance) {
		return Spectrum{}, fmt.Errorf("%s: %d wavelengths and %d absorbances; give one absorbance for each", fn, len(nm), len(absorbance))
	}
	if len(nm) < 2 {
		return Spectrum{}, fmt.Errorf("%s: %d readings are no spectrum; give them from 400 to 700 nm", fn, len(nm))
	}
	for i := range nm {
		if err := quantity.CheckRange(fn, fmt.Sprintf("wavelength %d", i+1), nm[i], 200, 1200, "nm", ""); err != nil {
			return Spectrum{}, err
		}
		if err := quantity.CheckRange(fn, fmt.Sprintf("absorbance at %g nm", nm[i]), absorbance[i], -0.02, 4, "", "what an instrument reads; dilute if higher"); err != nil {
			return Spectrum{}, err
		}
		if i > 0 && nm[i] <= nm[i-1] {
			return Spectrum{}, fmt.Errorf("%s: %g nm stands after %g nm; give the wavelengths rising", fn, nm[i], nm[i-1])
		}
		if i > 0 && nm[i] > 400 && nm[i-1] < 700 && nm[i]-nm[i-1] > 20 {
			return Spectrum{}, fmt.Errorf("%s: no reading between %g and %g nm; give one every 20 nm or closer", fn, nm[i-1], nm[i])
		}
	}
	if nm[0] > 400 || nm[len(nm)-1] < 700 {
		return Spectrum{}, fmt.Errorf("%s: the readings go from %g to %g nm; a colour needs 400 to 700 nm", fn, nm[0], nm[len(nm)-1])
	}
	s := Spectrum{set: true}
	k := 0
	for i := range s.perCM {
		at := float64(firstNM + i*stepNM)
		for k < len(nm)-2 && nm[k+1] < at {
			k++
		}
		t := (at - nm[k]) / (nm[k+1] - nm[k])
		t = math.Max(0, math.Min(1, t)) // held at the ends, as documented
		s.perCM[i] = (absorbance[k]*(1-t) + absorbance[k+1]*t) / pathCM
	}
	var held []string
	if nm[0] > firstNM {
		held = append(held, fmt.Sprintf("below %g nm", nm[0]))
	}
	if last := nm[len(nm)-1]; last < lastNM {
		held = append(held, fmt.Sprintf("above %g nm", last))
	}
	if len(held) > 0 {
		s.notes = "held " + strings.Join(held, " and ")
	}
	return s, nil
}

const mostPathCM = 100.0

// PerCM returns the absorbance of 1 cm at a wavelength, dimensionless, from 380 to 780 nm, straight between the points of the grid.
// It panics with a *quantity.RangeError outside, and for no spectrum.
func (s Spectrum) PerCM(nm float64) float64 {
	const fn = "colour.Spectrum.PerCM"
	if err := quantity.CheckRange(fn, "wavelength", nm, firstNM, lastNM, "nm", "the CIE's tables"); err != nil {
		panic(err)
	}
	s.must(fn)
	x := (nm - firstNM) / stepNM
	i := min(int(x), gridPoints-2)
	t := x - float64(i)
	return s.perCM[i]*(1-t) + s.perCM[i+1]*t
}

func (s Spectrum) must(function string) {
	if err := checkSpectrum(function, "the spectrum", s); err != nil {
		panic(err)
	}
}

// SpectrumError says that a spectrum was needed and none was given.
type SpectrumError struct {
	Func string // the function, such as "colour.Spectrum.Through"
	What string // which spectrum
}

// Error gives the function and how to make a spectrum, in one line.
func (e *SpectrumError) Error() string {
	return fmt.Sprintf("%s: %s is not set; make one from readings, or from pigments for a picture", e.Func, e.What)
}

// StopsCell marks the error as one that a worksheet prints as its one line, without a stack of calls.
func (e *SpectrumError) StopsCell() {}

func checkSpectrum(function, what string, s Spectrum) error {
	if s.set {
		return nil
	}
	return &SpectrumError{function, what}
}

// Seen is a liquid's colour through a path in daylight.
type Seen struct {
	PathCM   float64 // the unit is cm
	XYZ      XYZ
	Lab      Lab // beside clear water
	Swatch   Swatch
	Estimate string // what is estimated in it; empty for readings
}

// String gives the colour with its path in one line.
func (c Seen) String() string {
	s := fmt.Sprintf("%v through %g cm, %v", c.Lab, c.PathCM, c.Swatch)
	if c.Estimate != "" {
		s += " (estimate: " + c.Estimate + ")"
	}
	return s
}

// Rows gives the colour, each row a label, a figure and a unit.
func (c Seen) Rows() [][]string {
	how := ""
	if c.Estimate != "" {
		how = " (estimate)"
	}
	return [][]string{
		{"path", fmt.Sprintf("%g", c.PathCM), "cm"},
		{"lightness L*" + how, fmt.Sprintf("%.2f", c.Lab.L), ""},
		{"green (-) to red, a*" + how, fmt.Sprintf("%.2f", c.Lab.A+0), ""},
		{"blue (-) to yellow, b*" + how, fmt.Sprintf("%.2f", c.Lab.B+0), ""},
		{"on a screen" + how, c.Swatch.String(), ""},
	}
}

// Through returns the colour that the liquid shows in daylight D65 through a path of pathCM, from 0.01 to 100 cm: 1 for a cell,
// about 7 for a bottle of 700 mL (estimate). It panics with a *quantity.RangeError for another path and with a *SpectrumError
// for no spectrum.
//
// Source: CIE 15 (2018), 7.1, sums at 5 nm from 380 to 780 nm; Lab beside the white of the same sums, so that clear water is exactly
// 100, 0, 0.
func (s Spectrum) Through(pathCM float64) Seen {
	const fn = "colour.Spectrum.Through"
	s.must(fn)
	if err := quantity.CheckRange(fn, "path", pathCM, 0.01, mostPathCM, "cm", ""); err != nil {
		panic(err)
	}
	c := s.xyz(pathCM)
	return Seen{PathCM: pathCM, XYZ: c, Lab: lab(c, white()), Swatch: ToSwatch(c), Estimate: s.estimate}
}

func (s *Spectrum) xyz(pathCM float64) XYZ {
	t := embedded()
	var c XYZ
	norm := 0.0
	for i, a := range s.perCM {
		p := t.d65[i] * math.Exp(-math.Ln10*a*pathCM)
		c.X += p * t.x[i]
		c.Y += p * t.y[i]
		c.Z += p * t.z[i]
		norm += t.d65[i] * t.y[i]
	}
	c.X, c.Y, c.Z = 100*c.X/norm, 100*c.Y/norm, 100*c.Z/norm
	return c
}

// White returns the white that colours are seen beside: D65 through clear water, by the sums at 5 nm.
func White() XYZ { return white() }

var white = sync.OnceValue(func() XYZ {
	var clear Spectrum
	return clear.xyz(1)
})

// String says what the spectrum rests on, with its absorbance at three wavelengths.
func (s Spectrum) String() string {
	if !s.set {
		return "no spectrum"
	}
	text := fmt.Sprintf("absorbance of 1 cm: %.3f at 430, %.3f at 550, %.3f at 665 nm", s.PerCM(430), s.PerCM(550), s.PerCM(665))
	if s.notes != "" {
		text += "; " + s.notes
	}
	if s.estimate != "" {
		text += "; estimate: " + s.estimate
	}
	return text
}

// Lot is an amount of spirit of one colour.
type Lot struct {
	VolumeL  float64 // L
	Spectrum Spectrum
}

// MixSpectra returns the spectrum of lots put together, coloured and clear: absorbances add up by volume. (Lab values do not.)
// The contraction of lots of different strength, at most 3.6 %, is left out.
//
// Source: the law of Beer. Two pigments that change each other's colour would break it; none are known here.
func MixSpectra(lots ...Lot) (Spectrum, error) {
	const fn = "colour.MixSpectra"
	if len(lots) == 0 {
		return Spectrum{}, fmt.Errorf("%s: there are no lots; give at least one", fn)
	}
	total := 0.0
	out := Spectrum{set: true}
	for i, l := range lots {
		if err := checkSpectrum(fn, fmt.Sprintf("the spectrum of lot %d", i+1), l.Spectrum); err != nil {
			return Spectrum{}, err
		}
		if err := quantity.CheckRange(fn, fmt.Sprintf("volume of lot %d", i+1), l.VolumeL, 0, math.MaxFloat64, "L", ""); err != nil {
			return Spectrum{}, err
		}
		total += l.VolumeL
	}
	if total == 0 {
		return Spectrum{}, fmt.Errorf("%s: all lots have 0 L; give at least one a volume above 0 L", fn)
	}
	for _, l := range lots {
		share := l.VolumeL / total
		if share == 0 {
			continue
		}
		for i, a := range l.Spectrum.perCM {
			out.perCM[i] += share * a
		}
		out.estimate, out.notes = join(out.estimate, l.Spectrum.estimate), join(out.notes, l.Spectrum.notes)
	}
	return out, nil
}

func join(a, b string) string {
	if a == "" || a == b {
		return b
	}
	if b == "" || strings.Contains(a, b) {
		return a
	}
	return a + "; " + b
}
