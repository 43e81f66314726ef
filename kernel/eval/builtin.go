package eval

import (
	"cmp"
	"go/ast"
	"go/constant"
	"go/token"
	"go/types"
	"math"
	"reflect"
	"runtime"
	"unsafe"
)

var oneConst = constant.MakeInt64(1)

// builtinName returns the name of a builtin function.
func (f *fnc) builtinName(e ast.Expr) string {
	switch x := ast.Unparen(e).(type) {
	case *ast.Ident:
		return x.Name
	case *ast.SelectorExpr: // of package unsafe
		return "unsafe." + x.Sel.Name
	}
	return ""
}

// builtinCall compiles a use of a builtin function.
func (f *fnc) builtinCall(e *ast.CallExpr) *ex {
	name := f.builtinName(e.Fun)
	switch name {
	case "make":
		return f.makeCall(e)
	case "new":
		return f.newCall(e)
	case "append":
		return f.appendCall(e)
	case "unsafe.Sizeof", "unsafe.Alignof":
		ti := f.tiOf(e.Args[0])
		n := ti.size
		if name == "unsafe.Alignof" {
			n = uintptr(ti.rt.Align())
		}
		return f.constEx(e.Pos(), constant.MakeUint64(uint64(n)), types.Typ[types.Uintptr])
	}
	if len(e.Args) == 1 {
		if _, ok := f.u.info.TypeOf(e.Args[0]).(*types.Tuple); ok {
			vals, run := f.spread(f.expr(e.Args[0]))
			return f.beforeEx([]exec{run}, f.builtin(name, vals, e))
		}
	}
	args := make([]*ex, len(e.Args))
	for i, a := range e.Args {
		args[i] = f.expr(a)
	}
	return f.builtin(name, args, e)
}

// effect is an expression without a value.
func effect(run func(fr *frame)) *ex {
	return &ex{tuple: []slot{}, call: func(fr *frame) *frame { run(fr); return nil }}
}

// builtin compiles a builtin function of values.
func (f *fnc) builtin(name string, a []*ex, e *ast.CallExpr) *ex {
	pos := e.Pos()
	at := f.site(pos)
	intT := f.m.rec(types.Typ[types.Int])
	switch name {
	case "len", "cap":
		return f.length(name, a[0], intT, pos)
	case "copy":
		dst := as[slice](a[0])
		if a[1].ti.rep == repString {
			s := as[string](a[1])
			return &ex{ti: intT, fn: func(fr *frame) int {
				d := dst(fr)
				return copy(unsafe.Slice((*byte)(d.p), d.len), s(fr))
			}}
		}
		src := as[slice](a[1])
		et := f.m.rec(core(a[0].ti.T).(*types.Slice).Elem())
		move := copySlices(et)
		return &ex{ti: intT, fn: func(fr *frame) int {
			d := dst(fr)
			s := src(fr)
			n := min(d.len, s.len)
			if n > 0 {
				move(d.p, s.p, n)
			}
			return n
		}}
	case "delete":
		t := core(a[0].ti.T).(*types.Map)
		kind, _, kt, _ := f.m.mapKind(t)
		m, k := as[unsafe.Pointer](a[0]), f.ref(f.assignTo(a[1], t.Key(), pos))
		check := kt.check(kind, at)
		return effect(func(fr *frame) {
			w := m(fr)
			q := k(fr)
			if check != nil {
				check(fr, w, q)
			}
			kind.del(w, q)
		})
	case "clear":
		switch t := core(a[0].ti.T).(type) {
		case *types.Map:
			m, rt := as[unsafe.Pointer](a[0]), a[0].ti.rt
			return effect(func(fr *frame) {
				if w := m(fr); w != nil {
					reflect.NewAt(rt, unsafe.Pointer(&w)).Elem().Clear()
				}
			})
		case *types.Slice:
			s, et := as[slice](a[0]), f.m.rec(t.Elem())
			cp := et.copyFn()
			return effect(func(fr *frame) {
				v := s(fr)
				for i := range v.len {
					cp(unsafe.Add(v.p, uintptr(i)*et.size), et.zero)
				}
			})
		}
	case "close":
		c, rt := as[unsafe.Pointer](a[0]), a[0].ti.rt
		return effect(func(fr *frame) {
			w := c(fr)
			if w == nil {
				throwPlain(at, "close of nil channel")
			}
			fr.g.at = at
			reflect.NewAt(rt, unsafe.Pointer(&w)).Elem().Close()
		})
	case "panic":
		v := as[any](f.assignTo(a[0], f.m.anyRec.T, pos))
		return effect(func(fr *frame) {
			x := v(fr)
			if x == nil {
				x = new(runtime.PanicNilError)
			}
			panic(&Panic{Value: x, At: at})
		})
	case "recover":
		return &ex{ti: f.m.anyRec, fn: func(fr *frame) any { return fr.recovered() }}
	case "print", "println":
		return f.printCall(name, a)
	case "min", "max":
		ti := f.tiOf(e)
		x := f.minmaxArg(a[0], ti, pos)
		for _, b := range a[1:] {
			x = &ex{ti: ti, fn: minmax(name == "min", x, f.minmaxArg(b, ti, pos))}
		}
		return x
	case "real", "imag":
		ti := f.tiOf(e)
		re := name == "real"
		if a[0].ti.rep == repComplex64 {
			c := as[complex64](a[0])
			return &ex{ti: ti, fn: func(fr *frame) float32 {
				if re {
					return real(c(fr))
				}
				return imag(c(fr))
			}}
		}
		c := as[complex128](f.convert(a[0], f.m.rec(types.Typ[types.Complex128]), pos))
		return f.convert(&ex{ti: f.m.rec(types.Typ[types.Float64]), fn: func(fr *frame) float64 {
			if re {
				return real(c(fr))
			}
			return imag(c(fr))
		}}, ti, pos)
	case "complex":
		ti := f.tiOf(e)
		if ti.rep == repComplex64 {
			ft := f.m.rec(types.Typ[types.Float32])
			x, y := as[float32](f.convert(a[0], ft, pos)), as[float32](f.convert(a[1], ft, pos))
			return &ex{ti: ti, fn: func(fr *frame) complex64 { r := x(fr); return complex(r, y(fr)) }}
		}
		ft := f.m.rec(types.Typ[types.Float64])
		x, y := as[float64](f.convert(a[0], ft, pos)), as[float64](f.convert(a[1], ft, pos))
		return &ex{ti: ti, fn: func(fr *frame) complex128 { r := x(fr); return complex(r, y(fr)) }}
	}
	refuse(pos, "builtin function %s", name)
	return nil
}

func (f *fnc) length(name string, x *ex, intT *TypeRec, pos token.Pos) *ex {
	n := func(fn func(*frame) int) *ex { return &ex{ti: intT, fn: fn} }
	t := core(x.ti.T)
	if p, ok := t.(*types.Pointer); ok { // of an array
		k := int(p.Elem().Underlying().(*types.Array).Len())
		p := as[unsafe.Pointer](x)
		return n(func(fr *frame) int { p(fr); return k })
	}
	switch t := t.(type) {
	case *types.Basic:
		s := as[string](x)
		return n(func(fr *frame) int { return len(s(fr)) })
	case *types.Slice:
		if x.local {
			off := x.off
			if name == "len" {
				return n(func(fr *frame) int { return (*slice)(fr.at(off)).len })
			}
			return n(func(fr *frame) int { return (*slice)(fr.at(off)).cap })
		}
		s := as[slice](x)
		if name == "len" {
			return n(func(fr *frame) int { return s(fr).len })
		}
		return n(func(fr *frame) int { return s(fr).cap })
	case *types.Array:
		p, k := f.ref(x), int(t.Len())
		return n(func(fr *frame) int { p(fr); return k })
	case *types.Map:
		kind, _, _, _ := f.m.mapKind(t)
		m := as[unsafe.Pointer](x)
		return n(func(fr *frame) int { return kind.size(m(fr)) })
	case *types.Chan:
		c, rt := as[unsafe.Pointer](x), x.ti.rt
		isLen := name == "len"
		return n(func(fr *frame) int {
			w := c(fr)
			if w == nil {
				return 0
			}
			v := reflect.NewAt(rt, unsafe.Pointer(&w)).Elem()
			if isLen {
				return v.Len()
			}
			return v.Cap()
		})
	}
	refuse(pos, "%s of %s", name, x.ti)
	return nil
}

// copySlices returns a function that moves n elements, which may overlap.
func copySlices(et *TypeRec) func(dst, src unsafe.Pointer, n int) {
	if w, ok := pointerWords(et.rt, 0, nil, 4); ok && len(w) == 0 {
		size := int(et.size)
		return func(dst, src unsafe.Pointer, n int) {
			copy(unsafe.Slice((*byte)(dst), n*size), unsafe.Slice((*byte)(src), n*size))
		}
	}
	st := reflect.SliceOf(et.rt)
	return func(dst, src unsafe.Pointer, n int) {
		d, s := slice{dst, n, n}, slice{src, n, n}
		reflect.Copy(reflect.NewAt(st, unsafe.Pointer(&d)).Elem(), reflect.NewAt(st, unsafe.Pointer(&s)).Elem())
	}
}

// maker returns a function that makes slices.
func maker(et *TypeRec) func(n, c int) slice {
	switch et.rep {
	case repInt:
		return func(n, c int) slice { return sliceOf(make([]int, n, c)) }
	case repFloat64:
		return func(n, c int) slice { return sliceOf(make([]float64, n, c)) }
	case repString:
		return func(n, c int) slice { return sliceOf(make([]string, n, c)) }
	case repUint8:
		return func(n, c int) slice { return sliceOf(make([]byte, n, c)) }
	case repBool:
		return func(n, c int) slice { return sliceOf(make([]bool, n, c)) }
	case repAny, repIface:
		return func(n, c int) slice { return sliceOf(make([]any, n, c)) }
	case repPtr:
		return func(n, c int) slice { return sliceOf(make([]unsafe.Pointer, n, c)) }
	case repSlice:
		return func(n, c int) slice { return sliceOf(make([]slice, n, c)) }
	}
	st := reflect.SliceOf(et.rt)
	return func(n, c int) slice {
		v := reflect.MakeSlice(st, n, c)
		return slice{v.UnsafePointer(), n, c}
	}
}

func (f *fnc) makeCall(e *ast.CallExpr) *ex {
	ti := f.tiOf(e)
	at := f.site(e.Pos())
	var args []func(*frame) int
	for _, a := range e.Args[1:] {
		args = append(args, as[int](f.intIndex(a)))
	}
	switch t := core(ti.T).(type) {
	case *types.Slice:
		et := f.m.rec(t.Elem())
		mk := maker(et)
		limit := math.MaxInt
		if et.size > 0 {
			limit = (1 << 47) / int(et.size)
		}
		return &ex{ti: ti, fn: func(fr *frame) slice {
			n := args[0](fr)
			c := n
			if len(args) > 1 {
				c = args[1](fr)
			}
			switch {
			case n < 0 || n > limit:
				throw(at, "makeslice: len out of range")
			case c < n || c > limit:
				throw(at, "makeslice: cap out of range")
			}
			return mk(n, c)
		}}
	case *types.Map:
		rt := ti.rt
		return &ex{ti: ti, fn: func(fr *frame) unsafe.Pointer {
			n := 0
			if len(args) > 0 {
				n = args[0](fr)
			}
			return newMap(rt, min(max(n, 0), 1<<20))
		}}
	case *types.Chan:
		rt := reflect.ChanOf(reflect.BothDir, ti.rt.Elem())
		return &ex{ti: ti, fn: func(fr *frame) unsafe.Pointer {
			n := 0
			if len(args) > 0 {
				n = args[0](fr)
			}
			if n < 0 || n > 1<<40 {
				throwPlain(at, "makechan: size out of range")
			}
			return reflect.MakeChan(rt, n).UnsafePointer()
		}}
	}
	refuse(e.Pos(), "make of %s", ti)
	return nil
}

func (f *fnc) newCall(e *ast.CallExpr) *ex {
	ti := f.tiOf(e)
	if tv := f.u.info.Types[e.Args[0]]; !tv.IsType() {
		x := f.exprTo(e.Args[0], core(ti.T).(*types.Pointer).Elem())
		in, et := x.init(), x.ti
		return &ex{ti: ti, fn: func(fr *frame) unsafe.Pointer {
			p := et.alloc()
			in(fr, p)
			return p
		}}
	}
	et := f.m.rec(core(ti.T).(*types.Pointer).Elem())
	return &ex{ti: ti, fn: func(*frame) unsafe.Pointer { return et.alloc() }}
}

func (f *fnc) appendCall(e *ast.CallExpr) *ex {
	ti := f.tiOf(e)
	if len(e.Args) == 1 {
		if tup, ok := f.u.info.TypeOf(e.Args[0]).(*types.Tuple); ok && tup.Len() > 1 {
			vals, run := f.spread(f.expr(e.Args[0]))
			return f.beforeEx([]exec{run}, f.appendVals(vals[0], vals[1:], ti, e.Pos()))
		}
	}
	s := f.exprTo(e.Args[0], ti.T)
	if e.Ellipsis.IsValid() {
		et := f.m.rec(core(ti.T).(*types.Slice).Elem())
		src := f.expr(e.Args[1])
		base := as[slice](s)
		if src.isNil {
			return s
		}
		if src.ti.rep == repString {
			b := as[string](src)
			return &ex{ti: ti, fn: func(fr *frame) slice {
				v := base(fr)
				return sliceOf(append(unsafe.Slice((*byte)(v.p), v.cap)[:v.len], b(fr)...))
			}}
		}
		more := as[slice](src)
		move := copySlices(et)
		return &ex{ti: ti, fn: func(fr *frame) slice {
			v := base(fr)
			w := more(fr)
			if w.len == 0 {
				return v
			}
			y := et.grow(v, w.len)
			move(unsafe.Add(y.p, uintptr(v.len)*et.size), w.p, w.len)
			y.len += w.len
			return y
		}}
	}
	var vals []*ex
	et := core(ti.T).(*types.Slice).Elem()
	for _, a := range e.Args[1:] {
		vals = append(vals, f.exprTo(a, et))
	}
	return f.appendVals(s, vals, ti, e.Pos())
}

func (f *fnc) appendVals(s *ex, vals []*ex, ti *TypeRec, pos token.Pos) *ex {
	et := f.m.rec(core(ti.T).(*types.Slice).Elem())
	switch len(vals) {
	case 0:
		return s
	case 1:
		v := f.assignTo(vals[0], et.T, pos)
		return &ex{ti: ti, fn: et.ops.appendTo(et, as[slice](s), v.fn)}
	}
	base := as[slice](s)
	more := as[slice](f.pack(vals, types.NewSlice(et.T), pos))
	move := copySlices(et)
	return &ex{ti: ti, fn: func(fr *frame) slice {
		v := base(fr)
		w := more(fr)
		y := et.grow(v, w.len)
		move(unsafe.Add(y.p, uintptr(v.len)*et.size), w.p, w.len)
		y.len += w.len
		return y
	}}
}

func (f *fnc) minmaxArg(x *ex, ti *TypeRec, pos token.Pos) *ex {
	if x.ti.rep != ti.rep {
		return f.convert(x, ti, pos)
	}
	return x
}

func minmax(least bool, x, y *ex) any {
	switch x.ti.rep {
	case repInt:
		return minmaxOf[int](least, x, y)
	case repInt8:
		return minmaxOf[int8](least, x, y)
	case repInt16:
		return minmaxOf[int16](least, x, y)
	case repInt32:
		return minmaxOf[int32](least, x, y)
	case repInt64:
		return minmaxOf[int64](least, x, y)
	case repUint:
		return minmaxOf[uint](least, x, y)
	case repUint8:
		return minmaxOf[uint8](least, x, y)
	case repUint16:
		return minmaxOf[uint16](least, x, y)
	case repUint32:
		return minmaxOf[uint32](least, x, y)
	case repUint64:
		return minmaxOf[uint64](least, x, y)
	case repUintptr:
		return minmaxOf[uintptr](least, x, y)
	case repFloat32:
		return minmaxOf[float32](least, x, y)
	case repFloat64:
		return minmaxOf[float64](least, x, y)
	}
	return minmaxOf[string](least, x, y)
}

func minmaxOf[T cmp.Ordered](least bool, x, y *ex) func(*frame) T {
	a, b := as[T](x), as[T](y)
	if least {
		return func(fr *frame) T { v := a(fr); return min(v, b(fr)) }
	}
	return func(fr *frame) T { v := a(fr); return max(v, b(fr)) }
}
