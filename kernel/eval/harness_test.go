package eval_test

import (
	"bytes"
	"errors"
	"fmt"
	"go/ast"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"os"
	"path/filepath"
	"reflect"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"swanneck/kernel/eval"
	"swanneck/kernel/sources"
)

// world is what the test programs can import, type-checked once.
type world struct {
	fset    *token.FileSet
	source  types.Importer
	sources map[string]*eval.Source
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

func (w *world) Import(path string) (*types.Package, error) {
	if s := w.sources[path]; s != nil {
		return s.Pkg, nil
	}
	if !slices.Contains(sources.Paths, path) {
		return w.source.Import(path)
	}
	c, err := sources.Check(path, w)
	if err != nil {
		return nil, err
	}
	w.sources[path] = &eval.Source{Pkg: c.Pkg, Files: c.Files, Info: c.Info, Fset: c.Fset}
	return c.Pkg, nil
}

func getWorld() *world {
	once.Do(func() {
		fset := token.NewFileSet()
		w := &world{fset: fset, source: importer.ForCompiler(fset, "source", nil), sources: map[string]*eval.Source{}}
		for _, p := range sources.Paths {
			if _, err := w.Import(p); err != nil {
				panic(err)
			}
		}
		theWorld = w
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
	m := eval.New(eval.Config{Packages: tables, Sources: w.sources, Stdout: &stdout, Stderr: errOut,
		Fronts: map[string]reflect.Value{
			"os.Exit":            reflect.ValueOf(func(n int) { panic(fmt.Sprint("exit ", n)) }),
			"runtime.Breakpoint": reflect.ValueOf(func() { panic("breakpoint") }),
		},
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
