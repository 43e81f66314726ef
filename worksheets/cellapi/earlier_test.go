package cellapi_test

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"swanneck/kernel/display"
	"swanneck/worksheets/cellapi"
	"swanneck/worksheets/results"
)

// lot writes the results of an earlier run and returns the file's name.
func lot(t *testing.T, stopped string) string {
	t.Helper()
	one := func(name string, value float64, unit, figure string, pm float64) results.Result {
		return results.Result{ResultData: display.ResultData{Version: 1, Name: name, Value: value, Unit: unit, Figure: figure, PlusMinus: pm}, Cell: 1}
	}
	f := &results.File{Clock: time.Date(2026, 1, 1, 12, 0, 0, 0, time.UTC), Stopped: stopped, Results: []results.Result{
		one("True strength", 50, "% vol", "50.00", 0.1),
		one("Spirit < all", 356.75, "L", "356.8", 0),
		one("Tank", 68, "°F", "68.0", 0),
		one("Bottles", 850, "bottles", "850", 2),
	}}
	b, err := f.JSON()
	if err != nil {
		t.Fatal(err)
	}
	name := filepath.Join(t.TempDir(), "lot-17.results.json")
	if err := os.WriteFile(name, b, 0o600); err != nil {
		t.Fatal(err)
	}
	return name
}

func TestResults(t *testing.T) {
	e := cellapi.Results(lot(t, ""))
	if got := strings.Join(e.Names(), ", "); got != "True strength, Spirit < all, Tank, Bottles" {
		t.Errorf("names %s", got)
	}
	for _, c := range []struct {
		name, unit string
		want       float64
	}{
		{"Spirit < all", "L", 356.75},
		{"Spirit < all", "mL", 356750},
		{"Spirit < all", "hL", 3.5675},
		{"True strength", "%vol", 50}, // spaces in a unit do not matter
		{"Bottles", "bottles", 850},
	} {
		if got := e.Figure(c.name, c.unit); got != c.want {
			t.Errorf("Figure(%q, %q) = %v; want %v", c.name, c.unit, got, c.want)
		}
	}
	if got := e.PlusMinus("Bottles", "bottles"); got != 2 {
		t.Errorf("PlusMinus = %v; want 2", got)
	}
	if got := e.Strength("True strength").ABV(); math.Abs(got-50) > 1e-9 {
		t.Errorf("Strength = %v; want 50 ± 1e-9 %% vol", got)
	}
	if got := fmt.Sprintf("%.9f", e.Temperature("Tank").C()); got != "20.000000000" {
		t.Errorf("Temperature = %s °C; want 20: 68 °F by definition of the scale", got)
	}
	if s := e.String(); !strings.Contains(s, "True strength: 50.00 ± 0.10 % vol\nSpirit < all: 356.8 L\n") {
		t.Errorf("%s", s)
	}
	if h := e.HTML(); !strings.Contains(h, ">Spirit &lt; all</th>") || !strings.Contains(h, ">356.8</td>") {
		t.Errorf("%s", h)
	}
	none := cellapi.EarlierResults{}
	if none.Names() != nil || none.String() != "no results" || none.HTML() != "<p>no results</p>" {
		t.Error("the zero results")
	}
}

func TestResultsThatDoNotFit(t *testing.T) {
	e := cellapi.Results(lot(t, "cell 4: no"))
	notResults := filepath.Join(t.TempDir(), "other.results.json")
	if err := os.WriteFile(notResults, []byte("{}"), 0o600); err != nil {
		t.Fatal(err)
	}
	for want, f := range map[string]func(){
		`Figure: lot-17.results.json has no result "spirit"; the nearest: Spirit < all, `: func() { e.Figure("spirit", "L") },
		"its run stopped in cell 4: no": func() { e.Strength("Strength tomorrow") },
		`Figure: lot-17.results.json, "Spirit < all": "L" is no unit of mass; want kg`:     func() { e.Figure("Spirit < all", "kg") },
		`Figure: lot-17.results.json, "Tank": "°F" does not fit; want °C`:                  func() { e.Figure("Tank", "°C") },
		`Strength: lot-17.results.json, "Spirit < all": "L" is no unit of strength`:        func() { e.Strength("Spirit < all") },
		`Temperature: lot-17.results.json, "Bottles": "bottles" is no unit of temperature`: func() { e.Temperature("Bottles") },
		"were not made by Results":                          func() { cellapi.EarlierResults{}.Figure("x", "L") },
		"Results: other.results.json is not a results file": func() { cellapi.Results(notResults) },
		"none.results.json":                                 func() { cellapi.Results("none.results.json") },
	} {
		func() {
			defer func() {
				s, ok := recover().(*cellapi.Stop)
				if !ok || !strings.Contains(s.Error(), want) || strings.Contains(s.Error(), "\n") {
					t.Errorf("%v; want one line with %q", s, want)
				}
			}()
			f()
			t.Errorf("accepted; want %q", want)
		}()
	}
}
