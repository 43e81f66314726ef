package runner_test

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"swanneck/worksheets/notebook"
	"swanneck/worksheets/results"
	"swanneck/worksheets/runner"
)

func TestResultsFile(t *testing.T) {
	dir := t.TempDir()
	file(t, dir, "lots.csv", "volume (L)\n7\n8\n")
	_, out := executed(t, dir, runner.Options{}, map[string]string{"volume": "50 L", "lots": "lots.csv"},
		append(water, `InputTable("lots", "volume (L)\n1").Len() + Table("lots.csv").Len()`)...)
	f, err := runner.ResultsFile(out, "some/where/water.ipynb")
	if err != nil {
		t.Fatal(err)
	}
	if f.Worksheet != "water.ipynb" || f.Architecture == "" || f.Versions["mathlib"] != "1" || !f.Clock.Equal(time.Date(2026, 1, 1, 12, 0, 0, 0, time.UTC)) ||
		len(f.Sources) != 5 || f.Files["lots.csv"] != results.Hash("volume (L)\n7\n8\n") || f.CheckCode != runner.CheckCode(out) || f.Stopped != "" {
		t.Errorf("%+v", f)
	}
	if len(f.Inputs) != 2 || f.Inputs[0] != (results.Input{Name: "volume", Value: "50 L", Changed: true}) ||
		f.Inputs[1] != (results.Input{Name: "lots", Value: "lots.csv", Changed: true, SHA256: f.Files["lots.csv"]}) {
		t.Errorf("inputs %+v", f.Inputs)
	}
	if len(f.Results) != 2 || f.Results[0].Value != 25 || f.Results[0].Cell != 2 || f.Results[1].Note != "at 20 °C" {
		t.Errorf("results %+v", f.Results)
	}
	b, err := f.JSON()
	if err != nil {
		t.Fatal(err)
	}
	again, err := results.Read(b)
	if err != nil || again.Code() != f.CheckCode {
		t.Errorf("the code of what is written: %v, %v; want %s", again, err, f.CheckCode)
	}
}

func TestCheckCode(t *testing.T) {
	_, a := executed(t, t.TempDir(), runner.Options{}, nil, water...)
	_, b := executed(t, t.TempDir(), runner.Options{}, map[string]string{"volume": "100 L"}, water...) // what stands there anyway
	_, c := executed(t, t.TempDir(), runner.Options{}, map[string]string{"volume": "101 L"}, water...)
	if runner.CheckCode(a) != runner.CheckCode(b) || runner.CheckCode(a) == runner.CheckCode(c) {
		t.Errorf("%s, %s, %s; want two of the same and another one", runner.CheckCode(a), runner.CheckCode(b), runner.CheckCode(c))
	}
}

// A worksheet gives the results of a results file again, with the inputs that stand in it.
func TestCheckAgainst(t *testing.T) {
	dir := t.TempDir()
	file(t, dir, "lots.csv", "volume (L)\n7\n8\n")
	cells := append(water, `Result("lots", float64(InputTable("lots", "volume (L)\n1").Len()), "1")`)
	path, out := executed(t, dir, runner.Options{}, map[string]string{"volume": "50 L", "lots": "lots.csv"}, cells...)
	f, err := runner.ResultsFile(out, path)
	if err != nil {
		t.Fatal(err)
	}
	against := filepath.Join(dir, "old.results.json")
	write := func() {
		t.Helper()
		b, err := f.JSON()
		if err != nil {
			t.Fatal(err)
		}
		file(t, dir, "old.results.json", string(b))
	}
	write()
	bare := filepath.Join(dir, "bare.ipynb")
	if err := notebook.WriteFile(bare, sheet(cells...)); err != nil { // never executed
		t.Fatal(err)
	}
	o := runner.CheckOptions{Against: against}
	if c, said := check(t, bare, o); !c.Same() || c.Results != 3 || c.Others != 0 || c.Code != f.CheckCode {
		t.Errorf("%s", said)
	}
	f.Results[0].Value, f.Results[0].Figure = 26, "26.0"
	write()
	if _, said := check(t, bare, o); !strings.Contains(said, "26.0 kg then, 25.0 kg now: 1 kg less; tolerance 0.1 kg") || !strings.Contains(said, "old.results.json was changed after its run") {
		t.Errorf("%s", said)
	}
	file(t, dir, "lots.csv", "volume (L)\n7\n")
	refused(t, bare, o, `was given the input "lots": lots.csv in `+dir+" is not the table that was given then")
	f.Inputs[1].Value = "../lots.csv"
	write()
	refused(t, bare, o, `is called "../lots.csv"; want a name without folders`)
	f.Stopped = "cell 1: no"
	write()
	refused(t, bare, o, "")
	refused(t, bare, runner.CheckOptions{Against: path}, "out.ipynb is not a results file")
	refused(t, bare, runner.CheckOptions{Against: filepath.Join(dir, "none")}, "none")
}

// What is not ours is not written over, and is named.
func TestPrepareResults(t *testing.T) {
	dir := t.TempDir()
	if err := runner.PrepareResults(dir, []string{"a.ipynb"}); err != nil {
		t.Errorf("an empty folder: %v", err)
	}
	_, out := executed(t, t.TempDir(), runner.Options{}, nil, water...)
	if _, _, err := runner.Write(out, dir, "a.ipynb", time.Time{}, runner.Options{ResultsFiles: true}); err != nil {
		t.Fatal(err)
	}
	if err := runner.PrepareResults(dir, []string{"a.ipynb"}); err != nil {
		t.Errorf("what a run left: %v", err)
	}
	for _, name := range []string{"a.results.json", "a.results.csv"} {
		was, err := os.ReadFile(filepath.Join(dir, name))
		if err != nil {
			t.Fatal(err)
		}
		file(t, dir, name, "mine")
		if err := runner.PrepareResults(dir, []string{"a.ipynb"}); err == nil || !strings.Contains(err.Error(), name+" is there and is not the results of a run") {
			t.Errorf("%v; want that %s is in the way", err, name)
		}
		file(t, dir, name, string(was))
	}
}

// ClearOutput takes away what was shown, not what was declared: a check must find it again.
func TestClearedResultsStay(t *testing.T) {
	path, out := executed(t, t.TempDir(), runner.Options{}, nil, "fmt.Println(\"gone\")\nResult(\"a\", 1, \"kg\")\nClearOutput()\nfmt.Println(\"there\")")
	if len(out.Results) != 1 {
		t.Errorf("%+v", out.Results)
	}
	b, err := os.ReadFile(path)
	if err != nil || !bytes.Contains(b, []byte("vnd.swanneck.result+json")) || bytes.Contains(b, []byte("\"gone\\n\"")) {
		t.Errorf("%v\n%s", err, b)
	}
	if c, said := check(t, path, runner.CheckOptions{}); !c.Same() || c.Results != 1 {
		t.Errorf("%s", said)
	}
}

// Every field that is written stands in the description.
func TestFormatsAreDescribed(t *testing.T) {
	text, err := os.ReadFile("../FORMATS.md")
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	file(t, dir, "lots.csv", "volume (L)\n7\n")
	path, out := executed(t, dir, runner.Options{}, map[string]string{"volume": "1 L", "lots": "lots.csv"},
		append(water, `InputTable("lots", "volume (L)\n1").Len() + Table("lots.csv").Len()`, "nothing")...)
	n, err := notebook.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	f, err := runner.ResultsFile(out, path)
	if err != nil {
		t.Fatal(err)
	}
	written, err := f.JSON()
	if err != nil {
		t.Fatal(err)
	}
	var whole map[string]any
	if err := json.Unmarshal(written, &whole); err != nil {
		t.Fatal(err)
	}
	fields := map[string]bool{}
	var collect func(v any)
	collect = func(v any) {
		switch v := v.(type) {
		case map[string]any:
			for k, x := range v {
				if !strings.ContainsAny(k, ". ") && k != "volume" && k != "mathlib" && k != "swanneck" {
					fields[k] = true
				}
				collect(x)
			}
		case []any:
			for _, x := range v {
				collect(x)
			}
		}
	}
	collect(whole)
	collect(n.Own()["run"])
	for _, o := range n.Cells[1].Outputs {
		collect(o.Data["application/vnd.swanneck.result+json"])
	}
	delete(fields, "lots")
	for k := range fields {
		if !bytes.Contains(text, []byte("`"+k+"`")) {
			t.Errorf("FORMATS.md does not describe the field %q", k)
		}
	}
	if len(fields) != 24 {
		t.Errorf("%d fields are written; want the 24 of the description: %v", len(fields), fields)
	}
}
