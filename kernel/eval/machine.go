package eval

import (
	"go/ast"
	"go/token"
	"go/types"
	"io"
	"reflect"
	"sync"
	"sync/atomic"
)

// Config says what cells can reach.
type Config struct {
	// Packages holds the compiled packages by import path: functions, addresses of variables, and for each type T a
	// nil *T. "_T" is a nil pointer to the adapter of interface T, see Adapter.
	Packages map[string]map[string]reflect.Value
	// Sources holds packages given as checked source, by import path.
	Sources map[string]*Source
	// Fronts replaces functions by import path, dot and name. A front has the compiled function's signature and
	// knows boxes.
	Fronts map[string]reflect.Value
	Stdout io.Writer
	Stderr io.Writer
	// GoPanic is told of a panic that ends a goroutine started by a cell.
	GoPanic func(*Panic)
	// MaxDepth is the number of nested calls after which a stack overflow is reported; 0 means 100,000.
	MaxDepth int
}

// Source is a package that was checked from source.
type Source struct {
	Pkg   *types.Package
	Files []*ast.File
	Info  *types.Info
	Fset  *token.FileSet
}

// Machine runs chunks of a session and holds its variables. Only one Run may be active at a time; goroutines started
// by cells go on beside it.
type Machine struct {
	cfg      Config
	maxDepth int
	stop     atomic.Bool
	fatal    atomic.Pointer[Panic] // what brought everything to a halt
	stopCh   atomic.Pointer[chan struct{}]

	mu sync.Mutex // held while compiling
	// compilingAt is the statement last begun, for refusals that know no place of their own.
	compilingAt site
	recMu       sync.RWMutex
	recs        map[types.Type]*TypeRec
	recKeys     map[string][]*TypeRec
	anyRec      *TypeRec
	errRec      *TypeRec
	typeIDs     map[string][]typeAndID
	lastID      int
	nextID      atomic.Int64
	hidden      sync.Map // types.Object → reflect.Type
	fronts      map[string]reflect.Value
	globals     map[*types.Var]varLoc
	decls       map[*types.Func]*decl
	codes       map[funcKey]*code
	funcCodes   map[*TypeRec]*code
	natives     sync.Map
	queue       []func()
	ctxt        *types.Context
	pool        sync.Pool
	callbacks   atomic.Int64
	main        *routine
	out         lockedWriter
	errOut      lockedWriter
}

type lockedWriter struct {
	mu sync.Mutex
	w  io.Writer
}

// Write implements io.Writer.
func (w *lockedWriter) Write(b []byte) (int, error) {
	w.mu.Lock()
	defer w.mu.Unlock()
	if w.w == nil {
		return len(b), nil
	}
	return w.w.Write(b)
}

// New returns a machine without any variables.
func New(cfg Config) *Machine {
	m := &Machine{
		cfg: cfg, maxDepth: cfg.MaxDepth,
		recs: map[types.Type]*TypeRec{}, recKeys: map[string][]*TypeRec{}, typeIDs: map[string][]typeAndID{},
		fronts:  map[string]reflect.Value{},
		globals: map[*types.Var]varLoc{}, decls: map[*types.Func]*decl{}, codes: map[funcKey]*code{},
		funcCodes: map[*TypeRec]*code{}, ctxt: types.NewContext(),
	}
	if m.maxDepth == 0 {
		m.maxDepth = 100_000
	}
	m.out.w, m.errOut.w = cfg.Stdout, cfg.Stderr
	m.addFronts()
	m.anyRec = m.rec(types.NewInterfaceType(nil, nil))
	m.errRec = m.rec(types.Universe.Lookup("error").Type())
	m.main = &routine{m: m}
	m.pool.New = func() any { return &routine{m: m} }
	ch := make(chan struct{})
	m.stopCh.Store(&ch)
	for _, s := range cfg.Sources {
		m.declareSource(s)
	}
	return m
}

func (m *Machine) addDecl(u *unit, fd *ast.FuncDecl) *types.Func {
	fn, _ := u.info.Defs[fd.Name].(*types.Func)
	if fn == nil {
		return nil
	}
	m.decls[fn] = &decl{fn: fn, ast: fd, u: u}
	return fn
}

// borrow returns a routine for a call from compiled code.
func (m *Machine) borrow() *routine {
	if m.callbacks.Add(1) > 20_000 {
		m.callbacks.Store(0)
		panic(m.overflow(nil))
	}
	return m.pool.Get().(*routine)
}

// giveBack takes a routine back when its call has ended: for the next call, unless a panic cut this one short.
func (m *Machine) giveBack(g *routine, whole *bool) {
	m.callbacks.Add(-1)
	if *whole {
		g.depth = 0
		m.pool.Put(g)
	}
}

// globalVar returns the memory of a session variable.
func (m *Machine) globalVar(v *types.Var) varLoc {
	if l, ok := m.globals[v]; ok {
		return l
	}
	ti := m.rec(v.Type())
	l := varLoc{kind: global, ptr: ti.alloc(), ti: ti}
	m.globals[v] = l
	return l
}

// Value is a variable's or expression's value. V is of the storage type.
type Value struct {
	Type types.Type
	V    reflect.Value
}

// Any returns the value as an interface holds it: boxed where its type mentions a cell's type.
func (m *Machine) Any(v Value) any {
	if !v.V.IsValid() {
		return nil
	}
	ti := m.rec(v.Type)
	p := reflect.New(ti.rt)
	p.Elem().Set(v.V)
	return ti.anyAt(p.UnsafePointer())
}

// Global returns the value of a session variable, which changes as the variable does.
func (m *Machine) Global(v *types.Var) (Value, bool) {
	m.mu.Lock()
	defer m.mu.Unlock()
	l, ok := m.globals[v]
	if !ok {
		return Value{}, false
	}
	return Value{v.Type(), l.ti.at(l.ptr)}, true
}

// Stop asks whatever runs to stop: loops, calls and channel operations look for it.
func (m *Machine) Stop() {
	m.stop.Store(true)
	ch := m.stopCh.Load()
	select {
	case <-*ch:
	default:
		close(*ch)
	}
}

// overflow brings everything to a halt: compiled code on the way, such as package fmt, may recover from the panic.
func (m *Machine) overflow(at *site) *Panic {
	p := &Panic{Value: fatalError("stack overflow: too many nested calls"), fatal: true, At: at}
	if m.fatal.CompareAndSwap(nil, p) {
		m.Stop()
	}
	return m.halted()
}

// halted is what to panic with once the machine was asked to stop.
func (m *Machine) halted() *Panic {
	if p := m.fatal.Load(); p != nil {
		return p
	}
	return stopped
}

// Resume lets chunks run again after Stop, or after a stack overflow, which stops everything.
func (m *Machine) Resume() {
	m.fatal.Store(nil)
	m.stop.Store(false)
	ch := make(chan struct{})
	m.stopCh.Store(&ch)
}

// Unsupported is the error for what the evaluator cannot do faithfully.
type Unsupported struct {
	Pos  token.Position
	What string
}

func (e *Unsupported) Error() string { return "not supported in cells: " + e.What }

// compiling runs a compilation, alone, and then all it asked for.
func (m *Machine) compiling(fn func()) {
	m.mu.Lock()
	done := false
	defer func() {
		if !done { // forget what was left half-way
			m.queue = nil
			for k, c := range m.codes {
				if !c.done {
					delete(m.codes, k)
				}
			}
		}
		m.mu.Unlock()
	}()
	fn()
	m.drain()
	done = true
}

func (m *Machine) drain() {
	for len(m.queue) > 0 {
		q := m.queue
		m.queue = nil
		for _, f := range q {
			f()
		}
	}
}

// compile is compiling with refusals as errors.
func (m *Machine) compile(fset *token.FileSet, fn func()) (err error) {
	defer func() {
		if r := recover(); r != nil {
			u, ok := r.(unsupported)
			if !ok {
				panic(r)
			}
			e := &Unsupported{What: u.what}
			switch {
			case fset != nil && u.pos.IsValid():
				e.Pos = fset.Position(u.pos)
			case m.compilingAt.fset != nil:
				e.Pos = m.compilingAt.fset.Position(m.compilingAt.pos)
			}
			err = e
		}
	}()
	m.compiling(fn)
	return nil
}
