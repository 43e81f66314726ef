package eval_test

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"swanneck/kernel/eval"
	"swanneck/kernel/symbols/whitelist"
)

var importLine = regexp.MustCompile(`(?m)^\s*(?:import\s+)?(?:[\w.]+\s+)?"([\w/.]+)"\s*$`)

// TestGoTests runs the programs of the Go project's own test folder, which must end without a word or print what
// stands beside them. It takes a while: set EVAL_GOTEST to a pattern of file names, such as "*".
func TestGoTests(t *testing.T) {
	pattern := os.Getenv("EVAL_GOTEST")
	if pattern == "" {
		t.Skip("EVAL_GOTEST is not set")
	}
	goroot, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		t.Skipf("there is no go command here: %v", err)
	}
	root := filepath.Join(strings.TrimSpace(string(goroot)), "test")
	var files []string
	for _, dir := range []string{"", "chan", "interface", "ken", "typeparam", "fixedbugs", "escape", "range", "closedchan", "method"} {
		fs, _ := filepath.Glob(filepath.Join(root, dir, pattern+".go"))
		files = append(files, fs...)
	}
	counts := map[string]int{}
	for _, file := range files {
		b, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		src := string(b)
		if !strings.HasPrefix(src, "// run\n") {
			continue
		}
		allowed := true
		for _, m := range importLine.FindAllStringSubmatch(src, -1) {
			allowed = allowed && slices.Contains(whitelist.Packages, m[1])
		}
		if !allowed || strings.Contains(src, "SetFinalizer") || strings.Contains(src, `import "C"`) {
			continue
		}
		name, _ := filepath.Rel(root, file)
		if len(os.Getenv("EVAL_SKIP")) > 0 && regexp.MustCompile(os.Getenv("EVAL_SKIP")).MatchString(name) {
			continue
		}
		fmt.Fprintln(os.Stderr, "run", name)
		want, _ := os.ReadFile(strings.TrimSuffix(file, ".go") + ".out")
		got, err := runProgram(file, src, 10*time.Second, true)
		var u *eval.Unsupported
		switch {
		case errors.As(err, &u):
			counts["refused"]++
			t.Logf("%s: refused: %v: %v", name, u.Pos, err)
		case err == nil && got == string(want):
			counts["same"]++
		default:
			counts["different"]++
			t.Errorf("%s: %v\n%s", name, err, firstDifference(got, string(want)))
		}
	}
	t.Log(counts)
}
