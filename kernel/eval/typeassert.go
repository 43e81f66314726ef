package eval

import (
	"go/ast"
	"go/constant"
	"go/token"
	"go/types"
	"reflect"
	"sync"
)

// assertion is the runtime.Error of a failed type assertion.
type assertion string

func (e assertion) Error() string { return "interface conversion: " + string(e) }

// RuntimeError marks it as a runtime.Error.
func (assertion) RuntimeError() {}

// dynName returns the name of a value's dynamic type.
func dynName(v any) string {
	if b, ok := Unbox(v); ok {
		return b.T.Name()
	}
	return reflect.TypeOf(v).String()
}

// typeAssert compiles x.(T).
func (f *fnc) typeAssert(e *ast.TypeAssertExpr, _ bool) *ex {
	x := f.expr(e.X)
	ti := f.tiOf(e.Type)
	return f.assertTo(x, ti, f.site(e.Pos()))
}

func (f *fnc) assertTo(x *ex, ti *TypeRec, at *site) *ex {
	from := x.ti
	v := as[any](f.toAny(x, f.m.anyRec))
	if !types.IsInterface(ti.T) {
		return &ex{ti: ti, fn: ti.ops.fromAny(ti, v, func(fr *frame, v any) {
			if v == nil {
				panic(&Panic{Value: assertion(from.Name() + " is nil, not " + ti.Name()), At: at})
			}
			msg := from.Name() + " is " + dynName(v) + ", not " + ti.Name()
			if dynName(v) == ti.Name() {
				msg += " (types from different scopes)"
			}
			panic(&Panic{Value: assertion(msg), At: at})
		})}
	}
	if ti.rep == repIface {
		ti.bindAdapter()
	}
	fail := func(v any) {
		if v == nil {
			panic(&Panic{Value: assertion("interface is nil, not " + ti.Name()), At: at})
		}
		panic(&Panic{Value: assertion(dynName(v) + " is not " + ti.Name() + ": missing method " + ti.missing(v)), At: at})
	}
	if ti.rep == repAny {
		return &ex{ti: ti, fn: func(fr *frame) any {
			r := v(fr)
			if r == nil || !ti.implementedBy(r) {
				fail(r)
			}
			return r
		}}
	}
	return &ex{ti: ti, fn: func(fr *frame) iface {
		r := v(fr)
		if r == nil || !ti.implementedBy(r) {
			fail(r)
		}
		w, ok := ti.toIface(r)
		if !ok {
			panic(&Panic{Value: unsupported{0, dynName(r) + " as " + ti.Name()}, At: at, fatal: true})
		}
		return w
	}}
}

// test returns a function that tells whether a dynamic type is ti, or implements it.
func (ti *TypeRec) test() func(any) bool {
	if types.IsInterface(ti.T) {
		return func(v any) bool { return v != nil && ti.implementedBy(v) }
	}
	return func(v any) bool { _, ok := ti.payload(v); return ok }
}

// implementedBy says whether a value's dynamic type implements the interface ti.
func (ti *TypeRec) implementedBy(v any) bool {
	b, boxed := v.(Box)
	if boxed {
		if ok, hit := implCache.Load(implKey{b.T, ti}); hit {
			return ok.(bool)
		}
		ok := types.Implements(b.T.T, ti.T.Underlying().(*types.Interface))
		implCache.Store(implKey{b.T, ti}, ok)
		return ok
	}
	if ti.rep == repIface {
		_, ok := ti.toIface(v)
		return ok
	}
	it := ti.T.Underlying().(*types.Interface)
	if it.NumMethods() == 0 {
		return true
	}
	rt := reflect.TypeOf(v)
	if ok, hit := implCache.Load(nativeImpl{rt, ti}); hit {
		return ok.(bool)
	}
	ok := ti.missing(v) == ""
	implCache.Store(nativeImpl{rt, ti}, ok)
	return ok
}

var implCache sync.Map

type (
	implKey    struct{ t, iface *TypeRec }
	nativeImpl struct {
		rt    reflect.Type
		iface *TypeRec
	}
)

// missing names the first method that a value's dynamic type lacks.
func (ti *TypeRec) missing(v any) string {
	it := ti.T.Underlying().(*types.Interface)
	if b, ok := Unbox(v); ok {
		if m, _ := types.MissingMethod(b.T.T, it, true); m != nil {
			return m.Name()
		}
		return ""
	}
	rt := reflect.TypeOf(v)
	for i := range it.NumMethods() {
		fn := it.Method(i)
		m, ok := rt.MethodByName(fn.Name())
		if !ok || !sameSignature(ti.m, m.Type, fn.Signature()) {
			return fn.Name()
		}
	}
	return ""
}

// sameSignature compares a compiled method (with receiver) with a checker's signature.
func sameSignature(m *Machine, mt reflect.Type, sig *types.Signature) bool {
	if mt.NumIn()-1 != sig.Params().Len() || mt.NumOut() != sig.Results().Len() || mt.IsVariadic() != sig.Variadic() {
		return false
	}
	for i := range sig.Params().Len() {
		ti := m.rec(sig.Params().At(i).Type())
		if !ti.pure || ti.rt != mt.In(i+1) {
			return false
		}
	}
	for i := range sig.Results().Len() {
		ti := m.rec(sig.Results().At(i).Type())
		if !ti.pure || ti.rt != mt.Out(i) {
			return false
		}
	}
	return true
}

// typeAssertOk compiles v, ok = x.(T).
func (f *fnc) typeAssertOk(e *ast.TypeAssertExpr) ([]*ex, exec) {
	ti := f.tiOf(e.Type)
	any := f.keep(f.toAny(f.expr(e.X), f.m.anyRec))
	bt := f.m.rec(types.Typ[types.Bool])
	vo, oo := f.temp(ti), f.temp(bt)
	get := as[interface{}](any.x)
	if ti.rep == repIface {
		ti.bindAdapter()
	}
	test := ti.test()
	val := f.unchecked(any.x, ti).into()
	cp, zero := ti.copyFn(), ti.zero
	return []*ex{f.localEx(ti, vo), f.localEx(bt, oo)}, func(fr *frame) ctl {
		any.run(fr)
		ok := test(get(fr))
		*(*bool)(fr.at(oo)) = ok
		if ok {
			val(fr, fr.at(vo))
		} else {
			cp(fr.at(vo), zero)
		}
		return next
	}
}

// unchecked reads an interface value as ti after a test.
func (f *fnc) unchecked(x *ex, ti *TypeRec) *ex {
	v := as[any](x)
	switch {
	case ti.rep == repAny:
		return &ex{ti: ti, fn: x.fn, local: x.local, off: x.off}
	case ti.rep == repIface:
		return &ex{ti: ti, fn: func(fr *frame) iface {
			w, ok := ti.toIface(v(fr))
			if !ok {
				panic(&Panic{Value: unsupported{0, dynName(v(fr)) + " as " + ti.Name()}, fatal: true})
			}
			return w
		}}
	}
	return &ex{ti: ti, fn: ti.ops.fromAny(ti, v, func(*frame, any) {})}
}

// typeSwitch compiles switch x := y.(type).
func (f *fnc) typeSwitch(s *ast.TypeSwitchStmt, lab *label) exec {
	var init exec
	if s.Init != nil {
		init = f.stmt(s.Init, nil)
	}
	var subject ast.Expr
	switch a := s.Assign.(type) {
	case *ast.ExprStmt:
		subject = a.X
	case *ast.AssignStmt:
		subject = a.Rhs[0]
	}
	sx := ast.Unparen(subject).(*ast.TypeAssertExpr).X
	pre := f.roots(sx)
	x := f.expr(sx)
	orig := f.keep(x)
	dyn := f.keep(f.toAny(orig.x, f.m.anyRec))
	get := as[any](dyn.x)
	type clause struct {
		tests []func(any) bool
		body  exec
	}
	var cs []clause
	def := -1
	for _, st := range s.Body.List {
		cl := st.(*ast.CaseClause)
		var c clause
		for _, t := range cl.List {
			if f.u.info.Types[t].IsNil() {
				c.tests = append(c.tests, func(v any) bool { return v == nil })
				continue
			}
			ti := f.tiOf(t)
			if ti.rep == repIface {
				ti.bindAdapter()
			}
			c.tests = append(c.tests, ti.test())
		}
		if cl.List == nil {
			def = len(cs)
		}
		var bind []exec
		if v, ok := f.u.info.Implicits[cl].(*types.Var); ok {
			l := f.declare(v)
			val := orig.x
			if len(cl.List) == 1 && !f.u.info.Types[cl.List[0]].IsNil() {
				val = f.unchecked(dyn.x, l.ti)
			}
			bind = append(bind, l.define(val))
		}
		c.body = sequence(bind, f.block(cl.Body), nil)
		cs = append(cs, c)
	}
	brk, _ := labels(lab)
	run := func(fr *frame) ctl {
		orig.run(fr)
		dyn.run(fr)
		v := get(fr)
		for _, c := range cs {
			for _, t := range c.tests {
				if t(v) {
					return leave(c.body(fr), brk)
				}
			}
		}
		if def >= 0 {
			return leave(cs[def].body(fr), brk)
		}
		return next
	}
	all := prelude(pre, run)
	if init == nil {
		return all
	}
	return func(fr *frame) ctl { init(fr); return all(fr) }
}

// leave is what control does after a clause of a switch.
func leave(c, brk ctl) ctl {
	if c == doBreak || c == brk {
		return next
	}
	return c
}

// switchStmt compiles an expression switch.
func (f *fnc) switchStmt(s *ast.SwitchStmt, lab *label) exec {
	var init exec
	if s.Init != nil {
		init = f.stmt(s.Init, nil)
	}
	var tag kept
	var pre []exec
	if s.Tag != nil {
		pre = f.roots(s.Tag)
		x := f.expr(s.Tag)
		if x.cv != nil { // an untyped constant has got its type here
			tag = kept{x, nothing}
		} else {
			tag = f.keep(x)
		}
	}
	type clause struct {
		tests []func(*frame) bool
		body  exec
	}
	var cs []clause
	def := -1
	for _, st := range s.Body.List {
		cl := st.(*ast.CaseClause)
		var c clause
		for _, e := range cl.List {
			if s.Tag == nil {
				x := f.expr(e)
				if x.ti.rep != repBool {
					yes := f.constEx(e.Pos(), constant.MakeBool(true), types.Typ[types.Bool])
					c.tests = append(c.tests, f.compareEx(token.EQL, yes, x, e.Pos()))
					continue
				}
				c.tests = append(c.tests, as[bool](x))
				continue
			}
			c.tests = append(c.tests, f.compareEx(token.EQL, tag.x, f.expr(e), e.Pos()))
		}
		if cl.List == nil {
			def = len(cs)
		}
		c.body = f.block(cl.Body)
		cs = append(cs, c)
	}
	brk, _ := labels(lab)
	run := func(fr *frame) ctl {
		if tag.run != nil {
			tag.run(fr)
		}
		hit := def
	search:
		for i := range cs {
			for _, t := range cs[i].tests {
				if t(fr) {
					hit = i
					break search
				}
			}
		}
		if hit < 0 {
			return next
		}
		for {
			c := cs[hit].body(fr)
			if c != doFall {
				return leave(c, brk)
			}
			hit++
		}
	}
	all := prelude(pre, run)
	if init == nil {
		return all
	}
	return func(fr *frame) ctl { init(fr); return all(fr) }
}
