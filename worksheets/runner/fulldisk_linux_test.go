package runner_test

import (
	"errors"
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"swanneck/worksheets/runner"
)

// A disk that is full: the largest file may be smaller than the notebook. One line, and what was there stays as it was.
func TestFullDisk(t *testing.T) {
	_, out := executed(t, t.TempDir(), runner.Options{}, nil, append(water, `for i := range 3000 { fmt.Println(i, "a long line of output") }`)...)
	dir := t.TempDir()
	ipynb, html := runner.Names(dir, "water.ipynb")
	json, csv := runner.ResultNames(dir, "water.ipynb")
	was := map[string]string{}
	for _, f := range []string{ipynb, html, json, csv} {
		was[f] = "of an earlier run: " + f
		file(t, dir, filepath.Base(f), was[f])
	}
	signal.Ignore(syscall.SIGXFSZ)
	defer signal.Reset(syscall.SIGXFSZ)
	var old syscall.Rlimit
	if err := syscall.Getrlimit(syscall.RLIMIT_FSIZE, &old); err != nil {
		t.Fatal(err)
	}
	small := old
	small.Cur = 64 << 10
	if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &small); err != nil {
		t.Fatal(err)
	}
	_, _, err := runner.Write(out, dir, "water.ipynb", time.Time{}, runner.Options{ResultsFiles: true})
	if back := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &old); back != nil {
		t.Fatal(back)
	}
	if !errors.Is(err, syscall.EFBIG) || !strings.Contains(err.Error(), " cannot be written: ") || strings.Contains(err.Error(), "\n") {
		t.Errorf("%v; want one line that names the file", err)
	}
	for f, want := range was {
		if got, err := os.ReadFile(f); err != nil || string(got) != want {
			t.Errorf("%s holds %d bytes, %v; want what was there", f, len(got), err)
		}
	}
	if left, err := os.ReadDir(dir); err != nil || len(left) != len(was) {
		t.Errorf("%v, %v; want the %d files that were there", left, err, len(was))
	}
}
