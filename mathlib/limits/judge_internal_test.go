package limits

import (
	"io/fs"
	"math"
	"strings"
	"testing"
	"testing/fstest"

	"swanneck/mathlib/alcoholometry"
	"swanneck/mathlib/quantity"
)

// Every answer for a maximum, a strict maximum, a minimum and a band; equal to the limit is within, but for a strict one.
func TestJudge(t *testing.T) {
	inf := math.Inf(1)
	atMost := rule{low: -inf, high: 10}
	below := rule{low: -inf, high: 10, strict: true}
	atLeast := rule{low: 5, high: inf}
	band := rule{low: 1.5, high: 2}
	nothing := rule{low: -inf, high: 0}
	for _, c := range []struct {
		name         string
		r            rule
		low, high    float64
		exact, bound bool
		want         Answer
	}{
		{"max, below", atMost, 3, 4, true, true, Within},
		{"max, at it", atMost, 10, 10, true, true, Within},
		{"max, across", atMost, 9, 11, true, true, CannotTell},
		{"max, above", atMost, 10.1, 12, true, true, Over},
		{"max, upper bound below", atMost, 0, 9, false, true, Within},
		{"max, upper bound above", atMost, 0, 12, false, true, CannotTell},
		{"max, print below", atMost, 1, 9, false, false, CannotTell},
		{"max, print above", atMost, 11, 90, false, false, Over},
		{"max, print at it", atMost, 10, 90, false, false, CannotTell},
		{"max, nothing", atMost, 0, inf, false, false, CannotTell},
		{"strict, below", below, 3, 9.99, true, true, Within},
		{"strict, at it", below, 10, 10, true, true, Over},
		{"strict, up to it", below, 3, 10, true, true, CannotTell},
		{"min, above", atLeast, 6, 7, true, true, Within},
		{"min, at it", atLeast, 5, 5, true, true, Within},
		{"min, across", atLeast, 4, 6, true, true, CannotTell},
		{"min, below", atLeast, 3, 4.99, true, true, Under},
		{"min, bound below", atLeast, 0, 4, false, true, CannotTell},
		{"min, bound above", atLeast, 6, 7, false, true, CannotTell},
		{"min, print above", atLeast, 6, 7, false, false, CannotTell},
		{"band, in it", band, 1.6, 1.9, true, true, Within},
		{"band, edges", band, 1.5, 2, true, true, Within},
		{"band, below", band, 1, 1.4, true, true, Under},
		{"band, above", band, 2.1, 2.2, true, true, Over},
		{"band, across the low end", band, 1.4, 1.7, true, true, CannotTell},
		{"band, across the high end", band, 1.7, 2.1, true, true, CannotTell},
		{"band, bound in it", band, 1.6, 1.9, false, true, CannotTell},
		{"none, found", nothing, 0.1, 0.2, true, true, Over},
		{"none, not found", nothing, 0, 0.01, true, true, CannotTell},
		{"none, truly none", nothing, 0, 0, true, true, Within},
	} {
		if got := c.r.judge(c.low, c.high, c.exact, c.bound); got != c.want {
			t.Errorf("%s: %v of %g to %g is %v; want %v", c.name, c.r.text(), c.low, c.high, got, c.want)
		}
	}
	names := map[Answer]string{Under: "under", Within: "within", Over: "over", CannotTell: "cannot tell: measure"}
	for a, want := range names {
		if a.String() != want {
			t.Errorf("%d reads %q; want %q", int(a), a, want)
		}
	}
	var unset Answer
	if unset != CannotTell {
		t.Error("an answer that nobody gave is not \"cannot tell\"")
	}
}

func TestUnitsOfRules(t *testing.T) {
	s, err := alcoholometry.ABV(40)
	if err != nil {
		t.Fatal(err)
	}
	c, err := quantity.MgL(9.48)
	if err != nil {
		t.Fatal(err)
	}
	if x, err := in(c, "mg/kg", s); err != nil || math.Abs(x-10) > 0.005 {
		t.Errorf("9.48 mg/L at 40 %% vol is %g mg/kg, %v; want 10", x, err)
	}
	if _, err := in(c, "furlongs", s); err == nil {
		t.Error("no error for a unit that nobody knows")
	}
}

// changed returns the data files with one text in one of them replaced.
func changed(t *testing.T, name, from, to string) fs.FS {
	t.Helper()
	out := fstest.MapFS{}
	entries, err := files.ReadDir("data")
	if err != nil {
		t.Fatal(err)
	}
	found := false
	for _, e := range entries {
		b, err := files.ReadFile("data/" + e.Name())
		if err != nil {
			t.Fatal(err)
		}
		text := string(b)
		if e.Name() == name {
			found = strings.Contains(text, from)
			text = strings.Replace(text, from, to, 1)
		}
		out["data/"+e.Name()] = &fstest.MapFile{Data: []byte(text)}
	}
	if !found {
		t.Fatalf("%s has no %q to change", name, from)
	}
	return out
}

func TestDataFilesAreRead(t *testing.T) {
	tab, err := load(files)
	if err != nil {
		t.Fatal(err)
	}
	status := map[string]int{}
	for _, l := range tab.limits {
		status[l.source.Status]++
	}
	if len(tab.limits) != 27 || status["seen"] != 21 || status["memory"] != 5 || status["part"] != 1 || len(tab.categories) != 17 || len(tab.labels) != 3 {
		t.Errorf("%d limits (%v), %d categories, %d labels; want 27 (21 seen, 5 memory, 1 part), 17, 3", len(tab.limits), status, len(tab.categories), len(tab.labels))
	}
	// Every key that a category or a plant brings is one of a limit.
	keys := map[string]bool{"": true}
	for _, l := range tab.limits {
		keys[l.key] = true
	}
	for _, c := range tab.categories {
		if !keys[c.key] {
			t.Errorf("category %s brings the scope %q, which no limit has", c.name, c.key)
		}
	}
	for _, p := range tab.plants {
		if !keys[p.key] {
			t.Errorf("plant %s brings the scope %q, which no limit has", p.name, p.key)
		}
	}
	for _, s := range tab.substances {
		if s.analysis == "" {
			t.Errorf("%s has no analysis", s.name)
		}
	}
	for _, bad := range []struct{ file, from, to, says string }{
		{"limits.csv", "EU,quassin", "EU,quasin", `"quasin" is not in substances.csv`},
		{"limits.csv", ",max,35,mg/kg", ",most,35,mg/kg", "must be one of"},
		{"limits.csv", "35,mg/kg", "35,mg per kg", "must be one of"},
		{"limits.csv", "mg/kg,2008,seen", "mg/kg,,seen", "no date"},
		{"limits.csv", "2008,seen", "2008,rumour", "rumour"},
		{"category_rules.csv", "pastis,trans-anethole,band,1.5", "pastis,trans-anethole,band,3", "band runs"},
		{"category_rules.csv", "brandy,", "brandies,", "brandies"},
		{"plants.csv", "wormwood,Artemisia absinthium;grand wormwood;absinthe,thujone", "wormwood,Artemisia absinthium,thujon", "thujon"},
	} {
		if _, err := load(changed(t, bad.file, bad.from, bad.to)); err == nil || !strings.Contains(err.Error(), bad.says) {
			t.Errorf("%s with %q for %q: %v; want %q", bad.file, bad.to, bad.from, err, bad.says)
		}
	}
}
