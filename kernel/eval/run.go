package eval

import (
	"errors"
	"go/ast"
	"go/token"
	"go/types"
	"reflect"
	"runtime"
)

// Chunk is a checked part of a cell.
type Chunk struct {
	Funcs   []*ast.FuncDecl // functions and methods
	Body    *ast.BlockStmt  // the statements, or nil
	Last    ast.Expr        // the expression to show after them, or nil
	Globals []*types.Var    // what Body declares at its top level
	Info    *types.Info
	Fset    *token.FileSet
	Pkg     *types.Package
}

// Result says how far a chunk ran.
type Result struct {
	Statements int     // top-level statements completed; -1 if the package variables were not all set up
	Values     []Value // of Last
}

// Failure is an error while a chunk ran: a panic, or a stop.
type Failure struct {
	Pos   token.Position
	Text  string // as Go prints it after "panic: "; the bare text for an error that stops the cell
	Stop  bool   // the machine was asked to stop
	Plain bool   // a run-time error of the language, or an error that stops the cell: its text needs no head
	Panic *Panic
}

func (e *Failure) Error() string { return e.Text }

// ErrStopped is what a Failure wraps when the machine was asked to stop.
var ErrStopped = errors.New("stopped")

// Unwrap gives ErrStopped for a stop, and the panic value if that is an error.
func (e *Failure) Unwrap() error {
	if e.Stop {
		return ErrStopped
	}
	if err, ok := e.Panic.Value.(error); ok {
		return err
	}
	return nil
}

// Declare makes functions and methods known, or gives known ones a new body. Nothing is run.
func (m *Machine) Declare(c Chunk) error {
	u := &unit{m, c.Info, c.Fset, c.Pkg}
	var fns []*types.Func
	for _, d := range c.Funcs {
		if fn := m.addDecl(u, d); fn != nil && d.Body != nil {
			fns = append(fns, fn)
		}
	}
	return m.compile(c.Fset, func() {
		for _, fn := range fns {
			sig := fn.Signature()
			if sig.TypeParams().Len() == 0 && sig.RecvTypeParams().Len() == 0 && fn.Name() != "_" {
				m.funcCode(fn, nil, fn.Pos())
			}
		}
	})
}

// SetMethod gives a method, or function, a new body; calls compiled earlier use it too.
func (m *Machine) SetMethod(fn *types.Func, d *ast.FuncDecl, info *types.Info, fset *token.FileSet) error {
	u := &unit{m, info, fset, fn.Pkg()}
	nd := &decl{fn: info.Defs[d.Name].(*types.Func), ast: d, u: u}
	m.decls[fn] = nd
	old := m.codes[funcKey{fn, ""}]
	if old == nil {
		return nil
	}
	return m.compile(fset, func() {
		delete(m.codes, funcKey{fn, ""})
		sig := nd.fn.Signature()
		var recv types.Type
		if sig.Recv() != nil {
			recv = fn.Signature().Recv().Type()
		}
		c, lay := m.newCode(fn.Name(), sig, recv)
		m.compileDecl(c, lay, nd, nil)
		*old = *c
		m.codes[funcKey{fn, ""}] = old
	})
}

// Run declares a chunk's functions, sets up what the package level of it declares, runs its statements one after the other and evaluates its last expression. The
// error is an *Unsupported, before anything ran, or a *Failure.
func (m *Machine) Run(c Chunk) (Result, error) {
	if err := m.Declare(c); err != nil {
		return Result{}, err
	}
	start, err := m.starter(&Source{Pkg: c.Pkg, Info: c.Info, Fset: c.Fset}, c.Funcs)
	if err != nil {
		return Result{}, err
	}
	var stmts []exec
	var last *ex
	n := 0
	sig := types.NewSignatureType(nil, nil, nil, nil, nil, false)
	code, lay := m.newCode("cell", sig, nil)
	f := &fnc{m: m, u: &unit{m, c.Info, c.Fset, c.Pkg}, code: code, lay: lay, vars: map[*types.Var]varLoc{}, nlabel: &n,
		hoist: map[ast.Expr]*ex{}}
	var body exec
	var done int
	var vals []Value
	err = m.compile(c.Fset, func() {
		for _, v := range c.Globals {
			m.compilingAt = site{fset: c.Fset, pos: v.Pos()}
			m.globalVar(v)
		}
		var list []ast.Stmt
		if c.Body != nil {
			f.esc = escaping(c.Info, c.Body)
			list = c.Body.List
			f.defers = hasDefer(c.Body)
			f.markGotos(c.Body)
		}
		stmts = f.stmts(list)
		if c.Last != nil {
			pre := f.roots(c.Last)
			last = f.expr(c.Last)
			if pre != nil {
				last = f.beforeEx(pre, last)
			}
		}
		run := f.blockOf(list, counted(stmts, &done))
		body = func(fr *frame) ctl {
			if c := run(fr); c == next && last != nil {
				vals = f.lastValues(fr, last)
			}
			return doReturn
		}
		if f.defers {
			body = deferring(body)
		}
		code.finish(lay, body)
	})
	if err != nil {
		return Result{}, err
	}
	if err := start(); err != nil {
		return Result{Statements: -1}, err
	}
	err = m.protect(func() {
		g := m.main
		g.depth = 0
		fr := code.enter(g)
		code.run(fr)
	})
	return Result{done, vals}, err
}

// counted counts completed statements.
func counted(list []exec, n *int) []exec {
	out := make([]exec, len(list))
	for i, s := range list {
		out[i] = func(fr *frame) ctl {
			*n = i
			c := s(fr)
			*n = i + 1
			return c
		}
	}
	return out
}

// protect runs something and turns a panic into an error.
func (m *Machine) protect(fn func()) (err error) {
	ok := false
	defer func() {
		r := any(nil)
		if !ok {
			r = recover()
		}
		if p := m.fatal.Load(); p != nil {
			r = p
		}
		if r == nil {
			return
		}
		m.main = &routine{m: m, at: m.main.at}
		m.callbacks.Store(0)
		err = m.failure(asPanic(r, m.main.at))
	}()
	fn()
	ok = true
	return nil
}

func (m *Machine) failure(p *Panic) error {
	if u, ok := p.Value.(unsupported); ok {
		return &Unsupported{Pos: p.Position(), What: u.what}
	}
	e := &Failure{Pos: p.Position(), Panic: p, Stop: p == stopped}
	if s, ok := stopText(p.Value); ok {
		e.Text, e.Plain = s, true
	} else {
		e.Text = p.Message()
		_, e.Plain = p.Value.(runtime.Error)
	}
	return e
}

// stopText returns the text of an error with a method StopsCell, which needs no head.
func stopText(v any) (string, bool) {
	if b, ok := Unbox(v); ok {
		if b.HasMethod("StopsCell") {
			return b.callString("Error")
		}
		return "", false
	}
	if e, ok := v.(interface {
		error
		StopsCell()
	}); ok {
		return e.Error(), true
	}
	return "", false
}

// lastValues evaluates the expression to show.
func (f *fnc) lastValues(fr *frame, x *ex) []Value {
	if x.isNil {
		return []Value{{Type: x.ti.T}}
	}
	if x.tuple == nil {
		v := reflect.New(x.ti.rt)
		x.into()(fr, v.UnsafePointer())
		return []Value{{x.ti.T, v.Elem()}}
	}
	nf := x.call(fr)
	var out []Value
	for _, s := range x.tuple {
		v := reflect.New(s.ti.rt)
		v.Elem().Set(s.ti.at(nf.at(s.off)))
		out = append(out, Value{s.ti.T, v.Elem()})
	}
	nf.release()
	return out
}
