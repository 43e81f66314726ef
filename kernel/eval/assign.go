package eval

import (
	"go/ast"
	"go/token"
	"go/types"
	"unsafe"
)

var assignOps = map[token.Token]token.Token{
	token.ADD_ASSIGN: token.ADD, token.SUB_ASSIGN: token.SUB, token.MUL_ASSIGN: token.MUL, token.QUO_ASSIGN: token.QUO,
	token.REM_ASSIGN: token.REM, token.AND_ASSIGN: token.AND, token.OR_ASSIGN: token.OR, token.XOR_ASSIGN: token.XOR,
	token.SHL_ASSIGN: token.SHL, token.SHR_ASSIGN: token.SHR, token.AND_NOT_ASSIGN: token.AND_NOT,
}

func (f *fnc) assign(s *ast.AssignStmt) exec {
	switch s.Tok {
	case token.DEFINE:
		return f.define(s.Lhs, s.Rhs, s.Pos())
	case token.ASSIGN:
		return f.assignAll(s)
	}
	pre := f.roots(append(f.operands(s.Lhs[0]), s.Rhs...)...)
	return prelude(pre, f.opAssign(s.Lhs[0], assignOps[s.Tok], s.TokPos, func(ti *TypeRec) *ex {
		return f.expr(s.Rhs[0])
	}))
}

func (f *fnc) incDec(s *ast.IncDecStmt) exec {
	op := token.ADD
	if s.Tok == token.DEC {
		op = token.SUB
	}
	if id, ok := ast.Unparen(s.X).(*ast.Ident); ok {
		if v, ok := f.u.info.Uses[id].(*types.Var); ok {
			if x := f.varEx(v, s.Pos()); x.local && x.ti.rep == repInt {
				off, d := x.off, 1
				if op == token.SUB {
					d = -1
				}
				return func(fr *frame) ctl { *(*int)(fr.at(off)) += d; return next }
			}
		}
	}
	pre := f.roots(f.operands(s.X)...)
	return prelude(pre, f.opAssign(s.X, op, s.TokPos, func(ti *TypeRec) *ex {
		return f.one(ti, s.Pos())
	}))
}

// one is the constant 1 of a type.
func (f *fnc) one(ti *TypeRec, pos token.Pos) *ex {
	return f.convert(f.constEx(pos, oneConst, types.Typ[types.Int]), ti, pos)
}

// opAssign compiles x op= y; the operands of x are evaluated once.
func (f *fnc) opAssign(lhs ast.Expr, op token.Token, pos token.Pos, rhs func(*TypeRec) *ex) exec {
	ti := f.tiOf(lhs)
	apply := func(x *ex) *ex {
		y := rhs(ti)
		if op == token.SHL || op == token.SHR {
			return &ex{ti: ti, fn: f.shift(op, x, y, pos)}
		}
		if y.ti.rep != ti.rep {
			y = f.convert(y, ti, pos)
		}
		return f.arith(op, x, y, ti, pos)
	}
	switch e := ast.Unparen(lhs).(type) {
	case *ast.Ident:
		v := f.u.info.Uses[e].(*types.Var)
		if x := f.varEx(v, pos); x.local {
			l := varLoc{kind: inFrame, off: x.off, ti: ti}
			return l.store(apply(x))
		} else if x.glob != nil {
			return varLoc{kind: global, ptr: x.glob, ti: ti}.store(apply(x))
		}
	case *ast.IndexExpr:
		if mt, ok := core(f.typ(e.X)).(*types.Map); ok {
			m := f.keep(f.expr(e.X))
			k := f.keep(f.exprTo(e.Index, mt.Key()))
			get := f.mapGet(m.x, k.x, mt, e.Pos())
			set := f.mapSet(m.x, k.x, apply(get), mt, e.Pos())
			return func(fr *frame) ctl { m.run(fr); k.run(fr); return set(fr) }
		}
	}
	// The address stands in the frame meanwhile.
	off := f.lay.add(unsafePtrType)
	l := varLoc{kind: onHeap, off: off, ti: ti}
	p := f.addr(lhs)
	st := l.store(apply(l.read()))
	return func(fr *frame) ctl {
		*(*unsafe.Pointer)(fr.at(off)) = p(fr)
		return st(fr)
	}
}

// kept is an expression whose value is computed ahead by run.
type kept struct {
	x   *ex
	run exec
}

func nothing(*frame) ctl { return next }

// keep computes a value ahead of its use.
func (f *fnc) keep(x *ex) kept {
	if x.cv != nil || x.isNil {
		return kept{x, nothing}
	}
	off := f.temp(x.ti)
	in := x.init()
	return kept{f.localEx(x.ti, off), func(fr *frame) ctl { in(fr, fr.at(off)); return next }}
}

// operands lists the expressions evaluated on the left side of an assignment.
func (f *fnc) operands(e ast.Expr) []ast.Expr {
	switch e := ast.Unparen(e).(type) {
	case *ast.Ident:
		return nil
	case *ast.IndexExpr:
		if _, ok := core(f.typ(e.X)).(*types.Array); ok {
			return append(f.operands(e.X), e.Index, deferredRead{e})
		}
		return []ast.Expr{e.X, e.Index, deferredRead{e}}
	case *ast.StarExpr:
		return []ast.Expr{e.X, deferredRead{e}}
	case *ast.SelectorExpr:
		if f.selection(e) != nil {
			if _, ok := f.typ(e.X).Underlying().(*types.Pointer); ok {
				return []ast.Expr{e.X, deferredRead{e}}
			}
			return f.operands(e.X)
		}
	}
	return nil
}

// deferredRead stands for the check that an assignment's left side makes after its right side was evaluated.
type deferredRead struct{ ast.Expr }

// place is the left side of an assignment whose operands are computed by pre, and which set then assigns to.
type place struct {
	ti  *TypeRec // nil for the blank identifier
	pre exec
	set func(x *ex) exec
}

// lhs compiles the left side of an assignment in two steps: operands, and assignment.
func (f *fnc) lhs(e ast.Expr) place {
	e = ast.Unparen(e)
	switch e := e.(type) {
	case *ast.Ident:
		if e.Name == "_" {
			return place{set: func(x *ex) exec { return x.ti.ops.discard(x.fn) }}
		}
		v := f.u.info.ObjectOf(e).(*types.Var)
		x := f.varEx(v, e.Pos())
		switch {
		case x.local:
			return place{ti: x.ti, set: varLoc{kind: inFrame, off: x.off, ti: x.ti}.store}
		case x.glob != nil:
			return place{ti: x.ti, set: varLoc{kind: global, ptr: x.glob, ti: x.ti}.store}
		}
		return place{ti: x.ti, set: func(y *ex) exec { return x.ti.ops.storeVia(x.addr, y.fn) }}
	case *ast.IndexExpr:
		if mt, ok := core(f.typ(e.X)).(*types.Map); ok {
			m := f.keep(f.expr(e.X))
			k := f.keep(f.exprTo(e.Index, mt.Key()))
			return place{ti: f.rec(mt.Elem()), pre: inOrder([]exec{m.run, k.run}), set: func(y *ex) exec {
				return f.mapSet(m.x, k.x, y, mt, e.Pos())
			}}
		}
	}
	pre, x := f.lhsPath(e)
	return place{ti: x.ti, pre: inOrder(pre), set: func(y *ex) exec { return x.ti.ops.storeVia(x.addr, y.fn) }}
}

// lhsPath compiles what an assignment goes to: pre computes pointers, slices and indexes; their checks come with x.
func (f *fnc) lhsPath(e ast.Expr) (pre []exec, x *ex) {
	switch e := ast.Unparen(e).(type) {
	case *ast.Ident:
		return nil, f.varEx(f.u.info.ObjectOf(e).(*types.Var), e.Pos())
	case *ast.StarExpr:
		p := f.keep(f.expr(e.X))
		return []exec{p.run}, f.deref(p.x, e.Pos(), f.tiOf(e))
	case *ast.SelectorExpr:
		sel := f.selection(e)
		if sel == nil {
			return nil, f.selector(e)
		}
		if _, ok := f.typ(e.X).Underlying().(*types.Pointer); ok {
			p := f.keep(f.expr(e.X))
			return []exec{p.run}, f.fieldPath(p.x, sel.index, e.Sel.Pos())
		}
		pre, x := f.lhsPath(e.X)
		return pre, f.fieldPath(x, sel.index, e.Sel.Pos())
	case *ast.IndexExpr:
		t := core(f.typ(e.X))
		if _, ok := t.(*types.Map); ok { // a pointer in a map, say
			return nil, f.expr(e)
		}
		var base *ex
		if _, ok := t.(*types.Array); ok {
			pre, base = f.lhsPath(e.X)
		} else {
			k := f.keep(f.expr(e.X))
			pre, base = []exec{k.run}, k.x
		}
		i := f.keep(f.intIndex(e.Index))
		return append(pre, i.run), f.indexEx(base, i.x, f.tiOf(e), e)
	}
	refuse(e.Pos(), "assignment to %T", e)
	return nil, nil
}

func (f *fnc) assignAll(s *ast.AssignStmt) exec {
	var ops []ast.Expr
	for _, l := range s.Lhs {
		ops = append(ops, f.operands(l)...)
	}
	var top ast.Expr
	if len(s.Rhs) == 1 && (len(s.Lhs) > 1 || len(ops) == 0) {
		top = s.Rhs[0]
	}
	pre := f.rootsOf(append(ops, s.Rhs...), top)
	if len(s.Lhs) == 1 {
		return prelude(pre, f.assignOne(s.Lhs[0], s.Rhs[0], s.Pos()))
	}
	var places []place
	var run []exec
	for _, l := range s.Lhs {
		p := f.lhs(l)
		places = append(places, p)
		if p.pre != nil {
			run = append(run, p.pre)
		}
	}
	vals, get := f.values(s.Rhs, len(s.Lhs), places)
	run = append(run, get...)
	for i, p := range places {
		if p.ti == nil {
			continue
		}
		run = append(run, p.set(f.assignTo(vals[i], p.ti.T, s.Lhs[i].Pos())))
	}
	return prelude(pre, inOrder(run))
}

// values computes the right side of an assignment of several values.
func (f *fnc) values(rhs []ast.Expr, n int, places []place) (vals []*ex, run []exec) {
	if len(rhs) == 1 && n > 1 {
		vals, get := f.several(rhs[0])
		return vals, []exec{get}
	}
	for i, r := range rhs {
		x := f.expr(r)
		if places != nil {
			switch p := places[i]; {
			case p.ti != nil:
				x = f.assignTo(x, p.ti.T, r.Pos())
			case x.isNil:
				vals = append(vals, x)
				continue
			}
		}
		k := f.keep(x)
		vals = append(vals, k.x)
		run = append(run, k.run)
	}
	return vals, run
}

// several compiles an expression of several values: a call, or one of the forms with ", ok".
func (f *fnc) several(e ast.Expr) ([]*ex, exec) {
	switch x := ast.Unparen(e).(type) {
	case *ast.IndexExpr:
		return f.mapIndexOk(x)
	case *ast.TypeAssertExpr:
		return f.typeAssertOk(x)
	case *ast.UnaryExpr:
		return f.receiveOk(x)
	}
	return f.spread(f.expr(e))
}

func (f *fnc) assignOne(l, r ast.Expr, pos token.Pos) exec {
	l = ast.Unparen(l)
	if id, ok := l.(*ast.Ident); ok {
		if id.Name == "_" {
			x := f.expr(r)
			if x.isNil {
				return nothing
			}
			return x.ti.ops.discard(x.fn)
		}
		p := f.lhs(l)
		return p.set(f.exprTo(r, p.ti.T))
	}
	if ix, ok := l.(*ast.IndexExpr); ok {
		if mt, ok := core(f.typ(ix.X)).(*types.Map); ok {
			m, k := f.expr(ix.X), f.exprTo(ix.Index, mt.Key())
			return f.mapSet(m, k, f.exprTo(r, mt.Elem()), mt, l.Pos())
		}
	}
	ti := f.tiOf(l)
	x := f.exprTo(r, ti.T)
	return ti.ops.storeVia(f.addr(l), x.fn)
}

// define compiles := and var.
func (f *fnc) define(lhs, rhs []ast.Expr, pos token.Pos) exec {
	loc := func(id *ast.Ident) (varLoc, bool) {
		v, _ := f.u.info.Defs[id].(*types.Var)
		if v == nil {
			return varLoc{}, false
		}
		if l, ok := f.m.globals[v]; ok {
			return l, true
		}
		return f.declare(v), true
	}
	if len(rhs) == 0 {
		var run []exec
		for _, l := range lhs {
			if id := l.(*ast.Ident); id.Name != "_" {
				if v, ok := loc(id); ok {
					run = append(run, v.define(nil))
				}
			}
		}
		return inOrder(run)
	}
	var top ast.Expr
	if len(rhs) == 1 {
		top = rhs[0]
	}
	pre := f.rootsOf(rhs, top)
	if len(lhs) == 1 && len(rhs) == 1 {
		id := lhs[0].(*ast.Ident)
		if id.Name == "_" {
			x := f.expr(rhs[0])
			if v, ok := f.u.info.Defs[id].(*types.Var); ok && v != nil {
				x = f.assignTo(x, v.Type(), pos)
			}
			if x.isNil {
				return nothing
			}
			return prelude(pre, x.ti.ops.discard(x.fn))
		}
		v := f.u.info.Defs[id].(*types.Var)
		x := f.exprTo(rhs[0], v.Type())
		l, _ := loc(id)
		return prelude(pre, l.define(x))
	}
	type dst struct {
		id  *ast.Ident
		old *place
		ti  *TypeRec
	}
	var dsts []dst
	var run []exec
	places := make([]place, len(lhs))
	for i, l := range lhs {
		id := l.(*ast.Ident)
		d := dst{id: id}
		if id.Name != "_" {
			if v, _ := f.u.info.Defs[id].(*types.Var); v != nil {
				d.ti = f.rec(v.Type())
			} else {
				p := f.lhs(id)
				d.old, d.ti = &p, p.ti
			}
		} else if v, _ := f.u.info.Defs[id].(*types.Var); v != nil && len(rhs) > 1 {
			d.ti = f.rec(v.Type())
		}
		places[i].ti = d.ti
		dsts = append(dsts, d)
	}
	vals, get := f.values(rhs, len(lhs), places)
	run = append(run, get...)
	for i, d := range dsts {
		if d.id.Name == "_" {
			continue
		}
		x := f.assignTo(vals[i], d.ti.T, d.id.Pos())
		if d.old != nil {
			run = append(run, d.old.set(x))
			continue
		}
		l, _ := loc(d.id)
		run = append(run, l.define(x))
	}
	return prelude(pre, inOrder(run))
}
