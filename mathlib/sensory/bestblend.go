package sensory

import (
	"fmt"
	"math"
	"strings"

	"gonum.org/v1/gonum/stat/distuv"
)

// BestBlend is the blend with the highest score on a fitted surface, and how much that means.
type BestBlend struct {
	Fit        MixtureFit
	Prediction              // of the best blend
	AtLimit    []string     // ingredients whose share lies at the end of what is allowed
	Alike      [][2]float64 // for each ingredient, from which to which share there are blends that the tasting cannot tell from the best, dimensionless
	Flat       bool         // the tasting tells little: for some ingredient Alike covers half or more of what is allowed
	Rival      *Prediction  // another peak, away from the best, that the tasting cannot tell from it; nil if there is none
	Notes      []string

	region region
}

// FindBestBlend returns the blend with the highest score on a fitted surface, among all blends or within limits. The
// interval is that of the mean score of this one blend; since the blend was picked for its score, the true one is more
// likely below the score than above. Two blends count as alike if the interval of the difference of their scores holds 0.
//
// It fails for limits that name another set of ingredients, or that cannot add up to the whole, for more than 8
// ingredients, and without a fitted surface.
//
// Source: the search is our own: from the corners of the region and a lattice within it, shares are exchanged between two
// ingredients at a time, to the peak on the way, until no exchange helps.
func FindBestBlend(f MixtureFit, limits ...ShareLimits) (BestBlend, error) {
	const fn = "sensory.FindBestBlend"
	if len(f.beta) == 0 {
		return BestBlend{}, fmt.Errorf("%s: there is no fitted surface; make one with FitMixture", fn)
	}
	r, err := f.regionOf(fn, limits)
	if err != nil {
		return BestBlend{}, err
	}
	points := r.points()
	var peaks [][]float64
	for _, x := range points {
		peaks = append(peaks, f.climb(x, r))
	}
	best := peaks[0]
	for _, x := range peaks {
		if f.score(x) > f.score(best)+1e-12*(1+math.Abs(f.score(best))) {
			best = x
		}
	}
	b := BestBlend{Fit: f, Prediction: f.predict(best), Notes: r.notes, region: r}
	b.weigh(append(points, peaks...), peaks)
	b.word()
	return b, nil
}

// regionOf puts the limits in the order of the fit's ingredients.
func (f *MixtureFit) regionOf(fn string, limits []ShareLimits) (region, error) {
	if len(f.Trial.Ingredients) > 8 {
		return region{}, fmt.Errorf("%s: %d ingredients; the best of at most 8 can be looked for", fn, len(f.Trial.Ingredients))
	}
	given := map[string]ShareLimits{}
	for _, l := range limits {
		if _, twice := given[l.Ingredient]; twice {
			return region{}, fmt.Errorf("%s: %s has two limits; give one", fn, l.Ingredient)
		}
		given[l.Ingredient] = l
	}
	var all []ShareLimits
	for _, name := range f.Trial.Ingredients {
		l := given[name]
		l.Ingredient = name
		all = append(all, l)
		delete(given, name)
	}
	for _, l := range limits {
		if _, left := given[l.Ingredient]; left {
			return region{}, fmt.Errorf("%s: there is no ingredient %q in the trial; limit one of %s", fn, l.Ingredient, strings.Join(f.Trial.Ingredients, ", "))
		}
	}
	return newRegion(fn, all)
}

// points returns the corners of the region, its middle and a lattice between them, in a fixed order.
func (r region) points() [][]float64 {
	out := r.vertices()
	all := make([]int, len(out))
	for i := range all {
		all[i] = i
	}
	middle := centroid(out, all)
	q := len(r.names)
	// A lattice over the simplex of what is left above the lower limits; points above an upper limit are left out.
	left := 1.0
	for _, l := range r.low {
		left -= l
	}
	degree := []int{0, 0, 100, 50, 24, 14, 10, 8, 7}[q]
	parts := make([]int, q)
	var walk func(at, rest int)
	walk = func(at, rest int) {
		if at < q-1 {
			for p := 0; p <= rest; p++ {
				parts[at] = p
				walk(at+1, rest-p)
			}
			return
		}
		parts[at] = rest
		x := make([]float64, q)
		for i, p := range parts {
			x[i] = r.low[i] + left*float64(p)/float64(degree)
			if x[i] > r.high[i]+shareSlack {
				return
			}
		}
		out = append(out, x)
	}
	if left > shareSlack {
		walk(0, degree)
	}
	return append(out, middle)
}

// climb exchanges shares between two ingredients at a time until that no longer raises the score. Along such an exchange
// every model is a parabola, so three scores give its peak.
func (f *MixtureFit) climb(start []float64, r region) []float64 {
	x := append([]float64(nil), start...)
	at := f.score(x)
	for range 2000 {
		before := at
		for i := range x {
			for j := range x {
				if i == j {
					continue
				}
				most := math.Min(r.high[i]-x[i], x[j]-r.low[j])
				if most <= shareSlack/10 {
					continue
				}
				if step, score := f.exchange(x, i, j, most, at); score > at {
					x[i] += step
					x[j] -= step
					at = score
				}
			}
		}
		if at-before <= 1e-13*(1+math.Abs(at)) {
			break
		}
	}
	return x
}

// exchange returns how much of ingredient i to take in place of j, from 0 to most, to get to the peak on the way uphill, and
// the score there; 0 if the way leads down at once, even if it would rise again beyond a valley.
func (f *MixtureFit) exchange(x []float64, i, j int, most, at float64) (step, score float64) {
	moved := func(d float64) float64 {
		x[i], x[j] = x[i]+d, x[j]-d
		y := f.score(x)
		x[i], x[j] = x[i]-d, x[j]+d
		return y
	}
	end, half := moved(most), moved(most/2)
	bend := 2 * (end - 2*half + at) // bend t² + slope t + at over t from 0 to 1
	slope := end - at - bend
	switch {
	case slope <= 0:
		return 0, at
	case bend < 0 && slope < -2*bend:
		step = most * slope / (-2 * bend)
		return step, moved(step)
	}
	return most, end
}

// alike tells whether the tasting cannot tell two blends apart.
func (f *MixtureFit) alike(better, x []float64) bool {
	a, b := columns(f.terms, better), columns(f.terms, x)
	c := make([]float64, len(a))
	for i := range c {
		c[i] = a[i] - b[i]
	}
	return dot(c, f.beta) <= f.t*f.standard(c)+1e-12
}

// weigh fills in what else is as good as the best.
func (b *BestBlend) weigh(points, peaks [][]float64) {
	best := b.Shares
	for i, x := range best {
		b.Alike = append(b.Alike, [2]float64{x, x})
		if x <= b.region.low[i]+1e-6 || x >= b.region.high[i]-1e-6 {
			b.AtLimit = append(b.AtLimit, b.region.names[i])
		}
	}
	for _, x := range points {
		if !b.Fit.alike(best, x) {
			continue
		}
		for i, s := range x {
			b.Alike[i][0], b.Alike[i][1] = math.Min(b.Alike[i][0], s), math.Max(b.Alike[i][1], s)
		}
	}
	for i, span := range b.Alike {
		if allowed := b.region.high[i] - b.region.low[i]; allowed > shareSlack && span[1]-span[0] >= allowed/2 {
			b.Flat = true
		}
	}
	for _, x := range peaks {
		if farApart(x, best, b.region) && b.Fit.alike(best, x) && (b.Rival == nil || b.Fit.score(x) > b.Rival.Score) {
			p := b.Fit.predict(x)
			b.Rival = &p
		}
	}
}

// farApart tells whether two blends differ by more than a tenth of what is allowed in some ingredient.
func farApart(x, y []float64, r region) bool {
	for i := range x {
		if math.Abs(x[i]-y[i]) > (r.high[i]-r.low[i])/10 && math.Abs(x[i]-y[i]) > 0.01 {
			return true
		}
	}
	return false
}

// word says what the figures mean.
func (b *BestBlend) word() {
	for _, name := range b.AtLimit {
		i := 0
		for b.region.names[i] != name {
			i++
		}
		x, low := b.Shares[i], b.Shares[i] <= b.region.low[i]+1e-6
		switch {
		case low && x < 1e-6:
			b.Notes = append(b.Notes, "the best has no "+name+" at all")
		case low:
			b.Notes = append(b.Notes, fmt.Sprintf("the best lies at the least %s allowed, %s %%: less may be better still, and was not looked at", name, percent(x)))
		case x > 1-1e-6:
			b.Notes = append(b.Notes, "the best is "+name+" alone")
		default:
			b.Notes = append(b.Notes, fmt.Sprintf("the best lies at the most %s allowed, %s %%: more may be better still, and was not looked at", name, percent(x)))
		}
	}
	if b.Flat {
		var spans []string
		for i, span := range b.Alike {
			spans = append(spans, fmt.Sprintf("%s %s to %s %%", b.region.names[i], percent(span[0]), percent(span[1])))
		}
		b.Notes = append(b.Notes, "the surface is flat: the tasting cannot tell the best from blends anywhere in "+strings.Join(spans, ", ")+"; choose among them by cost, or taste more")
	}
	if b.Rival != nil {
		b.Notes = append(b.Notes, fmt.Sprintf("there is another peak as good as far as can be told: %v", *b.Rival))
	}
	if w := b.Fit.warning(); w != "" {
		b.Notes = append(b.Notes, strings.TrimPrefix(w, "; "))
	}
}

// BetterThanPct returns how sure the tasting is that the best blend scores higher than another, in per cent, one-sided,
// for a blend named beforehand. It fails for shares that do not fit the ingredients or do not add up to 1.
func BetterThanPct(b BestBlend, shares []float64) (float64, error) {
	const fn = "sensory.BetterThanPct"
	if len(b.Fit.beta) == 0 {
		return 0, fmt.Errorf("%s: there is no best blend; find one with FindBestBlend", fn)
	}
	x, err := whole(fn, "the blend", shares, b.Fit.Trial.Ingredients)
	if err != nil {
		return 0, err
	}
	if near(x, b.Shares) {
		return 50, nil
	}
	one, other := columns(b.Fit.terms, b.Shares), columns(b.Fit.terms, x)
	for i := range one {
		one[i] -= other[i]
	}
	ahead, se := dot(one, b.Fit.beta), b.Fit.standard(one)
	switch {
	case se > 0:
		return 100 * distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(b.Fit.Degrees)}.CDF(ahead/se), nil
	case ahead > 0:
		return 100, nil
	}
	return 50, nil // level, without scatter
}

// String gives the best blend, its score and what to keep in mind, in one line.
func (b BestBlend) String() string {
	if len(b.Shares) == 0 {
		return "no best blend"
	}
	var parts []string
	for i, x := range b.Shares {
		parts = append(parts, fmt.Sprintf("%s %s %%", b.region.names[i], percent(x)))
	}
	s := fmt.Sprintf("%s: score %.2f, %s %% from %.2f to %.2f", strings.Join(parts, ", "), b.Score, short(b.Fit.Trial.SuretyPct), b.Low, b.High)
	for _, n := range b.Notes {
		s += "; " + n
	}
	return s
}

// Rows gives the best blend as a table: for each ingredient its share and from which to which share the tasting cannot
// tell it from the best; then the score.
func (b BestBlend) Rows() [][]string {
	if len(b.Shares) == 0 {
		return [][]string{{"no best blend", "", ""}}
	}
	rows := [][]string{{"ingredient", "best, %", "cannot be told from the best, %"}}
	for i, x := range b.Shares {
		rows = append(rows, []string{b.region.names[i], percent(x), percent(b.Alike[i][0]) + " to " + percent(b.Alike[i][1])})
	}
	rows = append(rows, []string{"score", fmt.Sprintf("%.2f", b.Score), fmt.Sprintf("%.2f to %.2f (%s %%)", b.Low, b.High, short(b.Fit.Trial.SuretyPct))})
	for _, n := range b.Notes {
		rows = append(rows, []string{"note: " + n, "", ""})
	}
	return rows
}
