package sensory

import (
	"math"
	"slices"
)

// outcome is a set of rank sums, doubled so that they are whole, lowest first.
type outcome [maxExact]int16

// The largest rankings whose outcomes are counted one by one.
const (
	maxExact     = 6         // samples
	mostOutcomes = 6_000_000 // steps
)

// outcomes holds all rank sums that a panel can come to if the samples are alike, with their chances.
type outcomes struct {
	k       int
	chances map[outcome]float64
	keys    []outcome // in a fixed order, so that sums round alike in every run
}

// allOutcomes counts what a panel of tasters who rank by chance can come to. Each row of ranks stands for a taster: with
// samples that are alike, each order of those ranks is as likely as the others. Sums may be sorted at every step, since the
// orders of the next taster are spread evenly over all samples. It gives up, and says false, where that takes too long.
func allOutcomes(ranks [][]float64) (*outcomes, bool) {
	k := len(ranks[0])
	if k > maxExact || len(ranks)*2*k > math.MaxInt16 {
		return nil, false
	}
	now := map[outcome]float64{{}: 1}
	steps := 0
	for i, row := range ranks {
		orders := permutations(doubled(row))
		if i == 0 { // the first taster only names the samples
			orders = orders[:1]
		}
		next := make(map[outcome]float64, 2*len(now))
		for _, sums := range sortedKeys(now, k) {
			steps += len(orders)
			if steps > mostOutcomes {
				return nil, false
			}
			each := now[sums] / float64(len(orders))
			for _, order := range orders {
				s := sums
				for j, r := range order {
					s[j] += int16(r)
				}
				sortFew(s[:k])
				next[s] += each
			}
		}
		now = next
	}
	return &outcomes{k, now, sortedKeys(now, k)}, true
}

func sortedKeys(m map[outcome]float64, k int) []outcome {
	keys := make([]outcome, 0, len(m))
	for o := range m {
		keys = append(keys, o)
	}
	slices.SortFunc(keys, func(a, b outcome) int { return slices.Compare(a[:k], b[:k]) })
	return keys
}

// chance returns the chance of the outcomes that are as told, dimensionless; sums are doubled and sorted.
func (o *outcomes) chance(is func(sums []int) bool) float64 {
	sums := make([]int, o.k)
	var p float64
	for _, key := range o.keys {
		for j := range sums {
			sums[j] = int(key[j])
		}
		if is(sums) {
			p += o.chances[key]
		}
	}
	return math.Min(p, 1)
}

// distance returns the smallest distance of the outermost sums of ranks that is reached with at most the chance level,
// dimensionless; +Inf if none is.
func (o *outcomes) distance(level float64) float64 {
	byFar := map[int]float64{}
	for _, key := range o.keys {
		byFar[int(key[o.k-1]-key[0])] += o.chances[key]
	}
	fars := make([]int, 0, len(byFar))
	for far := range byFar {
		fars = append(fars, far)
	}
	slices.Sort(fars)
	slices.Reverse(fars)
	best, p := math.Inf(1), 0.0
	for _, far := range fars {
		if p += byFar[far]; p > level*(1+1e-12) {
			break
		}
		best = float64(far) / 2
	}
	return best
}

// permutations returns all different orders of the numbers, each as often as it comes up.
func permutations(x []int) [][]int {
	var out [][]int
	x = slices.Clone(x)
	var walk func(i int)
	walk = func(i int) {
		if i == len(x) {
			out = append(out, slices.Clone(x))
			return
		}
		used := map[int]bool{}
		for j := i; j < len(x); j++ {
			if used[x[j]] {
				continue // level ranks: the same order again
			}
			used[x[j]] = true
			x[i], x[j] = x[j], x[i]
			walk(i + 1)
			x[i], x[j] = x[j], x[i]
		}
	}
	walk(0)
	return out
}

// doubled returns ranks as whole numbers: a mean of ranks may end in a half.
func doubled(ranks []float64) []int {
	out := make([]int, len(ranks))
	for i, r := range ranks {
		out[i] = int(math.Round(2 * r))
	}
	return out
}

// squaresOfInts returns the sum of squares, which grows with Friedman's statistic.
func squaresOfInts(x []int) int {
	var sum int
	for _, v := range x {
		sum += v * v
	}
	return sum
}

func sortFew(x []int16) {
	for i := 1; i < len(x); i++ {
		for j := i; j > 0 && x[j] < x[j-1]; j-- {
			x[j], x[j-1] = x[j-1], x[j]
		}
	}
}
