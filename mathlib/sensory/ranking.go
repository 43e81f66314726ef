package sensory

import (
	"fmt"
	"math"
	"sort"
	"strconv"
	"strings"

	"gonum.org/v1/gonum/stat/distuv"

	"swanneck/mathlib/quantity"
)

// Ranking is how a panel put samples in order.
type Ranking struct {
	Samples  []string    // two or more
	Ranks    [][]float64 // a row for each taster: the rank given to each sample, dimensionless; samples that are level share the mean of their ranks
	Tasters  int         // how many were asked
	LevelPct float64     // the chance of a false alarm that is accepted, per cent; 5 if 0
}

// RankedPair is what a ranking tells of two samples.
type RankedPair struct {
	Lower, Higher string  // the samples, that with the lower sum of ranks first
	Apart         float64 // the difference of their sums of ranks, dimensionless
	PValue        float64 // the chance that the outermost of all the samples come out as far apart if all are alike, dimensionless
	Differ        bool    // they differ at the level of the ranking
}

// RankingTest is what a ranking tells.
type RankingTest struct {
	Ranking Ranking
	Sums    []float64 // the sum of ranks of each sample, dimensionless
	F       float64   // Friedman's statistic, dimensionless
	PValue  float64   // the chance of as large a statistic or larger if all samples are alike, dimensionless, 0 to 1
	Exact   bool      // PValue and Apart come from all orders there are; otherwise from large-panel approximations
	Shown   bool      // a difference among the samples is shown at the level of the ranking
	Apart   float64   // sums of ranks that lie at least this far apart differ, whichever pair it is, dimensionless; +Inf if no distance would do
	Pairs   []RankedPair
}

// RankTest tells whether a panel's rankings show differences among the samples (Friedman's test), and between which. For
// small panels all orders that could have come up are counted, level ranks included, so the chances are exact: up to at
// least 100 tasters for three samples, 30 for four, 10 for five, 5 for six. Beyond, the chi-square approximation and Nemenyi's distance are
// used, and Exact is false.
//
// The pairs are judged by the distance that the outermost two of the samples reach by chance with the level, so that a
// false alarm among all pairs together is as rare as that.
//
// It fails for rows that are no ranking of all samples, for fewer rankings than tasters, and if every taster found all
// samples level.
//
// Source: M. Friedman, Journal of the American Statistical Association 32 (1937) 675–701; ISO 8587; P. Nemenyi (1963), in
// the form of D. Basker, Chemistry and Industry (1988), for large panels.
func RankTest(r Ranking) (RankingTest, error) {
	const fn = "sensory.RankTest"
	if err := r.check(fn); err != nil {
		return RankingTest{}, err
	}
	if r.LevelPct == 0 {
		r.LevelPct = 5
	}
	if err := quantity.CheckRange(fn, "the level", r.LevelPct, 0.0001, 50, "per cent", ""); err != nil {
		return RankingTest{}, err
	}
	k, n := len(r.Samples), len(r.Ranks)
	t := RankingTest{Ranking: r, Sums: make([]float64, k)}
	for _, row := range r.Ranks {
		for j, x := range row {
			t.Sums[j] += x
		}
	}
	spread, between := r.spread(), squaresAround(t.Sums, float64(n)*float64(k+1)/2)
	if spread == 0 {
		return RankingTest{}, fmt.Errorf("%s: every taster found all %d samples level; there is nothing to test", fn, k)
	}
	t.F = float64(k-1) * between / spread
	outcomes, ok := allOutcomes(r.Ranks)
	t.Exact = ok
	var beyond func(apart float64) float64
	if ok {
		t.PValue = outcomes.chance(func(sums []int) bool { return squaresOfInts(sums) >= squaresOfInts(doubled(t.Sums)) })
		beyond = func(apart float64) float64 {
			far := int(math.Round(2 * apart))
			return outcomes.chance(func(sums []int) bool { return sums[k-1]-sums[0] >= far })
		}
		t.Apart = outcomes.distance(r.LevelPct / 100)
	} else {
		t.PValue = distuv.ChiSquared{K: float64(k - 1)}.Survival(t.F)
		unit := math.Sqrt(spread / float64(k-1)) // with no level ranks √(n k (k+1)/12)
		beyond = func(apart float64) float64 { return rangeBeyond(k, apart/unit) }
		t.Apart = unit * rangeQuantile(k, r.LevelPct/100)
	}
	t.Shown = t.PValue <= r.LevelPct/100*(1+1e-12)
	t.Pairs = t.pairs(beyond)
	return t, nil
}

// check returns an error unless every taster ranked every sample.
func (r Ranking) check(fn string) error {
	k := len(r.Samples)
	if k < 2 {
		return fmt.Errorf("%s: %d samples; a ranking needs two or more", fn, k)
	}
	seen := map[string]bool{}
	for _, s := range r.Samples {
		if s == "" || seen[s] {
			return fmt.Errorf("%s: the samples are %q; give each a name of its own", fn, r.Samples)
		}
		seen[s] = true
	}
	if len(r.Ranks) != r.Tasters {
		return fmt.Errorf("%s: %d rankings from %d tasters; every taster must have ranked, or state the panel as it was", fn, len(r.Ranks), r.Tasters)
	}
	if r.Tasters < 2 {
		return fmt.Errorf("%s: %d tasters; give two or more", fn, r.Tasters)
	}
	for i, row := range r.Ranks {
		if len(row) != k {
			return fmt.Errorf("%s: taster %d ranked %d of %d samples; all must be ranked", fn, i+1, len(row), k)
		}
		for j, want := range midRanks(row) {
			if row[j] != want {
				return fmt.Errorf("%s: taster %d gave the ranks %s; %d samples take the ranks 1 to %d, and samples that are level the mean of theirs: here %s",
					fn, i+1, list(row), k, k, list(midRanks(row)))
			}
		}
	}
	return nil
}

// midRanks returns the ranks of scores, lowest first, where level scores share the mean of their ranks.
func midRanks(scores []float64) []float64 {
	order := make([]int, len(scores))
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(a, b int) bool { return scores[order[a]] < scores[order[b]] })
	out := make([]float64, len(scores))
	for i := 0; i < len(order); {
		j := i
		for j < len(order) && !(scores[order[j]] > scores[order[i]]) {
			j++
		}
		for _, at := range order[i:j] {
			out[at] = float64(i+1+j) / 2
		}
		i = j
	}
	return out
}

// spread returns the sum of squares of all ranks around their mean.
func (r Ranking) spread() float64 {
	var sum float64
	for _, row := range r.Ranks {
		sum += squaresAround(row, float64(len(row)+1)/2)
	}
	return sum
}

func squaresAround(x []float64, mean float64) float64 {
	var sum float64
	for _, v := range x {
		sum += (v - mean) * (v - mean)
	}
	return sum
}

func (t RankingTest) pairs(beyond func(apart float64) float64) []RankedPair {
	var out []RankedPair
	names := t.Ranking.Samples
	for i := range names {
		for j := i + 1; j < len(names); j++ {
			p := RankedPair{Lower: names[i], Higher: names[j], Apart: t.Sums[j] - t.Sums[i]}
			if p.Apart < 0 {
				p = RankedPair{Lower: names[j], Higher: names[i], Apart: -p.Apart}
			}
			p.PValue = beyond(p.Apart)
			p.Differ = p.Apart >= t.Apart
			out = append(out, p)
		}
	}
	return out
}

// String gives the sums of ranks, the chance and what differs, in one line.
func (t RankingTest) String() string {
	var sums, differ []string
	for i, s := range t.Ranking.Samples {
		sums = append(sums, s+" "+short(t.Sums[i]))
	}
	for _, p := range t.Pairs {
		if p.Differ {
			differ = append(differ, p.Lower+" below "+p.Higher)
		}
	}
	verdict := fmt.Sprintf("no difference is shown (%s %%), which does not show that there is none", short(t.Ranking.LevelPct))
	switch {
	case t.Shown && len(differ) > 0:
		verdict = "shown: " + strings.Join(differ, ", ")
	case t.Shown:
		verdict = fmt.Sprintf("a difference is shown (%s %%), but not between which two", short(t.Ranking.LevelPct))
	case len(differ) > 0:
		verdict = fmt.Sprintf("shown by the distance of the sums only: %s", strings.Join(differ, ", "))
	}
	return fmt.Sprintf("rank sums of %d tasters: %s; F = %.2f, p = %s (%s): %s", t.Ranking.Tasters, strings.Join(sums, ", "), t.F,
		chanceText(t.PValue), t.kind(), verdict)
}

func (t RankingTest) kind() string {
	if t.Exact {
		return "exact"
	}
	return "large-panel approximation"
}

// Rows gives the ranking as a table, each row a label, a figure and a remark.
func (t RankingTest) Rows() [][]string {
	var rows [][]string
	for i, s := range t.Ranking.Samples {
		rows = append(rows, []string{"rank sum of " + s, short(t.Sums[i]), ""})
	}
	rows = append(rows, []string{"Friedman's F", fmt.Sprintf("%.2f", t.F), ""},
		[]string{"chance of that if all are alike", chanceText(t.PValue), t.kind()})
	if !math.IsInf(t.Apart, 1) {
		rows = append(rows, []string{fmt.Sprintf("sums differ from a distance of (%s %%)", short(t.Ranking.LevelPct)), fmt.Sprintf("%.1f", t.Apart), ""})
	}
	for _, p := range t.Pairs {
		verdict := "not shown"
		if p.Differ {
			verdict = "differ"
		}
		rows = append(rows, []string{p.Lower + " and " + p.Higher, short(p.Apart), verdict + ", p = " + chanceText(p.PValue)})
	}
	return rows
}

func list(x []float64) string {
	var out []string
	for _, v := range x {
		out = append(out, strconv.FormatFloat(v, 'g', -1, 64))
	}
	return strings.Join(out, " ")
}
