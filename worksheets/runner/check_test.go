package runner_test

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"swanneck/kernel/engine"
	"swanneck/kernel/symbols"
	"swanneck/worksheets/notebook"
	"swanneck/worksheets/runner"
)

func TestCheckSame(t *testing.T) {
	path, out := executed(t, t.TempDir(), runner.Options{Engine: engine.Options{Seed: 7, Clock: time.Date(2026, 3, 14, 12, 0, 0, 0, time.UTC)}},
		map[string]string{"volume": "50 gal"},
		append([]string{"import \"math/rand\"\nfmt.Println(time.Now(), rand.Int())\nfmt.Printf(\"\\x1b[31m%p\\x1b[0m  \\n\", new(int))"}, water...)...)
	c, said := check(t, path, runner.CheckOptions{})
	if !c.Same() || c.Results != 2 || c.Others != 4 || c.Code != runner.CheckCode(out) || c.CodeThen != c.Code || c.Why != nil || c.Notes != nil {
		t.Errorf("%+v", c)
	}
	if want := "out.ipynb: same (2 results, 4 other outputs); check code " + c.Code + "\n"; said != want {
		t.Errorf("%q; want %q", said, want)
	}
}

// Each way in which what is stored may differ from what comes out again, with the words for it.
func TestCheckDiffers(t *testing.T) {
	for _, c := range []struct {
		name, from, to string
		want           []string
	}{
		{"a value beyond its tolerance", `"value": 50,`, `"value": 50.25,`, []string{`cell 2: result "Water": 50.25 kg then, 50 kg now: 0.25 kg less; tolerance 0.1 kg`, "changed by hand"}},
		{"a figure", `"figure": "50.0"`, `"figure": "50.7"`, []string{`result "Water": 50.7 kg was printed then, 50.0 kg is now`}},
		{"a value without tolerance", `"value": 40,`, `"value": 40.000001,`, []string{`result "Pure alcohol": 40.000001 L then, 40 L now: 1e-06 L less; no tolerance is declared (Within), so 1e-09 of it is allowed`}},
		{"a ±", `"plus_minus": 0.2`, `"plus_minus": 0.3`, []string{"its ± 0.30 L then, 0.20 L now"}},
		{"a note", `"note": "at 20 °C"`, `"note": "at 15 °C"`, []string{`its note was "at 15 °C", is "at 20 °C"`}},
		{"a unit", `"unit": "kg"`, `"unit": "g"`, []string{"50.0 g then, 50.0 kg now: another unit"}},
		{"what is shown of a result", `Water: 50.0 kg`, `Water: 55.0 kg`, []string{"what the notebook shows of it, Water: 55.0 kg, is not what it holds, Water: 50.0 kg"}},
		{"a name", `"name": "Water"`, `"name": "Wine"`, []string{`result "Wine" is missing: 50.0 kg then`, `result "Water" is new: 50.0 kg now`}},
		{"printed text", `second line`, `other line`, []string{"what is printed differs in line 2\n", "    then: other line\n", "    now:  second line\n"}},
		{"a chart", `<svg `, `<svg id=\"x\" `, []string{"cell 3: chart differs\n"}},
		{"a table", `contraction`, `shrinking`, []string{"cell 4: table differs in line 1"}},
		{"the code", `l*0.5`, `l*0.52`, []string{`result "Water": 50.0 kg then, 52.0 kg now: 2 kg more; tolerance 0.1 kg`, "why: the code of cell 2 was changed after the run"}},
		{"the version", `"mathlib": "1"`, `"mathlib": "0"`, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			path, _ := executed(t, t.TempDir(), runner.Options{Engine: long}, nil, water...)
			if c.name == "printed text" || c.name == "a table" || c.name == "the code" { // in the outputs or the sources only
				change(t, path, c.from, c.to)
			} else {
				edit(t, path, c.from, c.to)
			}
			found, said := check(t, path, runner.CheckOptions{})
			if found.Same() != (c.want == nil) {
				t.Errorf("same: %v; want %v\n%s", found.Same(), c.want == nil, said)
			}
			for _, w := range c.want {
				if !strings.Contains(said, w) {
					t.Errorf("%s\nwant %q", said, w)
				}
			}
		})
	}
}

// change edits what cells show; of the second cell, what stands in it.
func change(t *testing.T, path, from, to string) {
	t.Helper()
	n, err := notebook.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	found := false
	for i, c := range n.Cells {
		if i == 1 && strings.Contains(c.Source, from) {
			c.Source, found = strings.ReplaceAll(c.Source, from, to), true
		}
		for k := range c.Outputs {
			o := &c.Outputs[k]
			found = found || strings.Contains(o.Text, from)
			o.Text = strings.ReplaceAll(o.Text, from, to)
			for mime, v := range o.Data {
				if s, ok := v.(string); ok {
					found = found || strings.Contains(s, from)
					o.Data[mime] = strings.ReplaceAll(s, from, to)
				}
			}
		}
	}
	if !found {
		t.Fatalf("%q is in no cell", from)
	}
	if err := notebook.WriteFile(path, n); err != nil {
		t.Fatal(err)
	}
}

// What differs by less than its tolerance is the same.
func TestCheckWithinTolerance(t *testing.T) {
	for _, c := range [][2]string{
		{`"value": 50,`, `"value": 50.06,`},
		{`"value": 50,`, `"value": 49.9,`}, // the tolerance itself
		{`"value": 40,`, `"value": 40.00000001,`},
		{`l*0.5`, `l*0.5005`},
	} {
		path, _ := executed(t, t.TempDir(), runner.Options{}, nil, water...)
		edit(t, path, c[0], c[1])
		if found, said := check(t, path, runner.CheckOptions{}); !found.Same() {
			t.Errorf("%s changed to %s: %s", c[0], c[1], said)
		} else if c[0] == "l*0.5" && !strings.Contains(said, "the code of cell 2 was changed after the run") {
			t.Errorf("%s; want that the code was changed", said)
		}
	}
}

// A tolerance cannot be widened in what is stored.
func TestCheckTakesTheTighterTolerance(t *testing.T) {
	path, _ := executed(t, t.TempDir(), runner.Options{}, nil, water...)
	edit(t, path, `"within": 0.1`, `"within": 10`)
	edit(t, path, `"value": 50,`, `"value": 51,`)
	if found, said := check(t, path, runner.CheckOptions{}); found.Same() || !strings.Contains(said, "tolerance 0.1 kg") {
		t.Errorf("%s", said)
	}
}

func TestCheckSaysWhy(t *testing.T) {
	dir := t.TempDir()
	file(t, dir, "jars.csv", "jar;volume (mL)\n1;200\n2;205,5\n")
	path, _ := executed(t, dir, runner.Options{}, nil, `Result("All", Table("jars.csv").Numbers("volume", "L")[1], "L")`)
	file(t, dir, "jars.csv", "jar;volume (mL)\n1;200\n2;215\n")
	edit(t, path, `"architecture": "`, `"architecture": "not-`)
	_, said := check(t, path, runner.CheckOptions{Versions: []runner.Version{{What: "mathlib", Version: "2"}, {What: "Glass", Version: "x"}}})
	for _, want := range []string{
		`result "All": 0.2055 L then, 0.2150 L now: 0.0095 L more`,
		"why: jars.csv is not what it was",
		"why: mathlib was 1, is 2",
		"why: Glass was not there, is x",
		"why: swanneck was 0.1.0, is not there",
		"on another architecture, not-",
	} {
		if !strings.Contains(said, want) {
			t.Errorf("%s\nwant %q", said, want)
		}
	}
}

func TestCheckOfAnotherFolder(t *testing.T) {
	dir, other := t.TempDir(), t.TempDir()
	file(t, dir, "jars.csv", "volume (L)\n7\n")
	path, _ := executed(t, dir, runner.Options{}, nil, `Result("All", Table("jars.csv").Numbers("volume", "L")[0], "L")`)
	moved := filepath.Join(other, "moved.ipynb")
	if err := os.Rename(path, moved); err != nil {
		t.Fatal(err)
	}
	refused(t, moved, runner.CheckOptions{}, "read jars.csv, which is not in "+other)
	if c, said := check(t, moved, runner.CheckOptions{Folder: dir}); !c.Same() {
		t.Errorf("%s", said)
	}
}

// refused says that a worksheet cannot be checked, in one line.
func refused(t *testing.T, path string, o runner.CheckOptions, want string) {
	t.Helper()
	o.Library, o.Versions = symbols.NewLibrary(), made
	c, err := runner.Check(context.Background(), path, o)
	if !errors.Is(err, runner.ErrInput) || !strings.Contains(err.Error(), want) || strings.Contains(err.Error(), "\n") {
		t.Errorf("%+v, %v; want one line with %q", c, err, want)
	}
}

func TestCheckRefuses(t *testing.T) {
	dir := t.TempDir()
	for _, c := range []struct{ name, from, to, want string }{
		{"no run", `"run": {`, `"ran": {`, "is not the output of a run"},
		{"a later provenance", "\"version\": 1\n  }\n },\n \"nbformat\"", "\"version\": 2\n  }\n },\n \"nbformat\"", "provenance of version 2"},
		{"no clock", `"clock": "2026-01-01T12:00:00Z"`, `"clock": "noon"`, "provenance that cannot be read"},
		{"a seed of another kind", `"seed": 0`, `"seed": "x"`, "provenance that cannot be read"},
		{"a file outside", `"seed": 0`, `"files": {"../x.csv": "sha256:00"}, "seed": 0`, `says it read the file "../x.csv", which no worksheet can`},
		{"an input that is not asked for", `"seed": 0`, `"inputs": {"pot": "3 L"}, "seed": 0`, `asks for no input "pot" now`},
		{"an input that does not fit", `"seed": 0`, `"inputs": {"volume": "3 kg"}, "seed": 0`, `was given the input "volume": volume: 3 kg`},
		{"a result without a name", `"name": "Water"`, `"name": ""`, "result in cell 2 that cannot be read"},
		{"another language", `"language": "go"`, `"language": "python"`, "language is python"},
		{"an endless cell", "l := InputNumber(", "for {}\\n\",\n    \"l := InputNumber(", "cannot be run to its end: cell 1"},
	} {
		t.Run(c.name, func(t *testing.T) {
			path, _ := executed(t, dir, runner.Options{}, nil, water...)
			if c.name == "another language" {
				edit(t, path, `"name": "go"`, `"name": "python"`)
			}
			edit(t, path, c.from, c.to)
			refused(t, path, runner.CheckOptions{Engine: engine.Options{CellTime: 300 * time.Millisecond}}, c.want)
		})
	}
	path, _ := executed(t, dir, runner.Options{}, nil, water...)
	edit(t, path, `"run": {`, `"ran": {`)
	edit(t, path, `"name": "swanneck"`, `"name": "some-go"`)
	refused(t, path, runner.CheckOptions{}, `is a notebook of another kernel ("some-go")`)
	refused(t, filepath.Join(dir, "none.ipynb"), runner.CheckOptions{}, "none.ipynb")
}

// Worksheets that stop: in the same way, in another way, now only, then only.
func TestCheckOfFailures(t *testing.T) {
	dir := t.TempDir()
	cells := []string{`fmt.Println("one")`, `Result("a", 1, "kg")`, `Reduce(Spirit{VolumeL: 100, Strength: ABV(40)}, ABV(45))`, `Result("b", 2, "kg")`}
	path, out := executed(t, dir, runner.Options{}, nil, cells...)
	c, said := check(t, path, runner.CheckOptions{})
	if c.Same() || len(c.Differences) != 0 || !strings.Contains(said, "same failure in cell 3, line 1:1: Reduce: cannot raise") || c.CodeThen != runner.CheckCode(out) || c.CodeThen != c.Code {
		t.Errorf("%+v\n%s", c, said)
	}
	edit(t, path, "ABV(45))", "ABV(47))")
	if c, said := check(t, path, runner.CheckOptions{}); c.SameFailure != "" ||
		!strings.Contains(said, "cell 3: stops in another way") || !strings.Contains(said, "then: in cell 3, 1:1: Reduce: cannot raise 40.00 % vol to 45.00") {
		t.Errorf("%s", said)
	}
	edit(t, path, "ABV(47))", "ABV(30))")
	if _, said := check(t, path, runner.CheckOptions{}); !strings.Contains(said, "cell 3: stopped then and does not now; this cell and what follows is not compared") || strings.Contains(said, `"b"`) {
		t.Errorf("%s", said)
	}
	path, _ = executed(t, dir, runner.Options{}, nil, cells[0], cells[1], `1 + 1`, cells[3])
	edit(t, path, "1 + 1", "1 + nothing")
	if _, said := check(t, path, runner.CheckOptions{}); !strings.Contains(said, "cell 3: stops now; this cell and what follows is not compared") || !strings.Contains(said, "undefined: nothing") ||
		strings.Contains(said, `"b"`) || strings.Contains(said, "is missing") {
		t.Errorf("%s", said)
	}
}

// Two results of one name: the run stops there, keeps the first, and a check says the same failure.
func TestOneNameTwice(t *testing.T) {
	path, out := executed(t, t.TempDir(), runner.Options{}, nil, `Result("a", 1, "kg")`, "Result(\"b\", 3, \"kg\")\nResult(\"a\", 2, \"kg\")")
	if out.Failure == nil || out.Failure.Cell != 2 || len(out.Results) != 1 || !strings.Contains(out.Failure.Error(), `"a" was declared in cell 1 already`) {
		t.Errorf("%+v", out)
	}
	c, said := check(t, path, runner.CheckOptions{})
	if c.SameFailure == "" || len(c.Differences) > 0 || c.CodeThen != c.Code {
		t.Errorf("%s", said)
	}
}

// Code cells that come, go and move are told from those that change.
func TestCheckOfMovedCells(t *testing.T) {
	path, _ := executed(t, t.TempDir(), runner.Options{}, nil, `x := 1`, `y := 2`, `z := 3`, `Result("a", 1, "kg")`)
	n, err := notebook.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	added := notebook.NewCell(notebook.Code, `fmt.Println("new")`)
	added.ID = "new"
	n.Cells = []*notebook.Cell{added, n.Cells[1], n.Cells[0], n.Cells[3]}
	if err := notebook.WriteFile(path, n); err != nil {
		t.Fatal(err)
	}
	_, said := check(t, path, runner.CheckOptions{})
	for _, want := range []string{"cell 1: what is printed is new", "why: cell 1 is new since the run", "why: a code cell was taken out after the run", "why: the code cells stand in another order"} {
		if !strings.Contains(said, want) {
			t.Errorf("%s\nwant %q", said, want)
		}
	}
	if strings.Contains(said, `"a"`) {
		t.Errorf("%s; want nothing about a result that only moved", said)
	}
}

// What a stored notebook says can do nothing to the terminal.
func TestCheckIsPlain(t *testing.T) {
	path, _ := executed(t, t.TempDir(), runner.Options{}, nil, water...)
	change(t, path, "second line", "\x1b]0;title\x07\x1b[2Jsecond\x00 line\u009b2J")
	if _, said := check(t, path, runner.CheckOptions{}); strings.ContainsAny(said, "\x1b\x00\u009b\x07") || !strings.Contains(said, "then: second") {
		t.Errorf("%q", said)
	}
}
