package louche

import (
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"
)

// copyOf returns the data files with one of them changed.
func copyOf(t *testing.T, name, from, to string) fs.FS {
	t.Helper()
	out := fstest.MapFS{}
	changed := false
	entries, err := files.ReadDir("data")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		b, err := files.ReadFile("data/" + e.Name())
		if err != nil {
			t.Fatal(err)
		}
		text := string(b)
		if e.Name() == name {
			changed = strings.Contains(text, from)
			text = strings.Replace(text, from, to, 1)
		}
		out["data/"+e.Name()] = &fstest.MapFile{Data: []byte(text)}
	}
	if name != "" && !changed {
		t.Fatalf("%s has no %q to change", name, from)
	}
	return out
}

func TestDataFilesAreRead(t *testing.T) {
	tab, err := load(files)
	if err != nil {
		t.Fatal(err)
	}
	if len(tab.refraction) < 20 || len(tab.spirit) != 11 || len(tab.tieLines) != 8 || len(tab.hazes) != 6 || len(tab.crystal) != 1 {
		t.Errorf("%d, %d, %d, %d, %d rows", len(tab.refraction), len(tab.spirit), len(tab.tieLines), len(tab.hazes), len(tab.crystal))
	}
	for name := range tab.refraction { // a misspelt name would never be found
		if _, err := OilOf(name); err != nil {
			t.Errorf("oil_refraction.csv: %v", err)
		}
	}
	for _, bad := range []struct{ file, from, to, says string }{
		{"solubility.csv", "0.0138", "little", "must be a number"},
		{"solubility.csv", "memory", "hearsay", "hearsay"},
		{"crystal.csv", `"melting point as monographs print it (seen); heat of fusion from memory"`, `""`, "no source"},
		{"haze.csv", "oil haze,y", "oil haze,maybe", "must be y, n or empty"},
	} {
		if _, err := load(copyOf(t, bad.file, bad.from, bad.to)); err == nil || !strings.Contains(err.Error(), bad.says) {
			t.Errorf("%s with %q for %q: %v; want %q", bad.file, bad.to, bad.from, err, bad.says)
		}
	}
	if _, err := load(copyOf(t, "", "", "")); err != nil {
		t.Error(err)
	}
}
