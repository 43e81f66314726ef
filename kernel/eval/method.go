package eval

import (
	"go/ast"
	"go/token"
	"go/types"
	"reflect"
	"sync/atomic"
	"unsafe"
)

// methodTarget calls x.name(…), p being what x.name selects.
func (f *fnc) methodTarget(t *target, x *ex, p *picked, pos token.Pos) {
	m := p.obj.(*types.Func)
	x = f.fieldPath(x, p.index[:len(p.index)-1], pos)
	if types.IsInterface(x.ti.T) {
		f.dynamicTarget(t, x, m)
		return
	}
	recv := m.Signature().Recv().Type()
	_, wantPtr := types.Unalias(recv).(*types.Pointer)
	_, havePtr := x.ti.T.Underlying().(*types.Pointer)
	named := namedOf(x.ti.T)
	if named == nil {
		refuse(pos, "method %s of %s", m.Name(), x.ti)
	}
	t.code = f.m.methodCode(m, named, pos)
	off := t.code.recv.off
	switch {
	case wantPtr && havePtr, !wantPtr && !havePtr:
		t.recv = x.ti.ops.arg(off, x.fn)
	case wantPtr:
		if x.addr == nil {
			refuse(pos, "address of the receiver of %s", m.Name())
		}
		p := x.addr
		t.recv = func(fr, nf *frame) { *(*unsafe.Pointer)(nf.at(off)) = p(fr) }
	default:
		v := f.deref(x, pos, t.code.recv.ti)
		t.recv = v.ti.ops.arg(off, v.fn)
	}
}

// namedOf returns the named type of T or *T.
func namedOf(t types.Type) *types.Named {
	t = types.Unalias(t)
	if p, ok := t.(*types.Pointer); ok {
		t = types.Unalias(p.Elem())
	}
	n, _ := t.(*types.Named)
	return n
}

// methodCode returns the code of a method declared for a named type.
func (m *Machine) methodCode(fn *types.Func, named *types.Named, pos token.Pos) *code {
	if m.decls[fn.Origin()] != nil {
		var targs []types.Type
		if named != nil {
			for t := range named.TypeArgs().Types() {
				targs = append(targs, t)
			}
		}
		return m.funcCode(fn, targs, pos)
	}
	return m.compiledMethod(fn, named, pos)
}

// siteCache remembers what a call site called last.
type siteCache struct {
	typ unsafe.Pointer
	c   *code
}

// dynamicTarget calls a method of an interface value.
func (f *fnc) dynamicTarget(t *target, x *ex, fn *types.Func) {
	v := as[any](f.toAny(x, f.m.anyRec))
	find := f.m.finder(fn, f.subst(t.sig).(*types.Signature))
	at := t.at
	t.prep = func(fr *frame, g *routine) *frame {
		r := v(fr)
		if r == nil {
			nilDeref(at)
		}
		c, w := find(r)
		nf := c.enter(g)
		c.setRecv(nf, w)
		return nf
	}
}

// finder returns a function that finds the code for a method of an interface value, and the receiver's data word.
func (m *Machine) finder(fn *types.Func, sig *types.Signature) func(any) (*code, unsafe.Pointer) {
	var cache atomic.Pointer[siteCache]
	return func(r any) (*code, unsafe.Pointer) {
		e := (*eface)(unsafe.Pointer(&r))
		typ, w := e.typ, e.data
		var b *Box
		if typ == boxWord {
			b = (*Box)(w)
			typ, w = unsafe.Pointer(b.T), (*eface)(unsafe.Pointer(&b.V)).data
		}
		if s := cache.Load(); s != nil && s.typ == typ {
			return s.c, w
		}
		var c *code
		if b != nil {
			c = b.T.method(fn.Pkg(), fn.Name())
		} else {
			c = m.nativeMethod(reflect.TypeOf(r), fn.Name(), sig)
		}
		if c == nil {
			panic(&Panic{Value: unsupported{0, "method " + fn.Name() + " of a value whose type lacks it"}, fatal: true})
		}
		cache.Store(&siteCache{typ, c})
		return c, w
	}
}

// method returns the code of a method in the method set of ti, its receiver being exactly ti; nil if there is none.
func (ti *TypeRec) method(pkg *types.Package, name string) *code {
	key := name
	if !token.IsExported(name) && pkg != nil {
		key = pkg.Path() + "." + name
	}
	if c, ok := ti.methods.Load(key); ok {
		c, _ := c.(*code)
		return c
	}
	m := ti.m
	obj, index, indirect := types.LookupFieldOrMethod(ti.T, false, pkg, name)
	fn, ok := obj.(*types.Func)
	if !ok {
		ti.methods.Store(key, nil)
		return nil
	}
	// A pointer method is not in the method set of a value unless reached through a pointer.
	_ = indirect
	var c *code
	m.compiling(func() {
		recv := fn.Signature().Recv().Type()
		if len(index) == 1 && types.Identical(types.Unalias(recv), ti.T) && !types.IsInterface(ti.T) {
			c = m.methodCode(fn, namedOf(ti.T), 0)
			if c.recv != nil {
				return
			}
		}
		c = m.wrapper(ti, fn, index)
	})
	ti.methods.Store(key, c)
	return c
}

// wrapper makes a method whose receiver is exactly ti out of a promoted or pointed-to one.
func (m *Machine) wrapper(ti *TypeRec, fn *types.Func, index []int) *code {
	sig := fn.Signature()
	plain := types.NewSignatureType(nil, nil, nil, sig.Params(), sig.Results(), sig.Variadic())
	return m.synth(fn.Name(), plain, ti.T, &unit{m: m}, func(f *fnc, recv *ex, args []*ex) *ex {
		t := &target{sig: plain, at: &site{}}
		if pt, ok := ti.T.(*types.Pointer); ok && len(index) == 1 {
			text := "value method " + typeName(pt.Elem()) + "." + fn.Name() + " called using nil *" +
				namedOf(ti.T).Obj().Name() + " pointer"
			p := as[unsafe.Pointer](recv)
			recv = &ex{ti: ti, fn: func(fr *frame) unsafe.Pointer {
				q := p(fr)
				if q == nil {
					panic(&Panic{Value: plainError(text), At: fr.g.at})
				}
				return q
			}}
		}
		f.methodTarget(t, recv, &picked{types.MethodVal, ti.T, fn, index}, 0)
		return f.invoke(t, args, nil)
	})
}

// methodValue compiles x.name as a value: the receiver is evaluated and kept.
func (f *fnc) methodValue(e *ast.SelectorExpr, p *picked) *ex {
	ti := f.tiOf(e)
	fn := p.obj.(*types.Func)
	sig := ti.T.Underlying().(*types.Signature)
	x := f.fieldPath(f.operand(e.X), p.index[:len(p.index)-1], e.Sel.Pos())
	recv := x
	if !types.IsInterface(x.ti.T) {
		_, wantPtr := types.Unalias(fn.Signature().Recv().Type()).(*types.Pointer)
		pt, havePtr := x.ti.T.Underlying().(*types.Pointer)
		switch {
		case wantPtr && !havePtr:
			recv = &ex{ti: f.m.rec(types.NewPointer(x.ti.T)), fn: (func(*frame) unsafe.Pointer)(x.addr)}
		case !wantPtr && havePtr:
			recv = f.deref(x, e.Sel.Pos(), f.m.rec(pt.Elem()))
		}
	}
	at := f.site(e.Pos())
	rt := recv.ti
	c := f.m.bound(f.u, fn, rt, sig, e.Sel.Pos())
	in := recv.init()
	isIface := types.IsInterface(rt.T)
	m := f.m
	return &ex{ti: ti, fn: func(fr *frame) unsafe.Pointer {
		q := rt.alloc()
		in(fr, q)
		if isIface && *(*unsafe.Pointer)(q) == nil {
			nilDeref(at)
		}
		env := new(unsafe.Pointer)
		*env = q
		return m.funcWord(&closure{c, unsafe.Pointer(env)}, ti.rt)
	}}
}

// bound makes the code of a method value; its environment holds the address of the receiver.
func (m *Machine) bound(u *unit, fn *types.Func, rt *TypeRec, sig *types.Signature, pos token.Pos) *code {
	return m.synth(fn.Name(), sig, nil, u, func(f *fnc, _ *ex, args []*ex) *ex {
		r := varLoc{kind: captured, ti: rt}.read()
		t := &target{sig: sig, at: &site{fset: u.fset, pos: pos}}
		f.methodTarget(t, r, &picked{types.MethodVal, rt.T, fn, []int{0}}, pos)
		return f.invoke(t, args, nil)
	})
}

// methodExpr compiles T.name: a function whose first parameter is the receiver.
func (f *fnc) methodExpr(e *ast.SelectorExpr, p *picked) *ex {
	ti := f.tiOf(e)
	sig := ti.T.Underlying().(*types.Signature)
	fn := p.obj.(*types.Func)
	pos := e.Sel.Pos()
	c := f.m.synth(fn.Name(), sig, nil, f.u, func(g *fnc, _ *ex, args []*ex) *ex {
		var vs []*types.Var
		for i := 1; i < sig.Params().Len(); i++ {
			vs = append(vs, sig.Params().At(i))
		}
		rest := types.NewTuple(vs...)
		inner := types.NewSignatureType(nil, nil, nil, rest, sig.Results(), sig.Variadic())
		t := &target{sig: inner, at: g.site(pos)}
		g.methodTarget(t, args[0], p, pos)
		return g.invoke(t, args[1:], nil)
	})
	return f.funcValue(c, ti)
}

// HasMethod says whether the boxed value's method set has a method.
func (b Box) HasMethod(name string) bool {
	obj, _, _ := types.LookupFieldOrMethod(b.T.T, false, nil, name)
	_, ok := obj.(*types.Func)
	return ok && token.IsExported(name)
}

// Signature returns a method's signature, or nil.
func (b Box) Signature(name string) *types.Signature {
	obj, _, _ := types.LookupFieldOrMethod(b.T.T, false, nil, name)
	if fn, ok := obj.(*types.Func); ok {
		return fn.Signature()
	}
	return nil
}

// CallMethod calls a method of the boxed value by its name. Adapters for compiled interfaces are built on it.
func (b Box) CallMethod(name string, args ...any) []any {
	c := b.T.method(nil, name)
	if c == nil {
		panic(plainError("method " + name + " is missing in " + b.T.Name()))
	}
	m := b.T.m
	g, whole := m.borrow(), false
	defer m.giveBack(g, &whole)
	nf := c.enter(g)
	c.setRecv(nf, (*eface)(unsafe.Pointer(&b.V)).data)
	for i, p := range c.params {
		if args[i] == nil {
			p.ti.copyFn()(nf.at(p.off), p.ti.zero)
			continue
		}
		p.ti.putAny(nf.at(p.off), args[i])
	}
	c.run(nf)
	out := make([]any, len(c.results))
	for i, r := range c.results {
		out[i] = r.ti.nativeAny(nf.at(r.off))
	}
	nf.release()
	whole = true
	return out
}

// putAny stores what an interface value holds in a place of type ti.
func (ti *TypeRec) putAny(p unsafe.Pointer, v any) {
	switch ti.rep {
	case repAny:
		*(*any)(p) = plain(v)
		return
	case repIface:
		w, _ := ti.toIface(plain(v))
		*(*iface)(p) = w
		return
	}
	if b, ok := Unbox(v); ok {
		v = b.V
	}
	ti.put(p, reflect.ValueOf(v))
}

// nativeAny is the value at p for compiled code: interfaces keep their adapters.
func (ti *TypeRec) nativeAny(p unsafe.Pointer) any {
	if ti.rep == repIface {
		return ti.at(p).Interface()
	}
	return ti.copyAny(p)
}

// callString calls a method that returns a string and takes nothing.
func (b Box) callString(name string) (string, bool) {
	sig := b.Signature(name)
	if sig == nil || sig.Params().Len() != 0 || sig.Results().Len() != 1 {
		return "", false
	}
	if t, ok := sig.Results().At(0).Type().(*types.Basic); !ok || t.Kind() != types.String {
		return "", false
	}
	return b.CallMethod(name)[0].(string), true
}
