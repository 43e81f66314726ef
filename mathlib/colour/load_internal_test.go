package colour

import (
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"
)

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
	if len(tab.pigment) != 3 || len(tab.pigment["lutein"]) != 401 || len(tab.pheophytin["a"]) != 7 || len(tab.pheophytin["b"]) != 5 || len(tab.loss) != 3 || tab.firstNM != 380 {
		t.Errorf("%d pigments, %d points, %d and %d bands, %d rows of loss", len(tab.pigment), len(tab.pigment["lutein"]), len(tab.pheophytin["a"]), len(tab.pheophytin["b"]), len(tab.loss))
	}
	// KeepColour takes rows of loss.csv by their place.
	if tab.loss[0].pigment != "chlorophyll a" || tab.loss[2].low != 18.4 {
		t.Errorf("loss.csv begins with %q", tab.loss[0].pigment)
	}
	for _, bad := range []struct{ file, from, to, says string }{
		{"observer_d65.csv", "\n385,", "\n386,", "not at 385 nm"},
		{"observer_d65.csv", "\n780,", "\n# 780,", "80 rows"},
		{"observer_d65.csv", "seen", "rumour", "rumour"},
		{"pigments.csv", "\n400,", "\n401,", "not at 400 nm"},
		{"pheophytin.csv", "122.8", "much", "must be a number"},
		{"loss.csv", "18.4", "", "must be a number"},
	} {
		if _, err := load(changed(t, bad.file, bad.from, bad.to)); err == nil || !strings.Contains(err.Error(), bad.says) {
			t.Errorf("%s with %q for %q: %v; want %q", bad.file, bad.to, bad.from, err, bad.says)
		}
	}
}
