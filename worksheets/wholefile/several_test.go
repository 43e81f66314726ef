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
