package plots

import "testing"

func BenchmarkSVG(b *testing.B) {
	c := sampleChart()
	b.ReportAllocs()
	size := 0
	for b.Loop() {
		size = len(c.SVG())
	}
	b.ReportMetric(float64(size), "bytes/chart")
}

func BenchmarkSVGFiveLines(b *testing.B) {
	c := fiveLines()
	size := 0
	for b.Loop() {
		size = len(c.SVG())
	}
	b.ReportMetric(float64(size), "bytes/chart")
}

func BenchmarkPNG(b *testing.B) {
	c := sampleChart()
	for b.Loop() {
		c.PNG(96)
	}
}

// fiveLines crosses five lines of 200 points each.
func fiveLines() *Chart {
	c := New("Five runs", Axis{Label: "time", Unit: "min"}, Axis{Label: "strength", Unit: "% vol"})
	for k, name := range []string{"Monday", "Tuesday", "Wednesday", "Thursday", "Friday"} {
		var xs, ys []float64
		for i := range 200 {
			x := float64(i) / 199
			xs, ys = append(xs, 120*x), append(ys, 85-float64(2*k)-float64(10+8*k)*x*x+6*x*(1-x)*float64(3-k))
		}
		c.Line(name, xs, ys)
	}
	return c
}
