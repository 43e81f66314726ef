package eval_test

import (
	"bytes"
	"errors"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"go/types"
	"os"
	"path/filepath"
	"reflect"
	"runtime"
	"strings"
	"sync"
	"testing"
	"time"

	"swanneck/kernel/eval"
	"swanneck/kernel/symbols"
	"swanneck/kernel/symbols/whitelist"
)

// world is what the test programs can import.
type world struct {
	fset   *token.FileSet
	lib    *symbols.Library
	tables map[string]map[string]reflect.Value
}

var (
	theWorld *world
	once     sync.Once
)

func newInfo() *types.Info {
	return &types.Info{Types: map[ast.Expr]types.TypeAndValue{}, Defs: map[*ast.Ident]types.Object{},
		Uses: map[*ast.Ident]types.Object{}, Implicits: map[ast.Node]types.Object{}, Scopes: map[ast.Node]*types.Scope{},
		Selections: map[*ast.SelectorExpr]*types.Selection{}, Instances: map[*ast.Ident]types.Instance{}}
}

// Import implements types.Importer.
func (w *world) Import(path string) (*types.Package, error) { return w.lib.Import(path) }

// sources returns the packages given as source that were imported so far.
func (w *world) sources() map[string]*eval.Source {
	out := map[string]*eval.Source{}
	for path, c := range w.lib.Sources() {
		out[path] = &eval.Source{Pkg: c.Pkg, Files: c.Files, Info: c.Info, Fset: c.Fset}
	}
	return out
}

func getWorld() *world {
	once.Do(func() {
		theWorld = &world{fset: token.NewFileSet(), lib: symbols.NewLibrary(), tables: map[string]map[string]reflect.Value{}}
		for _, path := range whitelist.Packages {
			theWorld.tables[path] = symbols.Values(path)
		}
	})
	return theWorld
}

// runProgram checks and runs a program and returns what it wrote; a failure of its run is written as Go would.
func runProgram(name, src string, limit time.Duration, combined bool) (out string, err error) {
	w := getWorld()
	s := &eval.Source{Info: newInfo(), Fset: w.fset}
	f, err := parser.ParseFile(w.fset, name, src, parser.SkipObjectResolution|parser.ParseComments)
	if err != nil {
		return "", err
	}
	s.Files = []*ast.File{f}
	conf := types.Config{Importer: w, GoVersion: "go1.26"}
	if s.Pkg, err = conf.Check("main", w.fset, s.Files, s.Info); err != nil {
		return "", err
	}
	var stdout, stderr bytes.Buffer
	errOut := &stderr
	if combined {
		errOut = &stdout
	}
	m := eval.New(eval.Config{Packages: w.tables, Sources: w.sources(), Stdout: &stdout, Stderr: errOut,
		GoPanic: func(p *eval.Panic) { fmt.Fprintln(&stderr, "panic in a goroutine:", p.Message(), p.Position()) }})
	done := make(chan error, 1)
	go func() {
		defer func() {
			if r := recover(); r != nil {
				buf := make([]byte, 1<<14)
				done <- fmt.Errorf("evaluator: %v\n%s", r, buf[:runtime.Stack(buf, false)])
			}
		}()
		done <- m.RunProgram(s)
	}()
	select {
	case err = <-done:
	case <-time.After(limit):
		m.Stop()
		select {
		case err = <-done:
			err = fmt.Errorf("did not end: %w", err)
		case <-time.After(2 * time.Second):
			return "", errors.New("did not stop")
		}
	}
	if err != nil && stderr.Len() > 0 {
		err = fmt.Errorf("%w\nstderr: %s", err, stderr.String())
	}
	return stdout.String(), err
}

func TestConformance(t *testing.T) {
	dir := "../../testdata/conformance"
	if d := os.Getenv("EVAL_DIR"); d != "" {
		dir = d
	}
	files, _ := filepath.Glob(dir + "/*/*.go")
	if only := os.Getenv("EVAL_ONLY"); only != "" {
		files = []string{only}
	}
	if len(files) == 0 {
		t.Fatal("no programs found")
	}
	same, refused, different := 0, 0, 0
	for _, file := range files {
		src, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		want, err := os.ReadFile(strings.TrimSuffix(file, ".go") + ".out")
		if err != nil {
			continue
		}
		name, _ := filepath.Rel(dir, file)
		got, err := runProgram(file, string(src), 20*time.Second, false)
		var u *eval.Unsupported
		switch {
		case errors.As(err, &u):
			refused++
			t.Logf("%s: refused: %v: %v", name, u.Pos, err)
		case got == string(want):
			same++
		default:
			different++
			t.Errorf("%s: %v\n%s", name, err, firstDifference(got, string(want)))
		}
	}
	t.Logf("same %d, refused %d, different %d", same, refused, different)
	if refused*33 > len(files) {
		t.Errorf("%d of %d programs were refused", refused, len(files))
	}
}

func firstDifference(got, want string) string {
	g, w := strings.Split(got, "\n"), strings.Split(want, "\n")
	for i := range max(len(g), len(w)) {
		a, b := "<end>", "<end>"
		if i < len(g) {
			a = g[i]
		}
		if i < len(w) {
			b = w[i]
		}
		if a != b {
			return fmt.Sprintf("line %d:\n got  %q\n want %q", i+1, a, b)
		}
	}
	return "no difference"
}
