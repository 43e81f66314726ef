package plots

import (
	"errors"
	"math"
	"strings"
	"testing"
)

func TestMistakesStopWithOneLine(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	chart := func() *Chart { return New("title", Axis{Unit: "°C"}, Axis{Unit: "L"}) }
	for _, c := range []struct {
		call  func()
		index int
		want  string
	}{
		{func() { chart().Line("a", []float64{1, 2}, []float64{1}) }, -1, `plots.Chart.Line: "a": 2 x values and 1 y values; give one y for each x`},
		{func() { chart().Line("a", nil, nil) }, -1, `plots.Chart.Line: "a": the series is empty; give at least one point`},
		{func() { chart().Points("b", []float64{1, 2, 3}, []float64{1, 2, nan}) }, 2, `plots.Chart.Points: "b": ys[2] is NaN; give a finite number of at most 1e300 in size, or leave the point out`},
		{func() { chart().Points("", []float64{1, inf}, []float64{1, 2}) }, 1, `plots.Chart.Points: xs[1] is +Inf; give a finite number of at most 1e300 in size, or leave the point out`},
		{func() { chart().Line("c", []float64{-1.7e308}, []float64{1}) }, 0, `plots.Chart.Line: "c": xs[0] is -1.7e+308; give a finite number of at most 1e300 in size, or leave the point out`},
		{func() { chart().Mark("m", 1, nan) }, -1, `plots.Chart.Mark: "m": y is NaN; give a finite number of at most 1e300 in size, or leave the point out`},
		{func() { chart().Mark("m", inf, 1) }, -1, `plots.Chart.Mark: "m": x is +Inf; give a finite number of at most 1e300 in size, or leave the point out`},
		{func() { chart().Band("cut", 5, 5) }, -1, `plots.Chart.Band: "cut": the band runs from 5 to 5 °C; x0 must lie below x1`},
		{func() { chart().Band("cut", nan, 5) }, -1, `plots.Chart.Band: "cut": x0 is NaN; give a finite number of at most 1e300 in size, or leave the point out`},
		{func() { chart().HLine("h", -inf) }, -1, `plots.Chart.HLine: "h": y is -Inf; give a finite number of at most 1e300 in size, or leave the point out`},
		{func() { chart().VLine("v", nan) }, -1, `plots.Chart.VLine: "v": x is NaN; give a finite number of at most 1e300 in size, or leave the point out`},
		{func() { New("t", Axis{Label: "time", Unit: "min", Min: 5, Max: 0}, Axis{}) }, -1, `plots.New: "time": the axis runs from 5 to 0 min; Min must lie below Max, or leave both zero`},
		{func() { New("t", Axis{}, Axis{Max: nan}) }, -1, `plots.New: Max is NaN; give a finite number of at most 1e300 in size, or leave the point out`},
		{func() { chart().SVG() }, -1, `plots.Chart.SVG: "title": the chart has no series; add one with Line or Points first`},
		{func() { chart().PNG(96) }, -1, `plots.Chart.PNG: "title": the chart has no series; add one with Line or Points first`},
		{func() { sampleChart().PNG(0) }, -1, `plots.Chart.PNG: the resolution is 0 dots per inch; give one from 30 to 600`},
		{func() { sampleChart().PNG(nan) }, -1, `plots.Chart.PNG: the resolution is NaN dots per inch; give one from 30 to 600`},
	} {
		got := caught(c.call)
		if got == nil {
			t.Errorf("no panic; want %s", c.want)
			continue
		}
		if got.Error() != c.want || got.Index != c.index {
			t.Errorf("got  %s (index %d)\nwant %s (index %d)", got, got.Index, c.want, c.index)
		}
		if strings.Contains(got.Error(), "\n") {
			t.Errorf("more than one line: %s", got)
		}
	}
}

func caught(call func()) (found *Error) {
	defer func() {
		if r := recover(); r != nil {
			err, ok := r.(error)
			if !ok || !errors.As(err, &found) {
				panic(r)
			}
			var _ interface{ StopsCell() } = found
		}
	}()
	call()
	return nil
}

func TestChartKeepsItsOwnNumbers(t *testing.T) {
	xs, ys := []float64{1, 2}, []float64{3, 4}
	c := New("t", Axis{}, Axis{})
	c.Line("a", xs, ys)
	before := c.SVG()
	xs[0], ys[1] = 100, math.NaN()
	if c.SVG() != before {
		t.Error("changing the slices afterwards changed the chart")
	}
}

// A refused call must leave the chart as it was.
func TestRefusedCallAddsNothing(t *testing.T) {
	c := sampleChart()
	before := c.SVG()
	if caught(func() { c.Line("bad", []float64{1}, []float64{math.NaN()}) }) == nil {
		t.Fatal("NaN was taken")
	}
	if c.SVG() != before {
		t.Error("the refused series is in the chart")
	}
}
