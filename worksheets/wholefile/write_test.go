package wholefile

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestWrite(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "a file.txt")
	for _, text := range []string{"first", "second, longer", "3"} {
		if err := Write(path, []byte(text)); err != nil {
			t.Fatal(err)
		}
		if got, err := os.ReadFile(path); err != nil || string(got) != text {
			t.Errorf("%q, %v; want %q", got, err, text)
		}
	}
	left, err := os.ReadDir(dir)
	if err != nil || len(left) != 1 {
		t.Errorf("%v, %v; want the one file and nothing beside it", left, err)
	}
}

// What cannot be written leaves what was there, and says so in one line with the file's name.
func TestWriteRefused(t *testing.T) {
	dir := t.TempDir()
	for _, path := range []string{dir, filepath.Join(dir, "no", "such", "folder.txt")} {
		err := Write(path, []byte("x"))
		if err == nil || !strings.Contains(err.Error(), path) || strings.Contains(err.Error(), "\n") {
			t.Errorf("Write(%s): %v; want one line with its name", path, err)
		}
	}
	left, err := os.ReadDir(dir)
	if err != nil || len(left) != 0 {
		t.Errorf("%v, %v; want an empty folder", left, err)
	}
}
