package eval

import (
	"go/ast"
	"go/token"
	"go/types"
	"unsafe"
)

// target is what a call calls.
type target struct {
	code *code // if known when compiling
	recv argFn // puts the receiver into the callee's frame
	// prep finds the callee at run time and returns its frame, the receiver or environment in place.
	prep func(fr *frame, g *routine) *frame
	sig  *types.Signature
	at   *site
}

// callExpr compiles a call, conversion or use of a builtin function.
func (f *fnc) callExpr(e *ast.CallExpr) *ex {
	fun := ast.Unparen(e.Fun)
	tv := f.u.info.Types[fun]
	switch {
	case tv.IsType():
		return f.conversion(e, f.typ(fun))
	case tv.IsBuiltin():
		return f.builtinCall(e)
	}
	t := f.target(e)
	args, pre := f.args(e, t.sig)
	return f.invoke(t, args, pre)
}

// target finds out what a call calls.
func (f *fnc) target(e *ast.CallExpr) *target {
	fun := ast.Unparen(e.Fun)
	sig, ok := f.typ(fun).Underlying().(*types.Signature)
	if !ok {
		refuse(e.Pos(), "call of %s", f.typ(fun))
	}
	t := &target{sig: sig, at: f.site(e.Pos())}
	name := fun
	switch x := fun.(type) {
	case *ast.IndexExpr:
		name = ast.Unparen(x.X)
	case *ast.IndexListExpr:
		name = ast.Unparen(x.X)
	}
	switch x := name.(type) {
	case *ast.Ident:
		if o, ok := f.u.info.Uses[x].(*types.Func); ok {
			t.code = f.funcCode(o, f.instArgs(x), e.Pos())
			return t
		}
	case *ast.SelectorExpr:
		p := f.pick(x)
		if p == nil {
			if o, ok := f.u.info.Uses[x.Sel].(*types.Func); ok {
				t.code = f.funcCode(o, f.instArgs(x.Sel), e.Pos())
				return t
			}
		} else if p.kind == types.MethodVal {
			f.methodTarget(t, f.operand(x.X), p, x.Sel.Pos())
			return t
		}
	}
	if lit, ok := fun.(*ast.FuncLit); ok {
		c, env := f.literal(lit)
		t.prep = func(fr *frame, g *routine) *frame {
			nf := c.enter(g)
			nf.env = env(fr)
			return nf
		}
		return t
	}
	f.funcTarget(t, f.expr(fun))
	return t
}

// funcTarget calls a function value.
func (f *fnc) funcTarget(t *target, x *ex) {
	fn := as[unsafe.Pointer](x)
	native := f.m.nativeFuncCode(t.sig)
	at := t.at
	m := f.m
	t.prep = func(fr *frame, g *routine) *frame {
		p := fn(fr)
		g.at = at
		return m.enterFunc(p, native, g)
	}
}

// args compiles the arguments of a call. pre is run before them.
func (f *fnc) args(e *ast.CallExpr, sig *types.Signature) (args []*ex, pre exec) {
	np := sig.Params().Len()
	if len(e.Args) == 1 {
		if tup, ok := f.u.info.TypeOf(e.Args[0]).(*types.Tuple); ok && (np > 1 || sig.Variadic() || tup.Len() != 1) {
			x := f.expr(e.Args[0])
			vals, run := f.spread(x)
			for i := range vals {
				if sig.Variadic() && i >= np-1 {
					break
				}
				args = append(args, f.assignTo(vals[i], sig.Params().At(i).Type(), e.Pos()))
			}
			if sig.Variadic() {
				args = append(args, f.pack(vals[np-1:], sig.Params().At(np-1).Type(), e.Pos()))
			}
			return args, run
		}
	}
	for i := range np {
		pt := sig.Params().At(i).Type()
		if sig.Variadic() && i == np-1 && !e.Ellipsis.IsValid() {
			var rest []*ex
			et := f.variadicElem(pt)
			for _, a := range e.Args[min(i, len(e.Args)):] {
				rest = append(rest, f.exprTo(a, et))
			}
			args = append(args, f.pack(rest, pt, e.Pos()))
			break
		}
		args = append(args, f.exprTo(e.Args[i], pt))
	}
	return args, nil
}

func (f *fnc) variadicElem(t types.Type) types.Type {
	if s, ok := t.Underlying().(*types.Slice); ok {
		return s.Elem()
	}
	return types.Typ[types.Byte]
}

// pack puts values into a new slice.
func (f *fnc) pack(vals []*ex, t types.Type, pos token.Pos) *ex {
	ti := f.m.rec(t)
	if len(vals) == 0 {
		return f.zeroEx(ti)
	}
	et := f.m.rec(f.variadicElem(t))
	sets := make([]intoFn, len(vals))
	for i, v := range vals {
		sets[i] = f.assignTo(v, et.T, pos).init()
	}
	mk, size := maker(et), et.size
	return &ex{ti: ti, fn: func(fr *frame) slice {
		s := mk(len(sets), len(sets))
		for i, set := range sets {
			set(fr, unsafe.Add(s.p, uintptr(i)*size))
		}
		return s
	}}
}

// spread runs a call of several results and keeps them in the frame.
func (f *fnc) spread(x *ex) (vals []*ex, run exec) {
	if x.tuple == nil && x.fn != nil {
		off := f.temp(x.ti)
		in := x.init()
		return []*ex{f.localEx(x.ti, off)}, func(fr *frame) ctl { in(fr, fr.at(off)); return next }
	}
	type move struct {
		cp       func(dst, src unsafe.Pointer)
		dst, src uintptr
	}
	var moves []move
	for _, s := range x.tuple {
		off := f.temp(s.ti)
		moves = append(moves, move{slotCopy(s.ti), off, s.off})
		vals = append(vals, f.localEx(s.ti, off))
	}
	call := x.call
	return vals, func(fr *frame) ctl {
		nf := call(fr)
		for _, mv := range moves {
			mv.cp(fr.at(mv.dst), nf.at(mv.src))
		}
		nf.release()
		return next
	}
}

// invoke compiles a call of a target.
func (f *fnc) invoke(t *target, args []*ex, pre exec) *ex {
	_, results := f.m.places(t.sig)
	if x := f.callBare(t, args, pre); x != nil {
		return x
	}
	call := f.caller(t, args, pre)
	x := &ex{call: call, tuple: results}
	if len(results) == 1 {
		r := results[0]
		x.ti, x.fn = r.ti, r.ti.ops.result(call, r.off)
		x.tuple = nil
	} else if x.tuple == nil {
		x.tuple = []slot{}
	}
	return x
}

// stores compiles the arguments into closures that fill the callee's frame.
func (f *fnc) stores(t *target, args []*ex) []argFn {
	params, _ := f.m.places(t.sig)
	var st []argFn
	if t.recv != nil {
		st = append(st, t.recv)
	}
	for i, a := range args {
		st = append(st, a.ti.ops.arg(params[i].off, a.fn))
	}
	return st
}

// caller returns a closure that makes the call and returns the callee's frame.
func (f *fnc) caller(t *target, args []*ex, pre exec) func(*frame) *frame {
	st := f.stores(t, args)
	at := t.at
	if t.prep != nil || pre != nil {
		start := f.starter(t, st, pre)
		return func(fr *frame) *frame {
			nf := start(fr, fr.g)
			fr.g.at = at
			nf.code.run(nf)
			return nf
		}
	}
	c := t.code
	switch len(st) {
	case 0:
		return func(fr *frame) *frame {
			nf := c.enter(fr.g)
			fr.g.at = at
			c.run(nf)
			return nf
		}
	case 1:
		a := st[0]
		return func(fr *frame) *frame {
			nf := c.enter(fr.g)
			a(fr, nf)
			fr.g.at = at
			c.run(nf)
			return nf
		}
	case 2:
		a, b := st[0], st[1]
		return func(fr *frame) *frame {
			nf := c.enter(fr.g)
			a(fr, nf)
			b(fr, nf)
			fr.g.at = at
			c.run(nf)
			return nf
		}
	}
	return func(fr *frame) *frame {
		nf := c.enter(fr.g)
		for _, a := range st {
			a(fr, nf)
		}
		fr.g.at = at
		c.run(nf)
		return nf
	}
}

// starter returns a closure that does all of a call but running the callee, which may be run by another goroutine.
func (f *fnc) starter(t *target, st []argFn, pre exec) func(*frame, *routine) *frame {
	c, prep := t.code, t.prep
	if prep == nil {
		prep = func(_ *frame, g *routine) *frame { return c.enter(g) }
	}
	first := 0
	if t.recv != nil {
		first = 1
	}
	return func(fr *frame, g *routine) *frame {
		nf := prep(fr, g)
		if first > 0 {
			st[0](fr, nf)
		}
		if pre != nil { // a call whose results are the arguments
			pre(fr)
		}
		for _, a := range st[first:] {
			a(fr, nf)
		}
		return nf
	}
}
