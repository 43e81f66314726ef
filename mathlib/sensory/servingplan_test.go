package sensory_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/sensory"
)

func abv(x float64) alcoholometry.Strength { return the(alcoholometry.ABV(x)) }

func serving(samples, tasters int, seed uint64) sensory.ServingFor {
	f := sensory.ServingFor{Tasters: tasters, PourML: 20, Seed: seed}
	for i := range samples {
		f.Samples = append(f.Samples, sensory.Sample{Name: fmt.Sprintf("S%d", i+1), Strength: abv(20)})
	}
	return f
}

// Every order as often as the others, codes of three digits that come up once, and the same seed the same plan.
func TestDifferencePlansAreBalanced(t *testing.T) {
	for _, c := range []struct {
		method         sensory.Method
		orders, glass  int
		firstReference bool
	}{{sensory.Triangle, 6, 3, false}, {sensory.DuoTrio, 4, 3, true}, {sensory.Tetrad, 6, 4, false}, {sensory.Paired, 2, 2, false}} {
		n := 4 * c.orders
		p := the(sensory.PlanDifference(c.method, serving(2, n, 7)))
		count, codes := map[string]int{}, map[string]bool{}
		for _, glasses := range p.Glasses {
			var order []string
			for j, g := range glasses {
				order = append(order, g.Sample)
				if c.firstReference && j == 0 {
					if g.Code != "R" {
						t.Errorf("%v: the reference is coded %q", c.method, g.Code)
					}
					continue
				}
				if len(g.Code) != 3 || g.Code < "100" || g.Code > "999" || codes[g.Code] {
					t.Errorf("%v: code %q is no new number of three digits", c.method, g.Code)
				}
				codes[g.Code] = true
			}
			if len(glasses) != c.glass {
				t.Errorf("%v: %d glasses; want %d", c.method, len(glasses), c.glass)
			}
			count[strings.Join(order, " ")]++
		}
		if len(count) != c.orders {
			t.Errorf("%v: %d orders; want %d", c.method, len(count), c.orders)
		}
		for order, k := range count {
			if k != 4 {
				t.Errorf("%v: the order %s comes up %d times; want 4", c.method, order, k)
			}
		}
		again, other := the(sensory.PlanDifference(c.method, serving(2, n, 7))), the(sensory.PlanDifference(c.method, serving(2, n, 8)))
		if !slices.Equal(p.Cards(), again.Cards()) || slices.Equal(p.Cards(), other.Cards()) {
			t.Errorf("%v: one seed must give one plan, and two seeds two", c.method)
		}
		if strings.Contains(p.String(), "not balanced") {
			t.Errorf("%v: %v", c.method, p)
		}
		if odd := the(sensory.PlanDifference(c.method, serving(2, n+1, 7))); !strings.Contains(odd.String(), "not balanced") {
			t.Errorf("%v with %d tasters: %v; want a note on balance", c.method, n+1, odd)
		}
	}
}

// A Williams design: every sample in every place, and after every other sample, equally often.
func TestRankingPlansAreBalanced(t *testing.T) {
	for k := 2; k <= 12; k++ {
		n := k
		if k%2 == 1 {
			n = 2 * k
		}
		p := the(sensory.PlanRanking(serving(k, 2*n, uint64(k))))
		place, after := map[string]int{}, map[string]int{}
		for _, glasses := range p.Glasses {
			for j, g := range glasses {
				place[fmt.Sprint(j, g.Sample)]++
				if j > 0 {
					after[glasses[j-1].Sample+">"+g.Sample]++
				}
			}
		}
		if len(place) != k*k || len(after) != k*(k-1) {
			t.Errorf("%d samples: %d places and %d neighbours; want %d and %d", k, len(place), len(after), k*k, k*(k-1))
		}
		for what, m := range place {
			if m != 2*n/k {
				t.Errorf("%d samples: %s comes up %d times; want %d", k, what, m, 2*n/k)
			}
		}
		for what, m := range after {
			if want := 2 * n * (k - 1) / (k * (k - 1)); m != want {
				t.Errorf("%d samples: %s comes up %d times; want %d", k, what, m, want)
			}
		}
	}
}

// With more than 900 glasses codes must repeat, but never for one taster.
func TestCodesOfALargePanel(t *testing.T) {
	p := the(sensory.PlanRanking(serving(7, 500, 1)))
	for i, glasses := range p.Glasses {
		seen := map[string]bool{}
		for _, g := range glasses {
			if seen[g.Code] {
				t.Errorf("taster %d has the code %s twice", i+1, g.Code)
			}
			seen[g.Code] = true
		}
	}
	p = the(sensory.PlanDifference(sensory.Triangle, serving(2, 300, 1))) // 900 glasses
	seen := map[string]bool{}
	for _, glasses := range p.Glasses {
		for _, g := range glasses {
			seen[g.Code] = true
		}
	}
	if len(seen) != 900 {
		t.Errorf("900 glasses have %d codes; want 900", len(seen))
	}
}

// Six samples of 20 mL at 20 % vol are 18.9 g of ethanol: 24 mL of ethanol of 0.789239 g/mL at 20 °C (OIML R 22).
func TestDose(t *testing.T) {
	p := the(sensory.PlanRanking(serving(6, 6, 1)))
	if want := 6 * 20 * 0.2 * 0.789239; math.Abs(p.DoseG-want) > 0.001 || p.DoseLeastG != p.DoseG || !strings.Contains(p.String(), "18.9 g of ethanol") {
		t.Errorf("dose %.4f g (least %.4f): %v; want %.4f g", p.DoseG, p.DoseLeastG, p, want)
	}
	f := serving(2, 6, 1)
	f.Samples[1].Strength, f.PourML = abv(60), 30
	p = the(sensory.PlanDifference(sensory.Triangle, f))
	if most, least := 30*(0.2+2*0.6)*0.789239, 30*(2*0.2+0.6)*0.789239; math.Abs(p.DoseG-most) > 0.001 || math.Abs(p.DoseLeastG-least) > 0.001 || !strings.Contains(p.String(), "too much for one sitting") {
		t.Errorf("dose %.4f to %.4f g: %v; want %.4f to %.4f", p.DoseLeastG, p.DoseG, p, least, most)
	}
	f.Samples[0].Strength, f.Samples[1].Strength = alcoholometry.Water, alcoholometry.Water
	if p := the(sensory.PlanDifference(sensory.Triangle, f)); !strings.Contains(p.String(), "no alcohol is served") {
		t.Errorf("%v; want no alcohol", p)
	}
}

// Whoever always answers rightly is marked all right, whoever never does all wrong.
func TestMarking(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := sensory.Method(rapid.IntRange(0, 2).Draw(t, "method"))
		n := rapid.IntRange(1, 30).Draw(t, "tasters")
		p := the(sensory.PlanDifference(m, serving(2, n, rapid.Uint64().Draw(t, "seed"))))
		right := rapid.IntRange(0, n).Draw(t, "right")
		var answers []string
		for i, glasses := range p.Glasses {
			answers = append(answers, answer(m, glasses, i < right))
		}
		if a := the(sensory.Mark(p, answers)); a.Right != right || a.Wrong != n-right || a.Tasters != n || a.Method != m {
			t.Fatalf("%v: marked %+v; want %d of %d right", m, a, right, n)
		}
	})
}

// answer gives a right or a wrong answer to a taster's glasses.
func answer(m sensory.Method, glasses []sensory.Glass, right bool) string {
	count := map[string]int{}
	for _, g := range glasses {
		count[g.Sample]++
	}
	for i, g := range glasses {
		switch m {
		case sensory.Triangle:
			if (count[g.Sample] == 1) == right {
				return g.Code
			}
		case sensory.DuoTrio:
			if i > 0 && (g.Sample == glasses[0].Sample) == right {
				return g.Code
			}
		case sensory.Tetrad:
			for _, other := range glasses[i+1:] {
				if (g.Sample == other.Sample) == right {
					return other.Code + " " + g.Code
				}
			}
		}
	}
	panic("no such answer")
}

func TestVotesAndRanks(t *testing.T) {
	p := the(sensory.PlanDifference(sensory.Paired, serving(2, 4, 3)))
	code := func(i int, sample string) string {
		for _, g := range p.Glasses[i] {
			if g.Sample == sample {
				return g.Code
			}
		}
		panic(sample)
	}
	v := the(sensory.CountVotes(p, []string{code(0, "S1"), code(1, "S2"), " - ", code(3, "S2")}))
	if v.ForFirst != 1 || v.ForSecond != 2 || v.Undecided != 1 || v.Tasters != 4 || v.First != "S1" {
		t.Errorf("votes %+v; want 1, 2 and 1 undecided", v)
	}
	p = the(sensory.PlanRanking(serving(3, 2, 3)))
	r := the(sensory.RanksFrom(p, []string{
		code(0, "S2") + " " + code(0, "S1") + " " + code(0, "S3"),
		code(1, "S3") + " " + code(1, "S1") + " = " + code(1, "S2")}))
	if want := [][]float64{{2, 1, 3}, {2.5, 2.5, 1}}; !slices.Equal(r.Ranks[0], want[0]) || !slices.Equal(r.Ranks[1], want[1]) || r.Tasters != 2 {
		t.Errorf("ranks %v; want %v", r.Ranks, want)
	}
}
