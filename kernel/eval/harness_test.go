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
	"sort"
	"strings"
	"sync"
	"testing"
	"time"

	"swanneck/kernel/eval"
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

// iterSource stands for package iter, whose own coroutines are part of the run-time system.
const iterSource = `package iter

type Seq[V any] func(yield func(V) bool)
type Seq2[K, V any] func(yield func(K, V) bool)

type pulled[V any] struct {
	v  V
	ok bool
	p  any
}

func Pull[V any](seq Seq[V]) (next func() (V, bool), stop func()) {
	ask, answer := make(chan bool), make(chan pulled[V])
	started, done := false, false
	run := func() {
		defer func() {
			p := recover()
			answer <- pulled[V]{p: p}
		}()
		if <-ask {
			seq(func(v V) bool {
				answer <- pulled[V]{v: v, ok: true}
				return <-ask
			})
		}
	}
	step := func(on bool) (v V, ok bool) {
		if done {
			return v, false
		}
		if !started {
			started = true
			if !on {
				done = true
				return v, false
			}
			go run()
		}
		ask <- on
		r := <-answer
		if !r.ok {
			done = true
		}
		if r.p != nil {
			panic(r.p)
		}
		return r.v, r.ok
	}
	return func() (V, bool) { return step(true) }, func() { step(false) }
}

func Pull2[K, V any](seq Seq2[K, V]) (next func() (K, V, bool), stop func()) {
	type pair struct {
		k K
		v V
	}
	n, s := Pull(func(yield func(pair) bool) {
		seq(func(k K, v V) bool { return yield(pair{k, v}) })
	})
	return func() (K, V, bool) {
		p, ok := n()
		return p.k, p.v, ok
	}, s
}
`

// besideSource holds generic functions of packages that are otherwise compiled.
var besideSource = map[string]string{
	"errors": `package errors

import "errors"

func AsType[E error](err error) (E, bool) {
	var e E
	ok := errors.As(err, &e)
	return e, ok
}
`,
	"sync": `package sync

import "sync"

func OnceValue[T any](f func() T) func() T {
	var (
		once  sync.Once
		valid bool
		p     any
		v     T
	)
	return func() T {
		once.Do(func() {
			defer func() {
				p = recover()
				if !valid {
					panic(p)
				}
			}()
			v = f()
			valid = true
		})
		if !valid {
			panic(p)
		}
		return v
	}
}

func OnceValues[T, U any](f func() (T, U)) func() (T, U) {
	type both struct {
		t T
		u U
	}
	g := OnceValue(func() both {
		t, u := f()
		return both{t, u}
	})
	return func() (T, U) {
		b := g()
		return b.t, b.u
	}
}
`}

func (w *world) Import(path string) (*types.Package, error) {
	if s := w.sources[path]; s != nil && besideSource[path] == "" {
		return s.Pkg, nil
	}
	switch path {
	case "iter":
		return w.load(path, map[string]string{"iter.go": iterSource})
	case "slices", "maps", "cmp":
		files := map[string]string{}
		names, _ := filepath.Glob(filepath.Join(runtime.GOROOT(), "src", path, "*.go"))
		for _, n := range names {
			if strings.HasSuffix(n, "_test.go") {
				continue
			}
			b, err := os.ReadFile(n)
			if err != nil {
				return nil, err
			}
			files[n] = string(b)
		}
		return w.load(path, files)
	}
	return w.source.Import(path)
}

func (w *world) load(path string, files map[string]string) (*types.Package, error) {
	s := &eval.Source{Info: newInfo(), Fset: w.fset}
	var names []string
	for n := range files {
		names = append(names, n)
	}
	sort.Strings(names)
	for _, n := range names {
		f, err := parser.ParseFile(w.fset, n, files[n], parser.SkipObjectResolution)
		if err != nil {
			return nil, err
		}
		s.Files = append(s.Files, f)
	}
	conf := types.Config{Importer: w, GoVersion: "go1.26"}
	p, err := conf.Check(path, w.fset, s.Files, s.Info)
	if err != nil {
		return nil, err
	}
	s.Pkg = p
	w.sources[path] = s
	return p, nil
}

func getWorld() *world {
	once.Do(func() {
		fset := token.NewFileSet()
		w := &world{fset: fset, source: importer.ForCompiler(fset, "source", nil), sources: map[string]*eval.Source{}}
		for _, p := range []string{"iter", "cmp", "slices", "maps"} {
			if _, err := w.Import(p); err != nil {
				panic(err)
			}
		}
		for path, src := range besideSource {
			if _, err := w.load(path, map[string]string{path + ".go": src}); err != nil {
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
