package cell

import (
	"fmt"
	"go/types"
	"testing"
)

func names(objs []types.Object) string {
	s := ""
	for _, o := range objs {
		s += o.Name() + " "
	}
	return s
}

func TestEffects(t *testing.T) {
	s := NewSession(toy)
	for i, c := range []struct{ src, defines, uses, changes string }{
		{"a := 1\nxs := []float64{1, 2}\nm := map[string]int{}", "a xs m ", "", ""},
		{"b := a + len(xs)", "b ", "a xs ", ""},
		{"xs[0] = 3", "", "xs ", "xs "},
		{"m[\"k\"]++", "", "m ", "m "},
		{"func f() { a++ }", "f ", "a ", ""},
		{"f()", "", "a f ", "a "},
		{"func g(v []float64) { v[0] = 1 }\nfunc h(v []float64) float64 { return v[0] }", "g h ", "", ""},
		{"g(xs)", "", "xs g ", "xs "},
		{"h(xs)", "", "xs h ", ""},
		{"sort.Float64s(xs)", "", "xs ", "xs "},
		{"fmt.Println(xs, m)", "", "xs m ", ""},
		{"p := &a", "p ", "a ", "a "},
		{"type T struct{ n int }\nfunc (t *T) Add() { t.n++ }\nfunc (t T) Get() int { return t.n }", "T Add Get ", "", ""},
		{"t := T{}", "t ", "T ", ""},
		{"t.Add()", "", "t ", "t "},
		{"t.Get()", "", "t ", ""},
		{"a := \"other\"", "a ", "", ""},
	} {
		ch, err := s.Check(fmt.Sprintf("cell %d", i), c.src)
		if err != nil {
			t.Fatalf("%q: %v", c.src, err)
		}
		e := ch.Effects()
		ch.Commit(len(ch.Chunks), 0)
		want := c.defines
		if i == 12 {
			want = "T " // methods belong to their type
		}
		if names(e.Defines) != want || names(e.Uses) != c.uses || names(e.Changes) != c.changes {
			t.Errorf("%q: defines %q uses %q changes %q; want %q %q %q", c.src, names(e.Defines), names(e.Uses), names(e.Changes), want, c.uses, c.changes)
		}
	}
}

func TestStale(t *testing.T) {
	s := NewSession(toy)
	var cells []Effects
	for i, src := range []string{
		"a := 1",                    // 0
		"b := 2",                    // 1
		"c := a + b",                // 2
		"xs := []int{b}",            // 3
		"xs[0] = a",                 // 4
		"fmt.Println(xs)",           // 5
		"fmt.Println(b)",            // 6
		"func f() int { return c }", // 7
		"f()",                       // 8
	} {
		ch, err := s.Check(fmt.Sprint(i), src)
		if err != nil {
			t.Fatal(err)
		}
		cells = append(cells, ch.Effects())
		ch.Commit(len(ch.Chunks), 0)
	}
	for edited, want := range map[int]string{
		0: "[2 4 5 7 8]",
		1: "[2 3 4 5 6 7 8]",
		2: "[7 8]",
		3: "[4 5]",
		4: "[5]",
		5: "[]",
		8: "[]",
	} {
		if got := fmt.Sprint(Stale(cells, edited)); got != want {
			t.Errorf("after an edit of cell %d: %s are stale; want %s", edited, got, want)
		}
	}
}
