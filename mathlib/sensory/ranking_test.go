package sensory_test

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/sensory"
)

func names(k int) []string { return []string{"A", "B", "C", "D", "E", "F", "G"}[:k] }

func ranking(ranks ...[]float64) sensory.Ranking {
	return sensory.Ranking{Samples: names(len(ranks[0])), Ranks: ranks, Tasters: len(ranks)}
}

// withStatistic looks for rankings of k samples by n tasters whose Friedman statistic is f.
func withStatistic(t testing.TB, k, n int, f float64) (sensory.RankingTest, bool) {
	orders := [][]float64{}
	var walk func(row []float64, at int)
	walk = func(row []float64, at int) {
		if at == k {
			orders = append(orders, slices.Clone(row))
			return
		}
		for i := at; i < k; i++ {
			row[at], row[i] = row[i], row[at]
			walk(row, at+1)
			row[at], row[i] = row[i], row[at]
		}
	}
	start := make([]float64, k)
	for i := range start {
		start[i] = float64(i + 1)
	}
	walk(start, 0)
	// Rank sums that can come up are tried taster by taster, depth first.
	var found sensory.RankingTest
	seen := map[string]bool{}
	var search func(ranks [][]float64, sums []float64) bool
	search = func(ranks [][]float64, sums []float64) bool {
		if len(ranks) == n {
			var s float64
			for _, x := range sums {
				s += (x - float64(n*(k+1))/2) * (x - float64(n*(k+1))/2)
			}
			if math.Abs(12*s/float64(n*k*(k+1))-f) > 0.0006 {
				return false
			}
			found = the(sensory.RankTest(ranking(ranks...)))
			return true
		}
		key := string(rune(len(ranks)))
		for _, x := range sums {
			key += string(rune(int(x)))
		}
		if seen[key] {
			return false
		}
		seen[key] = true
		for _, o := range orders {
			next := slices.Clone(sums)
			for j := range next {
				next[j] += o[j]
			}
			if search(append(ranks, o), next) {
				return true
			}
		}
		return false
	}
	ok := search(nil, make([]float64, k))
	return found, ok
}

func TestPrintedFriedman(t *testing.T) {
	for _, r := range table(t, "friedman.csv") {
		k, n, f := int(r.number("samples")), int(r.number("tasters")), r.number("F")
		got, ok := withStatistic(t, k, n, f)
		if !ok {
			t.Errorf("no ranking of %d samples by %d tasters has F = %.3f", k, n, f)
			continue
		}
		if !got.Exact || math.Abs(got.PValue-r.number("p")) > r.number("tol") || math.Abs(got.F-f) > 0.0006 {
			t.Errorf("%d samples, %d tasters, F = %.4f: p = %.6f, exact %v; the table gives %s ± %s", k, n, got.F, got.PValue, got.Exact, r.text("p"), r.text("tol"))
		}
	}
}

func TestPrintedDistances(t *testing.T) {
	for _, r := range table(t, "rank_distance.csv") {
		k, n := int(r.number("samples")), r.number("tasters")
		q := sensory.RangeQuantile(k, 0.05)
		if want, ok := r.optional("q_5_pct"); ok && math.Abs(q-want) > 0.0005 {
			t.Errorf("q of %d samples = %.5f; the table gives %g", k, q, want)
		}
		if want, ok := r.optional("distance"); ok && math.Abs(q*math.Sqrt(n*float64(k*(k+1))/12)-want) > 0.051 {
			t.Errorf("distance of %d samples, %g tasters = %.3f; Basker gives %g", k, n, q*math.Sqrt(n*float64(k*(k+1))/12), want)
		}
	}
}

// The chance counted by outcomes equals the chance counted by going through every order of every taster, level ranks too.
func TestExactByBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k, n := rapid.IntRange(2, 4).Draw(t, "k"), rapid.IntRange(2, 4).Draw(t, "n")
		if k == 4 && n == 4 {
			n = 3
		}
		var ranks [][]float64
		for range n {
			ranks = append(ranks, midRanks(rapid.SliceOfN(rapid.IntRange(0, 4), k, k).Draw(t, "scores")))
		}
		got, err := sensory.RankTest(ranking(ranks...))
		if err != nil { // all level
			return
		}
		far := func(sums []float64) float64 { return slices.Max(sums) - slices.Min(sums) }
		var reached, further, all float64
		var walk func(i int, sums []float64)
		walk = func(i int, sums []float64) {
			if i == n {
				all++
				if squares(sums) >= squares(got.Sums)-1e-9 {
					reached++
				}
				if far(sums) >= got.Pairs[0].Apart-1e-9 {
					further++
				}
				return
			}
			order := slices.Clone(ranks[i])
			var permute func(at int)
			permute = func(at int) {
				if at == k {
					next := slices.Clone(sums)
					for j := range next {
						next[j] += order[j]
					}
					walk(i+1, next)
					return
				}
				for j := at; j < k; j++ {
					order[at], order[j] = order[j], order[at]
					permute(at + 1)
					order[at], order[j] = order[j], order[at]
				}
			}
			permute(0)
		}
		walk(0, make([]float64, k))
		if math.Abs(got.PValue-reached/all) > 1e-9 || math.Abs(got.Pairs[0].PValue-further/all) > 1e-9 || !got.Exact {
			t.Fatalf("%v: p = %.12g and %.12g; counting all orders gives %.12g and %.12g", ranks, got.PValue, got.Pairs[0].PValue, reached/all, further/all)
		}
	})
}

func squares(x []float64) float64 {
	var s float64
	for _, v := range x {
		s += v * v
	}
	return s
}

func midRanks(scores []int) []float64 {
	out := make([]float64, len(scores))
	for i, s := range scores {
		below, level := 0, 0
		for _, o := range scores {
			if o < s {
				below++
			} else if o == s {
				level++
			}
		}
		out[i] = float64(below) + float64(level+1)/2
	}
	return out
}

// Where both can be had, the large-panel approximation comes near the exact chances; names and order of tasters do not
// matter.
func TestLargePanels(t *testing.T) {
	var ranks [][]float64
	for i := range 400 {
		ranks = append(ranks, [][]float64{{1, 2, 3}, {3, 1, 2}, {2, 3, 1}, {1, 3, 2}, {1, 2, 3}}[i%5])
	}
	small := the(sensory.RankTest(ranking(ranks[:60]...)))
	large := the(sensory.RankTest(ranking(ranks...)))
	if !small.Exact || large.Exact {
		t.Fatalf("exact for 60 tasters: %v, for 400: %v", small.Exact, large.Exact)
	}
	chi := math.Exp(-small.F / 2) // chi-square with 2 degrees of freedom
	if math.Abs(small.PValue-chi) > 0.01 {
		t.Errorf("60 tasters: exact %.5f, chi-square %.5f", small.PValue, chi)
	}
	if math.Abs(large.PValue-math.Exp(-large.F/2)) > 1e-12 {
		t.Errorf("400 tasters: p = %g for F = %g; chi-square with 2 degrees of freedom gives %g", large.PValue, large.F, math.Exp(-large.F/2))
	}
	if want := sensory.RangeQuantile(3, 0.05) * math.Sqrt(400); math.Abs(large.Apart-want) > 1e-9 {
		t.Errorf("400 tasters: sums differ from %.4f on; q √(n k (k+1)/12) gives %.4f", large.Apart, want)
	}
	if exact, approx := small.Apart, sensory.RangeQuantile(3, 0.05)*math.Sqrt(60); math.Abs(exact-approx) > 1.5 { // whole sums, without a correction for that
		t.Errorf("60 tasters: exact distance %.2f, approximation %.2f", exact, approx)
	}
	shuffled := slices.Clone(ranks[:60])
	slices.Reverse(shuffled)
	if other := the(sensory.RankTest(ranking(shuffled...))); math.Abs(other.PValue-small.PValue) > 1e-12 || other.F != small.F {
		t.Errorf("another order of tasters gives %g, %g; want %g, %g", other.F, other.PValue, small.F, small.PValue)
	}
}
