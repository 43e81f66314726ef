package eval

import (
	"go/ast"
	"go/token"
	"go/types"
	"unsafe"
)

// newCode starts a function: its parameters, results and receiver are placed by its signature alone.
func (m *Machine) newCode(name string, sig *types.Signature, recv types.Type) (*code, *layout) {
	c := &code{m: m, name: name, sig: sig, id: int(m.nextID.Add(1))}
	lay := newLayout()
	for v := range sig.Params().Variables() {
		ti := m.rec(v.Type())
		c.params = append(c.params, slot{lay.addRec(ti), ti})
	}
	for v := range sig.Results().Variables() {
		ti := m.rec(v.Type())
		c.results = append(c.results, slot{lay.addRec(ti), ti})
	}
	if recv != nil {
		ti := m.rec(recv)
		c.recv = &slot{lay.addRec(ti), ti}
	}
	return c, lay
}

// places gives the parameters' and results' places for a signature.
func (m *Machine) places(sig *types.Signature) (params, results []slot) {
	lay := newLayout()
	for v := range sig.Params().Variables() {
		ti := m.rec(v.Type())
		params = append(params, slot{lay.addRec(ti), ti})
	}
	for v := range sig.Results().Variables() {
		ti := m.rec(v.Type())
		results = append(results, slot{lay.addRec(ti), ti})
	}
	return params, results
}

// finish fixes the frame once everything is placed.
func (c *code) finish(lay *layout, body exec) {
	c.ftype = lay.typ()
	c.clears = lay.clears
	c.pool = !lay.many && len(lay.clears) <= 24 && lay.size < 1<<10
	c.body = body
	c.done = true
}

// setRecv puts the data word of an interface value into the receiver's place.
func (c *code) setRecv(nf *frame, w unsafe.Pointer) {
	ti := c.recv.ti
	if ti.direct {
		*(*unsafe.Pointer)(nf.at(c.recv.off)) = w
		return
	}
	ti.copyFn()(nf.at(c.recv.off), w)
}

// decl is a function declared in a chunk or source package.
type decl struct {
	fn  *types.Func
	ast *ast.FuncDecl
	u   *unit
	esc map[*types.Var]bool
}

type funcKey struct {
	fn    *types.Func
	targs string
}

// funcCode returns the code of a declared or compiled function; a generic one is instantiated.
func (f *fnc) funcCode(o *types.Func, targs []types.Type, pos token.Pos) *code {
	return f.m.funcCode(o, targs, pos)
}

func (m *Machine) funcCode(o *types.Func, targs []types.Type, pos token.Pos) *code {
	fn := o.Origin()
	key := funcKey{fn, m.argsKey(targs)}
	if c := m.codes[key]; c != nil {
		return c
	}
	if d := m.decls[fn]; d != nil && d.ast.Body != nil {
		sig := fn.Signature()
		tparams := sig.TypeParams()
		var recv types.Type
		if sig.Recv() != nil {
			tparams = sig.RecvTypeParams()
			recv = sig.Recv().Type()
		}
		var env *typeEnv
		if tparams.Len() > 0 {
			if tparams.Len() != len(targs) {
				refuse(pos, "%s without its type arguments", fn.Name())
			}
			env = m.newEnv(fn, tparams, targs, key.targs)
			sig = env.subst(types.NewSignatureType(nil, nil, nil, sig.Params(), sig.Results(), sig.Variadic())).(*types.Signature)
			if recv != nil {
				recv = env.subst(recv)
			}
		}
		c, lay := m.newCode(fn.Name(), sig, recv)
		m.codes[key] = c
		m.queue = append(m.queue, func() { m.compileDecl(c, lay, d, env) })
		return c
	}
	if c := m.genericFront(fn, targs, key.targs); c != nil {
		m.codes[key] = c
		return c
	}
	c := m.compiledFunc(fn, pos)
	m.codes[key] = c
	return c
}

// compileDecl compiles the body of a declared function.
func (m *Machine) compileDecl(c *code, lay *layout, d *decl, env *typeEnv) {
	if d.esc == nil {
		d.esc = escaping(d.u.info, d.ast)
	}
	n := 0
	f := &fnc{m: m, u: d.u, env: env, code: c, lay: lay, esc: d.esc, vars: map[*types.Var]varLoc{}, nlabel: &n,
		hoist: map[ast.Expr]*ex{}}
	sig := d.fn.Signature()
	f.body(d.ast.Type, sig, d.ast.Recv, d.ast.Body)
}

// body compiles parameters, results and statements, and finishes the code.
func (f *fnc) body(typ *ast.FuncType, sig *types.Signature, recv *ast.FieldList, block *ast.BlockStmt) {
	c := f.code
	var pro []exec
	param := func(v *types.Var, s slot) {
		if v == nil || v.Name() == "" || v.Name() == "_" {
			return
		}
		if !f.esc[v] {
			f.vars[v] = varLoc{kind: inFrame, off: s.off, ti: s.ti}
			return
		}
		l := varLoc{kind: onHeap, off: f.lay.add(unsafePtrType), ti: s.ti}
		f.vars[v] = l
		pro = append(pro, l.define(f.localEx(s.ti, s.off)))
	}
	if sig.Recv() != nil && c.recv != nil {
		param(sig.Recv(), *c.recv)
	}
	for i := range sig.Params().Len() {
		param(sig.Params().At(i), c.params[i])
	}
	for i := range sig.Results().Len() {
		v, s := sig.Results().At(i), c.results[i]
		l := varLoc{kind: inFrame, off: s.off, ti: s.ti}
		if v.Name() != "" {
			f.named = true
			if f.esc[v] {
				l = varLoc{kind: onHeap, off: f.lay.add(unsafePtrType), ti: s.ti}
				f.after = append(f.after, varLoc{kind: inFrame, off: s.off, ti: s.ti}.store(l.read()))
			}
			if v.Name() != "_" {
				f.vars[v] = l
			}
			pro = append(pro, l.define(nil))
		}
		f.result = append(f.result, l)
	}
	f.markGotos(block)
	f.defers = hasDefer(block)
	if f.defers {
		for _, l := range f.result {
			if l.kind == inFrame && !f.named {
				pro = append(pro, l.define(nil))
			}
		}
	}
	run := f.block(block.List)
	if f.defers {
		run = deferring(run)
	}
	c.finish(f.lay, sequence(pro, run, f.after))
}

// sequence joins what comes before and after a body.
func sequence(pro []exec, run exec, after []exec) exec {
	if len(pro) == 0 && len(after) == 0 {
		return run
	}
	if len(after) == 0 && len(pro) == 1 {
		p := pro[0]
		return func(fr *frame) ctl { p(fr); return run(fr) }
	}
	return func(fr *frame) ctl {
		for _, p := range pro {
			p(fr)
		}
		c := run(fr)
		for _, a := range after {
			a(fr)
		}
		return c
	}
}

// hasDefer says whether a body defers calls itself, also from within the bodies of its loops.
func hasDefer(n ast.Node) bool {
	found := false
	ast.Inspect(n, func(n ast.Node) bool {
		switch n.(type) {
		case *ast.FuncLit:
			return false
		case *ast.DeferStmt:
			found = true
		}
		return !found
	})
	return found
}

// synth makes a function that is written nowhere: its body is one call built from its parameters.
func (m *Machine) synth(name string, sig *types.Signature, recv types.Type, u *unit, build func(f *fnc, recv *ex, args []*ex) *ex) *code {
	c, lay := m.newCode(name, sig, recv)
	m.buildSynth(c, lay, u, nil, build)
	return c
}

func (m *Machine) buildSynth(c *code, lay *layout, u *unit, env *typeEnv, build func(f *fnc, recv *ex, args []*ex) *ex) {
	n := 0
	f := &fnc{m: m, u: u, env: env, code: c, lay: lay, vars: map[*types.Var]varLoc{}, nlabel: &n, hoist: map[ast.Expr]*ex{}}
	var r *ex
	if c.recv != nil {
		r = f.localEx(c.recv.ti, c.recv.off)
	}
	args := make([]*ex, len(c.params))
	for i, p := range c.params {
		args[i] = f.localEx(p.ti, p.off)
	}
	x := build(f, r, args)
	c.finish(lay, f.giveResults(x))
}

// giveResults puts the value or values of a call into the results' places.
func (f *fnc) giveResults(x *ex) exec {
	c := f.code
	if x == nil {
		return func(*frame) ctl { return doReturn }
	}
	if x.tuple == nil && x.fn != nil {
		if len(c.results) == 0 {
			return x.ti.ops.discard(x.fn)
		}
		r := c.results[0]
		if x.ti != r.ti {
			x = f.assignTo(x, r.ti.T, 0)
		}
		return r.ti.ops.storeLocal(r.off, x.fn)
	}
	call := x.call
	type move struct {
		cp       func(dst, src unsafe.Pointer)
		dst, src uintptr
	}
	var moves []move
	for i, r := range c.results {
		moves = append(moves, move{slotCopy(r.ti), r.off, x.tuple[i].off})
	}
	return func(fr *frame) ctl {
		nf := call(fr)
		for _, mv := range moves {
			mv.cp(fr.at(mv.dst), nf.at(mv.src))
		}
		nf.release()
		return doReturn
	}
}

// slotCopy copies a value of any class.
func slotCopy(ti *TypeRec) func(dst, src unsafe.Pointer) { return ti.copyFn() }
