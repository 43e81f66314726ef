package plots

import (
	"fmt"
	"image/color"
	"math"
	"testing"

	"gonum.org/v1/plot/vg"
)

type triple [3]float64

// Simulation of full colour blindness in linear sRGB. Source: Machado, Oliveira and Fernandes, "A physiologically-based
// model for simulation of color vision deficiency", IEEE Transactions on Visualization and Computer Graphics 15 (2009)
// 1291–1298, matrices for severity 1.0 (as reprinted in several open implementations, which agree).
var seenAs = []struct {
	name   string
	matrix [3]triple
	least  float64 // least distance in CIE Lab between any two colours of series; our own requirement
}{
	{"normal", [3]triple{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}, 30},
	{"protanopia", [3]triple{{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}, 25},
	{"deuteranopia", [3]triple{{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}, 25},
	{"tritanopia", [3]triple{{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}, 20},
}

// linear returns the linear sRGB values. Source: IEC 61966-2-1.
func linear(c color.NRGBA) triple {
	var out triple
	for i, v := range []uint8{c.R, c.G, c.B} {
		if s := float64(v) / 255; s <= 0.04045 {
			out[i] = s / 12.92
		} else {
			out[i] = math.Pow((s+0.055)/1.055, 2.4)
		}
	}
	return out
}

func seen(c triple, m [3]triple) triple {
	var out triple
	for i, row := range m {
		out[i] = min(1, max(0, row[0]*c[0]+row[1]*c[1]+row[2]*c[2]))
	}
	return out
}

// lab returns CIE L*a*b* under D65. Source: ISO/CIE 11664-4; sRGB primaries by IEC 61966-2-1.
func lab(c triple) triple {
	f := func(t float64) float64 {
		if t > 216.0/24389 {
			return math.Cbrt(t)
		}
		return (24389.0/27*t + 16) / 116
	}
	x := f((0.4124*c[0] + 0.3576*c[1] + 0.1805*c[2]) / 0.9505)
	y := f(luminance(c))
	z := f((0.0193*c[0] + 0.1192*c[1] + 0.9505*c[2]) / 1.0890)
	return triple{116*y - 16, 500 * (x - y), 200 * (y - z)}
}

func luminance(c triple) float64 { return 0.2126*c[0] + 0.7152*c[1] + 0.0722*c[2] }

func distance(a, b triple) float64 {
	return math.Sqrt((a[0]-b[0])*(a[0]-b[0]) + (a[1]-b[1])*(a[1]-b[1]) + (a[2]-b[2])*(a[2]-b[2]))
}

// Known values: white, and red as CIE Lab 53.24, 80.09, 67.20 (common conversion tables; from memory).
func TestLab(t *testing.T) {
	if got := lab(linear(color.NRGBA{255, 255, 255, 255})); distance(got, triple{100, 0, 0}) > 0.1 {
		t.Errorf("white is %v in Lab; want 100, 0, 0", got)
	}
	if got := lab(linear(color.NRGBA{255, 0, 0, 255})); distance(got, triple{53.24, 80.09, 67.20}) > 0.2 {
		t.Errorf("red is %v in Lab; want 53.24, 80.09, 67.20", got)
	}
}

func TestColoursKeepApart(t *testing.T) {
	for _, sight := range seenAs {
		for i := range 3 { // white stays white
			if sum := sight.matrix[i][0] + sight.matrix[i][1] + sight.matrix[i][2]; math.Abs(sum-1) > 2e-6 {
				t.Errorf("%s: row %d sums to %v; want 1", sight.name, i, sum)
			}
		}
		for i, a := range seriesColours {
			for j, b := range seriesColours[:i] {
				got := distance(lab(seen(linear(a), sight.matrix)), lab(seen(linear(b), sight.matrix)))
				if got < sight.least {
					t.Errorf("%s: colours %d and %d are %.1f apart in Lab; want at least %v", sight.name, j, i, got, sight.least)
				}
			}
		}
	}
}

func TestColoursKeepApartInGreyPrint(t *testing.T) {
	for i, a := range seriesColours {
		for j, b := range seriesColours[:i] {
			if got := math.Abs(lab(linear(a))[0] - lab(linear(b))[0]); got < 6 {
				t.Errorf("colours %d and %d differ by %.1f in lightness; want at least 6", j, i, got)
			}
		}
	}
	if len(dashes) < len(seriesColours) {
		t.Errorf("%d dash patterns for %d colours", len(dashes), len(seriesColours))
	}
	for i := range dashes {
		for j := range i {
			if len(dashes[i]) == len(dashes[j]) && dashSum(i) == dashSum(j) {
				t.Errorf("dash patterns %d and %d are alike", j, i)
			}
		}
	}
	shapes := map[int]bool{}
	for i := range 6 {
		var p vg.Path
		markerPath(&p, i, 0, 0, 1)
		shapes[len(p)*1000+int(p[0].Pos.X*100)] = true
	}
	if len(shapes) != 6 {
		t.Errorf("%d marker shapes; want 6", len(shapes))
	}
}

// With more series than colours, colour and form together still differ.
func TestManySeriesDiffer(t *testing.T) {
	lines, markers := map[string]int{}, map[string]int{}
	for i := range 36 {
		var p vg.Path
		markerPath(&p, i, 0, 0, 1)
		lines[fmt.Sprint(colourOf(i), dashOf(i))]++
		markers[fmt.Sprint(colourOf(i), p)]++
	}
	if len(lines) != 36 || len(markers) != 36 {
		t.Errorf("36 series have %d looks as lines and %d as points; want 36", len(lines), len(markers))
	}
}

func dashSum(i int) (sum vg.Length) {
	for _, d := range dashes[i] {
		sum += d
	}
	return sum
}

// Contrast against white. Source: W3C Web Content Accessibility Guidelines 2.1, 1.4.3 (text, 4.5) and 1.4.11
// (parts of graphics, 3), relative luminance as defined there.
func TestContrast(t *testing.T) {
	contrast := func(c color.NRGBA) float64 { return 1.05 / (luminance(linear(c)) + 0.05) }
	for i, c := range seriesColours {
		if got := contrast(c); got < 3 {
			t.Errorf("colour %d has contrast %.2f; WCAG 2.1 wants at least 3", i, got)
		}
	}
	for _, c := range []color.NRGBA{ink, softInk} {
		if got := contrast(c); got < 4.5 {
			t.Errorf("text colour %v has contrast %.2f; WCAG 2.1 wants at least 4.5", c, got)
		}
	}
	// Text and lines may lie on a shaded band.
	onBand := (luminance(linear(bandShade)) + 0.05) / (luminance(linear(ink)) + 0.05)
	if onBand < 4.5 {
		t.Errorf("text on a band has contrast %.2f; WCAG 2.1 wants at least 4.5", onBand)
	}
}
