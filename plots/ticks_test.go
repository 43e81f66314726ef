package plots

import (
	"strings"
	"testing"
)

func TestTickLabels(t *testing.T) {
	const thin = "\u2009"
	for _, c := range []struct {
		lo, hi float64
		parts  int
		want   string
		label  string
	}{
		{0, 10, 5, "0 2 4 6 8 10", "reading (L)"},
		{0, 1, 5, "0.0 0.2 0.4 0.6 0.8 1.0", "reading (L)"},
		{-0.3, 0.3, 6, "−0.3 −0.2 −0.1 0.0 0.1 0.2 0.3", "reading (L)"},
		{0, 50000, 5, "0 10_000 20_000 30_000 40_000 50_000", "reading (L)"},
		{0, 4e6, 4, "0 1 2 3 4", "reading (10⁶ L)"},
		{0, 2.5e7, 5, "0 5 10 15 20 25", "reading (10⁶ L)"},
		{0, 4e-5, 4, "0 10 20 30 40", "reading (10⁻⁶ L)"},
		{998.2011, 998.2013, 4, "998.20110 998.20115 998.20120 998.20125 998.20130", "reading (L)"},
		{1e9, 1e9 + 3, 3, "0 1 2 3", "reading − 1_000_000_000 (L)"},
		{-1e9, -1e9 + 3, 3, "0 1 2 3", "reading + 1_000_000_000 (L)"},
		{5e8 + 0.0002, 5e8 + 0.0004, 3, "200 300 400", "reading − 500_000_000 (10⁻⁶ L)"},
		{-1e300, 1e300, 2, "−1 0 1", "reading (10³⁰⁰ L)"},
		{0, 1e-280, 2, "0 50 100", "reading (10⁻²⁸² L)"},
	} {
		s := marksBetween(c.lo, c.hi, c.parts)
		var got []string
		for _, k := range s.ticks {
			got = append(got, strings.ReplaceAll(k.label, thin, "_"))
		}
		if strings.Join(got, " ") != c.want {
			t.Errorf("ticks from %v to %v are %q; want %q", c.lo, c.hi, got, c.want)
		}
		label := strings.ReplaceAll(s.labelWith(Axis{Label: "reading", Unit: "L"}), thin, "_")
		if label != c.label {
			t.Errorf("axis from %v to %v is called %q; want %q", c.lo, c.hi, label, c.label)
		}
	}
}

func TestNumberText(t *testing.T) {
	for _, c := range []struct {
		v       float64
		stepExp int
		want    string
	}{
		{39.876, -1, "39.88"}, {39.9, -1, "39.9"}, {40, -1, "40"}, {-0.001, 0, "0"}, {-3.25, -1, "−3.25"},
		{0, -5, "0"}, {4e-238, -3, "0"}, {0.0004, -1, "0"}, {250000, 4, "250000"}, {1.55e14, 12, "1.55×10¹⁴"}, {-2e-9, -10, "−2×10⁻⁹"}, {1e300, 299, "1×10³⁰⁰"},
	} {
		if got := numberText(c.v, c.stepExp); got != c.want {
			t.Errorf("numberText(%v, %d) = %q; want %q", c.v, c.stepExp, got, c.want)
		}
	}
}

func TestValuesAllAlike(t *testing.T) {
	for _, v := range []float64{0, 5, -3, 1e-300, 9e299, 998.2} {
		c := New("constant", Axis{}, Axis{})
		c.Line("same", []float64{v, v}, []float64{v, v * (1 + 1e-15)})
		checkSVG(t, c.SVG())
		if l := c.layOut(); !(l.yRange[0] <= v && v <= l.yRange[1] && l.yRange[0] < l.yRange[1]) {
			t.Errorf("all values %v give the axis %v", v, l.yRange)
		}
	}
}

func TestSpreadMovesAsLittleAsNeeded(t *testing.T) {
	for _, c := range []struct{ rows, want []float64 }{
		{[]float64{10, 50}, []float64{10, 50}},
		{[]float64{20, 20}, []float64{15, 25}},
		{[]float64{20, 24, 60}, []float64{17, 27, 60}},
		{[]float64{1, 2}, []float64{0, 10}},
		{[]float64{99, 100}, []float64{90, 100}},
		{[]float64{30, 31, 32, 47}, []float64{20, 30, 40, 50}},
	} {
		rows := append([]float64(nil), c.rows...)
		spread(rows, 10, 0, 100)
		for i := range rows {
			if d := rows[i] - c.want[i]; d > 1e-9 || d < -1e-9 {
				t.Errorf("spread(%v) = %v; want %v", c.rows, rows, c.want)
				break
			}
		}
	}
}
