package aroma

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
	if len(tab.release) != 11 || len(tab.descriptors) != 20 || len(tab.thresholds[Air]["limonene"]) != 3 || len(tab.thresholds[Water]) != 27 || len(tab.thresholds[Ethanol40]) != 9 {
		t.Errorf("%d strengths, %d descriptors, %d air thresholds of limonene, %d in water, %d in ethanol", len(tab.release), len(tab.descriptors),
			len(tab.thresholds[Air]["limonene"]), len(tab.thresholds[Water]), len(tab.thresholds[Ethanol40]))
	}
	// Names of the thresholds lead to the compounds of the library where they are in it.
	for _, name := range []string{"eucalyptol", "isoamyl acetate", "trans-anethole"} {
		if len(tab.thresholds[Water][name]) == 0 {
			t.Errorf("no threshold of %s in water", name)
		}
	}
	for _, bad := range []struct{ file, from, to, says string }{
		{"release.csv", "\n20,", "\n5,", "does not come after"},
		{"descriptors.csv", "\nlimonene,", "\nlinalool,", "twice"},
		{"air_thresholds.csv", "4340.0", "0", "above 0"},
		{"liquid_thresholds.csv", "ethanol40", "wine", "must be water or ethanol40"},
		{"liquid_thresholds.csv", "seen", "rumour", "rumour"},
	} {
		if _, err := load(changed(t, bad.file, bad.from, bad.to)); err == nil || !strings.Contains(err.Error(), bad.says) {
			t.Errorf("%s with %q for %q: %v; want %q", bad.file, bad.to, bad.from, err, bad.says)
		}
	}
}
