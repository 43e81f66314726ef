package sensory_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/sensory"
)

func yarn(t testing.TB, m sensory.MixtureModel) sensory.MixtureTrial {
	trial := sensory.MixtureTrial{Ingredients: []string{"x1", "x2", "x3"}, Model: m}
	for _, r := range table(t, "yarn.csv") {
		trial.Shares = append(trial.Shares, []float64{r.number("x1"), r.number("x2"), r.number("x3")})
		trial.Scores = append(trial.Scores, r.number("y"))
	}
	return trial
}

func TestYarn(t *testing.T) {
	f := the(sensory.FitMixture(yarn(t, sensory.MixtureQuadratic)))
	figures := map[string]float64{"R2": f.R2, "adjusted R2": f.AdjustedR2, "residual": f.Residual, "mean": f.MeanOfScores}
	for _, r := range table(t, "yarn_fit.csv") {
		what := r.text("what")
		got, ok := figures[what]
		standard := math.NaN()
		for _, term := range f.Terms {
			if term.Name == what {
				got, standard, ok = term.Coefficient, term.Standard, true
			}
		}
		if !ok {
			t.Errorf("the fit has no %q", what)
			continue
		}
		if math.Abs(got-r.number("coefficient")) > r.number("tol")*(1+1e-9) {
			t.Errorf("%s = %.7f; the print gives %s ± %s", what, got, r.text("coefficient"), r.text("tol"))
		}
		if want, printed := r.optional("standard"); printed && !(math.Abs(standard-want) <= r.number("tol_standard")) {
			t.Errorf("standard error of %s = %.7f; the print gives %g", what, standard, want)
		}
	}
	if f.Degrees != 9 || f.PureDegrees != 9 || f.LackDegrees != 0 || f.LackOfFitP != 1 {
		t.Errorf("degrees of freedom %d, pure %d, lack %d (p = %g); want 9, 9, 0 (1)", f.Degrees, f.PureDegrees, f.LackDegrees, f.LackOfFitP)
	}
	if linear := the(sensory.FitMixture(yarn(t, sensory.MixtureLinear))); linear.LackDegrees != 3 || linear.LackOfFitP > 1e-4 || !strings.Contains(linear.String(), "does not fit") {
		t.Errorf("%v, lack of fit %g with %d degrees; a linear surface does not fit", linear, linear.LackOfFitP, linear.LackDegrees)
	}
}

func TestFlare(t *testing.T) {
	d := the(sensory.ExtremeVertices([]sensory.ShareLimits{{Ingredient: "x1", Low: 0.4, High: 0.6}, {Ingredient: "x2", Low: 0.1, High: 0.5},
		{Ingredient: "x3", Low: 0.1, High: 0.5}, {Ingredient: "x4", Low: 0.03, High: 0.08}}))
	count := map[string]int{}
	for _, b := range d.Blends {
		count[b.Kind]++
	}
	if count["vertex"] != 8 || count["face"] != 6 || count["centroid"] != 1 || count["edge"] != 12 {
		t.Errorf("%v; a box cut by a plane with 8 corners has 12 edges and 6 faces", count)
	}
	if len(d.Notes) != 2 || !strings.Contains(d.Notes[0], "x2 cannot reach 50 %") {
		t.Errorf("notes %q; want that x2 and x3 reach 47 %% only", d.Notes)
	}
	for _, r := range table(t, "flare.csv") {
		want := []float64{r.number("x1"), r.number("x2"), r.number("x3"), r.number("x4")}
		if !slices.ContainsFunc(d.Blends, func(b sensory.TrialBlend) bool {
			for i := range want {
				if math.Abs(b.Shares[i]-want[i]) > 0.00005 {
					return false
				}
			}
			return b.Kind == r.text("kind")
		}) {
			t.Errorf("no %s at %v; the print has one", r.text("kind"), want)
		}
	}
}

func choose(n, k int) int {
	out := 1
	for i := 1; i <= k; i++ {
		out = out * (n - k + i) / i
	}
	return out
}

// The number of blends is that of Scheffé, all shares are whole, and a lattice of degree 2 or a centroid bears its model.
func TestSimplexDesigns(t *testing.T) {
	for q := 2; q <= 6; q++ {
		ingredients := names(q)
		for m := 1; m <= 4; m++ {
			d := the(sensory.SimplexLattice(ingredients, m))
			if want := choose(q+m-1, m); len(d.Blends) != want {
				t.Errorf("{%d,%d} lattice: %d blends; want %d", q, m, len(d.Blends), want)
			}
			wholeBlends(t, d)
		}
		c := the(sensory.SimplexCentroid(ingredients))
		if len(c.Blends) != 1<<q-1 {
			t.Errorf("centroid design of %d: %d blends; want %d", q, len(c.Blends), 1<<q-1)
		}
		wholeBlends(t, c)
	}
}

func wholeBlends(t testing.TB, d sensory.MixtureDesign) {
	t.Helper()
	for _, b := range d.Blends {
		var sum float64
		for _, x := range b.Shares {
			if x < 0 || x > 1 {
				t.Errorf("a share of %g", x)
			}
			sum += x
		}
		if math.Abs(sum-1) > 1e-12 {
			t.Errorf("shares %v add up to %g", b.Shares, sum)
		}
	}
}

// Every blend of an extreme vertices design keeps the limits; every corner lies on all limits but one.
func TestExtremeVerticesKeepTheLimits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := rapid.IntRange(2, 5).Draw(t, "q")
		var limits []sensory.ShareLimits
		var lows, highs float64
		for i := range q {
			low := rapid.Float64Range(0, 0.9/float64(q)).Draw(t, "low")
			high := rapid.Float64Range(low+0.01, 1).Draw(t, "high")
			limits = append(limits, sensory.ShareLimits{Ingredient: names(q)[i], Low: low, High: high})
			lows, highs = lows+low, highs+high
		}
		d, err := sensory.ExtremeVertices(limits)
		if highs < 1 {
			if err == nil {
				t.Fatalf("limits %v cannot add up to 1, and gave %v", limits, d)
			}
			return
		}
		if err != nil {
			t.Fatal(err)
		}
		for _, b := range d.Blends {
			var sum float64
			inside := 0
			for i, x := range b.Shares {
				sum += x
				if x < limits[i].Low-1e-9 || x > limits[i].High+1e-9 {
					t.Fatalf("%v breaks the limits %v", b, limits[i])
				}
				if x > limits[i].Low+1e-9 && x < limits[i].High-1e-9 {
					inside++
				}
			}
			if math.Abs(sum-1) > 1e-9 || b.Kind == "vertex" && inside > 1 {
				t.Fatalf("%v: sum %g, %d shares between their limits", b, sum, inside)
			}
		}
	})
}

// Scores that lie on a surface give it back.
func TestFitGivesASurfaceBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := rapid.IntRange(2, 4).Draw(t, "q")
		model := sensory.MixtureModel(rapid.IntRange(0, 2).Draw(t, "model"))
		d := the(sensory.InRandomOrder(the(sensory.SimplexLattice(names(q), 3)), 2, rapid.Uint64().Draw(t, "seed")))
		trial := sensory.MixtureTrial{Ingredients: d.Ingredients, Model: model}
		for _, b := range d.Blends {
			trial.Shares = append(trial.Shares, b.Shares)
			trial.Scores = append(trial.Scores, 0)
		}
		terms := len(the(sensory.FitMixture(trial)).Terms)
		beta := rapid.SliceOfN(rapid.Float64Range(-20, 20), terms, terms).Draw(t, "beta")
		for i, x := range trial.Shares {
			trial.Scores[i] = surface(beta, x)
		}
		f, err := sensory.FitMixture(trial)
		if err != nil {
			t.Fatal(err)
		}
		for j, term := range f.Terms {
			if math.Abs(term.Coefficient-beta[j]) > 1e-8 {
				t.Fatalf("%s = %.12g; want %.12g", term.Name, term.Coefficient, beta[j])
			}
		}
	})
}

// surface works out a Scheffé polynomial whose terms are in order: alone, by two, by three.
func surface(beta, x []float64) float64 {
	var y float64
	k := 0
	next := func(v float64) {
		if k < len(beta) {
			y += beta[k] * v
		}
		k++
	}
	for i := range x {
		next(x[i])
	}
	for i := range x {
		for j := i + 1; j < len(x); j++ {
			next(x[i] * x[j])
		}
	}
	for i := range x {
		for j := i + 1; j < len(x); j++ {
			for l := j + 1; l < len(x); l++ {
				next(x[i] * x[j] * x[l])
			}
		}
	}
	return y
}

// No blend on a fine lattice within the limits beats the best one.
func TestNothingBeatsTheBest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		model := sensory.MixtureModel(rapid.IntRange(0, 2).Draw(t, "model"))
		d := the(sensory.InRandomOrder(the(sensory.SimplexCentroid(names(3))), 2, 1))
		trial := sensory.MixtureTrial{Ingredients: d.Ingredients, Model: model}
		for _, b := range d.Blends {
			trial.Shares = append(trial.Shares, b.Shares)
			trial.Scores = append(trial.Scores, rapid.Float64Range(0, 10).Draw(t, "score"))
		}
		f := the(sensory.FitMixture(trial))
		limit := sensory.ShareLimits{Ingredient: "B", Low: rapid.Float64Range(0, 0.4).Draw(t, "low"), High: rapid.Float64Range(0.5, 1).Draw(t, "high")}
		b, err := sensory.FindBestBlend(f, limit)
		if err != nil {
			t.Fatal(err)
		}
		if b.Shares[1] < limit.Low-1e-9 || b.Shares[1] > limit.High+1e-9 || b.Low > b.Score || b.High < b.Score {
			t.Fatalf("%v breaks the limits %+v", b, limit)
		}
		for _, p := range the(sensory.TriangleGrid(f, 60)) {
			if p.Shares[1] >= limit.Low && p.Shares[1] <= limit.High && p.Score > b.Score+1e-9 {
				t.Fatalf("%v; but %v scores %.9g", b, p.Shares, p.Score)
			}
		}
	})
}

// The optimum of a known surface: of x1 (11.7), x3 (16.4) and 11.4 x1 x3, the peak of the edge is at x1 = (11.4-4.7)/22.8.
func TestBestYarn(t *testing.T) {
	f := the(sensory.FitMixture(yarn(t, sensory.MixtureQuadratic)))
	b := the(sensory.FindBestBlend(f))
	x1 := (11.4 - (16.4 - 11.7)) / (2 * 11.4)
	want := 11.7*x1 + 16.4*(1-x1) + 11.4*x1*(1-x1)
	if math.Abs(b.Shares[0]-x1) > 1e-6 || b.Shares[1] != 0 || math.Abs(b.Score-want) > 1e-9 || !slices.Equal(b.AtLimit, []string{"x2"}) {
		t.Errorf("%v at %v; want %.6f of x1, no x2, score %.6f", b, b.Shares, x1, want)
	}
	if !strings.Contains(b.String(), "the best has no x2 at all") {
		t.Errorf("%v; want a word on the edge", b)
	}
	at := the(sensory.Predict(f, b.Shares))
	if at.Low != b.Low || at.High != b.High {
		t.Errorf("interval of the best %v, of the same blend %v", b.Prediction, at)
	}
	// The blend itself is as likely above as below; far off it is surely worse.
	if same, far := the(sensory.BetterThanPct(b, b.Shares)), the(sensory.BetterThanPct(b, []float64{0, 1, 0})); same != 50 || far < 99.99 {
		t.Errorf("better than itself %.3f %%, than pure x2 %.3f %%; want 50 and nearly 100", same, far)
	}
	capped := the(sensory.FindBestBlend(f, sensory.ShareLimits{Ingredient: "x3", High: 0.5}))
	if !strings.Contains(capped.String(), "the best lies at the most x3 allowed, 50 %: more may be better") {
		t.Errorf("%v; want a word on the limit", capped)
	}
}

func TestFlatAndRivalPeaks(t *testing.T) {
	trial := yarn(t, sensory.MixtureQuadratic)
	for i := range trial.Scores {
		trial.Scores[i] = []float64{6, 7, 5}[i%3] // nothing but scatter
	}
	b := the(sensory.FindBestBlend(the(sensory.FitMixture(trial))))
	if !b.Flat || !strings.Contains(b.String(), "the surface is flat") || !strings.Contains(b.String(), "the blends may all be alike") {
		t.Errorf("%v; want to be told that the surface is flat and means little", b)
	}
	trial = yarn(t, sensory.MixtureQuadratic)
	for i, x := range trial.Shares { // two equal peaks at the corners x1 and x3, a valley between, with a little scatter
		trial.Scores[i] = 9 - 12*(x[0]*x[2]+x[0]*x[1]+x[1]*x[2]) - 4*x[1] + 0.2*float64(i%2)
	}
	b = the(sensory.FindBestBlend(the(sensory.FitMixture(trial))))
	if b.Rival == nil || math.Abs(b.Rival.Shares[0]-b.Shares[0]) < 0.9 || !strings.Contains(b.String(), "another peak") {
		t.Errorf("%v; want a rival at the other corner", b)
	}
}

// Along every contour the surface has the score of the contour, and a closed line closes.
func TestContours(t *testing.T) {
	f := the(sensory.FitMixture(yarn(t, sensory.MixtureQuadratic)))
	lines := the(sensory.TriangleContours(f, []float64{10, 12, 14, 16, 17, 17.3, 40}, 80))
	seen := map[float64]int{}
	for _, l := range lines {
		seen[l.Score]++
		for i := range l.Xs {
			x1 := l.Ys[i] / (math.Sqrt(3) / 2)
			x3 := l.Xs[i] - x1/2
			x1, x2, x3 := math.Max(x1, 0), math.Max(1-x1-x3, 0), math.Max(x3, 0)
			p := the(sensory.Predict(f, []float64{x1, x2, x3}))
			if math.Abs(p.Score-l.Score) > 0.005 {
				t.Errorf("contour %g passes %.4f, %.4f with the score %.4f", l.Score, l.Xs[i], l.Ys[i], p.Score)
			}
			if i > 0 && math.Hypot(l.Xs[i]-l.Xs[i-1], l.Ys[i]-l.Ys[i-1]) > 1.0/80+1e-9 {
				t.Errorf("contour %g jumps from point %d to %d", l.Score, i-1, i)
			}
		}
	}
	if seen[40] != 0 || len(seen) != 6 {
		t.Errorf("lines by score: %v; want some of each but of 40", seen)
	}
	if top := the(sensory.PlaceOnTriangle([]float64{1, 0, 0})); top.X != 0.5 || math.Abs(top.Y-math.Sqrt(3)/2) > 1e-15 {
		t.Errorf("the first ingredient alone lies at %+v; want the top", top)
	}
}
