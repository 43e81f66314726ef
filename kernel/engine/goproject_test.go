package engine_test

import (
	"context"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"swanneck/kernel/display"
	"swanneck/kernel/engine"
	"swanneck/kernel/symbols/whitelist"
)

var importPath = regexp.MustCompile(`(?m)^\s*(?:import\s+)?(?:[\w.]+\s+)?"([\w/.]+)"\s*$`)

// knownDifferent lists programs of the Go project that do otherwise as cells, with the cause.
var knownDifferent = map[string]string{
	"divmod.go":               "runs for longer than a cell may: billions of divisions",
	"maplinear.go":            "measures run times against each other",
	"abi/uglyfib.go":          "a huge recursion: longer than a cell may run",
	"fixedbugs/issue13169.go": "allocates an array of gigabytes",
}

// The Go project's own programs, where the toolchain brings them, as cells: those marked to be run that import only
// what cells can import. None of them is part of this project. Set GO_PROGRAMS to run them.
func TestGoProjectPrograms(t *testing.T) {
	if os.Getenv("GO_PROGRAMS") == "" {
		t.Skip("GO_PROGRAMS is not set")
	}
	goroot, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		t.Skipf("there is no go command here: %v", err)
	}
	root := filepath.Join(strings.TrimSpace(string(goroot)), "test")
	var files []string
	err = filepath.WalkDir(root, func(p string, d os.DirEntry, err error) error {
		if err == nil && strings.HasSuffix(p, ".go") && !strings.Contains(p, ".dir"+string(filepath.Separator)) {
			files = append(files, p)
		}
		return nil
	})
	if err != nil || len(files) == 0 {
		t.Skipf("the toolchain here brings no test programs (%s)", root)
	}
	e := start(t, engine.Options{CellTime: 20 * time.Second})
	same, refused, different := 0, 0, 0
	for _, file := range files {
		b, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		src, name := string(b), strings.TrimPrefix(file, root+string(filepath.Separator))
		if !strings.HasPrefix(src, "// run\n") || !ourImports(src) {
			continue
		}
		if why := knownDifferent[filepath.ToSlash(name)]; why != "" {
			different++
			t.Logf("different: %s: %s", name, why)
			continue
		}
		want, _ := os.ReadFile(strings.TrimSuffix(file, ".go") + ".out") // most programs print nothing
		if err := e.Forget(); err != nil {
			t.Fatal(err)
		}
		out := both{&strings.Builder{}}
		err = e.Run(context.Background(), "cell", src, out)
		var f *engine.Failure
		switch {
		case err != nil && !errors.As(err, &f):
			t.Fatal(err)
		case f != nil && f.Kind == engine.Refused:
			refused++
			t.Logf("refused: %s: %s", name, f.Items[0])
		case f != nil:
			different++
			t.Logf("different: %s: %v", name, f)
		case out.String() != string(want):
			different++
			t.Logf("different: %s: prints %.200q; want %.200q", name, out.String(), want)
		default:
			same++
		}
	}
	n := same + refused + different
	t.Logf("of %d programs %d the same, %d refused, %d different", n, same, refused, different)
	if n < 500 || different*100 > 2*n {
		t.Errorf("%d of %d different; at most 2 %% of at least 500 may be", different, n)
	}
}

func ourImports(src string) bool {
	for _, m := range importPath.FindAllStringSubmatch(src, -1) {
		if !slices.Contains(whitelist.Packages, m[1]) {
			return false
		}
	}
	return true
}

// The recorded outputs of the corpus are what the Go command prints.
func TestCorpusIsWhatGoPrints(t *testing.T) {
	if os.Getenv("GO_PROGRAMS") == "" {
		t.Skip("GO_PROGRAMS is not set")
	}
	if _, err := exec.LookPath("go"); err != nil {
		t.Skip("there is no go command here")
	}
	files, err := filepath.Glob(corpus + "/*/*.go")
	if err != nil || len(files) < 300 {
		t.Fatalf("%d programs, %v; there must be 300", len(files), err)
	}
	for _, file := range files {
		want, err := os.ReadFile(strings.TrimSuffix(file, ".go") + ".out")
		if err != nil {
			t.Fatal(err)
		}
		got, err := exec.Command("go", "run", file).Output()
		if err != nil || string(got) != string(want) {
			t.Errorf("go run %s: %v\n%s\nrecorded:\n%s", file, err, got, want)
		}
	}
}

// both keeps what goes to standard output and standard error together, as a terminal shows it.
type both struct{ *strings.Builder }

func (b both) Stream(_, text string)  { b.WriteString(text) }
func (b both) Display(display.Bundle) {}
func (b both) Value(display.Bundle)   {}
