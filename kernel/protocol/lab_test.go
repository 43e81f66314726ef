package protocol

import (
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"
)

// In a real notebook program in a browser, people see what they should. JUPYTER_PYTHON names an interpreter that has
// jupyterlab and playwright; chromium is found on the path. go test -artifacts keeps the screenshots.
func TestNotebookProgramInABrowser(t *testing.T) {
	if testing.Short() {
		t.Skip("the browser takes half a minute")
	}
	missing := t.Skipf
	if os.Getenv("CI") != "" {
		missing = t.Fatalf
	}
	python := os.Getenv("JUPYTER_PYTHON")
	if python == "" {
		missing("JUPYTER_PYTHON is not set: it must name an interpreter with jupyterlab and playwright")
	}
	if out, err := exec.Command(python, "-c", "import jupyterlab, nbformat, playwright").CombinedOutput(); err != nil {
		missing("%s has not all of jupyterlab, nbformat and playwright: %v\n%s", python, err, out)
	}
	if _, err := exec.LookPath("chromium"); err != nil {
		missing("there is no browser: %v", err)
	}
	program := filepath.Join(t.TempDir(), "swanneck")
	if out, err := exec.Command("go", "build", "-o", program, "swanneck/kernel/cmd/swanneck").CombinedOutput(); err != nil {
		t.Fatalf("go build: %v\n%s", err, out)
	}
	pictures := t.ArtifactDir()
	ctx, cancel := context.WithTimeout(t.Context(), 5*time.Minute)
	defer cancel()
	cmd := exec.CommandContext(ctx, python, "-B", filepath.Join("testdata", "lab", "lab.py"), program, pictures)
	cmd.Cancel = func() error { return cmd.Process.Signal(os.Interrupt) } // it ends what it started
	cmd.WaitDelay = time.Minute
	out, err := cmd.CombinedOutput()
	t.Logf("%s", out)
	if err != nil {
		t.Errorf("%v; go test -artifacts keeps the screenshots", err)
	}
	if seen, err := filepath.Glob(filepath.Join(pictures, "*.png")); err != nil || len(seen) == 0 {
		t.Errorf("there are no screenshots: %v", err)
	}
}
