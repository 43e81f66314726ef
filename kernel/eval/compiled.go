package eval

import (
	"go/token"
	"go/types"
	"reflect"
	"unsafe"
)

// symbol looks a name of a compiled package up.
func (m *Machine) symbol(o types.Object) (reflect.Value, bool) {
	if o.Pkg() == nil {
		return reflect.Value{}, false
	}
	v, ok := m.cfg.Packages[o.Pkg().Path()][o.Name()]
	return v, ok
}

// compiledVar returns a variable of a compiled package, or nil.
func (m *Machine) compiledVar(f *fnc, o *types.Var, pos token.Pos) *ex {
	if _, own := m.globals[o]; own {
		return nil
	}
	v, ok := m.symbol(o)
	if !ok {
		if m.cfg.Packages[o.Pkg().Path()] != nil && m.cfg.Sources[o.Pkg().Path()] == nil {
			refuse(pos, "variable %s.%s", o.Pkg().Name(), o.Name())
		}
		return nil
	}
	ti := m.rec(o.Type())
	if v.Kind() != reflect.Pointer && !v.CanAddr() {
		refuse(pos, "variable %s.%s", o.Pkg().Name(), o.Name())
	}
	if v.CanAddr() {
		v = v.Addr()
	}
	return varLoc{kind: global, ptr: v.UnsafePointer(), ti: ti}.read()
}

// compiledFunc makes code of a compiled function.
func (m *Machine) compiledFunc(fn *types.Func, pos token.Pos) *code {
	name := fn.Name()
	if fn.Pkg() != nil {
		name = fn.Pkg().Name() + "." + name
	}
	var v reflect.Value
	ok := false
	if fn.Pkg() != nil {
		v, ok = m.fronts[fn.Pkg().Path()+"."+fn.Name()]
	}
	if !ok {
		v, ok = m.symbol(fn)
	}
	if !ok || v.Kind() != reflect.Func {
		refuse(pos, "function %s", name)
	}
	sig := fn.Signature()
	if sig.TypeParams().Len() > 0 {
		refuse(pos, "generic function %s", name)
	}
	c, lay := m.newCode(name, sig, nil)
	c.finish(lay, m.nativeBody(c, v, false))
	c.native = v
	return c
}

// nativeBody calls a compiled function with what stands in the frame.
func (m *Machine) nativeBody(c *code, v reflect.Value, _ bool) exec {
	if b := directBody(c, v); b != nil {
		return b
	}
	variadic := v.Type().IsVariadic()
	return func(fr *frame) ctl {
		c.callCompiled(fr, v, variadic)
		return doReturn
	}
}

// callCompiled calls a compiled function with the parameters in the frame, and leaves its results there.
func (c *code) callCompiled(fr *frame, v reflect.Value, variadic bool) {
	args := make([]reflect.Value, len(c.params))
	for i, p := range c.params {
		args[i] = p.ti.at(fr.at(p.off))
	}
	if variadic {
		c.take(fr, v.CallSlice(args))
	} else {
		c.take(fr, v.Call(args))
	}
}

// take stores the results of a compiled function.
func (c *code) take(fr *frame, out []reflect.Value) {
	for i, r := range c.results {
		p := fr.at(r.off)
		if r.ti.rep == repAny {
			if out[i].Kind() != reflect.Interface {
				*(*any)(p) = plain(out[i].Interface())
				continue
			}
			if out[i].IsNil() {
				*(*any)(p) = nil
				continue
			}
			*(*any)(p) = plain(out[i].Elem().Interface())
			continue
		}
		r.ti.put(p, out[i])
	}
}

// compiledMethod makes code of a method of a compiled type.
func (m *Machine) compiledMethod(fn *types.Func, named *types.Named, pos token.Pos) *code {
	recv := fn.Signature().Recv().Type()
	key := funcKey{fn, ""}
	if named != nil && named.TypeArgs().Len() > 0 {
		key.targs = identityKey(named)
		if _, ptr := types.Unalias(recv).(*types.Pointer); ptr {
			recv = types.NewPointer(named)
		} else {
			recv = named
		}
	}
	if c := m.codes[key]; c != nil {
		return c
	}
	if named != nil && isAtomicPointer(named) {
		c := m.atomicMethod(fn, named, pos)
		m.codes[key] = c
		return c
	}
	ti := m.rec(recv)
	meth, ok := ti.rt.MethodByName(fn.Name())
	if !ok || !ti.pure {
		refuse(pos, "method %s.%s", ti, fn.Name())
	}
	sig := fn.Signature()
	c, lay := m.newCode(fn.Name(), types.NewSignatureType(nil, nil, nil, sig.Params(), sig.Results(), sig.Variadic()), recv)
	if n := namedOf(recv); n != nil && n.Obj().Pkg() != nil {
		if v, ok := m.fronts[n.Obj().Pkg().Path()+"."+n.Obj().Name()+"."+fn.Name()]; ok {
			meth.Func = v
		}
	}
	c.finish(lay, m.methodBody(c, ti.rt, meth))
	m.codes[key] = c
	return c
}

// methodBody calls a compiled method with the receiver and arguments in the frame.
func (m *Machine) methodBody(c *code, rt reflect.Type, meth reflect.Method) exec {
	fn := meth.Func
	if b := pointerMethod(c, rt, fn); b != nil {
		return b
	}
	variadic := fn.Type().IsVariadic()
	return func(fr *frame) ctl {
		args := make([]reflect.Value, len(c.params)+1)
		args[0] = reflect.NewAt(rt, fr.at(c.recv.off)).Elem()
		for i, p := range c.params {
			args[i+1] = p.ti.at(fr.at(p.off))
		}
		var out []reflect.Value
		if variadic {
			out = fn.CallSlice(args)
		} else {
			out = fn.Call(args)
		}
		c.take(fr, out)
		return doReturn
	}
}

// nativeMethod returns the code for a method of a compiled dynamic type called through an interface.
func (m *Machine) nativeMethod(rt reflect.Type, name string, sig *types.Signature) *code {
	key := nativeKey{rt, name, m.rec(types.NewSignatureType(nil, nil, nil, sig.Params(), sig.Results(), sig.Variadic()))}
	if c, ok := m.natives.Load(key); ok {
		return c.(*code)
	}
	meth, ok := rt.MethodByName(name)
	if !ok {
		return nil
	}
	var c *code
	m.compiling(func() {
		var lay *layout
		c, lay = m.newCode(name, sig, nil)
		c.recv = &slot{lay.add(rt), m.nativeRec(rt)}
		c.finish(lay, m.methodBody(c, rt, meth))
	})
	m.natives.Store(key, c)
	return c
}

type nativeKey struct {
	rt   reflect.Type
	name string
	sig  *TypeRec
}

// nativeRec is a record for a compiled type of which no checker's type is known: it serves for copying only.
func (m *Machine) nativeRec(rt reflect.Type) *TypeRec {
	ti := &TypeRec{m: m, rt: rt, pure: true, size: rt.Size(), rep: repMem}
	ti.ops = memOps{ti}
	ti.word = (*eface)(unsafe.Pointer(&[]any{rt}[0])).data
	z := reflect.New(rt)
	ti.zero = z.UnsafePointer()
	v := z.Elem().Interface()
	ti.direct = rt.Kind() != reflect.Interface && (*eface)(unsafe.Pointer(&v)).data == nil
	return ti
}

// nativeFuncCode calls a compiled function value; the receiver's place holds the function.
func (m *Machine) nativeFuncCode(sig *types.Signature) *code {
	sig = types.NewSignatureType(nil, nil, nil, sig.Params(), sig.Results(), sig.Variadic())
	ti := m.rec(sig)
	if c := m.funcCodes[ti]; c != nil {
		return c
	}
	c, lay := m.newCode("function value", sig, nil)
	c.recv = &slot{lay.add(unsafePtrType), ti}
	variadic := sig.Variadic()
	c.finish(lay, func(fr *frame) ctl {
		if *(*unsafe.Pointer)(fr.at(c.recv.off)) == nil {
			nilDeref(fr.g.at)
		}
		v := ti.at(fr.at(c.recv.off))
		c.callCompiled(fr, v, variadic)
		return doReturn
	})
	m.funcCodes[ti] = c
	return c
}

// bindHidden finds the real type of a named type that has no symbol, by walking the functions and variables of its
// package in the checker's terms and in reflect's side by side.
func (m *Machine) bindHidden(n *types.Named, syms map[string]reflect.Value) reflect.Type {
	if n.TypeArgs().Len() > 0 {
		return nil
	}
	scope := n.Obj().Pkg().Scope()
	var found reflect.Type
	seen := map[reflect.Type]bool{}
	var walk func(t types.Type, rt reflect.Type, depth int)
	walk = func(t types.Type, rt reflect.Type, depth int) {
		if found != nil || rt == nil || depth > 6 {
			return
		}
		t = types.Unalias(t)
		if x, ok := t.(*types.Named); ok {
			if x.Obj() == n.Obj() {
				found = rt
				return
			}
			if seen[rt] || x.Obj().Pkg() != n.Obj().Pkg() {
				return
			}
			seen[rt] = true
			t = x.Underlying()
		}
		switch t := t.(type) {
		case *types.Pointer:
			if rt.Kind() == reflect.Pointer {
				walk(t.Elem(), rt.Elem(), depth+1)
			}
		case *types.Slice:
			if rt.Kind() == reflect.Slice {
				walk(t.Elem(), rt.Elem(), depth+1)
			}
		case *types.Map:
			if rt.Kind() == reflect.Map {
				walk(t.Key(), rt.Key(), depth+1)
				walk(t.Elem(), rt.Elem(), depth+1)
			}
		case *types.Struct:
			for i := range t.NumFields() {
				if rt.Kind() == reflect.Struct && i < rt.NumField() {
					walk(t.Field(i).Type(), rt.Field(i).Type, depth+1)
				}
			}
		case *types.Signature:
			if rt.Kind() == reflect.Func && rt.NumIn() == t.Params().Len() && rt.NumOut() == t.Results().Len() {
				for i := range rt.NumIn() {
					walk(t.Params().At(i).Type(), rt.In(i), depth+1)
				}
				for i := range rt.NumOut() {
					walk(t.Results().At(i).Type(), rt.Out(i), depth+1)
				}
			}
		}
	}
	for _, name := range scope.Names() {
		v, ok := syms[name]
		if !ok {
			continue
		}
		switch o := scope.Lookup(name).(type) {
		case *types.Func:
			walk(o.Type(), v.Type(), 0)
		case *types.Var:
			if v.Kind() == reflect.Pointer {
				walk(o.Type(), v.Type().Elem(), 0)
			}
		case *types.TypeName:
			if v.Kind() == reflect.Pointer {
				walk(o.Type(), v.Type().Elem(), 0)
			}
		}
	}
	return found
}
