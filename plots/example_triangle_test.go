package plots_test

import (
	"bytes"
	"fmt"
	"image/png"
	"strings"

	"swanneck/plots"
)

func parting() *plots.Triangle {
	t := plots.NewTriangle("Where the oil parts", plots.Corners{Left: "water", Right: "ethanol", Top: "oil", Unit: "% mass"})
	t.Line("watery side", []float64{1, 0.66, 0.4}, []float64{0, 0.33, 0.58}, []float64{0, 0.01, 0.02})
	return t
}

func ExampleNewTriangle() {
	t := parting()
	t.Dashed("other side, qualitative", []float64{0.02, 0.06}, []float64{0, 0.42}, []float64{0.98, 0.52})
	t.Ties("measured", []float64{0.02, 1}, []float64{0, 0}, []float64{0.98, 0})
	t.Points("measured", []float64{1}, []float64{0}, []float64{0})
	t.Region("two liquids", []float64{1, 0.4, 0}, []float64{0, 0.58, 0}, []float64{0, 0.02, 1})
	t.Mark("bottle", 0.6, 0.395, 0.005)
	t.Note("source: invented")
	fmt.Println(t)
	// Output:
	// Where the oil parts
	// Triangular diagram: water lower left, ethanol lower right, oil at the top, in % mass.
	// Line “watery side”: 3 mixtures from 100, 0, 0 to 40, 58, 2; most oil in 40, 58, 2.
	// Dashed line “other side, qualitative”: 2 mixtures from 2, 0, 98 to 6, 42, 52; most oil in 2, 0, 98.
	// Tie-lines “measured”: 1, from 2, 0, 98 to 100, 0, 0 the first, from 2, 0, 98 to 100, 0, 0 the last.
	// Points “measured”: one mixture, 100, 0, 0.
	// Area “two liquids”: 3 mixtures from 100, 0, 0 to 0, 0, 100; most oil in 0, 0, 100.
	// Mark “bottle”: 60, 39.5, 0.5.
	// Note: source: invented
}

func ExampleTriangle_SVG() {
	first, _, _ := strings.Cut(parting().SVG(), " aria-describedby")
	fmt.Println(first[strings.Index(first, "role"):])
	// Output: role="img" aria-label="Where the oil parts"
}

func ExampleTriangle_PNG() {
	picture, err := png.Decode(bytes.NewReader(parting().PNG(72)))
	fmt.Println(picture.Bounds().Dx(), err)
	// Output: 560 <nil>
}

func ExampleTriangle_AltText() {
	first, _, _ := strings.Cut(parting().AltText(), "\n")
	fmt.Println(first)
	// Output: Where the oil parts
}

func ExampleNewSwatches() {
	s := plots.NewSwatches("The green as it keeps")
	s.Add("day 0", "#dfe8c4", "")
	s.Add("day 30", "#e8dfa0", "differs by 3.1")
	s.Note("through 7 cm")
	fmt.Println(s)
	// Output:
	// The green as it keeps
	// day 0: #dfe8c4
	// day 30: #e8dfa0, differs by 3.1
	// Note: through 7 cm
}

func ExampleSwatches_AddAll() {
	s := plots.NewSwatches("Two jars")
	s.AddAll([]string{"fresh", "browned"}, []string{"#dfe8c4", "#e8dfa0"}, nil)
	fmt.Println(s.AltText())
	picture, err := png.Decode(bytes.NewReader(s.PNG(72)))
	fmt.Println(picture.Bounds().Dx(), err)
	first, _, _ := strings.Cut(s.SVG(), " aria-describedby")
	fmt.Println(first[strings.Index(first, "role"):])
	// Output:
	// Two jars
	// fresh: #dfe8c4
	// browned: #e8dfa0
	// 560 <nil>
	// role="img" aria-label="Two jars"
}
