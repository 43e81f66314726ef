package eval_test

import (
	"bytes"
	"errors"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"go/types"
	"strings"
	"testing"
	"time"

	"swanneck/kernel/eval"
)

// cells is a small front end: declarations and statements checked on one package.
type cells struct {
	t    *testing.T
	pkg  *types.Package
	m    *eval.Machine
	out  bytes.Buffer
	vars map[string]*types.Var
	n    int
	gone chan *eval.Panic

	spent time.Duration // by the last cell in Run
}

func newCells(t *testing.T) *cells {
	c := &cells{t: t, pkg: types.NewPackage("main", "main"), vars: map[string]*types.Var{}, gone: make(chan *eval.Panic, 10)}
	w := getWorld()
	c.m = eval.New(eval.Config{Packages: w.tables, Sources: w.sources(), Stdout: &c.out, Stderr: &c.out,
		GoPanic: func(p *eval.Panic) { c.gone <- p }})
	return c
}

// run checks and runs a cell: declarations, a line of dashes, statements; the last line may be "= expression".
func (c *cells) run(src string) (eval.Result, error) {
	c.t.Helper()
	w := getWorld()
	c.n++
	decls, body, ok := strings.Cut(src, "---\n")
	if !ok {
		decls, body = "", src
	}
	last := ""
	if i := strings.LastIndex(body, "= "); i == 0 || i > 0 && body[i-1] == '\n' {
		body, last = body[:i], body[i+2:]
	}
	if last != "" {
		body += "show(" + strings.TrimSpace(last) + ")\n"
	}
	text := "package main\nimport (\"fmt\"; \"strings\"; \"sort\"; \"errors\"; \"time\")\nvar _, _, _, _, _ = fmt.Sprint, strings.ToUpper, sort.Ints, errors.New, time.Now\n" +
		decls + fmt.Sprintf("\nfunc cell%d() {\n//line cell%d:1:1\n%s\n}\n", c.n, c.n, body)
	if c.n == 1 {
		text += "func show(...any) {}\n"
	}
	f, err := parser.ParseFile(w.fset, fmt.Sprintf("f%d.go", c.n), text, parser.SkipObjectResolution)
	if err != nil {
		c.t.Fatal(err)
	}
	info := newInfo()
	conf := &types.Config{Importer: w, Error: func(err error) {
		if !strings.Contains(err.Error(), "declared and not used") && !strings.Contains(err.Error(), "imported and not used") &&
			!strings.Contains(err.Error(), "redeclared") {
			c.t.Error(err)
		}
	}}
	// Functions and types of earlier cells stay in the scope; variables are put there after their cell.
	_ = types.NewChecker(conf, w.fset, c.pkg, info).Files([]*ast.File{f})
	ch := eval.Chunk{Info: info, Fset: w.fset, Pkg: c.pkg}
	for _, d := range f.Decls {
		fd, ok := d.(*ast.FuncDecl)
		switch {
		case !ok:
		case fd.Name.Name == fmt.Sprintf("cell%d", c.n):
			ch.Body = fd.Body
		case fd.Name.Name == "show":
		default:
			ch.Funcs = append(ch.Funcs, fd)
		}
	}
	if last != "" {
		n := len(ch.Body.List) - 1
		ch.Last = ch.Body.List[n].(*ast.ExprStmt).X.(*ast.CallExpr).Args[0]
		ch.Body.List = ch.Body.List[:n]
	}
	for _, s := range ch.Body.List {
		for _, id := range defined(s) {
			if v, ok := info.Defs[id].(*types.Var); ok {
				ch.Globals = append(ch.Globals, v)
			}
		}
	}
	for path, src := range w.sources() {
		c.m.AddSource(path, src)
	}
	start := time.Now()
	res, err := c.m.Run(ch)
	c.spent = time.Since(start)
	for _, v := range ch.Globals {
		c.vars[v.Name()] = v
		c.pkg.Scope().Insert(v)
	}
	return res, err
}

func defined(s ast.Stmt) (ids []*ast.Ident) {
	switch s := s.(type) {
	case *ast.AssignStmt:
		if s.Tok == token.DEFINE {
			for _, l := range s.Lhs {
				ids = append(ids, l.(*ast.Ident))
			}
		}
	case *ast.DeclStmt:
		for _, sp := range s.Decl.(*ast.GenDecl).Specs {
			if v, ok := sp.(*ast.ValueSpec); ok {
				ids = append(ids, v.Names...)
			}
		}
	}
	return ids
}

func (c *cells) ok(src string) eval.Result {
	c.t.Helper()
	r, err := c.run(src)
	if err != nil {
		c.t.Fatalf("%s: %v", src, err)
	}
	return r
}

func (c *cells) printed(want string) {
	c.t.Helper()
	if got := c.out.String(); got != want {
		c.t.Errorf("printed %q; want %q", got, want)
	}
	c.out.Reset()
}

// Variables live from cell to cell, and functions see them change.
func TestSessionVariables(t *testing.T) {
	c := newCells(t)
	c.ok("x := 3\nf := func() int { x++; return x }\n")
	c.ok("type T struct{ n int }\nfunc (t *T) Inc() int { t.n += x; return t.n }\nfunc twice() int { return 2 * x }\n---\nx = 10\nv := T{1}\n")
	c.ok("fmt.Println(f(), x, v.Inc(), v, twice())\n")
	c.printed("11 11 12 {12} 22\n")
}

// The expression at the end of a cell is shown with its type.
func TestLast(t *testing.T) {
	c := newCells(t)
	r := c.ok("type C float64\nfunc (c C) String() string { return fmt.Sprintf(\"%.1f °C\", float64(c)) }\n---\nx := C(20)\n= x + 1\n")
	if len(r.Values) != 1 || fmt.Sprint(c.m.Any(r.Values[0])) != "21.0 °C" || r.Values[0].Type.String() != "main.C" {
		t.Errorf("values %v", r.Values)
	}
	r = c.ok("= strings.Cut(\"a=b\", \"=\")\n")
	if len(r.Values) != 3 || r.Values[1].V.String() != "b" {
		t.Errorf("values %v", r.Values)
	}
	v, ok := c.m.Global(c.vars["x"])
	if !ok || v.V.Float() != 20 {
		t.Errorf("x = %v, %v", v, ok)
	}
}

// A failing statement is reported with its place and how far the cell came.
func TestFailure(t *testing.T) {
	c := newCells(t)
	c.ok("type S struct{ p *S; n int }\nfunc deep(s *S) int { return s.p.n }\n---\nxs := []int{1, 2, 3}\n")
	for _, tt := range []struct {
		src, text string
		line, col int
		done      int
	}{
		{"a := 1\nfmt.Print(a)\nfmt.Print(xs[a+4])\n", "runtime error: index out of range [5] with length 3", 3, 11, 2},
		{"z := 0\n_ = 1 / z\n", "runtime error: integer divide by zero", 2, 7, 1},
		{"var m map[string]int\nm[\"a\"] = 1\n", "assignment to entry in nil map", 2, 1, 1},
		{"panic(errors.New(\"own\"))\n", "own", 1, 1, 0},
		{"y := any(\"s\")\n_ = y.(int)\n", "interface conversion: interface {} is string, not int", 2, 5, 1},
		{"strings.Repeat(\"x\", -1)\n", "strings: negative Repeat count", 1, 1, 0},
		{"func() {\n\tfor i := range 5 {\n\t\txs[i]++\n\t}\n}()\n", "runtime error: index out of range [3] with length 3", 3, 3, 0},
		{"sort.Slice(xs, func(i, j int) bool { panic(\"in less\") })\n", "in less", 1, 38, 0},
	} {
		r, err := c.run(tt.src)
		var f *eval.Failure
		if !errors.As(err, &f) || f.Text != tt.text || f.Pos.Line != tt.line || f.Pos.Column != tt.col || r.Statements != tt.done {
			t.Errorf("%q gives %v at %v, %d done; want %s at %d:%d, %d done", tt.src, err, f.Pos, r.Statements, tt.text, tt.line, tt.col, tt.done)
		}
	}
	if _, err := c.run("deep(&S{})\n"); err == nil || err.Error() != "runtime error: invalid memory address or nil pointer dereference" {
		t.Errorf("nil dereference gives %v", err)
	}
	c.out.Reset()
	c.ok("fmt.Print(len(xs))\n")
	c.printed("3")
}

// An error with a method StopsCell stops the cell with its text alone.
func TestStopsCell(t *testing.T) {
	c := newCells(t)
	_, err := c.run("type E struct{}\nfunc (E) Error() string { return \"too strong\" }\nfunc (E) StopsCell() {}\n---\npanic(E{})\n")
	if err == nil || err.Error() != "too strong" {
		t.Errorf("error %v", err)
	}
}

// Stop ends loops, recursion and waiting.
func TestStop(t *testing.T) {
	for _, src := range []string{
		"for {\n}\n",
		"for i := range 1 << 60 { _ = i }\n",
		"c := make(chan int)\n<-c\n",
		"c := make(chan int)\nselect { case c <- 1: }\n",
		"defer func() { recover() }()\nfor { func() { defer func() { recover() }() }() }\n",
		"L:\ngoto L\n",
		"for x := range func(yield func(int) bool) { for yield(1) {} } { _ = x }\n",
	} {
		c := newCells(t)
		time.AfterFunc(50*time.Millisecond, c.m.Stop)
		start := time.Now()
		_, err := c.run(src)
		if !errors.Is(err, eval.ErrStopped) {
			t.Errorf("%q gives %v", src, err)
		}
		if d := time.Since(start); d > 2*time.Second {
			t.Errorf("%q took %v to stop", src, d)
		}
		c.m.Resume()
		c.ok("fmt.Print(1)\n")
		c.printed("1")
	}
}

// Runaway recursion is a failure of the cell, not of the process.
func TestStackOverflow(t *testing.T) {
	for _, src := range []string{
		"func f(n int) int { return f(n+1) + 1 }\n---\nf(0)\n",
		"type T struct{ n int }\nfunc (t T) String() string { return fmt.Sprint(t) }\n---\nfmt.Sprint(T{})\n",
		"---\nvar g func()\ng = func() { g() }\ng()\n",
	} {
		c := newCells(t)
		if _, err := c.run(src); err == nil || !strings.Contains(err.Error(), "stack overflow") {
			t.Errorf("%q gives %v", src, err)
		}
		c.m.Resume()
		c.ok("fmt.Print(1)\n")
		c.printed("1")
	}
}

// A panic in a goroutine is reported with its place.
func TestGoPanic(t *testing.T) {
	c := newCells(t)
	c.ok("go func() {\n\tpanic(\"lost\")\n}()\n")
	select {
	case p := <-c.gone:
		if p.Message() != "lost" || p.Position().Line != 2 {
			t.Errorf("%s at %v", p.Message(), p.Position())
		}
	case <-time.After(5 * time.Second):
		t.Error("not reported")
	}
}

// What cannot be done is refused by name before anything runs.
func TestRefused(t *testing.T) {
	c := newCells(t)
	_, err := c.run("fmt.Print(\"no\")\nx := make(chan [100000]byte)\n")
	var u *eval.Unsupported
	if !errors.As(err, &u) || !strings.HasPrefix(u.Error(), "not supported in cells: ") || u.Pos.Line != 2 {
		t.Errorf("error %v at %v", err, u.Pos)
	}
	c.printed("")
}

// A return at the top of a cell ends it.
func TestReturnAtTop(t *testing.T) {
	c := newCells(t)
	r := c.ok("fmt.Print(1)\nif len(\"x\") == 1 { return }\nfmt.Print(2)\n= 3\n")
	c.printed("1")
	if len(r.Values) != 0 {
		t.Errorf("shown %v", r.Values)
	}
}

// Deferred calls of a cell run when it ends.
func TestDeferAtTop(t *testing.T) {
	c := newCells(t)
	if _, err := c.run("defer func() { fmt.Print(\"d\", recover()) }()\nvar p *struct{ n int }\np.n = 1\n"); err != nil {
		t.Error(err)
	}
	c.printed("druntime error: invalid memory address or nil pointer dereference")
}

// A method gets a new body, and calls compiled before use it.
func TestSetMethod(t *testing.T) {
	c := newCells(t)
	c.ok("type T struct{}\nfunc (T) Name() string { return \"old\" }\nfunc name(t T) string { return t.Name() }\n---\n")
	named := c.pkg.Scope().Lookup("T").Type().(*types.Named)
	old := named.Method(0)
	w := getWorld()
	f, err := parser.ParseFile(w.fset, "again.go", "package main\ntype T struct{}\nfunc (T) Name() string { return \"new\" }\n", 0)
	if err != nil {
		t.Fatal(err)
	}
	info := newInfo()
	if _, err := new(types.Config).Check("main", w.fset, []*ast.File{f}, info); err != nil {
		t.Fatal(err)
	}
	if err := c.m.SetMethod(old, f.Decls[1].(*ast.FuncDecl), info, w.fset); err != nil {
		t.Fatal(err)
	}
	c.ok("fmt.Print(name(T{}), T{}.Name())\n")
	c.printed("newnew")
}

// A function of a cell that panics under compiled code, and is recovered, does not stay counted as running.
func TestPanicsUnderCompiledCode(t *testing.T) {
	c := newCells(t)
	c.ok("n := 0\nfor range 30000 {\n\tfunc() {\n\t\tdefer func() { recover() }()\n\t\tsort.Slice([]int{2, 1}, func(a, b int) bool { n++; panic(\"x\") })\n\t}()\n}\nfmt.Print(n)\n")
	c.printed("30000")
}
