package drills

import (
	"slices"
	"strings"
	"testing"
)

func TestSet(t *testing.T) {
	set, err := NewSet(7, 23)
	if err != nil {
		t.Fatal(err)
	}
	order, count, texts := Kinds(), map[Kind]int{}, map[string]bool{}
	last := 0
	for i, p := range set.Problems {
		count[p.Kind]++
		texts[p.Text] = true
		at := slices.Index(order, p.Kind)
		if at < last || p.Number != i+1 {
			t.Errorf("problem %d (%s) stands out of order", i+1, p.Kind)
		}
		last = at
		again, err := New(p.Seed, p.Kind)
		if err != nil || again.Text != p.Text {
			t.Errorf("problem %d is not what its own kind and seed give", i+1)
		}
	}
	for _, k := range order {
		if count[k] < 2 || count[k] > 3 {
			t.Errorf("of 23 problems %d are of the kind %s; want 2 or 3", count[k], k)
		}
	}
	if len(texts) != 23 {
		t.Errorf("23 problems are %d different ones", len(texts))
	}
	same, err := NewSet(7, 23)
	if err != nil || strings.Join(same.Key(), "") != strings.Join(set.Key(), "") {
		t.Errorf("the same seed gives another key: %v", err)
	}
	other, err := NewSet(8, 23)
	if err != nil || strings.Join(other.Paper(), "") == strings.Join(set.Paper(), "") {
		t.Errorf("seeds 7 and 8 give one paper: %v", err)
	}
}

// The paper asks and does not tell; the key tells all.
func TestPaperAndKey(t *testing.T) {
	set, err := NewSet(21, 200)
	if err != nil {
		t.Fatal(err)
	}
	paper, key := set.Paper(), set.Key()
	if len(paper) != 201 || len(key) != 201 {
		t.Fatalf("%d and %d pieces; want a head and 200 problems each", len(paper), len(key))
	}
	for i, p := range set.Problems {
		asked, told := strings.ReplaceAll(paper[i+1], "\u00a0", " "), strings.ReplaceAll(key[i+1], "\u00a0", " ")
		answer := strings.TrimSuffix(p.Figure(p.Answer), " "+p.Unit)
		for _, n := range numbersIn(asked) {
			if strings.TrimRight(n, ".") == answer {
				t.Errorf("problem %d tells its answer %s: %s", i+1, answer, asked)
			}
		}
		if !strings.Contains(asked, p.Question) || !strings.Contains(asked, `\_`) {
			t.Errorf("problem %d has no question or no line for the answer", i+1)
		}
		for _, want := range append([]string{p.Text, "Answer: " + p.Right()}, p.Steps[len(p.Steps)-1].String()) {
			if !strings.Contains(told, want) {
				t.Errorf("the key of problem %d lacks %q", i+1, want)
			}
		}
		for _, m := range p.Mistakes {
			if !strings.Contains(told, m.Name) {
				t.Errorf("the key of problem %d lacks %q", i+1, m.Name)
			}
		}
	}
}

func TestSetsThatAreNone(t *testing.T) {
	for want, f := range map[string]func() (Set, error){
		"0 problems":      func() (Set, error) { return NewSet(1, 0) },
		"-3 problems":     func() (Set, error) { return NewSet(1, -3) },
		"201 problems":    func() (Set, error) { return NewSet(1, 201) },
		"no kind \"ale\"": func() (Set, error) { return NewSet(1, 2, "ale") },
	} {
		if _, err := f(); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v; want an error with %q", err, want)
		}
	}
	set, err := NewSet(1, 5, "water", "WATER", "blend")
	if err != nil || len(set.Problems) != 5 {
		t.Fatal(err)
	}
	for _, p := range set.Problems {
		if p.Kind != Water && p.Kind != Blend {
			t.Errorf("a set of water and blend holds %s", p.Kind)
		}
	}
}
