package packing_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/packing"
)

func TestPlansAgainstPrint(t *testing.T) {
	make := map[string]func(int) (packing.Plan, error){"single": packing.SinglePlan, "double": packing.DoublePlan, "destructive": packing.DestructivePlan}
	for _, r := range table(t, "directive_plans.csv") {
		batches := []int{int(r.number("from"))}
		if to := int(r.number("to")); to > 0 {
			batches = append(batches, to)
		} else {
			batches = append(batches, 10000, 1000000)
		}
		for _, batch := range batches {
			p := the(make[r.text("kind")](batch))
			s := p.Stages[int(r.number("stage"))-1]
			want := packing.Stage{Sample: int(r.number("sample")), Accept: int(r.number("accept")), Reject: int(r.number("reject"))}
			if s != want {
				t.Errorf("%s plan for %d, stage %s: %+v; %s (%s) gives %+v", r.text("kind"), batch, r.text("stage"), s, r.text("source"), r.text("status"), want)
			}
			if (r.text("status") == "memory") && !strings.Contains(p.Source, "memory") {
				t.Errorf("%s plan for %d is from memory and does not say so: %s", r.text("kind"), batch, p.Source)
			}
		}
	}
	// SI 2006/659, schedule 2, 3.6: of fewer than 100 all, at most 5 per cent defective.
	for _, c := range []struct{ batch, accept int }{{1, 0}, {19, 0}, {20, 1}, {99, 4}} {
		if p := the(packing.SinglePlan(c.batch)); p.SampleSize() != c.batch || p.Stages[0].Accept != c.accept {
			t.Errorf("a batch of %d: %v", c.batch, p)
		}
	}
	for name, f := range make {
		if p, err := f(0); err == nil {
			t.Errorf("%s plan for no bottles: %v", name, p)
		}
	}
	for _, f := range []func(int) (packing.Plan, error){packing.DoublePlan, packing.DestructivePlan} {
		if p, err := f(99); err == nil {
			t.Errorf("a batch of 99: %v and no error", p)
		}
	}
}

func TestAQLPlansAgainstTheTable(t *testing.T) {
	rows := table(t, "aql_single_normal.csv")
	levels := map[string]float64{"0.65": 0.65, "1.0": 1, "1.5": 1.5, "2.5": 2.5, "4.0": 4, "6.5": 6.5}
	for name, level := range levels {
		for i, r := range rows {
			at, step := i, 0
			for seen := r.text(name); seen == "-" || seen == "down" || seen == "up"; seen = rows[at].text(name) {
				switch seen {
				case "down":
					step = 1
				case "up":
					step = -1
				case "-": // as the cell next to it: the arrow of a column's head goes down, of its foot up
					if step == 0 {
						step = 1
						if at > 8 {
							step = -1
						}
					}
				}
				at += step
			}
			lot := 500001
			if to := int(r.number("lot_to")); to > 0 {
				lot = to
			}
			p := the(packing.AQLPlan(lot, level))
			want := packing.Stage{Sample: min(int(rows[at].number("sample")), lot), Reject: int(rows[at].number(name))}
			want.Accept = want.Reject - 1
			if p.Stages[0] != want {
				t.Errorf("AQLPlan(%d, %s) = %+v; MIL-STD-105E, table II-A, gives %+v", lot, name, p.Stages[0], want)
			}
			if letter := rows[at].text("letter"); !strings.HasSuffix(p.Name, "letter "+letter) {
				t.Errorf("AQLPlan(%d, %s) is %q; MIL-STD-105E gives letter %s", lot, name, p.Name, letter)
			}
		}
	}
	for _, c := range []struct {
		lot   int
		level float64
	}{{1, 1}, {100, 3}, {100, 0}, {100, math.NaN()}} {
		if p, err := packing.AQLPlan(c.lot, c.level); err == nil {
			t.Errorf("AQLPlan(%d, %g) = %v and no error", c.lot, c.level, p)
		}
	}
}

func TestOperatingCharacteristicAgainstPrint(t *testing.T) {
	for _, r := range table(t, "operating_characteristic.csv") {
		c := int(r.number("accept"))
		p := packing.Plan{Stages: []packing.Stage{{Sample: int(r.number("n")), Accept: c, Reject: c + 1}}}
		got := 100 * the(packing.AcceptChance(p, r.number("defective_pct")/100))
		if want, tol := r.number("chance_pct"), r.number("tolerance_pct"); math.Abs(got-want) > tol {
			t.Errorf("n = %g, c = %d, %g %% defective: accepted with %.3f %%; print gives %g ± %g", r.number("n"), c, r.number("defective_pct"), got, want, tol)
		}
	}
}

// Counted out: every way to mark the defectives of a small batch, each way equally likely.
func TestBatchChanceAgainstCounting(t *testing.T) {
	plans := []packing.Plan{
		{Stages: []packing.Stage{{3, 0, 1}}},
		{Stages: []packing.Stage{{4, 1, 2}}},
		{Stages: []packing.Stage{{3, 0, 2}, {3, 1, 2}}},
		{Stages: []packing.Stage{{2, -1, 2}, {2, 0, 2}, {3, 2, 3}}},
	}
	const batch = 10
	for _, p := range plans {
		accepted, all := make([]int, batch+1), make([]int, batch+1)
		for marks := 0; marks < 1<<batch; marks++ {
			defective := 0
			for i := range batch {
				defective += marks >> i & 1
			}
			all[defective]++
			found, drawn := 0, 0
			for _, s := range p.Stages {
				for range s.Sample {
					found += marks >> drawn & 1
					drawn++
				}
				if found <= s.Accept {
					accepted[defective]++
				}
				if found <= s.Accept || found >= s.Reject {
					break
				}
			}
		}
		for d := range all {
			want := float64(accepted[d]) / float64(all[d])
			if got := the(packing.AcceptChanceOfBatch(p, batch, d)); math.Abs(got-want) > 1e-12 {
				t.Errorf("%v, %d of %d defective: %.15g; counted %d of %d, %.15g", p, d, batch, got, accepted[d], all[d], want)
			}
		}
	}
}

func drawPlan(t *rapid.T) packing.Plan {
	var p packing.Plan
	reject := 0
	n := rapid.IntRange(1, 3).Draw(t, "stages")
	for i := range n {
		accept := rapid.IntRange(max(reject-3, -1), reject+2).Draw(t, "accept")
		gap := rapid.IntRange(1, 3).Draw(t, "gap")
		if i == n-1 {
			accept, gap = max(accept, 0), 1
		}
		reject = max(reject, accept+gap, 1)
		if i == n-1 {
			accept = reject - 1
		}
		p.Stages = append(p.Stages, packing.Stage{Sample: rapid.IntRange(1, 60).Draw(t, "sample"), Accept: accept, Reject: reject})
	}
	return p
}

func TestChancesBehave(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPlan(t)
		a := rapid.Float64Range(0, 1).Draw(t, "a")
		b := rapid.Float64Range(a, 1).Draw(t, "b")
		x, y := the(packing.PlanOutcome(p, a)), the(packing.PlanOutcome(p, b))
		if x.Accept < y.Accept-1e-12 {
			t.Fatalf("%v accepts %g with %.15g and the worse %g with %.15g", p, a, x.Accept, b, y.Accept)
		}
		if x.Sampled < float64(p.Stages[0].Sample)-1e-9 || x.Sampled > float64(p.SampleSize())+1e-9 {
			t.Fatalf("%v draws %g on the average", p, x.Sampled)
		}
		if got := the(packing.AcceptChance(p, 0)); p.Stages[len(p.Stages)-1].Accept >= 0 && math.Abs(got-1) > 1e-12 {
			t.Fatalf("%v accepts a faultless batch with %.15g", p, got)
		}
		// A batch that grows without end is a process.
		const batch = 4000000
		process := the(packing.AcceptChance(p, 0.25))
		if got := the(packing.AcceptChanceOfBatch(p, batch, batch/4)); math.Abs(got-process) > 1e-4 {
			t.Fatalf("%v: batch %.9g, process %.9g", p, got, process)
		}
	})
}

func TestQualityAt(t *testing.T) {
	for _, batch := range []int{100, 1000, 10000} {
		single, double := the(packing.SinglePlan(batch)), the(packing.DoublePlan(batch))
		for _, chance := range []float64{0.95, 0.5, 0.1} {
			q := the(packing.QualityAt(single, chance))
			if back := the(packing.AcceptChance(single, q)); math.Abs(back-chance) > 1e-9 {
				t.Errorf("QualityAt(%v, %g) = %g, which is accepted with %.12g", single, chance, q, back)
			}
			// The two plans of the directive are meant to have the same effect.
			if d := the(packing.QualityAt(double, chance)); math.Abs(d-q) > 0.012 {
				t.Errorf("a batch of %d: the single plan accepts with %g at %.4f defective and the double one at %.4f", batch, chance, q, d)
			}
		}
	}
	p := the(packing.SinglePlan(100))
	for _, bad := range []float64{0, 1, -0.1, math.NaN()} {
		if got, err := packing.QualityAt(p, bad); err == nil {
			t.Errorf("QualityAt(%g) = %g and no error", bad, got)
		}
	}
	if got, err := packing.QualityAt(packing.Plan{Stages: []packing.Stage{{3, 3, 4}}}, 0.5); err == nil {
		t.Errorf("a plan that accepts everything: %g and no error", got)
	}
}

func TestPlansThatDoNotDecide(t *testing.T) {
	for name, stages := range map[string][]packing.Stage{
		"none":           {},
		"no sample":      {{0, 1, 2}},
		"rejects all":    {{10, -1, 0}, {10, 0, 1}},
		"gap at the end": {{10, 1, 3}},
		"upside down":    {{10, 3, 2}},
		"going down":     {{10, 1, 5}, {10, 2, 3}},
		"below -1":       {{10, -2, 3}, {10, 2, 3}},
		"too many":       {{2000000, 1, 2}},
	} {
		p := packing.Plan{Stages: stages}
		if got, err := packing.AcceptChance(p, 0.1); err == nil {
			t.Errorf("%s: %g and no error", name, got)
		}
		if got, err := packing.AcceptChanceOfBatch(p, 5000000, 1); err == nil {
			t.Errorf("%s: %g and no error", name, got)
		}
		if got, err := packing.QualityAt(p, 0.5); err == nil {
			t.Errorf("%s: %g and no error", name, got)
		}
	}
	p := the(packing.SinglePlan(100))
	for _, c := range [][2]int{{49, 1}, {100, -1}, {100, 101}} {
		if got, err := packing.AcceptChanceOfBatch(p, c[0], c[1]); err == nil {
			t.Errorf("%d of %d defective: %g and no error", c[1], c[0], got)
		}
	}
	for _, bad := range []float64{-0.1, 1.1, math.NaN()} {
		if got, err := packing.AcceptChance(p, bad); err == nil {
			t.Errorf("a share of %g: %g and no error", bad, got)
		}
	}
}
