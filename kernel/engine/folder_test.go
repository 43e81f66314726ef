package engine_test

import (
	"context"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"swanneck/kernel/engine"
)

// folder makes a folder with a table in it, and beside it a file that nobody may read.
func folder(t *testing.T) string {
	t.Helper()
	top := t.TempDir()
	dir := filepath.Join(top, "trial")
	for name, text := range map[string]string{
		"trial/jars.csv":       "jar;volume (mL)\n1;200\n2;205,5\n",
		"trial/sub/deep.csv":   "a\n1\n",
		"trial/.secret.csv":    "a\n1\n",
		"trial/.keys/deep.csv": "a\n1\n",
		"trial/key.pem":        "a\n1\n",
		"trial/settings.json":  "{}",
		"trial/sub/lot-17.results.json": `{"format": "swanneck results", "version": 1, "clock": "2026-01-01T12:00:00Z",
			"results": [{"name": "Pure alcohol", "value": 282.05, "unit": "L", "figure": "282.1"}]}`,
		"outside.csv": "a\n1\n",
	} {
		p := filepath.Join(top, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(p), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(p, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if runtime.GOOS != "windows" {
		for link, to := range map[string]string{"out.csv": "../outside.csv", "dir.csv": "sub", "same.csv": "jars.csv"} {
			if err := os.Symlink(to, filepath.Join(dir, link)); err != nil {
				t.Fatal(err)
			}
		}
	}
	return dir
}

func TestTableOfTheFolder(t *testing.T) {
	e := start(t, engine.Options{Folder: folder(t)})
	if got, f := run(t, e, `Table("jars.csv").Numbers("volume", "L")`); f != nil || !strings.Contains(got, "[0.2 0.2055]") {
		t.Errorf("%s, %v", got, f)
	}
	if got, f := run(t, e, `Table("sub/deep.csv").Len()`); f != nil || got != "value:1" {
		t.Errorf("%s, %v", got, f)
	}
	if got, f := run(t, e, `Results("sub/lot-17.results.json").Figure("Pure alcohol", "mL")`); f != nil || got != "value:282050" {
		t.Errorf("%s, %v", got, f)
	}
	files := e.FilesRead()
	if len(files) != 3 || files[0].Name != "jars.csv" || files[1].Name != "sub/deep.csv" || files[2].Name != "sub/lot-17.results.json" {
		t.Errorf("files read: %v", files)
	}
	for name, want := range map[string]string{
		"../outside.csv":                "only files in the worksheet's own folder",
		`..\\outside.csv`:               "only files in the worksheet's own folder",
		"/etc/passwd":                   "only files in the worksheet's own folder",
		"sub/../../outside.csv":         "only files in the worksheet's own folder",
		".secret.csv":                   "hidden files",
		".keys/deep.csv":                "hidden files",
		"sub/../.secret.csv":            "hidden files",
		"key.pem":                       "ends in .csv",
		"settings.json":                 "that of earlier results in .results.json",
		"none.csv":                      "none.csv is not in the worksheet's folder",
		"":                              "needs a name",
		"jars.csv\\x00":                 "ends in .csv",
		strings.Repeat("x", 5) + ".CSV": "not in the worksheet's folder",
	} {
		if got, f := run(t, e, `Table("`+name+`")`); f == nil || !strings.Contains(f.Items[0].Msg, want) {
			t.Errorf("Table(%q): %s, %v; want %q", name, got, f, want)
		}
	}
	if runtime.GOOS == "windows" {
		return
	}
	for name, want := range map[string]string{"out.csv": "out.csv: ", "dir.csv": "not a plain file"} {
		if got, f := run(t, e, `Table("`+name+`")`); f == nil || !strings.Contains(f.Items[0].Msg, want) {
			t.Errorf("Table(%q): %s, %v; want %q", name, got, f, want)
		}
	}
	if got, f := run(t, e, `Table("same.csv").Len()`); f != nil || got != "value:2" {
		t.Errorf("a link within the folder: %s, %v", got, f)
	}
}

func TestTableWithoutAFolder(t *testing.T) {
	e := start(t, engine.Options{})
	if _, f := run(t, e, `Table("jars.csv")`); f == nil || !strings.Contains(f.Items[0].Msg, "no folder to read from") {
		t.Error(f)
	}
}

// A replay is given what the file held when the cell ran, not what it holds now.
func TestReplayGetsTheSameTable(t *testing.T) {
	dir := folder(t)
	e := start(t, engine.Options{Folder: dir})
	if _, f := run(t, e, `rows := Table("jars.csv").Len()
_, missing := func() (n int, bad any) { defer func() { bad = recover() }(); return Table("late.csv").Len(), nil }()`); f != nil {
		t.Fatal(f)
	}
	for _, name := range []string{"jars.csv", "late.csv"} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte("jar\n1\n2\n3\n4\n"), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if err := e.Restore(context.Background()); err != nil {
		t.Fatal(err)
	}
	if got, f := run(t, e, `fmt.Println(rows, missing != nil, Table("jars.csv").Len())`); f != nil || got != `stdout:"2 true 4\n"` {
		t.Errorf("%s, %v; want the 2 rows of the first time, and the 4 of now", got, f)
	}
}
