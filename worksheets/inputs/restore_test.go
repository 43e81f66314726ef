package inputs_test

import (
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"swanneck/worksheets/entry"
	"swanneck/worksheets/inputs"
)

// What a run was given comes back from what its cells got, tables with their hash.
func TestRestore(t *testing.T) {
	asked := []entry.Input{
		{Kind: entry.Strength, Name: "pot strength", Usual: "45 %vol", Unit: entry.StrengthUnit},
		{Kind: entry.Table, Name: "lots", Usual: "volume (L)\n300"},
		{Kind: entry.Table, Name: "jars", Usual: "volume (L)\n300"},
		{Kind: entry.Table, Name: "bare", Usual: "volume (L)\n300"},
	}
	dir := t.TempDir()
	for name, text := range map[string]string{"lots.csv": "volume (L)\n200\n", "bare.csv": "volume (L)"} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	first := inputs.NewSet(asked)
	for name, value := range map[string]string{"pot strength": "50 %vol", "lots": "lots.csv", "bare": "bare.csv", "jars": "volume (L)\n1\n2"} {
		if err := first.Give(name, value, dir); err != nil {
			t.Fatal(err)
		}
	}
	second := inputs.NewSet(asked)
	for name, text := range first.Values() {
		if err := second.Restore(name, text); err != nil {
			t.Fatal(err)
		}
	}
	if !reflect.DeepEqual(first.Values(), second.Values()) {
		t.Errorf("%q; want %q", second.Values(), first.Values())
	}
	hashes := 0
	for i, r := range second.Rows() {
		if was := first.Rows()[i]; r.Hash != was.Hash || r.Changed != was.Changed {
			t.Errorf("%+v; want the hash and the mark of %+v", r, was)
		}
		if r.Hash != "" {
			hashes++
		}
	}
	if hashes != 2 {
		t.Errorf("%d tables have a hash; want lots and bare", hashes)
	}
	for _, c := range [][2]string{{"pot", "50 %vol"}, {"pot strength", "50 L"}} {
		if err := second.Restore(c[0], c[1]); err == nil || strings.Contains(err.Error(), "\n") {
			t.Errorf("Restore(%q, %q): %v; want one line", c[0], c[1], err)
		}
	}
}
