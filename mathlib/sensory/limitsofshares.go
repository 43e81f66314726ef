package sensory

import (
	"fmt"
	"math"
	"slices"
	"sort"

	"swanneck/mathlib/quantity"
)

// ShareLimits says within which limits the share of an ingredient may lie.
type ShareLimits struct {
	Ingredient string
	Low        float64 // least share, dimensionless, 0 to 1
	High       float64 // greatest share, dimensionless; 1 if 0
}

// shareSlack is how far sums of shares may be off by rounding, dimensionless.
const shareSlack = 1e-9

// region is where the shares may lie.
type region struct {
	names     []string
	low, high []float64
	notes     []string // limits that were drawn in
}

// newRegion checks limits and puts 1 where no upper limit is given. Limits that the others keep from being reached are
// drawn in to what can be reached, and noted.
func newRegion(fn string, limits []ShareLimits) (region, error) {
	var r region
	var lows, highs float64
	for _, l := range limits {
		if l.High == 0 {
			l.High = 1
		}
		for _, x := range []struct {
			what  string
			share float64
		}{{"least", l.Low}, {"greatest", l.High}} {
			if err := quantity.CheckRange(fn, "the "+x.what+" share of "+l.Ingredient, x.share, 0, 1, "", "shares are parts of 1"); err != nil {
				return r, err
			}
		}
		if l.Low > l.High {
			return r, fmt.Errorf("%s: the least share of %s, %s %%, is above its greatest, %s %%", fn, l.Ingredient, percent(l.Low), percent(l.High))
		}
		r.names, r.low, r.high = append(r.names, l.Ingredient), append(r.low, l.Low), append(r.high, l.High)
		lows, highs = lows+l.Low, highs+l.High
	}
	if err := checkIngredients(fn, r.names); err != nil {
		return r, err
	}
	if lows > 1+shareSlack {
		return r, fmt.Errorf("%s: the least shares add up to %s %%, %s %% too much; lower one of them", fn, percent(lows), percent(lows-1))
	}
	if highs < 1-shareSlack {
		return r, fmt.Errorf("%s: the greatest shares add up to %s %%, %s %% short of the whole; raise one of them", fn, percent(highs), percent(1-highs))
	}
	for i, name := range r.names {
		reach := 1 - (lows - r.low[i])
		if r.high[i] > reach+shareSlack && limits[i].High != 0 {
			r.notes = append(r.notes, fmt.Sprintf("%s cannot reach %s %%, since the others take at least %s %%: %s %% is taken", name, percent(r.high[i]), percent(1-reach), percent(reach)))
		}
		r.high[i] = math.Min(r.high[i], reach)
	}
	highs = 0
	for _, h := range r.high {
		highs += h
	}
	for i, name := range r.names {
		reach := 1 - (highs - r.high[i])
		if r.low[i] < reach-shareSlack && limits[i].Low != 0 {
			r.notes = append(r.notes, fmt.Sprintf("%s cannot be as little as %s %%, since the others take at most %s %%: %s %% is taken", name, percent(r.low[i]), percent(1-reach), percent(reach)))
		}
		r.low[i] = math.Max(r.low[i], reach)
	}
	return r, nil
}

// vertices returns the corners of the region, in a fixed order: all ingredients but one at a limit, and that one within its
// own.
//
// Source: R. A. McLean, V. L. Anderson, Technometrics 8 (1966) 447–454.
func (r region) vertices() [][]float64 {
	q := len(r.names)
	var out [][]float64
	for free := range q {
		for choice := range 1 << (q - 1) {
			x := make([]float64, q)
			rest, bit := 1.0, 0
			for i := range q {
				if i == free {
					continue
				}
				x[i] = r.low[i]
				if choice>>bit&1 == 1 {
					x[i] = r.high[i]
				}
				rest -= x[i]
				bit++
			}
			if rest < r.low[free]-shareSlack || rest > r.high[free]+shareSlack {
				continue
			}
			x[free] = math.Min(math.Max(rest, r.low[free]), r.high[free])
			if !slices.ContainsFunc(out, func(y []float64) bool { return near(x, y) }) {
				out = append(out, x)
			}
		}
	}
	sort.SliceStable(out, func(i, j int) bool {
		for k := range out[i] {
			if d := out[i][k] - out[j][k]; math.Abs(d) > shareSlack {
				return d < 0
			}
		}
		return false
	})
	return out
}

func near(x, y []float64) bool {
	for i := range x {
		if math.Abs(x[i]-y[i]) > 10*shareSlack {
			return false
		}
	}
	return true
}

// atLimit tells which of the limits a corner lies on: bit 2i for the lower, 2i+1 for the upper limit of ingredient i.
func (r region) atLimit(x []float64) uint {
	var bits uint
	for i := range x {
		if math.Abs(x[i]-r.low[i]) <= 10*shareSlack {
			bits |= 1 << (2 * i)
		}
		if math.Abs(x[i]-r.high[i]) <= 10*shareSlack {
			bits |= 1 << (2*i + 1)
		}
	}
	return bits
}

// faces returns the centroids of the faces on which so many limits hold: 1 for the largest faces, q-2 for the edges.
func (r region) faces(corners [][]float64, limits int) [][]float64 {
	var out [][]float64
	q := len(r.names)
	done := map[string]bool{}
	for _, on := range choices(2*q, limits) {
		var mask uint
		for _, bit := range on {
			mask |= 1 << bit
		}
		var members []int
		for c, x := range corners {
			if r.atLimit(x)&mask == mask {
				members = append(members, c)
			}
		}
		if len(members) < 2 || limits < q-2 && len(members) < 3 || done[fmt.Sprint(members)] {
			continue
		}
		done[fmt.Sprint(members)] = true
		out = append(out, centroid(corners, members))
	}
	return out
}

func centroid(corners [][]float64, members []int) []float64 {
	x := make([]float64, len(corners[0]))
	for _, c := range members {
		for i := range x {
			x[i] += corners[c][i] / float64(len(members))
		}
	}
	return x
}

// ExtremeVertices returns the blends for a trial within limits: the corners of the region that the limits leave, the
// middles of its edges (for more than three ingredients), the middles of its faces, and the middle of all. For three
// ingredients edges and faces are the same.
//
// A limit that the others keep from being reached is drawn in, and noted. It fails for limits that cannot add up to the
// whole, and for more than 8 ingredients.
//
// Source: R. A. McLean, V. L. Anderson, Technometrics 8 (1966) 447–454.
func ExtremeVertices(limits []ShareLimits) (MixtureDesign, error) {
	const fn = "sensory.ExtremeVertices"
	r, err := newRegion(fn, limits)
	if err != nil {
		return MixtureDesign{}, err
	}
	q := len(r.names)
	if q > 8 {
		return MixtureDesign{}, fmt.Errorf("%s: %d ingredients; give at most 8, or hold some of them fixed", fn, q)
	}
	corners := r.vertices()
	d := MixtureDesign{Ingredients: r.names, Notes: r.notes}
	add := func(kind string, points ...[]float64) {
		for _, x := range points {
			if !slices.ContainsFunc(d.Blends, func(b TrialBlend) bool { return near(b.Shares, x) }) {
				d.Blends = append(d.Blends, TrialBlend{x, kind})
			}
		}
	}
	add("vertex", corners...)
	if q > 3 {
		add("edge", r.faces(corners, q-2)...)
	}
	if q > 2 {
		add("face", r.faces(corners, 1)...)
	}
	all := make([]int, len(corners))
	for i := range all {
		all[i] = i
	}
	add("centroid", centroid(corners, all))
	return d, nil
}
