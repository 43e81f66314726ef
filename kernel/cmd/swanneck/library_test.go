package main

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"swanneck/worksheets/library"
	"swanneck/worksheets/notebook"
)

// elsewhere runs the program in another environment: time zone, home folder, processors, language, working folder.
func elsewhere(t *testing.T, dir string, env []string, args ...string) string {
	t.Helper()
	exe, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	cmd := &exec.Cmd{Path: exe, Args: append([]string{"swanneck"}, args...), Dir: dir, Env: append(os.Environ(), env...)}
	out, err := cmd.CombinedOutput()
	if err != nil {
		t.Fatalf("swanneck %v: %v\n%s", args, err, out)
	}
	return string(out)
}

// What holds for every worksheet that comes with the program.
func TestLibrary(t *testing.T) {
	names := library.Names()
	if len(names) < 5 {
		t.Fatalf("only %d worksheets: %v", len(names), names)
	}
	schema, err := jsonschema.NewCompiler().Compile("../../../testdata/notebooks/nbformat.v4.5.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range names {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			here, there := t.TempDir(), t.TempDir()
			elsewhere(t, here, nil, "new", name)
			elsewhere(t, there, nil, "new", name)
			elsewhere(t, here, []string{"TZ=UTC", "GOMAXPROCS=1", "HOME=" + here, "LC_ALL=C"}, "run", "--results", "--markdown", name+".ipynb")
			elsewhere(t, there, []string{"TZ=Pacific/Auckland", "GOMAXPROCS=3", "HOME=/", "LC_ALL=de_DE.UTF-8"}, "run", "--results", "--markdown", name+".ipynb")
			files, err := filepath.Glob(filepath.Join(here, "out", "*"))
			if err != nil || len(files) < 5 {
				t.Fatalf("%v, %v", files, err)
			}
			for _, f := range files {
				a, errA := os.ReadFile(f)
				b, errB := os.ReadFile(filepath.Join(there, "out", filepath.Base(f)))
				if errA != nil || errB != nil || !bytes.Equal(a, b) {
					t.Errorf("%s is not the same file twice: %v %v", filepath.Base(f), errA, errB)
				}
				if strings.HasSuffix(f, ".ipynb") {
					doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(a))
					if err == nil {
						err = schema.Validate(doc)
					}
					if err != nil {
						t.Errorf("%s: not valid by the schema of notebook format 4.5: %v", name, err)
					}
				}
			}
			if said := elsewhere(t, here, nil, "check", filepath.Join("out", name+".ipynb")); !strings.Contains(said, "same") {
				t.Errorf("check: %s", said)
			}
			if said := elsewhere(t, here, nil, "inputs", name+".ipynb"); strings.Count(said, ":") < 3 {
				t.Errorf("inputs: %s", said)
			}

			sheet, err := notebook.ReadFile(filepath.Join(here, name+".ipynb"))
			if err != nil {
				t.Fatal(err)
			}
			first, last, code := sheet.Cells[0], sheet.Cells[len(sheet.Cells)-1], 0
			if first.Type != notebook.Markdown || !strings.HasPrefix(first.Source, "# ") || !strings.Contains(first.Source, "invented") {
				t.Error("it does not open with its title, what it answers, and that its scenario is invented")
			}
			if last.Type != notebook.Markdown || !strings.Contains(last.Source, "## What to do next") {
				t.Error("it does not end with what to do next")
			}
			caution, ids := false, map[string]bool{}
			for _, c := range sheet.Cells {
				if ids[c.ID] {
					t.Errorf("two cells are called %q", c.ID)
				}
				ids[c.ID] = true
				if c.Type == notebook.Code {
					code += strings.Count(strings.TrimSpace(c.Source), "\n") + 1
				}
				caution = caution || strings.Contains(c.Source, "> **Caution.**")
			}
			most := 130
			if name == "botanical-trial" { // the whole of the main job
				most = 175
			}
			if code > most {
				t.Errorf("%d lines of code; a page and a half is too much", code)
			}
			if !caution {
				t.Error("it has no caution")
			}
			if report, err := os.ReadFile(filepath.Join(here, "out", name+".html")); err != nil || !regexp.MustCompile(`(?i)local codes`).Match(report) {
				t.Errorf("the report does not defer to local codes: %v", err)
			}
		})
	}
}
