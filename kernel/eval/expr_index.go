package eval

import (
	"go/ast"
	"go/types"
	"unsafe"
)

// indexExpr compiles a[i].
func (f *fnc) indexExpr(e *ast.IndexExpr) *ex {
	t := f.typ(e.X)
	if m, ok := core(t).(*types.Map); ok {
		return f.mapIndex(e, m)
	}
	x := f.operand(e.X)
	return f.indexEx(x, f.intIndex(e.Index), f.tiOf(e), e)
}

// core returns the underlying type, and for a constraint's instance the type itself.
func core(t types.Type) types.Type { return t.Underlying() }

func (f *fnc) indexEx(x *ex, i *ex, ti *TypeRec, e *ast.IndexExpr) *ex {
	at := f.site(e.Pos())
	at.unsigned = f.isUnsigned(e.Index)
	idx := as[int](i)
	switch t := core(x.ti.T).(type) {
	case *types.Slice:
		et := f.m.rec(t.Elem())
		s := as[slice](x)
		size := et.size
		r := &ex{ti: et}
		if x.local && i.local {
			r.fn = et.ops.indexLocal(et, x.off, i.off, at)
		} else {
			r.fn = et.ops.index(et, s, idx, at)
		}
		r.addr = func(fr *frame) unsafe.Pointer {
			v := s(fr)
			k := idx(fr)
			if uint(k) >= uint(v.len) {
				indexPanic(at, k, v.len)
			}
			return unsafe.Add(v.p, uintptr(k)*size)
		}
		return r
	case *types.Basic:
		s := as[string](x)
		return &ex{ti: f.m.rec(types.Typ[types.Uint8]), fn: func(fr *frame) uint8 {
			v := s(fr)
			k := idx(fr)
			if uint(k) >= uint(len(v)) {
				indexPanic(at, k, len(v))
			}
			return v[k]
		}}
	case *types.Pointer:
		a := t.Elem().Underlying().(*types.Array)
		return f.element(f.checked(x, e.X.Pos()), a, idx, at)
	case *types.Array:
		if i.cv != nil && x.local {
			if k := *(*int)(i.cv); k >= 0 && int64(k) < t.Len() {
				et := f.m.rec(t.Elem())
				return f.localEx(et, x.off+uintptr(k)*et.size)
			}
		}
		return f.element(f.ref(x), t, idx, at)
	}
	refuse(e.Pos(), "index of %s", x.ti)
	return nil
}

// element selects an element of the array at an address.
func (f *fnc) element(p ptrFn, a *types.Array, idx func(*frame) int, at *site) *ex {
	et := f.m.rec(a.Elem())
	size, n := et.size, int(a.Len())
	return f.atPtr(func(fr *frame) unsafe.Pointer {
		q := p(fr)
		k := idx(fr)
		if uint(k) >= uint(n) {
			indexPanic(at, k, n)
		}
		return unsafe.Add(q, uintptr(k)*size)
	}, 0, et)
}

// intIndex compiles an index of any integer type as an int.
func (f *fnc) intIndex(e ast.Expr) *ex {
	x := f.expr(e)
	ti := f.m.rec(types.Typ[types.Int])
	switch x.ti.rep {
	case repInt:
		return x
	}
	return f.convert(x, ti, e.Pos())
}

// isUnsigned says whether an index has an unsigned type, so that it is not negative however its bits look.
func (f *fnc) isUnsigned(e ast.Expr) bool {
	if e == nil {
		return false
	}
	b, ok := f.typ(e).Underlying().(*types.Basic)
	return ok && b.Info()&types.IsUnsigned != 0
}

// sliceExpr compiles a[i:j:k].
func (f *fnc) sliceExpr(e *ast.SliceExpr) *ex {
	ti := f.tiOf(e)
	at := f.site(e.Pos())
	bound := func(b ast.Expr) func(*frame) int {
		if b == nil {
			return nil
		}
		return as[int](f.intIndex(b))
	}
	low, high, top := *at, *at, *at
	low.unsigned, high.unsigned, top.unsigned = f.isUnsigned(e.Low), f.isUnsigned(e.High), f.isUnsigned(e.Max)
	t := core(f.typ(e.X))
	if b, ok := t.(*types.Basic); ok && b.Info()&types.IsString != 0 {
		s, lo, hi := as[string](f.expr(e.X)), bound(e.Low), bound(e.High)
		return &ex{ti: ti, fn: func(fr *frame) string {
			v := s(fr)
			i, j := 0, len(v)
			if lo != nil {
				i = lo(fr)
			}
			if hi != nil {
				j = hi(fr)
				if uint(j) > uint(len(v)) {
					boundsPanic(&high, "[:%d] with length %d", "[:%d]", j, len(v))
				}
			}
			if uint(i) > uint(j) {
				boundsPanic(&low, "[%d:%d]", "[%d:]", i, j)
			}
			return v[i:j]
		}}
	}
	var base func(*frame) slice
	var et *TypeRec
	capText := "with capacity"
	switch t := t.(type) {
	case *types.Slice:
		et = f.m.rec(t.Elem())
		base = as[slice](f.expr(e.X))
	case *types.Pointer, *types.Array:
		capText = "with length"
		var p ptrFn
		var a *types.Array
		if pt, ok := t.(*types.Pointer); ok {
			p = f.checked(f.expr(e.X), e.X.Pos())
			a = pt.Elem().Underlying().(*types.Array)
		} else {
			p = f.addr(e.X)
			a = t.(*types.Array)
		}
		et = f.m.rec(a.Elem())
		n := int(a.Len())
		base = func(fr *frame) slice { return slice{p(fr), n, n} }
	default:
		refuse(e.Pos(), "slice of %s", t)
	}
	lo, hi, max := bound(e.Low), bound(e.High), bound(e.Max)
	size := et.size
	return &ex{ti: ti, fn: func(fr *frame) slice {
		v := base(fr)
		i, j, k := 0, v.len, v.cap
		if lo != nil {
			i = lo(fr)
		}
		if hi != nil {
			j = hi(fr)
		}
		if max != nil {
			k = max(fr)
			if uint(k) > uint(v.cap) {
				boundsPanic(&top, "[::%d] "+capText+" %d", "[::%d]", k, v.cap)
			}
			if uint(j) > uint(k) {
				boundsPanic(&high, "[:%d:%d]", "[:%d:]", j, k)
			}
			if uint(i) > uint(j) {
				boundsPanic(&low, "[%d:%d:]", "[%d::]", i, j)
			}
		} else {
			if hi != nil && uint(j) > uint(k) {
				boundsPanic(&high, "[:%d] "+capText+" %d", "[:%d]", j, k)
			}
			if uint(i) > uint(j) {
				boundsPanic(&low, "[%d:%d]", "[%d:]", i, j)
			}
		}
		p := v.p
		if k-i > 0 {
			p = unsafe.Add(p, uintptr(i)*size)
		}
		return slice{p, j - i, k - i}
	}}
}

// composite compiles T{…}.
func (f *fnc) composite(e *ast.CompositeLit, t types.Type) *ex {
	if p, ok := t.Underlying().(*types.Pointer); ok { // &T elided in a list
		return f.addressOfLit(f.composite(e, types.Unalias(p.Elem())), f.m.rec(t))
	}
	ti := f.m.rec(t)
	switch u := t.Underlying().(type) {
	case *types.Struct:
		var sets []intoFn
		var offs []uintptr
		for i, el := range e.Elts {
			n := i
			if kv, ok := el.(*ast.KeyValueExpr); ok {
				for j := range u.NumFields() {
					if u.Field(j).Name() == kv.Key.(*ast.Ident).Name {
						n = j
					}
				}
				el = kv.Value
			}
			sets = append(sets, f.element2(el, u.Field(n).Type()).init())
			offs = append(offs, ti.rt.Field(n).Offset)
		}
		return f.built(ti, len(sets) < u.NumFields(), sets, offs)
	case *types.Array:
		et := f.m.rec(u.Elem())
		var sets []intoFn
		var offs []uintptr
		n := int64(0)
		for _, el := range e.Elts {
			if kv, ok := el.(*ast.KeyValueExpr); ok {
				n = f.constInt(kv.Key)
				el = kv.Value
			}
			sets = append(sets, f.element2(el, u.Elem()).init())
			offs = append(offs, uintptr(n)*et.size)
			n++
		}
		return f.built(ti, int64(len(sets)) < u.Len(), sets, offs)
	case *types.Slice:
		et := f.m.rec(u.Elem())
		var sets []intoFn
		var offs []uintptr
		n, max := int64(0), int64(0)
		for _, el := range e.Elts {
			if kv, ok := el.(*ast.KeyValueExpr); ok {
				n = f.constInt(kv.Key)
				el = kv.Value
			}
			sets = append(sets, f.element2(el, u.Elem()).init())
			offs = append(offs, uintptr(n)*et.size)
			n++
			if n > max {
				max = n
			}
		}
		mk := maker(et)
		return &ex{ti: ti, fn: func(fr *frame) slice {
			s := mk(int(max), int(max))
			for i, set := range sets {
				set(fr, unsafe.Add(s.p, offs[i]))
			}
			return s
		}}
	case *types.Map:
		return f.mapLit(e, u, ti)
	}
	refuse(e.Pos(), "composite literal of %s", t)
	return nil
}

// element2 compiles an element of a composite literal, whose own type may be left out.
func (f *fnc) element2(e ast.Expr, t types.Type) *ex {
	if lit, ok := e.(*ast.CompositeLit); ok && lit.Type == nil {
		return f.composite(lit, types.Unalias(f.subst(t)))
	}
	return f.exprTo(e, f.subst(t))
}

func (f *fnc) constInt(e ast.Expr) int64 {
	x := f.convert(f.expr(e), f.m.rec(types.Typ[types.Int64]), e.Pos())
	if x.cv == nil {
		refuse(e.Pos(), "index that is no constant")
	}
	return *(*int64)(x.cv)
}

// built puts a struct or array together. Over memory that others may see it is built aside and then copied.
func (f *fnc) built(ti *TypeRec, clear bool, sets []intoFn, offs []uintptr) *ex {
	cp, zero := ti.copyFn(), ti.zero
	fresh := func(fr *frame, p unsafe.Pointer) {
		if clear {
			cp(p, zero)
		}
		for i, set := range sets {
			set(fr, unsafe.Add(p, offs[i]))
		}
	}
	tmp := f.temp(ti)
	return &ex{ti: ti, fresh: fresh, fn: func(fr *frame, dst unsafe.Pointer) {
		p := fr.at(tmp)
		fresh(fr, p)
		cp(dst, p)
	}}
}

// indexPanic throws the error of an index out of range.
func indexPanic(at *site, i, n int) {
	switch {
	case i >= 0:
		throwf(at, "index out of range [%d] with length %d", i, n)
	case at.unsigned:
		throwf(at, "index out of range [%d] with length %d", uint(i), n)
	}
	throwf(at, "index out of range [%d]", i)
}

// boundsPanic throws the error of a slice expression out of range.
func boundsPanic(at *site, text, negative string, i, n int) {
	switch {
	case i >= 0:
		throwf(at, "slice bounds out of range "+text, i, n)
	case at.unsigned:
		throwf(at, "slice bounds out of range "+text, uint(i), n)
	}
	throwf(at, "slice bounds out of range "+negative, i)
}
