package protocol

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

// The protocol's reference clients find nothing to complain about. JUPYTER_PYTHON names an interpreter that has them.
func TestReferenceClients(t *testing.T) {
	python := os.Getenv("JUPYTER_PYTHON")
	if python == "" {
		if os.Getenv("CI") != "" {
			t.Fatal("JUPYTER_PYTHON is not set; under CI it must name an interpreter with jupyter_kernel_test, nbclient and nbconvert")
		}
		t.Skip("JUPYTER_PYTHON is not set: there are no reference clients to run")
	}
	dir := t.TempDir()
	program := filepath.Join(dir, "swanneck")
	if out, err := exec.Command("go", "build", "-o", program, "swanneck/kernel/cmd/swanneck").CombinedOutput(); err != nil {
		t.Fatalf("go build: %v\n%s", err, out)
	}
	if out, err := exec.Command(program, "install", "--prefix", dir).CombinedOutput(); err != nil {
		t.Fatalf("install: %v\n%s", err, out)
	}
	scripts, err := filepath.Glob("testdata/clients/*.py")
	if err != nil || len(scripts) == 0 {
		t.Fatalf("no scripts were found: %v", err)
	}
	for _, s := range scripts {
		t.Run(filepath.Base(s), func(t *testing.T) {
			cmd := exec.Command(python, s)
			cmd.Env = append(os.Environ(), "JUPYTER_PATH="+filepath.Join(dir, "share", "jupyter"), "SWANNECK_STATE="+t.TempDir(),
				"JUPYTER_RUNTIME_DIR="+t.TempDir(), "JUPYTER_CONFIG_DIR="+t.TempDir(), "JUPYTER_DATA_DIR="+t.TempDir(), "IPYTHONDIR="+t.TempDir())
			out, err := cmd.CombinedOutput()
			t.Logf("%s", out)
			if err != nil {
				t.Error(err)
			}
		})
	}
}
