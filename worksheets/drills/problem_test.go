package drills

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"swanneck/worksheets/drills/walltable"
)

// Problems of every kind, 2,000 of each from seeds drawn at random, are what they should be.
func TestProblems(t *testing.T) {
	tables := map[walltable.Sort]walltable.Table{}
	for _, s := range walltable.Sorts() {
		tb, err := walltable.New(s, walltable.Options{})
		if err != nil {
			t.Fatal(err)
		}
		tables[s] = tb
	}
	texts := map[string]bool{}
	questions := map[Kind]map[string]int{}
	for _, k := range Kinds() {
		questions[k] = map[string]int{}
		t.Run(strings.ReplaceAll(string(k), " ", "_"), func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				seed := rapid.Int64().Draw(t, "seed")
				p, err := New(seed, k)
				if err != nil {
					t.Fatalf("New(%d, %q): %v", seed, k, err)
				}
				texts[p.Text] = true
				questions[k][p.Question]++
				stepsLeadToTheAnswer(t, p)
				findsStandInThePrintedTables(t, p, tables)
				mistakesAreRecognised(t, p)
				checkKnowsTheAnswer(t, p)
				plausible(t, p)
			})
		})
	}
	least, different := 200, 10_000
	if testing.Short() { // rapid draws a fifth
		least, different = least/5, different/5
	}
	for k, n := range map[Kind]int{Make: 2, Blend: 2} {
		for q, times := range questions[k] {
			if times < least {
				t.Errorf("%s: %d problems ask %q; want %d at least", k, times, q, least)
			}
		}
		if len(questions[k]) != n {
			t.Errorf("%s asks %d different questions; want %d", k, len(questions[k]), n)
		}
	}
	if len(texts) < different {
		t.Errorf("%d different problems; want %d at least", len(texts), different)
	}
}

func number(t *rapid.T, text string) float64 {
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// A person who follows the printed steps with the printed tables comes to the answer within the tolerance.
func stepsLeadToTheAnswer(t *rapid.T, p Problem) {
	if len(p.Steps) == 0 {
		t.Fatalf("%s, seed %d has no steps", p.Kind, p.Seed)
	}
	written := map[string]bool{} // figures that may stand in a step: of the problem, and of what came before
	for _, s := range p.Steps {
		for _, f := range s.Finds {
			written[f.Figure] = true
		}
		if s.Reckon != "" {
			x, err := arithmetic(s.Reckon)
			if err != nil {
				t.Fatalf("%s, seed %d, step %q: %v", p.Kind, p.Seed, s.Do, err)
			}
			unit := math.Pow(10, -float64(decimalsOf(s.Figure)))
			if math.Abs(x-number(t, s.Figure)) > unit/2*(1+1e-6)+1e-9 {
				t.Errorf("%s, seed %d: %s is %v; the step says %s", p.Kind, p.Seed, s.Reckon, x, s.Figure)
			}
		} else if len(s.Finds) == 0 || s.Figure != s.Finds[0].Figure {
			t.Errorf("%s, seed %d, step %q gives %s without saying where from", p.Kind, p.Seed, s.Do, s.Figure)
		}
		for _, n := range numbersIn(s.Reckon) {
			if !written[n] && !inText(p, n) && !ofTheTable(s, n) {
				t.Errorf("%s, seed %d, step %q uses %s, which nobody has found", p.Kind, p.Seed, s.Reckon, n)
			}
		}
		written[s.Figure] = true
	}
	last := number(t, p.Steps[len(p.Steps)-1].Figure)
	if p.Tolerance == 0 {
		last = math.Floor(last)
	}
	if math.Abs(last-p.Answer) > p.Tolerance {
		t.Errorf("%s, seed %d: the steps lead to %v; the answer is %v ± %v %s", p.Kind, p.Seed, last, p.Answer, p.Tolerance, p.Unit)
	}
}

func decimalsOf(figure string) int {
	_, behind, _ := strings.Cut(figure, ".")
	return len(behind)
}

func numbersIn(reckon string) []string {
	return strings.FieldsFunc(reckon, func(r rune) bool { return (r < '0' || r > '9') && r != '.' })
}

// inText says whether a number stands in the problem, as it is or as millilitres.
func inText(p Problem, n string) bool {
	words := numbersIn(p.Text)
	for i, w := range words {
		words[i] = strings.TrimRight(w, ".")
	}
	x, err := strconv.ParseFloat(n, 64)
	return err == nil && (slices.Contains(words, n) || slices.Contains(words, strconv.FormatFloat(x*1000, 'f', -1, 64)))
}

// ofTheTable says whether a number is 100, 1000, a row of the step, or the share between two rows.
func ofTheTable(s Step, n string) bool {
	if n == "100" || n == "1000" {
		return true
	}
	for _, f := range s.Finds {
		if strings.HasPrefix(f.Row, n+" ") {
			return true
		}
	}
	x, err := strconv.ParseFloat(n, 64)
	return err == nil && len(s.Finds) == 2 && x < 1
}

// Every figure that is looked up stands in the table as it is usually printed.
func findsStandInThePrintedTables(t *rapid.T, p Problem, tables map[walltable.Sort]walltable.Table) {
	for _, s := range p.Steps {
		for _, f := range s.Finds {
			row, column := given(f.down).String(), given(f.across).String()
			if f.Table == walltable.Mass || f.Table == walltable.Weight {
				tens := math.Floor(f.down/10) * 10
				row, column = fmt.Sprint(tens), given(f.down-tens).String()
			}
			tb := tables[f.Table]
			i, j := slices.Index(tb.Rows, row), slices.Index(tb.Heads, column)
			if i < 0 || j < 0 {
				t.Fatalf("%s, seed %d: the table %s has no row %s or column %s", p.Kind, p.Seed, f.Table, row, column)
			}
			if tb.Cells[i][j] != f.Figure {
				t.Errorf("%s, seed %d: the table %s prints %s at %s, %s; the step says %s", p.Kind, p.Seed, f.Table, tb.Cells[i][j], row, column, f.Figure)
			}
		}
	}
}

// Each usual mistake is recognised by its name, and none passes as right.
func mistakesAreRecognised(t *rapid.T, p Problem) {
	least := map[Kind]int{TrueStrength: 3, Reading: 2, Reduction: 3, Water: 3, Make: 3, Blend: 2, PureAlcohol: 4, TrueProof: 3, ProofGallons: 4, Bottles: 2}
	if len(p.Mistakes) < least[p.Kind] {
		t.Errorf("%s, seed %d offers %d mistakes; want %d", p.Kind, p.Seed, len(p.Mistakes), least[p.Kind])
	}
	for _, m := range p.Mistakes {
		if m.How == "" {
			t.Errorf("%s: the mistake %q says nothing", p.Kind, m.Name)
		}
		answer := fmt.Sprintf("%.*f %s", p.Decimals+1, m.Figure, p.Unit)
		if p.Tolerance == 0 {
			answer = p.Figure(m.Figure)
		}
		v := p.Check(answer)
		if v.Right || v.Mistake != m.Name {
			t.Errorf("%s, seed %d: Check(%q) = %v; want %q", p.Kind, p.Seed, answer, v, m.Name)
		}
		if math.Abs(m.Figure-p.Answer) <= apart*p.Tolerance {
			t.Errorf("%s, seed %d: %q leads to %v, within %d tolerances of %v", p.Kind, p.Seed, m.Name, m.Figure, apart, p.Answer)
		}
	}
}

// The answer is right, with a point and with a comma, and so is what lies within the tolerance; what lies outside is not.
func checkKnowsTheAnswer(t *rapid.T, p Problem) {
	share := rapid.Float64Range(-0.99, 0.99).Draw(t, "share of the tolerance")
	x := p.Answer + share*p.Tolerance
	for _, answer := range []string{
		p.Figure(p.Answer),
		strconv.FormatFloat(x, 'f', 6, 64) + " " + p.Unit,
		strings.Replace(strconv.FormatFloat(x, 'f', 6, 64), ".", ",", 1) + " " + p.Unit,
	} {
		if v := p.Check(answer); !v.Right {
			t.Errorf("%s, seed %d: Check(%q) = %v; the answer is %v ± %v", p.Kind, p.Seed, answer, v, p.Answer, p.Tolerance)
		}
	}
	off := max(1.5*p.Tolerance, 1)
	if p.Tolerance != 0 {
		off = 1.5 * p.Tolerance
	}
	v := p.Check(strconv.FormatFloat(p.Answer-off, 'f', -1, 64) + " " + p.Unit)
	if v.Right || math.Abs(v.OffBy+off) > 1e-6*(1+off) {
		t.Errorf("%s, seed %d: %v less than the answer %v is said to be %v", p.Kind, p.Seed, off, p.Answer, v)
	}
}

// Figures are such as occur in a still house.
func plausible(t *rapid.T, p Problem) {
	ranges := map[Kind][2]float64{
		TrueStrength: {30, 82}, Reading: {32, 78}, Reduction: {20, 3200}, Water: {20, 3300}, Make: {20, 1050}, Blend: {20, 1200},
		PureAlcohol: {35, 2000}, TrueProof: {70, 158}, ProofGallons: {40, 1450}, Bottles: {130, 2700},
	}
	if r := ranges[p.Kind]; p.Answer < r[0] || p.Answer > r[1] {
		t.Errorf("%s, seed %d: the answer is %v %s; %v to %v is plausible", p.Kind, p.Seed, p.Answer, p.Unit, r[0], r[1])
	}
	if p.Tolerance > 0.015*p.Answer {
		t.Errorf("%s, seed %d: a tolerance of %v in %v %s is no test", p.Kind, p.Seed, p.Tolerance, p.Answer, p.Unit)
	}
	for _, n := range numbersIn(p.Text) {
		if n = strings.TrimRight(n, "."); decimalsOf(n) > 1 {
			t.Errorf("%s, seed %d: %s is no round number: %s", p.Kind, p.Seed, n, p.Text)
		}
	}
}

func TestSameSeedSameProblem(t *testing.T) {
	for _, k := range Kinds() {
		texts := map[string]bool{}
		for seed := range int64(20) {
			one, err1 := New(seed, k)
			two, err2 := New(seed, k)
			if err := errors.Join(err1, err2); err != nil {
				t.Fatal(err)
			}
			if one.String() != two.String() || one.Solution() != two.Solution() {
				t.Errorf("%s, seed %d gives another problem the second time", k, seed)
			}
			texts[one.Text] = true
		}
		if len(texts) != 20 {
			t.Errorf("%s: 20 seeds give %d problems; want 20", k, len(texts))
		}
	}
}

func TestAnyKind(t *testing.T) {
	seen := map[Kind]bool{}
	for seed := range int64(200) {
		p, err := New(seed, "")
		if err != nil {
			t.Fatal(err)
		}
		seen[p.Kind] = true
	}
	if len(seen) != len(Kinds()) {
		t.Errorf("200 seeds without a kind give %d kinds; want all %d", len(seen), len(Kinds()))
	}
	if _, err := New(1, "proofreading"); err == nil || !strings.Contains(err.Error(), "proofreading") {
		t.Errorf("New(1, proofreading) = %v; want an error that names it", err)
	}
}
