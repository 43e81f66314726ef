package plots_test

import (
	"bytes"
	"fmt"
	"image/png"
	"strings"

	"swanneck/plots"
)

func cooling() *plots.Chart {
	chart := plots.New("What the alcoholometer shows as the tank cools",
		plots.Axis{Label: "tank temperature", Unit: "°C"}, plots.Axis{Label: "reading", Unit: "% vol"})
	chart.Line("43 % vol", []float64{10, 15, 20, 25}, []float64{39.2, 41.1, 43, 44.9})
	return chart
}

func ExampleNew() {
	chart := plots.New("Strength of the run", plots.Axis{Label: "time", Unit: "min", Max: 90}, plots.Axis{Label: "strength", Unit: "% vol"})
	chart.Line("run 1", []float64{0, 30, 60, 120}, []float64{80, 76, 61, 20})
	fmt.Println(chart)
	// Output:
	// Strength of the run
	// Horizontal axis “time”: 0 to 90 min.
	// Vertical axis “strength”: 20 to 80 % vol.
	// Line “run 1”: 4 points from 0 to 120 min; starts at 80 % vol, ends at 20 % vol; lowest 20 % vol at 120 min, highest 80 % vol at 0 min. Beyond the axes: 1 of its points.
}

func ExampleChart_AltText() {
	chart := cooling()
	chart.Points("measured", []float64{12}, []float64{39.9})
	chart.Mark("tomorrow", 12, 39.96)
	chart.Band("night", 10, 14)
	chart.HLine("label strength", 43)
	chart.VLine("20 °C", 20)
	chart.Note("source: invented")
	fmt.Println(chart.AltText())
	// Output:
	// What the alcoholometer shows as the tank cools
	// Horizontal axis “tank temperature”: 10 to 25 °C.
	// Vertical axis “reading”: 39 to 45 % vol.
	// Line “43 % vol”: 4 points from 10 to 25 °C; starts at 39.2 % vol, ends at 44.9 % vol; lowest 39.2 % vol at 10 °C, highest 44.9 % vol at 25 °C.
	// Points “measured”: one point, 39.9 % vol at 12 °C.
	// Mark “tomorrow”: 39.96 % vol at 12 °C.
	// Band “night”: from 10 to 14 °C.
	// Line across “label strength”: at 43 % vol.
	// Line up “20 °C”: at 20 °C.
	// Note: source: invented
}

func ExampleChart_SVG() {
	svg := cooling().SVG()
	first, _, _ := strings.Cut(svg, " aria-describedby")
	fmt.Println(first)
	// Output:
	// <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 560 350" width="560" role="img" aria-label="What the alcoholometer shows as the tank cools"
}

func ExampleChart_PNG() {
	picture, err := png.Decode(bytes.NewReader(cooling().PNG(72)))
	fmt.Println(picture.Bounds().Dx(), picture.Bounds().Dy(), err)
	// Output:
	// 560 350 <nil>
}

func ExampleError() {
	defer func() { fmt.Println(recover()) }()
	cooling().Line("43 % vol", []float64{10, 15}, []float64{39.2})
	// Output:
	// plots.Chart.Line: "43 % vol": 2 x values and 1 y values; give one y for each x
}
