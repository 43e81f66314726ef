package sensory_test

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/mathlib/sensory"
)

func methodNamed(t testing.TB, name string) sensory.Method {
	for _, m := range []sensory.Method{sensory.Triangle, sensory.DuoTrio, sensory.Tetrad, sensory.Paired} {
		if m.String() == name {
			return m
		}
	}
	t.Fatalf("no method %q", name)
	return 0
}

func TestPrintedTables(t *testing.T) {
	for _, c := range []struct {
		file, source string
		method       []sensory.Method
	}{
		{"triangle_table.csv", "ISO 4120", []sensory.Method{sensory.Triangle, sensory.Tetrad}},
		{"duotrio_table.csv", "ISO 10399", []sensory.Method{sensory.DuoTrio, sensory.Paired}},
	} {
		checked := 0
		for _, r := range table(t, c.file) {
			n := int(r.number("tasters"))
			for column := range r.fields {
				level, ok := strings.CutPrefix(column, "needed_")
				if !ok {
					continue
				}
				pct := the(strconv.ParseFloat(strings.TrimSuffix(level, "_pct"), 64))
				want, printed := r.optional(column)
				for _, m := range c.method {
					got, err := sensory.RightNeeded(m, n, pct)
					checked++
					switch {
					case !printed && err == nil:
						t.Errorf("RightNeeded(%v, %d, %g %%) = %d; %s gives none", m, n, pct, got, c.source)
					case printed && (err != nil || got != int(want)):
						t.Errorf("RightNeeded(%v, %d, %g %%) = %d, %v; %s gives %g", m, n, pct, got, err, c.source, want)
					}
				}
			}
		}
		if checked < 200 {
			t.Errorf("%s: only %d entries were checked", c.file, checked)
		}
	}
}

func TestPrintedPreferenceTable(t *testing.T) {
	for _, r := range table(t, "paired_table.csv") {
		n := int(r.number("votes"))
		for _, level := range []float64{5, 1} {
			want := int(r.number(fmt.Sprintf("needed_%g_pct", level)))
			v := sensory.Votes{First: "new", Second: "old", ForFirst: want, ForSecond: n - want, Tasters: n, LevelPct: level}
			p := the(sensory.Preference(v))
			if p.Needed != want || !p.Shown {
				t.Errorf("Preference of %d: %d votes needed at %g %%; ISO 5495 gives %d", n, p.Needed, level, want)
			}
			d := the(sensory.Difference(sensory.Answers{Method: sensory.Paired, Right: n - want, Wrong: want, Tasters: n, LevelPct: level, TwoSided: true}))
			if d.PValue != p.PValue || d.Needed != want || !d.Shown {
				t.Errorf("two-sided Difference of %d: p = %g, %d needed; Preference has %g, %d", n, d.PValue, d.Needed, p.PValue, want)
			}
		}
	}
}

func TestPrintedDPrimes(t *testing.T) {
	for _, r := range table(t, "dprime.csv") {
		m := methodNamed(t, r.text("method"))
		share, d := r.number("right_pct"), r.number("d_prime")
		if got := the(sensory.RightPct(m, d)); math.Abs(got-share) > r.number("tol_share") {
			t.Errorf("RightPct(%v, %g) = %.6f %%; the print gives %g ± %g", m, d, got, share, r.number("tol_share"))
		}
		if got := the(sensory.DPrimeOf(m, share)); math.Abs(got-d) > r.number("tol_d") {
			t.Errorf("DPrimeOf(%v, %g %%) = %.7f; the print gives %g ± %g", m, share, got, d, r.number("tol_d"))
		}
	}
}

func TestPrintedTestsOfDifference(t *testing.T) {
	for _, r := range table(t, "discrimination.csv") {
		right, n := int(r.number("right")), int(r.number("tasters"))
		d := the(sensory.Difference(sensory.Answers{Method: methodNamed(t, r.text("method")), Right: right, Wrong: n - right, Tasters: n, SuretyPct: r.number("surety_pct")}))
		for _, c := range []struct {
			what      string
			got, want float64
			tol       string
		}{{"p", d.PValue, r.number("p"), "p_tol"}, {"d′", d.DPrime, r.number("d_prime"), "d_tol"},
			{"low limit of d′", d.DPrimeLow, r.number("d_low"), "d_tol"}, {"high limit of d′", d.DPrimeHigh, r.number("d_high"), "d_tol"}} {
			if math.Abs(c.got-c.want) > r.number(c.tol) {
				t.Errorf("%s of %d of %d: %.6f; the print gives %g", c.what, right, n, c.got, c.want)
			}
		}
	}
}

// Source: stored example output of the R package sensR: discrim(20, 75, "triangle", pd0 = 0.2, test = "similarity") gives p =
// 0.0003061, and findcr(25, 1/3, pd0 = 0.2, "similarity") gives 7; read.
func TestPrintedSimilarity(t *testing.T) {
	s := the(sensory.Similar(sensory.Answers{Method: sensory.Triangle, Right: 20, Wrong: 55, Tasters: 75, TellerPct: 20}))
	if math.Abs(s.PValue-0.0003061) > 5e-8 || !s.Shown {
		t.Errorf("%v, p = %.8f; the print gives 0.0003061", s, s.PValue)
	}
	if s := the(sensory.Similar(sensory.Answers{Method: sensory.Triangle, Right: 8, Wrong: 17, Tasters: 25, TellerPct: 20})); s.AtMost != 7 || s.Shown {
		t.Errorf("%v: at most %d; the print gives 7", s, s.AtMost)
	}
	if s := the(sensory.Similar(sensory.Answers{Method: sensory.Triangle, Wrong: 3, Tasters: 3, TellerPct: 20})); s.AtMost != -1 || s.Shown {
		t.Errorf("%v: three tasters show no likeness", s)
	}
}

func TestPrintedPowers(t *testing.T) {
	for _, r := range table(t, "power.csv") {
		f := sensory.PanelFor{Method: methodNamed(t, r.text("method")), PowerPct: r.number("wanted_power_pct")}
		f.DPrime, _ = r.optional("d_prime")
		f.TellersPct, _ = r.optional("tellers_pct")
		if want, ok := r.optional("power_pct"); ok {
			if got := the(sensory.Power(f, int(r.number("tasters")))); math.Abs(got-want) > r.number("power_tol") {
				t.Errorf("Power(%+v, %s) = %.6f %%; the print gives %g", f, r.text("tasters"), got, want)
			}
		}
		if got := the(sensory.PanelSize(f)); got.First != int(r.number("first")) {
			t.Errorf("PanelSize(%+v): smallest panel %d; the print gives %s", f, got.First, r.text("first"))
		}
	}
}

func TestPrintedPanels(t *testing.T) {
	checked := 0
	for _, r := range table(t, "triangle_panels.csv") {
		for _, beta := range []string{"20", "10", "5", "1", "0.1"} {
			want, ok := r.optional("beta_" + beta)
			if !ok {
				continue
			}
			f := sensory.PanelFor{TellersPct: r.number("pd_pct"), LevelPct: r.number("alpha_pct"), PowerPct: 100 - the(strconv.ParseFloat(beta, 64))}
			checked++
			if got := the(sensory.PanelSize(f)); got.First != int(want) {
				t.Errorf("PanelSize(%+v): smallest panel %d; ISO 4120 gives %g", f, got.First, want)
			}
		}
	}
	if checked < 100 {
		t.Errorf("only %d panels were checked", checked)
	}
}

// Every panel from Tasters on reaches the power, and the one before does not.
func TestPanelKeepsItsPower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := sensory.PanelFor{Method: sensory.Method(rapid.IntRange(0, 3).Draw(t, "method")), DPrime: rapid.Float64Range(0.8, 3).Draw(t, "d"),
			LevelPct: rapid.Float64Range(0.1, 20).Draw(t, "level"), PowerPct: rapid.Float64Range(30, 99).Draw(t, "power")}
		f.TwoSided = f.Method == sensory.Paired && rapid.Bool().Draw(t, "two-sided")
		p, err := sensory.PanelSize(f)
		if err != nil {
			t.Fatal(err)
		}
		if p.Tasters > 1 {
			if got := the(sensory.Power(f, p.Tasters-1)); got >= f.PowerPct {
				t.Fatalf("%+v: %d tasters have %.4f %% already", p, p.Tasters-1, got)
			}
		}
		for n := p.Tasters; n < p.Tasters+60; n++ {
			if got := the(sensory.Power(f, n)); got < f.PowerPct {
				t.Fatalf("%+v: %d tasters have only %.4f %%", p, n, got)
			}
		}
		if got := the(sensory.Power(f, p.First)); got < f.PowerPct || p.First > p.Tasters {
			t.Fatalf("%+v: the smallest panel has %.4f %%", p, got)
		}
	})
}

// The way there and back, and what a difference of nothing and of very much give.
func TestPsychometricFunctions(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := sensory.Method(rapid.IntRange(0, 3).Draw(t, "method"))
		d := rapid.Float64Range(0.05, 5).Draw(t, "d")
		share := the(sensory.RightPct(m, d))
		if back := the(sensory.DPrimeOf(m, share)); math.Abs(back-d) > 1e-6 {
			t.Fatalf("%v: d′ = %g gives %.9f %% and back %.9g", m, d, share, back)
		}
		if more := the(sensory.RightPct(m, d+0.01)); more <= share {
			t.Fatalf("%v: more difference, fewer right: %g at %g", m, more, d)
		}
	})
	for _, m := range []sensory.Method{sensory.Triangle, sensory.DuoTrio, sensory.Tetrad, sensory.Paired} {
		if got := the(sensory.RightPct(m, 0)); math.Abs(got-m.GuessPct()) > 1e-9 {
			t.Errorf("%v: d′ = 0 gives %.12f %%; guessing gives %.12f", m, got, m.GuessPct())
		}
		if got := the(sensory.RightPct(m, 30)); math.Abs(got-100) > 1e-9 {
			t.Errorf("%v: d′ = 30 gives %.12f %%; want 100", m, got)
		}
		if d := the(sensory.DPrimeOf(m, m.GuessPct()-5)); d != 0 {
			t.Errorf("%v: fewer right than by guessing give d′ = %g; want 0", m, d)
		}
	}
}

// The limits of d′ grow with the answers, hold the estimate, and all right is without an upper limit.
func TestLimitsHoldTheEstimate(t *testing.T) {
	for _, m := range []sensory.Method{sensory.Triangle, sensory.DuoTrio, sensory.Tetrad, sensory.Paired} {
		last := sensory.DifferenceTest{DPrimeLow: -1}
		for right := 0; right <= 12; right++ {
			d := the(sensory.Difference(sensory.Answers{Method: m, Right: right, Wrong: 12 - right, Tasters: 12}))
			if d.DPrimeLow > d.DPrime || d.DPrime > d.DPrimeHigh || d.DPrimeLow < last.DPrimeLow || d.PValue > 1 || right > 0 && d.PValue >= last.PValue {
				t.Errorf("%v %d of 12: %+v after %+v", m, right, d, last)
			}
			if math.IsInf(d.DPrime, 1) != (right == 12) || math.IsInf(d.DPrimeHigh, 1) != (right == 12) {
				t.Errorf("%v %d of 12: d′ = %g, up to %g", m, right, d.DPrime, d.DPrimeHigh)
			}
			last = d
		}
	}
}
