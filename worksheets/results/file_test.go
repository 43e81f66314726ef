package results_test

import (
	"bytes"
	"crypto/sha256"
	"encoding/base32"
	"encoding/csv"
	"encoding/json"
	"fmt"
	"math"
	"reflect"
	"slices"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"swanneck/kernel/display"
	"swanneck/worksheets/results"
)

func sample() *results.File {
	f := &results.File{
		Worksheet: "proofing.ipynb", Title: "Proofing <the day's>", Clock: time.Date(2026, 3, 14, 12, 0, 0, 0, time.UTC), Seed: -7,
		Versions: map[string]string{"mathlib": "1", "swanneck": "0.1.0"}, Architecture: "amd64",
		Inputs:  []results.Input{{Name: "pot strength", Value: "50 %vol", Changed: true}, {Name: "lots", Value: "lots.csv", Changed: true, SHA256: "sha256:ab"}, {Name: "day", Value: "2026-03-14"}},
		Files:   map[string]string{"trial.csv": "sha256:cd"},
		Sources: []results.Source{{Cell: "a", SHA256: "sha256:01"}, {Cell: "b", SHA256: "sha256:02"}},
		Results: []results.Result{
			{ResultData: display.ResultData{Version: 1, Name: "True strength", Value: 72.46106838673646, Unit: "% vol", Figure: "72.46", PlusMinus: 0.11925, Note: "at 20 °C, \"wet\""}, Cell: 2},
			{ResultData: display.ResultData{Version: 1, Name: "Water", Value: 252.4, Unit: "kg", Figure: "252.4", Within: 0.1}, Cell: 3},
		},
	}
	f.CheckCode = f.Code()
	return f
}

func TestJSONIsReadBack(t *testing.T) {
	f := sample()
	b, err := f.JSON()
	if err != nil {
		t.Fatal(err)
	}
	again, err := results.Read(b)
	if err != nil || !reflect.DeepEqual(f, again) {
		t.Errorf("%+v, %v; want %+v", again, err, f)
	}
	b2, err := again.JSON()
	if err != nil || !bytes.Equal(b, b2) {
		t.Errorf("written again: %s, %v; want %s", b2, err, b)
	}
	if !bytes.Contains(b, []byte("Proofing <the day's>")) || b[len(b)-1] != '\n' {
		t.Errorf("%s; want plain text and a line end", b)
	}
}

// Whoever reads the file may look for a key by eye: keys are in order at every level.
func TestJSONKeysAreSorted(t *testing.T) {
	b, err := sample().JSON()
	if err != nil {
		t.Fatal(err)
	}
	levels := [][]string{nil}
	objects := 0
	for line := range strings.Lines(string(b)) {
		line = strings.TrimSpace(line)
		if key, _, ok := strings.Cut(strings.TrimPrefix(line, `"`), `":`); ok && line[0] == '"' {
			levels[len(levels)-1] = append(levels[len(levels)-1], key)
		}
		if strings.HasSuffix(line, "{") {
			levels = append(levels, nil)
		}
		if strings.HasPrefix(line, "}") {
			keys := levels[len(levels)-1]
			levels = levels[:len(levels)-1]
			objects++
			if !slices.IsSorted(keys) {
				t.Errorf("keys %q; want them sorted", keys)
			}
		}
	}
	if objects != 10 {
		t.Errorf("%d objects in %s; want 10", objects, b)
	}
}

// Every float64 comes back to the last bit, in both forms.
func TestFullPrecision(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64().Filter(func(x float64) bool { return !math.IsInf(x, 0) && !math.IsNaN(x) }).Draw(t, "x")
		f := &results.File{Results: []results.Result{{ResultData: display.ResultData{Version: 1, Name: "x", Unit: "1", Value: x}}}}
		b, err := f.JSON()
		if err != nil {
			t.Fatal(err)
		}
		g, err := results.Read(b)
		if err != nil || math.Float64bits(g.Results[0].Value) != math.Float64bits(x) {
			t.Fatalf("%v came back as %v, %v", x, g, err)
		}
		text, err := f.CSV()
		if err != nil {
			t.Fatal(err)
		}
		rows, err := csv.NewReader(bytes.NewReader(text)).ReadAll()
		var y float64
		if err == nil {
			err = json.Unmarshal([]byte(rows[1][1]), &y)
		}
		if err != nil || y != x {
			t.Fatalf("%v came back from %q as %v, %v", x, text, y, err)
		}
	})
}

func TestCSV(t *testing.T) {
	f := sample()
	f.Results = append(f.Results, results.Result{ResultData: display.ResultData{Name: "=SUM(A1)", Value: 1e-7, Unit: "-", Note: "+1"}})
	b, err := f.CSV()
	want := "name,value,unit,plus_minus,within,note\r\n" +
		"True strength,72.46106838673646,% vol,0.11925,,\"at 20 °C, \"\"wet\"\"\"\r\n" +
		"Water,252.4,kg,,0.1,\r\n" +
		"'=SUM(A1),1e-07,'-,,,'+1\r\n"
	if err != nil || string(b) != want {
		t.Errorf("%q, %v; want %q", b, err, want)
	}
	if !results.LooksLikeCSV(b) || results.LooksLikeCSV([]byte("name,value\n")) {
		t.Error("the table is not known by its first line")
	}
}

func TestReadRefuses(t *testing.T) {
	good, err := sample().JSON()
	if err != nil {
		t.Fatal(err)
	}
	change := func(from, to string) string {
		if !strings.Contains(string(good), from) {
			t.Fatalf("%q is not in %s", from, good)
		}
		return strings.ReplaceAll(string(good), from, to)
	}
	for want, text := range map[string]string{
		"not a whole results file":             string(good[:len(good)/2]),
		"its format is \"\"":                   "{}",
		"version 2; this program reads":        change("\"version\": 1", "\"version\": 2"),
		"not UTF-8":                            change("Water", "\xff"),
		"without a name or a unit, its number": change("\"kg\"", "\" \""),
		"\"True strength\" twice":              change("Water", "True strength"),
		"control characters":                   change("Water", `\u001b[2J`),
		"below zero":                           change("\"within\": 0.1", "\"within\": -0.1"),
		"has the clock \"noon\"":               change("2026-03-14T12:00:00Z", "noon"),
		"cannot unmarshal":                     change("252.4,", "\"much\","),
	} {
		_, err := results.Read([]byte(text))
		if err == nil || !strings.Contains(err.Error(), want) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%v; want one line with %q", err, want)
		}
	}
}

// The check code, put together by hand as its description says, in a base 32 that is not ours.
func TestCode(t *testing.T) {
	f := sample()
	lines := "swanneck check code 1\n" +
		"source\t01\nsource\t02\n" +
		"input\tlots\tsha256:ab\ninput\tpot strength\t50 %vol\n" +
		"result\tTrue strength\t72.46 ± 0.12\t% vol\nresult\tWater\t252.4\tkg\n"
	sum := sha256.Sum256([]byte(lines))
	s := base32.NewEncoding("0123456789ABCDEFGHJKMNPQRSTVWXYZ").EncodeToString(sum[:])
	if want := fmt.Sprintf("%s-%s-%s", s[:4], s[4:8], s[8:12]); f.Code() != want {
		t.Errorf("Code() = %s; want %s", f.Code(), want)
	}
	before := f.Code()
	for what, change := range map[string]func(*results.File){
		"a figure":        func(f *results.File) { f.Results[1].Figure = "252.5" },
		"a ±":             func(f *results.File) { f.Results[0].PlusMinus = 0.2 },
		"a unit":          func(f *results.File) { f.Results[1].Unit = "L" },
		"a name":          func(f *results.File) { f.Results[1].Name = "water" },
		"the order":       func(f *results.File) { slices.Reverse(f.Results) },
		"a result gone":   func(f *results.File) { f.Results = f.Results[:1] },
		"the code":        func(f *results.File) { f.Sources[1].SHA256 = "sha256:03" },
		"an input":        func(f *results.File) { f.Inputs[0].Value = "51 %vol" },
		"a table":         func(f *results.File) { f.Inputs[1].SHA256 = "sha256:ac" },
		"an input not":    func(f *results.File) { f.Inputs[0].Changed = false },
		"that it stopped": func(f *results.File) { f.Stopped = "cell 4: no" },
	} {
		g := sample()
		change(g)
		if g.Code() == before {
			t.Errorf("%s changed and the check code did not", what)
		}
	}
	for what, change := range map[string]func(*results.File){
		"a digit not printed":  func(f *results.File) { f.Results[1].Value += 1e-9 },
		"an input not changed": func(f *results.File) { f.Inputs[2].Value = "2026-03-15" },
		"the order of inputs":  func(f *results.File) { slices.Reverse(f.Inputs) },
		"the title":            func(f *results.File) { f.Title = "x" },
		"the name of the file": func(f *results.File) { f.Worksheet = "x" },
	} {
		g := sample()
		change(g)
		if g.Code() != before {
			t.Errorf("%s changed the check code", what)
		}
	}
}

func TestBundle(t *testing.T) {
	b := results.Bundle(display.ResultData{Version: 1, Name: "a < b", Figure: "1.25", Unit: "L", PlusMinus: 0.128, Note: "x & y"})
	if got, want := b[display.Plain], "a < b: 1.25 ± 0.13 L (x & y)"; got != want {
		t.Errorf("%q; want %q", got, want)
	}
	if html, _ := b[display.HTML].(string); !strings.Contains(html, "a &lt; b") || !strings.Contains(html, "x &amp; y") {
		t.Errorf("not escaped: %s", html)
	}
}
