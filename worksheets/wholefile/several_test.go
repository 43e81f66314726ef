package wholefile

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// One of several files that cannot be written leaves the others as they were, and nothing beside them.
func TestWriteAll(t *testing.T) {
	dir := t.TempDir()
	a, b := filepath.Join(dir, "a"), filepath.Join(dir, "b")
	if err := WriteAll(File{a, []byte("1")}, File{b, []byte("2")}); err != nil {
		t.Fatal(err)
	}
	err := WriteAll(File{a, []byte("3")}, File{filepath.Join(dir, "none", "c"), nil}, File{b, []byte("4")})
	if err == nil || !strings.Contains(err.Error(), filepath.Join(dir, "none", "c")) || strings.Contains(err.Error(), "\n") {
		t.Errorf("%v; want one line with the file's name", err)
	}
	for path, want := range map[string]string{a: "1", b: "2"} {
		if got, err := os.ReadFile(path); err != nil || string(got) != want {
			t.Errorf("%s holds %q, %v; want %q", path, got, err, want)
		}
	}
	if left, err := os.ReadDir(dir); err != nil || len(left) != 2 {
		t.Errorf("%v, %v; want the two files", left, err)
	}
}

func TestClear(t *testing.T) {
	dir := t.TempDir()
	for _, name := range []string{"a[1].csv", ".a[1].csv.17-0.part", ".a[1].csv.18-3.part", ".a1.csv.17-0.part", ".b.csv.17-0.part"} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte("x"), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if err := Clear(filepath.Join(dir, "a[1].csv")); err != nil {
		t.Fatal(err)
	}
	left, err := os.ReadDir(dir)
	if err != nil || len(left) != 3 {
		t.Errorf("%v, %v; want the file itself and what belongs to others", left, err)
	}
}
