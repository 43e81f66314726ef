package eval

import (
	"go/ast"
	"go/token"
	"go/types"
	"unsafe"
)

// unit is what the checker recorded about one chunk of source.
type unit struct {
	m    *Machine
	info *types.Info
	fset *token.FileSet
	pkg  *types.Package
}

// fnc is a function while it is compiled.
type fnc struct {
	m      *Machine
	u      *unit
	env    *typeEnv
	code   *code
	parent *fnc
	lay    *layout
	vars   map[*types.Var]varLoc
	esc    map[*types.Var]bool // variables that need memory of their own
	caps   []*types.Var        // captured variables, in the order of the environment
	capIdx map[*types.Var]int
	result []varLoc // where return puts its values
	named  bool     // the results have names
	defers bool
	hoist  map[ast.Expr]*ex
	labels map[string]*label
	nlabel *int
	after  []exec // before return: results from own memory to the frame
}

type locKind uint8

const (
	inFrame  locKind = iota
	onHeap           // the frame holds the address
	captured         // the environment holds the address
	global           // the address is known
)

// varLoc says where a variable is.
type varLoc struct {
	kind locKind
	off  uintptr
	ptr  unsafe.Pointer
	ti   *TypeRec
}

// ex is a compiled expression.
type ex struct {
	ti    *TypeRec
	fn    any
	fresh intoFn // like fn, but the destination is new memory that nothing else refers to
	addr  ptrFn  // where the value lies, if it lies in memory
	local bool   // a variable in the frame
	off   uintptr
	glob  unsafe.Pointer // the address of a session variable
	cv    unsafe.Pointer // the value of a constant
	isNil bool
	tuple []slot // of a call with several results or none
	call  func(*frame) *frame
}

func (f *fnc) site(pos token.Pos) *site { return &site{fset: f.u.fset, pos: pos} }

func (f *fnc) rec(t types.Type) *TypeRec { return f.m.rec(f.subst(t)) }

// typ returns the type of an expression with type arguments filled in.
func (f *fnc) typ(e ast.Expr) types.Type {
	t := f.u.info.TypeOf(e)
	if t == nil {
		refuse(e.Pos(), "expression without a type")
	}
	return types.Unalias(f.subst(t))
}

func (f *fnc) tiOf(e ast.Expr) *TypeRec { return f.m.rec(f.typ(e)) }

// as returns the closure of a scalar expression.
func as[T any](e *ex) func(*frame) T { return e.fn.(func(*frame) T) }

// temp reserves a nameless place in the frame.
func (f *fnc) temp(ti *TypeRec) uintptr { return f.lay.addRec(ti) }

func (f *fnc) localEx(ti *TypeRec, off uintptr) *ex {
	return &ex{ti: ti, fn: ti.ops.local(off), local: true, off: off, addr: func(fr *frame) unsafe.Pointer { return fr.at(off) }}
}

// into returns a closure that writes the value to memory that may be referred to elsewhere.
func (e *ex) into() intoFn { return e.ti.ops.into(e.fn) }

// init returns a closure that writes the value to new memory.
func (e *ex) init() intoFn {
	if e.fresh != nil {
		return e.fresh
	}
	return e.into()
}

// ref returns a closure giving an address where the value can be read right away.
func (f *fnc) ref(e *ex) ptrFn {
	if e.addr != nil {
		return e.addr
	}
	if e.cv != nil {
		p := e.cv
		return func(*frame) unsafe.Pointer { return p }
	}
	off, in := f.temp(e.ti), e.init()
	return func(fr *frame) unsafe.Pointer {
		p := fr.at(off)
		in(fr, p)
		return p
	}
}

// lookup finds a variable.
func (f *fnc) lookup(v *types.Var) varLoc {
	if l, ok := f.vars[v]; ok {
		return l
	}
	if i, ok := f.capIdx[v]; ok {
		return varLoc{kind: captured, off: uintptr(i) * ptrSize, ti: f.rec(v.Type())}
	}
	if f.parent != nil && f.parent.has(v) {
		if f.capIdx == nil {
			f.capIdx = map[*types.Var]int{}
		}
		i := len(f.caps)
		f.capIdx[v] = i
		f.caps = append(f.caps, v)
		return varLoc{kind: captured, off: uintptr(i) * ptrSize, ti: f.rec(v.Type())}
	}
	return f.m.globalVar(v)
}

func (f *fnc) has(v *types.Var) bool {
	for ; f != nil; f = f.parent {
		if _, ok := f.vars[v]; ok {
			return true
		}
	}
	return false
}

// declare makes room for a local variable.
func (f *fnc) declare(v *types.Var) varLoc {
	ti := f.rec(v.Type())
	l := varLoc{kind: inFrame, ti: ti}
	if f.esc[v] {
		l.kind = onHeap
		l.off = f.lay.add(unsafePtrType)
	} else {
		l.off = f.lay.addRec(ti)
	}
	f.vars[v] = l
	return l
}

// addrOf returns the address of a variable.
func (l varLoc) addrOf() ptrFn {
	off, p := l.off, l.ptr
	switch l.kind {
	case inFrame:
		return func(fr *frame) unsafe.Pointer { return fr.at(off) }
	case onHeap:
		return func(fr *frame) unsafe.Pointer { return *(*unsafe.Pointer)(fr.at(off)) }
	case captured:
		return func(fr *frame) unsafe.Pointer { return *(*unsafe.Pointer)(unsafe.Add(fr.env, off)) }
	}
	return func(*frame) unsafe.Pointer { return p }
}

// read returns the variable as an expression.
func (l varLoc) read() *ex {
	e := &ex{ti: l.ti, addr: l.addrOf()}
	switch l.kind {
	case inFrame:
		e.fn, e.local, e.off = l.ti.ops.local(l.off), true, l.off
	case onHeap:
		e.fn = l.ti.ops.heap(l.off)
	case captured:
		e.fn = l.ti.ops.captured(l.off)
	default:
		e.fn, e.glob = l.ti.ops.global(l.ptr), l.ptr
	}
	return e
}

// store assigns to an existing variable.
func (l varLoc) store(e *ex) exec {
	switch l.kind {
	case inFrame:
		return l.ti.ops.storeLocal(l.off, e.fn)
	case global:
		return l.ti.ops.storeGlobal(l.ptr, e.fn)
	}
	return l.ti.ops.storeVia(l.addrOf(), e.fn)
}

// define makes a new variable and sets it; a nil expression gives the zero value.
func (l varLoc) define(e *ex) exec {
	ti, off := l.ti, l.off
	switch l.kind {
	case inFrame:
		if e == nil {
			if fn := l.zeroLocal(); fn != nil {
				return fn
			}
			cp := ti.copyFn()
			return func(fr *frame) ctl { cp(fr.at(off), ti.zero); return next }
		}
		if e.fresh != nil {
			in := e.fresh
			return func(fr *frame) ctl { in(fr, fr.at(off)); return next }
		}
		return ti.ops.storeLocal(off, e.fn)
	case onHeap:
		if e == nil {
			return func(fr *frame) ctl { *(*unsafe.Pointer)(fr.at(off)) = ti.alloc(); return next }
		}
		in := e.init()
		return func(fr *frame) ctl {
			p := ti.alloc()
			in(fr, p)
			*(*unsafe.Pointer)(fr.at(off)) = p
			return next
		}
	}
	if e == nil {
		cp, p := ti.copyFn(), l.ptr
		return func(*frame) ctl { cp(p, ti.zero); return next }
	}
	return ti.ops.storeGlobal(l.ptr, e.fn)
}

func (l varLoc) zeroLocal() exec {
	off := l.off
	switch l.ti.rep {
	case repInt, repInt64, repUint, repUint64:
		return func(fr *frame) ctl { *(*int64)(fr.at(off)) = 0; return next }
	case repFloat64:
		return func(fr *frame) ctl { *(*float64)(fr.at(off)) = 0; return next }
	case repString:
		return func(fr *frame) ctl { *(*string)(fr.at(off)) = ""; return next }
	case repPtr:
		return func(fr *frame) ctl { *(*unsafe.Pointer)(fr.at(off)) = nil; return next }
	}
	return nil
}
