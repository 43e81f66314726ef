package sweep

import (
	"fmt"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Each stratum of each range holds one scenario, whatever the range, the number and the seed.
func TestLatinStrata(t *testing.T) {
	s := setOf(t, `InputNumber("a", 1, "1"); InputNumber("b", 1, "L"); InputChoice("c", "x", []string{"x", "y", "z"})`)
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 80).Draw(t, "n")
		seed := rapid.Int64().Draw(t, "seed")
		low := rapid.Float64Range(-1e4, 1e4).Draw(t, "low")
		low, _ = readBack(low)
		width := rapid.SampledFrom([]float64{1e-3, 0.37, 1, 20, 12345, 1e7}).Draw(t, "width")
		p, err := NewLatin(s, []string{fmt.Sprintf("a=%.3f..%.6f", low, low+width), "b=1..2 L", "c=x;y;z"}, n, seed, ".", 1000)
		if err != nil {
			t.Fatal(err)
		}
		ends := [][2]float64{{low, low + width}, {1, 2}}
		choices := map[string]int{}
		for i, e := range ends {
			seen := make([]bool, n)
			for _, row := range p.Scenarios {
				k := int((row[i].Figure - e[0]) / (e[1] - e[0]) * float64(n))
				if k < 0 || k >= n || seen[k] {
					t.Fatalf("input %d of %d in %v: %v is outside, or the second one in stratum %d", i, n, e, row[i].Figure, k)
				}
				seen[k] = true
			}
		}
		for _, row := range p.Scenarios {
			choices[row[2].Word]++
		}
		for _, c := range []string{"x", "y", "z"} {
			if k := choices[c]; k < n/3 || k > n/3+1 {
				t.Fatalf("of %d scenarios %v have one choice; want equal shares", n, choices)
			}
		}
	})
}

// readBack returns a number as the test writes it.
func readBack(x float64) (y float64, err error) {
	_, err = fmt.Sscanf(fmt.Sprintf("%.3f", x), "%g", &y)
	return y, err
}

// A seed draws the same, another one something else, and inputs are not drawn alike.
func TestLatinSeeds(t *testing.T) {
	draw := func(seed int64) []string {
		p, err := NewLatin(set(t), []string{"pot strength=20..70 %vol", "pot volume=20..70 L"}, 20, seed, ".", 1000)
		if err != nil {
			t.Fatal(err)
		}
		for _, row := range p.Scenarios {
			if row[0].Figure == row[1].Figure {
				t.Errorf("both inputs are %v", row[0].Figure)
			}
		}
		return said(p)
	}
	if a, b := draw(7), draw(7); !reflect.DeepEqual(a, b) {
		t.Errorf("one seed gave\n%q and\n%q", a, b)
	}
	if a, b := draw(7), draw(8); reflect.DeepEqual(a, b) {
		t.Error("two seeds gave the same")
	}
	// What our own code drew; it says only that a seed goes on drawing the same.
	want := []string{"29.496 %vol | 42.585 L", "55.978 %vol | 69.499 L"}
	if got := draw(7)[:2]; !reflect.DeepEqual(got, want) {
		t.Errorf("seed 7 draws %q; it drew %q", got, want)
	}
}

func TestLatinThatDoesNotFit(t *testing.T) {
	for _, c := range []struct {
		vary string
		n    int
		says string
	}{
		{"pot strength=30..60/5 %vol", 5, "leave out the step"},
		{"pot strength=30..80 %vol", 5, "80 %vol is outside"},
		{"pot strength=30..60 L", 5, "no unit of strength"},
		{"pot strength=30..60 %vol", 1, "want 2 or more"},
		{"pot strength=30..60 %vol", -3, "want 2 or more"},
		{"pot strength=30..60 %vol", 1001, "at most 1000 are run"},
		{"pot=30..60 %vol", 5, "the nearest: pot "},
	} {
		if _, err := NewLatin(set(t), []string{c.vary}, c.n, 0, ".", 1000); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%q, %d: %v; want %q", c.vary, c.n, err, c.says)
		}
	}
}
