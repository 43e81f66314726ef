package notebook

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestWriteFile(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "vat.ipynb")
	n := New()
	n.Cells = []*Cell{NewCell(Markdown, "# Vat")}
	if err := WriteFile(path, n); err != nil {
		t.Fatal(err)
	}
	back, err := ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	sameBytes(t, path, mustBytes(t, back), mustBytes(t, n))

	if err := os.Chmod(path, 0o640); err != nil {
		t.Fatal(err)
	}
	link := filepath.Join(dir, "link.ipynb")
	if err := os.Symlink("vat.ipynb", link); err != nil {
		t.Skip("no links here:", err)
	}
	n.Cells[0].Source = "# Another vat"
	if err := WriteFile(link, n); err != nil {
		t.Fatal(err)
	}
	if info, err := os.Lstat(link); err != nil || info.Mode()&fs.ModeSymlink == 0 {
		t.Errorf("after WriteFile the link is %v, %v; want a link still", info, err)
	}
	info, err := os.Stat(path)
	if err != nil || info.Mode().Perm() != 0o640 {
		t.Errorf("after WriteFile the mode is %v, %v; want 0640 kept", info.Mode(), err)
	}
	if back, err := ReadFile(path); err != nil || back.Cells[0].Source != "# Another vat" {
		t.Errorf("the link's file was not written: %v", err)
	}
	onlyFiles(t, dir, "link.ipynb", "vat.ipynb")
}

// A notebook that cannot be written leaves the old file whole and no other behind.
func TestWriteFileFailureKeepsOldFile(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "vat.ipynb")
	if err := WriteFile(path, New()); err != nil {
		t.Fatal(err)
	}
	before, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := WriteFile(path, &Notebook{Cells: []*Cell{NewCell(Raw, "\xff")}}); err == nil {
		t.Fatal("WriteFile wrote text that is not UTF-8")
	}
	after, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	sameBytes(t, "after a failure", after, before)
	onlyFiles(t, dir, "vat.ipynb")
}

func TestWriteFileErrors(t *testing.T) {
	dir := t.TempDir()
	if err := WriteFile(dir, New()); err == nil || !strings.Contains(err.Error(), "not a regular file") {
		t.Errorf("WriteFile(folder) = %v", err)
	}
	nowhere := filepath.Join(dir, "no", "vat.ipynb")
	if err := WriteFile(nowhere, New()); !errors.Is(err, fs.ErrNotExist) || !strings.Contains(err.Error(), nowhere) {
		t.Errorf("WriteFile(%s) = %v; want an error that names it", nowhere, err)
	}
	if os.Geteuid() == 0 {
		t.Log("run as root: a read-only file cannot be tried")
		return
	}
	path := filepath.Join(dir, "readonly.ipynb")
	if err := os.WriteFile(path, nil, 0o444); err != nil {
		t.Fatal(err)
	}
	if err := WriteFile(path, New()); !errors.Is(err, fs.ErrPermission) || strings.Contains(err.Error(), "\n") {
		t.Errorf("WriteFile(read-only) = %v; want a permission error", err)
	}
}

func onlyFiles(t *testing.T, dir string, want ...string) {
	t.Helper()
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, e := range entries {
		names = append(names, e.Name())
	}
	if strings.Join(names, " ") != strings.Join(want, " ") {
		t.Errorf("files in the folder: %v; want %v", names, want)
	}
}
