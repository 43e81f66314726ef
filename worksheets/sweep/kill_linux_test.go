package sweep

import (
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"syscall"
	"testing"
)

// killWorkers kills every process that this one has started, and returns how many there were.
func killWorkers(t testing.TB) (n int) {
	t.Helper()
	list, err := filepath.Glob("/proc/[0-9]*/stat")
	if err != nil {
		t.Error(err)
	}
	for _, name := range list {
		b, err := os.ReadFile(name)
		if err != nil {
			continue // it has ended meanwhile
		}
		_, rest, _ := strings.Cut(string(b), ") ") // behind the name of the program
		f := strings.Fields(rest)
		if len(f) < 2 || f[1] != strconv.Itoa(os.Getpid()) {
			continue
		}
		if pid, err := strconv.Atoi(filepath.Base(filepath.Dir(name))); err == nil && syscall.Kill(pid, syscall.SIGKILL) == nil {
			n++
		}
	}
	return n
}
