package eval

import (
	"go/ast"
	"go/token"
	"go/types"
	"reflect"
	"unsafe"
)

// assignTo converts a value as an assignment to a variable of type t does: to an interface, or nothing but the type.
func (f *fnc) assignTo(x *ex, t types.Type, pos token.Pos) *ex {
	t = types.Unalias(f.subst(t))
	ti := f.m.rec(t)
	if x.isNil {
		return f.zeroEx(ti)
	}
	if x.ti == ti || x.tuple != nil {
		return x
	}
	if types.IsInterface(t) {
		return f.toInterface(x, ti, pos)
	}
	if x.cv != nil && x.ti.rep != ti.rep {
		return f.convert(x, ti, pos)
	}
	return f.retype(x, ti, pos)
}

// retype gives a value another type of the same representation.
func (f *fnc) retype(x *ex, ti *TypeRec, pos token.Pos) *ex {
	if x.ti.rep != ti.rep {
		refuse(pos, "conversion of %s to %s", x.ti, ti)
	}
	y := *x
	y.ti = ti
	return &y
}

// convert compiles T(x).
func (f *fnc) convert(x *ex, ti *TypeRec, pos token.Pos) *ex {
	if x.isNil {
		return f.zeroEx(ti)
	}
	if x.ti == ti {
		return x
	}
	if types.IsInterface(ti.T) {
		return f.toInterface(x, ti, pos)
	}
	from, to := x.ti.T.Underlying(), ti.T.Underlying()
	if x.ti.rep == ti.rep && x.ti.rep != repSlice && x.ti.rep != repMem {
		return f.retype(x, ti, pos)
	}
	if x.ti.rep < repString && ti.rep < repString {
		if fn := numConv(x, ti.rep); fn != nil {
			return f.fold(x, &ex{ti: ti, fn: fn})
		}
	}
	at := f.site(pos)
	if x.cv != nil && x.ti.rep < repString && ti.rep < repString {
		return f.complexConst(x, ti, pos)
	}
	switch {
	case ti.rep == repString && isInteger(x.ti.rep):
		n := as[int64](f.convertNum(x, repInt64))
		u := x.ti.rep
		return f.fold(x, &ex{ti: ti, fn: func(fr *frame) string {
			v := n(fr)
			if v < 0 && u >= repUint || v != int64(rune(v)) {
				return "\uFFFD"
			}
			return string(rune(v))
		}})
	case ti.rep == repString && x.ti.rep == repSlice:
		s := as[slice](x)
		if elemKind(from) == types.Uint8 {
			return &ex{ti: ti, fn: func(fr *frame) string {
				v := s(fr)
				return string(unsafe.Slice((*byte)(v.p), v.len))
			}}
		}
		return &ex{ti: ti, fn: func(fr *frame) string {
			v := s(fr)
			return string(unsafe.Slice((*rune)(v.p), v.len))
		}}
	case ti.rep == repSlice && x.ti.rep == repString:
		s := as[string](x)
		if elemKind(to) == types.Uint8 {
			return &ex{ti: ti, fn: func(fr *frame) slice { return sliceOf([]byte(s(fr))) }}
		}
		return &ex{ti: ti, fn: func(fr *frame) slice { return sliceOf([]rune(s(fr))) }}
	case x.ti.rep == repSlice && ti.rep == repSlice:
		return f.retype(x, ti, pos)
	case x.ti.rep == repMem && ti.rep == repMem:
		// The same layout; the closures copy by layout alone.
		return f.retype(x, ti, pos)
	case x.ti.rep == repSlice && ti.rep == repPtr: // to a pointer to an array
		n := int(to.(*types.Pointer).Elem().Underlying().(*types.Array).Len())
		s := as[slice](x)
		return &ex{ti: ti, fn: func(fr *frame) unsafe.Pointer {
			v := s(fr)
			if v.len < n {
				throwf(at, "cannot convert slice with length %d to array or pointer to array with length %d", v.len, n)
			}
			return v.p
		}}
	case x.ti.rep == repSlice && ti.rep == repMem: // to an array
		n := int(to.(*types.Array).Len())
		s, cp := as[slice](x), ti.copyFn()
		return &ex{ti: ti, fn: func(fr *frame, dst unsafe.Pointer) {
			v := s(fr)
			if v.len < n {
				throwf(at, "cannot convert slice with length %d to array or pointer to array with length %d", v.len, n)
			}
			if n > 0 {
				cp(dst, v.p)
			}
		}}
	case ti.rep == repUintptr && x.ti.rep == repPtr:
		p := as[unsafe.Pointer](x)
		return &ex{ti: ti, fn: func(fr *frame) uintptr { return uintptr(p(fr)) }}
	}
	refuse(pos, "conversion of %s to %s", x.ti, ti)
	return nil
}

// fold computes a conversion of a constant once.
func (f *fnc) fold(x, y *ex) *ex {
	if x.cv == nil {
		return y
	}
	p := y.ti.alloc()
	y.into()(nil, p)
	return &ex{ti: y.ti, cv: p, fn: y.ti.ops.constant(p)}
}

func (f *fnc) convertNum(x *ex, to rep) *ex {
	if x.ti.rep == to {
		return x
	}
	return &ex{ti: x.ti, fn: numConv(x, to)}
}

func isInteger(r rep) bool { return r >= repInt && r <= repUintptr }

func elemKind(t types.Type) types.BasicKind {
	if s, ok := t.(*types.Slice); ok {
		if b, ok := s.Elem().Underlying().(*types.Basic); ok {
			return b.Kind()
		}
	}
	return types.Invalid
}

func sliceOf[T any](s []T) slice {
	return slice{unsafe.Pointer(unsafe.SliceData(s)), len(s), cap(s)}
}

// toInterface converts a value to an interface type.
func (f *fnc) toInterface(x *ex, ti *TypeRec, pos token.Pos) *ex {
	if ti.rep == repIface {
		if x.ti.rep == repIface && x.ti.rt == ti.rt {
			return f.retype(x, ti, pos)
		}
		if x.ti.rep != repAny && x.ti.rep != repIface && !x.ti.pure {
			ti.needAdapter(pos, x.ti)
		}
		v := as[any](f.toAny(x, f.m.anyRec))
		return &ex{ti: ti, fn: func(fr *frame) iface {
			w, ok := ti.toIface(v(fr))
			if !ok {
				fr.g.at = f.site(pos)
				panic(runtimeError("invalid memory address or nil pointer dereference"))
			}
			return w
		}}
	}
	return f.toAny(x, ti)
}

// toAny converts a value to an interface held as interface{}.
func (f *fnc) toAny(x *ex, ti *TypeRec) *ex {
	switch {
	case x.isNil:
		return f.zeroEx(ti)
	case x.ti.rep == repAny:
		y := *x
		y.ti = ti
		return &y
	case x.ti.rep == repIface:
		w := as[iface](x)
		return &ex{ti: ti, fn: func(fr *frame) any { return w(fr).any() }}
	}
	if x.cv != nil { // one value for all times
		v := x.ti.anyAt(x.cv)
		return &ex{ti: ti, fn: func(*frame) any { return v }, cv: unsafe.Pointer(&v)}
	}
	fn := x.ti.ops.toAny(x.ti, x.fn)
	if x.ti.rep == repMem && x.fresh != nil {
		fn = memOps{x.ti}.toAny(x.ti, intoFn(x.fresh))
	}
	return &ex{ti: ti, fn: fn}
}

// toIface converts an interface value to a compiled interface with methods; ok is false if its type lacks them.
func (ti *TypeRec) toIface(v any) (iface, bool) {
	if v == nil {
		return iface{}, true
	}
	if b, ok := v.(Box); ok {
		ti.bindAdapter()
		if ti.adapter == nil {
			return iface{}, false
		}
		p := new(Box)
		*p = b
		return iface{ti.adapter, unsafe.Pointer(p)}, true
	}
	e := (*eface)(unsafe.Pointer(&v))
	if tab, ok := ti.tabs.Load(e.typ); ok {
		t := tab.(unsafe.Pointer)
		return iface{t, e.data}, t != nil
	}
	rt := reflect.TypeOf(v)
	var tab unsafe.Pointer
	if rt.Implements(ti.rt) {
		p := reflect.New(ti.rt)
		p.Elem().Set(reflect.ValueOf(v))
		tab = (*iface)(p.UnsafePointer()).tab
	}
	ti.tabs.Store(e.typ, tab)
	return iface{tab, e.data}, tab != nil
}

// bindAdapter finds the method table for boxes held in this interface.
func (ti *TypeRec) bindAdapter() {
	ti.bindTab.Do(func() {
		at := ti.m.adapterType(ti)
		if at == nil {
			return
		}
		p := reflect.New(ti.rt)
		p.Elem().Set(reflect.New(at).Elem())
		ti.adapter = (*iface)(p.UnsafePointer()).tab
	})
}

func (ti *TypeRec) needAdapter(pos token.Pos, from *TypeRec) {
	ti.bindAdapter()
	if ti.adapter == nil {
		refuse(pos, "%s as %s", from, ti)
	}
}

// conversion compiles T(x) written in the source.
func (f *fnc) conversion(e *ast.CallExpr, t types.Type) *ex {
	x := f.expr(e.Args[0])
	return f.convert(x, f.m.rec(t), e.Pos())
}

// complexConst converts a constant between the real and the complex numbers.
func (f *fnc) complexConst(x *ex, ti *TypeRec, pos token.Pos) *ex {
	ft, ct := f.m.rec(types.Typ[types.Float64]), f.m.rec(types.Typ[types.Complex128])
	if x.ti.rep == repComplex64 || x.ti.rep == repComplex128 {
		c := *(*complex128)(f.convert(x, ct, pos).cv)
		r := real(c)
		y := &ex{ti: ft, cv: unsafe.Pointer(&r), fn: func(*frame) float64 { return r }}
		return f.convert(y, ti, pos)
	}
	if x.ti.rep == repBool {
		refuse(pos, "conversion of %s to %s", x.ti, ti)
	}
	c := complex(*(*float64)(f.convert(x, ft, pos).cv), 0)
	y := &ex{ti: ct, cv: unsafe.Pointer(&c), fn: func(*frame) complex128 { return c }}
	return f.convert(y, ti, pos)
}
