package packing_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/packing"
)

func TestMeanFactorAgainstPrint(t *testing.T) {
	for _, r := range table(t, "mean_factors.csv") {
		got := the(packing.MeanFactor(int(r.number("n"))))
		if want, tol := r.number("k"), r.number("tolerance"); math.Abs(got-want) > tol {
			t.Errorf("MeanFactor(%g) = %.5f; %s gives %g ± %g", r.number("n"), got, r.text("source"), want, tol)
		}
	}
	if k, err := packing.MeanFactor(1); err == nil {
		t.Errorf("MeanFactor(1) = %g and no error", k)
	}
}

// around returns n contents that scatter evenly by ± spread around the mean.
func around(n int, meanML, spreadML float64) []float64 {
	out := make([]float64, n)
	for i := range out {
		out[i] = meanML + spreadML*(1-2*float64(i%2))
	}
	return out
}

func TestCheckBatch(t *testing.T) {
	// Of 30, half at +2 and half at -2 mL: s = 2 √(30/29) = 2.0342, and k = 0.503 lets the mean be 1.0232 mL low.
	for _, c := range []struct {
		mean float64
		want bool
	}{{700, true}, {698.98, true}, {698.97, false}, {710, true}} {
		v := the(packing.CheckBatch(packing.Check{NominalL: 0.7, Batch: 400, ContentsML: around(50, c.mean, 2)}))
		if v.MeanOK != c.want || v.Passed != c.want || v.MeanOf != 30 || v.Looked != 50 {
			t.Errorf("mean %g mL: %v (mean of %d)", c.mean, v, v.MeanOf)
		}
		if want := 700 - 0.503*2*math.Sqrt(30.0/29); math.Abs(v.LeastMeanML-want) > 1e-9 {
			t.Errorf("least mean %.9g mL; by hand %.9g", v.LeastMeanML, want)
		}
	}
	// Exactly the tolerable error short is not defective; a tenth more is; three are accepted of 50 and four are not.
	for short, want := range map[float64]int{15: 0, 15.1: 3} {
		contents := around(50, 705, 2)
		for i := range 3 {
			contents[47+i] = 700 - short
		}
		v := the(packing.CheckBatch(packing.Check{NominalL: 0.7, Batch: 400, ContentsML: contents}))
		if v.Defective != want || !v.ContentsOK || !v.Passed {
			t.Errorf("three bottles short by %g mL: %v", short, v)
		}
		contents[0] = 684
		if v := the(packing.CheckBatch(packing.Check{NominalL: 0.7, Batch: 400, ContentsML: contents})); v.ContentsOK != (want == 0) {
			t.Errorf("one more: %v", v)
		}
	}
	// One bottle short by more than twice the error stops the batch though the plan accepts.
	contents := around(50, 705, 2)
	contents[49] = 669.9
	if v := the(packing.CheckBatch(packing.Check{NominalL: 0.7, Batch: 400, ContentsML: contents})); v.Twice != 1 || !v.ContentsOK || v.Passed {
		t.Errorf("%v: contents %v", v, v.ContentsOK)
	}
}

// The double plan stops with the first sample when that decides, and asks for the second when it does not.
func TestDoublePlanInABatch(t *testing.T) {
	plan := the(packing.DoublePlan(400))
	bad := func(n, defective int) []float64 {
		contents := around(n, 705, 2)
		for i := range defective {
			contents[i] = 680
		}
		return contents
	}
	for _, c := range []struct {
		n, defective, looked int
		ok, fails            bool
	}{{30, 1, 30, true, false}, {30, 3, 30, false, false}, {30, 2, 0, false, true}, {60, 2, 60, true, false}} {
		v, err := packing.CheckBatch(packing.Check{NominalL: 0.7, Batch: 400, ContentsML: bad(c.n, c.defective), Plan: plan})
		if (err != nil) != c.fails || err == nil && (v.Looked != c.looked || v.ContentsOK != c.ok) {
			t.Errorf("%d of %d defective: %v, %v", c.defective, c.n, v, err)
		}
	}
}

// Of a small batch all are measured: the mean is the mean, and k plays no part.
func TestSmallBatch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 99).Draw(t, "n")
		contents := rapid.SliceOfN(rapid.Float64Range(690, 712), n, n).Draw(t, "contents")
		v := the(packing.CheckBatch(packing.Check{NominalL: 0.7, Batch: n, ContentsML: contents}))
		sum := 0.0
		for _, x := range contents {
			sum += x
		}
		if v.FactorK != 0 || v.MeanOf != n || v.LeastMeanML != 700 || v.MeanOK != (sum/float64(n) >= 700-1e-9) {
			t.Fatalf("%v", v)
		}
	})
}

func TestCheckBatchRefuses(t *testing.T) {
	fine := packing.Check{NominalL: 0.7, Batch: 400, ContentsML: around(50, 700, 2)}
	for name, change := range map[string]func(*packing.Check){
		"too few":         func(c *packing.Check) { c.ContentsML = c.ContentsML[:49] },
		"too few of all":  func(c *packing.Check) { c.Batch = 60 },
		"more than batch": func(c *packing.Check) { c.Batch = 40 },
		"no batch":        func(c *packing.Check) { c.Batch = 0 },
		"no size":         func(c *packing.Check) { c.NominalL = 0 },
		"negative":        func(c *packing.Check) { c.ContentsML = append([]float64{-1}, c.ContentsML...) },
		"not a number":    func(c *packing.Check) { c.ContentsML = append([]float64{math.NaN()}, c.ContentsML...) },
		"no decision":     func(c *packing.Check) { c.Plan = packing.Plan{Stages: []packing.Stage{{50, 1, 4}}} },
	} {
		c := fine
		change(&c)
		if v, err := packing.CheckBatch(c); err == nil {
			t.Errorf("%s: %v and no error", name, v)
		}
	}
	destructive := fine
	destructive.Plan = the(packing.DestructivePlan(400))
	if v := the(packing.CheckBatch(destructive)); v.MeanOf != 20 || v.FactorK != 0.640 || v.Looked != 20 {
		t.Errorf("destructive: %v", v)
	}
}
